package hitch

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// A second way to a basket, which knows nothing of tangents or corners: a
// rubber band is laid round a fine polygon on the body and let go. Its nodes lie
// on rays from the body's center, and each moves to the straight line between
// its neighbors or as far as the body lets it. Along a ray the line between two
// nodes is linear in 1/r: u sin(a + b) = u1 sin b + u2 sin a.

// band is a rubber band at rest.
type band struct {
	lengthM, turnedRad float64
	bends              int // nodes where it turns by more than a hundredth of a radian
}

const raysRound = 120

// bandOf lets a band go between two supports.
func bandOf(s Section, left, right Point) band {
	rays := raysOf(s, -fromBelow(Point{-left.Y, left.Z}), fromBelow(right))
	u, least := make([]float64, len(rays)), make([]float64, len(rays))
	for i, a := range rays {
		least[i] = 1 / s.surfaceM(a)
		u[i] = least[i]
	}
	last := len(rays) - 1
	u[0], u[last] = 1/math.Hypot(left.Y, left.Z), 1/math.Hypot(right.Y, right.Z)
	for moved := 1.0; moved > 1e-11; {
		moved = 0
		for i := 1; i < last; i++ {
			a, b := rays[i]-rays[i-1], rays[i+1]-rays[i]
			next := min(least[i], (u[i-1]*math.Sin(b)+u[i+1]*math.Sin(a))/math.Sin(a+b))
			moved = max(moved, math.Abs(next-u[i]))
			u[i] = next
		}
	}
	return measured(rays, u)
}

// fromBelow is the angle of a point from straight down, counterclockwise.
func fromBelow(p Point) float64 { return math.Mod(math.Atan2(p.Y, -p.Z)+2*math.Pi, 2*math.Pi) }

// raysOf are angles from one to another, those of a box's corners among them.
func raysOf(s Section, from, to float64) []float64 {
	var rays []float64
	n := int(math.Ceil((to - from) / (2 * math.Pi) * raysRound))
	for i := range n + 1 {
		rays = append(rays, from+(to-from)*float64(i)/float64(n))
	}
	corner := math.Atan2(s.WidthM, s.HeightM)
	for k := -2.0; k <= 2; k++ {
		for _, a := range []float64{k*math.Pi + corner, k*math.Pi - corner} {
			if a > from && a < to {
				rays = append(rays, a)
			}
		}
	}
	slices.Sort(rays)
	return slices.CompactFunc(rays, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 })
}

// surfaceM is how far the surface is from the center.
func (s Section) surfaceM(a float64) float64 {
	if s.DiameterM > 0 {
		return s.DiameterM / 2
	}
	return min(s.WidthM/2/math.Abs(math.Sin(a)), s.HeightM/2/math.Abs(math.Cos(a)))
}

func measured(rays, u []float64) band {
	var at []Point
	for i, a := range rays {
		at = append(at, Point{math.Sin(a) / u[i], -math.Cos(a) / u[i]})
	}
	b := band{lengthM: distance(at[0], at[1])}
	for i := 1; i+1 < len(at); i++ {
		in, out := Point{at[i].Y - at[i-1].Y, at[i].Z - at[i-1].Z}, Point{at[i+1].Y - at[i].Y, at[i+1].Z - at[i].Z}
		turn := math.Atan2(in.Y*out.Z-in.Z*out.Y, in.Y*out.Y+in.Z*out.Z)
		b.lengthM += distance(at[i], at[i+1])
		b.turnedRad += turn
		if turn > 0.01 {
			b.bends++
		}
	}
	return b
}

// TestBasketIsTheShortestWay: length and turning are those of the band.
func TestBasketIsTheShortestWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSection(t)
		left, right, b := drawSupports(t, s)
		found := bandOf(s, left, right)
		if length := b.ropeM(left, right); math.Abs(length-found.lengthM) > 5e-4*length {
			t.Fatalf("%+v is %g m long, the band %g", b, length, found.lengthM)
		}
		if math.Abs(b.TurnedRad-found.turnedRad) > 0.02 {
			t.Fatalf("%+v turns, the band by %g", b, found.turnedRad)
		}
		if s.DiameterM == 0 && (found.bends > b.Corners) {
			t.Fatalf("%+v; the band bears on %d corners", b, found.bends)
		}
	})
}

// TestBandBearsOnEveryCorner that the basket names, where it turns clearly.
func TestBandBearsOnEveryCorner(t *testing.T) {
	s := Section{WidthM: 0.6, HeightM: 0.4}
	for _, c := range []struct{ left, right Point }{
		{Point{-0.5, 2}, Point{0.5, 2}},
		{Point{0, 1}, Point{0.5, 2}},
		{Point{0, 1}, Point{0, 1}},
	} {
		b, err := s.Basket(c.left, c.right, 1)
		if found := bandOf(s, c.left, c.right); err != nil || found.bends != b.Corners {
			t.Errorf("%+v, %v; the band bears on %d corners", b, err, found.bends)
		}
	}
}
