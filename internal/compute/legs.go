package compute

import (
	"math"
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// splitLegs is the number of legs from which statics alone as a rule no longer
// settles what each carries on a rigid load.
const splitLegs = 4

const (
	settledByStatics   = "settled_by_statics"
	settledByStiffness = "settled_by_stiffness"
)

// split says what settles the force in a leg.
func (w *work) split(leg int) string {
	if w.hung.ByStiffness(leg, w.plan) {
		return settledByStiffness
	}
	return settledByStatics
}

func (w *work) legs() {
	level, levels := w.hung.LevelLengths()
	for i, at := range w.hung.Legs {
		leg := at.Leg
		f := w.newLeg(i, at)
		if len(at.Route.Needs) == 0 {
			f.LengthM = &at.Route.LengthM
		}
		w.wait(f.Key, at.Route.Needs, absent(f, "length_m")...)
		if levels {
			f.LevelLengthM = &level[i]
		}
		w.describeLeg(i, &f)
		w.count(i, &f)
		w.compareAngle(leg, &f)
		w.joinedLays(leg, &f)
		w.band(leg, &f)
		w.tagAngle(leg, &f)
		f.SteelsNamed, f.SteelsMixed = steels(leg)
		f.SwivelInLine = swivelInLine(leg)
		w.explainLeg(i, f)
		if leg.End.Attachment != nil {
			w.relate(f.Key, leg.End.Attachment.Pointer, "the attachment")
		} else {
			w.relate(f.Key, leg.End.Round.Body.Pointer, "the body it goes round")
		}
		w.out.Document.Legs = append(w.out.Document.Legs, f)
	}
}

// newLeg begins the record of a leg with what the plan says of it.
func (w *work) newLeg(i int, l hang.Leg) facts.Leg {
	f := facts.Leg{
		Record:   facts.Record{Key: legKey(l.Leg), At: at(l.Pointer)},
		ID:       l.ID,
		From:     w.plan.Supports[l.Support].From,
		To:       goesTo(l.End),
		Holds:    "load",
		Hitch:    hitchOf(l.End.Kind),
		Runs:     1,
		EyeToEye: eyeToEye(l.Leg),
		EndsIn:   string(l.Down[len(l.Down)-1].Item.Base().Kind),
		EndsAt:   "body",
		Split:    w.split(i),
		Slings:   len(hang.SlingsOf(l.Leg)),
	}
	f.Doubled, f.PartsTakenEqual = l.Doubled, l.Doubled && w.cond.Parts == capacity.EqualParts
	f.Alone = w.legsOnLoad() == 1 && hang.BodyUnder(w.plan, l.Leg) == 0 && (l.End.Kind == plan.To || l.End.Kind == plan.Choke)
	f.TurningHeld = w.plan.Load.TurningHeldBy != ""
	f.HandTucked = slices.ContainsFunc(hang.SlingsOf(l.Leg), func(s *gear.WireRopeSling) bool { return tucked(s.Upper) && tucked(s.Lower) })
	if a := l.End.Attachment; a != nil {
		f.EndsAt = a.Kind
		if a.Beam != nil {
			f.EndsAt, f.Holds = "beam", a.Beam.ID
		}
	}
	if l.End.Kind == plan.Basket || l.End.Kind == plan.RunsTo {
		f.Runs = 2
	}
	f.EyesOnPlatesAbove = w.eyesOnPlatesAbove(l)
	f.LengthOpen, f.LengthNeededM = l.LeftOpen(w.plan), l.OpenM
	f.FlattestNamed, f.SlackNamed = f.ID, f.ID+" to "+f.To
	return f
}

// eyesOnPlatesAbove counts the upper ends of slings that hang straight in the plate of
// a beam.
func (w *work) eyesOnPlatesAbove(l hang.Leg) int {
	onPlate := func(s plan.Support, end plan.Use) bool {
		return s.Point != nil && len(s.By) == 0 && gear.IsSling(end.Item)
	}
	n := 0
	if l.Link == nil && onPlate(w.plan.Supports[l.Support], l.Down[0]) && l.End.Kind != plan.RunsTo {
		n++
	}
	if l.End.Kind == plan.Basket && onPlate(w.otherSupport(l), l.Down[len(l.Down)-1]) {
		n++
	}
	return n
}

// goesTo names where a leg ends.
func goesTo(e plan.End) string {
	switch {
	case e.Second != nil:
		return e.Attachment.ID + " and " + e.Second.ID
	case e.Attachment != nil:
		return e.Attachment.ID
	}
	return e.Round.Body.ID
}

func hitchOf(k plan.EndKind) string {
	switch k {
	case plan.Basket:
		return "basket"
	case plan.Choke:
		return "choke"
	case plan.RunsTo:
		return "over_sheave"
	}
	return straight
}

const straight = "straight"

// eyeToEye counts slings that follow each other with no fitting between.
func eyeToEye(leg plan.Leg) int {
	n := 0
	for i := 1; i < len(leg.Down); i++ {
		if isSling(leg.Down[i]) && isSling(leg.Down[i-1]) {
			n++
		}
	}
	return n
}

func legKey(l plan.Leg) string { return "leg/" + l.ID }

// count adds what the leg would carry if only as many legs carried as the
// profile counts, and which of the forces its parts are judged by.
func (w *work) count(i int, f *facts.Leg) {
	if f.TensionAtWorstN == nil {
		return
	}
	f.TensionJudgedN, f.JudgedBy = ptr(*f.TensionAtWorstN), ptr("own_force")
	if f.WorstCorner != nil {
		f.JudgedBy = ptr("own_force_at_worst")
	}
	if f.Split == settledByStatics {
		return
	}
	decides := w.decides(i)
	switch {
	case decides == Bound && f.TensionBoundN == nil:
		f.TensionJudgedN, f.JudgedBy, f.JudgedPhase = nil, nil, nil
	case decides == Bound && *f.TensionBoundN > *f.TensionJudgedN:
		f.TensionJudgedN, f.JudgedBy = f.TensionBoundN, ptr("bound")
		_, _, f.JudgedPhase = w.boundOf(i)
	case decides.legs() > 0:
		w.countLegs(i, f, decides.legs())
	}
}

// countLegs takes so many legs of a group to carry what the group carries. A
// slack leg counts too: a few millimeters can tighten it.
func (w *work) countLegs(i int, f *facts.Leg, legs int) {
	counted := 0.0
	var phase *string
	for _, p := range w.hung.Positions {
		line := p.Line(i)
		if line == nil {
			continue
		}
		group := p.Group(i)
		for _, run := range line.Runs {
			n := capacity.CountedShareN(upN(p, group), min(legs, p.Distinct(group))*len(line.Runs), run.AngleFromHorizontalDeg)
			if !(n <= counted) { // so that one that is no number stays
				counted, phase = n, phaseOf(p)
			}
		}
	}
	if math.IsInf(counted, 0) || math.IsNaN(counted) {
		f.TensionJudgedN, f.JudgedBy, f.JudgedPhase = nil, nil, nil
		return
	}
	f.TensionCountedN = &counted
	if counted > *f.TensionJudgedN {
		f.TensionJudgedN, f.JudgedBy, f.JudgedPhase = ptr(counted), ptr("legs_counted"), phase
	}
}

// upN is what legs that hold one body lift together, in newtons.
func upN(p hang.Position, group []int) float64 {
	sum := 0.0
	for _, i := range group {
		for _, run := range p.Line(i).Runs {
			sum += run.TensionN * math.Abs(run.Direction.Z)
		}
	}
	return sum
}

// How far forces and angles of legs may differ for them to be loaded evenly
// (common practice).
const (
	evenShare    = 0.10
	evenAngleDeg = 15.0
)

// decides is what the profile lets decide of a leg, for legs loaded evenly or
// unevenly.
func (w *work) decides(i int) Decides {
	if w.cond.DecidesWhenEven == "" || !w.steady() {
		return w.cond.Decides
	}
	for _, p := range w.hung.Positions {
		if p.Line(i) != nil && !even(p, p.Group(i)) {
			return w.cond.Decides
		}
	}
	return w.cond.DecidesWhenEven
}

// even reports whether legs are loaded evenly in a position.
func even(p hang.Position, group []int) bool {
	least, steepest := 90.0, 0.0
	for _, i := range group {
		if s := share(p, i); s == nil || math.Abs(*s-1) > evenShare {
			return false
		}
		for _, run := range p.Line(i).Runs {
			least, steepest = min(least, run.AngleFromHorizontalDeg), max(steepest, run.AngleFromHorizontalDeg)
		}
	}
	return steepest-least <= evenAngleDeg
}

// legsThatCount is the profile's number of legs that carry, for the first leg
// whose split stiffness settles; 0 where it does not go by a number.
func (w *work) legsThatCount() int {
	for i := range w.hung.Legs {
		if w.split(i) == settledByStiffness {
			return w.decides(i).legs()
		}
	}
	return w.cond.Decides.legs()
}

// explainLeg notes why figures of a leg are absent. The bound and the counted
// force do not concern a leg whose force statics settles.
func (w *work) explainLeg(i int, f facts.Leg) {
	w.unposed(f.Key, absent(f, "slack", "angle_from_horizontal_deg", "tension_n", "tension_at_worst_n", "direction_in_plan_deg", "pull_along_n", "pull_across_n", "pull_up_n", "thrust_n", "share_ratio", "tension_judged_n", "judged_by")...)
	if f.AngleStated {
		w.out.Gaps.CopyTo(f.Key, "angle_from_horizontal_deg", f.Key, "stated_angle_off_deg")
	}
	open := []string{"tension_bound_n"}
	if w.decides(i).legs() > 0 {
		open = append(open, "tension_counted_n")
	}
	if f.Split == settledByStiffness {
		w.unposed(f.Key, absent(f, open...)...)
	}
	if f.LengthOpen {
		w.unposed(f.Key, absent(f, "length_needed_m")...)
	}
	if !w.steady() {
		return
	}
	if w.hung.Failed() != nil {
		fields := []string{"tension_at_worst_n", "tension_judged_n", "judged_by"}
		if f.Split == settledByStiffness {
			fields = append(fields, open...)
		}
		w.explain(f.Key, w.notAtWorst(), absent(f, fields...)...)
	}
	slack := facts.Reason{Text: "leg " + f.ID + " hangs slack", ToldOf: f.ID}
	w.explain(f.Key, slack, absent(f, "angle_from_horizontal_deg", "share_ratio")...)
	if f.AngleStated {
		w.explain(f.Key, slack, absent(f, "stated_angle_off_deg")...)
	}
	if f.Split == settledByStatics || w.hung.Failed() != nil {
		return
	}
	w.explain(f.Key, facts.Reason{Text: w.noBound(i)}, absent(f, "tension_bound_n")...)
	why := facts.Reason{Text: "leg " + f.ID + " lies level, where no pull on it could hold a weight"}
	if w.decides(i) == Bound {
		why = facts.Reason{Text: w.noBound(i)}
	}
	w.explain(f.Key, why, absent(f, append(open[1:], "tension_judged_n", "judged_by")...)...)
}

// noBound says why the most that a leg can be made to carry is not known.
func (w *work) noBound(i int) string {
	has := func(m mechanics.BoundMeaning) bool {
		return w.anyLine(i, func(_ hang.Position, l *mechanics.LineState) bool { return l.Bound.Meaning == m })
	}
	switch {
	case has(mechanics.Unbounded):
		return "the legs can pull against each other without end"
	case has(mechanics.Unknown):
		return "the most that each leg can be made to carry could not be computed"
	}
	return "the legs lie so nearly in one plane that millimeters decide which of them carries"
}
