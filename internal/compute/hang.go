package compute

import (
	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// stiffestN stands for a rope of unknown diameter where statics alone settles
// the forces and the stretch only moves the load by millimeters.
const stiffestN = 50e6

// hanging is how the load hangs, as far as it could be found.
type hanging struct {
	needs   []facts.Input // what it waits for
	reason  string        // why there are no figures though nothing is missing
	result  *mechanics.Result
	balance *mechanics.Balance
}

// hang finds the true position, unless inputs are missing.
func (w *work) hang() {
	model, needs := w.model()
	if len(needs) > 0 {
		w.pose.needs = needs
		return
	}
	result, err := mechanics.Solve(model, mechanics.Options{})
	if err != nil {
		w.noFigures(NoBalance, "/rigging/0", "the lift can't be computed: "+err.Error(), nil)
		return
	}
	w.pose.result, w.pose.balance = &result, result.Balance
	switch result.Verdict {
	case mechanics.OutOfReach, mechanics.NoBalance:
		w.notHanging(result)
	case mechanics.Overturns:
		w.pose.reason = "the load turns over"
	}
}

func (w *work) notHanging(result mechanics.Result) {
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
			related = append(related, facts.Related{At: at(leg.End.Attachment.Pointer), Caption: "where it goes"})
		}
		w.noFigures(id, pointer, why.Text, related)
	}
	if len(result.Why) == 0 {
		w.noFigures(id, "/rigging/0", "no position was found in which the load hangs at rest", nil)
	}
}

func (w *work) noFigures(id, pointer, message string, related []facts.Related) {
	w.troubles = append(w.troubles, Trouble{ID: id, Message: message, At: pointer, Related: related})
	w.pose.reason = "no position was found in which the load hangs"
}

// LegAngles hangs the load with every leg's length changed, and gives the
// angle of each leg from horizontal in degrees; false where the load does not
// hang steady or a leg is slack. It serves trials of other lengths.
func LegAngles(p *plan.Plan, c Conditions, length func(lengthM float64) float64) ([]float64, bool) {
	w := &work{plan: p, cond: c}
	model, needs := w.model()
	if len(needs) > 0 {
		return nil, false
	}
	for i := range model.Lines {
		model.Lines[i].LengthM = length(model.Lines[i].LengthM)
	}
	result, err := mechanics.Solve(model, mechanics.Options{})
	if err != nil || result.Balance == nil {
		return nil, false
	}
	angles := make([]float64, len(result.Balance.Lines))
	for i, l := range result.Balance.Lines {
		if l.Slack {
			return nil, false
		}
		angles[i] = l.AngleFromHorizontalDeg
	}
	return angles, true
}

// model describes the load and its legs for mechanics: one rigid body in the
// plan's own axes, all legs gathered at one point. A link between hook and
// legs hangs plumb below the hook, so its lower end is as fixed as the hook.
func (w *work) model() (mechanics.Model, []facts.Input) {
	var needs []facts.Input
	mass := w.upperMassKg()
	if mass == nil {
		needs = append(needs, massInput())
	}
	center := w.plan.Load.CenterOfGravity
	if center == nil {
		needs = append(needs, input("/load", "center_of_gravity", "the load's center of gravity"))
	}
	var lines []mechanics.Line
	for _, leg := range w.plan.Support.Legs {
		line, wants := w.line(leg)
		needs = append(needs, wants...)
		lines = append(lines, line)
	}
	if len(needs) > 0 {
		return mechanics.Model{}, unique(needs)
	}
	body := mechanics.Body{Name: "the load", MassKg: *mass, CenterOfGravity: vector(center)}
	return mechanics.Model{Bodies: []mechanics.Body{body}, Lines: lines}, nil
}

func (w *work) line(leg plan.Leg) (mechanics.Line, []facts.Input) {
	r := routeOf(leg)
	needs := r.needs
	if w.split() == settledByStiffness {
		needs = append(needs, r.stiffNeeds...)
	}
	a := leg.End.Attachment
	for _, c := range a.Lacks {
		needs = append(needs, input(a.Pointer, c, "attachment "+a.ID+"'s "+c))
	}
	if len(needs) > 0 {
		return mechanics.Line{}, needs
	}
	stiffness := r.stiffnessN
	if len(r.stiffNeeds) > 0 {
		stiffness = stiffestN
	}
	return mechanics.Line{
		Name:       "leg " + leg.ID,
		From:       mechanics.Hook(r3.Vec{}),
		To:         mechanics.Anchor{Body: 0, At: vector(a.At)},
		LengthM:    r.lengthM,
		StiffnessN: stiffness,
	}, nil
}

func vector(p *plan.Point) r3.Vec {
	return r3.Vec{X: float64(p.X), Y: float64(p.Y), Z: float64(p.Z)}
}

func unique(list []facts.Input) []facts.Input {
	var out []facts.Input
	seen := map[facts.Input]bool{}
	for _, in := range list {
		if !seen[in] {
			seen[in] = true
			out = append(out, in)
		}
	}
	return out
}

// without notes why fields that come from the hanging position are absent.
func (w *work) without(key string, fields ...string) {
	if w.pose.balance != nil {
		return
	}
	w.wait(key, w.pose.needs, fields...)
	if w.pose.reason == "" {
		return
	}
	for _, f := range fields {
		w.out.Gaps.Reason(key, f, w.pose.reason)
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
		if body.HasHookOffset {
			l.PlumbOffsetM = ptr(r3.Norm(body.HookOffset))
		}
	case mechanics.Overturns:
		l.Hangs = ptr("overturns")
		for _, why := range h.result.Why {
			if why.Cause == mechanics.PointsBelow {
				l.Hangs = ptr("two_legs_below_center_of_gravity")
			}
			if why.Cause == mechanics.Turned {
				l.TurnedDeg = ptr(why.Measured)
			}
		}
	}
}

// describeLeg sets what is known of a leg as it hangs.
func (h hanging) describeLeg(i int, f *facts.Leg) {
	if h.balance == nil {
		return
	}
	line := h.balance.Lines[i]
	f.Slack, f.TensionN = ptr(line.Slack), ptr(line.TensionN)
	if !line.Slack {
		f.AngleFromHorizontalDeg = ptr(line.AngleFromHorizontalDeg)
	}
	split := len(h.balance.Lines) >= splitLegs
	if split && (line.Bound.Meaning == mechanics.AnySplit || line.Bound.Meaning == mechanics.Determinate) {
		f.TensionBoundN = ptr(line.Bound.TensionN)
	}
}
