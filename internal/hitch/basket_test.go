package hitch

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestBasketOnACircle: arcs that are known parts of the whole.
func TestBasketOnACircle(t *testing.T) {
	for name, c := range map[string]struct {
		left, right Point
		turns       int
		wantLeft    Point
		turnedDeg   float64
	}{
		"parts straight up":           {Point{-1, 4}, Point{1, 4}, 1, Point{-1, 0}, 180},
		"double wrap":                 {Point{-1, 4}, Point{1, 4}, 2, Point{-1, 0}, 540},
		"triple wrap":                 {Point{-1, 4}, Point{1, 4}, 3, Point{-1, 0}, 900},
		"one hook two radii above":    {Point{0, 2}, Point{0, 2}, 1, Point{-math.Sqrt(3) / 2, 0.5}, 240},
		"one hook, double wrap":       {Point{0, 2}, Point{0, 2}, 2, Point{-math.Sqrt(3) / 2, 0.5}, 600},
		"spread to 45 deg":            {Point{-2 * math.Sqrt2, math.Sqrt2}, Point{2 * math.Sqrt2, math.Sqrt2}, 1, Point{-math.Sqrt2 / 2, -math.Sqrt2 / 2}, 90},
		"left straight, right 45 deg": {Point{-1, 4}, Point{2 * math.Sqrt2, math.Sqrt2}, 1, Point{-1, 0}, 135},
		"support beside the middle":   {Point{-1, 0.25}, Point{1, 4}, 1, Point{-1, 0}, 180},
	} {
		b, err := Section{DiameterM: 2}.Basket(c.left, c.right, c.turns)
		if err != nil || b.Corners != 0 {
			t.Errorf("%s: %+v, %v", name, b, err)
		}
		near(t, name+", turned", degrees(b.TurnedRad), c.turnedDeg, 1e-6)
		near(t, name+", round", b.RoundM, radians(c.turnedDeg), 1e-8) // radius 1
		near(t, name+", left contact", distance(b.Left, c.wantLeft), 0, 1e-8)
	}
}

// TestBasketOnABox 2 m wide and 1 m high.
func TestBasketOnABox(t *testing.T) {
	lowLeft, lowRight, topLeft, topRight := Point{-1, -0.5}, Point{1, -0.5}, Point{-1, 0.5}, Point{1, 0.5}
	for name, c := range map[string]struct {
		left, right         Point
		turns               int
		wantLeft, wantRight Point
		roundM, turnedDeg   float64
		corners             int
	}{
		"straight up its sides":    {Point{-1, 4}, Point{1, 4}, 1, lowLeft, lowRight, 2, 180, 2},
		"spread to 45 deg":         {Point{-3, 1.5}, Point{3, 1.5}, 1, lowLeft, lowRight, 2, 90, 2},
		"one hook above":           {Point{0, 1.5}, Point{0, 1.5}, 1, topLeft, topRight, 4, 270, 4},
		"one hook, double wrap":    {Point{0, 1.5}, Point{0, 1.5}, 2, topLeft, topRight, 10, 630, 4},
		"double wrap, straight up": {Point{-1, 4}, Point{1, 4}, 2, lowLeft, lowRight, 8, 540, 4},
		"left in, right straight":  {Point{0, 1.5}, Point{1, 3}, 1, topLeft, lowRight, 3, 225, 3},
		"hook off the middle":      {Point{3, 4.5}, Point{3, 4.5}, 1, topLeft, lowRight, 3, degrees(math.Pi/2 + math.Pi/4 + math.Atan2(5, 2)), 3},
		"hook above the right end": {Point{0.5, 1}, Point{0.5, 1}, 1, topLeft, topRight, 4, degrees(math.Pi + math.Pi/4 + math.Atan2(1.5, 0.5)), 4},
	} {
		b, err := Section{WidthM: 2, HeightM: 1}.Basket(c.left, c.right, c.turns)
		if err != nil || b.Left != c.wantLeft || b.Right != c.wantRight || b.Corners != c.corners {
			t.Errorf("%s: %+v, %v", name, b, err)
		}
		near(t, name+", turned", degrees(b.TurnedRad), c.turnedDeg, 1e-9)
		near(t, name+", round", b.RoundM, c.roundM, 1e-12)
	}
}

