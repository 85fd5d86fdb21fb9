package hitch

import (
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
	"pgregory.net/rapid"
)

// TestChoke on a circle of radius 1 and on a box 2 m wide and 1 m high.
func TestChoke(t *testing.T) {
	round, box := Section{DiameterM: 2}, Section{WidthM: 2, HeightM: 1}
	root3 := math.Sqrt(3)
	for name, c := range map[string]struct {
		body          Section
		turns         int
		deg           float64
		loop, standsM float64
	}{
		"free hanging":       {round, 1, 135, 2 + 1.5*math.Pi, math.Sqrt2},
		"at 120 deg":         {round, 1, 120, 2/root3 + math.Pi*5/3, 2 / root3},
		"at 150 deg":         {round, 1, 150, 2*root3 + math.Pi*4/3, 2},
		"square":             {round, 1, 90, 2 * math.Pi, 1},
		"pressed down":       {round, 1, 45, 2 * math.Pi, 1},
		"pressed flat":       {round, 1, 0, 2 * math.Pi, 1},
		"double wrap":        {round, 2, 135, 2 + 3.5*math.Pi, math.Sqrt2},
		"pressed, double":    {round, 2, 45, 4 * math.Pi, 1},
		"box, free":          {box, 1, 135, 2*math.Sqrt2 + 4, 1.5},
		"box, at 120 deg":    {box, 1, 120, 4/root3 + 4, 0.5 + 1/root3},
		"box, square":        {box, 1, 90, 6, 0.5},
		"box, pressed down":  {box, 1, 30, 6, 0.5},
		"box, double wrap":   {box, 2, 135, 2*math.Sqrt2 + 10, 1.5},
		"box, three a piece": {box, 3, 90, 18, 0.5},
	} {
		got, err := c.body.Choke(c.turns, c.deg)
		corners := 4
		if c.body == round {
			corners = 0
		}
		if err != nil || got.Corners != corners {
			t.Errorf("%s: %+v, %v", name, got, err)
		}
		near(t, name+", loop", got.LoopM, c.loop, 1e-12)
		near(t, name+", stands", got.StandsM, c.standsM, 1e-12)
	}
}

func TestChokesThatCannotBe(t *testing.T) {
	for name, c := range map[string]struct {
		turns int
		deg   float64
		says  string
	}{
		"no turn":         {0, 135, "one turn or more"},
		"straight":        {1, 180, "choke angle"},
		"beyond":          {1, 200, "choke angle"},
		"below zero":      {1, -1, "choke angle"},
		"angle no number": {1, math.NaN(), "choke angle"},
	} {
		got, err := Section{DiameterM: 1}.Choke(c.turns, c.deg)
		if err == nil || !strings.Contains(err.Error(), c.says) || got != (Choke{}) {
			t.Errorf("%s: %+v, %v", name, got, err)
		}
	}
}

// TestLoopIsARopeHungAtTheChokePoint: the loop is as long as a basket whose
// two parts meet at the choke point, and as a rubber band hung there.
func TestLoopIsARopeHungAtTheChokePoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSection(t)
		deg := rapid.Float64Range(95, 165).Draw(t, "choke angle")
		c, err := s.Choke(1, deg)
		if err != nil {
			t.Fatal(err)
		}
		at := Point{0, c.StandsM}
		b, err := s.Basket(at, at, 1)
		if err != nil || math.Abs(b.ropeM(at, at)-c.LoopM) > 1e-9*c.LoopM {
			t.Fatalf("%+v, basket %+v, %v", c, b, err)
		}
		if found := bandOf(s, at, at); math.Abs(found.lengthM-c.LoopM) > 5e-4*c.LoopM {
			t.Fatalf("%+v, band %+v", c, found)
		}
		// The side leaves the choke point at the choke angle from up.
		side := degrees(math.Atan2(math.Abs(b.Right.Y), b.Right.Z-c.StandsM))
		if math.Abs(side-deg) > 1e-6 {
			t.Fatalf("the side lies at %g deg, not %g", side, deg)
		}
	})
}

// TestWiderChokeAngleTakesMoreRope: loop and height rise with the angle, from
// once round the body, and do not jump at 90 deg.
func TestWiderChokeAngleTakesMoreRope(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSection(t)
		deg := rapid.Float64Range(0, 170).Draw(t, "choke angle")
		a, errA := s.Choke(1, deg)
		b, errB := s.Choke(1, deg+1e-4)
		if errA != nil || errB != nil {
			t.Fatal(errA, errB)
		}
		if a.LoopM < s.PerimeterM()*(1-1e-12) || b.LoopM < a.LoopM*(1-1e-12) || b.StandsM < a.StandsM*(1-1e-12) {
			t.Fatalf("%+v, then %+v", a, b)
		}
		if b.LoopM-a.LoopM > 1e-3*a.LoopM || b.StandsM-a.StandsM > 1e-3*a.StandsM {
			t.Fatalf("jumps from %+v to %+v", a, b)
		}
	})
}

