package compute_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"liftlint/internal/facts"
)

// sin, cos and tan of degrees.
func sin(deg float64) float64 { return math.Sin(deg * math.Pi / 180) }
func cos(deg float64) float64 { return math.Cos(deg * math.Pi / 180) }
func tan(deg float64) float64 { return math.Tan(deg * math.Pi / 180) }

// thickRope hardly stretches, so that closed forms hold to a few parts in ten
// thousand.
const thickRope = "kind: wire_rope_sling, core: iwrc, diameter: 60 mm, mass: 0.1 kg"

// heavy is the same with another mass.
func heavy(mass string) string { return strings.ReplaceAll(thickRope, "0.1 kg", mass) }

// underSpreader is a load of 8 t on two plumb slings below a spreader of 4 m that
// hangs from two legs.
const underSpreader = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 8 t
  center_of_gravity: {x: 2 m, y: 0 m, z: 0 m}
  attachments:
    - {id: L, kind: padeye, x: 0 m, y: 0 m, z: 1 m, hole_axis: across}
    - {id: R, kind: padeye, x: 4 m, y: 0 m, z: 1 m, hole_axis: across}
gear:
  - {id: T1, THICK, length: 4 m}
  - {id: T2, THICK, length: 4 m}
  - {id: D1, THICK, length: 3 m}
  - {id: D2, THICK, length: 3 m}
  - {id: SB, kind: spreader_beam, mass: 1 t, rated_load: 10 t, rated_compression: 100 kN, rated_bending_moment: 50 kN m, least_top_angle_from_horizontal: 60 deg,
     points: [{id: tl, x: -2 m, y: 0 m, z: 0 m, hole_axis: across}, {id: tr, x: 2 m, y: 0 m, z: 0 m, hole_axis: across}, {id: bl, x: -2 m, y: 0 m, z: 0 m}, {id: br, x: 2 m, y: 0 m, z: 0 m}]}
rigging:
  - {from: hook, legs: [{down: [T1], end: {kind: to, at: SB.tl}}, {down: [T2], end: {kind: to, at: SB.tr}}]}
  - {from: SB.bl, legs: [{down: [D1], end: {kind: to, at: L}}]}
  - {from: SB.br, legs: [{down: [D2], end: {kind: to, at: R}}]}
`

// written fills a plan in, with pairs of text to change.
func arrangement(t testing.TB, text string, pairs ...string) *facts.Facts {
	t.Helper()
	f, troubles := computeText(t, changed(t, text, pairs...))
	if len(troubles) > 0 {
		t.Fatal(troubles)
	}
	return f
}

func changed(t testing.TB, text string, pairs ...string) string {
	t.Helper()
	text = strings.ReplaceAll(text, "THICK", thickRope)
	text = strings.ReplaceAll(text, "HEAVY", heavy("100 kg"))
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("nothing reads %q", pairs[i])
		}
		text = strings.ReplaceAll(text, pairs[i], pairs[i+1])
	}
	return text
}

// TestSpreader: top tension W/(2 sin b) and compression W/(2 tan b), the weight
// of the beam among W (statics); plumb slings carry half the load each.
func TestSpreader(t *testing.T) {
	f := arrangement(t, underSpreader)
	b := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
	near(t, "angle of the top legs", b, 60, 0.05)
	w := 9000 * gravity
	near(t, "top tension", figure(t, f, "leg/hook/1", "tension_n"), w/2/sin(b), 1e-3*w)
	near(t, "tension of a drop", figure(t, f, "leg/SB.bl/1", "tension_n"), 4000*gravity, 1e-3*w)
	near(t, "compression", figure(t, f, "beam/SB", "compression_n"), w/2/tan(b), 1e-3*w)
	near(t, "compression over rated", figure(t, f, "beam/SB", "compression_over_rated_ratio"), w/2/tan(b)/100e3, 1e-3)
	// The beam's own weight at its middle bends it by W L/4, its ends being held.
	near(t, "bending", figure(t, f, "beam/SB", "bending_nm"), 1000*gravity*4/4, 50)
	near(t, "load of the beam", figure(t, f, "part/hook/1 and hook/2/SB", "load_n"), 8000*gravity, 1e-3*w)
	near(t, "load on the hook", figure(t, f, "hook/hook", "load_n"), w, 5)
	near(t, "pull on a top point", figure(t, f, "attachment/SB.tl", "pull_n"), w/2/sin(b), 1e-3*w)
	near(t, "thrust into the load", figure(t, f, "load", "thrust_n"), 0, 1)
}

// TestRiggingBelowABeamIsHeldAbove: masses of what hangs from a beam are in the
// force of its upper legs, and each once.
func TestRiggingBelowABeamIsHeldAbove(t *testing.T) {
	f := arrangement(t, underSpreader, "id: D1, "+thickRope, "id: D1, "+heavy("300 kg"), "id: D2, "+thickRope, "id: D2, "+heavy("300 kg"), "id: T1, "+thickRope, "id: T1, "+heavy("50 kg"))
	b := figure(t, f, "leg/hook/1", "angle_from_horizontal_deg")
	near(t, "top tension", figure(t, f, "leg/hook/1", "tension_n"), 9600*gravity/2/sin(b), 100)
	near(t, "load of the top sling", figure(t, f, "part/hook/1/T1", "load_n"), 9600*gravity/2/sin(b)+50*gravity, 100)
	near(t, "load on the hook", figure(t, f, "hook/hook", "load_n"), 9650*gravity, 5)
	near(t, "load of the beam", figure(t, f, "part/hook/1 and hook/2/SB", "load_n"), 8600*gravity, 100)
}

// onePin is a lifting beam on one pin, 0.5 m above its lower points.
const onePin = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 6 t
  center_of_gravity: {x: CENTER m, y: 0 m, z: 0 m}
  attachments:
    - {id: L, kind: padeye, x: -1.5 m, y: 0 m, z: 0.2 m, hole_axis: across}
    - {id: R, kind: padeye, x: 1.5 m, y: 0 m, z: 0.2 m, hole_axis: across}
gear:
  - {id: T, THICK, length: 3 m}
  - {id: D1, THICK, length: 2 m}
  - {id: D2, THICK, length: 2 m}
  - {id: LB, kind: lifting_beam, mass: 1 kg,
     points: [{id: top, x: 0 m, y: 0 m, z: 0.5 m}, {id: left, x: -1.5 m, y: 0 m, z: 0 m}, {id: right, x: 1.5 m, y: 0 m, z: 0 m}]}
rigging:
  - {from: hook, legs: [{down: [T], end: {kind: to, at: LB.top}}]}
  - {from: LB.left, legs: [{down: [D1], end: {kind: to, at: L}}]}
  - {from: LB.right, legs: [{down: [D2], end: {kind: to, at: R}}]}
`

