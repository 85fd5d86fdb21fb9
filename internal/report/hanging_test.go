package report

import (
	"strings"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/quantity"
)

// TestBeamsAndHoistRopes: a beam's compression and bending moment stand with their
// share of what it is rated for where that is known, and hoist ropes that are taken
// are told once.
func TestBeamsAndHoistRopes(t *testing.T) {
	steady, zero, force, moment, share := "steady", 0.0, 9000.0, 1500.0, 0.45
	d := facts.Document{
		Lifts: []facts.Lift{{}},
		Loads: []facts.Load{{Hangs: &steady, TiltDeg: &zero}},
		Hooks: []facts.Hook{{ID: "head", RopeTakenM: 10}, {ID: "tail", RopeTakenM: 10}},
		Beams: []facts.Beam{
			{ID: "SB1", TiltDeg: &zero, CompressionN: &force, CompressionRatio: &share, BendingNm: &moment},
			{ID: "LB1", TiltDeg: &zero, CompressionN: &force, BendingNm: &moment, BendingRatio: &share},
		},
	}
	h, ok := HangingOf(&lint.Result{Facts: &facts.Facts{Document: d}, Units: quantity.Metric})
	if want := "SB1 compression 9 kN (45 % of rated), bending moment 1.5 kN m, tilted by 0 deg; LB1 compression 9 kN, bending moment 1.5 kN m (45 % of rated), tilted by 0 deg"; !ok || h.InsideBeams != want {
		t.Errorf("%q, not %q", h.InsideBeams, want)
	}
	if got := strings.Join(h.Words, "; "); got != "steady; tilted by 0 deg; hoist ropes taken as 10.00 m" {
		t.Errorf("%q", got)
	}
	d.Hooks[0].RopeTakenM, d.Hooks[1].RopeTakenM = 0, 0
	if h, _ := HangingOf(&lint.Result{Facts: &facts.Facts{Document: d}, Units: quantity.Metric}); strings.Contains(strings.Join(h.Words, ";"), "hoist") {
		t.Errorf("ropes that the plan gives: %q", h.Words)
	}
}
