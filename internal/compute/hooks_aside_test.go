package compute_test

import (
	"fmt"
	"math"
	"testing"
)

// hooksBeside is a load of 6 t on two plumb slings of 4 m from two hooks on hoist ropes
// of 16 m; where the hooks stand over it is to be filled in.
const hooksBeside = `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 6 t
  center_of_gravity: {x: 3 m, y: 0 m, z: 0 m}
  attachments:
    - {id: L, kind: padeye, x: 0 m, y: 0 m, z: 1 m}
    - {id: R, kind: padeye, x: 6 m, y: 0 m, z: 1 m}
hooks:
  - {id: west, hoist_rope: 16 m, x: WEST m, y: 0 m}
  - {id: east, hoist_rope: 16 m, x: EAST m, y: 0 m}
gear:
  - {id: S1, THICK, length: 4 m}
  - {id: S2, THICK, length: 4 m}
rigging:
  - {from: west, legs: [{down: [S1], end: {kind: to, at: L}}]}
  - {from: east, legs: [{down: [S2], end: {kind: to, at: R}}]}
`

// TestHooksAsideByHand: rope and sling of each side hang in one line of 20 m. Hooks
// that stand s inside of their points lean by asin(s/20 m), and each is pulled aside
// by half the weight times the tangent; hooks that both stand s to one side hang
// plumb, and the load comes to hang s to that side.
func TestHooksAsideByHand(t *testing.T) {
	const half = 3000 * 9.80665
	for _, s := range []float64{0, 0.5, 1.5} {
		at := func(west, east float64) []string {
			return []string{"WEST", fmt.Sprint(west), "EAST", fmt.Sprint(east)}
		}
		apart := arrangement(t, hooksBeside, at(s, 6-s)...).Document
		lean := math.Asin(s/20) * 180 / math.Pi
		for _, h := range apart.Hooks {
			near(t, "lean", *h.LeanDeg, lean, 0.01)
			near(t, "pull aside", *h.HorizontalN, half*tan(lean), half*0.001)
		}
		near(t, "lean of all", *apart.Loads[0].HooksLeanDeg, lean, 0.01)
		near(t, "swing", *apart.Loads[0].SwingM, 0, 0.005)

		beside := arrangement(t, hooksBeside, at(s, 6+s)...).Document
		near(t, "lean", *beside.Loads[0].HooksLeanDeg, 0, 0.01)
		near(t, "swing", *beside.Loads[0].SwingM, s, 0.005)
	}
}

// TestNamedInPhase: a load on two hooks that is level and then sloped is called by the
// phase that each figure is of; one in one attitude by its name alone.
func TestNamedInPhase(t *testing.T) {
	at := []string{"WEST", "0", "EAST", "5"}
	one := arrangement(t, hooksBeside, at...).Document
	if l := one.Loads[0]; l.Named != "the load" || l.TiltNamed != "the load" || l.WorstTiltNamed != "the load" {
		t.Errorf("%q, %q, %q", l.Named, l.TiltNamed, l.WorstTiltNamed)
	}
	if h, leg := one.Hooks[1], one.Legs[0]; h.LeanNamed != "east" || leg.FlattestNamed != "west/1" || leg.SlackNamed != "west/1 to L" {
		t.Errorf("%q, %q, %q", h.LeanNamed, leg.FlattestNamed, leg.SlackNamed)
	}
	// Sloped by 30 deg, the points stand 6 m cos 30 = 5.2 m apart, nearly as the hooks
	// do; level, the hooks stand 1 m too near.
	phased := arrangement(t, hooksBeside+"phases:\n  - {name: sloped, pitch: 30 deg}\n  - {name: level, pitch: 0 deg}\n", at...).Document
	if h, leg := phased.Hooks[0], phased.Legs[0]; h.LeanNamed != "west in phase level" || *h.LeanPhase != "level" || leg.FlattestNamed != "west/1 in phase level" {
		t.Errorf("%q, %q", h.LeanNamed, leg.FlattestNamed)
	}
}
