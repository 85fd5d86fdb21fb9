// Package hitch holds the geometry of slings laid round bodies: where a sling
// leaves a body, how much of it lies on the body, and what friction holds
// there. Pure functions of dimensions, in SI units.
package hitch

import (
	"fmt"
	"math"
)

// Section is the cross-section of a body that is a prism along its own axis,
// in meters: round where DiameterM is above zero, else a box of WidthM across
// and HeightM up. It is centered at the origin of its plane. Lengths are those
// of a line that lies on it: for the middle of a rope of diameter d round a
// round body, give a diameter larger by d.
type Section struct{ DiameterM, WidthM, HeightM float64 }

// Point is a point in the plane of a section, in meters from its center: Y
// across, Z up.
type Point struct{ Y, Z float64 }

// PerimeterM is the way once round the section, in meters.
func (s Section) PerimeterM() float64 {
	if s.round() {
		return math.Pi * s.DiameterM
	}
	return 2 * (s.WidthM + s.HeightM)
}

func (s Section) round() bool { return s.DiameterM > 0 }

// check is an error unless the section has dimensions that a body can have.
func (s Section) check() error {
	switch {
	case s.DiameterM != 0 && !usable(s.DiameterM):
		return fmt.Errorf("a body %g m in diameter is none", s.DiameterM)
	case !s.round() && !(usable(s.WidthM) && usable(s.HeightM)):
		return fmt.Errorf("a body needs a diameter, or a width and a height; its width is %g m and its height %g m", s.WidthM, s.HeightM)
	}
	return nil
}

// holds tells whether a point lies in the body or on its surface.
func (s Section) holds(p Point) bool {
	if s.round() {
		return math.Hypot(p.Y, p.Z) <= s.DiameterM/2
	}
	return math.Abs(p.Y) <= s.WidthM/2 && math.Abs(p.Z) <= s.HeightM/2
}

// usable tells whether a dimension is one: above zero and finite.
func usable(x float64) bool { return x > 0 && !math.IsInf(x, 1) }

func finite(p Point) bool {
	return !math.IsNaN(p.Y-p.Y) && !math.IsNaN(p.Z-p.Z) // infinity less itself is no number
}

func radians(deg float64) float64 { return deg * math.Pi / 180 }

func degrees(rad float64) float64 { return rad * 180 / math.Pi }
