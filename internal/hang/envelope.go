package hang

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
)

// Envelope is how the load hangs at the corners of what the plan gives
// tolerances of: the mass, the box of the center of gravity, and the lengths of
// the legs. Slices go by leg, or by the groups of the model.
type Envelope struct {
	Corners int
	// The first corner where it does not hang steady, and where that is.
	Failed      *mechanics.Result
	FailedAt    string
	TiltDeg     float64
	OwnN        []float64     // the most with the lengths as given
	OwnAt       []string      // where that is; empty as the plan has it
	LengthN     []float64     // the most with lengths within their tolerance
	BoundN      []float64     // the largest bound at any center of gravity
	TogetherN   []float64     // by group: the same
	LengthSumN  []float64     // by group: the most with lengths within their tolerance
	Hooks       []HookAtWorst // by hook
	SupportN    []float64     // by support: the most that all ends of slings on it pull together
	Beams       []BeamAtWorst // by beam
	FlattestDeg []float64     // by leg: its least angle from horizontal while it carries; 90 where it never does
	Lengths     bool          // every sling has a tolerance of its length
}

// sameForce is the share below which a force at a corner is not greater.
const sameForce = 1e-9

// allCorners is the number of legs up to which every combination of their longest
// and shortest is hung. Of more, each leg's worst is sought by what a change of
// each length does to it.
const allCorners = 6

// envelope hangs the load of a position at all corners. It costs nothing where
// the plan gives no tolerance.
func (l *Lift) envelope(pos *Position) {
	e := &pos.Worst
	e.begin(l, pos)
	lengths := pos.lengthCorners(e.Lengths)
	for _, c := range pos.corners() {
		shifted := pos.shifted(c)
		if c.name != "" && !e.center(pos, shifted, c.name) {
			return
		}
		for _, change := range lengths {
			if !e.stretch(pos, shifted, change, c.name) {
				return
			}
		}
	}
}

// begin starts from the position as the plan has it.
func (e *Envelope) begin(l *Lift, pos *Position) {
	b := pos.Balance
	e.TiltDeg = b.Bodies[0].TiltDeg
	e.Lengths = allLengthTolerances(l.Legs) && pos.anyByStiffness()
	e.Hooks = make([]HookAtWorst, len(pos.layout.hookAt))
	e.SupportN = make([]float64, len(pos.layout.inUse))
	e.Beams = make([]BeamAtWorst, len(pos.layout.beam))
	e.FlattestDeg = slices.Repeat([]float64{90}, len(l.Legs))
	e.take(pos, pos.model, b)
	for i := range l.Legs {
		own, bound := 0.0, 0.0
		if state := pos.Line(i); state != nil {
			own, bound = state.TensionN, boundOf(state.Bound)
		}
		e.OwnN, e.OwnAt = append(e.OwnN, own), append(e.OwnAt, "")
		e.LengthN, e.BoundN = append(e.LengthN, own), append(e.BoundN, bound)
	}
	for _, j := range b.Together {
		e.TogetherN, e.LengthSumN = append(e.TogetherN, boundOf(j.Bound)), append(e.LengthSumN, j.MagnitudeN)
	}
}

func (p *Position) anyByStiffness() bool {
	for i := range p.layout.lift.legs {
		if p.byStiffness(i) {
			return true
		}
	}
	return false
}

// boundOf is a bound as a number; infinite where there is none.
func boundOf(b mechanics.Bound) float64 {
	if b.Meaning == mechanics.AnySplit || b.Meaning == mechanics.Determinate {
		return b.TensionN
	}
	return math.Inf(1)
}

// BeamAtWorst is the most that is in a beam, and its greatest tilt.
type BeamAtWorst struct{ TiltDeg, CompressionN, BendingNm float64 }

// inside takes what is in each beam, where that is more than before.
func (e *Envelope) inside(pos *Position, m mechanics.Model, b *mechanics.Balance) {
	for i, n := range pos.layout.beam {
		if n < 0 {
			continue
		}
		at, along := pos.layout.beamAxis(i)
		s := mechanics.SectionForces(m, mechanics.Options{}, b, n, at, along)
		worst := &e.Beams[i]
		worst.TiltDeg = max(worst.TiltDeg, b.Bodies[n].TiltDeg)
		worst.CompressionN, worst.BendingNm = max(worst.CompressionN, s.CompressionN), max(worst.BendingNm, s.BendingNm)
	}
}

