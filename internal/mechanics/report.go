package mechanics

import (
	"math"

	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/spatial/r3"
)

// maxOutOfBalance is the share of the weight that may be left over on any body
// in a result called steady.
const maxOutOfBalance = 1e-6

// carriesNothing is the share of the weight below which a line counts as slack.
const carriesNothing = 1e-6

// report fills the figures of a steady rest, after adding up forces and moments
// once more from those very figures.
func (s *system) report(held []pose, rests []rest, intended curve, applies bool) Result {
	st, tension := rests[0].st, rests[0].tension
	b := &Balance{
		Lines:            s.lineStates(st, tension),
		Bodies:           s.bodyStates(held, st),
		RightingM:        rests[0].curve.rightingM,
		IntendedBalances: applies,
		Rests:            len(rests),
	}
	for _, r := range rests {
		b.Rocks = b.Rocks || r.rocks
	}
	for _, r := range rests[1:] {
		b.RightingM = math.Min(b.RightingM, r.curve.rightingM)
	}
	if applies {
		b.RightingM = math.Min(b.RightingM, intended.rightingM)
	}
	b.RightingM = math.Max(0, b.RightingM)
	b.Hooks = s.hookStates(b.Lines)
	b.Together = s.joints(st, b.Lines)
	b.OutOfBalance = outOfBalance(s.model, s.opt, b)
	if !(b.OutOfBalance <= maxOutOfBalance) {
		return s.unsettled(st)
	}
	return Result{Verdict: Steady, Balance: b}
}

func (s *system) lineStates(st []pose, tension []float64) []LineState {
	bound := s.bounds(st, tension)
	out := make([]LineState, len(s.strands))
	for i := range s.strands {
		l := &s.strands[i]
		d := l.span(st)
		n := unit(d)
		flat := degrees(math.Atan2(math.Abs(n.Z), math.Hypot(n.X, n.Y)))
		out[i] = LineState{
			TensionN: tension[i], Slack: tension[i] <= carriesNothing*s.weight,
			Strain:    r3.Norm(d)/l.length - 1,
			Direction: n, FromPull: l.from.own(st, n), ToPull: l.to.own(st, r3.Scale(-1, n)),
			AngleFromHorizontalDeg: flat, AngleFromVerticalDeg: 90 - flat,
			Bound: bound[i],
		}
	}
	return out
}

// own gives a world vector in the axes of the end's body.
func (e end) own(st []pose, v r3.Vec) r3.Vec {
	if e.body == World {
		return v
	}
	return turn(quat.Conj(st[e.body].q), v)
}

func (s *system) bodyStates(held, st []pose) []BodyState {
	out := make([]BodyState, len(st))
	for b := range st {
		c := s.model.Bodies[b].CenterOfGravity
		at := r3.Add(st[b].at, s.reference)
		out[b] = BodyState{
			Origin:   r3.Sub(at, turn(st[b].q, c)),
			Attitude: Attitude(st[b].q), CenterOfGravity: at,
		}
		out[b].TiltDeg, out[b].HeadingDeg = tiltAndHeading(s.masses[b].intended, st[b].q)
		_, out[b].RollsFreely = s.freeRoll(b)
		out[b].HookOffset, out[b].HasHookOffset = s.hookOffset(held, b)
	}
	return out
}

// freeRoll is rollAxis without the case of a single point, where rolling is
// the turn about the vertical.
func (s *system) freeRoll(b int) (r3.Vec, bool) {
	if _, along, _ := s.holdingLine(b); along == (r3.Vec{}) {
		return r3.Vec{}, false
	}
	return s.rollAxis(b)
}

func (s *system) hookOffset(held []pose, b int) (r3.Vec, bool) {
	var hook r3.Vec
	found := false
	for i := range s.strands {
		other, joined := s.strands[i].across(b)
		if !joined {
			continue
		}
		e := s.strands[i].from
		if e.body == b {
			e = s.strands[i].to
		}
		if other != World || found && e.at != hook {
			return r3.Vec{}, false
		}
		hook, found = e.at, true
	}
	d := r3.Sub(hook, held[b].at)
	return r3.Vec{X: d.X, Y: d.Y}, found
}

func (s *system) hookStates(lines []LineState) []HookState {
	var out []HookState
	add := func(at, load r3.Vec) {
		for i := range out {
			if out[i].At == at {
				out[i].LoadN = r3.Add(out[i].LoadN, load)
				return
			}
		}
		out = append(out, HookState{At: at, LoadN: load})
	}
	for i, l := range s.model.Lines {
		if l.From.Body == World {
			add(l.From.At, r3.Scale(lines[i].TensionN, lines[i].FromPull))
		}
		if l.To.Body == World {
			add(l.To.At, r3.Scale(lines[i].TensionN, lines[i].ToPull))
		}
	}
	return out
}

// outOfBalance adds up, from the reported figures and the model alone, what is
// left of forces, and of moments over the body's size, as a share of the weight.
func outOfBalance(m Model, o Options, b *Balance) float64 {
	worst, weight := 0.0, 0.0
	for _, body := range m.Bodies {
		weight += body.MassKg * o.GravityMS2
	}
	for k, body := range m.Bodies {
		force := r3.Vec{Z: -body.MassKg * o.GravityMS2}
		var moment r3.Vec
		arm := 1e-6
		for i, l := range m.Lines {
			for _, side := range []struct {
				a    Anchor
				pull r3.Vec
			}{{l.From, b.Lines[i].FromPull}, {l.To, b.Lines[i].ToPull}} {
				if side.a.Body != k {
					continue
				}
				pull := b.Bodies[k].Attitude.World(r3.Scale(b.Lines[i].TensionN, side.pull))
				r := r3.Sub(side.a.At, body.CenterOfGravity)
				arm = math.Max(arm, r3.Norm(r))
				force = r3.Add(force, pull)
				moment = r3.Add(moment, r3.Cross(b.Bodies[k].Attitude.World(r), pull))
			}
		}
		worst = math.Max(worst, math.Max(r3.Norm(force), r3.Norm(moment)/arm)/weight)
	}
	return worst
}
