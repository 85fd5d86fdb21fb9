package register

import (
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// InspectionKind says what sort of look was taken.
type InspectionKind string

// The kinds of inspections.
const (
	BeforeUse InspectionKind = "before_use"
	Frequent  InspectionKind = "frequent"
	Periodic  InspectionKind = "periodic"
	Thorough  InspectionKind = "thorough"
	ProofTest InspectionKind = "proof_test"
	Repair    InspectionKind = "repair"
)

// InspectionKinds lists them.
func InspectionKinds() []InspectionKind {
	return []InspectionKind{BeforeUse, Frequent, Periodic, Thorough, ProofTest, Repair}
}

// Outcome is what an inspection came to. Empty: the record does not say.
type Outcome string

// The outcomes.
const (
	Passed            Outcome = "passed"
	PassedWithRemarks Outcome = "passed_with_remarks"
	Failed            Outcome = "failed"
)

// Inspection is one record.
type Inspection struct {
	Date          time.Time
	Kind          InspectionKind
	Inspector     string
	Qualification string
	Outcome       Outcome
	NextDue       *time.Time
	Service       gear.Service // empty where the record does not say
	ProofLoad     *quantity.Load
	Report        string
	Found         *Found
}

// Found are the signs that an inspection looked for; nil is not looked at.
type Found struct {
	TagLegible *bool

	// Of wire rope.
	BrokenWiresInOneLay            *int
	BrokenWiresInOneStrandInOneLay *int
	BrokenWiresIn6D                *int // in six rope diameters
	BrokenWiresIn30D               *int
	BrokenWiresAdjacent            *int
	BrokenWiresAtFitting           *int
	OuterWireWear                  *quantity.Ratio // of the diameter of the outer wires
	DiameterNow                    *quantity.Length
	LengthNow                      *quantity.Length
	Kink, Crushed, Birdcage        *bool
	SpliceSlipped, SleeveCracked   *bool
	ThimbleLoose                   *bool
	Corrosion                      string // none, light or severe; empty: not looked at
	HeatDamage                     *bool

	// Of hooks, shackles, links, chain and beams.
	ThroatNow   *quantity.Length
	Twist       *quantity.Angle // out of the hook's own plane
	Wear        *quantity.Ratio // of the section
	Stretch     *quantity.Ratio // of the length
	Cracked     *bool
	Latch       string // works, faulty or none; empty: not looked at
	Bent        *bool
	BentLink    *bool
	PinOriginal *bool
	BrokenWeld  *bool
	BrokenWire  *bool

	// Of web and round slings.
	Cut, Abraded, Burned *bool
	StitchingBroken      *bool
	CoreExposed          *bool
	Chemical             *bool
	Knotted              *bool
}

// Newest is the inspection of a kind with the latest date; of several on one
// day the one that stands last.
func (i *Item) Newest(kind InspectionKind) (*Inspection, bool) {
	var newest *Inspection
	for n := range i.Inspections {
		if r := &i.Inspections[n]; r.Kind == kind && (newest == nil || !r.Date.Before(newest.Date)) {
			newest = r
		}
	}
	return newest, newest != nil
}

// Whole reports whether an inspection goes over all of an item, so that the next
// is due from its day on. Looks before use and between do not, nor do tests.
func (i *Inspection) Whole() bool { return i.Kind == Periodic || i.Kind == Thorough }
