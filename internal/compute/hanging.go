package compute

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/mechanics"
)

// steady reports whether figures are known of how the load hangs.
func (w *work) steady() bool { return w.hung.Reason == "" && w.hung.Steady() }

// inPhases reports whether the lift has phases.
func (w *work) inPhases() bool { return len(w.plan.Phases) > 0 }

// phaseOf names the phase of a position; nil for a lift in one attitude.
func phaseOf(p hang.Position) *string {
	if p.Phase == "" {
		return nil
	}
	return &p.Phase
}

// theLoad is what the load is called.
const theLoad = "the load"

// inPhase adds to a name the phase of a position, where it has one.
func inPhase(name string, p hang.Position) string {
	if p.Phase == "" {
		return name
	}
	return name + " in phase " + p.Phase
}

// unposed notes why fields that come from the hanging position are absent.
func (w *work) unposed(key string, fields ...string) {
	w.wait(key, w.hung.Needs, fields...)
	if w.hung.Reason != "" {
		w.explain(key, facts.Reason{Text: w.hung.Reason, ToldOf: facts.TheLift}, fields...)
	}
}

// notAtWorst says why figures at the worst corner are absent.
func (w *work) notAtWorst() facts.Reason {
	return facts.Reason{Text: "the load does not hang steady with " + failedAt(w.hung.Failed()), ToldOf: facts.TheLift}
}

func failedAt(p *hang.Position) string {
	if p.Phase == "" {
		return p.Worst.FailedAt
	}
	return p.Worst.FailedAt + " in phase " + p.Phase
}

// describe sets what is known of the load as it hangs.
func (w *work) describe(l *facts.Load) {
	l.HangsFrom, l.Phases = "one_hook", max(1, len(w.hung.Positions))
	l.Named, l.TiltNamed, l.WorstTiltNamed = theLoad, theLoad, theLoad
	if len(w.plan.Hooks) > 1 {
		l.HangsFrom = "several_hooks"
	}
	l.PitchStepDeg = hang.PitchStepDeg(w.plan)
	if w.describeOverturned(l) || !w.steady() {
		return
	}
	l.Hangs, l.TiltDeg, l.RightingM = ptr("steady"), ptr(-1.0), ptr(math.Inf(1))
	l.DropM, l.SwingM = ptr(math.Inf(-1)), ptr(0.0)
	l.MayRiseM, l.HooksLeanDeg = ptr(math.Inf(1)), ptr(0.0)
	for i, p := range w.hung.Positions {
		b := p.Balance
		body := b.Bodies[0]
		describeTilt(l, p)
		righting := max(0, b.RightingM)
		if body.RollsFreely {
			righting = 0
		}
		l.RightingM = ptr(min(*l.RightingM, righting))
		l.MayRiseM = ptr(min(*l.MayRiseM, body.MayRiseM))
		l.HooksLeanDeg = ptr(max(*l.HooksLeanDeg, w.hooksLeanDeg(p)))
		l.DropM, l.SwingM = ptr(max(*l.DropM, body.DropM)), ptr(max(*l.SwingM, body.SwingM))
		if l.HangsFrom == "one_hook" { // under which it comes to rest
			l.PlumbOffsetM = ptr(max(body.SwingM, value(l.PlumbOffsetM)))
		} else if i == 0 { // as it leaves the ground
			l.SwingM = ptr(max(*l.SwingM, p.AsideM()))
		}
	}
	l.ThrustN, l.FlattestLegDeg = w.thrust()
}

// describeTilt takes how far the load tilts in a position, and whether it rocks
// there.
func describeTilt(l *facts.Load, p hang.Position) {
	body := p.Balance.Bodies[0]
	if body.TiltDeg > *l.TiltDeg {
		l.TiltDeg, l.Phase, l.TiltNamed = ptr(body.TiltDeg), phaseOf(p), inPhase(theLoad, p)
		l.PitchDeg, l.RollDeg = slopeDeg(body.Attitude, r3.Vec{X: 1}), slopeDeg(body.Attitude, r3.Vec{Y: 1})
	}
	if (p.Balance.Rocks || p.Balance.Rests > 1) && *l.Hangs == "steady" {
		l.Hangs, l.Named = ptr("rocks"), inPhase(theLoad, p)
	}
}

