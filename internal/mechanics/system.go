package mechanics

import (
	"math"

	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/spatial/r3"
)

// pose places a body by its center of gravity: gravity then has no moment and
// no second derivative in the rotations.
type pose struct {
	at r3.Vec
	q  quat.Number
}

// end of a line, seen from the center of gravity of its body, or from the
// reference point of the world.
type end struct {
	body int
	at   r3.Vec
}

type strand struct {
	from, to  end
	length    float64
	stiffness float64 // EA
	rate      float64 // EA over length, times the softening in force
}

type mass struct {
	weight float64
	// arm turns rotations into lengths: the distance of the farthest point.
	arm      float64
	intended quat.Number
}

// system is a model made ready for arithmetic: the world's origin moved to the
// first hook, so that large coordinates do not eat digits.
type system struct {
	model     Model
	opt       Options
	reference r3.Vec
	masses    []mass
	strands   []strand
	weight    float64 // of all bodies
	arm       float64 // the largest
	stiffest  float64 // largest EA
	spins     []spin

	// What follows is working space, reused between steps.
	n          int // freedoms, six a body
	grad       []float64
	hess       []float64
	factor     []float64
	step       []float64
	way        []float64
	trial      []pose
	trialGrad  []float64
	stretch    []float64
	trialReach []float64
	caughtBy   []bool
}

func newSystem(m Model, o Options) *system {
	s := &system{model: m, opt: o, reference: firstHook(m), n: 6 * len(m.Bodies)}
	for _, b := range m.Bodies {
		w := b.MassKg * o.GravityMS2
		s.weight += w
		s.masses = append(s.masses, mass{weight: w, intended: b.Intended.unit()})
	}
	for _, l := range m.Lines {
		s.strands = append(s.strands, strand{
			from: s.end(l.From), to: s.end(l.To), length: l.LengthM, stiffness: l.StiffnessN,
		})
		s.stiffest = math.Max(s.stiffest, l.StiffnessN)
	}
	for i := range s.masses {
		if s.masses[i].arm < 1e-6 { // every line at the center of gravity
			s.masses[i].arm = 1
		}
		s.arm = math.Max(s.arm, s.masses[i].arm)
	}
	s.soften(1)
	s.spins = findSpins(s)
	s.allocate()
	return s
}

func (s *system) allocate() {
	one := make([]float64, 4*s.n+2*s.n*s.n+2*len(s.strands))
	cut := func(n int) []float64 {
		v := one[:n:n]
		one = one[n:]
		return v
	}
	s.grad, s.step, s.trialGrad, s.way = cut(s.n), cut(s.n), cut(s.n), cut(s.n)
	s.hess, s.factor = cut(s.n*s.n), cut(s.n*s.n)
	s.stretch, s.trialReach = cut(len(s.strands)), cut(len(s.strands))
	s.trial = make([]pose, len(s.masses))
	s.caughtBy = make([]bool, len(s.strands))
}

func firstHook(m Model) r3.Vec {
	for _, l := range m.Lines {
		for _, a := range []Anchor{l.From, l.To} {
			if a.Body == World {
				return a.At
			}
		}
	}
	return r3.Vec{}
}

func (s *system) end(a Anchor) end {
	if a.Body == World {
		return end{body: World, at: r3.Sub(a.At, s.reference)}
	}
	at := r3.Sub(a.At, s.model.Bodies[a.Body].CenterOfGravity)
	s.masses[a.Body].arm = math.Max(s.masses[a.Body].arm, r3.Norm(at))
	return end{body: a.Body, at: at}
}

// soften scales every line's stiffness.
func (s *system) soften(by float64) {
	for i := range s.strands {
		s.strands[i].rate = by * s.strands[i].stiffness / s.strands[i].length
	}
}

// arms gives the world vector from the body's center of gravity to the line's
// end, and the end's place in the world.
func (e end) arms(st []pose) (arm, place r3.Vec) {
	if e.body == World {
		return r3.Vec{}, e.at
	}
	arm = turn(st[e.body].q, e.at)
	return arm, r3.Add(st[e.body].at, arm)
}

// span is the way from a line's From to its To in the world.
func (l *strand) span(st []pose) r3.Vec {
	_, a := l.from.arms(st)
	_, b := l.to.arms(st)
	return r3.Sub(b, a)
}

// noise bounds the force that rounding alone can leave on a body.
func (s *system) noise() float64 {
	const eps = 0x1p-52
	sum := 0.0
	for i := range s.strands {
		l := &s.strands[i]
		sum += l.rate * (l.length + s.arm)
	}
	return 4 * eps * sum
}
