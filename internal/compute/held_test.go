package compute_test

import (
	"strings"
	"testing"

	"liftlint/internal/facts"
)

// basketOnPoints is a drum of 4 t in a basket between two points of a beam, whose
// far end hangs from a shackle.
const basketOnPoints = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 4 t
  center_of_gravity: {x: 0 m, y: 0 m, z: -20 mm}
  bodies: [{id: drum, kind: round, axis: across, start: {x: 0 m, y: -1 m, z: 0 m}, length: 2 m, diameter: 1 m, surface: dry_steel}]
gear:
  - {id: T1, THICK, length: 3 m}
  - {id: T2, THICK, length: 3 m}
  - {id: W, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 6 m, mass: 0.1 kg, tag: {condition: legible, rated_load: 4 t, basket_rated_load: 8 t, hitch: vertical}}
  - {id: K1, kind: shackle, rated_load: 3 t, inside_length: 100 mm, mass: 0.1 kg}
  - {id: K2, kind: shackle, rated_load: 3 t, inside_length: 100 mm, mass: 0.1 kg}
  - {id: SB, kind: spreader_beam, mass: 0.1 kg,
     points: [{id: tl, x: -0.8 m, y: 0 m, z: 0 m}, {id: tr, x: 0.8 m, y: 0 m, z: 0 m}, {id: c, x: -0.3 m, y: 0 m, z: -0.1 m, hole_axis: along, rated_load: 3 t}, {id: d, x: 0.3 m, y: 0 m, z: -0.1 m, hole_axis: along, rated_load: 3 t}]}
rigging:
  - {from: hook, legs: [{down: [T1], end: {kind: to, at: SB.tl}}, {down: [T2], end: {kind: to, at: SB.tr}}]}
  - {from: SB.c, by: [K1], legs: [{down: [W], end: {kind: basket, round: {body: drum, station: 1 m}UPTO}}]}
  LAST
`

// TestBothEndsOfABasketArePulled: each end of a basket between two points pulls on
// its own point, and on the shackle below it, by half the weight over the sine of its
// angle; with both ends on one point that carries all (statics).
func TestBothEndsOfABasketArePulled(t *testing.T) {
	apart := arrangement(t, basketOnPoints, "UPTO", ", up_to: SB.d", "LAST", "- {from: SB.d, by: [K2], legs: []}")
	w := 4000 * gravity
	b := figure(t, apart, "leg/SB.c/1", "angle_from_horizontal_deg")
	for _, key := range []string{"part/SB.c/K1", "part/SB.d/K2", "part/attachment/SB.c", "part/attachment/SB.d"} {
		near(t, key, figure(t, apart, key, "load_n"), w/2/sin(b), 0.003*w)
	}
	// The knot below each point leans with its run, out of the plane of a hole that
	// runs along the beam.
	for _, key := range []string{"part/SB.c/K1", "part/SB.d/K2"} {
		near(t, key, figure(t, apart, key, "pull_off_deg"), 90-b, 0.2)
	}
	one := arrangement(t, basketOnPoints, "UPTO", "", "LAST", "", "{id: c, x: -0.3 m", "{id: c, x: 0 m")
	for _, key := range []string{"part/SB.c/K1", "part/attachment/SB.c"} {
		near(t, key, figure(t, one, key, "load_n"), w, 0.003*w)
	}
}

// TestBlockOnAPoint: a sheave block below a point of a beam pulls on it with both runs
// of its sling.
func TestBlockOnAPoint(t *testing.T) {
	f := arrangement(t, overSheave, "gear:\n", "gear:\n  - {id: T, "+thickRope+", length: 2 m}\n  - {id: LB, kind: lifting_beam, mass: 0.1 kg, points: [{id: top, x: 0 m, y: 0 m, z: 0.3 m}, {id: low, x: 0 m, y: 0 m, z: 0 m, rated_load: 5 t}]}\n",
		"  - {from: hook, by: [BLK]", "  - {from: hook, legs: [{down: [T], end: {kind: to, at: LB.top}}]}\n  - {from: LB.low, by: [BLK]")
	near(t, "on the point", figure(t, f, "part/attachment/LB.low", "load_n"), 4000*gravity, 10)
	near(t, "on the block", figure(t, f, "part/LB.low/BLK", "load_n"), 4000*gravity, 10)
}

// fourDrops is a rigid load on four plumb slings below a frame, each with a shackle
// above it.
func fourDrops() string {
	text := `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 8 t
  center_of_gravity: {x: 0 m, y: 0 m, z: -1 m}
  attachments: [{id: P1, kind: padeye, x: -1 m, y: -1 m, z: 0 m, hole_axis: across}, {id: P2, kind: padeye, x: 1 m, y: -1 m, z: 0 m, hole_axis: across}, {id: P3, kind: padeye, x: 1 m, y: 1 m, z: 0 m, hole_axis: across}, {id: P4, kind: padeye, x: -1 m, y: 1 m, z: 0 m, hole_axis: across}]
gear:
  - {id: T, THICK, length: 3 m}
  - {id: LB, kind: lifting_beam, mass: 0.1 kg, points: [{id: top, x: 0 m, y: 0 m, z: 1 m}, {id: Q1, x: -1 m, y: -1 m, z: 0 m}, {id: Q2, x: 1 m, y: -1 m, z: 0 m}, {id: Q3, x: 1 m, y: 1 m, z: 0 m}, {id: Q4, x: -1 m, y: 1 m, z: 0 m}]}
  ITEMS