func TestChokeAngle(t *testing.T) {
	sin30, cos30 := 0.5, math.Sqrt(3)/2
	for name, c := range map[string]struct{ axial, across, up, natural, deg float64 }{
		"straight":               {0, 0, 2, 135, 135},
		"straight, narrow":       {0, 0, 0.1, 60, 60},
		"30 deg along the axis":  {sin30, 0, cos30, 135, 127.7612},
		"the other way":          {-sin30, 0, cos30, 135, 127.7612},
		"30 deg across":          {0, sin30, cos30, 135, 105},
		"30 deg to the left":     {0, -sin30, cos30, 135, 105},
		"level along the axis":   {1, 0, 0, 135, 90},
		"level across":           {0, 1, 0, 135, 45},
		"along the loop":         {0, 1, -1, 135, 0},
		"narrow, along the axis": {sin30, 0, cos30, 60, 60}, // 64.3 deg by the formula, but no wider than its natural angle
	} {
		near(t, name, ChokeAngleDeg(c.axial, c.across, c.up, c.natural), c.deg, 1e-4)
	}
	nan, inf := math.NaN(), math.Inf(1)
	for name, c := range map[string][4]float64{
		"no direction":      {0, 0, 0, 135},
		"along no number":   {nan, 0, 1, 135},
		"across no number":  {0, nan, 1, 135},
		"up no number":      {0, 0, nan, 135},
		"without end":       {0, 0, inf, 135},
		"natural none":      {0, 0, 1, 0},
		"natural straight":  {0, 0, 1, 180},
		"natural no number": {0, 0, 1, nan},
	} {
		if got := ChokeAngleDeg(c[0], c[1], c[2], c[3]); !math.IsNaN(got) {
			t.Errorf("%s: %g deg", name, got)
		}
	}
}

// TestChokeAngleAgainstVectors turns the standing part step by step and takes
// the angle from the vectors of both sides.
func TestChokeAngleAgainstVectors(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		natural := rapid.Float64Range(90, 170).Draw(t, "natural")
		lean := rapid.Float64Range(-80, 80).Draw(t, "along the axis")
		roll := rapid.Float64Range(-80, 80).Draw(t, "across")
		axis, up := r3.Vec{X: 1}, r3.Vec{Z: 1}
		pull := r3.Rotate(r3.Rotate(up, radians(lean), r3.Vec{Y: 1}), radians(roll), axis)
		least := 180.0
		for _, side := range []float64{natural, -natural} {
			least = min(least, degrees(math.Acos(r3.Cos(pull, r3.Rotate(up, radians(side), axis)))))
		}
		length := rapid.Float64Range(1e-3, 1e3).Draw(t, "length")
		pull = r3.Scale(length, pull)
		if got := ChokeAngleDeg(pull.X, pull.Y, pull.Z, natural); math.Abs(got-least) > 1e-5 || got > natural {
			t.Fatalf("%g deg, by vectors %g", got, least)
		}
	})
}

func TestChokeLands(t *testing.T) {
	nan := math.NaN()
	for name, c := range map[string]struct {
		loop, eye, splice float64
		lands             bool
	}{
		"rope to spare":        {1, 0.4, 0.1, false},
		"to the end of it":     {0.5, 0.375, 0.125, true},
		"on the sleeve":        {0.45, 0.4, 0.1, true},
		"on the eye":           {0.3, 0.4, 0.1, true},
		"socket":               {0.3, 0, 0, false},
		"no loop":              {0, 0, 0, true},
		"loop is no number":    {nan, 0.4, 0.1, true},
		"eye is no number":     {1, nan, 0.1, true},
		"splice is no number":  {1, 0.4, nan, true},
		"eye below zero":       {1, -0.4, 0.1, true},
		"splice without end":   {1, 0.4, math.Inf(1), true},
		"loop without end":     {math.Inf(1), 0.4, 0.1, true},
		"splice less than not": {1, 0.4, -0.1, true},
	} {
		if got := ChokeLands(c.loop, c.eye, c.splice); got != c.lands {
			t.Errorf("%s: %t", name, got)
		}
	}
}
