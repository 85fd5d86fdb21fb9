package mechanics

import (
	"errors"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

var origin r3.Vec

// Geometry: a ring that runs on a rope of length L between two hooks stands on an
// ellipse with the hooks as foci, at its lowest place: there both parts make one
// angle with the vertical, sin a = D/L, D the way between the hooks across, and each
// pulls by W/(2 cos a), however unlike their heights.
func TestRingOnARope(t *testing.T) {
	for _, rise := range []float64{0, 0.7, -2.5} {
		const d, l, w = 4.0, 7.0, 500 * gravity
		m := Model{Bodies: []Body{{Name: "ring", MassKg: 500, Point: true}}}
		m.Lines = []Line{rope("rope", l, 1e10, Hook(vec(0, 0, 9)), Anchor{0, origin}, Anchor{0, origin}, Hook(vec(d, 0, 9+rise)))}
		b := steady(t, m)
		cos := math.Sqrt(1 - d*d/l/l)
		for _, r := range b.Lines[0].Runs {
			near(t, "tension", r.TensionN/w, 1/(2*cos), 1e-6)
			near(t, "angle", r.AngleFromVerticalDeg, degrees(math.Acos(cos)), 1e-4)
		}
		// Heights: L cos a = drop left + drop right.
		near(t, "height", b.Bodies[0].Origin.Z, 9-(l*cos-rise)/2, 1e-5)
		near(t, "where", b.Bodies[0].Origin.X, (l*cos-rise)/2*(d/l)/cos, 1e-5)
		if !math.IsInf(b.Bodies[0].MayRiseM, 1) || !math.IsInf(b.RightingM, 1) {
			t.Errorf("a point can not turn: %+v", b.Bodies[0])
		}
	}
}

// A rope over a fixed sheave to two points of a load: one tension in both parts. The
// sheave stands on an ellipse with the points as foci. Derived: with half its sum
// of distances l, half the points' spacing c, b = sqrt(l^2 - c^2), and the points z
// above the center of gravity, the height of the sheave over a load turned by t is
// sqrt(l^2 sin^2 t + b^2 cos^2 t) + z cos t, so the load rights itself by z - c^2/b
// and rolls along the rope below that, where two legs would hold it.
func TestRopeOverASheaveToTwoPoints(t *testing.T) {
	const l, c, w = 2.0, 1.0, 800 * gravity
	rise := math.Sqrt(l*l - c*c)
	over := func(z float64) Model {
		m := Model{Bodies: []Body{{Name: "load", MassKg: 800}}}
		m.Lines = []Line{rope("over", 2*l, 1e10, Anchor{0, vec(-c, 0, z)}, Hook(vec(0, 0, 8)), Hook(vec(0, 0, 8)), Anchor{0, vec(c, 0, z)})}
		return m
	}
	for _, z := range []float64{1.5, 0.8, 0.6} {
		b := steady(t, over(z))
		near(t, "tension", b.Lines[0].TensionN/w, l/rise/2, 1e-6)
		near(t, "parts alike", b.Lines[0].Runs[0].TensionN, b.Lines[0].Runs[1].TensionN, 0)
		near(t, "righting", b.RightingM, z-c*c/rise, 1e-5)
	}
	wantOverturn(t, "below the limit", over(0.99*c*c/rise), UnsteadyAsIntended)
	steady(t, over(1.01*c*c/rise))
	legs := over(0.1)
	legs.Lines = []Line{rope("left", l, 1e10, legs.Lines[0].From, Hook(vec(0, 0, 8))), rope("right", l, 1e10, Hook(vec(0, 0, 8)), legs.Lines[0].Further[0].To)}
	steady(t, legs)
}

// A rope from hook to hook that runs through sheaves at both ends of a bar: the bar
// tilts without lengthening it, so only its center of gravity, z below the sheaves,
// rights it (derived: by z), where two ropes would hold it level by themselves. About
// the vertical it is a bifilar pendulum, righted by a^2/h, its ropes h long and each a
// from the middle (mechanics textbooks).
func TestBarOnOneRunningRope(t *testing.T) {
	trapeze := func(z float64) Model {
		m := Model{Bodies: []Body{{Name: "load", MassKg: 400}}}
		left, right := vec(-1.5, 0, z), vec(1.5, 0, z)
		m.Lines = []Line{rope("rope", 8, 1e10, Hook(vec(-1.5, 0, 9)), Anchor{0, left}, Anchor{0, right}, Hook(vec(1.5, 0, 9)))}
		return m
	}
	for _, z := range []float64{0.05, 0.4, 2} {
		b := steady(t, trapeze(z))
		near(t, "righting", b.RightingM, math.Min(z, 1.5*1.5/4), 1e-4)
		near(t, "may rise", b.Bodies[0].MayRiseM, z, 1e-4)
		near(t, "tension", b.Lines[0].TensionN, 200*gravity, 1e-3)
	}
	wantOverturn(t, "level with the sheaves", trapeze(0), UnsteadyAsIntended)
	// Off its middle it has no place: it tilts until one run takes what it must.
	off := trapeze(0.4)
	off.Bodies[0].CenterOfGravity.X = 0.3
	wantOverturn(t, "off the middle", off, Turned)
}

// Two ropes side by side over one sheave share in one way only, and the bound
// knows it: four separate legs would have two each.
func TestTwoRunningRopesAreDeterminate(t *testing.T) {
	m := Model{Bodies: []Body{{Name: "load", MassKg: 800}}}
	for _, y := range []float64{-0.5, 0.5} {
		m.Lines = append(m.Lines, rope("over", 4, 1e10, Anchor{0, vec(-1, y, 1.5)}, Hook(vec(0, 0, 8)), Hook(vec(0, 0, 8)), Anchor{0, vec(1, y, 1.5)}))
	}
	b := steady(t, m)
	rise := math.Sqrt(4 - 1 - 0.25)
	for _, l := range b.Lines {
		near(t, "tension", l.TensionN/(800*gravity), 1/(2*rise), 1e-6)
		if l.Bound.Meaning != Determinate || l.Bound.TensionN != l.TensionN {
			t.Errorf("%+v for %g", l.Bound, l.TensionN)
		}
	}
}

// One running sling in place of two legs takes the difference out: on a load off
// center both parts carry the same, where two legs of given lengths do not.
func TestRunningSlingPullsAlike(t *testing.T) {
	m := Model{Bodies: []Body{{Name: "load", MassKg: 1000}, {Name: "block", MassKg: 10, Point: true}}}
	m.Lines = []Line{
		rope("fall", 3, 1e8, Hook(vec(0, 0, 10)), Anchor{1, origin}),
		rope("equalized", 6, 1e8, Anchor{1, origin}, Anchor{0, vec(-1, -1, 0.5)}, Anchor{1, origin}, Anchor{0, vec(-1, 1.2, 0.5)}),
		rope("leg 1", 3.1, 1e8, Anchor{1, origin}, Anchor{0, vec(1.3, -1, 0.5)}),
		rope("leg 2", 3, 1e8, Anchor{1, origin}, Anchor{0, vec(1.3, 1, 0.5)}),
	}
	b := steady(t, m)
	checkBalance(t, m, b)
	near(t, "parts of one rope", b.Lines[1].Runs[0].TensionN, b.Lines[1].Runs[1].TensionN, 0)
	if b.Lines[1].Runs[0].Slack || b.Lines[1].Bound.Meaning != Determinate {
		t.Errorf("four parts, one tie between them: determinate; %+v", b.Lines[1])
	}
	near(t, "block carries all", b.Lines[0].TensionN, 1010*gravity, 1e-2)
}

// A pipe in two baskets, its center of gravity 20 mm beside its middle. Slings that
// ran freely would let it roll until that is plumb under the hook. Slings that grip
// hold it by unlike parts.
func TestBasketsThatGrip(t *testing.T) {
	held := steady(t, basket(0.25, 0.02, true))
	m := basket(0.25, 0.02, true)
	checkBalance(t, m, held)
	for i, l := range held.Lines {
		if l.Runs[1].TensionN < 1.02*l.Runs[0].TensionN || l.TensionN != l.Runs[1].TensionN {
			t.Errorf("the side of the center of gravity carries more: %+v", l.Runs)
		}
		if l.Bound.TensionN < l.TensionN {
			t.Errorf("sling %d: bound %g below %g", i, l.Bound.TensionN, l.TensionN)
		}
	}
	near(t, "barely tilts", held.Bodies[0].TiltDeg, 0, 3)
	// On center both sides are alike, gripping or not, and so is the bound: as
	// two slings, which are determinate.
	even := basket(0.25, 0, true)
	even.Bodies[0].CenterOfGravity = vec(0.1, 0, -0.05)
	free := basket(0.25, 0, false)
	free.Bodies[0].CenterOfGravity = even.Bodies[0].CenterOfGravity
	b := steady(t, even)
	checkBalance(t, even, b)
	for _, l := range b.Lines {
		near(t, "alike", l.Runs[0].TensionN/l.Runs[1].TensionN, 1, 1e-6)
		if l.Bound.Meaning != Determinate || math.Abs(l.Bound.TensionN/l.TensionN-1) > 1e-6 {
			t.Errorf("%+v for %g", l.Bound, l.TensionN)
		}
	}
}

// Statics by the parts: a bar between two rings that stand between the bridle and
// the lower slings, on links of 0.2 m. The bridle and the thrust are those of a
// spreader under two legs: T = (W + rings' own)/(2 sin b) and the bar's own small
// weight.
func TestBarUnderTwoNodes(t *testing.T) {
	const mass, nodeKg, barKg = 1e5, 1.0, 50.0
	m := barUnderNodes(mass, nodeKg, barKg)
	b := steady(t, m)
	checkBalance(t, m, b)
	for _, i := range []int{0, 4} {
		sin := b.Lines[i].AngleFromHorizontalDeg * math.Pi / 180
		near(t, "bridle", b.Lines[i].TensionN/(mass*gravity), (mass+2*nodeKg+barKg)/(2*mass*math.Sin(sin)), 1e-6)
	}
	s := SectionForces(m, Options{}, b, 2, origin, vec(1, 0, 0))
	tan := math.Tan(b.Lines[0].AngleFromHorizontalDeg * math.Pi / 180)
	near(t, "thrust", s.CompressionN/(mass*gravity), 1/(2*tan), 1e-3)
}

// barUnderNodes: hook, two bridle legs to rings of nodeKg, which a bar 4 m long
// holds apart by stiff links of 0.2 m at its ends, and a load on plumb slings from
// the rings.
func barUnderNodes(mass, nodeKg, barKg float64) Model {
	m := Model{Bodies: []Body{
		{Name: "left ring", MassKg: nodeKg, Point: true}, {Name: "right ring", MassKg: nodeKg, Point: true},
		{Name: "bar", MassKg: barKg}, {Name: "load", MassKg: mass},
	}}
	for i, x := range []float64{-2, 2} {
		ring, name := Anchor{i, origin}, []string{"left ", "right "}[i]
		m.Lines = append(m.Lines, rope(name+"bridle", 3.6, 3e7*mass/1e5, Hook(vec(0, 0, 20)), ring))
		m.Lines = append(m.Lines, rope(name+"link", 0.2, 1e9, ring, Anchor{2, vec(x, 0, 0)}))
		for _, y := range []float64{-1, 1} {
			m.Lines = append(m.Lines, rope(name+"sling", 4, 3e7*mass/1e5, ring, Anchor{3, vec(0.9*x, y, 0.4)}))
		}
	}
	return m
}

// What no weight and no line holds in place is named, in words.
func TestNoBalanceNamesWhatIsFree(t *testing.T) {
	sheave := Hook(vec(0, 0, 10))
	counterweights := func(left, right float64) Model {
		m := Model{Bodies: []Body{{Name: "left weight", MassKg: left, Point: true}, {Name: "right weight", MassKg: right, Point: true}}}
		m.Lines = []Line{rope("rope", 6, 1e7, Anchor{0, origin}, sheave, sheave, Anchor{1, origin})}
		return m
	}
	r := solve(t, counterweights(100, 100))
	if r.Verdict != NoBalance || !hasCause(r, LeftFree) || r.Why[0].Body == World || len(r.Why[0].Lines) != 1 {
		t.Errorf("%+v", r)
	}
	if text := r.Why[0].Text; !strings.Contains(text, "weight is left free") || !strings.Contains(text, "rope") {
		t.Error(text)
	}
	r = solve(t, counterweights(100, 300))
	if r.Verdict != NoBalance || !hasCause(r, Unsettled) || !strings.Contains(r.Why[0].Text, "weight is drawn on without coming to rest") {
		t.Errorf("%+v", r)
	}
	r = solve(t, fitted(0.001, rectangle(40, 30, 0.5), 60, 1e13))
	if text := r.Why[0].Text; !strings.Contains(text, "differ too much to compute with") || !strings.Contains(text, "A, B, C, D") {
		t.Errorf("%+v", r)
	}
}

func TestRunsAndPointsAreChecked(t *testing.T) {
	for says, change := range map[string]func(*Model){
		"run 2 of rope ends at body number 7":       func(m *Model) { m.Lines[0].Further[0].To.Body = 7 },
		"run 2 of rope runs from hook to hook":      func(m *Model) { m.Lines[0].Further[0].From = Hook(origin) },
		"run 2 of rope runs from ring to itself":    func(m *Model) { m.Lines[0].Further[0] = Run{Anchor{1, origin}, Anchor{1, origin}} },
		"an end of run 2 of rope is not a point":    func(m *Model) { m.Lines[0].Further[0].To.At.X = math.NaN() },
		"link ends beside ring, which is a point":   func(m *Model) { m.Lines[1].To.At.Z = 0.1 },
		"ring is a point: its center of gravity is": func(m *Model) { m.Bodies[1].CenterOfGravity.Z = 0.1 },
		"block is a point":                          func(m *Model) { m.Bodies[0].Intended = TurnBy(1, vec(0, 0, 1)) },
	} {
		m := ringAndSheave()
		change(&m)
		if _, err := Solve(m, Options{}); !errors.Is(err, ErrModel) || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", says, err)
		}
	}
}
