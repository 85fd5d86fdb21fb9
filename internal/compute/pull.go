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

// pullOn is the direction in which a leg pulls on its attachment, in the load's
// own axes; false where it is not known how the load hangs.
func (h hanging) pullOn(leg int) ([3]float64, bool) {
	if h.balance == nil {
		return [3]float64{}, false
	}
	return components(h.balance.Lines[leg].ToPull), true
}

func components(v r3.Vec) [3]float64 { return [3]float64{v.X, v.Y, v.Z} }

// leaning finds the largest angle between an axis and the pulls of some legs,
// by the measure given; needs and unposed say what it waits for.
func (w *work) leaning(key string, a *plan.Attachment, axis, axisField string, legs []int,
	measure func(pull, axis [3]float64) float64, fields ...string) *float64 {
	direction, ok := axisOf(axis, float64(a.TurnedInPlan))
	if !ok {
		w.wait(key, []facts.Input{input(a.Pointer, axisField, "attachment "+a.ID+"'s "+words(axisField))}, fields...)
	}
	if w.pose.balance == nil {
		w.unposed(key, fields...)
	}
	if !ok || w.pose.balance == nil {
		return nil
	}
	most := 0.0
	for _, i := range legs {
		pull, _ := w.pose.pullOn(i)
		most = max(most, measure(pull, direction))
	}
	return &most
}

// derateShackle takes off what a shackle's rated load loses when the pull leans
// toward an end of its pin. A padeye or an eyebolt holds the pin along its hole;
// what swivels lets the shackle turn into the pull.
func (w *work) derateShackle(i int, leg plan.Leg, item gear.Item, p *facts.Part) {
	a := leg.End.Attachment
	if _, ok := item.(*gear.Shackle); !ok || a.Kind != plan.Padeye && a.Kind != plan.Eyebolt {
		return
	}
	p.PullOffDeg = w.leaning(p.Key, a, a.HoleAxis, "hole_axis", []int{i}, capacity.OffPlaneDeg, "pull_off_deg", "rated_load_n", "used_ratio")
	w.relate(p.Key, a.Pointer, "the attachment that holds its pin")
	if p.PullOffDeg == nil {
		p.RatedLoadN = nil
		return
	}
	factor, ok := capacity.ShacklePullFactor(*p.PullOffDeg)
	if !ok {
		p.RatedLoadN = nil
		w.explain(p.Key, facts.Reason{Text: p.ID + " is pulled along its pin"}, "rated_load_n", "used_ratio")
	} else if p.RatedLoadN != nil {
		p.RatedLoadN = ptr(*p.RatedLoadN * factor)
	}
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
		w.explain(p.Key, facts.Reason{Text: "attachment " + a.ID + " is a plain eyebolt, which has no rated load but in line", Told: true}, "rated_load_n", "used_ratio")
		return
	}
	if !ok {
		p.RatedLoadN = nil
		w.wait(p.Key, []facts.Input{input(a.Pointer, "rated_at", "attachment "+a.ID+"'s own rated load at the angle of the pull")}, "rated_load_n", "used_ratio")
		return
	}
	p.RatedLoadN = &rated
}

// togetherN is what some legs that hang from one link pull on it together, each
// in its own direction, and which force of the legs that is; nil where one of
// them is not known.
func (w *work) togetherN(legs []int) (*float64, *string) {
	var sum r3.Vec
	by := "own_force"
	for _, i := range legs {
		f := w.out.Document.Legs[i]
		if f.TensionJudgedN == nil {
			return nil, nil
		}
		if *f.JudgedBy != by {
			by = *f.JudgedBy
		}
		sum = r3.Add(sum, r3.Scale(*f.TensionJudgedN, w.pose.balance.Lines[i].Direction))
	}
	return ptr(r3.Norm(sum)), &by
}

// togetherBoundN is the most that the legs on an intermediate link can be made
// to pull together, where stiffness settles the split.
func (w *work) togetherBoundN(link int) *float64 {
	if w.pose.balance == nil || w.split() == settledByStatics || w.pose.worst.failed != nil {
		return nil
	}
	if w.pose.worst.lengths && len(w.pose.balance.Lines) >= splitLegs {
		return ptr(w.pose.worst.lengthGroup[link])
	}
	b := w.pose.balance.Together[link].Bound
	if b.Meaning == mechanics.AnySplit || b.Meaning == mechanics.Determinate && !w.pose.dependent() {
		return ptr(w.pose.worst.together[link])
	}
	return nil
}
