package mechanics

import (
	"math"

	"gonum.org/v1/gonum/stat/combin"
)

// extremes are where the splits that balance, with no line in compression, come
// to an end: every such split is a mean of corners plus rays, each ray as often
// as one likes.
type extremes struct {
	// corners are splits, newtons a column.
	corners [][]float64
	// rays are changes that can be added without end: lines that pull against
	// each other.
	rays [][]float64
	// known: all of them were found.
	known bool
}

// mostMoving is the number of lines with a tension that can change up to which
// all extremes are tried: at most 126 sets of lines.
const mostMoving = 8

// ways are the independent changes of tension that leave equilibrium alone.
func (s *system) ways(st []pose, cols []strand) [][]float64 {
	m := len(cols)
	reduced := s.boundMatrix(st, cols)
	pivots := eliminate(reduced, s.n, m)
	var out [][]float64
	for _, f := range s.holding(freeColumns(pivots, m), cols) {
		out = append(out, nullVector(reduced, pivots, f, m))
	}
	return out
}

// extremesOf finds the extremes of all splits that differ by ways from the one
// given, of which the bounds of single columns are known.
func (s *system) extremesOf(ways [][]float64, given []float64, bounds []Bound) extremes {
	k := len(ways)
	rows := s.limits(ways, given)
	if moving := len(rows) - 1; k == 0 || k > 1 && moving > mostMoving {
		return extremes{}
	}
	var e extremes
	set := make([]int, k)
	for sets := combin.NewCombinationGenerator(len(rows), k); sets.Next(); {
		d, ok := edge(rows, sets.Combination(set))
		if !ok {
			continue
		}
		change := mix(ways, d)
		if d[k] <= dependent {
			e.rays = append(e.rays, change)
			continue
		}
		for i, t := range given {
			change[i] = math.Max(0, t+change[i]*s.weight/d[k])
		}
		e.corners = append(e.corners, change)
	}
	e.known = e.reach(bounds)
	return e
}

// limits are the conditions on (x, 1), with x the measure of each way taken over
// the weight, as rows that may not turn negative: what each line that can change
// carries. The last row is the 1 itself: written so, a corner and a ray are the
// same thing, an edge of one cone, and a ray has 0 there.
func (s *system) limits(ways [][]float64, given []float64) [][]float64 {
	k := len(ways)
	var rows [][]float64
	for i, t := range given {
		row := make([]float64, k+1)
		moves := false
		for j, w := range ways {
			row[j] = w[i]
			moves = moves || math.Abs(w[i]) > dependent
		}
		row[k] = t / s.weight
		if moves {
			rows = append(rows, row)
		}
	}
	one := make([]float64, k+1)
	one[k] = 1
	return append(rows, one)
}

// edge is the direction in which the rows of the set stay zero, if there is but
// one, and no other row turns negative. Its largest component is 1 or -1.
func edge(rows [][]float64, set []int) ([]float64, bool) {
	n := len(set) + 1
	a := make([]float64, 0, len(set)*n)
	for _, r := range set {
		a = append(a, rows[r]...)
	}
	pivots := eliminate(a, len(set), n)
	if len(pivots) < len(set) {
		return nil, false
	}
	d := nullVector(a, pivots, freeColumns(pivots, n)[0], n)
	f := 1 / farthest(d...)
	for _, way := range []float64{f, -f} {
		v := make([]float64, n)
		for i := range v {
			v[i] = way * d[i]
		}
		if within(rows, v) {
			return v, true
		}
	}
	return nil, false
}

func within(rows [][]float64, d []float64) bool {
	for _, r := range rows {
		if !(dot(r, d) >= -dependent) {
			return false
		}
	}
	return true
}

// mix adds up the ways, each as far as d says.
func mix(ways [][]float64, d []float64) []float64 {
	out := make([]float64, len(ways[0]))
	for j, w := range ways {
		for i := range out {
			out[i] += w[i] * d[j]
		}
	}
	return out
}

// reach holds the extremes against the bounds of the single columns, which were
// found in another way: extremes that fall short of one of those are not all there
// are.
func (e extremes) reach(bounds []Bound) bool {
	for i, b := range bounds {
		if b.Meaning == Unknown {
			continue
		}
		top := 0.0
		for _, split := range e.corners {
			top = math.Max(top, split[i])
		}
		for _, ray := range e.rays {
			if ray[i] > dependent {
				top = math.Inf(1)
			}
		}
		if !(top >= b.TensionN*(1-1e-6)) {
			return false
		}
	}
	return len(e.corners) > 0
}
