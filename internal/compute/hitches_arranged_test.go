package compute_test

import (
	"math"
	"strings"
	"testing"

	"liftlint/internal/capacity"
	"liftlint/internal/compute"
)

// inBaskets is a pipe of 600 mm in two baskets, plumb below a spreader.
const inBaskets = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 4 t
  center_of_gravity: {x: 5 m, y: 0 m, z: 0.3 m}
  bodies: [{id: pipe, kind: round, axis: along, start: {x: 0 m, y: 0 m, z: 0.3 m}, length: 10 m, diameter: 600 mm, surface: dry_steel}]
gear:
  - {id: W1, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 6 m, tag: {condition: legible, rated_load: 4 t, basket_rated_load: 8 t, hitch: vertical}}
  - {id: W2, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 6 m, tag: {condition: legible, rated_load: 4 t, basket_rated_load: 8 t, hitch: vertical}}
rigging:
  - from: hook
    legs:
      - {down: [W1], end: {kind: basket, round: {body: pipe, station: 4 m}}}
      - {down: [W2], end: {kind: basket, round: {body: pipe, station: 6 m}}}
`

// TestBaskets: the wrap is taken off the length; all four runs pull alike, and what
// leans along the pipe is the tangent of it in friction. The hook stands at h over
// the pipe's axis: each run is a tangent to a circle of 310 mm (the rope's middle),
// and in the pipe's direction it goes 1 m (geometry).
func TestBaskets(t *testing.T) {
	f := arrangement(t, inBaskets)
	const r = 0.31
	// h from the length: two tangents in the plane across, of sqrt(h^2 - r^2), and
	// the arc below them, each run leaning by 1 m along the pipe.
	reach := func(h float64) float64 {
		tangent := math.Sqrt(h*h - r*r)
		arc := 2 * r * (math.Pi - math.Acos(r/h))
		return 2*math.Hypot(tangent, 1) + arc
	}
	low, high := 0.5, 6.0
	for range 60 {
		if mid := (low + high) / 2; reach(mid) < 6 {
			low = mid
		} else {
			high = mid
		}
	}
	tangent := math.Sqrt(low*low - r*r)
	up := tangent * math.Sqrt(1-r*r/low/low) / math.Hypot(tangent, 1) // sine of the run's angle from horizontal
	near(t, "angle", figure(t, f, "leg/hook/1", "angle_from_horizontal_deg"), math.Asin(up)*180/math.Pi, 0.2)
	near(t, "tension of a run", figure(t, f, "leg/hook/1", "tension_n"), 4000*gravity/4/up, 0.005*4000*gravity)
	near(t, "bend", figure(t, f, "hitch/hook/1", "body_over_rope_ratio"), 30, 1e-9)
	near(t, "unlike forces", figure(t, f, "hitch/hook/1", "force_ratio"), 1, 1e-3)
	near(t, "what friction holds", figure(t, f, "hitch/hook/1", "friction_holds_ratio"), math.Exp(0.15*2*(math.Pi-math.Acos(r/low))), 0.01)
	rise := tangent * math.Sqrt(1-r*r/low/low) // of a run over its lean of 1 m
	near(t, "friction along", figure(t, f, "hitch/hook/1", "friction_needed_over_given_ratio"), 1/rise/0.15, 0.02)
	near(t, "rated for each run", figure(t, f, "part/hook/1/W1", "rated_load_n"), 4000*gravity, 1)
	near(t, "used", figure(t, f, "part/hook/1/W1", "used_ratio"), 1/up/4, 0.01)
}

// TestThinBasket: round a body of under 25 rope diameters the tag's rating goes down
// with what the bend leaves.
func TestThinBasket(t *testing.T) {
	f := arrangement(t, inBaskets, "diameter: 600 mm", "diameter: 200 mm")
	share := (1 - 0.5/math.Sqrt(10)) / (1 - 0.5/math.Sqrt(25))
	near(t, "rated for each run", figure(t, f, "part/hook/1/W1", "rated_load_n"), 4000*gravity*share, 1)
	none := arrangement(t, inBaskets, ", basket_rated_load: 8 t", "")
	if got := labels(lacks(t, none, "part/hook/1/W1", "used_ratio")); !strings.Contains(got, "basket hitch") {
		t.Errorf("waits for %q", got)
	}
}

// choked is a column of 300 mm on one choker.
const choked = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 2 t
  intended_attitude: {pitch: PITCH deg}
  center_of_gravity: {x: 4 m, y: 0 m, z: -50 mm}
  bodies: [{id: shaft, kind: round, axis: along, start: {x: 0 m, y: 0 m, z: 0 m}, length: 9 m, diameter: 300 mm, surface: dry_steel}]
gear:
  - {id: C, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 5 m, eyes: {upper: {length: 400 mm}, lower: {kind: flemish_sleeve, length: EYE mm, splice_length: 100 mm}}, tag: {condition: legible, rated_load: 4 t, choker_rated_load: 3 t, hitch: vertical}}
rigging:
  - {from: hook, legs: [{down: [C], end: {kind: choke, round: {body: shaft, station: STATION m}}}]}
`

