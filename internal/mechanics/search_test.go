package mechanics

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/optimize"
	"gonum.org/v1/gonum/spatial/r3"
)

// search is a second way to balance, written apart from the solver: gravity plus
// stretch energy in plain coordinates (three of the origin, then a quaternion of any
// length), handed to a general minimizer (BFGS of gonum/optimize), which knows
// neither second derivatives nor which lines are slack.
type search struct {
	m      Model
	ropes  []searchRope
	weight float64
	held   bool // attitudes held at the intended ones
	first  []int
	size   int
}

type searchRope struct {
	line       int
	runs       []Run
	length, ea float64
}

func newSearch(m Model, held bool) *search {
	p := &search{m: m, held: held}
	for _, b := range m.Bodies {
		p.weight += b.MassKg * gravity
		p.first = append(p.first, p.size)
		p.size += 3
		if !held && !b.Point {
			p.size += 4
		}
	}
	for i, l := range m.Lines {
		p.ropes = append(p.ropes, searchRope{i, append([]Run{{l.From, l.To}}, l.Further...), l.LengthM, l.StiffnessN})
	}
	return p
}

// pose is where a body stands in x, its attitude as a rotation and that rotation's
// length as a quaternion.
func (p *search) pose(x []float64, b int) (at r3.Vec, q quat.Number, long float64) {
	d := x[p.first[b]:]
	at, q = vec(d[0], d[1], d[2]), p.m.Bodies[b].Intended.unit()
	if p.held || p.m.Bodies[b].Point {
		return at, q, 1
	}
	q = quat.Number{Real: d[3], Imag: d[4], Jmag: d[5], Kmag: d[6]}
	long = quat.Abs(q)
	return at, quat.Scale(1/long, q), long
}

func spun(q quat.Number, v r3.Vec) r3.Vec {
	w := quat.Mul(quat.Mul(q, quat.Number{Imag: v.X, Jmag: v.Y, Kmag: v.Z}), quat.Conj(q))
	return vec(w.Imag, w.Jmag, w.Kmag)
}

func (p *search) place(x []float64, a Anchor) r3.Vec {
	if a.Body == World {
		return a.At
	}
	at, q, _ := p.pose(x, a.Body)
	return r3.Add(at, spun(q, a.At))
}

// value is the energy over the weight, and the gradient too unless nil. A force f on
// a point at r from the origin turns the body by r x f; a turn w changes the unit
// quaternion q by w q/2.
func (p *search) value(x, grad []float64) float64 {
	e := 0.0
	push := func(a Anchor, f r3.Vec) { // f: derivative of the energy with the place
		if grad == nil || a.Body == World {
			return
		}
		_, q, long := p.pose(x, a.Body)
		g := grad[p.first[a.Body]:]
		g[0], g[1], g[2] = g[0]+f.X, g[1]+f.Y, g[2]+f.Z
		if p.held || p.m.Bodies[a.Body].Point {
			return
		}
		w := r3.Cross(spun(q, a.At), f)
		d := quat.Scale(2/long, quat.Mul(quat.Number{Imag: w.X, Jmag: w.Y, Kmag: w.Z}, q))
		g[3], g[4], g[5], g[6] = g[3]+d.Real, g[4]+d.Imag, g[5]+d.Jmag, g[6]+d.Kmag
	}
	for b, body := range p.m.Bodies {
		share := body.MassKg * gravity / p.weight
		center := Anchor{b, body.CenterOfGravity}
		e += share * p.place(x, center).Z
		push(center, vec(0, 0, share))
	}
	for i := range p.ropes {
		r := &p.ropes[i]
		stretch := p.reach(x, r) - r.length
		if stretch <= 0 {
			continue
		}
		k := r.ea / r.length / p.weight
		e += k / 2 * stretch * stretch
		for _, run := range r.runs {
			n := r3.Unit(r3.Sub(p.place(x, run.To), p.place(x, run.From)))
			push(run.To, r3.Scale(k*stretch, n))
			push(run.From, r3.Scale(-k*stretch, n))
		}
	}
	return e
}

func (p *search) reach(x []float64, r *searchRope) float64 {
	sum := 0.0
	for _, run := range r.runs {
		sum += r3.Norm(r3.Sub(p.place(x, run.To), p.place(x, run.From)))
	}
	return sum
}

