package mechanics

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"gonum.org/v1/gonum/spatial/r3"
)

// together solves m with the groups asked for.
func together(t fataler, m Model, groups ...[]int) *Balance {
	t.Helper()
	m.Together = groups
	b := steady(t, m)
	if len(b.Together) != len(groups) {
		t.Fatalf("%d joints for %d groups", len(b.Together), len(groups))
	}
	for k, j := range b.Together {
		near(t, "magnitude", j.MagnitudeN, r3.Norm(j.ForceN), 1e-12*j.MagnitudeN)
		if !(j.Bound.TensionN >= j.MagnitudeN) {
			t.Fatalf("group %v: bound below the split: %+v", groups[k], j)
		}
	}
	return b
}

func wantBound(t *testing.T, name string, j Joint, want float64, meaning BoundMeaning) {
	t.Helper()
	if j.Bound.Meaning != meaning {
		t.Errorf("%s: %q, want %q", name, j.Bound.Meaning, meaning)
	}
	if !math.IsInf(want, 1) || !math.IsInf(j.Bound.TensionN, 1) {
		near(t, name, j.Bound.TensionN, want, 1e-5*want)
	}
}

// Statics: four equal legs to a square, center of gravity in the middle, b from
// horizontal. The tensions can only change by (1, -1, 1, -1). Two legs side by
// side always lift W/2; most is on the link when one of them does it all, with
// W/2 / sin b. Two legs across from each other may lift W.
func TestPairsOfFourLegs(t *testing.T) {
	const w = 1000 * gravity
	for _, height := range []float64{1.5, 2.5, 6} {
		m := fitted(1000, rectangle(3, 3, 0.5), height, 1e10)
		b := together(t, m, []int{0, 1}, []int{3, 2}, []int{0, 2}, []int{1, 3})
		rise := height - 0.5
		sin := rise / math.Sqrt(rise*rise+2*1.5*1.5)
		for k, j := range b.Together[:2] {
			near(t, "adjacent pair pulls the link down", j.ForceN.Z, -w/2, 1e-6*w)
			near(t, "and to its side", j.ForceN.Y, []float64{-1, 1}[k]*w/2*1.5/rise, 1e-4*w)
			wantBound(t, "adjacent pair", j, w/2/sin, AnySplit)
			// The same by a scan over all splits that balance.
			top := 0.0
			for x := 0.0; x <= 1; x += 1e-4 {
				one, other := 2*x, 2*(1-x)
				f := r3.Add(r3.Scale(one, vec(-1.5, -1.5, -rise)), r3.Scale(other, vec(1.5, -1.5, -rise)))
				top = math.Max(top, r3.Norm(f)*w/4/rise)
			}
			near(t, "by scan", j.Bound.TensionN, top, 1e-3*w)
		}
		for _, j := range b.Together[2:] {
			near(t, "opposite pair", r3.Norm(r3.Sub(j.ForceN, vec(0, 0, -w/2))), 0, 1e-4*w)
			wantBound(t, "opposite pair", j, w, AnySplit)
		}
	}
}

// One diagonal longer moves load between the diagonals, not between the sides,
// and leaves the bound where it was.
func TestPairsWithOneDiagonalLonger(t *testing.T) {
	const w = 1000 * gravity
	m := fitted(1000, rectangle(3, 3, 0.5), 2.5, 1e7)
	m.Lines[1].LengthM += 0.0005
	m.Lines[3].LengthM += 0.0005
	b := together(t, m, []int{0, 1}, []int{0, 2})
	if b.Lines[0].TensionN < 1.2*b.Lines[1].TensionN {
		t.Fatalf("%g and %g: no difference to speak of", b.Lines[0].TensionN, b.Lines[1].TensionN)
	}
	near(t, "adjacent pair", b.Together[0].ForceN.Z, -w/2, 1e-4*w)
	near(t, "bound of the adjacent pair", b.Together[0].Bound.TensionN/w, 0.5*math.Sqrt(4+4.5)/2, 1e-3)
	near(t, "opposite pair carries more", b.Together[1].MagnitudeN, b.Lines[0].TensionN*2*2/math.Sqrt(4+4.5), 1e-3*w)
	near(t, "bound of the opposite pair", b.Together[1].Bound.TensionN/w, 1, 1e-3)
}

