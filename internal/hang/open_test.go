package hang

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// roundPipe is a pipe of 600 mm that a sling of 20 mm rope goes round; its length is
// left open.
const roundPipe = `load:
  mass: 4 t
  intended_attitude: {pitch: PITCH deg}
  center_of_gravity: {x: 5 m, y: 0 m, z: 0.1 m}
  bodies: [{id: pipe, kind: round, axis: along, start: {x: 0 m, y: 0 m, z: 0.3 m}, length: 10 m, diameter: 600 mm}]
gear:
  - {id: S, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, mass: 0.1 kg}
  - {id: K, kind: shackle, inside_length: 150 mm}
rigging:
  - {from: hook, BY height_above_datum: 5.3 m, legs: [{down: [S], end: {kind: END, round: {body: pipe, station: 5 m}}}]}
`

// ropeRound is the radius of the middle of the rope round that pipe.
const ropeRound = 0.31

// TestOpenBasket: two tangents from the hook and the arc below them (geometry). What
// hangs between the hook and the sling brings the meeting point down.
func TestOpenBasket(t *testing.T) {
	for by, h := range map[string]float64{"": 5, "by: [K],": 4.85} {
		l := hung(t, roundPipe, "END", "basket", "BY", by, "PITCH", "0")
		want := 2*math.Sqrt(h*h-ropeRound*ropeRound) + 2*ropeRound*(math.Pi-math.Acos(ropeRound/h))
		near(t, "length", *l.Legs[0].OpenM, want, 1e-6)
		near(t, "run", l.Positions[0].Line(0).TensionN, 4000*gravity/2/math.Sqrt(1-ropeRound*ropeRound/h/h), 1e-3*4000*gravity)
	}
}

// TestOtherSlingsLieRoundAsThickAsTheyAre: of 20 mm, as that rope.
func TestOtherSlingsLieRoundAsThickAsTheyAre(t *testing.T) {
	const rope = "kind: wire_rope_sling, core: iwrc, diameter: 20 mm"
	want := *hung(t, roundPipe, "END", "basket", "BY", "", "PITCH", "0").Legs[0].OpenM
	for _, other := range []string{
		"kind: chain_sling, size: 20 mm",
		"kind: web_sling, thickness: 20 mm, tag: {condition: legible, rated_load: 4 t, angle_from_horizontal: 90 deg}",
	} {
		l := hung(t, roundPipe, "END", "basket", "BY", "", "PITCH", "0", rope, other)
		near(t, other, *l.Legs[0].OpenM, want, 1e-6)
	}
}

// TestOpenChoke: a choke at 135 deg stands where two tangents meet at a right angle,
// R times the root of two over the axis; its loop is those, R each, and three quarters
// of the circle (geometry). The standing part reaches from there to the hook.
func TestOpenChoke(t *testing.T) {
	l := hung(t, roundPipe, "END", "choke", "BY", "", "PITCH", "0")
	near(t, "length", *l.Legs[0].OpenM, 5-ropeRound*math.Sqrt2+ropeRound*(2+1.5*math.Pi), 1e-6)
}

// overSheave is a load on one sling over a block, the length of the sling left open.
const overSheave = `load:
  mass: 4 t
  intended_attitude: {pitch: PITCH deg}
  center_of_gravity: {x: 1 m, y: 0 m, z: -2 m}
  attachments:
    - {id: C, kind: padeye, x: 0 m, y: 0 m, z: 0 m}
    - {id: D, kind: padeye, x: 2 m, y: 0 m, z: 0 m}
gear:
  - {id: BLK, kind: sheave_block, length: 400 mm, sheave_diameter: 900 mm, mass: 0.1 kg}
  - {id: S, THICK}
  - {id: K1, kind: shackle, inside_length: 100 mm}
  - {id: K2, kind: shackle, inside_length: 100 mm}
rigging:
  - {from: hook, by: [BLK], height_above_datum: 3.4 m, legs: [{down: [K1, S, K2], end: {kind: runs_to, at: [C, D]}}]}
`