rigging:
  - {from: hook, legs: [{down: [T], end: {kind: to, at: LB.top}}]}
  DROPS
`
	items, drops := "", ""
	for _, n := range []string{"1", "2", "3", "4"} {
		items += "\n  - {id: D" + n + ", THICK, length: 2 m}\n  - {id: K" + n + ", kind: shackle, rated_load: 3 t, inside_length: 100 mm, mass: 0.1 kg}"
		drops += "\n  - {from: LB.Q" + n + ", by: [K" + n + "], legs: [{down: [D" + n + "], end: {kind: to, at: P" + n + "}}]}"
	}
	return strings.NewReplacer("  ITEMS", items, "  DROPS", drops).Replace(text)
}

// TestPartAboveALegThatIsCounted: what hangs a leg of four on a beam is judged by what
// the leg is judged by, and by what lengths can bring about.
func TestPartAboveALegThatIsCounted(t *testing.T) {
	f := arrangement(t, fourDrops())
	leg := figure(t, f, "leg/LB.Q1/1", "tension_judged_n")
	near(t, "three of four count", leg, 8000*gravity/3, 100)
	for _, key := range []string{"part/LB.Q1/K1", "part/attachment/LB.Q1", "part/attachment/P1"} {
		near(t, key, figure(t, f, key, "load_n"), leg, 100)
		near(t, key+" at most", figure(t, f, key, "load_bound_n"), 8000*gravity/2, 100)
	}
	near(t, "the beam as a whole", figure(t, f, "part/hook/1/LB", "load_n"), 8000*gravity, 100)
}

// TestBasketLetGoAtOneEnd is told, and gives no figure.
func TestBasketLetGoAtOneEnd(t *testing.T) {
	text := changed(t, onTwoHooks, "PHASES", "phases: [{name: both, pitch: 0 deg}, {name: one, pitch: 0 deg, released: [east]}]",
		"  attachments:\n", "  bodies: [{id: drum, kind: round, axis: across, start: {x: 9 m, y: -1 m, z: 0 m}, length: 2 m, diameter: 1 m}]\n  attachments:\n",
		"legs: [{down: [S2], end: {kind: to, at: E}}]", "legs: []", "{down: [S1], end: {kind: to, at: W}}", "{down: [S1], end: {kind: basket, round: {body: drum, station: 1 m}, up_to: east}}",
		"gear:\n", "gear:\n  - {id: S9, "+thickRope+", length: 6 m}\n", "S2, "+heavy("100 kg")+", length: 6 m", "S2, "+heavy("100 kg")+", length: 20 m")
	f, troubles := computeText(t, text)
	if len(troubles) != 1 || !strings.Contains(troubles[0].Message, "let go") {
		t.Fatalf("%+v", troubles)
	}
	lacks(t, f, "leg/west/1", "tension_n")
}

// TestUpperEndsOnPlates: an eye straight in the plate of a beam counts at each upper
// end of a sling; one with a shackle above it does not.
func TestUpperEndsOnPlates(t *testing.T) {
	eyes := func(f *facts.Facts, key string) any {
		n, _ := find(t, f, key).Field("eyes_on_plates_above")
		return n
	}
	spreader := arrangement(t, underSpreader)
	if got := eyes(spreader, "leg/SB.bl/1"); got != 1 {
		t.Errorf("a drop straight in the plate: %v", got)
	}
	if got := eyes(spreader, "leg/hook/1"); got != 0 {
		t.Errorf("a leg of the hook: %v", got)
	}
	far := arrangement(t, basketOnPoints, "UPTO", ", up_to: SB.d", "LAST", "- {from: SB.d, legs: []}")
	if got := eyes(far, "leg/SB.c/1"); got != 1 {
		t.Errorf("the far end of a basket: %v", got)
	}
}

// TestHeightOfAHook: two legs of 4 m over points 4 m apart stand sqrt(12) m over them,
// which lie 1 m over the datum; the plan's own figure is held against that.
func TestHeightOfAHook(t *testing.T) {
	f := arrangement(t, underSpreader, "{from: hook, legs", "{from: hook, height_above_datum: 7 m, legs")
	want := 1 + 3 + 3.4641
	near(t, "height", figure(t, f, "hook/hook", "height_above_datum_m"), want, 0.01)
	near(t, "off", figure(t, f, "hook/hook", "height_off_m"), want-7, 0.01)
	plain := arrangement(t, underSpreader)
	if given, _ := find(t, plain, "hook/hook").Field("height_given"); given != false {
		t.Errorf("given: %v", given)
	}
}

// TestSpliceOfABasket: an eye and its splice longer than the run beyond the body lie on
// it.
func TestSpliceOfABasket(t *testing.T) {
	for length, want := range map[string]string{"1 m": "free", "2 m": "free", "2.6 m": "on_body"} {
		f := arrangement(t, inBaskets, "id: W1, kind: wire_rope_sling, ", "id: W1, kind: wire_rope_sling, eyes: {upper: {length: 400 mm, splice_length: 100 mm}, lower: {length: "+length+", splice_length: 100 mm}}, ")
		if got, _ := find(t, f, "hitch/hook/1").Field("splice_lies"); got != want {
			t.Errorf("eye of %s: %v, not %s", length, got, want)
		}
	}
}
