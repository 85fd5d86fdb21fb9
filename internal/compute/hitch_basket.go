package compute

import (
	"math"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/hitch"
	"liftlint/internal/plan"
)

// basketSplices tells whether both runs of a basket are longer than the eye and the
// splice at their end.
func (w *work) basketSplices(i int, leg hang.Leg, f *facts.Hitch) {
	w.unposed(f.Key, absent(*f, "splice_lies")...)
	if !w.steady() {
		return
	}
	f.SpliceLies = ptr("free")
	sling := lastOf(leg.Leg)
	if !hasEnds(sling) {
		return
	}
	s, ok := sling.(*gear.WireRopeSling)
	if !ok {
		run := min(w.shortestRun(i, 0)-fittingAt(leg.Leg, 0), w.shortestRun(i, 1)-fittingAt(leg.Leg, 1))
		f.SpliceLies = w.onEnds(sling, f.Key, "splice_lies", run, "free", "on_body")
		return
	}
	longest, shortest, _ := splicesOf(s)
	var needs []facts.Input
	for n, eye := range []gear.Eye{s.Upper, s.Lower} {
		run := w.shortestRun(i, n) - fittingAt(leg.Leg, n)
		switch {
		case eye.Length == nil:
			needs = append(needs, input(eye.Pointer, "eyes."+ends[n]+".length", s.ID+"'s "+ends[n]+" eye length"))
		case hitch.ChokeLands(run, float64(*eye.Length), shortest[n]):
			f.SpliceLies = ptr("on_body")
			return
		case hitch.ChokeLands(run, float64(*eye.Length), longest[n]) && eye.SpliceLength == nil:
			needs = append(needs, input(eye.Pointer, "eyes."+ends[n]+".splice_length", "the length of "+s.ID+"'s "+ends[n]+" sleeve or splice"))
		}
	}
	if len(needs) > 0 {
		f.SpliceLies = nil
		w.wait(f.Key, append(needs, diameterNeed(s)...), "splice_lies")
	}
}

// fittingAt is the length of the shackle at one end of a basket's sling, in meters: at
// the first end, or at the second.
func fittingAt(leg plan.Leg, end int) float64 {
	u := leg.Down[end*(len(leg.Down)-1)]
	length, _ := u.Item.Bearing()
	if gear.IsSling(u.Item) || length == nil {
		return 0
	}
	return float64(*length)
}

// shortestRun is the least length of a run of a leg in any phase, in meters.
func (w *work) shortestRun(leg, run int) float64 {
	least := math.Inf(1)
	for _, p := range w.hung.Positions {
		if p.InUse(leg) {
			least = min(least, p.RunM(leg, run))
		}
	}
	return least
}

// basket sets how unequally the two runs of a basket pull, and what friction holds.
func (w *work) basket(i int, f *facts.Hitch) {
	round := f.On != "point"
	fields := []string{"force_ratio"}
	if round {
		fields = append(fields, "friction_holds_ratio", "slips_ratio")
	}
	w.unposed(f.Key, absent(*f, fields...)...)
	if !w.steady() {
		return
	}
	mu, known := capacity.Friction(capacity.Surface(f.Surface))
	if round && !known {
		w.wait(f.Key, []facts.Input{surfaceInput(w.hung.Legs[i].End.Round.Body)}, "friction_holds_ratio", "slips_ratio")
	}
	f.ForceRatio = ptr(1.0)
	for _, p := range w.hung.Positions {
		line := p.Line(i)
		if line == nil {
			continue
		}
		a, b := line.Runs[0].TensionN, line.Runs[len(line.Runs)-1].TensionN
		force := mostRatio
		if less := min(a, b); less > 0 {
			force = min(mostRatio, max(a, b)/less)
		}
		judged := round && known
		if force > *f.ForceRatio && !judged || f.Phase == nil {
			f.Phase = phaseOf(p)
		}
		f.ForceRatio = ptr(max(*f.ForceRatio, force))
		if !judged {
			continue
		}
		holds := hitch.HoldsRatio(mu, p.TurnedRad(i))
		if f.HoldsRatio == nil || holds < *f.HoldsRatio {
			f.HoldsRatio = &holds
		}
		if force/holds > value(f.SlipsRatio) {
			f.SlipsRatio, f.Phase = ptr(force/holds), phaseOf(p)
		}
	}
}

// mostRatio stands for ratios that grow without end, as over nothing.
const mostRatio = 1000.0

func surfaceInput(b *plan.Body) facts.Input {
	return input(b.Pointer, "surface", "what the surface of "+b.ID+" is")
}

// lean sets how far the runs of a sling lean along its body, and what friction that
// asks for.
func (w *work) lean(i int, leg hang.Leg, f *facts.Hitch) {
	basket := leg.End.Kind == plan.Basket
	fields := []string{"lean_along_body_deg"}
	if basket {
		fields = append(fields, "friction_needed_over_given_ratio")
	}
	w.unposed(f.Key, absent(*f, fields...)...)
	if !w.steady() {
		return
	}
	f.LeanDeg = ptr(0.0)
	for _, p := range w.hung.Positions {
		for _, pull := range p.BodyAxes(i) {
			if lean := hitch.SideLeanDeg(pull[0], pull[2]); lean > *f.LeanDeg || f.LeanPhase == nil {
				f.LeanDeg, f.LeanPhase = ptr(max(lean, *f.LeanDeg)), phaseOf(p)
			}
		}
	}
	if !basket {
		return
	}
	mu, known := capacity.Friction(capacity.Surface(f.Surface))
	if !known {
		w.wait(f.Key, []facts.Input{surfaceInput(w.hung.Legs[i].End.Round.Body)}, "friction_needed_over_given_ratio")
		return
	}
	f.FrictionNeededRatio = ptr(min(mostRatio, hitch.NeededFriction(*f.LeanDeg)/mu))
}
