package plangen

import (
	"math"
	"strings"
	"testing"

	"liftlint/internal/quantity"
)

// TestProportions: what goes together fits, whatever is drawn; limits are those
// of common practice, a little inside them.
func TestProportions(t *testing.T) {
	for seed := range uint64(500) {
		s := newSketch(stream(seed, lifts))
		hole, thickness := s.hole(s.kind != "padeye")
		d, upper, lower := s.d(), s.upperEye(), s.lowerEye()
		within := func(what string, got, least, most float64) {
			t.Helper()
			if !(got >= least-1e-9 && got <= most+1e-9) {
				t.Errorf("seed %d: %s is %g, not within %g and %g", seed, what, got, least, most)
			}
		}
		if s.kind == "padeye" {
			within("hole over pin", hole/s.low.throughM, 1, 1.2)
		}
		within("hole over what goes through", hole/s.low.throughM, 1, 2)
		within("plate in its jaw", thickness/s.low.openM, 0.65, 0.9)
		within("body over rope", s.low.bodyM/d, 1, 4)
		within("lower thimble over body", lower.widthM/s.low.bodyM, 1.05, 4)
		within("fitting over rope", s.low.ratedT/s.rope.ratedT, 1, 4)
		within("crane hook over rope", s.crane.widthM/d, 3, 15)
		if !upper.thimble {
			within("soft eye over hook", upper.lengthM/s.crane.widthM, 2.43, 20)
		}
		if s.link {
			within("link over the hook", s.master.widthM/s.crane.widthM, 1.3, 10)
			within("link through the throat", s.master.sectionM/s.crane.throatM, 0.1, 0.8)
		}
		if s.link && !s.grouped() {
			within("legs side by side", thimbleRopes*d*float64(len(s.points))/s.master.widthM, 0.1, 0.8)
		}
		if s.grouped() {
			within("intermediate link over one leg", s.inter.ratedT/s.rope.ratedT, 1.6, 10)
			within("two legs side by side", 2*thimbleRopes*d/s.inter.widthM, 0.3, 0.8)
			within("intermediate link on the master link", s.master.sectionM/s.inter.widthM, 0.1, 0.8)
		}
		for i := range s.points {
			clear := s.slingM(i) - upper.lengthM - lower.lengthM - 2*s.spliceD*d
			within("plain rope", clear/d, 20, 1e4)
			within("length of legs", s.legM[i]/math.Hypot(s.away(s.points[i]), s.hookZ-s.points[i][2]), 0.99, 1.01)
		}
		for k, size := range s.size {
			within("center of gravity", math.Abs(s.center[k]), 0, size)
		}
	}
}

// TestPlatesLieInThePull: a leg's pull in plan lies at right angles to the
// hole that its plate is turned by.
func TestPlatesLieInThePull(t *testing.T) {
	seen := map[string]int{}
	for seed := range uint64(300) {
		s := newSketch(stream(seed, lifts))
		for i, p := range s.points {
			fields := mapOf("", s.turned(i)...)
			axis, turn := fields.at("hole_axis").text, 0.0
			if f := fields.at("turned_in_plan"); f != nil {
				a, err := quantity.ParseAngle(f.text)
				if err != nil {
					t.Fatal(err)
				}
				turn = float64(a)
			}
			seen[axis]++
			sin, cos := math.Sincos(radians(turn))
			hole := [2]float64{cos, sin}
			if axis == "across" {
				hole = [2]float64{-sin, cos}
			}
			out := hole[0]*(s.center[0]-p[0]) + hole[1]*(s.center[1]-p[1])
			if math.Abs(out) > 0.001*s.away(p) || turn < -90 || turn > 90 {
				t.Errorf("seed %d: leg %d pulls %g m of %g m out of a plate turned by %g deg from %s", seed, i, out, s.away(p), turn, axis)
			}
		}
	}
	if seen["along"] < 100 || seen["across"] < 100 {
		t.Error(seen)
	}
}

// TestRatingsOfRope: by 18 mm rope of grade 1770 with steel core and sleeves a
// leg is rated 3.7 t (EN 13414-1:2003, Table 4), by the formula 3.75 t; 1/2 in
// extra improved plow steel, hand-tucked, breaks at 13.3 short tons (trade
// tables), of which 0.86 over 5 is 2.29.
func TestRatingsOfRope(t *testing.T) {
	en := ropeMake{class: "6x36", core: "iwrc", grade: "1770", eye: "flemish_sleeve"}.perSquareT() * 18 * 18
	us := ropeMake{class: "6x19", core: "iwrc", grade: "eips", eye: "hand_tucked"}.perSquareT() * 12.7 * 12.7 / shortTon
	if en < 3.65 || en > 3.76 || us < 1.95 || us > 2.29 {
		t.Errorf("%g t, %g short tons", en, us)
	}
	for classes, grades := range map[string]string{"6x19 6x36 8x36": "1770 1960", "6x19 6x37": "ips eips eeips"} {
		for i := range 6 {
			class, grade := strings.Fields(classes)[i%len(strings.Fields(classes))], strings.Fields(grades)[i%len(strings.Fields(grades))]
			bright := ropeMake{class: class, core: "fiber", grade: grade, finish: "bright", eye: "flemish_sleeve"}
			galvanized, steel := bright, bright
			galvanized.finish, steel.core = "galvanized", "iwrc"
			if !(bright.perSquareT() > 0.005 && galvanized.perSquareT() < bright.perSquareT() && bright.perSquareT() < steel.perSquareT()) {
				t.Errorf("%s %s: bright %g, galvanized %g, with steel core %g", class, grade, bright.perSquareT(), galvanized.perSquareT(), steel.perSquareT())
			}
		}
	}
}
