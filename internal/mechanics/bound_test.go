package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r3"
)

// bySets is the bound by another road: every set of three legs that meet at the
// hook balances the load in one way or not at all; the largest tension in any
// set that only pulls is the bound.
func bySets(b *Balance) []float64 {
	n := len(b.Lines)
	top := make([]float64, n)
	for i := range n {
		for j := range i {
			for k := range j {
				a := mat.NewDense(3, 3, nil)
				for c, l := range []int{i, j, k} {
					d := b.Lines[l].Direction
					a.SetCol(c, []float64{-d.X, -d.Y, -d.Z})
				}
				var t mat.VecDense
				if err := t.SolveVec(a, mat.NewVecDense(3, []float64{0, 0, 1})); err != nil {
					continue
				}
				if t.AtVec(0) < -1e-9 || t.AtVec(1) < -1e-9 || t.AtVec(2) < -1e-9 {
					continue
				}
				for c, l := range []int{i, j, k} {
					top[l] = math.Max(top[l], t.AtVec(c))
				}
			}
		}
	}
	return top
}

func TestBoundIsTheLargestOverSetsOfThree(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	seen := 0
	for trial := range 90 {
		n := 4 + trial%3
		var points []r3.Vec
		for i := range n {
			a := 2*math.Pi*float64(i)/float64(n) + 0.5*rng.Float64()
			r := 1 + 2*rng.Float64()
			points = append(points, vec(r*math.Cos(a), r*math.Sin(a), 0.2+0.5*rng.Float64()))
		}
		m := fitted(1000, points, 4, 2e6)
		for i := range m.Lines {
			m.Lines[i].LengthM *= 1 + 0.003*rng.Float64()
		}
		r := solve(t, m)
		if r.Verdict != Steady {
			continue
		}
		seen++
		for i, want := range bySets(r.Balance) {
			l := r.Balance.Lines[i]
			near(t, "bound", l.Bound.TensionN/(1000*gravity), want, 1e-6)
			if l.Bound.Meaning != AnySplit || l.Bound.TensionN < l.TensionN {
				t.Fatalf("%+v", l)
			}
		}
	}
	if seen < 60 {
		t.Errorf("only %d cases", seen)
	}
}

// Common practice: a rigid load on four equal legs may hang on two of them.
func TestBoundOfFourEqualLegsIsTwo(t *testing.T) {
	b := steady(t, fitted(1000, rectangle(4, 3, 0.5), 4, 1e9))
	for _, l := range b.Lines {
		near(t, "bound over tension", l.Bound.TensionN/l.TensionN, 2, 1e-6)
	}
}

// Two slings side by side from hook to lug: either may carry it all.
func TestBoundOfParallelLines(t *testing.T) {
	p := vec(0, 0, 0.5)
	b := steady(t, fitted(1000, []r3.Vec{p, p, p}, 3, 1e9))
	for _, l := range b.Lines {
		near(t, "tension", l.TensionN, 1000*gravity/3, 0.1)
		near(t, "bound", l.Bound.TensionN, 1000*gravity, 0.1)
	}
}

// A line that pulls down against the others can be tightened without end.
func TestBoundOfLinesThatPullAgainstEachOther(t *testing.T) {
	m := fitted(1000, rectangle(4, 3, 0.5), 4, 1e9)
	m.Lines = append(m.Lines, Line{Name: "tie-down", From: Hook(vec(0, 0, 0)), To: Anchor{0, vec(0, 0, -0.5)}, LengthM: 6, StiffnessN: 1e6})
	b := steady(t, m)
	for i, l := range b.Lines {
		if l.Bound.Meaning != Unbounded || !math.IsInf(l.Bound.TensionN, 1) {
			t.Errorf("line %d: %+v", i, l.Bound)
		}
	}
}
