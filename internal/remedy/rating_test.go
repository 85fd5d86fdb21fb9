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

// TestSteeperLegsWhereTheyHelp: they are not offered where the leg is steep as it
// is, nor for a part that is pulled off its line.
func TestSteeperLegsWhereTheyHelp(t *testing.T) {
	legs := []facts.Leg{{ID: "hook/1", AngleFromHorizontalDeg: ptr(80.0)}, {ID: "hook/2", AngleFromHorizontalDeg: ptr(79.9)}, {ID: "hook/3"}}
	hung := func(legs ...facts.Leg) *Mender {
		return New(nil, conditions(), &facts.Facts{Document: facts.Document{Legs: legs}}, quantity.Metric)
	}
	in := func(where, kind string, off float64) facts.Part {
		return facts.Part{Where: where, Kind: kind, LoadN: ptr(1000 * quantity.StandardGravity), PullOffDeg: &off, JudgedBy: ptr("own_force")}
	}
	const rated, steeper = "a part rated for at least 1 t as used", ", or less force in it: steeper legs"
	for _, c := range []struct {
		m    *Mender
		part facts.Part
		want string
	}{
		{hung(legs...), in("hook/1", "shackle", 5), ""},
		{hung(legs...), in("hook/2", "shackle", 5), steeper},
		{hung(legs...), in("hook/3", "shackle", 5), steeper},
		{hung(legs...), in("hook/1, hook/2", "padeye", 0), steeper},
		{hung(legs[0]), in("hook/1, hook/2", "padeye", 0), ""},
		{hung(legs...), in("hook/2", "shackle", 5.1), ", which takes a larger shackle, or the lug turned into the pull"},
		{hung(legs...), in("hook/2", "eyebolt", 30), ", or the lug turned into the pull"},
	} {
		if got, ok := c.m.Mend("higher_rating", facts.ViewOf(c.part), "used_ratio", 1); !ok || got != rated+c.want {
			t.Errorf("%s in %s: %q", c.part.Kind, c.part.Where, got)
		}
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
