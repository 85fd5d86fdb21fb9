package mechanics

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// A skid of 8650 kg on 22 mm wire rope (EA 16.5 MN), off center, unequal legs:
// solve, steadiness and bounds together, against a target of 200 us for four.
//
// Figures: two shared cores, go1.26, amd64.

func benchLegs(n int) Model {
	var points []r3.Vec
	for i := range n {
		a := 2 * math.Pi * float64(i) / float64(n)
		points = append(points, vec(2.6*math.Cos(a)+0.1, 1.05*math.Sin(a)-0.05, 0.4))
	}
	m := fitted(8650, points, 4.5, 16.5e6)
	for i := range m.Lines {
		m.Lines[i].LengthM += 0.004 * float64(i%3)
	}
	return m
}

func benchSolve(b *testing.B, m Model) {
	b.Helper()
	steady(b, m)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Solve(m, Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

// 2026-11-25: 23 us, 41 allocations (the load rolls until its center is plumb).
func BenchmarkTwoLegs(b *testing.B) { benchSolve(b, benchLegs(2)) }

// 2026-11-25: 13 us, 53 allocations.
func BenchmarkThreeLegs(b *testing.B) { benchSolve(b, benchLegs(3)) }

// 2026-11-25: 16 us, 57 allocations.
func BenchmarkFourLegs(b *testing.B) { benchSolve(b, benchLegs(4)) }

// 2026-11-25: 140 us, 1275 allocations, nearly all in the linear programs of the
// bounds, which four legs do without.
func BenchmarkSixLegs(b *testing.B) { benchSolve(b, benchLegs(6)) }

// Two pairs taken together, on links of their own.
// 2026-11-25: 1.11 times the time without, 99 allocations.
func BenchmarkFourLegsInPairs(b *testing.B) {
	m := benchLegs(4)
	m.Together = [][]int{{0, 1}, {2, 3}}
	benchSolve(b, m)
}

// Three differences of length are open, 35 sets of lines are tried.
// 2026-11-25: 1.06 times the time without, 1481 allocations.
func BenchmarkSixLegsInPairs(b *testing.B) {
	m := benchLegs(6)
	m.Together = [][]int{{0, 1}, {2, 3}, {4, 5}}
	benchSolve(b, m)
}

// Very stiff legs under a light load pass through stages of stiffness.
// 2026-11-25: 46 us, 57 allocations.
func BenchmarkFourLegsVeryStiff(b *testing.B) {
	m := benchLegs(4)
	for i := range m.Lines {
		m.Lines[i].StiffnessN = 1e9
	}
	m.Bodies[0].MassKg = 100
	benchSolve(b, m)
}

// Two bodies. 2026-11-25: 80 us, 111 allocations.
func BenchmarkSpreaderWithFourSlings(b *testing.B) {
	benchSolve(b, spreader(4, 2, 3, 200, 1000, rectangle(4, 2, 0.5), 1e7))
}

// Four legs at 256 corners of mass, center of gravity and lengths, steadiness
// judged at each, bounds left out.
// 2026-11-27: 10 ms, 39 us a corner; 96 of them leave a leg slack and are solved
// from the beginning.
func BenchmarkCornersOfFourLegs(b *testing.B) {
	m := benchLegs(4)
	first := steady(b, m)
	b.ReportAllocs()
	for b.Loop() {
		for corner := range 256 {
			sign := func(bit int) float64 { return float64(corner>>bit&1)*2 - 1 }
			m := Model{Bodies: append([]Body(nil), m.Bodies...), Lines: append([]Line(nil), m.Lines...)}
			m.Bodies[0].MassKg *= 1 + 0.02*sign(0)
			m.Bodies[0].CenterOfGravity = vec(0.1*sign(1), 0.1*sign(2), 0.1*sign(3))
			for i := range m.Lines {
				m.Lines[i].LengthM += 0.01 * sign(4+i)
			}
			if r, err := SolveNear(m, Options{SkipBounds: true}, first); err != nil || r.Verdict == NoBalance {
				b.Fatal(err, r)
			}
		}
	}
}

// A bar between two rings on stiff links, six slings: four bodies.
// 2026-11-27: 0.38 ms, 153 allocations.
func BenchmarkBarUnderRings(b *testing.B) { benchSolve(b, barUnderNodes(1e4, 2, 50)) }

// Two baskets that grip a pipe.
// 2026-11-27: 54 us, 81 allocations.
func BenchmarkBasketsThatGrip(b *testing.B) { benchSolve(b, basket(0.3, 0.01, true)) }

// Four legs of a sling, a shackle of 1 kg and a stiff link each, under a master ring
// and 100 t; and the same with one leg far too long, its shackle hanging idle.
// 2026-11-27: 0.45 ms, and 0.86 ms while the idle shackle swings to its place; 3.2 ms
// before steps followed the arcs of lines that turn.
func BenchmarkLinkedBridle(b *testing.B) {
	m, _ := linkedBridle(1e5, 1, [4]float64{0, 0.004, 0, 0.002})
	benchSolve(b, m)
}

func BenchmarkLinkedBridleWithLooseLeg(b *testing.B) {
	m, _ := linkedBridle(1e5, 1, [4]float64{0, 0.5, 0, 0})
	benchSolve(b, m)
}