// All legs on one link carry the weight, however they share it.
func TestAllLegsTogetherCarryTheWeight(t *testing.T) {
	for n := 1; n <= 10; n++ {
		group := make([]int, n)
		for i := range group {
			group[i] = n - 1 - i
		}
		m := benchLegs(n)
		if n == 1 {
			m = fitted(8650, []r3.Vec{vec(0, 0, 0.5)}, 4, 1e8)
		}
		b := together(t, m, group)
		j := b.Together[0]
		wantBound(t, "all legs", j, 8650*gravity, Determinate)
		near(t, "as on the hook", r3.Norm(r3.Sub(j.ForceN, b.Hooks[0].LoadN)), 0, 1e-6*8650*gravity)
		if j.At != m.Lines[0].From {
			t.Errorf("%+v", j.At)
		}
	}
}

// Two or three legs are determinate, and so is any sum of them; so are four
// slings under a bar: sideways pulls that differ would turn it.
func TestDeterminateSumsHaveTheSplitForBound(t *testing.T) {
	for _, c := range []struct {
		m      Model
		groups [][]int
	}{
		{benchLegs(2), [][]int{{0}, {0, 1}}},
		{benchLegs(3), [][]int{{0}, {0, 1}, {2, 0}, {0, 1, 2}}},
		{spreader(4, 2, 3, 200, 1000, rectangle(4, 2, 0.5), 1e7), [][]int{{0, 1}, {2, 5}, {3, 4}}},
	} {
		b := together(t, c.m, c.groups...)
		for k, j := range b.Together {
			var f r3.Vec
			for _, i := range c.groups[k] {
				f = r3.Add(f, r3.Scale(b.Lines[i].TensionN, b.Lines[i].Direction))
			}
			near(t, "vector sum", r3.Norm(r3.Sub(f, j.ForceN)), 0, 1e-9*r3.Norm(f))
			wantBound(t, "determinate", j, r3.Norm(f), Determinate)
		}
	}
}

// A group of one says what the line itself says.
func TestGroupOfOneIsTheLine(t *testing.T) {
	for _, n := range []int{3, 4, 6, 8} {
		var groups [][]int
		for i := range n {
			groups = append(groups, []int{i})
		}
		b := together(t, benchLegs(n), groups...)
		for i, j := range b.Together {
			near(t, "tension", j.MagnitudeN, b.Lines[i].TensionN, 1e-9*b.Lines[i].TensionN)
			wantBound(t, "bound", j, b.Lines[i].Bound.TensionN, b.Lines[i].Bound.Meaning)
		}
	}
}

// Slings from two hooks to one lug: their sum lifts, and is the weight, though
// each carries more than half.
func TestSlingsToOneAttachment(t *testing.T) {
	const w = 1000 * gravity
	lug := Anchor{0, vec(0, 0, 0.5)}
	m := Model{Bodies: []Body{{Name: "load", MassKg: 1000}}}
	for _, x := range []float64{-2, 2, -2} { // the third beside the first
		m.Lines = append(m.Lines, Line{From: Hook(vec(x, 0, 10)), To: lug, LengthM: 4, StiffnessN: 1e9})
	}
	b := together(t, m, []int{0, 1, 2}, []int{0, 2}, []int{0, 1})
	all, same, cross := b.Together[0], b.Together[1], b.Together[2]
	if all.At != lug || same.At != m.Lines[0].From {
		t.Errorf("%+v, %+v", all.At, same.At)
	}
	near(t, "lifts", r3.Norm(r3.Sub(all.ForceN, vec(0, 0, w))), 0, 1e-6*w)
	wantBound(t, "all", all, w, Determinate)
	// The two side by side share one leg's force in a way that does not matter.
	wantBound(t, "side by side", same, w/math.Sqrt(3), Determinate)
	near(t, "pulls its hook down", same.ForceN.Z, -w/2, 1e-4*w)
	// One of them with the far one: the weight at most, one leg's force at least.
	wantBound(t, "either with the far one", cross, w, AnySplit)
}

