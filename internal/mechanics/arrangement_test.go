package mechanics

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// drawn is a random arrangement with the places its origins are drawn at.
type drawn struct {
	kind    string
	m       Model
	origins []r3.Vec
}

type drawer struct{ *rand.Rand }

func (d drawer) within(lo, hi float64) float64 { return lo + (hi-lo)*d.Float64() }

// line is as long as drawn, or off by up to the share.
func (d drawer) line(at []r3.Vec, ea, off float64, anchors ...Anchor) Line {
	place := func(a Anchor) r3.Vec {
		if a.Body == World {
			return a.At
		}
		return r3.Add(at[a.Body], a.At)
	}
	long := 0.0
	for i := 0; i < len(anchors); i += 2 {
		long += r3.Norm(r3.Sub(place(anchors[i]), place(anchors[i+1])))
	}
	return rope("", long*(1+d.within(-off, off)), ea, anchors...)
}

func (d drawer) off() float64 { return []float64{0, 0.004, 0.025}[d.IntN(3)] }

// corners of a load, one, two or three points to a side.
func (d drawer) corners(z float64) []r3.Vec {
	l, w := d.within(2, 6), d.within(1, 4)
	points := rectangle(l, w, z)
	for i := range points {
		points[i] = r3.Add(points[i], vec(d.within(-0.3, 0.3), d.within(-0.2, 0.2), d.within(-0.1, 0.1)))
	}
	if d.IntN(2) == 0 {
		points = append(points, vec(d.within(-0.5, 0.5), -w/2, z), vec(d.within(-0.5, 0.5), w/2, z))
	}
	return points
}

func (d drawer) center() r3.Vec { return vec(d.within(-0.5, 0.5), d.within(-0.3, 0.3), 0) }

// legs from one hook, some flat.
func (d drawer) legs() drawn {
	height := d.within(1.5, 5)
	if d.IntN(4) == 0 {
		height = d.within(0.4, 0.7)
	}
	at := []r3.Vec{vec(0, 0, 20-height)}
	m := Model{Bodies: []Body{{MassKg: 1000, CenterOfGravity: d.center()}}}
	ea, off := 1000*gravity*d.within(60, 400), d.off()
	for _, p := range d.corners(d.within(-0.5, 0.3)) {
		m.Lines = append(m.Lines, d.line(at, ea, off, Hook(vec(0, 0, 20)), Anchor{0, p}))
	}
	return drawn{"legs", m, at}
}

// spread hangs the load under a spreader, the bar from two or four legs.
func (d drawer) spread() drawn {
	bar, bridle, drop := d.within(2, 6), d.within(1.5, 3), d.within(2, 4)
	at := []r3.Vec{vec(0, 0, 20-bridle), vec(0, 0, 20-bridle-drop)}
	m := Model{Bodies: []Body{{MassKg: d.within(50, 300), CenterOfGravity: vec(0, 0, d.within(-0.1, 0.1))}, {MassKg: 1000, CenterOfGravity: d.center()}}}
	ea, off := 1000*gravity*d.within(60, 400), d.off()
	for _, x := range []float64{-bar / 2, bar / 2} {
		for _, y := range [][]float64{{0}, {-0.15, 0.15}}[d.IntN(2)] {
			m.Lines = append(m.Lines, d.line(at, ea, off, Hook(vec(0, 0, 20)), Anchor{0, vec(x, y, 0.1)}))
		}
	}
	for _, p := range d.corners(d.within(0, 0.4)) {
		m.Lines = append(m.Lines, d.line(at, ea, off, Anchor{0, vec(math.Copysign(bar/2, p.X), 0, -0.1)}, Anchor{1, p}))
	}
	return drawn{"spreader", m, at}
}

// twoHooks lift a beam between them, a load below it.
func (d drawer) twoHooks() drawn {
	bar, drop := d.within(3, 6), d.within(2, 4)
	at := []r3.Vec{vec(0, 0, 15), vec(0, 0, 15-drop)}
	m := Model{Bodies: []Body{{MassKg: d.within(100, 400)}, {MassKg: 1000, CenterOfGravity: d.center()}}}
	ea, off := 1000*gravity*d.within(60, 400), d.off()
	for _, x := range []float64{-bar / 2, bar / 2} {
		m.Lines = append(m.Lines, d.line(at, ea, 3*off, Hook(vec(x*d.within(0.7, 1.2), 0, 20)), Anchor{0, vec(x, 0, 0.2)}))
	}
	for _, p := range d.corners(d.within(0, 0.4)) {
		m.Lines = append(m.Lines, d.line(at, ea, off, Anchor{0, vec(math.Copysign(bar/2, p.X), 0, -0.2)}, Anchor{1, p}))
	}
	return drawn{"two hooks", m, at}
}

