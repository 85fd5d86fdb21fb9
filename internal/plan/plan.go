// Package plan holds the lift plan as typed values, decoded from a document
// that has passed its schemas. Values that the plan leaves out are nil or
// empty; every part knows the JSON pointer it was read from.
package plan

import (
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// Plan is one lift, from the hooks down.
type Plan struct {
	Lift     Lift
	Load     Load
	Hooks    []Hook // those that the rigging hangs from, in the order of the plan
	Gear     []gear.Item
	Beams    []Beam    // those in use
	Supports []Support // from the hooks down, as the plan lists them
	Phases   []Phase   // in their order; none for a lift in one attitude
}

// Legs lists all legs that carry, in the order of their supports.
func (p *Plan) Legs() []Leg {
	var all []Leg
	for _, s := range p.Supports {
		all = append(all, s.Legs...)
	}
	return all
}

// Lift is the head of the plan.
type Lift struct {
	ID       string
	Title    string
	Date     *time.Time
	Category string
	Units    quantity.System
	Profile  string // empty where the plan leaves it to the command
	// Temperature is that of the gear; nil for ordinary weather.
	Temperature *TemperatureRange
	Labels      []string // label=value, in their order
}

// TemperatureRange is how cold and how hot something gets.
type TemperatureRange struct{ Lowest, Highest quantity.Temperature }

// Hook is a crane's hook.
type Hook struct {
	Pointer string // of the hook, or of where legs hang from it where the plan describes none
	ID      string // hook, unless the plan names several
	// Where it stands over the load, from the datum corner; nil: plumb over what
	// it holds.
	X, Y      *quantity.Length
	HoistRope *quantity.Length // free length of the rope above it
	BodyWidth *quantity.Length
	Throat    *quantity.Length
	Latch     string
}

// Phase is a part of the lift in which the load hangs at one pitch, or is
// turned from one to another.
type Phase struct {
	Pointer  string
	Name     string
	Pitch    quantity.Angle  // raises the end of the load's x axis
	Until    *quantity.Angle // nil: it keeps the pitch
	Step     *quantity.Angle
	Released []string // ids of hooks that carry nothing in it
}

// Beam is a spreader beam, a lifting beam, a rocker plate or a lifting device
// at work, with its points as places that legs end at or hang from.
type Beam struct {
	Item   *gear.Beam
	Points []Attachment // in the beam's own axes; ids as SB1.left
}

// Support is what legs hang from.
type Support struct {
	Pointer string
	From    string           // as the plan has it: hook, a hook's id, or a point of a beam as SB1.left
	Hook    int              // index of its hook; -1 where it is a point of a beam
	Point   *Attachment      // the point of a beam; nil for a hook
	Height  *quantity.Length // of what legs hang from above the datum, with the load as intended
	By      []Use            // what is between it and the legs, from the top down
	Bridle  *BridleUse       // the bridle that the last of By is the master link of
	Links   []LinkUse        // the bridle's intermediate links that legs in use hang from
	Legs    []Leg            // those that carry
	Parked  []Leg            // those that are hung up out of the way
}

// Use is the place where the plan puts an item of gear to work.
type Use struct {
	Pointer string
	Item    gear.Item
}

// BridleUse is the place where the plan puts a bridle to work.
type BridleUse struct {
	Pointer string
	Bridle  *gear.Bridle
}

// LinkUse is an intermediate link with the legs that hang from it: those that
// carry by their index in the support's Legs, and those that are parked.
type LinkUse struct {
	Use
	Legs   []int
	Parked []Leg
}

// Leg is one leg from its support to its end.
type Leg struct {
	Pointer     string
	ID          string // support and name or number, as in hook/1
	Numbered    bool   // it has no id of its own
	Link        *Use   // the intermediate link it hangs from
	Down        []Use
	Doubled     bool            // its sling is laid double between its bearings
	StatedAngle *quantity.Angle // from horizontal, as meant
	End         End
}

// EndKind tells how a leg ends.
type EndKind string

// The ways a leg ends.
const (
	To     EndKind = "to"      // at a point
	RunsTo EndKind = "runs_to" // its sling runs over what it hangs from, with its ends at two points
	Basket EndKind = "basket"  // its sling goes through a point or round a body, and up again
	Choke  EndKind = "choke"   // its sling is choked on a body
	Parked EndKind = "parked"  // hung up out of the way
)

// End is how a leg ends.
type End struct {
	Pointer    string
	Kind       EndKind
	Attachment *Attachment // of to, and of a basket through a point: on the load or on a beam
	Second     *Attachment // the other point of runs_to
	Round      *Round      // of a basket or a choke on a body of the load
	UpTo       *int        // index of the support that a basket's other eye goes up to; nil: its own
	// PinIn is what the pin of the shackle below a choked sling is in; empty where
	// there is none or the plan does not say.
	PinIn string
}

// What the pin of the shackle that closes a choke can be in.
const (
	PinInEye         = "eye"          // the sling's eye; the bow is round the running part
	PinInRunningPart = "running_part" // which can turn it as it slides
)

// Round is where a sling lies round a body of the load.
type Round struct {
	Pointer    string
	Body       *Body
	Station    quantity.Length // from the body's start, along it
	Turns      int             // times round, one at least
	ChokeAngle *quantity.Angle // as the choke is set; nil: as it sets itself
	HeldBy     string          // what keeps the sling from sliding along
	Softened   bool            // its edges are protected
	// SoftenerSecured says whether what protects them is kept from falling or
	// slipping away; nil where the plan does not say.
	SoftenerSecured *bool
	// SoftenedRadius is that over what protects them; nil where the plan gives none.
	SoftenedRadius *quantity.Length
}