// Three slings side by side from hook to lug: any two may carry it all.
func TestParallelLinesTogether(t *testing.T) {
	p := vec(0, 0, 0.5)
	b := together(t, fitted(1000, []r3.Vec{p, p, p}, 3, 1e9), []int{0, 2})
	near(t, "as computed", b.Together[0].MagnitudeN, 1000*gravity*2/3, 0.1)
	wantBound(t, "any two", b.Together[0], 1000*gravity, AnySplit)
}

// Lines that pull against each other have no bound. Where they end at one point
// in one line, their sum on it has one all the same.
func TestSumsOfLinesThatPullAgainstEachOther(t *testing.T) {
	const w = 1000 * gravity
	m := fitted(1000, rectangle(4, 3, 0.5), 4, 1e9)
	m.Lines = append(m.Lines, Line{Name: "tie-down", From: Hook(vec(0, 0, 0)), To: Anchor{0, vec(0, 0, -0.5)}, LengthM: 6, StiffnessN: 1e6})
	b := together(t, m, []int{0, 1}, []int{0, 1, 2, 3})
	for k, j := range b.Together {
		wantBound(t, []string{"pair", "all legs"}[k], j, math.Inf(1), Unbounded)
	}
	lug := Anchor{0, vec(0, 0, 0.5)}
	m = Model{Bodies: []Body{{Name: "load", MassKg: 1000}}, Lines: []Line{
		{From: Hook(vec(0, 0, 10)), To: lug, LengthM: 4, StiffnessN: 1e7},
		{From: Hook(vec(0, 0, 0)), To: lug, LengthM: 5.99, StiffnessN: 1e7},
	}}
	b = together(t, m, []int{0, 1}, []int{0})
	wantBound(t, "up and down on one lug", b.Together[0], w, Determinate)
	wantBound(t, "the upper alone", b.Together[1], math.Inf(1), Unbounded)
}

// With two ways to pull against each other, unbounded sums and bounded ones are
// told apart: slings side by side above a lug share what they carry, against a
// tie-down that has no bound.
func TestUnboundedAmongSeveralWays(t *testing.T) {
	const w = 1000 * gravity
	top, lug := Hook(vec(0, 0, 10)), Anchor{0, vec(0, 0, 0.5)}
	m := Model{Bodies: []Body{{Name: "load", MassKg: 1000}}, Lines: []Line{
		{From: top, To: lug, LengthM: 4, StiffnessN: 1e7},
		{From: top, To: lug, LengthM: 4, StiffnessN: 1e7},
		{From: Hook(vec(0, 0, 0)), To: lug, LengthM: 5.99, StiffnessN: 1e7},
	}}
	b := together(t, m, []int{0, 1, 2}, []int{0, 1}, []int{0, 2})
	wantBound(t, "all on the lug", b.Together[0], w, Determinate)
	wantBound(t, "both above", b.Together[1], math.Inf(1), Unbounded)
	// One above may be slack while the other holds the tie-down.
	wantBound(t, "one above and the tie-down", b.Together[2], math.Inf(1), Unbounded)
	// A load beside, on two slings side by side, has nothing to do with that.
	m.Bodies = append(m.Bodies, Body{Name: "beside", MassKg: 500})
	for range 2 {
		m.Lines = append(m.Lines, Line{From: Hook(vec(9, 0, 10)), To: Anchor{1, vec(0, 0, 0.5)}, LengthM: 4, StiffnessN: 1e7})
	}
	wantBound(t, "one of two beside", together(t, m, []int{4}).Together[0], 500*gravity, AnySplit)
}