// TestLiftingBeam: bent by W L/4 under its pin; a load that is off its middle by e
// tilts it by atan(e/(H - h)) with H the pin above the lower points and h the
// center of gravity above the points of the load, here 0.2 m below (statics).
func TestLiftingBeam(t *testing.T) {
	f := arrangement(t, onePin, "CENTER", "0")
	near(t, "bending", figure(t, f, "beam/LB", "bending_nm"), 6000*gravity*3/4, 100)
	near(t, "compression", figure(t, f, "beam/LB", "compression_n"), 0, 10)
	// What hangs from its ends bends it there, and not in its middle.
	f = arrangement(t, onePin, "CENTER", "0", "id: D1, "+thickRope, "id: D1, "+heavy("500 kg"), "id: D2, "+thickRope, "id: D2, "+heavy("500 kg"))
	near(t, "bending with heavy drops", figure(t, f, "beam/LB", "bending_nm"), (3000+500)*gravity*1.5, 100)
	const e = 0.05
	f = arrangement(t, onePin, "CENTER", fmt.Sprint(e))
	near(t, "tilt of the beam", figure(t, f, "beam/LB", "tilt_deg"), math.Atan(e/(0.5+0.2))*180/math.Pi, 0.05)
}

// onTwoHooks is a girder on two hooks, each over its point.
const onTwoHooks = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 20 t
  center_of_gravity: {x: 8 m, y: 0 m, z: -1 m}
  attachments:
    - {id: W, kind: padeye, x: 0 m, y: 0 m, z: 0 m, hole_axis: across}
    - {id: E, kind: padeye, x: 18 m, y: 0 m, z: 0 m, hole_axis: across}
hooks: [{id: west}, {id: east}]
gear:
  - {id: S1, HEAVY, length: 6 m}
  - {id: S2, HEAVY, length: 6 m}
rigging:
  - {from: west, legs: [{down: [S1], end: {kind: to, at: W}}]}
  - {from: east, legs: [{down: [S2], end: {kind: to, at: E}}]}
