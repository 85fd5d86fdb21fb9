package plangen

import (
	"math"
	"math/rand/v2"
)

// sketch is a lift before it is written down. Lengths in meters, masses and
// rated loads in tonnes.
type sketch struct {
	r        *rand.Rand
	us       bool
	link     bool // a master link between hook and legs
	shackles bool // at the lower end of each leg
	massT    float64
	tolerate int // percent
	size     [3]float64
	center   [3]float64
	points   [][3]float64
	legM     []float64 // from hook or link to the attachment
	rope     rope
	hookZ    float64 // where the legs hang from, above the datum
	shackleM float64
	linkM    float64
	sectionM float64 // of the link
	hookM    float64 // width of the hook
	eyeM     float64
	ratedT   float64 // of shackles, link and padeyes
}

// rope is a size of sling with its rated load as one leg.
type rope struct{ diameterMM, ratedT float64 }

// ropes are sizes and one-leg rated loads of EN 13414-1:2003, Table 4.
func ropes() []rope {
	return []rope{{8, 0.75}, {10, 1.15}, {12, 1.7}, {14, 2.25}, {18, 3.7}, {22, 5.65}, {26, 7.8}, {32, 11.8}, {40, 18.5}, {48, 26}, {56, 36}}
}

// newSketch draws a lift that hangs level and within its ratings.
func newSketch(r *rand.Rand) *sketch {
	s := &sketch{r: r}
	s.us, s.link, s.shackles = s.chance(0.35), s.chance(0.4), true
	s.massT, s.tolerate = math.Round(s.between(0.6, 14)*100)/100, 1+s.r.IntN(5)
	length := s.between(2, 8)
	s.size = [3]float64{s.snap(length), s.snap(length * s.between(0.4, 0.8)), s.snap(s.between(1.2, 3))}
	s.shackleM, s.linkM = s.snap(s.between(0.05, 0.12)), s.snap(s.between(0.15, 0.35))
	s.sectionM, s.hookM = s.snap(s.between(0.02, 0.04)), s.snap(s.between(0.06, 0.11))
	s.eyeM = s.snap(s.between(0.31, 0.6))
	s.place(1 + s.r.IntN(4))
	s.link = s.link || len(s.points) > 2 // a hook takes two eyes at most
	s.fit(s.between(47, 72))
	return s
}

func (s *sketch) between(low, high float64) float64 { return low + s.r.Float64()*(high-low) }

func (s *sketch) chance(p float64) bool { return s.r.Float64() < p }

// place puts the attachments round a center of gravity that need not lie in
// the middle, and all of it at some distance from the datum.
func (s *sketch) place(n int) {
	length, width, height := s.size[0], s.size[1], s.size[2]
	s.center = s.snapped([3]float64{length * s.between(0.4, 0.6), width * s.between(0.4, 0.6), height * s.between(0.25, 0.5)})
	x, y := s.center[0], s.center[1]
	left, right, side := s.snap(length*s.between(0.2, 0.38)), s.snap(length*s.between(0.2, 0.38)), s.snap(width*s.between(0.2, 0.38))
	switch n {
	case 1:
		s.points = [][3]float64{{x, y, height}}
	case 2:
		s.points = [][3]float64{{x - left, y, height}, {x + right, y, height * s.between(0.8, 1)}}
	case 3:
		s.points = [][3]float64{{x - left, y - side, height}, {x - left, y + side, height}, {x + right, y, height}}
	default: // points that mirror each other get lengths that suit one another however they are rounded
		z := height * s.between(0.5, 1)
		s.points = [][3]float64{{x - left, y - side, z}, {x + right, y - side, z}, {x + right, y + side, z}, {x - left, y + side, z}}
	}
	if s.chance(0.2) {
		s.move(s.snapped([3]float64{-length / 2, -width / 2, 0}))
	}
	for i := range s.points {
		s.points[i] = s.snapped(s.points[i])
	}
}

func (s *sketch) move(by [3]float64) {
	for k := range by {
		s.center[k] += by[k]
		for i := range s.points {
			s.points[i][k] += by[k]
		}
	}
}

func (s *sketch) snapped(p [3]float64) [3]float64 {
	return [3]float64{s.snap(p[0]), s.snap(p[1]), s.snap(p[2])}
}

// away is how far a point lies from the plumb line through the center of
// gravity.
func (s *sketch) away(p [3]float64) float64 {
	return math.Hypot(p[0]-s.center[0], p[1]-s.center[1])
}

// fit gives each leg the length at which the load hangs level with its
// flattest leg at the angle from horizontal, and picks gear that carries it
// with room to spare.
func (s *sketch) fit(angleDeg float64) {
	s.hookZ = 0
	for _, p := range s.points {
		s.hookZ = max(s.hookZ, p[2]+s.leastRise(), p[2]+s.away(p)*math.Tan(radians(angleDeg)))
	}
	s.legM = nil
	for _, p := range s.points {
		s.legM = append(s.legM, s.snap(math.Hypot(s.away(p), s.hookZ-p[2])))
	}
	share := []float64{1, 1, 0.7, 0.7}[len(s.points)-1]
	pull := 1.25 * s.massT * (1 + float64(s.tolerate)/100) * share / math.Sin(radians(angleDeg))
	for _, s.rope = range ropes() {
		if s.rope.ratedT > pull {
			break
		}
	}
	s.ratedT = math.Ceil(max(pull, 1.5*s.massT))
}

// leastRise keeps plumb legs from being too short to be made up.
func (s *sketch) leastRise() float64 {
	if len(s.points) == 1 {
		return 1.5
	}
	return 0.6
}

func radians(deg float64) float64 { return deg * math.Pi / 180 }

// slingM is the length of a leg's sling.
func (s *sketch) slingM(i int) float64 {
	if s.shackles {
		return s.legM[i] - s.shackleM
	}
	return s.legM[i]
}

// disturb takes the lift away from hanging level: legs of any length, a center
// of gravity anywhere.
func (s *sketch) disturb() {
	if s.chance(0.4) {
		for i := range s.legM {
			s.legM[i] = s.snap(s.legM[i] * s.between(0.75, 1.3))
		}
	}
	if s.chance(0.3) {
		s.center = s.snapped([3]float64{s.center[0] + s.size[0]*s.between(-0.3, 0.3), s.center[1] + s.size[1]*s.between(-0.3, 0.3), s.size[2] * s.between(0.1, 1.2)})
	}
	if s.chance(0.1) { // legs nearly in one plane
		for i := range s.points {
			s.points[i][1] = s.snap(s.center[1] + 0.1*(s.points[i][1]-s.center[1]))
		}
	}
	s.link, s.shackles = s.link && s.chance(0.9), s.chance(0.8)
	if s.chance(0.2) {
		s.massT *= s.between(1, 3)
	}
}