// slopeDeg is the angle from horizontal of an axis of a body as it hangs.
func slopeDeg(a mechanics.Attitude, axis r3.Vec) *float64 {
	v := a.World(axis)
	return ptr(math.Atan2(v.Z, math.Hypot(v.X, v.Y)) * 180 / math.Pi)
}

func value(v *float64) float64 {
	if v == nil {
		return 0
	}
	return *v
}

// describeOverturned sets the first position in which the load turns over.
func (w *work) describeOverturned(l *facts.Load) bool {
	for _, p := range w.hung.Positions {
		if p.Result.Verdict != mechanics.Overturns {
			continue
		}
		l.Hangs, l.Phase, l.Named = ptr("overturns"), phaseOf(p), inPhase(theLoad, p)
		for _, why := range p.Result.Why {
			if why.Cause == mechanics.PointsBelow {
				l.Hangs = ptr("points_below_center_of_gravity")
			}
			if why.Cause == mechanics.Turned {
				l.TurnedDeg = ptr(why.Measured)
			}
		}
		return true
	}
	return false
}

// describeWorst sets how the load hangs at its worst.
func (w *work) describeWorst(l *facts.Load) {
	for _, p := range w.hung.Positions {
		l.Corners += p.Worst.Corners
	}
	l.HangsAtWorst = l.Hangs
	if !w.steady() {
		return
	}
	if p := w.hung.Failed(); p != nil {
		l.HangsAtWorst, l.WorstCorner = ptr(verdictAtWorst(*p.Worst.Failed)), ptr(failedAt(p))
		return
	}
	l.TiltAtWorstDeg = ptr(0.0)
	for _, p := range w.hung.Positions {
		if p.Worst.TiltDeg > *l.TiltAtWorstDeg {
			l.TiltAtWorstDeg, l.WorstTiltNamed = ptr(p.Worst.TiltDeg), inPhase(theLoad, p)
		}
	}
}

func verdictAtWorst(r mechanics.Result) string {
	if r.Verdict != mechanics.Overturns {
		return "does_not_balance"
	}
	for _, why := range r.Why {
		if why.Cause == mechanics.PointsBelow {
			return "points_below_center_of_gravity"
		}
	}
	return "overturns"
}

// thrust is the greatest horizontal part of the force of a leg that holds the
// load, and the angle from horizontal of the flattest leg that carries.
func (w *work) thrust() (thrustN, flattestDeg *float64) {
	thrustN, flattestDeg = ptr(0.0), ptr(90.0)
	for _, p := range w.hung.Positions {
		for i, leg := range w.hung.Legs {
			line := p.Line(i)
			if line == nil || hang.BodyUnder(w.plan, leg.Leg) != 0 {
				continue
			}
			for _, run := range line.Runs {
				if !run.Slack {
					*thrustN = max(*thrustN, horizontal(run))
					*flattestDeg = min(*flattestDeg, run.AngleFromHorizontalDeg)
				}
			}
		}
	}
	return thrustN, flattestDeg
}

func horizontal(run mechanics.RunState) float64 {
	return run.TensionN * math.Cos(run.AngleFromHorizontalDeg*math.Pi/180)
}

// flattest is the least angle from horizontal of the runs of a leg that carry.
func flattest(line *mechanics.LineState) (deg float64, carries bool) {
	deg = 90
	for _, run := range line.Runs {
		if !run.Slack {
			deg, carries = min(deg, run.AngleFromHorizontalDeg), true
		}
	}
	return deg, carries
}

// describeLeg sets what is known of a leg as it hangs: each figure from the phase
// in which it is worst.
func (w *work) describeLeg(i int, f *facts.Leg) {
	if !w.steady() {
		return
	}
	f.Slack, f.TensionN, f.ThrustN = ptr(false), ptr(-1.0), ptr(0.0)
	for _, p := range w.hung.Positions {
		line := p.Line(i)
		if line == nil {
			continue
		}
		if line.Slack && !*f.Slack {
			f.Slack, f.SlackPhase, f.SlackNamed = ptr(true), phaseOf(p), inPhase(f.SlackNamed, p)
		}
		if line.TensionN > *f.TensionN {
			f.TensionN, f.TensionPhase = ptr(line.TensionN), phaseOf(p)
			f.ShareRatio = share(p, i)
			w.pullAtEnd(p, line, f)
		}
		for _, run := range line.Runs {
			f.ThrustN = ptr(max(*f.ThrustN, horizontal(run)))
		}
		if deg, carries := flattest(line); carries && (f.AngleFromHorizontalDeg == nil || deg < *f.AngleFromHorizontalDeg) {
			f.AngleFromHorizontalDeg, f.FlattestPhase, f.FlattestNamed = &deg, phaseOf(p), inPhase(f.ID, p)
		}
	}
	if *f.TensionN < 0 {
		f.Slack, f.TensionN, f.ThrustN = nil, nil, nil
		w.explain(f.Key, facts.Reason{Text: "leg " + f.ID + " carries in no phase"}, "slack", "tension_n", "thrust_n", "tension_at_worst_n", "tension_judged_n", "judged_by")
		return
	}
	w.describeLegAtWorst(i, f)
}

