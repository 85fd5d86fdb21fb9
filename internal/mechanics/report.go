package mechanics

import (
	"math"
	"slices"

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
func (s *system) report(h hanging, rests []rest) Result {
	st, tension := rests[0].st, rests[0].tension
	b := &Balance{
		Bodies:           s.bodyStates(h, st),
		RightingM:        rests[0].curve.rightingM,
		IntendedBalances: h.applies,
		Rests:            len(rests),
	}
	curves := make([]curve, 0, 3)
	for _, r := range rests {
		b.Rocks = b.Rocks || r.rocks
		curves = append(curves, r.curve)
	}
	if h.applies {
		curves = append(curves, h.intended)
	}
	b.leastOf(curves)
	var env envelope
	if !s.opt.SkipBounds {
		env = s.envelopeOf(st, tension)
	}
	b.Lines = s.lineStates(st, tension, &env)
	b.Hooks = s.hookStates(b.Lines)
	b.Together = s.joints(st, tension, &env)
	b.OutOfBalance = outOfBalance(s.model, s.opt, b)
	if !(b.OutOfBalance <= maxOutOfBalance) {
		return s.unsettled(st)
	}
	return Result{Verdict: Steady, Balance: b}
}

// leastOf takes the worst of several judgments of steadiness.
func (b *Balance) leastOf(curves []curve) {
	for i := range b.Bodies {
		b.Bodies[i].MayRiseM = math.Inf(1)
	}
	for _, c := range curves {
		b.RightingM = math.Min(b.RightingM, c.rightingM)
		for i, d := range c.mayRise {
			b.Bodies[i].MayRiseM = math.Min(b.Bodies[i].MayRiseM, d)
		}
	}
	b.RightingM = math.Max(0, b.RightingM)
}

func (s *system) bodyStates(h hanging, st []pose) []BodyState {
	out := make([]BodyState, len(st))
	above := s.mastersBelowHook()
	for b := range st {
		c := s.model.Bodies[b].CenterOfGravity
		at := r3.Add(st[b].at, s.reference)
		out[b] = BodyState{
			Origin:   r3.Sub(at, turn(st[b].q, c)),
			Attitude: Attitude(st[b].q), CenterOfGravity: at,
			DropM: math.Inf(1), SwingM: math.Inf(1),
		}
		out[b].TiltDeg, out[b].HeadingDeg = tiltAndHeading(s.masses[b].intended, st[b].q)
		_, out[b].RollsFreely = s.freeRoll(b)
		out[b].HookOffset, out[b].HasHookOffset = s.hookOffset(h.held, above, b)
		if h.found {
			way := r3.Sub(st[b].at, h.held[b].at)
			out[b].DropM, out[b].SwingM = -way.Z, math.Hypot(way.X, way.Y)
		}
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

// hookOffset takes rings that everything hangs through for the hook they hang from.
func (s *system) hookOffset(held []pose, above []int, b int) (hook r3.Vec, found bool) {
	if s.masses[b].point {
		return r3.Vec{}, false
	}
	for i := range s.strands {
		for _, r := range s.strands[i].runs {
			other, joined := r.across(b)
			if !joined {
				continue
			}
			e := r.from
			if e.body == b {
				e = r.to
			}
			at := e.at
			if slices.Contains(above, other) {
				at, _ = s.onlyHook()
			} else if other != World {
				return r3.Vec{}, false
			}
			if found && at != hook {
				return r3.Vec{}, false
			}
			hook, found = at, true
		}
	}
	d := r3.Sub(hook, held[b].at)
	return r3.Vec{X: d.X, Y: d.Y}, found
}

// outOfBalance adds up, from the reported figures and the model alone, what is
// left of forces, and of moments over the body's size, as a share of the weight.
func outOfBalance(m Model, o Options, b *Balance) float64 {
	worst, weight := 0.0, 0.0
	for i := range m.Bodies {
		weight += m.Bodies[i].MassKg * o.GravityMS2
	}
	for k := range m.Bodies {
		body, at := &m.Bodies[k], b.Bodies[k].Attitude.unit()
		force := r3.Vec{Z: -body.MassKg * o.GravityMS2}
		var moment r3.Vec
		arm := 1e-6
		eachPull(m, b, k, func(a, pull r3.Vec) {
			pull = turn(at, pull)
			r := r3.Sub(a, body.CenterOfGravity)
			arm = math.Max(arm, r3.Norm(r))
			force = r3.Add(force, pull)
			moment = r3.Add(moment, r3.Cross(turn(at, r), pull))
		})
		worst = math.Max(worst, math.Max(r3.Norm(force), r3.Norm(moment)/arm)/weight)
	}
	return worst
}

// eachPull calls f with the place and the force, newtons, of every run's pull on a
// body, in its own axes.
func eachPull(m Model, b *Balance, body int, f func(at, pull r3.Vec)) {
	for i := range m.Lines {
		for j := range b.Lines[i].Runs {
			r, is := m.Lines[i].run(j), &b.Lines[i].Runs[j]
			if r.From.Body == body {
				f(r.From.At, r3.Scale(is.TensionN, is.FromPull))
			}
			if r.To.Body == body {
				f(r.To.At, r3.Scale(is.TensionN, is.ToPull))
			}
		}
	}
}

// own gives a world vector in the axes of the end's body.
func (e end) own(st []pose, v r3.Vec) r3.Vec {
	if e.body == World {
		return v
	}
	return turn(quat.Conj(st[e.body].q), v)
}
