package mechanics

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"gonum.org/v1/gonum/spatial/r3"
)

func TestModelsWithoutMeaningAreRefused(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, c := range map[string]struct {
		change func(m *Model)
		says   string
	}{
		"no body":            {func(m *Model) { m.Bodies = nil }, "no body"},
		"no line":            {func(m *Model) { m.Lines = nil }, "no line"},
		"no mass":            {func(m *Model) { m.Bodies[0].MassKg = 0 }, "mass of load"},
		"negative mass":      {func(m *Model) { m.Bodies[0].MassKg = -1 }, "mass of load"},
		"mass NaN":           {func(m *Model) { m.Bodies[0].MassKg = nan }, "mass of load"},
		"mass infinite":      {func(m *Model) { m.Bodies[0].MassKg = inf }, "mass of load"},
		"center NaN":         {func(m *Model) { m.Bodies[0].CenterOfGravity.Y = nan }, "center of gravity"},
		"no rotation":        {func(m *Model) { m.Bodies[0].Intended = Attitude{Real: 2} }, "attitude of load"},
		"rotation NaN":       {func(m *Model) { m.Bodies[0].Intended = Attitude{Real: nan} }, "attitude of load"},
		"length zero":        {func(m *Model) { m.Lines[1].LengthM = 0 }, "length of B"},
		"length NaN":         {func(m *Model) { m.Lines[1].LengthM = nan }, "length of B"},
		"stiffness zero":     {func(m *Model) { m.Lines[1].StiffnessN = 0 }, "stiffness EA of B"},
		"stiffness infinite": {func(m *Model) { m.Lines[1].StiffnessN = inf }, "stiffness EA of B"},
		"point NaN":          {func(m *Model) { m.Lines[2].To.At.X = nan }, "end of C"},
		"unknown body":       {func(m *Model) { m.Lines[2].To.Body = 4 }, "body number 4"},
		"below the world":    {func(m *Model) { m.Lines[2].To.Body = -2 }, "body number -2"},
		"hook to hook":       {func(m *Model) { m.Lines[2].To.Body = World }, "from hook to hook"},
		"body to itself":     {func(m *Model) { m.Lines[2].From.Body = 0 }, "from load to itself"},
		"hung on nothing": {func(m *Model) {
			m.Bodies = append(m.Bodies, Body{Name: "second", MassKg: 1})
		}, "joins second"},
		"two bodies hung on each other": {func(m *Model) {
			m.Bodies = append(m.Bodies, Body{Name: "second", MassKg: 1}, Body{MassKg: 1})
			m.Lines = append(m.Lines, Line{From: Anchor{Body: 1}, To: Anchor{Body: 2}, LengthM: 1, StiffnessN: 1e6})
		}, "joins second"},
	} {
		m := fitted(1000, rectangle(4, 3, 0.5), 4, 1e7)
		c.change(&m)
		r, err := Solve(m, Options{})
		if !errors.Is(err, ErrModel) || !strings.Contains(err.Error(), c.says) || r.Verdict != "" {
			t.Errorf("%s: %v, %+v", name, err, r)
		}
	}
	for _, o := range []Options{{MaxTiltDeg: nan}, {MaxTiltDeg: 91}, {MaxStrain: -1}, {GravityMS2: -9.8}, {GravityMS2: inf}} {
		if _, err := Solve(fitted(1, rectangle(4, 3, 1), 4, 1e7), o); !errors.Is(err, ErrModel) {
			t.Errorf("%+v: %v", o, err)
		}
	}
}

// Names are optional; messages then count from one.
func TestNumbersStandInForNames(t *testing.T) {
	m := hung(1000, rectangle(4, 3, 0.5), []float64{1, 1, 1, 1}, 1e7)
	for i := range m.Lines {
		m.Lines[i].Name = ""
	}
	if r := solve(t, m); !strings.Contains(r.Why[0].Text, "line 1, line 2") {
		t.Errorf("%+v", r)
	}
	m.Bodies[0] = Body{}
	if _, err := Solve(m, Options{}); err == nil || !strings.Contains(err.Error(), "body 1") {
		t.Error(err)
	}
}

// A gram on lines that would hold a bridge: rounding alone leaves more than a
// millionth of its weight. No balance, rather than figures that look fine.
func TestNoBalanceBeyondTheArithmetic(t *testing.T) {
	m := fitted(0.001, rectangle(40, 30, 0.5), 60, 1e13)
	r := solve(t, m)
	if r.Verdict != NoBalance || r.Balance != nil || !hasCause(r, Unsettled) || !(r.Why[0].Measured > 1e-6) {
		t.Fatalf("%+v", r)
	}
}

