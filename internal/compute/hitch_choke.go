package compute

import (
	"math"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/hitch"
	"liftlint/internal/plan"
)

// choke sets how a choke lies: its angle, and what it bears on.
func (w *work) choke(i int, leg hang.Leg, f *facts.Hitch) {
	r := leg.End.Round
	f.ChokeAngleGiven = r.ChokeAngle != nil
	w.perimeter(leg, f)
	f.ChokeAngleDeg, f.Phase = w.chokeAngle(i, r)
	w.unposed(f.Key, absent(*f, "choke_angle_deg", "choke_lands")...)
	if w.steady() {
		w.chokeLands(i, leg, f)
	}
}

// chokeAngle is the least angle of a choke in any phase, in degrees; nil where it is
// not known how the load hangs.
func (w *work) chokeAngle(i int, r *plan.Round) (angleDeg *float64, phase *string) {
	if !w.steady() {
		return nil, nil
	}
	set := hang.NaturalChokeDeg
	if r.ChokeAngle != nil {
		set = float64(*r.ChokeAngle)
	}
	least := set
	for _, p := range w.hung.Positions {
		for _, pull := range p.BodyAxes(i) {
			up := pull[2]
			if r.Body.Round {
				// The choke of a round body turns with the pull across it.
				pull[1], up = 0, math.Hypot(pull[1], pull[2])
			}
			if angle := hitch.ChokeAngleDeg(pull[0], pull[1], up, set); angle < least || phase == nil {
				least, phase = min(least, angle), phaseOf(p)
			}
		}
	}
	return &least, phase
}

// chokeLands tells whether the choke bears on plain rope: the loop has to be longer
// than the lower eye with its splice, and what is left of the sling longer than the
// upper one.
func (w *work) chokeLands(i int, leg hang.Leg, f *facts.Hitch) {
	f.ChokeLands = ptr("on_rope")
	if !hasEnds(lastOf(leg.Leg)) {
		return
	}
	loop, rest := math.Inf(1), math.Inf(1)
	for _, p := range w.hung.Positions {
		if p.InUse(i) {
			l, r := p.Choke(i)
			loop, rest = min(loop, l), min(rest, r)
		}
	}
	sling := lastOf(leg.Leg)
	if leg.Link != nil || len(leg.Down) > 1 {
		rest = loopRest(leg, loop)
	}
	s, ok := sling.(*gear.WireRopeSling)
	if !ok {
		f.ChokeLands = w.onEnds(sling, f.Key, "choke_lands", min(loop, rest), "on_rope", "on_eye_or_splice")
		return
	}
	longest, shortest, _ := splicesOf(s)
	var needs []facts.Input
	for n, end := range []struct {
		eye     gear.Eye
		aroundM float64
	}{{s.Upper, rest}, {s.Lower, loop}} {
		if end.eye.Length == nil {
			needs = append(needs, input(end.eye.Pointer, "eyes."+ends[n]+".length", s.ID+"'s "+ends[n]+" eye length"))
			continue
		}
		eye := float64(*end.eye.Length)
		switch {
		case hitch.ChokeLands(end.aroundM, eye, shortest[n]):
			f.ChokeLands = ptr("on_eye_or_splice")
			return
		case hitch.ChokeLands(end.aroundM, eye, longest[n]) && end.eye.SpliceLength == nil:
			needs = append(needs, input(end.eye.Pointer, "eyes."+ends[n]+".splice_length", "the length of "+s.ID+"'s "+ends[n]+" sleeve or splice"))
		}
	}
	if len(needs) > 0 {
		f.ChokeLands = nil
		w.wait(f.Key, append(needs, diameterNeed(s)...), "choke_lands")
	}
}

// loopRest is what a choke leaves of its sling alone, in meters, whatever hangs above
// it; the length may be the one that an open one needs.
func loopRest(leg hang.Leg, loopM float64) float64 {
	length, _ := lastOf(leg.Leg).Bearing()
	if length == nil {
		return value(leg.OpenM) - loopM
	}
	return float64(*length) - loopM
}

// perimeter sets how far it is once round the body, in diameters of the finished
// rope or in sizes of the sling.
func (w *work) perimeter(leg hang.Leg, f *facts.Hitch) {
	sling := lastOf(leg.Leg)
	size := sizeOf(sling)
	if s, ok := sling.(*gear.WireRopeSling); ok {
		size = given(s.Diameter, s.Pointer, "diameter", s.ID+"'s diameter", "the diameter of "+s.ID)
	}
	around := hang.Section(leg.End.Round.Body).PerimeterM()
	if around == 0 {
		w.out.Gaps.CopyTo(f.Key, "body_width_m", f.Key, "perimeter_d")
	}
	if m := w.take(f.Key, leg.End.Pointer, size, "perimeter_d"); m != nil && around > 0 {
		f.PerimeterD = ptr(around / *m)
	}
}
