// Package remedy computes what would put a finding right: a length, a size, a
// rating or a date. Lengths are tried before they are offered, by hanging the
// load anew within a bound on trials; sizes and ratings follow from the limit
// by arithmetic.
package remedy

import (
	"slices"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// Mender computes remedies for one plan.
type Mender struct {
	plan  *plan.Plan
	cond  compute.Conditions
	facts *facts.Facts
	units quantity.System
}

// New makes a mender for a plan as it was computed.
func New(p *plan.Plan, c compute.Conditions, f *facts.Facts, units quantity.System) *Mender {
	return &Mender{plan: p, cond: c, facts: f, units: units}
}

// ask is one finding to put right: the record at fault, the field judged and
// the limit it is judged by.
type ask struct {
	subject  facts.View
	measured string
	limit    float64
}

// kind is a remedy by its name in rules.
type kind struct {
	name string
	mend func(*Mender, ask) (string, bool)
}

func kinds() []kind {
	return []kind{
		{"aligned_plate", (*Mender).alignedPlate},
		{"believable_tag", (*Mender).believableTag},
		{"bolt_for_angle", (*Mender).boltForAngle},
		{"flatter_rating", (*Mender).flatterRating},
		{"further_from_axis", (*Mender).furtherFromAxis},
		{"higher_rating", (*Mender).higherRating},
		{"higher_hook", (*Mender).higherHook},
		{"inspection_due", (*Mender).inspectionDue},
		{"larger_eye", (*Mender).largerEye},
		{"level_lengths", (*Mender).levelLengths},
		{"longer_body", (*Mender).longerBody},
		{"longer_leg", (*Mender).longerLeg},
		{"make_up", (*Mender).makeUp},
		{"rounder_edge", (*Mender).rounderEdge},
		{"stronger_insert", (*Mender).strongerInsert},
		{"stronger_intermediate_link", (*Mender).strongerIntermediateLink},
		{"stronger_lower_fitting", (*Mender).strongerLowerFitting},
		{"stronger_master_link", (*Mender).strongerMasterLink},
		{"thicker_body", (*Mender).thickerBody},
		{"thicker_round", (*Mender).thickerRound},
		{"thicker_rope", (*Mender).thickerRope},
		{"thimble_for_rope", (*Mender).thimbleForRope},
		{"wider_collector", (*Mender).widerCollector},
		{"wider_eye", (*Mender).widerEye},
		{"wider_hole", (*Mender).widerHole},
		{"wider_jaw", (*Mender).widerJaw},
		{"wider_link", (*Mender).widerLink},
		{"wider_opening", (*Mender).widerOpening},
		{"wider_thimble", (*Mender).widerThimble},
		{"wider_throat", (*Mender).widerThroat},
	}
}

// Names lists the remedies that rules may name, sorted.
func Names() []string {
	var names []string
	for _, k := range kinds() {
		names = append(names, k.name)
	}
	slices.Sort(names)
	return names
}

// Mend words the remedy of that name for a subject; false where none can be
// computed.
func (m *Mender) Mend(name string, subject facts.View, measured string, limit float64) (string, bool) {
	for _, k := range kinds() {
		if k.name == name {
			return k.mend(m, ask{subject, measured, limit})
		}
	}
	return "", false
}

func (a ask) number(field string) (float64, bool) {
	v, ok := a.subject.Field(field)
	if !ok {
		return 0, false
	}
	f, ok := v.(float64)
	return f, ok
}
