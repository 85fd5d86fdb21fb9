package mechanics

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r3"
	"pgregory.net/rapid"
)

// balancingSets are the extreme splits by another road: of every set of lines
// that balances in one way only, and only pulls, what its lines carry; found
// from the reported figures by least squares on the set's own columns.
func balancingSets(m Model, b *Balance) [][]float64 {
	n, rows := len(m.Lines), 6*len(m.Bodies)
	a, load := mat.NewDense(rows, n, nil), mat.NewVecDense(rows, nil)
	weight := 0.0
	for k, body := range m.Bodies {
		load.SetVec(6*k+2, body.MassKg*gravity)
		weight += body.MassKg * gravity
	}
	for i, l := range m.Lines {
		addPull(a, i, l.From, b, b.Lines[i].Direction)
		addPull(a, i, l.To, b, r3.Scale(-1, b.Lines[i].Direction))
	}
	var out [][]float64
	for set := 1; set < 1<<n; set++ {
		var cols []int
		for i := range n {
			if set>>i&1 == 1 {
				cols = append(cols, i)
			}
		}
		if t := pullOnly(a, load, cols, weight, b.OutOfBalance); t != nil {
			out = append(out, t)
		}
	}
	return out
}

func addPull(a *mat.Dense, line int, at Anchor, b *Balance, pull r3.Vec) {
	if at.Body == World {
		return
	}
	body := b.Bodies[at.Body]
	arm := r3.Sub(r3.Add(body.Origin, body.Attitude.World(at.At)), body.CenterOfGravity)
	moment := r3.Cross(arm, pull)
	for i, v := range []float64{pull.X, pull.Y, pull.Z, moment.X, moment.Y, moment.Z} {
		row := 6*at.Body + i
		a.Set(row, line, a.At(row, line)+v)
	}
}

func pullOnly(a *mat.Dense, load *mat.VecDense, cols []int, weight, left float64) []float64 {
	rows, n := a.Dims()
	if len(cols) > rows {
		return nil
	}
	part := mat.NewDense(rows, len(cols), nil)
	for c, j := range cols {
		part.SetCol(c, mat.Col(nil, j, a))
	}
	var qr mat.QR
	qr.Factorize(part)
	var x, rest mat.VecDense
	if qr.Cond() > 1e7 || qr.SolveVecTo(&x, false, load) != nil {
		return nil
	}
	rest.MulVec(part, &x)
	rest.SubVec(&rest, load)
	if mat.Norm(&rest, 2) > (1e-7+30*left)*weight {
		return nil
	}
	out := make([]float64, n)
	for c, j := range cols {
		if out[j] = x.AtVec(c); out[j] < -1e-8*weight {
			return nil
		}
	}
	return out
}

// largestOf is the largest sum of the group over the splits, from directions at
// From ends.
func largestOf(b *Balance, splits [][]float64, group []int) float64 {
	top := 0.0
	for _, split := range splits {
		var f r3.Vec
		for _, i := range group {
			f = r3.Add(f, r3.Scale(split[i], b.Lines[i].Direction))
		}
		top = math.Max(top, r3.Norm(f))
	}
	return top
}

func drawGroup(t *rapid.T, n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return rapid.Permutation(all).Draw(t, "order")[:rapid.IntRange(1, n).Draw(t, "size")]
}

func upward(b *Balance) bool {
	return !slices.ContainsFunc(b.Lines, func(l LineState) bool { return l.Direction.Z > -0.05 })
}

func TestBoundOfSumsIsTheLargestOverBalancingSets(t *testing.T) {
	kinds := map[BoundMeaning]int{}
	rapid.Check(t, func(t *rapid.T) {
		m := drawFour(t)
		weight := m.Bodies[0].MassKg * gravity
		groups := [][]int{drawGroup(t, len(m.Lines)), drawGroup(t, len(m.Lines))}
		m.Together = groups
		r, err := Solve(m, Options{MaxTiltDeg: 60})
		if err != nil {
			t.Fatal(err)
		}
		if r.Balance == nil || !upward(r.Balance) {
			t.Skip("no figures, or lines that may pull against each other")
		}
		sets := balancingSets(m, r.Balance)
		for k, j := range r.Balance.Together {
			kinds[j.Bound.Meaning]++
			near(t, "bound over weight", j.Bound.TensionN/weight, largestOf(r.Balance, sets, groups[k])/weight, 1e-5)
		}
	})
	if kinds[AnySplit] < 30 || kinds[Determinate] < 30 {
		t.Errorf("few cases of a kind: %v", kinds)
	}
}