// TestChoker: straight across it the choke sets itself at 135 deg, where the whole
// choker rating holds; along the body, as on a column that stands, at a right angle,
// where 87 % does (table of choke angles, common practice).
func TestChoker(t *testing.T) {
	f := arrangement(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300")
	near(t, "choke angle", figure(t, f, "hitch/hook/1", "choke_angle_deg"), 135, 1e-6)
	near(t, "rated", figure(t, f, "part/hook/1/C", "rated_load_n"), 3000*gravity, 1)
	near(t, "tension", figure(t, f, "leg/hook/1", "tension_n"), 2000*gravity, 1)
	standing := arrangement(t, choked, "PITCH", "90", "STATION", "7", "EYE", "300")
	// Held at its surface, 160 mm from the axis at the rope's middle, it leans by
	// atan((160 + 50) / 3000), and the pull is that much off the axis.
	lean := math.Atan(0.21 / 3)
	near(t, "lean", figure(t, standing, "load", "tilt_deg"), lean*180/math.Pi, 0.01)
	near(t, "choke angle", figure(t, standing, "hitch/hook/1", "choke_angle_deg"), math.Acos(-math.Sin(lean)*sin(45))*180/math.Pi, 0.01)
	near(t, "rated", figure(t, standing, "part/hook/1/C", "rated_load_n"), 0.87*3000*gravity, 1)
	fallen, _ := computeText(t, changed(t, choked, "PITCH", "90", "STATION", "3", "EYE", "300"))
	if hangs := fallen.Document.Loads[0].Hangs; hangs == nil || *hangs == "steady" {
		t.Errorf("held below its center of gravity, a column hangs %v", hangs)
	}
}

// TestWhereAChokeLands: the loop of a choke at 135 deg round a circle of radius R is
// 2 R and three quarters of it (geometry): of 320 mm, the rope's middle, 1.07 m.
func TestWhereAChokeLands(t *testing.T) {
	const loop = 0.16 * (2 + 1.5*math.Pi)
	for eye, want := range map[string]string{"900": "on_rope", "1000": "on_eye_or_splice"} {
		f := arrangement(t, choked, "PITCH", "0", "STATION", "4", "EYE", eye)
		if got, _ := find(t, f, "hitch/hook/1").Field("choke_lands"); got != want {
			t.Errorf("with an eye of %s mm in a loop of %.3f m: %v", eye, loop, got)
		}
	}
}

// TestDoubledGrommet: laid double it carries twice its rating if its parts share
// alike, 0.55 over 0.55 x 0.55 of it at 45 to 55 for each bend (marine guideline,
// read).
func TestDoubledGrommet(t *testing.T) {
	const plan = `liftlint: 1
lift: {id: A, title: A}
crane: {hook: {body_width: 400 mm}}
load: {mass: 10 t, center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}, attachments: [{id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m, thickness: 400 mm, hole_axis: across}]}
gear:
  - {id: G, kind: grommet, diameter: 60 mm, core: iwrc, circumference: 8 m, tag: {condition: legible, rated_load: 12 t, hitch: vertical}}
rigging:
  - {from: hook, legs: [{down: [G], DOUBLED end: {kind: to, at: A}}]}
`
	f := arrangement(t, plan, "DOUBLED", "")
	near(t, "length", figure(t, f, "leg/hook/1", "length_m"), 4, 1e-9)
	near(t, "rated", figure(t, f, "part/hook/1/G", "rated_load_n"), 12000*gravity, 1)
	for practice, times := range map[capacity.PartPractice]float64{capacity.EqualParts: 2, capacity.UnevenParts: 1 / 0.55} {
		c := conditions()
		c.Parts = practice
		f, _ := compute.Facts(decode(t, []byte(changed(t, plan, "DOUBLED", "doubled: true,"))), c)
		near(t, "length", figure(t, f, "leg/hook/1", "length_m"), 2, 1e-9)
		near(t, "rated laid double", figure(t, f, "part/hook/1/G", "rated_load_n"), times*12000*gravity, 1)
	}
}

// TestGrommetBentWhereItBears: rated for bends of five times its body (common
// practice), round a hook of twice that it has (1 - 0.5/sqrt 2) / (1 - 0.5/sqrt 5) of
// it left (marine guideline for what bends take, read); a hook that is not known, and
// one thinner than the body, leave nothing to say.
func TestGrommetBentWhereItBears(t *testing.T) {
	const plan = `liftlint: 1
lift: {id: A, title: A}
load: {mass: 10 t, center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}, attachments: [{id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m, thickness: 300 mm, hole_axis: across}]}
crane: {hook: {WIDTH}}
gear:
  - {id: G, kind: grommet, diameter: 60 mm, core: iwrc, circumference: 8 m, tag: {condition: legible, rated_load: 12 t, hitch: vertical}}
rigging:
  - {from: hook, legs: [{down: [G], end: {kind: to, at: A}}]}
`
	f := arrangement(t, plan, "WIDTH", "body_width: 120 mm")
	left := (1 - 0.5/math.Sqrt(2)) / (1 - 0.5/math.Sqrt(5))
	near(t, "rated", figure(t, f, "part/hook/1/G", "rated_load_n"), left*12000*gravity, 1)
	if got := labels(lacks(t, arrangement(t, plan, "WIDTH", "latch: works"), "part/hook/1/G", "rated_load_n")); !strings.Contains(got, "width of the crane hook") {
		t.Errorf("waits for %q", got)
	}
	lacks(t, arrangement(t, plan, "WIDTH", "body_width: 50 mm"), "part/hook/1/G", "used_ratio")
}
