// Package plangen makes lift plans from a seed: varied, believable, and the
// same text for the same seed. They serve tests and measuring; the site and
// all its gear are invented.
package plangen

import (
	"math"
	"math/rand/v2"
)

// sketch is a lift before it is written down. Meters and tonnes.
type sketch struct {
	r       *rand.Rand
	us      bool
	flow    bool // gear on one line each
	link    bool // a master link between hook and legs
	massT   float64
	center  [3]float64
	points  [][3]float64
	legM    []float64 // lengths of the slings
	rope    rope
	shackle float64 // inside length
	rating  float64 // of shackles, link and padeyes, in tonnes
}

// rope is a size of sling with its rated load as one leg.
type rope struct{ diameterMM, ratedT float64 }

// ropes are sizes and one-leg rated loads of EN 13414-1:2003, Table 4.
func ropes() []rope {
	return []rope{{8, 0.75}, {10, 1.15}, {12, 1.7}, {14, 2.25}, {18, 3.7}, {22, 5.65}, {26, 7.8}, {32, 11.8}, {40, 18.5}, {48, 26}, {56, 36}}
}

// newSketch draws a lift that hangs level and within its ratings.
func newSketch(seed uint64) *sketch {
	s := &sketch{r: rand.New(rand.NewPCG(seed, seed^0x9e3779b97f4a7c15))}
	s.us, s.flow, s.link = s.chance(0.3), s.chance(0.5), s.chance(0.5)
	s.massT = math.Round(s.between(0.8, 14)*100) / 100
	length, width, height := s.between(2, 8), s.between(1, 3), s.between(1, 3)
	s.center = [3]float64{length / 2, width / 2, height * s.between(0.25, 0.5)}
	s.points = s.pointsOn(1+s.r.IntN(4), length, width, height)
	s.shackle = 0.05
	s.hangLevel(s.between(52, 72))
	return s
}

func (s *sketch) between(low, high float64) float64 { return low + s.r.Float64()*(high-low) }

func (s *sketch) chance(p float64) bool { return s.r.Float64() < p }

// pointsOn places the attachments: above the center of gravity for one and
// two, round it for more.
func (s *sketch) pointsOn(n int, length, width, height float64) [][3]float64 {
	x, y, z := s.center[0], s.center[1], height
	switch n {
	case 1:
		return [][3]float64{{x, y, z}}
	case 2:
		return [][3]float64{{x - length*s.between(0.2, 0.45), y, z}, {x + length*s.between(0.2, 0.45), y, z}}
	case 3:
		return [][3]float64{{x - 0.4*length, y - 0.4*width, z}, {x - 0.4*length, y + 0.4*width, z}, {x + 0.4*length, y, z}}
	}
	z = height * s.between(0.3, 1)
	return [][3]float64{
		{x - 0.4*length, y - 0.4*width, z}, {x + 0.4*length, y - 0.4*width, z},
		{x + 0.4*length, y + 0.4*width, z}, {x - 0.4*length, y + 0.4*width, z},
	}
}

// hangLevel gives each leg the length at which the load hangs level with its
// flattest leg at the angle, and picks a rope that carries it with room to
// spare.
func (s *sketch) hangLevel(angleDeg float64) {
	reach := 0.0
	for _, p := range s.points {
		reach = max(reach, math.Hypot(p[0]-s.center[0], p[1]-s.center[1]))
	}
	rise := max(1, reach*math.Tan(angleDeg*math.Pi/180))
	s.legM = nil
	for _, p := range s.points {
		s.legM = append(s.legM, math.Hypot(math.Hypot(p[0]-s.center[0], p[1]-s.center[1]), rise)-s.shackle)
	}
	need := 1.3 * s.massT / math.Sin(angleDeg*math.Pi/180)
	if len(s.points) > 2 {
		need /= 1.6
	}
	for _, s.rope = range ropes() {
		if s.rope.ratedT > need {
			break
		}
	}
	s.rating = math.Ceil(2 * max(need, s.massT))
}
