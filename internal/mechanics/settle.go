package mechanics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

// Limits of the search for a rest.
const (
	maxSteps     = 400
	patience     = 60    // steps after which points are helped down
	aimed        = 1e-11 // of the weight: the search goes on to here if it can
	settled      = 1e-7  // of the weight: and has arrived from here if it can not
	maxTurnRad   = 0.25  // in one step, so as not to leap over a near rest
	firstHarsh   = 300   // EA over weight from which stiffness is raised by steps
	harshFactor  = 30
	leastDamping = 1e-7
)

// settle moves st to a minimum of the energy by damped Newton steps and reports
// whether the forces came to balance.
func (s *system) settle(st []pose, locked bool) bool {
	return s.settleWithin(maxSteps, st, locked)
}

func (s *system) settleWithin(steps int, st []pose, locked bool) bool {
	noise := s.noise()
	floor := leastDamping * s.weight / s.arm
	damping := floor
	s.derive(st, s.grad, s.hess, locked)
	for range steps {
		g := norm(s.grad)
		if g <= aimed*s.weight+noise/16 {
			return true
		}
		next, ok := s.advance(st, g, damping, floor, locked)
		if !ok {
			break
		}
		damping = next
		s.derive(st, s.grad, s.hess, locked)
	}
	return norm(s.grad) <= settled*s.weight+noise
}

// advance takes one step that lowers the energy, with as much damping as that
// needs, and gives the damping to go on with. False: no step helps any more.
func (s *system) advance(st []pose, g, damping, floor float64, locked bool) (float64, bool) {
	for range 60 {
		if !s.newton(st, damping, locked) {
			damping = max(10*damping, 10*floor)
			continue
		}
		foreseen := dot(s.grad, s.step) + 0.5*s.curvature() + s.caught(st)
		if s.hasPoints() {
			s.bend(st, locked)
		}
		s.move(st)
		got := s.energyChange(s.step)
		switch {
		case got <= 0.1*foreseen && foreseen < 0:
			if got <= 0.7*foreseen {
				damping /= 10
			}
		case -foreseen < 1e-12*s.weight*s.arm && s.calmer(g, locked):
			// Energies this close can not be told apart; forces can.
			damping /= 10
		default:
			damping = max(5*damping, 10*floor)
			continue
		}
		copy(st, s.trial)
		return max(damping, floor), true
	}
	return damping, false
}

// shorten keeps a step within what a quadratic model can foresee.
func (s *system) shorten() {
	f := 1.0
	for b := range s.masses {
		o := s.masses[b].o
		f = math.Max(f, norm(s.step[o:o+3])/(2*s.arm))
		if !s.masses[b].point {
			f = math.Max(f, norm(s.step[o+3:o+6])/s.masses[b].arm/maxTurnRad)
		}
	}
	for i := range s.step {
		s.step[i] /= f
	}
}

func (s *system) curvature() float64 {
	sum := 0.0
	for i := range s.n {
		sum += s.step[i] * dot(s.hess[i*s.n:(i+1)*s.n], s.step)
	}
	return sum
}

func (s *system) move(st []pose) {
	for b := range st {
		d := s.step[s.masses[b].o:]
		s.trial[b] = pose{at: r3.Add(st[b].at, r3.Vec{X: d[0], Y: d[1], Z: d[2]}), q: st[b].q}
		if !s.masses[b].point {
			inv := 1 / s.masses[b].arm
			s.trial[b].q = then(st[b].q, r3.Vec{X: inv * d[3], Y: inv * d[4], Z: inv * d[5]})
		}
	}
}

func (s *system) calmer(g float64, locked bool) bool {
	copy(s.trialReach, s.stretch)
	s.derive(s.trial, s.trialGrad, nil, locked)
	copy(s.stretch, s.trialReach)
	return norm(s.trialGrad) < g
}

// settleByStages does the same for lines far stiffer than the load stretches
// them: it starts with softer lines and raises their stiffness by steps, each
// rest being close to the next.
func (s *system) settleByStages(st []pose, locked bool) bool {
	stiffest := 0.0
	for i := range s.strands {
		stiffest = max(stiffest, s.strands[i].stiffness)
	}
	for limit := firstHarsh * s.weight; limit < stiffest; limit *= harshFactor {
		s.soften(limit)
		s.settle(st, locked)
	}
	s.soften(math.Inf(1))
	if !s.hasPoints() {
		return s.settle(st, locked)
	}
	return s.settleWithin(patience, st, locked) || s.settleGently(st, locked)
}

// settleGently helps light points that swing on stiff lines: stiffness against the
// load's weight says nothing there, since it is the point's own weight that has to
// bring it down along a narrow arc. So each line is softened against what it
// carries, or what the lighter of its ends weighs, and raised again by steps.
func (s *system) settleGently(st []pose, locked bool) bool {
	carries := s.tensions(st)
	for i := range s.strands {
		carries[i] = max(carries[i], s.lighterEnd(&s.strands[i]))
	}
	for by, harsh := float64(firstHarsh), true; harsh; by *= harshFactor {
		harsh = false
		for i := range s.strands {
			l := &s.strands[i]
			harsh = harsh || by*carries[i] < l.stiffness
			l.rate = min(l.stiffness, by*carries[i]) / l.length
		}
		s.settleWithin(patience, st, locked)
	}
	s.soften(math.Inf(1))
	return s.settle(st, locked)
}

// lighterEnd is the weight of the lightest body at a line.
func (s *system) lighterEnd(l *strand) float64 {
	least := s.weight
	for _, r := range l.runs {
		for _, e := range []end{r.from, r.to} {
			if e.body != World {
				least = min(least, s.masses[e.body].weight)
			}
		}
	}
	return least
}
