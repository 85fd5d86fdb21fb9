package compute_test

import "testing"

// TestWhatTurnsAScrewPin: a load that is turned up, time, and nothing where the pin is
// secured or no screw.
func TestWhatTurnsAScrewPin(t *testing.T) {
	level := []any{map[string]any{"name": "level", "pitch": "0 deg"}, map[string]any{"name": "set down", "pitch": "0 deg"}}
	for _, c := range []struct {
		name   string
		change func(tree) tree
		want   string
	}{
		{"a bolt", func(v tree) tree { return v.set("gear/2/pin_kind", "bolt") }, "nothing"},
		{"turned up", func(v tree) tree { return v }, "turning_load"},
		{"moused", func(v tree) tree { return v.set("gear/2/pin_secured", true) }, "nothing"},
		{"left", func(v tree) tree { return v.set("gear/2/left_in_place", true) }, "time"},
		{"not turned", func(v tree) tree { return v.set("phases", level) }, "nothing"},
	} {
		f, _ := c.change(rulesBase(t, "turned_up").set("gear/2/pin_kind", "screw")).compute(t)
		if got, _ := find(t, f, "gear/K1").Field("pin_turned_by"); got != c.want {
			t.Errorf("%s: %v, not %s", c.name, got, c.want)
		}
	}
	f, _ := rulesBase(t, "turned_up").drop("gear/2/pin_kind").compute(t)
	if got := labels(lacks(t, f, "gear/K1", "pin_turned_by")); got != "K1's kind of pin `pin_kind` at #/gear/2" {
		t.Errorf("it waits for %q", got)
	}
}
