package compute

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// splitLegs is the number of legs from which statics alone no longer settles
// what each carries on a rigid load.
const splitLegs = 4

const (
	settledByStatics   = "settled_by_statics"
	settledByStiffness = "settled_by_stiffness"
)

// split says what settles the force in the legs. Fewer than four in one plane,
// as to three points in a row, are no more settled by statics than four are.
func (w *work) split() string {
	if len(w.plan.Support.Legs) >= splitLegs || w.pose.dependent() {
		return settledByStiffness
	}
	return settledByStatics
}

// nearlyDependent is how small the sine of the angle between one leg and the
// plane or line of the others may be before their forces turn on millimeters:
// about 3 degrees. It is this project's own choice, with no source.
const nearlyDependent = 0.05

// share is a leg's own force over the mean of all; nil where it is not known.
func (h hanging) share(i int) *float64 {
	if h.balance == nil {
		return nil
	}
	sum := 0.0
	for _, l := range h.balance.Lines {
		sum += l.TensionN
	}
	return ptr(h.balance.Lines[i].TensionN * float64(len(h.balance.Lines)) / sum)
}

// distinct counts the legs that pull along lines of their own: of several that
// go to one point, one may come to carry for all.
func (h hanging) distinct() int {
	n := 0
	for i, l := range h.balance.Lines {
		own := !slices.ContainsFunc(h.balance.Lines[:i], func(other mechanics.LineState) bool {
			return r3.Norm(r3.Cross(l.Direction, other.Direction)) < nearlyDependent
		})
		if own {
			n++
		}
	}
	return n
}

// dependent reports whether the directions of the legs lie in one plane, for
// three, or in one line, for two, or nearly so: then statics alone does not
// settle their forces.
func (h hanging) dependent() bool {
	if h.balance == nil {
		return false
	}
	lines := h.balance.Lines
	switch len(lines) {
	case 2:
		return r3.Norm(r3.Cross(lines[0].Direction, lines[1].Direction)) < nearlyDependent
	case 3:
		return outOfPlane(lines[0].Direction, lines[1].Direction, lines[2].Direction) < nearlyDependent
	}
	return false
}

// outOfPlane is the sine of the angle by which one of three directions leaves
// the plane of the other two, those that spread the most: their volume over
// the area of the two. The volume alone would shrink with steep legs too, which
// statics settles well. Directions that all lie in one line have no plane.
func outOfPlane(a, b, c r3.Vec) float64 {
	area := max(r3.Norm(r3.Cross(a, b)), r3.Norm(r3.Cross(b, c)), r3.Norm(r3.Cross(c, a)))
	if area < nearlyDependent {
		return 0
	}
	return math.Abs(r3.Dot(a, r3.Cross(b, c))) / area
}

func (w *work) legs() {
	for i, leg := range w.plan.Support.Legs {
		f := facts.Leg{
			Record:   facts.Record{Key: legKey(leg), At: at(leg.Pointer)},
			ID:       leg.ID,
			From:     w.plan.Support.From,
			To:       leg.End.Attachment.ID,
			EyeToEye: eyeToEye(leg),
			EndsIn:   string(leg.Down[len(leg.Down)-1].Item.Base().Kind),
			EndsAt:   leg.End.Attachment.Kind,
			Split:    w.split(),
			Slings:   len(slingsOf(leg)),
		}
		r := routeOf(leg)
		if len(r.needs) == 0 {
			f.LengthM = &r.lengthM
		}
		w.wait(f.Key, r.needs, absent(f, "length_m")...)
		w.pose.describeLeg(i, &f)
		f.ShareRatio = w.pose.share(i)
		w.count(i, &f)
		w.compareAngle(leg, &f)
		w.joinedLays(leg, &f)
		w.band(leg, &f)
		w.tagAngle(leg, &f)
		f.SteelsNamed, f.SteelsMixed = steels(leg)
		w.explainLeg(i, f)
		w.relate(f.Key, leg.End.Attachment.Pointer, "the attachment")
		w.out.Document.Legs = append(w.out.Document.Legs, f)
	}
}

// eyeToEye counts slings that follow each other with no fitting between.
func eyeToEye(leg plan.Leg) int {
	n := 0
	for i := 1; i < len(leg.Down); i++ {
		if leg.Down[i].Item.Base().Kind == gear.WireRopeSlingKind && leg.Down[i-1].Item.Base().Kind == gear.WireRopeSlingKind {
			n++
		}
	}
	return n
}

