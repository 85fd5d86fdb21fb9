package hitch

import (
	"math"
	"testing"
)

func TestPerimeter(t *testing.T) {
	near(t, "round", Section{DiameterM: 2}.PerimeterM(), 2*math.Pi, 1e-15)
	near(t, "box", Section{WidthM: 2, HeightM: 3}.PerimeterM(), 10, 0)
	near(t, "round goes before box", Section{DiameterM: 1, WidthM: 2, HeightM: 3}.PerimeterM(), math.Pi, 1e-15)
}

// TestBodiesThatAreNone are refused by whatever is laid round them.
func TestBodiesThatAreNone(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, s := range map[string]Section{
		"nothing":            {},
		"width alone":        {WidthM: 1},
		"height alone":       {HeightM: 1},
		"diameter below 0":   {DiameterM: -1, WidthM: 1, HeightM: 1},
		"no diameter":        {DiameterM: nan, WidthM: 1, HeightM: 1},
		"diameter no end":    {DiameterM: inf},
		"width below 0":      {WidthM: -1, HeightM: 1},
		"width no number":    {WidthM: nan, HeightM: 1},
		"height without end": {WidthM: 1, HeightM: inf},
	} {
		if b, err := s.Basket(Point{-2, 5}, Point{2, 5}, 1); err == nil || b != (Basket{}) {
			t.Errorf("%s: basket %+v, %v", name, b, err)
		}
		if c, err := s.Choke(1, 135); err == nil || c != (Choke{}) {
			t.Errorf("%s: choke %+v, %v", name, c, err)
		}
	}
}
