package mechanics

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// bounds finds for every column the largest tension that equilibrium at st
// allows, given one split of tensions that balances: the linear program
// max t_i over A t = A given, t >= 0.
func (s *system) bounds(st []pose, cols []strand, given []float64) []Bound {
	m := len(given)
	reduced := s.boundMatrix(st, cols)
	pivots := eliminate(reduced, s.n, m)
	out := make([]Bound, m)
	for i, t := range given {
		out[i] = Bound{TensionN: t, Meaning: Determinate}
	}
	switch free := s.holding(freeColumns(pivots, m), cols); len(free) {
	case 0:
	case 1:
		along(out, given, nullVector(reduced, pivots, free[0], m))
	default:
		byProgram(out, given, reduced[:len(pivots)*m], pivots)
	}
	return out
}

// dependent is how small a pivot must be, against unit directions, for a row or
// column to count as following from the others.
const dependent = 1e-8

// eliminate brings a (rows x n) to reduced row echelon form with full pivoting
// and gives the pivot column of each row; rows beyond those are zero.
func eliminate(a []float64, rows, n int) []int {
	var pivots []int
	used := make([]bool, n)
	for p := 0; p < rows && p < n; p++ {
		best, bi, bj := dependent, -1, -1
		for i := p; i < rows; i++ {
			for j := range n {
				if v := math.Abs(a[i*n+j]); !used[j] && v > best {
					best, bi, bj = v, i, j
				}
			}
		}
		if bi < 0 {
			break
		}
		for j := range n {
			a[p*n+j], a[bi*n+j] = a[bi*n+j], a[p*n+j]
		}
		used[bj] = true
		pivots = append(pivots, bj)
		clearColumn(a, rows, n, p, bj)
	}
	return pivots
}

func clearColumn(a []float64, rows, n, p, c int) {
	f := 1 / a[p*n+c]
	for j := range n {
		a[p*n+j] *= f
	}
	for i := range rows {
		g := a[i*n+c]
		if i == p || g == 0 {
			continue
		}
		for j := range n {
			a[i*n+j] -= g * a[p*n+j]
		}
	}
}

func freeColumns(pivots []int, n int) []int {
	var free []int
next:
	for j := range n {
		for _, p := range pivots {
			if p == j {
				continue next
			}
		}
		free = append(free, j)
	}
	return free
}

// nullVector is the change of tensions that leaves equilibrium alone, one
// newton in the free column f.
func nullVector(reduced []float64, pivots []int, f, n int) []float64 {
	v := make([]float64, n)
	v[f] = 1
	for row, p := range pivots {
		v[p] = -reduced[row*n+f]
	}
	return v
}

// along bounds tensions that can only move along v: how far each way until a
// line goes slack.
func along(out []Bound, given, v []float64) {
	lo, hi := math.Inf(-1), math.Inf(1)
	for i, x := range v {
		switch {
		case x > dependent:
			lo = math.Max(lo, -given[i]/x)
		case x < -dependent:
			hi = math.Min(hi, -given[i]/x)
		}
	}
	for i, x := range v {
		switch {
		case x > dependent:
			out[i] = bounded(given[i], x, hi)
		case x < -dependent:
			out[i] = bounded(given[i], x, lo)
		}
	}
}

func bounded(given, v, far float64) Bound {
	if math.IsInf(far, 0) {
		return Bound{TensionN: math.Inf(1), Meaning: Unbounded}
	}
	return Bound{TensionN: math.Max(given, given+v*far), Meaning: AnySplit}
}

// byProgram bounds tensions with two or more ways to move.
func byProgram(out []Bound, given, reduced []float64, pivots []int) {
	m := len(given)
	scale := 0.0
	for _, t := range given {
		scale = math.Max(scale, t)
	}
	rhs := make([]float64, len(pivots))
	for i := range rhs {
		rhs[i] = dot(reduced[i*m:(i+1)*m], given) / scale
	}
	a := mat.NewDense(len(pivots), m, reduced)
	for i := range out {
		top, err := largest(a, rhs, i)
		switch {
		case errors.Is(err, lp.ErrUnbounded):
			out[i] = Bound{TensionN: math.Inf(1), Meaning: Unbounded}
		case err != nil || !finite(top):
			out[i] = Bound{TensionN: math.Inf(1), Meaning: Unknown}
		default:
			out[i] = Bound{TensionN: math.Max(given[i], top*scale), Meaning: AnySplit}
		}
	}
}

// largest is max x_i over a x = b, x >= 0. The library panics on some
// degenerate programs; that becomes an error, and the bound unknown.
func largest(a *mat.Dense, b []float64, i int) (top float64, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("linear program: %v", r)
		}
	}()
	_, n := a.Dims()
	c := make([]float64, n)
	c[i] = -1
	f, _, err := lp.Simplex(c, a, b, 1e-11, nil)
	return -f, err
}
