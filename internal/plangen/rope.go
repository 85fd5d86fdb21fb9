package plangen

import (
	"math"
	"strings"

	"liftlint/internal/quantity"
)

// rope is a size of sling with its rated load as one leg.
type rope struct{ diameterMM, ratedT float64 }

// ropeMake is what the slings of a lift are made of, and how their eyes are.
type ropeMake struct {
	class, construction, core, grade, finish, lay, eye string
}

func (m ropeMake) tucked() bool { return !strings.HasSuffix(m.eye, "_sleeve") }

func (s *sketch) ropeMake() ropeMake {
	m := ropeMake{
		core:   s.pick("iwrc", "iwrc", "iwrc", "fiber"),
		finish: s.pick("bright", "bright", "bright", "galvanized"),
		lay:    s.pick("right_regular", "right_regular", "right_regular", "left_regular"),
		eye:    s.pick("flemish_sleeve", "flemish_sleeve", "flemish_sleeve", "hand_tucked", "hidden_tuck"),
	}
	if s.us {
		m.class, m.grade = s.pick("6x19", "6x37"), s.pick("ips", "eips", "eips", "eeips")
	} else {
		m.class, m.grade = s.pick("6x19", "6x36", "6x36", "8x36"), s.pick("1770", "1770", "1960")
	}
	m.construction = map[string]string{"6x19": "6x25 filler wire", "6x36": "6x36 Warrington Seale", "6x37": "6x36 Warrington Seale", "8x36": "8x36 Warrington Seale"}[m.class]
	return m
}

// perSquareT is the rated load of one leg in tonnes over the square of its
// diameter in millimeters. It stays below what practice on either side of the
// ocean gives: strength by EN 12385-4, of grade 1770 at most, or a little less
// than US tables (common practice); 0.9 of it for sleeves and 0.8 for tucks; a
// tenth less for galvanized rope; design factor 5.
func (m ropeMake) perSquareT() float64 {
	perSquare, metric := map[string]float64{
		"6x19 fiber": 0.330, "6x19 iwrc": 0.356, "6x36 fiber": 0.330, "6x36 iwrc": 0.356, "8x36 fiber": 0.293, "8x36 iwrc": 0.356,
	}[m.class+" "+m.core]
	perSquare *= 1.77 / quantity.StandardGravity
	if !metric || !strings.HasPrefix(m.grade, "1") {
		shortTons := map[string]float64{
			"ips fiber": 39, "ips iwrc": 43, "eips fiber": 45, "eips iwrc": 50, "eeips fiber": 49, "eeips iwrc": 55,
		}[m.grade+" "+m.core]
		perSquare = shortTons * shortTon / (25.4 * 25.4)
	}
	efficiency := 0.9
	if m.tucked() {
		efficiency = 0.8
	}
	if m.finish == "galvanized" {
		efficiency *= 0.9
	}
	return perSquare * efficiency / 5
}

// ropeFor is the thinnest rope that carries more than so many tonnes, or the
// thickest there is.
func (s *sketch) ropeFor(pullT float64) (r rope) {
	for _, r.diameterMM = range s.ropeSizes() {
		r.ratedT = s.markedDown(s.made.perSquareT() * r.diameterMM * r.diameterMM)
		if r.ratedT > pullT {
			break
		}
	}
	return r
}

func (s *sketch) ropeSizes() []float64 {
	if !s.us {
		return []float64{8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 32, 36, 40, 44, 48, 52, 56, 60}
	}
	sizes := []float64{6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 32, 36, 40}
	for i := range sizes {
		sizes[i] *= 25.4 / 16
	}
	return sizes
}

// d is the diameter of the rope in meters.
func (s *sketch) d() float64 { return s.rope.diameterMM / 1000 }

// thimbleRopes is the width, in rope diameters, that a thimbled eye takes
// beside others (common practice).
const thimbleRopes = 1.5

// eye is the inside of a sling's eye.
type eye struct {
	thimble         bool
	lengthM, widthM float64
}

// over is a thimbled eye that goes over something so wide.
func (s *sketch) over(bodyM float64) eye {
	width := s.grainUp(max(2.3*s.d(), 1.15*bodyM))
	return eye{true, s.grain(2 * width), width}
}

// upperEye goes over the crane hook or a link.
func (s *sketch) upperEye() eye {
	switch {
	case s.grouped():
		return s.over(s.inter.sectionM)
	case s.link:
		return s.over(s.master.sectionM)
	case s.thimbled:
		return s.over(s.crane.widthM)
	}
	hook := s.crane.widthM
	return eye{false, s.grainUp(max(s.softD*s.d(), 2.5*hook)), s.grainUp(max(8*s.d(), 1.2*hook))}
}

// lowerEye goes over a shackle's bow or a hook's eye.
func (s *sketch) lowerEye() eye { return s.over(s.low.bodyM) }

// markedDown is the rated load that a tag shows for so many tonnes: whole
// hundreds of pounds, or hundredths of a tonne.
func (s *sketch) markedDown(t float64) float64 {
	if s.us {
		return math.Floor(t*10/poundKg+1e-9) * poundKg / 10
	}
	return math.Floor(t*100+1e-9) / 100
}
