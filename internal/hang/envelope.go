package hang

import (
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/gear"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// Envelope is how the load hangs at the corners of what the plan gives
// tolerances of: the mass, the box of the center of gravity, and the lengths of
// the legs. Slices go by leg, or by the groups of the model.
type Envelope struct {
	Corners int
	// The first corner where it does not hang steady, and where that is.
	Failed     *mechanics.Result
	FailedAt   string
	TiltDeg    float64
	OwnN       []float64     // the most with the lengths as given
	OwnAt      []string      // where that is; empty as the plan has it
	LengthN    []float64     // the most with lengths within their tolerance
	BoundN     []float64     // the largest bound at any center of gravity
	TogetherN  []float64     // by group: the same
	LengthSumN []float64     // by group: the most with lengths within their tolerance
	HookN      []float64     // by hook: the most on it
	Beams      []BeamAtWorst // by beam
	Lengths    bool          // every sling has a tolerance of its length
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
	e.HookN = make([]float64, len(pos.layout.hookAt))
	e.Beams = make([]BeamAtWorst, len(pos.layout.beam))
	e.inside(pos, pos.model, b)
	e.hooks(pos, b)
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

// hooks takes what is on each hook, where that is more than before.
func (e *Envelope) hooks(pos *Position, b *mechanics.Balance) {
	for _, h := range pos.layout.hooks() {
		if state := hookAt(b, pos.layout.headOf(h)); state != nil {
			e.HookN[h] = max(e.HookN[h], r3.Norm(state.LoadN))
		}
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

// center takes one position of the center of gravity, or another mass; false
// where the load does not hang steady there.
func (e *Envelope) center(pos *Position, m mechanics.Model, name string) bool {
	e.Corners++
	result, err := mechanics.SolveNear(m, mechanics.Options{}, pos.Balance)
	if err != nil || result.Verdict != mechanics.Steady {
		e.Failed, e.FailedAt = &result, atCorner(name)
		return false
	}
	b := result.Balance
	e.TiltDeg = max(e.TiltDeg, b.Bodies[0].TiltDeg)
	e.inside(pos, m, b)
	e.hooks(pos, b)
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
	if err != nil || result.Verdict != mechanics.Steady {
		e.Failed, e.FailedAt = &result, "legs at the ends of their length tolerance"
		if name != "" {
			e.FailedAt = atCorner(name) + " and " + e.FailedAt
		}
		return false
	}
	e.inside(pos, m, result.Balance)
	e.hooks(pos, result.Balance)
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

func atCorner(name string) string {
	if name == leastMass {
		return "its mass without the tolerance"
	}
	return "its center of gravity at " + name + " of its tolerance"
}

// leastMass names the corner of the load's mass as the plan gives it; all else is
// computed with that at the upper end of its tolerance.
const leastMass = "its mass as given"

// corner is a place of the center of gravity within its tolerance, or another
// mass.
type corner struct {
	shift  r3.Vec
	massKg float64
	name   string // empty as the plan has it
}

// corners lists the plan's own center of gravity, the corners of its box, and the
// least mass. Where nothing but the load has a mass, less of it changes shares
// only by the stretch.
func (p *Position) corners() []corner {
	l := p.layout.lift
	list := []corner{{massKg: l.mass}}
	if len(l.plan.Beams) > 0 && float64(*l.plan.Load.Mass) < l.mass {
		list = append(list, corner{massKg: float64(*l.plan.Load.Mass), name: leastMass})
	}
	t := l.plan.Load.CenterTolerance
	if t == nil {
		return list
	}
	return append(list, boxCorners(*t, l.mass)...)
}

// boxCorners are the corners of a box round the center of gravity; an axis along
// which it is exactly known has none.
func boxCorners(t plan.Point, massKg float64) []corner {
	list := []corner{{massKg: massKg}}
	for i, axis := range []string{"x", "y", "z"} {
		by := []r3.Vec{{X: float64(t.X)}, {Y: float64(t.Y)}, {Z: float64(t.Z)}}[i]
		if by == (r3.Vec{}) {
			continue
		}
		var both []corner
		for _, sign := range []string{"-", "+"} {
			for _, c := range list {
				c.name = strings.TrimSpace(c.name + " " + sign + axis)
				if c.shift = r3.Add(c.shift, by); sign == "-" {
					c.shift = r3.Sub(c.shift, r3.Scale(2, by))
				}
				both = append(both, c)
			}
		}
		list = both
	}
	return slices.DeleteFunc(list, func(c corner) bool { return c.name == "" })
}

// shifted is the model with the load's mass and center of gravity at a corner.
func (p *Position) shifted(c corner) mechanics.Model {
	m := p.model
	m.Bodies = slices.Clone(m.Bodies)
	m.Bodies[0].MassKg = c.massKg
	m.Bodies[0].CenterOfGravity = r3.Add(m.Bodies[0].CenterOfGravity, c.shift)
	return m
}

// lengthCorners lists changes of the legs' lengths to try, by leg: none unless
// they are asked for.
func (p *Position) lengthCorners(asked bool) [][]float64 {
	if !asked {
		return nil
	}
	tolerances := lengthTolerances(p.layout.lift.legs)
	if len(tolerances) <= allCorners {
		return combinations(tolerances)
	}
	return p.worstLengths(tolerances)
}

// combinations are all of longest and shortest.
func combinations(tolerances []float64) [][]float64 {
	var list [][]float64
	for n := range 1 << len(tolerances) {
		change := slices.Clone(tolerances)
		for i := range change {
			if n>>i&1 == 0 {
				change[i] = -change[i]
			}
		}
		list = append(list, change)
	}
	return list
}

// worstLengths are, for each leg, the lengths that pull it the most as far as each
// one's own effect tells, and those with the signs turned; and each leg alone at
// its longest and shortest.
func (p *Position) worstLengths(tolerances []float64) [][]float64 {
	n := len(tolerances)
	var list [][]float64
	effect := make([][]float64, n) // by changed leg, by leg
	for i := range tolerances {
		alone := make([]float64, n)
		alone[i] = -tolerances[i]
		longer := make([]float64, n)
		longer[i] = tolerances[i]
		list = append(list, alone, longer)
		effect[i] = p.effectOf(alone)
	}
	for j := range tolerances {
		worst, best := make([]float64, n), make([]float64, n)
		for i, t := range tolerances {
			worst[i] = -t
			if effect[i] != nil && effect[i][j] < 0 {
				worst[i] = t
			}
			best[i] = -worst[i]
		}
		list = append(list, p.flipped(worst, j), best)
	}
	return list
}

// mostFlips is how often all legs are tried the other way.
const mostFlips = 3

// flipped turns the length of one leg after another the other way as long as that
// pulls leg j the more: where legs go slack, what each does alone does not tell.
func (p *Position) flipped(change []float64, j int) []float64 {
	pull := func(change []float64) float64 {
		if effect := p.effectOf(change); effect != nil {
			return effect[j]
		}
		return math.Inf(1) // does not hang so: the corner itself is to tell
	}
	best := pull(change)
	for range mostFlips {
		moved := false
		for i := range change {
			change[i] = -change[i]
			if is := pull(change); is > best {
				best, moved = is, true
			} else {
				change[i] = -change[i]
			}
		}
		if !moved {
			break
		}
	}
	return change
}

// effectOf is by how much each leg's force grows with a change of lengths; nil
// where that is not known.
func (p *Position) effectOf(change []float64) []float64 {
	m := p.model
	m.Lines = slices.Clone(m.Lines)
	for i, n := range p.layout.line {
		if n >= 0 {
			m.Lines[n].LengthM += change[i]
		}
	}
	r, err := mechanics.SolveNear(m, mechanics.Options{SkipBounds: true}, p.Balance)
	if err != nil || r.Balance == nil {
		return nil
	}
	out := make([]float64, len(change))
	for i, n := range p.layout.line {
		if n >= 0 {
			out[i] = r.Balance.Lines[n].TensionN - p.Balance.Lines[n].TensionN
		}
	}
	return out
}

// lengthTolerances adds up those of each leg's slings.
func lengthTolerances(legs []Leg) []float64 {
	var list []float64
	for _, leg := range legs {
		sum := 0.0
		for _, s := range AllSlingsOf(leg.Leg) {
			if t := lengthTolerance(s); t != nil {
				sum += float64(*t)
			}
		}
		list = append(list, sum)
	}
	return list
}

// allLengthTolerances reports whether every leg has slings, all with a tolerance
// of their length.
func allLengthTolerances(legs []Leg) bool {
	for _, leg := range legs {
		slings := AllSlingsOf(leg.Leg)
		if len(slings) == 0 || slices.ContainsFunc(slings, func(s gear.Item) bool { return lengthTolerance(s) == nil }) {
			return false
		}
	}
	return true
}

// lengthTolerance is that of a sling; nil where the plan gives none, and of a
// grommet, which has none.
func lengthTolerance(item gear.Item) *quantity.Length {
	switch s := item.(type) {
	case *gear.WireRopeSling:
		return s.LengthTolerance
	case *gear.TagRatedSling:
		return s.LengthTolerance
	}
	return nil
}

// AllSlingsOf lists the slings of a leg of any kind, from the top down.
func AllSlingsOf(leg plan.Leg) []gear.Item {
	var list []gear.Item
	for _, u := range leg.Down {
		if gear.IsSling(u.Item) {
			list = append(list, u.Item)
		}
	}
	return list
}

// SlingsOf lists the wire rope slings of a leg, from the top down.
func SlingsOf(leg plan.Leg) []*gear.WireRopeSling {
	var list []*gear.WireRopeSling
	for _, u := range leg.Down {
		if s, ok := u.Item.(*gear.WireRopeSling); ok {
			list = append(list, s)
		}
	}
	return list
}
