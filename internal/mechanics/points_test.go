package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// linkedBridle hangs a load off center by a master ring and four legs, each a sling, a
// shackle of pointKg and a stiff link of 0.2 m to the lug. The straight model has the
// same legs in one piece, lengths and give added up.
func linkedBridle(mass, pointKg float64, longer [4]float64) (linked, straight Model) {
	const link, linkEA, sling, top, topEA = 0.2, 1e9, 5.0, 0.8, 1e9
	slingEA := 250 * mass * gravity
	points := shifted(rectangle(4, 3, 0.6), vec(0.2, 0.1, 0))
	linked.Bodies = []Body{{Name: "load", MassKg: mass}, {Name: "master", MassKg: pointKg, Point: true}}
	straight.Bodies = linked.Bodies
	hook := Hook(vec(0, 0, 30))
	linked.Lines = []Line{rope("top", top, topEA, hook, Anchor{1, origin})}
	straight.Lines = linked.Lines
	for i, p := range points {
		linked.Bodies = append(linked.Bodies, Body{Name: "shackle", MassKg: pointKg, Point: true})
		k, long := len(linked.Bodies)-1, sling+longer[i]
		linked.Lines = append(linked.Lines,
			rope("sling", long, slingEA, Anchor{1, origin}, Anchor{k, origin}),
			rope("link", link, linkEA, Anchor{k, origin}, Anchor{0, p}))
		give := long/slingEA + link/linkEA
		straight.Lines = append(straight.Lines, rope("leg", long+link, (long+link)/give, Anchor{1, origin}, Anchor{0, p}))
	}
	return linked, straight
}

// Points of a kilogram, and of ten grams, beside a hundred tonnes, on stiff short
// links: the legs carry what they would in one piece, but for the points' weights.
func TestLightPointsAndStiffLinks(t *testing.T) {
	for _, mass := range []float64{100, 1e4, 1e5} {
		for _, pointKg := range []float64{1, 0.01} {
			linked, straight := linkedBridle(mass, pointKg, [4]float64{0, 0.004, 0, 0.002})
			b, want := steady(t, linked), steady(t, straight)
			checkForces(t, linked, b)
			for i := range 4 {
				got := b.Lines[1+2*i].TensionN / (mass * gravity)
				near(t, "sling", got, want.Lines[1+i].TensionN/(mass*gravity), 1e-5+6*pointKg/mass)
			}
			near(t, "righting", b.RightingM, want.RightingM, (0.005+2*pointKg/mass)*want.RightingM)
		}
	}
}

// A master link between hook and legs changes nothing in what the legs carry or in how
// the load rights itself, at rest and as intended: it hangs from the link as it would
// from a hook there.
func TestLegsOnAMasterLink(t *testing.T) {
	for _, off := range []r3.Vec{{}, vec(0.2, -0.1, 0.3)} {
		straight := fitted(2000, shifted(rectangle(4, 3, -0.5), off), 2.5, 1e9)
		linked := Model{Bodies: append([]Body{{Name: "master", MassKg: 1e-3, Point: true}, {Name: "shackle", MassKg: 1e-3, Point: true}}, straight.Bodies...)}
		linked.Lines = []Line{rope("block", 0.5, 1e9, Hook(vec(0, 0, 11)), Anchor{1, origin}), rope("shackle", 0.5, 1e9, Anchor{1, origin}, Anchor{0, origin})}
		for i, l := range straight.Lines {
			straight.Lines[i].LengthM += 0.004 * float64(i%2)
			linked.Lines = append(linked.Lines, rope("leg", straight.Lines[i].LengthM, 1e9, Anchor{0, origin}, Anchor{2, l.To.At}))
		}
		want, b := steady(t, straight), steady(t, linked)
		if !b.IntendedBalances || !want.IntendedBalances {
			t.Error("the intended attitude was not judged")
		}
		near(t, "righting", b.RightingM, want.RightingM, 1e-4)
		if !b.Bodies[2].HasHookOffset || b.Bodies[0].HasHookOffset || b.Bodies[1].HasHookOffset {
			t.Error("the load hangs from one hook, and the links are not what is meant")
		}
		near(t, "hook offset", r3.Norm(r3.Sub(b.Bodies[2].HookOffset, want.Bodies[0].HookOffset)), 0, 1e-5)
		near(t, "may rise", b.Bodies[2].MayRiseM, want.Bodies[0].MayRiseM, 1e-4)
		for i, l := range want.Lines {
			near(t, "leg", b.Lines[2+i].TensionN/(2000*gravity), l.TensionN/(2000*gravity), 1e-5)
		}
	}
}

