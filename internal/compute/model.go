package compute

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// LegAngles hangs the load with every leg's length changed, and gives the
// angle of each leg from horizontal in degrees; false where the load does not
// hang steady or a leg is slack. It serves trials of other lengths.
func LegAngles(p *plan.Plan, c Conditions, length func(lengthM float64) float64) ([]float64, bool) {
	w := &work{plan: p, cond: c}
	model, needs := w.model()
	if len(needs) > 0 {
		return nil, false
	}
	for i := range model.Lines {
		model.Lines[i].LengthM = length(model.Lines[i].LengthM)
	}
	result, err := w.solve(model)
	if err != nil || result.Balance == nil {
		return nil, false
	}
	angles := make([]float64, len(result.Balance.Lines))
	for i, l := range result.Balance.Lines {
		if l.Slack {
			return nil, false
		}
		angles[i] = l.AngleFromHorizontalDeg
	}
	return angles, true
}

// model describes the load and its legs for mechanics: one rigid body in the
// plan's own axes, all legs gathered at one point. A link between hook and
// legs hangs plumb below the hook, so its lower end is as fixed as the hook.
func (w *work) model() (mechanics.Model, []facts.Input) {
	var needs []facts.Input
	mass := w.upperMassKg()
	if mass == nil {
		needs = append(needs, massInput())
	}
	center := w.plan.Load.CenterOfGravity
	if center == nil {
		needs = append(needs, input("/load", "center_of_gravity", "the load's center of gravity"))
	}
	var lines []mechanics.Line
	stiff := len(w.stiffNeeds()) > 0
	for _, leg := range w.plan.Support.Legs {
		line, wants := w.line(leg, stiff)
		needs = append(needs, wants...)
		lines = append(lines, line)
	}
	if len(needs) > 0 {
		return mechanics.Model{}, unique(needs)
	}
	body := mechanics.Body{Name: "the load", MassKg: *mass, CenterOfGravity: vector(center)}
	m := mechanics.Model{Bodies: []mechanics.Body{body}, Lines: lines}
	for _, l := range w.plan.Support.Links {
		m.Together = append(m.Together, l.Legs)
	}
	return m, nil
}

// stiffNeeds lists what the stiffness of the legs waits for.
func (w *work) stiffNeeds() []facts.Input {
	var needs []facts.Input
	for _, leg := range w.plan.Support.Legs {
		needs = append(needs, routeOf(leg).stiffNeeds...)
	}
	return needs
}

// line describes one leg; stiff says that the rope of some leg is not known, so
// that all are taken to be stiff: one that gives and one that does not would tilt
// the load by no more than what is missing.
func (w *work) line(leg plan.Leg, stiff bool) (mechanics.Line, []facts.Input) {
	r := routeOf(leg)
	needs := r.needs
	if w.split() == settledByStiffness {
		needs = append(needs, r.stiffNeeds...)
	}
	a := leg.End.Attachment
	for _, c := range a.Lacks {
		needs = append(needs, input(a.Pointer, c, "attachment "+a.ID+"'s "+c))
	}
	if len(needs) > 0 {
		return mechanics.Line{}, needs
	}
	stiffness := r.stiffnessN
	if stiff {
		stiffness = w.stiffN()
	}
	return mechanics.Line{
		Name:       "leg " + leg.ID,
		From:       mechanics.Hook(r3.Vec{}),
		To:         mechanics.Anchor{Body: 0, At: vector(a.At)},
		LengthM:    r.lengthM,
		StiffnessN: stiffness,
	}, nil
}

func vector(p *plan.Point) r3.Vec {
	return r3.Vec{X: float64(p.X), Y: float64(p.Y), Z: float64(p.Z)}
}

func unique(list []facts.Input) []facts.Input {
	var out []facts.Input
	seen := map[facts.Input]bool{}
	for _, in := range list {
		if !seen[in] {
			seen[in] = true
			out = append(out, in)
		}
	}
	return out
}

const (
	stiffestN   = 50e6  // the EA of a thick sling
	stiffWeight = 1000. // EA over the load's weight at which a plumb leg stretches by a thousandth
)

// stiffN stands for the EA of a rope of unknown diameter where statics alone
// settles the forces and the stretch only moves the load by millimeters. The
// stiff end hangs the legs flattest.
func (w *work) stiffN() float64 {
	if m := w.upperMassKg(); m != nil {
		return math.Max(stiffestN, stiffWeight*(*m)*quantity.StandardGravity)
	}
	return stiffestN
}

// tooThin reports whether legs that stretch out of all reason would reach if
// they were of stiffer rope.
func tooThin(m mechanics.Model) bool {
	weight := m.Bodies[0].MassKg * quantity.StandardGravity
	stiff := m
	stiff.Lines = slices.Clone(m.Lines)
	for i := range stiff.Lines {
		stiff.Lines[i].StiffnessN = math.Max(stiff.Lines[i].StiffnessN, stiffWeight*weight)
	}
	result, err := mechanics.Solve(stiff, mechanics.Options{})
	return err == nil && result.Verdict != mechanics.OutOfReach && result.Verdict != mechanics.NoBalance
}