// plumbShare is how level a leg has to go, as a share of its length, for a direction
// in plan to mean anything.
const plumbShare = 1e-3

// pullAtEnd sets the direction of a leg seen from above, and what its first run
// pulls on its end.
func (w *work) pullAtEnd(p hang.Position, line *mechanics.LineState, f *facts.Leg) {
	run := line.Runs[0]
	along := p.Balance.Bodies[0].Attitude.World(r3.Vec{X: 1})
	f.PlanDirectionDeg = ptr(0.0)
	if math.Hypot(run.Direction.X, run.Direction.Y) > plumbShare {
		turn := math.Atan2(run.Direction.Y, run.Direction.X) - math.Atan2(along.Y, along.X)
		f.PlanDirectionDeg = ptr(math.Remainder(turn, 2*math.Pi) * 180 / math.Pi)
	}
	pull := r3.Scale(run.TensionN, run.ToPull)
	f.PullAlongN, f.PullAcrossN, f.PullUpN = &pull.X, &pull.Y, &pull.Z
}

func (w *work) describeLegAtWorst(i int, f *facts.Leg) {
	if w.hung.Failed() != nil {
		return
	}
	f.TensionAtWorstN, f.JudgedPhase = ptr(0.0), f.TensionPhase
	for _, p := range w.hung.Positions {
		if e := p.Worst; e.OwnN[i] > *f.TensionAtWorstN {
			f.TensionAtWorstN, f.WorstCorner, f.JudgedPhase = ptr(e.OwnN[i]), word(e.OwnAt[i]), phaseOf(p)
		}
	}
	if f.Split == settledByStiffness {
		f.TensionBoundN, f.BoundBy, _ = w.boundOf(i)
	}
}

// boundOf is the most that a leg can be made to carry, and by which differences
// of length; nil where it can't be told in some phase.
func (w *work) boundOf(i int) (boundN *float64, by, phase *string) {
	most, how := 0.0, "any_lengths"
	raise := func(p hang.Position, n float64) {
		if n > most {
			most, phase = n, phaseOf(p)
		}
	}
	for _, p := range w.hung.Positions {
		line := p.Line(i)
		if line == nil {
			continue
		}
		group := p.Group(i)
		// Of legs that only just are independent the bound would be the force
		// itself, which a millimeter changes: it is no bound then.
		bounded := line.Bound.Meaning == mechanics.AnySplit || line.Bound.Meaning == mechanics.Determinate && !p.Dependent(group)
		switch {
		case p.Worst.Lengths && len(group) >= splitLegs:
			raise(p, max(p.Worst.LengthN[i], p.Worst.OwnN[i]))
			how = "length_tolerance"
		case bounded && !math.IsInf(p.Worst.BoundN[i], 0):
			raise(p, p.Worst.BoundN[i])
		default:
			return nil, nil, nil
		}
	}
	return &most, &how, phase
}

// share is a leg's own force over the mean of all that hold the same body.
func share(p hang.Position, i int) *float64 {
	group := p.Group(i)
	sum := 0.0
	for _, j := range group {
		sum += p.Line(j).TensionN
	}
	if sum == 0 {
		return nil
	}
	return ptr(p.Line(i).TensionN * float64(len(group)) / sum)
}

// anyLine returns the state of a leg in the first position that tests true.
func (w *work) anyLine(i int, test func(hang.Position, *mechanics.LineState) bool) bool {
	return slices.ContainsFunc(w.hung.Positions, func(p hang.Position) bool {
		line := p.Line(i)
		return line != nil && test(p, line)
	})
}