PHASES
`

// TestTwoHooks: shares by moments about the line of the points. With the center of
// gravity z below that line and the load at the slope a, the higher hook gains
// W (z/L) tan a; above the line the lower one does (statics).
func TestTwoHooks(t *testing.T) {
	w := 20000 * gravity
	level := arrangement(t, onTwoHooks, "PHASES", "")
	near(t, "west hook", figure(t, level, "leg/west/1", "tension_n"), w*10/18, 1e-3*w)
	near(t, "west hook's load", figure(t, level, "hook/west", "load_n"), w*10/18+100*gravity, 1e-3*w)
	near(t, "east hook", figure(t, level, "leg/east/1", "tension_n"), w*8/18, 1e-3*w)
	near(t, "lean of the west hook", figure(t, level, "hook/west", "lean_from_plumb_deg"), 0, 0.01)
	for _, a := range []float64{4, -4} {
		sloped := arrangement(t, onTwoHooks, "PHASES", fmt.Sprintf("phases: [{name: sloped, pitch: %g deg}]", a))
		gain := w * 1 / 18 * tan(a)
		near(t, "tilt from what is meant", figure(t, sloped, "load", "tilt_deg"), 0, 0.01)
		near(t, "east hook, the higher with a positive pitch", figure(t, sloped, "leg/east/1", "tension_n"), w*8/18+gain, 1e-3*w)
		near(t, "west hook", figure(t, sloped, "leg/west/1", "tension_n"), w*10/18-gain, 1e-3*w)
	}
}

// turnedUp is a vessel that two hooks turn from lying to standing.
const turnedUp = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 30 t
  center_of_gravity: {x: 5 m, y: 0 m, z: 0 m}
  attachments:
    - {id: H, kind: padeye, x: 12 m, y: 0 m, z: 0 m, hole_axis: across}
    - {id: T, kind: padeye, x: 0 m, y: 0 m, z: 1.2 m, hole_axis: across}
hooks: [{id: head}, {id: tail}]
gear:
  - {id: S1, THICK, length: 6 m}
  - {id: S2, THICK, length: 6 m}
rigging:
  - {from: head, legs: [{down: [S1], end: {kind: to, at: H}}]}
  - {from: tail, legs: [{down: [S2], end: {kind: to, at: T}}]}
phases:
  - {name: turning, pitch: 0 deg, until: 75 deg, step: 15 deg}
  - {name: upright, pitch: 90 deg, released: [tail]}
`

// TestTurningUp: at the pitch a the ropes are plumb, and the tail carries W times
// the level distance of the center of gravity from the head's point over that of
// the tail's (moments). Level coordinates are x cos a - z sin a.
func TestTurningUp(t *testing.T) {
	f := arrangement(t, turnedUp)
	w := 30000 * gravity
	level := func(x, z, a float64) float64 { return x*cos(a) - z*sin(a) }
	most := 0.0
	for a := 0.0; a <= 75; a += 15 {
		head, center, tail := level(12, 0, a), level(5, 0, a), level(0, 1.2, a)
		share := w * (head - center) / (head - tail)
		most = max(most, share)
		at := fmt.Sprintf("position/turning at %g deg/tail/1", a)
		near(t, at, figure(t, f, at, "tension_n"), share, 2e-3*w)
		near(t, "head", figure(t, f, fmt.Sprintf("position/turning at %g deg/head/1", a), "tension_n"), w-share, 2e-3*w)
	}
	near(t, "the tail at its worst", figure(t, f, "leg/tail/1", "tension_n"), most, 2e-3*w)
	near(t, "the head at its worst", figure(t, f, "leg/head/1", "tension_n"), w, 1e-3*w)
	if phase, _ := find(t, f, "leg/head/1").Field("tension_phase"); phase != "upright" {
		t.Errorf("the head carries the most in %v", phase)
	}
	if released, _ := find(t, f, "position/upright/tail/1").Field("released"); released != true {
		t.Error("the tail is not released in the end")
	}
	if n, _ := find(t, f, "load").Field("phases"); n != 7 {
		t.Errorf("%v positions", n)
	}
}

// overSheave is a load on one sling that runs over a block to two points.
const overSheave = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 4 t
  center_of_gravity: {x: 1 m, y: 0 m, z: -2 m}
  attachments:
    - {id: C, kind: padeye, x: 0 m, y: 0 m, z: 0 m, hole_axis: across}
    - {id: D, kind: padeye, x: 2 m, y: 0 m, z: 0 m, hole_axis: across}
gear:
  - {id: BLK, kind: sheave_block, length: 400 mm, sheave_diameter: 900 mm, rated_load: 6 t, mass: 0.1 kg}
  - {id: S, THICK, length: 5 m, tag: {condition: legible, rated_load: 10 t, hitch: vertical}}
