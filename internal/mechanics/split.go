package mechanics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

// balanceMatrix has a column a strand: force (over 1) and moment (over the body's
// arm) that one newton of tension puts on each body, a row a freedom, with the
// lines straight at st. Row-major, s.n rows, one column a strand.
func (s *system) balanceMatrix(st []pose, cols []strand) []float64 {
	m := len(cols)
	a := make([]float64, s.n*m)
	for j := range cols {
		for _, r := range cols[j].runs {
			n := unit(r.span(st))
			s.addColumn(a, st, r.from, n, j, m)
			s.addColumn(a, st, r.to, r3.Scale(-1, n), j, m)
		}
	}
	return a
}

func (s *system) addColumn(a []float64, st []pose, e end, pull r3.Vec, j, m int) {
	if e.body == World {
		return
	}
	b := &s.masses[e.body]
	for i, v := range []float64{pull.X, pull.Y, pull.Z} {
		a[(b.o+i)*m+j] += v
	}
	if b.point {
		return
	}
	r, _ := e.arms(st)
	t := r3.Scale(1/b.arm, r3.Cross(r, pull))
	for i, v := range []float64{t.X, t.Y, t.Z} {
		a[(b.o+3+i)*m+j] += v
	}
}

// unit is v over its length, or zero for no length.
func unit(v r3.Vec) r3.Vec {
	if n := r3.Norm(v); n > 0 {
		return r3.Scale(1/n, v)
	}
	return r3.Vec{}
}

// fittedSplit finds the tensions with which lines cut to fit would hold the
// bodies at st: in balance, none negative, and of all such splits the one with
// the least stretch energy, which is what elastic lines choose. False: no
// tensions hold the bodies there, whatever the lengths.
func (s *system) fittedSplit(st []pose, cols []strand) ([]float64, bool) {
	const pliancy = 1e-5 // weight of the stretch energy against balance
	m := len(cols)
	balance := s.balanceMatrix(st, cols)
	a := make([]float64, (s.n+m)*m)
	copy(a, balance)
	softest := 0.0
	for i := range cols {
		softest = math.Max(softest, cols[i].length/cols[i].stiffness)
	}
	for i := range cols {
		c := cols[i].length / cols[i].stiffness / softest
		a[(s.n+i)*m+i] = pliancy * math.Sqrt(c)
	}
	b := make([]float64, s.n+m)
	for k := range s.masses {
		b[s.masses[k].o+2] = s.masses[k].weight / s.weight
	}
	t := nonNegative(a, b, m)
	ok := true
	for i := range s.n {
		ok = ok && math.Abs(dot(balance[i*m:(i+1)*m], t)-b[i]) <= 1e-7
	}
	for i := range t {
		t[i] *= s.weight
	}
	return t, ok
}

// nonNegative minimizes |a x - b| over x >= 0 (a row-major, n columns), by the
// active-set method of Lawson and Hanson, Solving Least Squares Problems, ch. 23.
func nonNegative(a, b []float64, n int) []float64 {
	x := make([]float64, n)
	free := make([]bool, n)
	for range 10 * n {
		j := steepest(a, b, x, free)
		if j < 0 {
			break
		}
		free[j] = true
		for range n {
			z := leastSquares(a, b, free)
			f := feasibleShare(x, z, free)
			for i := range x {
				x[i] += f * (z[i] - x[i])
				if free[i] && x[i] <= 1e-14 {
					x[i], free[i] = 0, false
				}
			}
			if f == 1 {
				break
			}
		}
	}
	return x
}

// steepest is the held variable that would lower the residual most, or -1.
func steepest(a, b, x []float64, free []bool) int {
	n := len(x)
	w := make([]float64, n)
	for i := range b {
		r := b[i] - dot(a[i*n:(i+1)*n], x)
		for j := range w {
			w[j] += a[i*n+j] * r
		}
	}
	best, at := 1e-12, -1
	for j, v := range w {
		if !free[j] && v > best {
			best, at = v, j
		}
	}
	return at
}

// feasibleShare is how far one can go from x to z without a free variable
// turning negative.
func feasibleShare(x, z []float64, free []bool) float64 {
	f := 1.0
	for i := range x {
		if free[i] && z[i] <= 0 {
			f = math.Min(f, x[i]/(x[i]-z[i]))
		}
	}
	return f
}

// leastSquares minimizes |a z - b| over the free variables, the others zero, by
// Householder reflections.
func leastSquares(a, b []float64, free []bool) []float64 {
	n, rows := len(free), len(b)
	var cols []int
	for j, ok := range free {
		if ok {
			cols = append(cols, j)
		}
	}
	k := len(cols)
	q := make([]float64, rows*(k+1)) // by columns, b last
	for c, j := range cols {
		for i := range rows {
			q[c*rows+i] = a[i*n+j]
		}
	}
	copy(q[k*rows:], b)
	diag := make([]float64, k)
	for c := range k {
		diag[c] = reflect(q[c*rows:], rows, c, k-c)
	}
	z := make([]float64, n)
	for c := k - 1; c >= 0; c-- {
		v := q[k*rows+c]
		for d := c + 1; d < k; d++ {
			v -= q[d*rows+c] * z[cols[d]]
		}
		z[cols[c]] = v / diag[c]
	}
	return z
}

// reflect turns the first of a run of columns onto its row c, applies the same
// reflection to the next ones, and gives the first one's new entry at row c.
func reflect(q []float64, rows, c, next int) float64 {
	v := q[c:rows]
	alpha := -math.Copysign(norm(v), v[0])
	v[0] -= alpha
	if vv := dot(v, v); vv > 0 {
		for d := 1; d <= next; d++ {
			w := q[d*rows+c : (d+1)*rows]
			f := 2 * dot(v, w) / vv
			for i := range v {
				w[i] -= f * v[i]
			}
		}
	}
	return alpha
}
