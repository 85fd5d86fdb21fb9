package remedy

import (
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// TestHigherRating: the force over the share allowed, rounded up; steeper legs
// are offered only where the angle of the legs has a say.
func TestHigherRating(t *testing.T) {
	const tonne = 1000 * quantity.StandardGravity
	part := func(loadT, ratedT, markedT float64, by string) facts.Part {
		return facts.Part{LoadN: ptr(loadT * tonne), RatedLoadN: ptr(ratedT * tonne), MarkedLoadN: ptr(markedT * tonne), JudgedBy: &by}
	}
	unmarked := part(8, 5, 5, "whole_load")
	unmarked.MarkedLoadN = nil
	const steeper = ", or less force in it: steeper legs"
	for _, c := range []struct {
		units quantity.System
		part  facts.Part
		limit float64
		want  string
	}{
		{quantity.Metric, part(8, 5, 5, "legs_counted"), 1, "a part rated for at least 8 t as used" + steeper},
		{quantity.Metric, part(8.016, 5, 5, "own_force"), 1, "a part rated for at least 8.02 t as used" + steeper},
		{quantity.Metric, part(8, 5, 5, "own_force"), 0.9, "a part rated for at least 8.89 t as used" + steeper},
		{quantity.US, part(1, 0.5, 0.5, "own_force"), 1, "a part rated for at least 2210 lb as used" + steeper}, // 2204.6 lb
		{quantity.Metric, part(8, 5, 5, "whole_load"), 1, "a part rated for at least 8 t as used"},
		{quantity.Metric, unmarked, 1, "a part rated for at least 8 t as used"},
		{quantity.Metric, part(8, 5, 6, "whole_load"), 1, "a part rated for at least 8 t as used" + steeper}, // a bridle below its tag's angle
	} {
		if got, ok := New(nil, conditions(), nil, c.units).Mend("higher_rating", facts.ViewOf(c.part), "used_ratio", c.limit); !ok || got != c.want {
			t.Errorf("%q, not %q", got, c.want)
		}
	}
	if got, ok := New(nil, conditions(), nil, quantity.Metric).Mend("higher_rating", facts.ViewOf(facts.Part{}), "used_ratio", 1); ok {
		t.Errorf("for an unknown force: %q", got)
	}
}

func TestPlainNumbers(t *testing.T) {
	for _, c := range []struct {
		x      float64
		places int
		want   string
	}{{44, 1, "44"}, {14.48, 1, "14.5"}, {2.7, 2, "2.7"}, {2.25, 2, "2.25"}, {0.04, 1, "0"}, {120, 0, "120"}, {100, 2, "100"}} {
		if got := plain(c.x, c.places); got != c.want {
			t.Errorf("%g to %d places: %q, not %q", c.x, c.places, got, c.want)
		}
	}
}
