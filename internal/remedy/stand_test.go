package remedy

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// tallText is a load 2 m square on four legs, its center of gravity so far above its
// points and so far beside their middle.
func tallText(aboveM, besideM, legM float64, more string) []byte {
	var gear, legs strings.Builder
	for i := range 4 {
		fmt.Fprintf(&gear, "  - {id: S%d, kind: wire_rope_sling, diameter: 30 mm, length: %.6f m}\n", i, legM)
		fmt.Fprintf(&legs, "      - {down: [S%d], end: {kind: to, at: P%d}}\n", i, i)
	}
	return fmt.Appendf(nil, `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 5 t
  center_of_gravity: {x: %g m, y: 1 m, z: %g m%s}
  attachments:
    - {id: P0, kind: padeye, x: 0 m, y: 0 m, z: 1 m}
    - {id: P1, kind: padeye, x: 2 m, y: 0 m, z: 1 m}
    - {id: P2, kind: padeye, x: 2 m, y: 2 m, z: 1 m}
    - {id: P3, kind: padeye, x: 0 m, y: 2 m, z: 1 m}
gear:
%srigging:
  - from: hook
    legs:
%s`, 1+besideM, 1+aboveM, more, gear.String(), legs.String())
}

// spreaderText is a load on four drops from the ends of a bar of 4 m, two at each, on
// points that stand 4 m apart, so that the drops hang plumb seen from the side.
func spreaderText(aboveM, bridleM float64) []byte {
	var gear, tops strings.Builder
	for i := range 2 {
		fmt.Fprintf(&gear, "  - {id: T%d, kind: wire_rope_sling, diameter: 30 mm, length: %.6f m}\n", i, math.Hypot(2, bridleM))
		fmt.Fprintf(&tops, "      - {down: [T%d], end: {kind: to, at: SB1.T%d}}\n", i, i)
	}
	for i := range 4 {
		fmt.Fprintf(&gear, "  - {id: D%d, kind: wire_rope_sling, diameter: 30 mm, length: 3 m}\n", i)
	}
	return fmt.Appendf(nil, `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 5 t
  center_of_gravity: {x: 2 m, y: 0.5 m, z: %g m}
  attachments:
    - {id: P0, kind: padeye, x: 0 m, y: 0 m, z: 1 m}
    - {id: P1, kind: padeye, x: 0 m, y: 1 m, z: 1 m}
    - {id: P2, kind: padeye, x: 4 m, y: 0 m, z: 1 m}
    - {id: P3, kind: padeye, x: 4 m, y: 1 m, z: 1 m}
gear:
  - {id: SB1, kind: spreader_beam, mass: 50 kg, points: [{id: T0, x: -2 m, y: 0 m, z: 0 m}, {id: T1, x: 2 m, y: 0 m, z: 0 m}, {id: B0, x: -2 m, y: 0 m, z: 0 m}, {id: B1, x: 2 m, y: 0 m, z: 0 m}]}
%srigging:
  - from: hook
    legs:
%s  - {from: SB1.B0, legs: [{down: [D0], end: {kind: to, at: P0}}, {down: [D1], end: {kind: to, at: P1}}]}
  - {from: SB1.B1, legs: [{down: [D2], end: {kind: to, at: P2}}, {down: [D3], end: {kind: to, at: P3}}]}
`, 1+aboveM, gear.String(), tops.String())
}

func higherHook(t testing.TB, p *plan.Plan, f *facts.Facts) (string, bool) {
	t.Helper()
	return New(p, conditions(), f, quantity.Metric).Mend("higher_hook", facts.ViewOf(f.Document.Loads[0]), "", 0)
}

// TestHigherHookByHand: four equal legs on a load whose center of gravity lies h above
// its points and e beside their middle. It hangs with the center of gravity plumb
// below the hook, tilted by atan(e/(H-h)) with the hook H above the points, and more
// than 20 deg counts as turning over: H = h + e/tan 20. Each leg is hypot(sqrt 2, H).
func TestHigherHookByHand(t *testing.T) {
	for _, c := range []struct{ aboveM, besideM, legM float64 }{{0.5, 0.6, 2}, {0.5, 0.3, 1.8}, {0.2, 0.6, 1.6}} {
		p, f := computed(t, tallText(c.aboveM, c.besideM, c.legM, ""))
		text, ok := higherHook(t, p, f)
		if !ok {
			t.Fatalf("%+v: nothing is offered", c)
		}
		hook := c.aboveM + c.besideM/math.Tan(20*math.Pi/180)
		least := math.Hypot(math.Sqrt2, hook)
		// The rope of 30 mm stretches by less than a thousandth.
		if got := length(t, text, `hook/1`); got < least-0.004 || got > least+metricStepM+0.004 {
			t.Errorf("%q, and by hand it takes %.3f m", text, least)
		}
		if !strings.Contains(text, "with which it hangs tilted by") {
			t.Errorf("%q says nothing of the tilt", text)
		}
		stands(t, tallText(c.aboveM, c.besideM, length(t, text, `hook/1`), ""))
	}
}

