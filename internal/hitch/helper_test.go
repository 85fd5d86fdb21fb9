package hitch

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.9g, not %.9g", what, got, want)
	}
}

func distance(a, b Point) float64 { return math.Hypot(a.Y-b.Y, a.Z-b.Z) }

// ropeM is the whole length of rope of a basket, from support to support.
func (b Basket) ropeM(left, right Point) float64 {
	return distance(left, b.Left) + b.RoundM + distance(b.Right, right)
}

func drawSection(t *rapid.T) Section {
	if rapid.Bool().Draw(t, "round") {
		return Section{DiameterM: rapid.Float64Range(0.05, 2).Draw(t, "diameter")}
	}
	return Section{
		WidthM:  rapid.Float64Range(0.05, 2).Draw(t, "width"),
		HeightM: rapid.Float64Range(0.05, 2).Draw(t, "height"),
	}
}

// drawSupports draws two supports that a basket can hang from, beside each
// other or apart, and the basket.
func drawSupports(t *rapid.T, s Section) (left, right Point, b Basket) {
	place := func(name string) Point {
		return Point{rapid.Float64Range(-3, 3).Draw(t, name+" across"), rapid.Float64Range(-1, 5).Draw(t, name+" up")}
	}
	left, right = place("left"), place("right")
	if rapid.IntRange(0, 4).Draw(t, "one hook in") == 0 {
		right = left
	} else if left.Y > right.Y {
		left, right = right, left
	}
	b, err := s.Basket(left, right, 1)
	if err != nil {
		t.Skip(err)
	}
	return left, right, b
}