// Even rings of legs balance on many sets at once, some on two legs alone: the
// extremes then coincide. Two hooks and a bar between are not gathered at one
// point.
func TestBoundOfSumsBeyondOneBridle(t *testing.T) {
	ring := func(n int) []r3.Vec {
		var p []r3.Vec
		for i := range n {
			a := 2 * math.Pi * float64(i) / float64(n)
			p = append(p, vec(2*math.Cos(a), 2*math.Sin(a), 0.5))
		}
		return p
	}
	twoHooks := hung(1000, append(rectangle(4, 2, 0.5), vec(-1, 0.2, 0.6), vec(1, -0.2, 0.6)), make([]float64, 6), 1e9)
	for i, l := range twoHooks.Lines {
		twoHooks.Lines[i].From = Hook(vec(math.Copysign(1.5, l.To.At.X), 0, 5))
		twoHooks.Lines[i].LengthM = r3.Norm(r3.Sub(twoHooks.Lines[i].From.At, l.To.At))
	}
	for name, m := range map[string]Model{
		"ring of 4": fitted(1000, ring(4), 4, 1e9), "ring of 6": fitted(1000, ring(6), 4, 1e9),
		"ring of 8": fitted(1000, ring(8), 4, 1e9), "eight, off center": benchLegs(8),
		"on the plumb line": fitted(1000, append(ring(4), vec(0, 0, 0.5), vec(0, 0, 0.5)), 4, 1e9),
		"two hooks":         twoHooks,
		"spreader, six":     spreader(4, 2, 3, 200, 1000, append(rectangle(4, 2, 0.5), vec(-1.5, 0.1, 0.5), vec(1.5, 0.3, 0.5)), 1e9),
	} {
		groups := meetingGroups(m)
		b := together(t, m, groups...)
		sets, kinds := balancingSets(m, b), map[BoundMeaning]int{}
		for k, j := range b.Together {
			kinds[j.Bound.Meaning]++
			if want := largestOf(b, sets, groups[k]); !(math.Abs(j.Bound.TensionN-want) <= 1e-5*want) {
				t.Errorf("%s, %v: %+v, want %g", name, groups[k], j.Bound, want)
			}
		}
		if kinds[AnySplit] == 0 {
			t.Errorf("%s: no case of it: %v", name, kinds)
		}
	}
}

// meetingGroups are all groups of lines that share their From.
func meetingGroups(m Model) [][]int {
	var out [][]int
	for set := 1; set < 1<<len(m.Lines); set++ {
		var group []int
		for i := range m.Lines {
			if set>>i&1 == 1 {
				group = append(group, i)
			}
		}
		if at, ok := meeting(m, group); ok && at == m.Lines[group[0]].From {
			out = append(out, group)
		}
	}
	return out
}

// Four legs at one hook change by what turns off their directions: by triple
// products. A scan in small steps, both ways until a leg would push, comes as
// close to the bound as its step and never beyond.
func TestBoundOfSumsByScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, l := drawLegs(t, 4, -0.1, 0.4)
		m := hung(1000, p, l, 1e8)
		group := drawGroup(t, 4)
		m.Together = [][]int{group}
		r, err := Solve(m, Options{MaxTiltDeg: 60})
		if err != nil {
			t.Fatal(err)
		}
		if r.Balance == nil || !upward(r.Balance) {
			t.Skip("no figures, or lines that may pull against each other")
		}
		const w, steps = 1000 * gravity, 2000
		top := 0.0
		for _, step := range []float64{w / steps, -w / steps} {
			for x := range 100 * steps {
				split, ok := scanned(r.Balance, float64(x)*step)
				if !ok {
					break
				}
				top = math.Max(top, largestOf(r.Balance, [][]float64{split}, group))
			}
		}
		bound := r.Balance.Together[0].Bound
		if !(top <= bound.TensionN*(1+1e-6)) || !(top >= bound.TensionN-4*w/steps) {
			t.Fatalf("%+v, by scan %g", bound, top)
		}
	})
}

func scanned(b *Balance, x float64) ([]float64, bool) {
	triple := func(i, j, k int) float64 {
		return r3.Dot(b.Lines[i].Direction, r3.Cross(b.Lines[j].Direction, b.Lines[k].Direction))
	}
	way := []float64{triple(1, 2, 3), -triple(0, 2, 3), triple(0, 1, 3), -triple(0, 1, 2)}
	f := x / farthest(way...)
	split := make([]float64, 4)
	for i, l := range b.Lines {
		if split[i] = l.TensionN + f*way[i]; split[i] < 0 {
			return nil, false
		}
	}
	return split, true
}

// Extremes that miss the worst of a single line are not relied on.
func TestExtremesAreHeldAgainstTheBoundsOfLines(t *testing.T) {
	for _, n := range []int{4, 6} {
		m := benchLegs(n)
		b := steady(t, m)
		s := newSystem(m, Options{}.withDefaults())
		st := s.start()
		s.settleByStages(st, false)
		given := make([]float64, n)
		bounds := make([]Bound, n)
		for i, l := range b.Lines {
			given[i], bounds[i] = l.TensionN, l.Bound
		}
		ways := s.ways(st, s.strands)
		e := s.extremesOf(ways, given, bounds)
		if !e.known || len(e.corners) < 2 || len(e.rays) > 0 {
			t.Fatalf("%d legs: %+v", n, e)
		}
		higher := slices.Clone(bounds)
		higher[0].TensionN *= 1.001
		if s.extremesOf(ways, given, higher).known {
			t.Errorf("%d legs: the bound of line 1 was not reached and still believed", n)
		}
		worst := b.Lines[0].Bound.TensionN
		e.corners = slices.DeleteFunc(e.corners, func(c []float64) bool { return c[0] > worst*(1-1e-4) })
		if e.reach(bounds) {
			t.Errorf("%d legs: the worst of line 1 is missing and was not missed", n)
		}
		if (extremes{}).reach(nil) {
			t.Error("no corner at all")
		}
		g := gathered{cols: []int{0}, pulls: []r3.Vec{up()}}
		if got := g.bound(1, ways, extremes{}); got.Meaning != Unknown || !math.IsInf(got.TensionN, 1) {
			t.Errorf("%+v", got)
		}
	}
}
