package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// Closed forms: a load on two legs is a pendulum from the line of its points, one
// on four stiff legs from the hook, each body of a chain from where it hangs.
func TestMayRiseOfPendulums(t *testing.T) {
	two := steady(t, fitted(1000, []r3.Vec{vec(-2, 0, 0.3), vec(2, 0, 0.3)}, 3, 1e10))
	near(t, "two legs", two.Bodies[0].MayRiseM, 0.3, 1e-4)
	four := steady(t, fitted(1000, rectangle(4, 3, -1), 2.5, 1e11))
	near(t, "four legs", four.Bodies[0].MayRiseM, 2.5, 1e-3)
	m := Model{Bodies: []Body{{MassKg: 300}, {MassKg: 700}}}
	m.Lines = []Line{
		rope("", 2, 1e9, Hook(vec(0, 0, 20)), Anchor{0, vec(0, 0, 0.5)}),
		rope("", 2, 1e9, Anchor{0, vec(0, 0, -0.4)}, Anchor{1, vec(0, 0, 0.6)}),
	}
	b := steady(t, m)
	// The upper body also has the lower one's weight hanging 0.9 m below its point.
	near(t, "upper", b.Bodies[0].MayRiseM, (300*0.5+700*0.9)/300, 1e-4)
	near(t, "lower", b.Bodies[1].MayRiseM, 0.6, 1e-4)
}

// By trial: with any one center of gravity a little less high than MayRiseM tells, the
// load still rights itself where it hangs; a little higher, it does not.
func TestMayRiseByTrial(t *testing.T) {
	d := drawer{rand.New(rand.NewPCG(8, 13))}
	tried, kinds := 0, []func() drawn{d.legs, d.spread, d.twoHooks, d.ring, d.baskets, d.nodes}
	for i := range 240 {
		a := kinds[i%len(kinds)]()
		o := Options{MaxTiltDeg: 60, MaxStrain: 0.2}.withDefaults()
		r, err := Solve(a.m, o)
		if err != nil || r.Balance == nil || r.Balance.Rests > 1 || r.Balance.Rocks {
			continue
		}
		for body, is := range r.Balance.Bodies {
			if a.m.Bodies[body].Point || is.RollsFreely && is.MayRiseM == 0 {
				continue
			}
			tried++
			if !(is.MayRiseM > 0) || math.IsInf(is.MayRiseM, 1) {
				t.Fatalf("%s: body %d may rise %g", a.kind, body, is.MayRiseM)
			}
			if !standsIf(a.m, o, r.Balance, body, 0.995*is.MayRiseM-1e-4) {
				t.Errorf("%d, %s, body %d: falls before %g m", i, a.kind, body, is.MayRiseM)
			}
			if standsIf(a.m, o, r.Balance, body, 1.005*is.MayRiseM+1e-4) {
				t.Errorf("%d, %s, body %d: stands beyond %g m", i, a.kind, body, is.MayRiseM)
			}
		}
	}
	if tried < 250 {
		t.Errorf("only %d bodies tried", tried)
	}
}

// standsIf judges, with one center of gravity raised against gravity, the load where
// it hangs at b and, where that was judged, at the intended attitude.
func standsIf(m Model, o Options, b *Balance, body int, d float64) bool {
	up := func(a Attitude) Model {
		out := Model{Bodies: append([]Body(nil), m.Bodies...), Lines: m.Lines}
		c := &out.Bodies[body].CenterOfGravity
		*c = r3.Add(*c, a.Body(vec(0, 0, d)))
		return out
	}
	s := newSystem(up(m.Bodies[body].Intended), o)
	held := s.start()
	s.settleByStages(held, true)
	s.grip(held)
	if intended, applies := s.asIntended(held); applies && b.IntendedBalances && !intended.steady() {
		return false
	}
	s = newSystem(up(b.Bodies[body].Attitude), o)
	held = s.start()
	s.settleByStages(held, true)
	s.grip(held)
	st := s.posesAt(b)
	s.settle(st, false)
	return s.restAt(st).curve.steady()
}

// A bar slung on its own axis rolls freely, and rolls over with the least rise; a ring
// has no center of gravity to rise.
func TestMayRiseOfWhatRollsFreely(t *testing.T) {
	b := steady(t, fitted(1000, []r3.Vec{vec(-2, 0, 0), vec(2, 0, 0)}, 3, 1e8))
	near(t, "bar on its axis", b.Bodies[0].MayRiseM, 0, 0)
	rings := steady(t, ringAndSheave())
	if !math.IsInf(rings.Bodies[0].MayRiseM, 1) || !math.IsInf(rings.Bodies[1].MayRiseM, 1) {
		t.Errorf("%+v", rings.Bodies)
	}
	rocking := fitted(5000, rectangle(4, 3, 0), 4, 1e9)
	rocking.Lines[1].LengthM += 0.01
	rocking.Lines[3].LengthM += 0.01
	near(t, "what rocks has nothing to spare", steady(t, rocking).Bodies[0].MayRiseM, 0, 1e-5)
}

// Closed form: a load on one stiff bridle swings about the hook as a whole until its
// center of gravity is plumb below. Held level, that hangs a below the hook and e
// off to the side; then it hangs at sqrt(a^2 + e^2) below.
func TestDropAndSwing(t *testing.T) {
	const hook = 4.0
	m := fitted(1000, []r3.Vec{vec(-2, -1.5, 0.5), vec(2, -1.5, 0.5), vec(0, 2, 0.5)}, hook, 1e11)
	m.Bodies[0].CenterOfGravity = vec(0.3, 0.2, 0.1)
	b := steady(t, m)
	at := r3.Sub(vec(0, 0, hook), m.Bodies[0].CenterOfGravity) // the hook, when held level
	near(t, "drop", b.Bodies[0].DropM, r3.Norm(at)-at.Z, 1e-5)
	near(t, "swing", b.Bodies[0].SwingM, math.Hypot(at.X, at.Y), 1e-5)
	near(t, "hook offset is that way", r3.Norm(b.Bodies[0].HookOffset), b.Bodies[0].SwingM, 1e-5)
	level := steady(t, fitted(1000, rectangle(4, 3, 0.5), 4, 1e9))
	near(t, "no drop", level.Bodies[0].DropM, 0, 1e-9)
	near(t, "no swing", level.Bodies[0].SwingM, 0, 1e-9)
}