// ring gathers legs, two of them one rope that runs through it.
func (d drawer) ring() drawn {
	height := d.within(2, 5)
	at := []r3.Vec{vec(0, 0, 18), vec(0, 0, 18-height)}
	m := Model{Bodies: []Body{{MassKg: d.within(1, 10), Point: true}, {MassKg: 1000, CenterOfGravity: d.center()}}}
	ea, off := 1000*gravity*d.within(60, 400), d.off()
	ring := Anchor{0, origin}
	m.Lines = []Line{d.line(at, ea, off, Hook(vec(-d.within(0, 1), 0, 20)), ring, ring, Hook(vec(d.within(0, 1), 0, 20)))}
	p := d.corners(d.within(0, 0.3))
	m.Lines = append(m.Lines, d.line(at, ea, off, ring, Anchor{1, p[0]}, ring, Anchor{1, p[3]}))
	for _, p := range append([]r3.Vec{p[1], p[2]}, p[4:]...) {
		m.Lines = append(m.Lines, d.line(at, ea, off, ring, Anchor{1, p}))
	}
	return drawn{"ring", m, at}
}

// baskets round a pipe, gripping or running, and sometimes a leg to a lug.
func (d drawer) baskets() drawn {
	radius, height := d.within(0.1, 0.6), d.within(2, 4)
	at := []r3.Vec{vec(0, 0, 20-height)}
	center := vec(d.within(-0.3, 0.3), radius*d.within(-0.15, 0.15), -radius*d.within(0, 0.3))
	m := Model{Bodies: []Body{{MassKg: 1000, CenterOfGravity: center}}}
	ea, off := 1000*gravity*d.within(60, 400), d.off()
	hook, half := Hook(vec(0, 0, 20)), d.within(1, 3)
	for _, x := range []float64{-half, half} {
		l := d.line(at, ea, off, hook, Anchor{0, vec(x, -radius, 0)}, Anchor{0, vec(x, radius, 0)}, hook)
		l.Grips = d.IntN(3) > 0
		m.Lines = append(m.Lines, l)
	}
	if d.IntN(2) == 0 {
		m.Lines = append(m.Lines, d.line(at, ea, off, hook, Anchor{0, vec(d.within(-1, 1), 0, radius)}))
	}
	return drawn{"baskets", m, at}
}

// nodes: a bar held between two rings by short links.
func (d drawer) nodes() drawn {
	half, bridle, drop := d.within(1, 3), d.within(1.5, 3), d.within(2, 4)
	z := 20 - bridle
	at := []r3.Vec{vec(-half+0.2, 0, z), vec(half-0.2, 0, z), vec(0, 0, z), vec(0, 0, z-drop)}
	m := Model{Bodies: []Body{
		{MassKg: d.within(1, 5), Point: true}, {MassKg: d.within(1, 5), Point: true},
		{MassKg: d.within(20, 100)}, {MassKg: 1000, CenterOfGravity: d.center()},
	}}
	ea, off := 1000*gravity*d.within(60, 400), d.off()
	rings := []Anchor{{0, origin}, {1, origin}}
	for i, x := range []float64{-half, half} {
		m.Lines = append(m.Lines, d.line(at, ea, off, Hook(vec(0, 0, 20)), rings[i]), d.line(at, ea, off, rings[i], Anchor{2, vec(x, 0, 0)}))
	}
	for _, p := range d.corners(d.within(0.1, 0.4)) {
		ring := rings[0]
		if p.X > 0 {
			ring = rings[1]
		}
		m.Lines = append(m.Lines, d.line(at, ea, off, ring, Anchor{3, p}))
	}
	return drawn{"bar between rings", m, at}
}

// mixture counts what the compared arrangements were like.
type mixture struct{ compared, beams, slack, tilted, singular, running, gripping, points int }

