package compute_test

import (
	"math"
	"testing"
)

// TestCraneHook: what hangs in it, and how far from plumb.
func TestCraneHook(t *testing.T) {
	const key = "hook_use/hook"
	for _, c := range []struct {
		by     []string
		passes string
		widest float64
		legs   int
	}{
		{nil, "S1's upper eye", 0.014, 2},
		{[]string{"ML8"}, "ML8", 0.028, 0},
		{[]string{"KL"}, "KL's bow", 0.035, 0},
		{[]string{"KU", "ML8"}, "KU's pin", 0.038, 0},
	} {
		v := withCollectors(rulesBase(t, "two_legs"))
		if c.by != nil {
			v.by(c.by...)
		}
		f := v.facts(t)
		says(t, f, key, "passes", c.passes)
		says(t, f, key, "legs_direct", c.legs)
		says(t, f, key, "of", "crane")
		near(t, "widest", figure(t, f, key, "widest_m"), c.widest, 1e-12)
		near(t, "filled", figure(t, f, key, "throat_filled_ratio"), c.widest/0.070, 1e-8)
		if _, known := find(t, f, key).Field("off_axis_deg"); known != (c.legs > 0) {
			t.Errorf("%v: an angle from its axis is known: %v", c.by, known)
		}
	}
	// Two legs of 2.56 m to points 2 m apart: asin(1 / 2.56), less their stretch.
	f := rulesBase(t, "two_legs").facts(t)
	near(t, "off its axis", figure(t, f, key, "off_axis_deg"), math.Asin(1/2.56)*180/math.Pi, 0.05)
}

func TestCraneHookAsksForWhatItLacks(t *testing.T) {
	f := withCollectors(rulesBase(t, "two_legs")).drop("crane", "load/mass", "gear/0/diameter").facts(t)
	for field, want := range map[string]string{
		"latch":               "the latch of the crane hook `crane.hook.latch` at #/rigging/0/from",
		"throat_m":            "the throat of the crane hook `crane.hook.throat` at #/rigging/0/from",
		"off_axis_deg":        "the load's mass `mass` at #/load",
		"widest_m":            "S1's diameter `diameter` at #/gear/0",
		"throat_filled_ratio": "S1's diameter `diameter` at #/gear/0; the throat of the crane hook `crane.hook.throat` at #/rigging/0/from",
	} {
		if got := labels(lacks(t, f, "hook_use/hook", field)); got != want {
			t.Errorf("%s waits for %q", field, got)
		}
	}
	says(t, f, "hook_use/hook", "passes", "S1's upper eye")
}

// TestThickestOfSeveralPasses: a thimble takes one and a half ropes, a shackle
// its bow.
func TestThickestOfSeveralPasses(t *testing.T) {
	v := withCollectors(rulesBase(t, "two_legs")).set("gear/1/eyes/upper/thimble", true)
	f := v.facts(t)
	says(t, f, "hook_use/hook", "passes", "S2's upper eye")
	near(t, "thimbled", figure(t, f, "hook_use/hook", "widest_m"), 0.021, 1e-12)
	f = v.set("rigging/0/legs/0/down", []any{"KL", "S1", "K1"}).facts(t)
	says(t, f, "hook_use/hook", "passes", "KL's bow")
	near(t, "bow", figure(t, f, "hook_use/hook", "widest_m"), 0.035, 1e-12)
}

// TestSlingHooks: one record a hook that carries, with the plate that it takes.
func TestSlingHooks(t *testing.T) {
	v := rulesBase(t, "bridle")
	for i, id := range []string{"K1", "K2", "K3", "K4"} {
		v["gear"].([]any)[8+i] = hook(id)
	}
	v.drop("gear/9/latch", "gear/9/points", "gear/9/throat").set("gear/10/made_for", "foundry").set("gear/10/points", "inward")
	f := park(v, 3).facts(t)
	if n := len(f.Document.HookUses); n != 4 { // that of the crane among them
		t.Fatalf("%d hooks in use", n)
	}
	const first, second, third = "hook_use/hook/1/K1", "hook_use/hook/2/K2", "hook_use/hook/3/K3"
	says(t, f, first, "latch", "works")
	says(t, f, first, "made_for", "lifting")
	says(t, f, first, "points", "outward")
	says(t, f, first, "passes", "attachment A")
	near(t, "plate in the throat", figure(t, f, first, "throat_filled_ratio"), 25./30, 1e-8)
	says(t, f, third, "made_for", "foundry")
	says(t, f, third, "points", "inward")
	for field, want := range map[string]string{
		"latch":               "the latch of K2 `latch` at #/gear/9",
		"points":              "which way K2 points `points` at #/gear/9",
		"throat_filled_ratio": "the throat of K2 `throat` at #/gear/9",
	} {
		if got := labels(lacks(t, f, second, field)); got != want {
			t.Errorf("%s waits for %q", field, got)
		}
	}
}
