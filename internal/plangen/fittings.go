package plangen

import "math"

// fitting joins a leg to its attachment: a shackle or a hook.
type fitting struct {
	lengthM  float64 // bearing to bearing
	bodyM    float64 // of the bow, or of the hook's own eye: what the sling goes over
	throughM float64 // the pin, or the hook's section at its bowl: what goes through the attachment
	openM    float64 // jaw or throat
	widthM   float64 // inside the bow
	ratedT   float64
	marked   float64 // a shackle's rated load as its body has it
}

// shackleSize is a size of shackle in inches, rated in short tons (trade
// table, common practice).
type shackleSize struct{ nominal, pin, jaw, rated float64 }

func shackleSizes() []shackleSize {
	return []shackleSize{
		{0.375, 0.44, 0.66, 1}, {0.4375, 0.50, 0.75, 1.5}, {0.5, 0.63, 0.81, 2}, {0.625, 0.75, 1.06, 3.25}, {0.75, 0.88, 1.25, 4.75},
		{0.875, 1, 1.44, 6.5}, {1, 1.13, 1.69, 8.5}, {1.125, 1.25, 1.81, 9.5}, {1.25, 1.38, 2.03, 12}, {1.375, 1.5, 2.25, 13.5},
		{1.5, 1.63, 2.38, 17}, {1.75, 2, 2.88, 25}, {2, 2.25, 3.25, 35}, {2.5, 2.75, 4.13, 55},
	}
}

// fittingFor is a fitting for so many tonnes and for the rope.
func (s *sketch) fittingFor(ratedT float64) fitting {
	if s.hooks {
		return s.hookFor(ratedT)
	}
	var size shackleSize
	for _, size = range shackleSizes() {
		if size.rated*shortTon >= ratedT && size.nominal*inchM >= s.d() {
			break
		}
	}
	in := func(inches float64) float64 { return s.grain(inches * inchM) }
	return fitting{
		lengthM: s.snap(3.3 * s.room * size.nominal * inchM), bodyM: in(size.nominal),
		throughM: in(size.pin), openM: in(size.jaw), widthM: in(2.7 * size.nominal),
		ratedT: size.rated * shortTon, marked: size.rated,
	}
}

// hookFor is a sling hook of believable proportions.
func (s *sketch) hookFor(ratedT float64) fitting {
	root := math.Sqrt(ratedT)
	return fitting{
		lengthM: s.snap(0.06 + 0.06*s.room*root), bodyM: s.grainUp(max(0.009*root, 1.1*s.d())),
		throughM: s.grain(0.008 + 0.014*root), openM: s.grain(0.012 + 0.014*s.room*root), ratedT: math.Ceil(ratedT),
	}
}

// ring is a link.
type ring struct{ lengthM, widthM, sectionM, ratedT float64 }

// ringFor is a link of a section so many times as thick as the rope, that
// takes so much side by side and goes over something so wide.
func (s *sketch) ringFor(sections, sideBySideM, overM float64) ring {
	width := s.grainUp(s.room * max(sideBySideM/0.75, 1.4*overM))
	return ring{lengthM: s.snap(1.9 * width), widthM: width, sectionM: s.grainUp(sections * s.d())}
}

// masterFor is the master link over the crane hook.
func (s *sketch) masterFor() ring {
	sideBySide := float64(len(s.points)) * thimbleRopes * s.d()
	if s.grouped() {
		sideBySide = 2 * s.inter.sectionM
	}
	m := s.ringFor(1.4, sideBySide, s.crane.widthM)
	m.ratedT = s.ratedT
	if s.bridle {
		m.ratedT = math.Ceil(max(s.ratedT, 1.01*s.assemblyAtT(60)))
		s.inter.ratedT = math.Ceil(max(1.62*s.rope.ratedT, s.ratedT))
	}
	return m
}

// tagAngle is the angle from horizontal on the tag of a bridle: that of its legs
// or a flatter one.
func (s *sketch) tagAngle() int {
	flattest := 90.0
	for i := range s.points {
		flattest = min(flattest, s.fromHorizontal(i))
	}
	for _, deg := range []int{60, 45} {
		if flattest > float64(deg)+tagMarginDeg {
			return deg
		}
	}
	return 30
}

// tagMarginDeg is by how much links and stretch may make legs flatter than drawn.
const tagMarginDeg = 3

// assemblyT is what the bridle's tag rates it for: two legs counted of two,
// three of three and of four.
func (s *sketch) assemblyT() float64 { return s.assemblyAtT(s.tagAngle()) }

func (s *sketch) assemblyAtT(deg int) float64 {
	return s.markedDown(s.rope.ratedT * float64(min(len(s.points), 3)) * math.Sin(radians(float64(deg))))
}

// craneHook is the hook that all hangs in.
type craneHook struct{ widthM, throatM float64 }

// craneHookFor is a hook wide enough for the eyes of two ropes, or for the link's section,
// to lie in it.
func (s *sketch) craneHookFor() craneHook {
	ropes := 3.2
	if s.thimbled {
		ropes *= thimbleRopes
	}
	width := s.grain(max(s.hookM, ropes*s.d()))
	return craneHook{width, s.grain(0.9 * s.room * width)}
}
