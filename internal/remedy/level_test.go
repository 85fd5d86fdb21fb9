package remedy

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// offeredLengths reads the lengths that a remedy names for the legs, in their order.
func offeredLengths(t testing.TB, text string, legs int) []float64 {
	t.Helper()
	var list []float64
	for i := range legs {
		list = append(list, length(t, text, fmt.Sprintf(`hook/%d`, i+1)))
	}
	return list
}

// without takes the shackle off each length.
func without(shackleM float64, lengths []float64) []float64 {
	list := make([]float64, len(lengths))
	for i, l := range lengths {
		list[i] = l - shackleM
	}
	return list
}

// TestLevelLengthsLevel writes plans anew with the lengths that are offered and hangs
// them: they hang level, plumb under the hook, up to what rounding to 10 mm or an inch
// leaves. The lengths are also held to the distance from the hook to each point
// (Pythagoras): with the hook H above the points, over the center of gravity.
func TestLevelLengthsLevel(t *testing.T) {
	const shackle = 0.1
	for _, slings := range [][]float64{{2.6, 3.4}, {3.2, 2.7}, {3.0, 3.4, 3.6, 3.2}} {
		for _, units := range []quantity.System{quantity.Metric, quantity.US} {
			t.Run(fmt.Sprintf("%v, %s", slings, units), func(t *testing.T) {
				p, f := slingPlan(t, shackle, slings)
				load := facts.ViewOf(f.Document.Loads[0])
				text, ok := New(p, conditions(), f, units).Mend("level_lengths", load, "tilt_deg", 5)
				if !ok {
					t.Fatal("nothing is offered")
				}
				lengths := offeredLengths(t, text, len(slings))
				_, anew := slingPlan(t, shackle, without(shackle, lengths))
				l := anew.Document.Loads[0]
				if *l.TiltDeg > 1 || *l.PlumbOffsetM > 0.05 {
					t.Errorf("%q: it hangs tilted by %g deg, %g m off plumb", text, *l.TiltDeg, *l.PlumbOffsetM)
				}
				if *l.TiltDeg >= *f.Document.Loads[0].TiltDeg {
					t.Errorf("%q: it hung at %g deg before, and now at %g", text, *f.Document.Loads[0].TiltDeg, *l.TiltDeg)
				}
				if first := mostChanged(f.Document.Legs, lengths); !strings.Contains(text, "above all "+first+",") {
					t.Errorf("%q: %s changes the most", text, first)
				}
			})
		}
	}
}

func mostChanged(legs []facts.Leg, lengths []float64) string {
	id, most := "", 0.0
	for i, leg := range legs {
		if change := math.Abs(lengths[i] - *leg.LengthM); change > most {
			id, most = leg.ID, change
		}
	}
	return id
}

// TestLevelLengthsByHand: two points 4 m apart on one level, the center of gravity
// 100 mm beside their middle and 1 m below them. With the hook H above the points the
// legs are hypot(2.1, H) and hypot(1.9, H) long, wherever H comes to lie.
func TestLevelLengthsByHand(t *testing.T) {
	p, f := slingPlan(t, 0, []float64{2.9, 3.3})
	text, ok := New(p, conditions(), f, quantity.Metric).Mend("level_lengths", facts.ViewOf(f.Document.Loads[0]), "plumb_offset_m", 0.2)
	if !ok {
		t.Fatal("nothing is offered")
	}
	l := offeredLengths(t, text, 2)
	// The difference of their squares is 2.1^2 - 1.9^2 = 0.8 m2, whatever H; each
	// length is rounded by up to 5 mm.
	if got := l[0]*l[0] - l[1]*l[1]; math.Abs(got-0.8) > 2*0.005*(l[0]+l[1]) {
		t.Errorf("%q: the squares differ by %g m2", text, got)
	}
}

func TestNoLevelLengths(t *testing.T) {
	p, f := slingPlan(t, 0.1, []float64{2.6, 3.4})
	m := New(p, conditions(), f, quantity.Metric)
	load := facts.ViewOf(f.Document.Loads[0])
	if text, ok := m.Mend("level_lengths", load, "tilt_deg", 0.001); ok {
		t.Errorf("nearer than slings are made: %q", text)
	}
	other := *f
	other.Document.Legs = append([]facts.Leg{}, f.Document.Legs...)
	other.Document.Legs[0].LevelLengthM = nil
	if text, ok := New(p, conditions(), &other, quantity.Metric).Mend("level_lengths", load, "tilt_deg", 5); ok {
		t.Errorf("of an unknown length: %q", text)
	}
	p, f = slingPlan(t, 0.1, []float64{3, 3})
	for i := range f.Document.Legs {
		f.Document.Legs[i].LevelLengthM = f.Document.Legs[i].LengthM
	}
	if text, ok := New(p, conditions(), f, quantity.Metric).Mend("level_lengths", facts.ViewOf(f.Document.Loads[0]), "tilt_deg", 5); ok {
		t.Errorf("the lengths it has: %q", text)
	}
}

// TestLevelLengthsWithinTolerances: where the tolerance of the center of gravity alone
// tilts the load by more than the limit, no lengths help, and none are offered.
func TestLevelLengthsWithinTolerances(t *testing.T) {
	for _, c := range []struct {
		tolerance string
		offered   bool
	}{{"20 mm", true}, {"150 mm", false}} {
		text := strings.Replace(string(plateText(0, 2.7, "across")), "z: 0 m}", "z: 0 m, tolerance: "+c.tolerance+"}", 1)
		p, f := computed(t, []byte(text))
		if f.Document.Loads[0].TiltAtWorstDeg == nil {
			t.Fatalf("%s: it does not hang at worst", c.tolerance)
		}
		if said, ok := New(p, conditions(), f, quantity.Metric).Mend("level_lengths", facts.ViewOf(f.Document.Loads[0]), "tilt_at_worst_deg", 5); ok != c.offered {
			t.Errorf("%s: %q, %v", c.tolerance, said, ok)
		}
	}
}
