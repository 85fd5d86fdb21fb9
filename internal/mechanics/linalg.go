package mechanics

import "math"

// Small dense routines on row-major slices. They work in place and allocate
// nothing, because the solver calls them in every step.

// cholesky factors the lower half of a (n x n), and reports whether every pivot
// came out above floor.
func cholesky(a []float64, n int, floor float64) bool {
	for j := range n {
		d := a[j*n+j]
		for k := range j {
			d -= a[j*n+k] * a[j*n+k]
		}
		if !(d > floor) {
			return false
		}
		d = math.Sqrt(d)
		a[j*n+j] = d
		for i := j + 1; i < n; i++ {
			v := a[i*n+j]
			for k := range j {
				v -= a[i*n+k] * a[j*n+k]
			}
			a[i*n+j] = v / d
		}
	}
	return true
}

// solveCholesky solves with the factor, in place.
func solveCholesky(a []float64, n int, x []float64) {
	for i := range n {
		for k := range i {
			x[i] -= a[i*n+k] * x[k]
		}
		x[i] /= a[i*n+i]
	}
	for i := n - 1; i >= 0; i-- {
		for k := i + 1; k < n; k++ {
			x[i] -= a[k*n+i] * x[k]
		}
		x[i] /= a[i*n+i]
	}
}

// eigen turns the symmetric a (n x n) into its eigenvalues, on the diagonal,
// and v into the eigenvectors, by columns: cyclic Jacobi rotations.
func eigen(a, v []float64, n int) {
	clear(v)
	for i := range n {
		v[i*n+i] = 1
	}
	for range 60 {
		off, all := 0.0, 0.0
		for i := range n {
			for j := range n {
				all += a[i*n+j] * a[i*n+j]
				if i != j {
					off += a[i*n+j] * a[i*n+j]
				}
			}
		}
		if off <= 1e-34*all {
			return
		}
		for p := range n {
			for q := p + 1; q < n; q++ {
				annul(a, v, n, p, q)
			}
		}
	}
}

// annul turns axes p and q until a[p,q] is zero.
func annul(a, v []float64, n, p, q int) {
	if a[p*n+q] == 0 {
		return
	}
	theta := (a[q*n+q] - a[p*n+p]) / (2 * a[p*n+q])
	t := 1 / (math.Abs(theta) + math.Sqrt(theta*theta+1))
	if theta < 0 {
		t = -t
	}
	c := 1 / math.Sqrt(t*t+1)
	s := t * c
	for k := range n {
		kp, kq := a[k*n+p], a[k*n+q]
		a[k*n+p], a[k*n+q] = c*kp-s*kq, s*kp+c*kq
	}
	for k := range n {
		pk, qk := a[p*n+k], a[q*n+k]
		a[p*n+k], a[q*n+k] = c*pk-s*qk, s*pk+c*qk
		vp, vq := v[k*n+p], v[k*n+q]
		v[k*n+p], v[k*n+q] = c*vp-s*vq, s*vp+c*vq
	}
}

func norm(v []float64) float64 {
	sum := 0.0
	for _, x := range v {
		sum += x * x
	}
	return math.Sqrt(sum)
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += a[i] * b[i]
	}
	return sum
}