// A leg too long by far hangs loose, its shackle with it: three legs carry, and the
// shackle's own weight is on its link.
func TestShackleOfALooseLeg(t *testing.T) {
	linked, _ := linkedBridle(1e5, 1, [4]float64{0, 0.5, 0, 0})
	b := steady(t, linked)
	checkForces(t, linked, b)
	sling, link := b.Lines[3], b.Lines[4]
	// Sling from master to shackle, link from shackle to lug: up is against the one
	// and along the other.
	near(t, "loose sling and link hold the shackle up", link.TensionN*link.Direction.Z-sling.TensionN*sling.Direction.Z, gravity, 1e-3*gravity)
	if sling.TensionN+link.TensionN < 0.999*gravity || sling.TensionN+link.TensionN > 3*gravity {
		t.Errorf("%g and %g N for a kilogram", sling.TensionN, link.TensionN)
	}
	for _, i := range []int{1, 5, 7} {
		if b.Lines[i].TensionN < 0.01*1e5*gravity {
			t.Errorf("leg %d carries %g", i, b.Lines[i].TensionN)
		}
	}
}

// legsAtHook is bySets for anchors that several runs share: the largest tension
// of each run over all sets of three that only pull.
func legsAtHook(b *Balance) []float64 {
	flat := &Balance{}
	for _, l := range b.Lines {
		for _, r := range l.Runs {
			d := r.Direction
			if d.Z > 0 { // all seen downward from the hook
				d = r3.Scale(-1, d)
			}
			flat.Lines = append(flat.Lines, LineState{Direction: d})
		}
	}
	return bySets(flat)
}

// Two baskets that grip a pipe off its middle: no split with alike runs balances, so
// each run is a leg of four, and the bound of a basket that of its worse side.
func TestBoundOfBasketsThatGrip(t *testing.T) {
	b := steady(t, basket(0.25, 0.02, true))
	top := legsAtHook(b)
	for i, l := range b.Lines {
		want := math.Max(top[2*i], top[2*i+1])
		near(t, "bound", l.Bound.TensionN/(1000*gravity), want, 1e-6)
		if l.Bound.Meaning != AnySplit {
			t.Errorf("%+v", l.Bound)
		}
	}
	m := basket(0.25, 0.02, true)
	m.Together = [][]int{{0, 1}}
	wantBound(t, "both on the hook", steady(t, m).Together[0], 1000*gravity, Determinate)
	// Two at one place: either may carry all, gripping or not.
	m = basket(0.25, 0, true)
	m.Bodies[0].CenterOfGravity = vec(-2, 0, -0.3)
	m.Lines[1] = m.Lines[0]
	b = steady(t, m)
	for _, l := range b.Lines {
		near(t, "bound of one of two", l.Bound.TensionN/l.TensionN, 2, 1e-4)
	}
}

// A ring's own joint: the runs of one rope that meet there are added up.
func TestJointOfARunningRope(t *testing.T) {
	m := ringAndSheave()
	m.Together = [][]int{{0, 1}, {2, 3, 4, 5}}
	b := steady(t, m)
	near(t, "both runs and the link hold the block", r3.Norm(r3.Sub(b.Together[0].ForceN, vec(0, 0, 20*gravity))), 0, 1e-2)
	if b.Together[0].At != (Anchor{0, origin}) {
		t.Errorf("%+v", b.Together[0].At)
	}
	near(t, "legs on the ring", b.Together[1].MagnitudeN, 1000*gravity, 1e-2)
	wantBound(t, "legs on the ring", b.Together[1], 1000*gravity, Determinate)
}

// Properties of any arrangement, on every kind: twice the mass on lines twice as
// stiff doubles the tensions, and a mirror mirrors them.
func TestPropertiesOfArrangements(t *testing.T) {
	d := drawer{rand.New(rand.NewPCG(3, 7))}
	kinds := []func() drawn{d.legs, d.spread, d.twoHooks, d.ring, d.baskets, d.nodes}
	compared := 0
	for i := range 180 {
		a := kinds[i%len(kinds)]()
		o := Options{MaxTiltDeg: 60, MaxStrain: 0.2}
		r, err := Solve(a.m, o)
		if err != nil || r.Balance == nil || r.Balance.Rests > 1 || r.Balance.RightingM < 1e-3 {
			continue
		}
		compared++
		weight := 0.0
		for _, b := range a.m.Bodies {
			weight += b.MassKg * gravity
		}
		for _, c := range []struct {
			other Model
			times float64
		}{{heavier(a.m), 2}, {mirrored(a.m), 1}} {
			got, err := Solve(c.other, o)
			if err != nil || got.Balance == nil {
				t.Fatalf("%d, %s: %v %+v", i, a.kind, err, got)
			}
			for k := range a.m.Lines {
				for j, run := range r.Balance.Lines[k].Runs {
					near(t, a.kind, got.Balance.Lines[k].Runs[j].TensionN/c.times/weight, run.TensionN/weight, 1e-5)
				}
			}
		}
	}
	if compared < 150 {
		t.Errorf("only %d compared", compared)
	}
}

