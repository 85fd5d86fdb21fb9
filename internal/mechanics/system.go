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

type mass struct {
	weight float64
	// arm turns rotations into lengths: the distance of the farthest point.
	arm      float64
	intended quat.Number
	point    bool
	// o is where its freedoms begin: three displacements and, unless it is a
	// point, three rotations.
	o int
	// turn is where its rotations begin among those of all bodies.
	turn int
}

// system is a model made ready for arithmetic: the world's origin moved to the
// first hook, so that large coordinates do not eat digits.
type system struct {
	model     Model
	opt       Options
	reference r3.Vec
	masses    []mass
	// strands are what stretches now: one a line; and once ropes that grip are
	// held by friction, one a run of those.
	strands []strand
	// sliding are the strands while nothing grips, one a line.
	sliding []strand
	weight  float64 // of all bodies
	arm     float64 // the largest
	idle    float64 // tension up to which a line resists nothing
	spins   []spin

	// What follows is working space, reused between steps.
	n          int   // freedoms
	turns      int   // rotations among them
	shifts     []int // where the displacements stand
	rotations  []int // where the rotations stand
	grad       []float64
	hess       []float64
	factor     []float64
	step       []float64
	way        []float64
	trial      []pose
	trialGrad  []float64
	spans      []r3.Vec
	stretch    []float64
	trialReach []float64
	caughtBy   []bool
}

func newSystem(m Model, o Options) *system {
	s := &system{model: m, opt: o, reference: firstHook(m)}
	s.addMasses()
	s.addStrands()
	for i := range s.masses {
		b := &s.masses[i]
		if b.arm < 1e-6 { // every line at the center of gravity
			b.arm = 1
		}
		if !b.point {
			s.arm = math.Max(s.arm, b.arm)
		}
	}
	if s.arm == 0 { // nothing but points
		s.arm = 1
	}
	s.soften(math.Inf(1))
	s.spins = findSpins(s)
	s.allocate()
	return s
}

func (s *system) addMasses() {
	s.masses = make([]mass, len(s.model.Bodies))
	lightest := math.Inf(1)
	for i := range s.model.Bodies {
		b := &s.model.Bodies[i]
		w := b.MassKg * s.opt.GravityMS2
		s.weight += w
		s.masses[i] = mass{weight: w, intended: b.Intended.unit(), point: b.Point, o: s.n, turn: s.turns}
		s.shifts = append(s.shifts, s.n, s.n+1, s.n+2)
		s.n += 3
		if b.Point {
			lightest = min(lightest, w)
			continue
		}
		s.rotations = append(s.rotations, s.n, s.n+1, s.n+2)
		s.n += 3
		s.turns += 3
	}
	// A ring that hangs idle is still held up by its own little weight.
	s.idle = min(carriesNothing*s.weight, 0.01*lightest)
}

func (s *system) hasPoints() bool { return s.turns < 3*len(s.masses) }

func (s *system) addStrands() {
	count := 0
	for i := range s.model.Lines {
		count += s.model.Lines[i].runs()
	}
	all := make([]run, 0, count)
	s.strands = make([]strand, len(s.model.Lines))
	for i := range s.model.Lines {
		l := &s.model.Lines[i]
		for j := range l.runs() {
			r := l.run(j)
			all = append(all, run{s.end(r.From), s.end(r.To)})
		}
		s.strands[i] = strand{line: i, runs: all[len(all)-l.runs():], length: l.LengthM, stiffness: l.StiffnessN}
	}
	s.sliding = s.strands
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
	most := 0
	for i := range s.strands {
		most = max(most, len(s.strands[i].runs))
	}
	s.spans = make([]r3.Vec, most)
}

func firstHook(m Model) r3.Vec {
	for i := range m.Lines {
		for j := range m.Lines[i].runs() {
			r := m.Lines[i].run(j)
			for _, a := range []Anchor{r.From, r.To} {
				if a.Body == World {
					return a.At
				}
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

// soften takes every line that is stiffer than the limit as that stiff (EA).
func (s *system) soften(limit float64) {
	for i := range s.strands {
		s.strands[i].rate = min(limit, s.strands[i].stiffness) / s.strands[i].length
	}
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