// minimize goes down from x, beginning anew where the line search gives up, until
// the forces balance to the share of the weight, or close to it.
func (p *search) minimize(x []float64, share float64) ([]float64, bool) {
	problem := optimize.Problem{
		Func: func(x []float64) float64 { return p.value(x, nil) },
		Grad: func(grad, x []float64) {
			clear(grad)
			p.value(x, grad)
		},
	}
	grad := make([]float64, p.size)
	for range 30 {
		r, err := optimize.Minimize(problem, x, &optimize.Settings{
			GradientThreshold: share, MajorIterations: 3000, Converger: optimize.NeverTerminate{},
		}, &optimize.BFGS{})
		if r == nil {
			panic(err)
		}
		x = r.X
		if problem.Grad(grad, x); peakOf(grad) <= 200*share {
			return x, true
		}
	}
	return x, false
}

func peakOf(v []float64) float64 {
	top := 0.0
	for _, x := range v {
		top = math.Max(top, math.Abs(x))
	}
	return top
}

// find gives the tensions run by run, and each body's tilt, from where the origins
// are drawn. What grips is first found sliding with the attitudes held.
func find(m Model, origins []r3.Vec) (p *search, x []float64, ok bool) {
	held := newSearch(m, true)
	x = make([]float64, 0, held.size)
	for _, o := range origins {
		x = append(x, o.X, o.Y, o.Z)
	}
	at := x
	p = newSearch(m, false)
	for _, l := range m.Lines {
		if l.Grips {
			if at, ok = held.minimize(x, 1e-9); !ok {
				return p, nil, false
			}
			p.grip(held, at)
			break
		}
	}
	return p.from(at)
}

func (p *search) grip(held *search, at []float64) {
	var out []searchRope
	for i := range p.ropes {
		r := p.ropes[i]
		if !p.m.Lines[r.line].Grips {
			out = append(out, r)
			continue
		}
		all := held.reach(at, &r)
		for j := range r.runs {
			one := r
			one.runs = r.runs[j : j+1]
			one.length = r.length * held.reach(at, &one) / all
			out = append(out, one)
		}
	}
	p.ropes = out
}

// from minimizes from origins at, three a body, at the intended attitudes.
func (p *search) from(at []float64) (*search, []float64, bool) {
	x := make([]float64, p.size)
	for b := range p.m.Bodies {
		o := p.first[b]
		copy(x[o:o+3], at[3*b:])
		if !p.m.Bodies[b].Point {
			q := p.m.Bodies[b].Intended.unit()
			x[o+3], x[o+4], x[o+5], x[o+6] = q.Real, q.Imag, q.Jmag, q.Kmag
		}
	}
	x, ok := p.minimize(x, 1e-7)
	return p, x, ok
}

// tensions over the weight, line by line, run by run.
func (p *search) tensions(x []float64) [][]float64 {
	out := make([][]float64, len(p.m.Lines))
	for i := range p.ropes {
		r := &p.ropes[i]
		t := math.Max(0, r.ea*(p.reach(x, r)/r.length-1)) / p.weight
		for range r.runs {
			out[r.line] = append(out[r.line], t)
		}
	}
	return out
}

// coordinates of a balance that the solver found.
func (p *search) coordinates(b *Balance) []float64 {
	x := make([]float64, p.size)
	for i, is := range b.Bodies {
		o := p.first[i]
		x[o], x[o+1], x[o+2] = is.Origin.X, is.Origin.Y, is.Origin.Z
		if !p.m.Bodies[i].Point {
			q := is.Attitude.unit()
			x[o+3], x[o+4], x[o+5], x[o+6] = q.Real, q.Imag, q.Jmag, q.Kmag
		}
	}
	return x
}

// The search's own gradient against differences of its energy.
func TestSearchGradient(t *testing.T) {
	p := newSearch(ringAndSheave(), false)
	x := []float64{0.1, 0.2, 6.9, -0.1, 0, 6.4, 0.05, 0.02, 3.6, 1.1, 0.1, -0.2, 0.05}
	grad := make([]float64, p.size)
	p.value(x, grad)
	for i := range x {
		const h = 1e-6
		up, down := append([]float64(nil), x...), append([]float64(nil), x...)
		up[i] += h
		down[i] -= h
		near(t, "gradient", grad[i], (p.value(up, nil)-p.value(down, nil))/(2*h), 1e-5*(1+peakOf(grad)))
	}
}