// The same model gives the same answer to the last bit.
func TestSameModelSameAnswer(t *testing.T) {
	m := fitted(1000, shifted(rectangle(4, 3, -0.5), vec(0.2, 0.1, 0)), 4, 1e8)
	first := steady(t, m)
	for range 5 {
		if diff := cmp.Diff(first, steady(t, m)); diff != "" {
			t.Fatal(diff)
		}
	}
}

// FuzzSolve looks for panics, and for a Steady that does not hold water.
func FuzzSolve(f *testing.F) {
	f.Add(1000.0, 0.0, 0.0, 0.5, 4.0, 3.0, 5.0, 5.0, 5.0, 1e7, uint8(4))
	f.Add(1000.0, 0.1, 0.0, -1.0, 4.0, 3.0, 5.0, 5.01, 5.0, 1e9, uint8(3))
	f.Add(1.0, 0.0, 0.0, 0.0, 4.0, 0.0, 3.0, 3.0, 3.0, 1e9, uint8(2))
	f.Add(1e6, 2.0, 2.0, 2.0, 0.0, 0.0, 0.2, 60.0, 0.2, 1e5, uint8(6))
	f.Add(math.NaN(), 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, uint8(0))
	f.Fuzz(func(t *testing.T, mass, x, y, z, dx, dy, l1, l2, l3, ea float64, n uint8) {
		points := append(shifted(rectangle(dx, dy, z), vec(x, y, 0)), vec(x, y, z), vec(y, x, -z))[:n%7]
		lengths := []float64{l1, l2, l3, l1, l2, l3}
		r, err := Solve(hung(mass, points, lengths, ea), Options{})
		if err != nil {
			if !errors.Is(err, ErrModel) {
				t.Fatal(err)
			}
			return
		}
		if (r.Verdict == Steady) != (r.Balance != nil) || (r.Verdict == Steady) == (len(r.Why) > 0) {
			t.Fatalf("%+v", r)
		}
		if r.Balance != nil {
			checkBalance(t, hung(mass, points, lengths, ea), r.Balance)
		}
	})
}

// checkBalance adds up forces and moments in world axes from directions and
// places, and holds the figures together.
func checkBalance(t fataler, m Model, b *Balance) {
	t.Helper()
	weight, hooks := 0.0, r3.Vec{}
	for _, body := range m.Bodies {
		weight += body.MassKg * gravity
	}
	for k, body := range m.Bodies {
		force, moment, size := vec(0, 0, -body.MassKg*gravity), r3.Vec{}, 1e-6
		for i, l := range m.Lines {
			for j, r := range append([]Run{{l.From, l.To}}, l.Further...) {
				pull := r3.Scale(b.Lines[i].Runs[j].TensionN, b.Lines[i].Runs[j].Direction)
				for _, s := range []struct {
					a Anchor
					f r3.Vec
				}{{r.From, pull}, {r.To, r3.Scale(-1, pull)}} {
					if s.a.Body != k {
						continue
					}
					at := r3.Add(b.Bodies[k].Origin, b.Bodies[k].Attitude.World(s.a.At))
					arm := r3.Sub(at, b.Bodies[k].CenterOfGravity)
					size = math.Max(size, r3.Norm(arm))
					force = r3.Add(force, s.f)
					moment = r3.Add(moment, r3.Cross(arm, s.f))
				}
			}
		}
		near(t, "force over weight", r3.Norm(force)/weight, 0, 1e-6)
		near(t, "moment over weight and size", r3.Norm(moment)/weight/size, 0, 1e-6)
	}
	for i, l := range b.Lines {
		if !(l.TensionN >= 0) || l.Bound.TensionN < l.TensionN || l.Slack != (l.TensionN <= 1e-6*weight) {
			t.Fatalf("line %d: %+v", i, l)
		}
		if l.TensionN > 0 && !(m.Lines[i].Grips && len(l.Runs) > 1) {
			near(t, "tension by strain", m.Lines[i].StiffnessN*l.Strain/l.TensionN, 1, 1e-4+1e-15*m.Lines[i].StiffnessN*100/l.TensionN)
		}
		near(t, "angles", l.AngleFromHorizontalDeg+l.AngleFromVerticalDeg, 90, 1e-9)
	}
	for _, h := range b.Hooks {
		hooks = r3.Add(hooks, h.LoadN)
	}
	near(t, "hook loads over weight", r3.Norm(r3.Add(hooks, vec(0, 0, weight)))/weight, 0, 1e-6)
	if !(b.RightingM > 0) && !b.Rocks {
		t.Fatalf("righting %g", b.RightingM)
	}
}