// take takes everything that grows with how the load hangs at one corner.
func (e *Envelope) take(pos *Position, m mechanics.Model, b *mechanics.Balance) {
	e.TiltDeg = max(e.TiltDeg, b.Bodies[0].TiltDeg)
	e.inside(pos, m, b)
	e.hooks(pos, b)
	for i := range e.SupportN {
		e.SupportN[i] = max(e.SupportN[i], r3.Norm(pos.pullOn(i, b, func(_ int, run mechanics.RunState) float64 { return run.TensionN })))
	}
	for i, n := range pos.layout.line {
		if n < 0 {
			continue
		}
		for _, run := range b.Lines[n].Runs {
			if !run.Slack {
				e.FlattestDeg[i] = min(e.FlattestDeg[i], run.AngleFromHorizontalDeg)
			}
		}
	}
}

// HookAtWorst is the most on a hook, the most of it sideways, and how far it leans.
type HookAtWorst struct{ LoadN, HorizontalN, LeanDeg float64 }

// hooks takes what is on each hook, where that is more than before.
func (e *Envelope) hooks(pos *Position, b *mechanics.Balance) {
	for _, h := range pos.layout.hooks() {
		state := hookAt(b, pos.layout.headOf(h))
		if state == nil {
			continue
		}
		worst := &e.Hooks[h]
		aside := math.Hypot(state.LoadN.X, state.LoadN.Y)
		worst.LoadN = max(worst.LoadN, r3.Norm(state.LoadN))
		worst.HorizontalN = max(worst.HorizontalN, aside)
		worst.LeanDeg = max(worst.LeanDeg, math.Atan2(aside, -state.LoadN.Z)*180/math.Pi)
	}
}

func hookAt(b *mechanics.Balance, at r3.Vec) *mechanics.HookState {
	i := slices.IndexFunc(b.Hooks, func(h mechanics.HookState) bool { return h.At == at })
	if i < 0 {
		return nil
	}
	return &b.Hooks[i]
}

// Hook is what is on a hook in a position; nil where it is released.
func (p *Position) Hook(h int) *mechanics.HookState {
	if !slices.Contains(p.layout.hooks(), h) {
		return nil
	}
	return hookAt(p.Balance, p.layout.headOf(h))
}

// asSteady reports whether the load hangs at a corner as it does where the plan has
// it: one that rocks or can settle two ways there, and not here, does not.
func (p *Position) asSteady(r mechanics.Result) bool {
	if r.Verdict != mechanics.Steady {
		return false
	}
	return p.Rocks() || !r.Balance.Rocks && r.Balance.Rests <= 1
}

// Rocks reports whether the load can rock, or settle two ways.
func (p *Position) Rocks() bool { return p.Balance.Rocks || p.Balance.Rests > 1 }

// center takes one position of the center of gravity, or another mass; false
// where the load does not hang steady there.
func (e *Envelope) center(pos *Position, m mechanics.Model, name string) bool {
	e.Corners++
	result, err := mechanics.SolveNear(m, mechanics.Options{}, pos.Balance)
	if err != nil || !pos.asSteady(result) {
		e.Failed, e.FailedAt = &result, atCorner(name)
		return false
	}
	b := result.Balance
	e.take(pos, m, b)
	for i, n := range pos.layout.line {
		if n < 0 {
			continue
		}
		line := b.Lines[n]
		if line.TensionN > e.OwnN[i]*(1+sameForce) {
			e.OwnN[i], e.OwnAt[i] = line.TensionN, name
		}
		e.BoundN[i] = max(e.BoundN[i], boundOf(line.Bound))
	}
	for i, j := range b.Together {
		e.TogetherN[i] = max(e.TogetherN[i], boundOf(j.Bound))
	}
	return true
}

// stretch takes one corner of the lengths, at one position of the center of
// gravity; false where the load does not hang steady there.
func (e *Envelope) stretch(pos *Position, m mechanics.Model, change []float64, name string) bool {
	e.Corners++
	m.Lines = slices.Clone(m.Lines)
	for i, n := range pos.layout.line {
		if n >= 0 {
			m.Lines[n].LengthM += change[i]
		}
	}
	result, err := mechanics.SolveNear(m, mechanics.Options{SkipBounds: true}, pos.Balance)
	if err != nil || !pos.asSteady(result) {
		e.Failed, e.FailedAt = &result, "legs at the ends of their length tolerance"
		if name != "" {
			e.FailedAt = atCorner(name) + " and " + e.FailedAt
		}
		return false
	}
	e.take(pos, m, result.Balance)
	for i, n := range pos.layout.line {
		if n >= 0 {
			e.LengthN[i] = max(e.LengthN[i], result.Balance.Lines[n].TensionN)
		}
	}
	for i, j := range result.Balance.Together {
		e.LengthSumN[i] = max(e.LengthSumN[i], j.MagnitudeN)
	}
	return true
}