// TestHigherHookAboveABeam: with plumb drops, load and bar turn as one frame that can
// shear: it rights itself while the bridle is higher above the bar than the center of
// gravity is above the points, the bar's weight adding to the load's (virtual work:
// (W + w) B > W h). 50 mm of rise are kept: B = (h + 0.05)/(1 + w/W).
func TestHigherHookAboveABeam(t *testing.T) {
	const above = 2.3
	p, f := computed(t, spreaderText(above, 2))
	if got := *f.Document.Loads[0].Hangs; got != "overturns" {
		t.Fatalf("it hangs %s", got)
	}
	text, ok := higherHook(t, p, f)
	if !ok {
		t.Fatal("nothing is offered")
	}
	least := math.Hypot(2, (above+riseM)/(1+50./5000))
	if got := length(t, text, `legs above the beam of at least, bearing to bearing, hook/1`); got < least-0.004 || got > least+metricStepM+0.004 {
		t.Errorf("%q, and by hand it takes %.3f m", text, least)
	}
	if strings.Contains(text, "drops") {
		t.Errorf("%q: plumb drops of any length change nothing", text)
	}
	offered := length(t, text, `hook/1`)
	stands(t, spreaderText(above, math.Sqrt(offered*offered-4)))
}

// TestHigherHookWithinTolerances: a load that stands as the plan has it and not with
// its center of gravity at the end of its tolerance is offered what stands there.
func TestHigherHookWithinTolerances(t *testing.T) {
	const tolerance = ", tolerance: 100 mm"
	p, f := computed(t, tallText(0.5, 0.5, 2.4, tolerance))
	l := f.Document.Loads[0]
	if *l.Hangs != "steady" || *l.HangsAtWorst == "steady" {
		t.Fatalf("it hangs %s, at worst %s", *l.Hangs, *l.HangsAtWorst)
	}
	text, ok := higherHook(t, p, f)
	if !ok {
		t.Fatal("nothing is offered")
	}
	// At the corner the center of gravity lies 0.6 m along and 0.1 m across, 0.6 m up.
	hook := 0.6 + math.Hypot(0.6, 0.1)/math.Tan(20*math.Pi/180)
	if got, least := length(t, text, `hook/1`), math.Hypot(math.Sqrt2, hook); got < least-0.004 || got > least*stretched+metricStepM {
		t.Errorf("%q, and by hand it takes %.3f m", text, least)
	}
	stands(t, tallText(0.5, 0.5, length(t, text, `hook/1`), tolerance))
}

// TestHigherPoints: no legs help a load on two points below its center of gravity;
// points above it do, by the 50 mm that are kept.
func TestHigherPoints(t *testing.T) {
	text := strings.Replace(string(plateText(0, 2.5, "across")), "z: 0 m}", "z: 1.2 m}", 1)
	p, f := computed(t, []byte(text))
	if got := *f.Document.Loads[0].Hangs; got != "points_below_center_of_gravity" {
		t.Fatalf("it hangs %s", got)
	}
	said, ok := higherHook(t, p, f)
	if !ok || strings.Contains(said, "legs") {
		t.Fatalf("%q, %v", said, ok)
	}
	if got := length(t, said, `by points at least`); got < 0.25-1e-9 || got > 0.27 {
		t.Errorf("%q: 200 mm and what is kept", said)
	}
}

func TestNothingMakesItStand(t *testing.T) {
	if text, ok := New(nil, conditions(), nil, quantity.Metric).Mend("higher_hook", facts.ViewOf(facts.Load{}), "", 0); ok {
		t.Errorf("without a plan: %q", text)
	}
	// Ten meters above its points, which no point that is offered would be.
	p, f := computed(t, tallText(12, 0.9, 13, ""))
	if text, ok := higherHook(t, p, f); ok {
		t.Errorf("%q", text)
	}
}

// stands wants a plan whose load hangs steady, at its worst too.
func stands(t testing.TB, text []byte) {
	t.Helper()
	_, f := computed(t, text)
	if l := f.Document.Loads[0]; *l.Hangs != "steady" || *l.HangsAtWorst != "steady" {
		t.Errorf("it hangs %s, at worst %s:\n%s", *l.Hangs, *l.HangsAtWorst, text)
	}
}
