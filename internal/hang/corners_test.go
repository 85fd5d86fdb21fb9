package hang

import (
	"math"
	"slices"
	"testing"

	"liftlint/internal/mechanics"
)

// hangAll hangs the load of a position with every combination of its legs' longest and
// shortest, and gives the most in each leg.
func hangAll(t *testing.T, p *Position) []float64 {
	t.Helper()
	most := make([]float64, len(p.layout.lift.legs))
	for _, change := range combinations(lengthTolerances(p.layout.lift.legs)) {
		m := p.model
		m.Lines = slices.Clone(m.Lines)
		for i, n := range p.layout.line {
			m.Lines[n].LengthM += change[i]
		}
		r, err := mechanics.Solve(m, mechanics.Options{SkipBounds: true})
		if err != nil || r.Balance == nil {
			t.Fatal(r.Why, err)
		}
		for i, n := range p.layout.line {
			most[i] = max(most[i], r.Balance.Lines[n].TensionN)
		}
	}
	return most
}

// TestCornersOfManyLengths: of more legs than all combinations are tried of, each
// one's worst is found all the same, also where some go
// slack and what a length does depends on the others. Here of nine, seven of
// which carry the load below a frame: the worst of 512.
func TestCornersOfManyLengths(t *testing.T) {
	seven := [][2]float64{{-2, -1}, {0, -1}, {2, -1}, {-2, 1}, {0, 1}, {2, 1}, {0, 0}}
	for _, c := range []struct {
		sling string
		least float64 // share of the worst that is found
	}{
		{"length: 5 m, length_tolerance: 1 mm", 0.9999},
		{"length: 5 m, length_tolerance: 4 mm", 0.9999},
		{"length: 1 m, length_tolerance: 8 mm", 0.9999},
		{"length: 1 m, length_tolerance: 16 mm", 0.9999},
	} {
		pairs := append(below("diameter: 12 mm, "+c.sling, seven...), "length: 4 m}", "length: 4 m, length_tolerance: 1 mm}")
		p := &hung(t, frame, pairs...).Positions[0]
		if !p.Worst.Lengths || p.Worst.Failed != nil {
			t.Fatalf("lengths are not tried: %+v", p.Worst)
		}
		for i, want := range hangAll(t, p) {
			got := p.Worst.LengthN[i]
			if got > want*(1+1e-6) || got < want*c.least {
				t.Errorf("%s, leg %d: %.6g N where the worst of all is %.6g N", c.sling, i, got, want)
			}
		}
	}
}

// TestCornersOfFewLengths: up to six legs it is the worst of all, exactly.
func TestCornersOfFewLengths(t *testing.T) {
	four := [][2]float64{{-2, -1}, {2, -1}, {2, 1}, {-2, 1}}
	pairs := append(below("diameter: 20 mm, length: 3 m, length_tolerance: 3 mm", four...), "length: 4 m}", "length: 4 m, length_tolerance: 3 mm}")
	p := &hung(t, frame, pairs...).Positions[0]
	for i, want := range hangAll(t, p) {
		if got := p.Worst.LengthN[i]; math.Abs(got-want) > 1e-4*want {
			t.Errorf("leg %d: %.6g N where the worst of all is %.6g N", i, got, want)
		}
	}
}
