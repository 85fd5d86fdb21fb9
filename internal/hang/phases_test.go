package hang

import (
	"slices"
	"testing"

	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// TestPitches: from where a phase begins to where it ends, both included, the last
// step cut short where it would lead beyond.
func TestPitches(t *testing.T) {
	angle := func(deg float64) *quantity.Angle { a := quantity.Angle(deg); return &a }
	for _, c := range []struct {
		from        float64
		until, step *quantity.Angle
		want        []float64
	}{
		{12, nil, nil, []float64{12}},
		{0, angle(75), angle(15), []float64{0, 15, 30, 45, 60, 75}},
		{60, angle(-10), angle(-20), []float64{60, 40, 20, 0, -10}},
		{0, angle(10), angle(4), []float64{0, 4, 8, 10}},
		{-3, angle(3), angle(6), []float64{-3, 3}},
		{90, angle(80), angle(-20), []float64{90, 80}},
		{0, angle(5), angle(7.5), []float64{0, 5}},
	} {
		if got := pitches(plan.Phase{Pitch: quantity.Angle(c.from), Until: c.until, Step: c.step}); !slices.Equal(got, c.want) {
			t.Errorf("from %g: %v, not %v", c.from, got, c.want)
		}
	}
	// A tenth is no binary fraction: the end is there once all the same.
	got := pitches(plan.Phase{Until: angle(0.7), Step: angle(0.1)})
	if len(got) != 8 || got[7] != 0.7 {
		t.Errorf("tenths of a degree: %v", got)
	}
}

// TestPhasesAreNamedByTheirPitch: a phase that turns has a position for each step,
// one that does not has one by its own name.
func TestPhasesAreNamedByTheirPitch(t *testing.T) {
	l := hung(t, onTwoHooks+"phases: [{name: level, pitch: 0 deg}, {name: sloped, pitch: 1.5 deg, until: -1 deg, step: -1.5 deg}]\n")
	var names []string
	for _, p := range l.Positions {
		names = append(names, p.Phase)
		near(t, "tilt from what is meant in "+p.Phase, p.Balance.Bodies[0].TiltDeg, 0, 1e-3)
	}
	if want := []string{"level", "sloped at 1.5 deg", "sloped at 0 deg", "sloped at -1 deg"}; !slices.Equal(names, want) {
		t.Errorf("%q", names)
	}
}