// Beyond eight lines the worst split is not looked for, and that is said.
func TestTooManyLinesAreUnknown(t *testing.T) {
	for n, want := range map[int]BoundMeaning{8: AnySplit, 9: Unknown} {
		j := together(t, benchLegs(n), []int{0, 1}).Together[0]
		if j.Bound.Meaning != want || math.IsInf(j.Bound.TensionN, 1) != (want == Unknown) {
			t.Errorf("%d legs: %+v", n, j.Bound)
		}
	}
}

// Lines that no split changes do not count, and one way to change is followed
// along any number of lines.
func TestManyLinesWithFewWaysAreKnown(t *testing.T) {
	p := vec(0, 0, 0.5)
	m := fitted(1000, []r3.Vec{p, p, p}, 3, 1e9)
	chained(&m, 9)
	wantBound(t, "one of three above a chain", together(t, m, []int{1}).Together[0], 1090*gravity, AnySplit)

	m = fitted(1000, []r3.Vec{p}, 3, 1e9)
	below := chained(&m, 9)
	m.Lines = append(m.Lines, Line{From: below, To: Hook(vec(0, 0, -12)), LengthM: 0.499, StiffnessN: 1e5})
	wantBound(t, "a chain held from below", together(t, m, []int{0}).Together[0], math.Inf(1), Unbounded)
}

// chained hangs n bodies of 10 kg under the first one of m, each under the last,
// and gives the place for one more.
func chained(m *Model, n int) Anchor {
	from := Anchor{0, vec(0, 0, -0.5)}
	for i := range n {
		m.Bodies = append(m.Bodies, Body{MassKg: 10})
		m.Lines = append(m.Lines, Line{From: from, To: Anchor{i + 1, vec(0, 0, 0.5)}, LengthM: 1, StiffnessN: 1e9})
		from = Anchor{i + 1, vec(0, 0, -0.5)}
	}
	return from
}

// Legs close to level pull with many times the weight.
func TestPairOfFlatLegs(t *testing.T) {
	const w = 1000 * gravity
	b := together(t, fitted(1000, rectangle(4, 3, 0.49), 0.5, 1e12), []int{0, 1}, []int{0, 2})
	sin := math.Sin(b.Lines[0].AngleFromHorizontalDeg * math.Pi / 180)
	if sin > 0.005 {
		t.Fatalf("%g deg is not flat", b.Lines[0].AngleFromHorizontalDeg)
	}
	wantBound(t, "adjacent pair", b.Together[0], w/2/sin, AnySplit)
	wantBound(t, "opposite pair", b.Together[1], w, AnySplit)
}

func TestAskingChangesNothingElse(t *testing.T) {
	for _, n := range []int{3, 4, 6} {
		m := benchLegs(n)
		plain, asked := steady(t, m), together(t, m, []int{0, 1})
		if plain.Together != nil {
			t.Errorf("%+v", plain.Together)
		}
		asked.Together = nil
		if diff := cmp.Diff(plain, asked); diff != "" {
			t.Error(diff)
		}
	}
}

func TestGroupsWithoutMeaningAreRefused(t *testing.T) {
	m := spreader(4, 2, 3, 200, 1000, rectangle(4, 2, 0.5), 1e7)
	for i := range m.Lines {
		m.Lines[i].Name = string(rune('A' + i))
	}
	for _, c := range []struct {
		group []int
		says  string
	}{
		{nil, "empty"},
		{[]int{0, 6}, "line number 6"},
		{[]int{-1}, "line number -1"},
		{[]int{0, 1, 0}, "A is named twice"},
		{[]int{0, 1, 2}, "A, B, C are to be taken together and do not end at one point"},
	} {
		m.Together = [][]int{{0, 1}, c.group}
		r, err := Solve(m, Options{})
		if !errors.Is(err, ErrModel) || !strings.Contains(err.Error(), c.says) || r.Verdict != "" {
			t.Errorf("%v: %v", c.group, err)
		}
	}
}
