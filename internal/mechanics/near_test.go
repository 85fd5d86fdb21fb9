package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// otherwise gives a model with other masses, centers of gravity and lengths.
func otherwise(rng *rand.Rand, m Model, size, longer float64) Model {
	within := func(by float64) float64 { return by * (2*rng.Float64() - 1) }
	out := Model{Bodies: append([]Body(nil), m.Bodies...), Lines: append([]Line(nil), m.Lines...), Together: m.Together}
	for i := range out.Bodies {
		b := &out.Bodies[i]
		b.MassKg *= 1 + within(0.1)
		if !b.Point {
			b.CenterOfGravity = r3.Add(b.CenterOfGravity, vec(within(size), within(size), within(size)))
		}
	}
	for i := range out.Lines {
		out.Lines[i].LengthM *= 1 + within(longer)
	}
	return out
}

// nearSeeds are loads of several kinds, some with little to spare.
func nearSeeds() (names []string, models []Model) {
	add := func(name string, m Model) {
		names, models = append(names, name), append(models, m)
	}
	tall := fitted(5000, rectangle(2.2, 2, -1.6), 0.5, 4e6)
	add("four legs", benchLegs(4))
	add("six legs", benchLegs(6))
	add("two legs", benchLegs(2))
	add("tall on soft legs", tall)
	add("held at its base", fitted(5000, shifted(rectangle(5, 2, -0.8), vec(0.1, -0.05, 0)), 4, 2e7))
	add("held at its base, even and stiff", fitted(5000, rectangle(5, 2, -0.8), 4, 2e8))
	add("under a spreader", spreader(4, 2, 3, 200, 5000, rectangle(4, 2, 0.1), 2e7))
	add("under a spreader, high", spreader(4, 2, 3, 200, 5000, rectangle(2.4, 2, -0.7), 2e7))
	add("ring and sheave", ringAndSheave())
	add("baskets that grip", basket(0.3, 0.01, true))
	add("bar under rings", barUnderNodes(1e4, 2, 50))
	return names, models
}

// From a rest close by, the same verdicts and tensions as from the beginning, over
// hundreds of changes, of which some let legs go slack and some turn the load over.
func TestSolveNearIsSolve(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 34))
	compared, slack, over := 0, 0, 0
	names, models := nearSeeds()
	for k, m := range models {
		name := names[k]
		first := steady(t, m)
		weight := 0.0
		for _, b := range m.Bodies {
			weight += b.MassKg * gravity
		}
		for range 120 {
			changed := otherwise(rng, m, []float64{0, 0.02, 0.3}[rng.IntN(3)], []float64{0, 1e-3, 1e-2}[rng.IntN(3)])
			want := solve(t, changed)
			got, err := SolveNear(changed, Options{}, first)
			if err != nil || got.Verdict != want.Verdict {
				t.Fatalf("%s: %v %q %+v, from the beginning %q %+v", name, err, got.Verdict, got.Why, want.Verdict, want.Why)
			}
			if got.Balance == nil {
				over++
				continue
			}
			compared++
			sameTensions(t, name, want.Balance, got.Balance, weight)
			for _, l := range got.Balance.Lines {
				if l.Slack {
					slack++
				}
			}
		}
	}
	t.Logf("%d compared, %d slack lines, %d overturn", compared, slack, over)
	if compared < 600 || slack < 200 || over < 100 {
		t.Errorf("too few cases say anything: %d compared, %d slack, %d overturn", compared, slack, over)
	}
}

func sameTensions(t *testing.T, name string, want, got *Balance, weight float64) {
	t.Helper()
	if want.Rocks && got.Rocks {
		return // where a load stops that nothing rights is chance
	}
	for i := range want.Lines {
		for j := range want.Lines[i].Runs {
			w, g := want.Lines[i].Runs[j].TensionN, got.Lines[i].Runs[j].TensionN
			if !(math.Abs(w-g) <= 1e-6*weight) {
				t.Errorf("%s: line %d: %g, from the beginning %g", name, i, g, w)
			}
		}
	}
}

// A skid that comes to rest on either side of a ridge does so from close by too, and
// one is not begun from a rest that was one of two.
func TestSolveNearARidge(t *testing.T) {
	even := fitted(5000, rectangle(4, 3, -1), 4, 1e9)
	uneven := Model{Bodies: even.Bodies, Lines: append([]Line(nil), even.Lines...)}
	uneven.Lines[1].LengthM += 0.01
	uneven.Lines[3].LengthM += 0.01
	for _, c := range []struct{ first, m Model }{{even, uneven}, {uneven, uneven}, {uneven, even}} {
		want := steady(t, c.m)
		r, err := SolveNear(c.m, Options{}, steady(t, c.first))
		if err != nil || r.Verdict != Steady || r.Balance.Rests != want.Rests {
			t.Fatalf("%v %+v", err, r)
		}
		sameTensions(t, "skid", want, r.Balance, 5000*gravity)
	}
	if n := steady(t, uneven).Rests; n != 2 {
		t.Errorf("%d rests: the case says nothing", n)
	}
}

// What can not be a rest of the model is not begun from.
func TestSolveNearOfAnotherModel(t *testing.T) {
	four, six := benchLegs(4), benchLegs(6)
	for _, b := range []*Balance{nil, {}, steady(t, six)} {
		r, err := SolveNear(four, Options{SkipBounds: true}, b)
		if err != nil || r.Verdict != Steady {
			t.Fatalf("%v %+v", err, r)
		}
		sameTensions(t, "four", steady(t, four), r.Balance, 8650*gravity)
	}
	if _, err := SolveNear(Model{}, Options{}, steady(t, four)); err == nil {
		t.Error("no error for no model")
	}
}

func TestBoundsCanBeLeftOut(t *testing.T) {
	m := benchLegs(6)
	m.Together = [][]int{{0, 1}, {2, 3}}
	full := steady(t, m)
	r, err := Solve(m, Options{SkipBounds: true})
	if err != nil || r.Verdict != Steady {
		t.Fatalf("%v %+v", err, r)
	}
	for i, l := range r.Balance.Lines {
		if l.Bound.Meaning != Skipped || !math.IsInf(l.Bound.TensionN, 1) || l.TensionN != full.Lines[i].TensionN {
			t.Errorf("%+v", l)
		}
	}
	for k, j := range r.Balance.Together {
		if j.Bound.Meaning != Skipped || !math.IsInf(j.Bound.TensionN, 1) || j.MagnitudeN != full.Together[k].MagnitudeN {
			t.Errorf("%+v", j)
		}
	}
}
