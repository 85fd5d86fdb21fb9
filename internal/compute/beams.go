package compute

import (
	"math"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// beams lists the beams and rocker plates in use with the forces in them.
func (w *work) beams() {
	for i, b := range w.plan.Beams {
		f := facts.Beam{
			Record:             facts.Record{Key: "beam/" + b.Item.ID, At: at(b.Item.Pointer)},
			ID:                 b.Item.ID,
			Kind:               string(b.Item.Kind),
			CompressionRated:   b.Item.RatedCompression != nil,
			BendingRated:       b.Item.RatedBending != nil,
			TopLegs:            len(w.legsHolding(b.Item)),
			LeastTopAngleGiven: b.Item.LeastTopAngle != nil,
			LeastTopAngleDeg:   number(b.Item.LeastTopAngle),
		}
		if w.steady() {
			w.insideBeam(i, b, &f)
		}
		w.heldAgainstRated(b, &f)
		w.designOf(b, &f)
		w.unposed(f.Key, absent(f, "tilt_deg", "compression_n", "bending_nm", "top_angle_from_horizontal_deg")...)
		if w.steady() && w.hung.Failed() != nil {
			w.explain(f.Key, w.notAtWorst(), absent(f, "tilt_deg", "compression_n", "bending_nm")...)
		}
		w.waitForBeam(f)
		w.out.Document.Beams = append(w.out.Document.Beams, f)
	}
}

// insideBeam sets the worst of each figure in any phase and at any corner of the
// tolerances.
func (w *work) insideBeam(i int, b plan.Beam, f *facts.Beam) {
	f.TopAngleDeg = ptr(90.0)
	if w.hung.Failed() == nil {
		f.TiltDeg, f.CompressionN, f.BendingNm = ptr(0.0), ptr(0.0), ptr(-1.0)
	}
	for _, p := range w.hung.Positions {
		if !p.UsesBeam(i) {
			continue
		}
		if f.TiltDeg != nil {
			worst := p.Worst.Beams[i]
			f.TiltDeg = ptr(max(*f.TiltDeg, worst.TiltDeg))
			f.CompressionN = ptr(max(*f.CompressionN, worst.CompressionN))
			if worst.BendingNm > *f.BendingNm {
				f.BendingNm, f.Phase = ptr(worst.BendingNm), phaseOf(p)
			}
		}
		for _, leg := range w.legsHolding(b.Item) {
			if line := p.Line(leg); line != nil {
				f.TopAngleDeg = ptr(min(*f.TopAngleDeg, p.Worst.FlattestDeg[leg]))
			}
		}
	}
}

// heldAgainstRated sets what is in the beam over what it is rated for.
func (w *work) heldAgainstRated(b plan.Beam, f *facts.Beam) {
	if r := b.Item.RatedCompression; r != nil && f.CompressionN != nil {
		f.CompressionRatio = ptr(*f.CompressionN / r.Newtons)
	}
	if r := b.Item.RatedBending; r != nil && f.BendingNm != nil {
		f.BendingRatio = ptr(*f.BendingNm / float64(*r))
	}
	if f.LeastTopAngleGiven && f.TopAngleDeg != nil {
		f.TopAngleTooFlatDeg = ptr(max(0, *f.LeastTopAngleDeg-*f.TopAngleDeg))
	}
}

// designOf sets what the plan says of how a beam is made and was tried, and how
// far its points lie apart.
func (w *work) designOf(b plan.Beam, f *facts.Beam) {
	f.OnFile = w.cond.OnFile[b.Item.ID] != nil
	f.CategoryGiven, f.SpanGiven = b.Item.Category != "", b.Item.SpanRatedFor != nil
	if t := b.Item.ProofTest; t != nil {
		f.ProofTestGiven, f.ProofTestDated, f.ProofTestRatio = true, t.Date != nil, number(t.Load)
		w.wait(f.Key, []facts.Input{input(t.Pointer, "load", "the load of "+b.Item.ID+"'s proof test")}, absent(*f, "proof_test_ratio")...)
		w.proofTestDay(f, t)
	}
	f.SpanM = w.span(b, f)
	if f.SpanM != nil && f.SpanGiven {
		f.SpanRatio = ptr(*f.SpanM / float64(*b.Item.SpanRatedFor))
	}
}

// proofTestDay tells whether a proof test had been made by the day of the lift.
func (w *work) proofTestDay(f *facts.Beam, t *gear.ProofTest) {
	day := calendarDay(t.Date)
	if day == nil {
		return
	}
	f.ProofTestDate = ptr(day.Format(time.DateOnly))
	if w.day == nil {
		w.wait(f.Key, []facts.Input{dayInput()}, "proof_test_after_lift")
		return
	}
	f.ProofTestAfter = ptr(day.After(*w.day))
}

// span is how far the two points of a beam lie apart, seen from above, that lie the
// furthest apart: the heights of its holes add nothing.
func (w *work) span(b plan.Beam, f *facts.Beam) *float64 {
	fields := []string{"span_m"}
	if f.SpanGiven {
		fields = append(fields, "span_over_rated_ratio")
	}
	most, known := 0.0, true
	for i, p := range b.Points {
		for _, c := range p.Lacks {
			w.wait(f.Key, []facts.Input{input(p.Pointer, c, p.ID+"'s "+c)}, fields...)
			known = false
		}
		for _, q := range b.Points[:i] {
			if p.At != nil && q.At != nil {
				most = max(most, apartM(*p.At, *q.At))
			}
		}
	}
	if !known {
		return nil
	}
	return &most
}

func apartM(a, b plan.Point) float64 {
	return math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y))
}

// waitForBeam says why ratios of a beam that is rated are absent.
func (w *work) waitForBeam(f facts.Beam) {
	for _, x := range []struct {
		rated        bool
		field, ratio string
	}{
		{f.CompressionRated, "compression_n", "compression_over_rated_ratio"},
		{f.BendingRated, "bending_nm", "bending_over_rated_ratio"},
		{f.LeastTopAngleGiven, "top_angle_from_horizontal_deg", "top_angle_too_flat_deg"},
	} {
		if x.rated && len(absent(f, x.ratio)) > 0 {
			w.out.Gaps.CopyTo(f.Key, x.field, f.Key, x.ratio)
		}
	}
}

// positions lists each leg in each phase.
func (w *work) positions() {
	if !w.inPhases() || !w.steady() {
		return
	}
	for _, p := range w.hung.Positions {
		for i, leg := range w.hung.Legs {
			f := facts.Position{
				Record:   facts.Record{Key: "position/" + p.Phase + "/" + leg.ID, At: at(leg.Pointer)},
				Phase:    p.Phase,
				PitchDeg: p.Pitch,
				Leg:      leg.ID,
				Released: !p.InUse(i),
			}
			if line := p.Line(i); line != nil {
				f.TensionN = ptr(line.TensionN)
				deg, _ := flattest(line)
				f.AngleFromHorizontalDeg = &deg
			}
			w.out.Document.Positions = append(w.out.Document.Positions, f)
		}
	}
}

// tilted reports whether the load is meant to hang at a pitch or roll, or is turned.
func (w *work) tilted() bool {
	if w.plan.Load.Roll != 0 {
		return true
	}
	if len(w.hung.Positions) == 0 {
		return len(w.plan.Phases) > 0 || w.plan.Load.Pitch != 0
	}
	for _, p := range w.hung.Positions {
		if p.Pitch != 0 {
			return true
		}
	}
	return false
}