// TestOpenOverASheave: from the groove, 3 m over the points, to both of them, less the
// shackles at its ends. With the load meant to hang at a pitch, heights are still
// measured from its datum, plumb, and the center of gravity hangs plumb below the hook.
func TestOpenOverASheave(t *testing.T) {
	l := hung(t, overSheave, "PITCH", "0")
	near(t, "length", *l.Legs[0].OpenM, 2*math.Hypot(1, 3)-0.2, 1e-6)
	const pitch = 4.0
	tilted := Of(written(t, overSheave, "PITCH", "4"))
	hook := [2]float64{1*cos(pitch) + 2*sin(pitch), 3} // over the center of gravity, level coordinates
	first, second := math.Hypot(hook[0], hook[1]), math.Hypot(hook[0]-2*cos(pitch), hook[1]-2*sin(pitch))
	near(t, "length at a pitch", *tilted.Legs[0].OpenM, first+second-0.2, 1e-6)
}

// TestOpenGrommets: its circumference is twice the reach, four times where it is laid
// double; the figure is bearing to bearing, of a grommet in two parts.
func TestOpenGrommets(t *testing.T) {
	const plan = `load: {mass: 10 t, center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}, attachments: [{id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m}]}
gear:
  - {id: G, kind: grommet, diameter: 60 mm, core: iwrc}
  - {id: K, kind: shackle, inside_length: 250 mm}
rigging:
  - {from: hook, height_above_datum: 5 m, legs: [{down: [G, K], DOUBLED end: {kind: to, at: A}}]}
`
	for doubled, times := range map[string]float64{"": 1, "doubled: true,": 2} {
		l := hung(t, plan, "DOUBLED", doubled)
		near(t, "length", *l.Legs[0].OpenM, times*3.75, 1e-9)
		near(t, "leg", l.Legs[0].Route.LengthM, 4, 1e-9)
	}
}

// TestHeightsOfSupports: each is plumb over the middle of what it holds, so high that
// its legs reach, and the hook is over the center of gravity.
func TestHeightsOfSupports(t *testing.T) {
	l := hung(t, inBridles)
	y := l.Positions[0].layout
	reach := math.Sqrt(3) // of 2 m legs that go 1 m aside
	for support, x := range map[int]float64{1: -2, 2: 2} {
		at := y.hangsAt(support)
		near(t, "link along", at.X, x, 1e-9)
		near(t, "link across", at.Y, 0, 1e-9)
		near(t, "link above the center of gravity", at.Z, 1+reach, 1e-9)
	}
	hook := y.hangsAt(0)
	near(t, "hook above the center of gravity", hook.Z, 1+reach+0.3+4*sin(60), 1e-9)
	near(t, "hook beside it", math.Hypot(hook.X, hook.Y), 0, 1e-9)
}

// TestTooThin: ropes that reach and stretch beyond all reason are told from ropes
// that do not reach.
func TestTooThin(t *testing.T) {
	for _, c := range []struct {
		length, diameter float64
		thin             bool
	}{{4, 3, true}, {1.5, 60, false}, {1.5, 3, false}} {
		size := fmt.Sprintf("kind: wire_rope_sling, core: iwrc, mass: 0.1 kg, diameter: %g mm, length: %g m", c.diameter, c.length)
		l := Of(written(t, `load:
  mass: 20 t
  center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}
  attachments: [{id: A, kind: padeye, x: -2 m, y: 0 m, z: 1 m}, {id: B, kind: padeye, x: 2 m, y: 0 m, z: 1 m}]
gear: [{id: S1, SLING}, {id: S2, SLING}]
rigging: [{from: hook, legs: [{down: [S1], end: {kind: to, at: A}}, {down: [S2], end: {kind: to, at: B}}]}]
`, "SLING", size))
		if len(l.Troubles) == 0 || l.Troubles[0].ID != OutOfReach || l.Positions != nil {
			t.Fatalf("%s: %v", size, l.Troubles)
		}
		if thin := strings.HasPrefix(l.Troubles[0].Message, "the slings are too thin"); thin != c.thin {
			t.Errorf("%s: %s", size, l.Troubles[0].Message)
		}
	}
}
