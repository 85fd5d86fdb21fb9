package compute

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// axisOf is the direction that an attachment names, in the load's axes: turned
// about the vertical, from x toward y. It is false where none is named.
func axisOf(name string, turned float64) ([3]float64, bool) {
	sin, cos := math.Sincos(turned * math.Pi / 180)
	switch name {
	case "along":
		return [3]float64{cos, sin, 0}, true
	case "across":
		return [3]float64{-sin, cos, 0}, true
	case "up":
		return [3]float64{0, 0, 1}, true
	}
	return [3]float64{}, false
}

func components(v r3.Vec) [3]float64 { return [3]float64{v.X, v.Y, v.Z} }

// pullsOn lists the directions in which some legs, and what hangs from it, pull on an
// attachment or on a point of a beam, in the axes of what it is on, in every phase.
func (w *work) pullsOn(a *plan.Attachment, legs []int) [][3]float64 {
	var list [][3]float64
	for _, p := range w.hung.Positions {
		for _, i := range legs {
			for _, pull := range p.Pulls(i) {
				if pull.On == a {
					list = append(list, pull.Along)
				}
			}
		}
		for _, i := range w.supportsAt(a) {
			if along, ok := p.PullBelow(i, a); ok {
				list = append(list, along)
			}
		}
	}
	return list
}

// leaning finds the largest angle between an axis and the pulls of some legs,
// by the measure given; needs and unposed say what it waits for.
func (w *work) leaning(key string, a *plan.Attachment, axis, axisField string, legs []int,
	measure func(pull, axis [3]float64) float64, fields ...string) *float64 {
	direction, ok := axisOf(axis, float64(a.TurnedInPlan))
	if !ok {
		w.wait(key, []facts.Input{input(a.Pointer, axisField, nameOf(a)+"'s "+words(axisField))}, fields...)
	}
	if !w.steady() {
		w.unposed(key, fields...)
	}
	if !ok || !w.steady() {
		return nil
	}
	most := 0.0
	for _, pull := range w.pullsOn(a, legs) {
		most = max(most, measure(pull, direction))
	}
	return &most
}

// derateShackleAt takes off what a shackle's rated load loses when the pull of its
// legs leans toward an end of its pin. A padeye, an eyebolt or a beam holds the pin
// along its hole; what swivels lets the shackle turn into the pull.
func (w *work) derateShackleAt(legs []int, a *plan.Attachment, item gear.Item, p *facts.Part) {
	if _, ok := item.(*gear.Shackle); !ok || a.Kind != plan.Padeye && a.Kind != plan.Eyebolt {
		return
	}
	p.PullOffDeg = w.leaning(p.Key, a, a.HoleAxis, "hole_axis", legs, capacity.OffPlaneDeg, "pull_off_deg", "rated_load_n", "used_ratio")
	w.relate(p.Key, a.Pointer, "what holds its pin")
	if p.PullOffDeg == nil {
		p.RatedLoadN = nil
		return
	}
	factor, ok := capacity.ShacklePullFactor(*p.PullOffDeg)
	if !ok {
		p.RatedLoadN = nil
		w.explain(p.Key, facts.Reason{Text: p.ID + " is pulled along its pin"}, "rated_load_n", "used_ratio")
		return
	}
	w.takes(p, shacklePullFactor(factor, *p.PullOffDeg))
}

// derateEyebolt takes its own rated load at the angle of the pull: none that is
// not given is guessed.
func (w *work) derateEyebolt(a *plan.Attachment, legs []int, p *facts.Part) {
	p.PullOffDeg = w.leaning(p.Key, a, a.Axis, "axis", legs, capacity.OffAxisDeg, "pull_off_deg", "rated_load_n", "used_ratio")
	if p.PullOffDeg == nil || p.MarkedLoadN == nil {
		p.RatedLoadN = nil
		return
	}
	var at []capacity.AngleRating
	for _, r := range a.RatedAt {
		at = append(at, capacity.AngleRating{OffAxisDeg: float64(r.FromAxis), RatedN: r.RatedLoad.Newtons})
	}
	rated, ok := capacity.RatedAtAngleN(*p.MarkedLoadN, at, *p.PullOffDeg)
	if !ok && a.Pattern == "plain" {
		p.RatedLoadN = nil
		w.explain(p.Key, facts.Reason{Text: "attachment " + a.ID + " is a plain eyebolt, which has no rated load but in line", ToldOf: a.ID}, "rated_load_n", "used_ratio")
		return
	}
	if !ok {
		p.RatedLoadN = nil
		w.wait(p.Key, []facts.Input{input(a.Pointer, "rated_at", "attachment "+a.ID+"'s own rated load at the angle of the pull")}, "rated_load_n", "used_ratio")
		return
	}
	w.takes(p, eyeboltFactor(rated / *p.MarkedLoadN, *p.PullOffDeg))
}

// togetherN is what some legs that hang from one link pull on it together, each
// in its own direction, and which force of the legs that is; nil where one of
// them is not known.
func (w *work) togetherN(legs []int) (*float64, *string) {
	by := "own_force"
	for _, i := range legs {
		f := w.out.Document.Legs[i]
		if f.TensionJudgedN == nil {
			return nil, nil
		}
		if *f.JudgedBy != by {
			by = *f.JudgedBy
		}
	}
	most := 0.0
	for _, p := range w.hung.Positions {
		most = max(most, p.TogetherN(legs, func(i int) float64 { return *w.out.Document.Legs[i].TensionJudgedN }))
	}
	return &most, &by
}

// togetherBoundN is the most that the legs on an intermediate link can be made
// to pull together, where stiffness settles the split.
func (w *work) togetherBoundN(support, link int, legs []int) *float64 {
	if !w.steady() || w.hung.Failed() != nil {
		return nil
	}
	most := 0.0
	for _, p := range w.hung.Positions {
		if !p.InUse(legs[0]) {
			continue
		}
		joint, n := p.Joint(support, link)
		group := p.Group(legs[0])
		switch {
		case joint == nil: // one leg hangs from it
			bound := w.out.Document.Legs[legs[0]].TensionBoundN
			if bound == nil {
				return nil
			}
			most = max(most, *bound)
		case p.Worst.Lengths && len(group) >= splitLegs:
			most = max(most, p.Worst.LengthSumN[n])
		case math.IsInf(p.Worst.TogetherN[n], 0) || joint.Bound.Meaning == mechanics.Determinate && p.Dependent(group):
			return nil
		default:
			most = max(most, p.Worst.TogetherN[n])
		}
	}
	return &most
}
