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
	link     bool   // a master link between hook and legs
	bridle   bool   // the legs and the link are one bridle
	fittings bool   // something joins each leg to its attachment
	hooks    bool   // that is a hook; else a shackle
	kind     string // of the attachments
	massT    float64
	tolerate int // percent
	size     [3]float64
	center   [3]float64
	points   [][3]float64
	legM     []float64 // from hook or link to the attachment
	hookZ    float64   // where the legs hang from, above the datum
	made     ropeMake
	rope     rope
	low      fitting   // what joins a leg to its attachment
	master   ring      // the master link
	inter    ring      // the intermediate links
	crane    craneHook // the hook that all hangs in
	ratedT   float64   // of links and attachments
	taste
}

// taste is how roomy things are made: drawn once, so that the same lift gets
// the same proportions however often it is fitted.
type taste struct {
	spliceD  float64 // length of a sleeve or splice in rope diameters
	softD    float64 // length of a soft eye in rope diameters
	thimbled bool    // the eyes over the crane hook too
	play     float64 // holes over what goes through them
	filled   float64 // thickness of attachments over the jaw or throat they go in
	room     float64 // more than is needed
	hookM    float64 // width of the crane hook at the least
}

// newSketch draws a lift that hangs level and within its ratings.
func newSketch(r *rand.Rand) *sketch {
	s := &sketch{r: r, fittings: true}
	s.us, s.link, s.hooks = s.chance(0.35), s.chance(0.4), s.chance(0.2)
	s.massT, s.tolerate = math.Round(s.between(0.6, 14)*100)/100, 1+s.r.IntN(5)
	length := s.between(2, 8)
	s.size = [3]float64{s.snap(length), s.snap(length * s.between(0.4, 0.8)), s.snap(s.between(1.2, 3))}
	s.kind = s.pick("padeye", "padeye", "padeye", "padeye", "padeye", "hoist_ring", "hoist_ring", "eyebolt", "eyebolt", "insert")
	s.made = s.ropeMake()
	s.taste = s.newTaste()
	n := 1 + s.r.IntN(4)
	s.bridle = n > 1 && s.chance(0.3)
	s.place(n)
	s.link = s.link || s.bridle || n > 2 // a hook takes two eyes at most
	s.fit(s.leastAngle())
	return s
}

func (s *sketch) newTaste() taste {
	t := taste{spliceD: s.between(4, 7), softD: s.between(16, 22), thimbled: s.chance(0.15)}
	if s.made.tucked() {
		t.spliceD = s.between(12, 18)
	}
	t.play, t.filled, t.room = s.between(1.03, 1.12), s.between(0.68, 0.87), s.between(1, 1.25)
	t.hookM = s.between(0.06, 0.11)
	return t
}

// leastAngle is the angle from horizontal of the flattest leg. Eyebolts are
// pulled near their axis.
func (s *sketch) leastAngle() float64 {
	if s.kind == "eyebolt" {
		return s.between(73, 82)
	}
	return s.between(47, 72)
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
	lower := s.between(0.8, 1)
	if s.bridle { // legs of one length
		right, lower = left, 1
	}
	switch n {
	case 1:
		s.points = [][3]float64{{x, y, height}}
	case 2:
		s.points = [][3]float64{{x - left, y, height}, {x + right, y, height * lower}}
	case 3:
		if s.bridle {
			left = math.Min(left, 0.3*length)
			right = math.Hypot(left, side)
		}
		s.points = [][3]float64{{x - left, y - side, height}, {x - left, y + side, height}, {x + right, y, height}}
	default: // points that mirror each other get lengths that suit one another however they are rounded
		z := height * s.between(0.5, 1)
		s.points = [][3]float64{{x - left, y - side, z}, {x + right, y - side, z}, {x + right, y + side, z}, {x - left, y + side, z}}
	}
	s.chooseDatum()
	for i := range s.points {
		s.points[i] = s.snapped(s.points[i])
	}
}

// chooseDatum measures from another place than the lowest corner at the left:
// the load may lie to either side of its datum.
func (s *sketch) chooseDatum() {
	length, width, height := s.size[0], s.size[1], s.size[2]
	switch s.r.IntN(10) {
	case 0, 1:
		s.move(s.snapped([3]float64{-length / 2, -width / 2, 0}))
	case 2:
		s.move([3]float64{-length, 0, 0})
	case 3:
		s.move([3]float64{0, -width, -height})
	}
}

func (s *sketch) move(by [3]float64) {
	s.hookZ += by[2]
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
// with room to spare. Where slings would be too short to be made, it hangs
// lower.
func (s *sketch) fit(angleDeg float64) {
	s.hookZ = math.Inf(-1)
	for _, p := range s.points {
		s.hookZ = max(s.hookZ, p[2]+0.6, p[2]+s.away(p)*math.Tan(radians(angleDeg)))
	}
	s.stretch()
	share := []float64{1, 1, 0.7, 0.7}[len(s.points)-1]
	s.equip(1.25 * s.massT * (1 + float64(s.tolerate)/100) * share / math.Sin(radians(angleDeg)))
	for s.shortBy() > 0 {
		s.hookZ += s.shortBy() + 0.05
		s.stretch()
	}
}

// stretch measures the legs from the hook to the attachments.
func (s *sketch) stretch() {
	s.legM = nil
	for _, p := range s.points {
		s.legM = append(s.legM, s.snap(math.Hypot(s.away(p), s.hookZ-p[2])))
	}
}

// equip picks gear for legs that pull with so many tonnes.
func (s *sketch) equip(pullT float64) {
	s.ratedT = math.Ceil(max(pullT, 1.5*s.massT))
	s.rope = s.ropeFor(pullT)
	s.low = s.fittingFor(max(pullT, s.rope.ratedT))
	s.inter = s.ringFor(1.2, 2*thimbleRopes*s.d(), 0)
	s.crane = s.craneHookFor()
	s.master = s.masterFor()
}

// shortBy is how much the shortest sling lacks for its eyes, splices and some
// plain rope.
func (s *sketch) shortBy() float64 {
	least := s.upperEye().lengthM + s.lowerEye().lengthM + (2*s.spliceD+24)*s.d()
	short := math.Inf(-1)
	for i := range s.points {
		short = max(short, least-s.slingM(i))
	}
	return short
}

func radians(deg float64) float64 { return deg * math.Pi / 180 }

// slingM is the length of a leg's sling.
func (s *sketch) slingM(i int) float64 {
	length := s.legM[i]
	if s.fittings {
		length -= s.low.lengthM
	}
	if s.grouped() {
		length -= s.inter.lengthM
	}
	return length
}

// grouped says that the legs hang from two intermediate links.
func (s *sketch) grouped() bool { return s.bridle && len(s.points) > 2 }
