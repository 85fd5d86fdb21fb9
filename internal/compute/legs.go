package compute

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// splitLegs is the number of legs from which statics alone no longer settles
// what each carries on a rigid load.
const splitLegs = 4

const (
	settledByStatics   = "settled_by_statics"
	settledByStiffness = "settled_by_stiffness"
)

// split says what settles the force in the legs.
func (w *work) split() string {
	if len(w.plan.Support.Legs) >= splitLegs {
		return settledByStiffness
	}
	return settledByStatics
}

func (w *work) legs() {
	for i, leg := range w.plan.Support.Legs {
		f := facts.Leg{
			Record: facts.Record{Key: "leg/" + leg.ID, At: at(leg.Pointer)},
			ID:     leg.ID,
			From:   w.plan.Support.From,
			To:     leg.End.Attachment.ID,
			Split:  w.split(),
		}
		r := routeOf(leg)
		if len(r.needs) == 0 {
			f.LengthM = &r.lengthM
		} else {
			w.wait(f.Key, r.needs, "length_m")
		}
		w.pose.describeLeg(i, &f)
		w.count(i, &f)
		w.without(f.Key, "slack", "angle_from_horizontal_deg", "tension_n", "tension_bound_n", "tension_counted_n", "tension_judged_n", "judged_by")
		w.explain(f)
		w.out.Related[f.Key] = []facts.Related{{At: at(leg.End.Attachment.Pointer), Caption: "the attachment"}}
		w.out.Document.Legs = append(w.out.Document.Legs, f)
	}
}

// explain notes why a leg that hangs lacks a figure.
func (w *work) explain(f facts.Leg) {
	if f.Slack != nil && *f.Slack {
		w.out.Gaps.Reason(f.Key, "angle_from_horizontal_deg", "leg "+f.ID+" hangs slack")
	}
	if w.pose.balance != nil && f.TensionBoundN == nil && f.Split == settledByStiffness {
		w.out.Gaps.Reason(f.Key, "tension_bound_n", "the legs can pull against each other without end")
	}
}

// count adds what the leg would carry if only as many legs carried as the
// profile counts, and which of the two forces its parts are judged by.
func (w *work) count(i int, f *facts.Leg) {
	if f.TensionN == nil {
		return
	}
	f.TensionJudgedN, f.JudgedBy = ptr(*f.TensionN), ptr("own_force")
	if len(w.plan.Support.Legs) < splitLegs {
		return
	}
	// A slack leg counts too: a few millimeters can tighten it.
	angle := w.pose.balance.Lines[i].AngleFromHorizontalDeg
	weight := *w.upperMassKg() * quantity.StandardGravity
	counted := capacity.CountedShareN(weight, w.cond.LegsThatCount, angle)
	f.TensionCountedN = &counted
	if counted > *f.TensionN {
		f.TensionJudgedN, f.JudgedBy = &counted, ptr("legs_counted")
	}
}

// judgedN is the force by which the parts of a leg are judged; nil where it is
// not known.
func (w *work) judgedN(i int) *float64 {
	var f facts.Leg
	w.pose.describeLeg(i, &f)
	w.count(i, &f)
	return f.TensionJudgedN
}

// boundN is the most that small differences of length can put on a leg.
func (w *work) boundN(i int) *float64 {
	var f facts.Leg
	w.pose.describeLeg(i, &f)
	return f.TensionBoundN
}
