package hang

import (
	"fmt"
	"math"
	"testing"
)

// onTwoHooks is a girder on two hooks, each over its point.
const onTwoHooks = `load:
  mass: 20 t
  intended_attitude: {roll: 0 deg}
  center_of_gravity: {x: 8 m, y: 0 m, z: -1 m}
  attachments:
    - {id: W, kind: padeye, x: 0 m, y: 0 m, z: 0 m}
    - {id: E, kind: padeye, x: 18 m, y: 0 m, z: 0 m}
hooks: [{id: west}, {id: east}]
gear:
  - {id: S1, THICK, length: 6 m}
  - {id: S2, THICK, length: 6 m}
rigging:
  - {from: west, legs: [{down: [S1], end: {kind: to, at: W}}]}
  - {from: east, legs: [{down: [S2], end: {kind: to, at: E}}]}
`

// TestHooksAreRaisedUntilLevel: with slings of any lengths the crane operators bring
// the load to the attitude meant, and each hook carries its share by moments.
func TestHooksAreRaisedUntilLevel(t *testing.T) {
	w := 20000 * gravity
	for _, pitch := range []float64{0, 3, -5} {
		for _, length := range []float64{6, 4, 9.5} {
			l := hung(t, onTwoHooks, "id: S2, THICK, length: 6 m", fmt.Sprintf("id: S2, THICK, length: %g m", length), "roll: 0 deg", fmt.Sprintf("pitch: %g deg", pitch))
			p := &l.Positions[0]
			near(t, "tilt", p.Balance.Bodies[0].TiltDeg, 0, 1e-3)
			// About the line of the points the center of gravity lies 1 m deep.
			east := w * (8*cos(pitch) + 1*sin(pitch)) / (18 * cos(pitch))
			near(t, "east", p.Hook(1).LoadN.Z, -east, 1e-4*w)
			near(t, "west", p.Hook(0).LoadN.Z, east-w, 1e-4*w)
		}
	}
}

// TestHooksThatCannotLevel: a center of gravity beside the line of the points rolls
// the load, which no raising cures. What is on the hooks is known all the same, and
// adds up to the weight.
func TestHooksThatCannotLevel(t *testing.T) {
	w := 20000 * gravity
	for _, aside := range []float64{0.01, 0.05, 0.1, 0.15, 0.2} {
		l := hung(t, onTwoHooks, "y: 0 m, z: -1 m}", fmt.Sprintf("y: %g m, z: -1 m}", aside))
		p := &l.Positions[0]
		near(t, "tilt", p.Balance.Bodies[0].TiltDeg, math.Atan(aside)*180/math.Pi, 0.01)
		sum := 0.0
		for h := range 2 {
			state := p.Hook(h)
			if state == nil {
				t.Fatalf("%g m aside, nothing is known of hook %d", aside, h)
			}
			sum -= state.LoadN.Z
			if n := p.Worst.Hooks[h].LoadN; n < -state.LoadN.Z {
				t.Errorf("%g m aside, hook %d carries %g N at the most and %g N as it hangs", aside, h, n, -state.LoadN.Z)
			}
		}
		near(t, "on both hooks", sum, w, 1e-4*w)
	}
}

// turnedOnABeam is a vessel that is turned up by two points below a beam, whose
// slings have no length.
const turnedOnABeam = `load:
  mass: 10 t
  center_of_gravity: {x: 5 m, y: 0 m, z: 0 m}
  attachments:
    - {id: P, kind: padeye, x: 10 m, y: -1 m, z: 0 m}
    - {id: Q, kind: padeye, x: 10 m, y: 1 m, z: 0 m}
    - {id: T, kind: padeye, x: 0 m, y: 0 m, z: 1 m}
hooks: [{id: head}, {id: tail}]
gear:
  - {id: S1, THICK, length: 4 m}
  - {id: S2, THICK}
  - {id: S3, THICK}
  - {id: S4, THICK, length: 5 m}
  - {id: LB, kind: lifting_beam, mass: 200 kg,
     points: [{id: top, x: 0 m, y: 0 m, z: 0.5 m}, {id: near, x: -1 m, y: 0 m, z: 0 m}, {id: far, x: 1 m, y: 0 m, z: 0 m}]}
rigging:
  - {from: head, legs: [{down: [S1], end: {kind: to, at: LB.top}}]}
  - {from: LB.near, height_above_datum: 3 m, legs: [{down: [S2], end: {kind: to, at: P}}]}
  - {from: LB.far, height_above_datum: 3 m, legs: [{down: [S3], end: {kind: to, at: Q}}]}
  - {from: tail, legs: [{down: [S4], end: {kind: to, at: T}}]}
phases:
  - {name: turning, pitch: 0 deg, until: 60 deg, step: 30 deg}
  - {name: upright, pitch: 90 deg, released: [tail]}
`

// TestGivenHeightsHoldForTheFirstPhase: a height says how long slings have to be, in
// the attitude that the lift begins with. In later ones the beam goes up with the
// load's head, on slings of those lengths.
func TestGivenHeightsHoldForTheFirstPhase(t *testing.T) {
	l := hung(t, turnedOnABeam)
	for _, i := range []int{1, 2} {
		near(t, "length found", *l.Legs[i].OpenM, 3, 1e-6)
	}
	w := 10000 * gravity
	for n, pitch := range []float64{0, 30, 60} {
		p := &l.Positions[n]
		near(t, "tilt", p.Balance.Bodies[0].TiltDeg, 0, 0.01)
		// By moments about the tail's point, level coordinates x cos a - z sin a.
		level := func(x, z float64) float64 { return x*cos(pitch) - z*sin(pitch) }
		head := w * (level(5, 0) - level(0, 1)) / (level(10, 0) - level(0, 1))
		near(t, "sling at the head", p.Line(1).TensionN, head/2, 2e-3*w)
	}
	if l.Positions[3].Line(3) != nil || l.Positions[3].Hook(1) != nil {
		t.Error("the tail is released, and something is said of it")
	}
}