func TestBasketsThatCannotBe(t *testing.T) {
	round, box := Section{DiameterM: 2}, Section{WidthM: 2, HeightM: 1}
	up := Point{-1, 4}
	for name, c := range map[string]struct {
		body        Section
		left, right Point
		turns       int
		says        string
	}{
		"inside a circle":          {round, Point{-0.5, 0.5}, up, 1, "left part: its support"},
		"on a circle":              {round, up, Point{1, 0}, 1, "right part: its support"},
		"inside a box":             {box, up, Point{0.9, 0.4}, 1, "lies in the body"},
		"on a side of a box":       {box, up, Point{1, 0.2}, 1, "lies in the body"},
		"on a corner of a box":     {box, Point{-1, 0.5}, Point{2, 4}, 1, "lies in the body"},
		"straight below":           {round, up, Point{0, -3}, 1, "does not go up"},
		"level":                    {round, up, Point{3, -1}, 1, "does not go up"},
		"below":                    {round, up, Point{3, -2}, 1, "does not go up"},
		"over the top and down":    {round, up, Point{-3, -1}, 1, "does not go up"},
		"over the top, box":        {box, up, Point{-3, 0.5}, 1, "does not go up"},
		"level, box":               {box, up, Point{3, -0.5}, 1, "does not go up"},
		"below, box":               {box, up, Point{3, -2}, 1, "does not go up"},
		"left below":               {box, Point{-3, -2}, Point{1, 4}, 1, "left part: it does not go up"},
		"supports swapped":         {round, Point{3, 5}, Point{-3, 5}, 1, "cross"},
		"swapped, box":             {box, Point{3, 5}, Point{-3, 5}, 1, "cross"},
		"swapped by a little":      {round, Point{0.01, 5}, Point{-0.01, 5}, 1, "cross"},
		"swapped, double wrap":     {round, Point{3, 5}, Point{-3, 5}, 2, "cross"},
		"no turn":                  {round, Point{-1, 4}, Point{1, 4}, 0, "one turn or more"},
		"turns below zero":         {round, Point{-1, 4}, Point{1, 4}, -1, "one turn or more"},
		"support is no number":     {round, Point{math.NaN(), 4}, Point{1, 4}, 1, "no place"},
		"support without end":      {box, Point{-1, 4}, Point{1, math.Inf(1)}, 1, "no place"},
		"support without end left": {round, Point{math.Inf(-1), 4}, Point{1, 4}, 1, "no place"},
	} {
		b, err := c.body.Basket(c.left, c.right, c.turns)
		if err == nil || !strings.Contains(err.Error(), c.says) || b != (Basket{}) {
			t.Errorf("%s: %+v, %v", name, b, err)
		}
	}
}

// TestPartsThatPassDoNotCross: the right support hangs inside the triangle of
// the left part, further down on nearly the same line.
func TestPartsThatPassDoNotCross(t *testing.T) {
	left, right := Point{0.01, 3}, Point{0, 2}
	b, err := Section{DiameterM: 2}.Basket(left, right, 1)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "length", b.ropeM(left, right), bandOf(Section{DiameterM: 2}, left, right).lengthM, 1e-3)
}

// TestMirroredBasket: left and right change places, and nothing else.
func TestMirroredBasket(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSection(t)
		left, right, b := drawSupports(t, s)
		m, err := s.Basket(Point{-right.Y, right.Z}, Point{-left.Y, left.Z}, 1)
		if err != nil || m.Left != (Point{-b.Right.Y, b.Right.Z}) || m.Right != (Point{-b.Left.Y, b.Left.Z}) || m.Corners != b.Corners {
			t.Fatalf("%+v mirrored is %+v, %v", b, m, err)
		}
		if math.Abs(m.RoundM-b.RoundM) > 1e-12 || math.Abs(m.TurnedRad-b.TurnedRad) > 1e-12 {
			t.Fatalf("%+v mirrored is %+v", b, m)
		}
	})
}

// TestBasketGivesNoMoreThanItsSupportMoves: a taut rope gets longer or shorter
// by at most as much as its end is moved, also where it goes from corner to
// corner.
func TestBasketGivesNoMoreThanItsSupportMoves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSection(t)
		left, right, b := drawSupports(t, s)
		step := rapid.Float64Range(0, 0.5).Draw(t, "step")
		sin, cos := math.Sincos(rapid.Float64Range(0, 2*math.Pi).Draw(t, "towards"))
		moved := Point{right.Y + step*sin, right.Z + step*cos}
		after, err := s.Basket(left, moved, 1)
		if err != nil {
			t.Skip(err)
		}
		if change := after.ropeM(left, moved) - b.ropeM(left, right); math.Abs(change) > step+1e-9 {
			t.Fatalf("moved by %g, longer by %g: %+v, %+v", step, change, b, after)
		}
	})
}