func heavier(m Model) Model {
	out := Model{Bodies: append([]Body(nil), m.Bodies...), Lines: append([]Line(nil), m.Lines...)}
	for i := range out.Bodies {
		out.Bodies[i].MassKg *= 2
	}
	for i := range out.Lines {
		out.Lines[i].StiffnessN *= 2
	}
	return out
}

func mirrored(m Model) Model {
	flip := func(v r3.Vec) r3.Vec { return vec(v.X, -v.Y, v.Z) }
	out := Model{Bodies: append([]Body(nil), m.Bodies...), Lines: append([]Line(nil), m.Lines...)}
	for i := range out.Bodies {
		out.Bodies[i].CenterOfGravity = flip(out.Bodies[i].CenterOfGravity)
	}
	for i := range out.Lines {
		l := &out.Lines[i]
		l.From.At, l.To.At = flip(l.From.At), flip(l.To.At)
		further := append([]Run(nil), l.Further...)
		for j := range further {
			further[j].From.At, further[j].To.At = flip(further[j].From.At), flip(further[j].To.At)
		}
		l.Further = further
	}
	return out
}

// A leg made stiffer never carries less, where stiffness decides: level, even legs of
// unlike stiffness on a load in its middle.
func TestStifferLegNeverCarriesLess(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 9))
	for range 100 {
		n := 4 + rng.IntN(3)
		m := benchLegs(n)
		for i := range m.Lines {
			m.Lines[i].StiffnessN = 2e7 * (1 + 4*rng.Float64())
			m.Lines[i].LengthM += 0.002 * rng.Float64()
		}
		before := steady(t, m)
		k := rng.IntN(n)
		m.Lines[k].StiffnessN *= 1 + rng.Float64()
		after := steady(t, m)
		if after.Lines[k].TensionN < before.Lines[k].TensionN-1e-4*8650*gravity {
			t.Errorf("%d legs: leg %d carried %g, stiffer %g", n, k, before.Lines[k].TensionN, after.Lines[k].TensionN)
		}
	}
}

// Whatever the ratio of stiffness to weight and of a point's mass to the load's, an
// arrangement that must come to rest somewhere does, and its forces balance.
func TestHarshArrangementsComeToRest(t *testing.T) {
	d := drawer{rand.New(rand.NewPCG(4, 4))}
	linked := func() drawn {
		var longer [4]float64
		for i := range longer {
			longer[i] = 5 * d.off() * d.Float64()
		}
		m, _ := linkedBridle([]float64{100, 1e3, 1e4, 1e5}[d.IntN(4)], []float64{0.05, 0.3, 1, 5}[d.IntN(4)], longer)
		return drawn{"linked bridle", m, nil}
	}
	idle := 0
	for i := range 500 {
		kinds := []func() drawn{d.ring, d.baskets, d.nodes, d.spread, linked}
		a := kinds[i%len(kinds)]()
		if a.kind != "linked bridle" {
			d.harden(a.m)
		}
		r, err := Solve(a.m, Options{MaxTiltDeg: 60, MaxStrain: 0.2})
		if err != nil || r.Verdict == NoBalance || r.Verdict == OutOfReach {
			t.Errorf("%d, %s: %v %+v", i, a.kind, err, r)
			continue
		}
		if r.Balance == nil {
			continue
		}
		checkForces(t, a.m, r.Balance)
		for k, l := range a.m.Lines {
			if l.LengthM < 0.5 && r.Balance.Lines[k].TensionN < 100 {
				idle++
			}
		}
	}
	if idle < 20 {
		t.Errorf("only %d links hung idle", idle)
	}
}

// harden makes lines up to a thousand times stiffer, short ones very stiff, and points
// up to a hundred times lighter.
func (d drawer) harden(m Model) {
	f, short, light := math.Pow(10, float64(d.IntN(4))), d.IntN(2) == 0, math.Pow(10, -float64(d.IntN(3)))
	for i := range m.Lines {
		m.Lines[i].StiffnessN *= f
		if short && m.Lines[i].LengthM < 0.5 {
			m.Lines[i].StiffnessN = 1e9
		}
	}
	for i := range m.Bodies {
		if m.Bodies[i].Point {
			m.Bodies[i].MassKg *= light
		}
	}
}
