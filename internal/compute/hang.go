package compute

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
)

// hanging is how the load hangs, as far as it could be found.
type hanging struct {
	needs   []facts.Input // what it waits for
	reason  string        // why there are no figures though nothing is missing
	result  *mechanics.Result
	balance *mechanics.Balance
	worst   envelope // good only where there is a balance
}

// hang finds the true position, unless inputs are missing.
func (w *work) hang() {
	model, needs := w.model()
	if len(needs) > 0 {
		w.pose.needs = needs
		return
	}
	result, err := w.solve(model)
	if err != nil {
		w.noFigures(NoBalance, "/rigging/0", "the lift can't be computed: "+err.Error(), nil)
		return
	}
	w.pose.result, w.pose.balance = &result, result.Balance
	if needs := w.stiffNeeds(); w.pose.dependent() && len(needs) > 0 {
		// The split depends on stiffness after all, and it is not known.
		w.pose = hanging{needs: unique(needs)}
		return
	}
	switch result.Verdict {
	case mechanics.OutOfReach, mechanics.NoBalance:
		w.notHanging(result, tooThin(model))
	case mechanics.Overturns:
		w.pose.reason = "the load turns over"
	case mechanics.Steady:
		w.envelope(model)
	default:
		w.noFigures(NoBalance, "/rigging/0", fmt.Sprintf("the lift can't be computed: unknown result %q", result.Verdict), nil)
	}
}

// notHanging words what keeps the load from hanging; thin says that the legs
// are long enough and only stretch too far.
func (w *work) notHanging(result mechanics.Result, thin bool) {
	id := NoBalance
	if result.Verdict == mechanics.OutOfReach {
		id = OutOfReach
	}
	for _, why := range result.Why {
		pointer, related := "/rigging/0", []facts.Related(nil)
		for i, n := range why.Lines {
			leg := w.plan.Support.Legs[n]
			if i == 0 {
				pointer = leg.Pointer
			} else {
				related = append(related, facts.Related{At: at(leg.Pointer), Caption: "leg " + leg.ID + " too"})
			}
		}
		message := why.Text
		if id == OutOfReach && thin {
			message = "the ropes are too thin for this mass, or one of the two is not as written: " + message
		}
		w.noFigures(id, pointer, message, related)
	}
	if len(result.Why) == 0 {
		w.noFigures(id, "/rigging/0", "no position was found in which the load hangs at rest", nil)
	}
}

func (w *work) noFigures(id, pointer, message string, related []facts.Related) {
	w.troubles = append(w.troubles, Trouble{ID: id, Message: message, At: pointer, Related: related})
	w.pose.reason = "no position was found in which the load hangs"
}

// unposed notes why fields that come from the hanging position are absent.
func (w *work) unposed(key string, fields ...string) {
	w.wait(key, w.pose.needs, fields...)
	if w.pose.reason != "" {
		w.explain(key, facts.Reason{Text: w.pose.reason, Told: true}, fields...)
	}
}

// describe sets what is known of the load as it hangs.
func (h hanging) describe(l *facts.Load) {
	if h.result == nil {
		return
	}
	switch h.result.Verdict {
	case mechanics.Steady:
		body := h.balance.Bodies[0]
		l.Hangs, l.TiltDeg = ptr("steady"), ptr(body.TiltDeg)
		if h.balance.Rocks || h.balance.Rests > 1 {
			l.Hangs = ptr("rocks")
		}
		l.RightingM = ptr(max(0, h.balance.RightingM))
		if body.RollsFreely {
			l.RightingM = ptr(0.0)
		}
		l.ThrustN, l.FlattestLegDeg = h.thrust()
		if body.HasHookOffset {
			l.PlumbOffsetM = ptr(r3.Norm(body.HookOffset))
		}
	case mechanics.Overturns:
		l.Hangs = ptr("overturns")
		for _, why := range h.result.Why {
			if why.Cause == mechanics.PointsBelow {
				l.Hangs = ptr("points_below_center_of_gravity")
			}
			if why.Cause == mechanics.Turned {
				l.TurnedDeg = ptr(why.Measured)
			}
		}
	}
}

// thrust is the greatest horizontal part of a leg's force, and the angle from
// horizontal of the flattest leg that carries.
func (h hanging) thrust() (thrustN, flattestDeg *float64) {
	thrustN, flattestDeg = ptr(0.0), ptr(90.0)
	for _, l := range h.balance.Lines {
		if !l.Slack {
			*thrustN = max(*thrustN, l.TensionN*math.Cos(l.AngleFromHorizontalDeg*math.Pi/180))
			*flattestDeg = min(*flattestDeg, l.AngleFromHorizontalDeg)
		}
	}
	return thrustN, flattestDeg
}

// describeLeg sets what is known of a leg as it hangs.
func (h hanging) describeLeg(i int, f *facts.Leg) {
	if h.balance == nil {
		return
	}
	line := h.balance.Lines[i]
	f.Slack, f.TensionN = ptr(line.Slack), ptr(line.TensionN)
	if h.worst.failed == nil {
		f.TensionAtWorstN = ptr(h.worst.ownN[i])
		if at := h.worst.ownAt[i]; at != "" {
			f.WorstCorner = ptr(at)
		}
	}
	f.ThrustN = ptr(line.TensionN * math.Cos(line.AngleFromHorizontalDeg*math.Pi/180))
	if !line.Slack {
		f.AngleFromHorizontalDeg = ptr(line.AngleFromHorizontalDeg)
	}
	// Of legs that only just are independent the bound would be the force
	// itself, which a millimeter changes: it is no bound then.
	bounded := line.Bound.Meaning == mechanics.AnySplit || line.Bound.Meaning == mechanics.Determinate && !h.dependent()
	switch {
	case f.Split != settledByStiffness || h.worst.failed != nil:
	case h.worst.lengths && len(h.balance.Lines) >= splitLegs:
		f.TensionBoundN, f.BoundBy = ptr(max(h.worst.lengthN[i], h.worst.ownN[i])), ptr("length_tolerance")
	case bounded && !math.IsInf(h.worst.bounds[i], 0):
		f.TensionBoundN, f.BoundBy = ptr(h.worst.bounds[i]), ptr("any_lengths")
	}
}