func legKey(l plan.Leg) string { return "leg/" + l.ID }

// count adds what the leg would carry if only as many legs carried as the
// profile counts, and which of the two forces its parts are judged by.
func (w *work) count(i int, f *facts.Leg) {
	if f.TensionAtWorstN == nil {
		return
	}
	f.TensionJudgedN, f.JudgedBy = ptr(*f.TensionAtWorstN), ptr("own_force")
	if f.WorstCorner != nil {
		f.JudgedBy = ptr("own_force_at_worst")
	}
	if w.split() == settledByStatics {
		return
	}
	// A slack leg counts too: a few millimeters can tighten it.
	angle := w.pose.balance.Lines[i].AngleFromHorizontalDeg
	weight := *w.upperMassKg() * quantity.StandardGravity
	count := min(w.legsThatCount(), w.pose.distinct())
	counted := capacity.CountedShareN(weight, count, angle)
	if math.IsInf(counted, 0) || math.IsNaN(counted) {
		f.TensionJudgedN, f.JudgedBy = nil, nil
		return
	}
	f.TensionCountedN = &counted
	if counted > *f.TensionJudgedN {
		f.TensionJudgedN, f.JudgedBy = ptr(counted), ptr("legs_counted")
	}
}

// How far forces and angles of legs may differ for them to be loaded evenly
// (common practice).
const (
	evenShare    = 0.10
	evenAngleDeg = 15.0
)

// legsThatCount is the profile's count, for legs loaded evenly or unevenly.
func (w *work) legsThatCount() int {
	if w.cond.LegsWhenEven == 0 || w.pose.balance == nil {
		return w.cond.LegsThatCount
	}
	flattest, steepest := 90.0, 0.0
	for i, l := range w.pose.balance.Lines {
		if math.Abs(*w.pose.share(i)-1) > evenShare {
			return w.cond.LegsThatCount
		}
		flattest, steepest = min(flattest, l.AngleFromHorizontalDeg), max(steepest, l.AngleFromHorizontalDeg)
	}
	if steepest-flattest > evenAngleDeg {
		return w.cond.LegsThatCount
	}
	return w.cond.LegsWhenEven
}

// explainLeg notes why figures of a leg are absent. The bound and the counted
// force do not concern a leg whose force statics settles.
func (w *work) explainLeg(i int, f facts.Leg) {
	w.unposed(f.Key, absent(f, "slack", "angle_from_horizontal_deg", "tension_n", "tension_at_worst_n", "thrust_n", "share_ratio", "tension_judged_n", "judged_by")...)
	if f.AngleStated {
		w.out.Gaps.CopyTo(f.Key, "angle_from_horizontal_deg", f.Key, "stated_angle_off_deg")
	}
	if f.Split == settledByStiffness {
		w.unposed(f.Key, absent(f, "tension_bound_n", "tension_counted_n")...)
	}
	if w.pose.balance == nil {
		return
	}
	if w.pose.worst.failed != nil {
		fields := []string{"tension_at_worst_n", "tension_judged_n", "judged_by"}
		if f.Split == settledByStiffness {
			fields = append(fields, "tension_bound_n", "tension_counted_n")
		}
		w.explain(f.Key, w.pose.notAtWorst(), absent(f, fields...)...)
	}
	w.explain(f.Key, facts.Reason{Text: "leg " + f.ID + " hangs slack", Told: true}, absent(f, "angle_from_horizontal_deg")...)
	if f.AngleStated {
		w.explain(f.Key, facts.Reason{Text: "leg " + f.ID + " hangs slack", Told: true}, absent(f, "stated_angle_off_deg")...)
	}
	if f.Split == settledByStatics || w.pose.worst.failed != nil {
		return
	}
	w.explain(f.Key, facts.Reason{Text: noBound(w.pose.balance.Lines[i].Bound.Meaning)}, absent(f, "tension_bound_n")...)
	w.explain(f.Key, facts.Reason{Text: "leg " + f.ID + " lies level, where no pull on it could hold a weight"},
		absent(f, "tension_counted_n", "tension_judged_n", "judged_by")...)
}

func noBound(m mechanics.BoundMeaning) string {
	if m == mechanics.Unbounded {
		return "the legs can pull against each other without end"
	}
	if m == mechanics.Determinate {
		return "the legs lie so nearly in one plane that millimeters decide which of them carries"
	}
	return "the most that each leg can be made to carry could not be computed"
}