rigging:
  - {from: hook, by: [BLK], legs: [{down: [S], end: {kind: runs_to, at: [C, D]}}]}
`

// TestOverASheave: both runs pull alike, W/(2 sin b) in the middle (statics).
func TestOverASheave(t *testing.T) {
	f := arrangement(t, overSheave)
	b := math.Acos(1/2.5) * 180 / math.Pi
	near(t, "angle", figure(t, f, "leg/hook/1", "angle_from_horizontal_deg"), b, 0.05)
	near(t, "tension", figure(t, f, "leg/hook/1", "tension_n"), 4000*gravity/2/sin(b), 20)
	near(t, "bend", figure(t, f, "hitch/hook/1", "body_over_rope_ratio"), 15, 1e-9)
	near(t, "load of the block", figure(t, f, "part/hook/BLK", "load_n"), 4000*gravity, 5)
	// The strength of the rope is not known, so that the bend takes its share of the
	// tag: (1 - 0.5/sqrt 15) over the same of 25, at which ratings are stated.
	share := (1 - 0.5/math.Sqrt(15)) / (1 - 0.5/math.Sqrt(25))
	near(t, "rated over the sheave", figure(t, f, "part/hook/1/S", "rated_load_n"), 10000*gravity*share, 1)
}

// TestOpenLength: a sling without a length reaches from the hook at the height that
// is given to its point, the load level: 3 m along, 4 m up, less the shackle.
func TestOpenLength(t *testing.T) {
	const plan = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 4 t
  center_of_gravity: {x: 2 m, y: 0 m, z: 0 m}
  attachments:
    - {id: L, kind: padeye, x: -1 m, y: 0 m, z: 1 m, hole_axis: across}
    - {id: R, kind: padeye, x: 3 m, y: 0 m, z: 1 m, hole_axis: across}
gear:
  - {id: S1, kind: wire_rope_sling, core: iwrc, diameter: 60 mm}
  - {id: S2, kind: wire_rope_sling, core: iwrc, diameter: 60 mm}
  - {id: K1, kind: shackle, inside_length: 100 mm}
rigging:
  - {from: hook, height_above_datum: 5 m, legs: [{down: [S1, K1], end: {kind: to, at: L}}, {down: [S2], end: {kind: to, at: R}}]}
`
	f := arrangement(t, plan)
	near(t, "first sling", figure(t, f, "leg/hook/1", "length_needed_m"), 5-0.1, 1e-6)
	near(t, "second sling", figure(t, f, "leg/hook/2", "length_needed_m"), math.Hypot(1, 4), 1e-6)
	near(t, "tilt", figure(t, f, "load", "tilt_deg"), 0, 0.05)
	near(t, "hook above the points", figure(t, f, "load", "hook_above_points_m"), 4, 0.02)
	near(t, "level length", figure(t, f, "leg/hook/1", "level_length_m"), 5, 0.02)
	testOpenAboveABeam(t)
	waits := labels(lacks(t, arrangementWaiting(t, plan, "height_above_datum: 5 m, ", ""), "leg/hook/1", "tension_n"))
	if !strings.Contains(waits, "S1's length") {
		t.Errorf("without the height it waits for %q", waits)
	}
}

func arrangementWaiting(t testing.TB, text string, pairs ...string) *facts.Facts {
	t.Helper()
	f, _ := computeText(t, changed(t, text, pairs...))
	return f
}

// testOpenAboveABeam: the hook stands plumb over the load of 3 t at x = 3.9 m and the
// beam of 2.5 t at 3 m together, at (3 x 3.9 + 2.5 x 3) / 5.5 m.
func testOpenAboveABeam(t *testing.T) {
	t.Helper()
	f := arrangement(t, underSpreader, "mass: 8 t\n  center_of_gravity: {x: 2 m", "mass: 3 t\n  center_of_gravity: {x: 2.9 m", "mass: 1 t, rated", "mass: 2.5 t, rated",
		"id: T1, "+thickRope+", length: 4 m", "id: T1, "+thickRope, "id: T2, "+thickRope+", length: 4 m", "id: T2, "+thickRope,
		"{from: hook, legs", "{from: hook, height_above_datum: 7 m, legs")
	x := (3*2.9 + 2.5*2) / 5.5
	near(t, "first sling", figure(t, f, "leg/hook/1", "length_needed_m"), math.Hypot(x, 3), 0.01)
	near(t, "second sling", figure(t, f, "leg/hook/2", "length_needed_m"), math.Hypot(4-x, 3), 0.01)
	near(t, "tilt", figure(t, f, "load", "tilt_deg"), 0, 0.1)
}