func (c *mixture) add(m Model, b *Balance) {
	c.compared++
	count := func(n *int, yes bool) {
		if yes {
			*n++
		}
	}
	slack, tilted, flat, running, gripping, points := false, false, b.RightingM < 0.05, false, false, false
	for i, l := range b.Lines {
		slack = slack || l.Slack
		flat = flat || !l.Slack && l.AngleFromHorizontalDeg < 12
		running = running || len(l.Runs) > 1 && !m.Lines[i].Grips
		gripping = gripping || m.Lines[i].Grips
	}
	rigid := 0
	for i, s := range b.Bodies {
		tilted = tilted || s.TiltDeg > 5
		points = points || m.Bodies[i].Point
		if !m.Bodies[i].Point {
			rigid++
		}
	}
	count(&c.beams, rigid > 1)
	count(&c.slack, slack)
	count(&c.tilted, tilted)
	count(&c.singular, flat)
	count(&c.running, running)
	count(&c.gripping, gripping)
	count(&c.points, points)
}

// Random arrangements of every kind: the tensions are those of the general
// minimizer to a thousandth of the hook load.
func TestArrangementsAgainstAGeneralMinimizer(t *testing.T) {
	d := drawer{rand.New(rand.NewPCG(13, 55))}
	kinds := []func() drawn{d.legs, d.spread, d.twoHooks, d.ring, d.baskets, d.nodes}
	var c mixture
	elsewhere, furthest, verdicts := 0, 0.0, map[Verdict]int{}
	for i := range 900 {
		a := kinds[i%len(kinds)]()
		r, err := Solve(a.m, Options{MaxTiltDeg: 60, MaxStrain: 0.2})
		if err != nil {
			t.Fatal(err)
		}
		verdicts[r.Verdict]++
		if r.Balance == nil || r.Balance.Rocks || r.Balance.Rests > 1 {
			continue
		}
		checkBalance(t, a.m, r.Balance)
		p, x, ok := find(a.m, a.origins)
		if !ok {
			t.Errorf("%d, %s: the minimizer found no place", i, a.kind)
			continue
		}
		worst := p.apart(x, r.Balance)
		if worst > 1e-3 {
			elsewhere++
			p.isRest(t, i, a, x, r.Balance)
		} else {
			furthest = math.Max(furthest, worst)
		}
		c.add(a.m, r.Balance)
	}
	t.Logf("%+v, at most %.2g of the weight apart, %d at another rest; verdicts %v", c, furthest, elsewhere, verdicts)
	if c.compared < 300 || 3*c.beams < c.compared || 3*c.slack < c.compared || 5*c.tilted < c.compared {
		t.Errorf("the mix was not reached: %+v", c)
	}
	if c.singular < 20 || c.running < 40 || c.gripping < 40 || c.points < 60 || elsewhere > c.compared/50 {
		t.Errorf("the mix was not reached: %+v, %d at another rest", c, elsewhere)
	}
}

func checkForces(t *testing.T, m Model, b *Balance) {
	t.Helper()
	if left := outOfBalance(m, Options{}.withDefaults(), b); left > 1e-6 {
		t.Errorf("%g of the weight out of balance", left)
	}
}

// apart is the largest difference of tension over the weight.
func (p *search) apart(x []float64, b *Balance) float64 {
	worst := 0.0
	for i, runs := range p.tensions(x) {
		for j, want := range runs {
			worst = math.Max(worst, math.Abs(b.Lines[i].Runs[j].TensionN/p.weight-want))
		}
	}
	return worst
}

// isRest: where the two ended at different rests, the solver's must be one too for
// the minimizer, which comes back to it from a push aside.
func (p *search) isRest(t *testing.T, i int, a drawn, other []float64, b *Balance) {
	t.Helper()
	x := p.coordinates(b)
	for k := range x {
		x[k] += 2e-4 * float64(k%5-2)
	}
	x, ok := p.minimize(x, 1e-7)
	if worst := p.apart(x, b); !ok || worst > 1e-3 {
		t.Errorf("%d, %s: tensions %.3g of the weight apart, and no rest for the minimizer (energies %.9g here, %.9g there)",
			i, a.kind, worst, p.value(p.coordinates(b), nil), p.value(other, nil))
	}
}
