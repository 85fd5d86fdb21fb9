package mechanics

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r3"
	"pgregory.net/rapid"
)

// Closed forms, written apart from the solver: lines that do not stretch, so
// the shape of hook, lines and load is known from lengths alone, and the whole
// hangs with the center of gravity (the origin here) plumb under the hook.

// closed is an answer in body axes.
type closed struct {
	tensions []float64 // over the weight
	up       r3.Vec
}

// twoLegs works in the plane of the two points and the center of gravity, into
// which the load has rolled.
func twoLegs(p1, p2 r3.Vec, l1, l2 float64) (closed, bool) {
	base := r3.Norm(r3.Sub(p2, p1))
	u := r3.Unit(r3.Sub(p2, p1))
	out := r3.Add(p1, r3.Scale(-r3.Dot(p1, u), u)) // from the center of gravity to the line
	v := r3.Unit(out)
	// Hook in the plane: station x from p1, height y above the line.
	x := (l1*l1 - l2*l2 + base*base) / (2 * base)
	y := math.Sqrt(l1*l1 - x*x)
	if !(y > 0.2*base) {
		return closed{}, false
	}
	cx, cy := -r3.Dot(p1, u), -r3.Norm(out) // center of gravity in the plane
	ux, uy := x-cx, y-cy                    // up
	n := math.Hypot(ux, uy)
	ux, uy = ux/n, uy/n
	ax, ay := x/l1, y/l1        // leg 1
	bx, by := (x-base)/l2, y/l2 // leg 2
	det := ax*by - ay*bx
	return closed{
		tensions: []float64{(ux*by - uy*bx) / det, (ax*uy - ay*ux) / det},
		up:       r3.Add(r3.Scale(ux, u), r3.Scale(uy, v)),
	}, true
}

// threeLegs finds the hook by trilateration and resolves the weight on the legs.
func threeLegs(p []r3.Vec, l []float64) (closed, bool) {
	ex := r3.Unit(r3.Sub(p[1], p[0]))
	i := r3.Dot(ex, r3.Sub(p[2], p[0]))
	ey := r3.Unit(r3.Sub(r3.Sub(p[2], p[0]), r3.Scale(i, ex)))
	ez := r3.Cross(ex, ey)
	if ez.Z < 0 {
		ez = r3.Scale(-1, ez)
	}
	d, j := r3.Norm(r3.Sub(p[1], p[0])), r3.Dot(ey, r3.Sub(p[2], p[0]))
	x := (l[0]*l[0] - l[1]*l[1] + d*d) / (2 * d)
	y := (l[0]*l[0]-l[2]*l[2]+i*i+j*j)/(2*j) - i/j*x
	z2 := l[0]*l[0] - x*x - y*y
	if z2 < 0.04*d*d {
		return closed{}, false
	}
	hook := r3.Add(p[0], r3.Add(r3.Scale(x, ex), r3.Add(r3.Scale(y, ey), r3.Scale(math.Sqrt(z2), ez))))
	a := mat.NewDense(3, 3, nil)
	for k := range p {
		n := r3.Unit(r3.Sub(hook, p[k]))
		a.SetCol(k, []float64{n.X, n.Y, n.Z})
	}
	c := closed{up: r3.Unit(hook)}
	var t mat.VecDense
	if err := t.SolveVec(a, mat.NewVecDense(3, []float64{c.up.X, c.up.Y, c.up.Z})); err != nil {
		return closed{}, false
	}
	c.tensions = t.RawVector().Data
	return c, true
}

// drawLegs draws points around the center of gravity and legs of up to 12 %
// unlike lengths, to the millimetre, as plans give them.
func drawLegs(t *rapid.T, n int, zMin, zMax float64) (points []r3.Vec, lengths []float64) {
	size := rapid.Float64Range(0.3, 20).Draw(t, "size")
	height := rapid.Float64Range(0.6, 3).Draw(t, "height")
	for i := range n {
		a := 2*math.Pi*float64(i)/float64(n) + rapid.Float64Range(-0.4, 0.4).Draw(t, "angle")
		r := size * rapid.Float64Range(0.5, 1.2).Draw(t, "radius")
		p := vec(mm(r*math.Cos(a)), mm(r*math.Sin(a)), mm(size*rapid.Float64Range(zMin, zMax).Draw(t, "z")))
		points = append(points, p)
		l := r3.Norm(r3.Sub(p, vec(0, 0, size*(height+zMax))))
		lengths = append(lengths, mm(l*rapid.Float64Range(0.94, 1.06).Draw(t, "length")))
	}
	return points, lengths
}

func mm(m float64) float64 { return math.Round(m*1000) / 1000 }

// compare solves with lines too stiff to matter and holds the answers together.
func (c closed) compare(t *rapid.T, points []r3.Vec, lengths []float64) {
	tilt := degrees(math.Acos(c.up.Z))
	if tilt > 80 {
		t.Skip("more than the solver is asked to accept")
	}
	for _, x := range c.tensions {
		if x < 0.02 {
			t.Skip("a leg that carries next to nothing, or would have to push")
		}
	}
	mass := rapid.Float64Range(1, 1e6).Draw(t, "mass")
	m := hung(mass, points, lengths, 3e5*mass*gravity)
	r, err := Solve(m, Options{MaxTiltDeg: 85})
	if err != nil {
		t.Fatal(err)
	}
	if r.Verdict != Steady {
		t.Fatalf("verdict %q %+v, closed form %+v", r.Verdict, r.Why, c)
	}
	for i, want := range c.tensions {
		near(t, "tension", r.Balance.Lines[i].TensionN/(mass*gravity), want, 1e-3*want)
		if got := r.Balance.Lines[i].Bound; got.Meaning != Determinate || got.TensionN != r.Balance.Lines[i].TensionN {
			t.Fatalf("bound of a determinate leg: %+v", got)
		}
	}
	near(t, "tilt", r.Balance.Bodies[0].TiltDeg, tilt, 0.05)
	got := r.Balance.Bodies[0].Attitude.Body(vec(0, 0, 1))
	near(t, "up in body axes", r3.Norm(r3.Sub(got, c.up)), 0, 1e-3)
}

func TestTwoLegsAgainstClosedForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, l := drawLegs(t, 2, 0.15, 0.6)
		c, ok := twoLegs(p[0], p[1], l[0], l[1])
		if !ok {
			t.Skip("too flat")
		}
		c.compare(t, p, l)
	})
}

// The center of gravity stands anywhere, above the points as well: a load and
// three legs that meet in one point are rigid and hang as one.
func TestThreeLegsAgainstClosedForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, l := drawLegs(t, 3, -0.3, 0.4)
		c, ok := threeLegs(p, l)
		if !ok {
			t.Skip("too flat")
		}
		c.compare(t, p, l)
	})
}

// Two plumb legs from two hooks: the lever rule.
func TestTwoHooksShareByLevers(t *testing.T) {
	m := hung(1000, []r3.Vec{vec(-1, 0, 0.5), vec(3, 0, 0.5)}, []float64{4, 4}, 1e9)
	m.Lines[0].From, m.Lines[1].From = Hook(vec(-1, 0, 4.5)), Hook(vec(3, 0, 4.5))
	b := steady(t, m)
	near(t, "left", b.Lines[0].TensionN, 0.75*1000*gravity, 0.1)
	near(t, "right", b.Hooks[1].LoadN.Z, -0.25*1000*gravity, 0.1)
	if b.Bodies[0].HasHookOffset {
		t.Error("an offset from plumb was given for two hooks")
	}
}
