package compute_test

import "testing"

// TestMarginOfALeg is what its most used part has left, and unknown with any part.
func TestMarginOfALeg(t *testing.T) {
	f := rulesBase(t, "two_legs").facts(t)
	most, name := 0.0, ""
	for part, id := range map[string]string{"part/hook/1/S1": "S1", "part/hook/1/K1": "K1", "part/attachment/A": "A"} {
		if used := figure(t, f, part, "used_ratio"); used > most {
			most, name = used, id
		}
	}
	near(t, "margin", figure(t, f, "leg/hook/1", "margin_ratio"), 1-most, 1e-8)
	says(t, f, "leg/hook/1", "weakest_part", name)
	f = rulesBase(t, "two_legs").drop("gear/2/rated_load").facts(t)
	if got := labels(lacks(t, f, "leg/hook/1", "margin_ratio")); got != "K1's rated load `rated_load` at #/gear/2" {
		t.Errorf("waits for %q", got)
	}
	figure(t, f, "leg/hook/2", "margin_ratio")
}

// TestPhaseOfParts: turned up, the tail carries the most while the load is level,
// the head when it stands upright.
func TestPhaseOfParts(t *testing.T) {
	f := example(t, "vessel-reviewed").facts(t)
	for key, want := range map[string]string{
		"part/tail/1/T1": "level", "part/attachment/tail_lug": "level", "attachment/tail_lug": "level",
		"part/head/1/M1": "turning at 90 deg", "part/LB1": "turning at 90 deg",
	} {
		if key == "part/LB1" {
			key = "part/head/1/LB1"
		}
		got, _ := find(t, f, key).Field("phase")
		if phase, _ := got.(string); phase != want && !(want != "level" && phase == "upright") {
			t.Errorf("%s: %v, want %s", key, got, want)
		}
	}
}

// TestSwivelInLine beside an ordinary rope, a rotation-resistant one and chain.
func TestSwivelInLine(t *testing.T) {
	with := func(turns string, change func(tree) tree) any {
		v := change(rulesBase(t, "two_legs")).
			add(map[string]any(parse(t, "{id: SW, kind: swivel, length: 100 mm, rated_load: 3 t"+turns+"}"))).
			set("rigging/0/legs/0/down", []any{"SW", "S1", "K1"})
		f, _ := v.compute(t)
		says(t, f, "leg/hook/2", "swivel_in_line", "no")
		got, _ := find(t, f, "leg/hook/1").Field("swivel_in_line")
		return got
	}
	as := func(v tree) tree { return v }
	for _, c := range []struct {
		turns  string
		change func(tree) tree
		want   string
	}{
		{", turns_under_load: true", as, "load_bearing"},
		{", turns_under_load: false", as, "no"},
		{"", as, "not_given"},
		{", turns_under_load: true", func(v tree) tree { return v.set("gear/0/class", "19x7") }, "no"},
		{", turns_under_load: true", func(v tree) tree { return v.withSlings(t, ofChain) }, "no"},
	} {
		if got := with(c.turns, c.change); got != c.want {
			t.Errorf("%q: %v, want %s", c.turns, got, c.want)
		}
	}
}
