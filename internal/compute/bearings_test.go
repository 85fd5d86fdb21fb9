package compute_test

import (
	"testing"
)

// TestFabricBears: webbing of 30 mm on the crane hook of 80 mm and on a bow of 16 mm,
// with the force of its leg; pressure is that over thickness times width.
func TestFabricBears(t *testing.T) {
	f, _ := rulesBase(t, "web").compute(t)
	force := figure(t, f, "part/hook/1/W1", "load_n")
	for end, c := range map[string]struct {
		on    string
		thick float64
	}{"upper": {"the crane hook", 0.080}, "lower": {"K1's bow", 0.016}} {
		key := "bearing/hook/1/W1/" + end
		says(t, f, key, "on", c.on)
		near(t, end, figure(t, f, key, "pressure_pa"), force/(c.thick*0.030), 1)
	}
	near(t, "eye over the hook", figure(t, f, "bearing/hook/1/W1/upper", "eye_length_over_body_times"), 3.75, 1e-9)
	f, _ = rulesBase(t, "web").set("gear/2/inside_width", "25 mm").compute(t)
	near(t, "in a narrow bow", figure(t, f, "bearing/hook/1/W1/lower", "contact_width_m"), 0.025, 1e-9)
}

// TestEyesOfWebbingThatMatter: every usual one goes over a bow, not every one over the
// hook of a crane; endless slings have none.
func TestEyesOfWebbingThatMatter(t *testing.T) {
	f, _ := rulesBase(t, "web").drop("gear/0/eye_length").compute(t)
	says(t, f, "bearing/hook/1/W1/lower", "eye_matters", false)
	says(t, f, "bearing/hook/1/W1/upper", "eye_matters", true)
	if got := labels(lacks(t, f, "bearing/hook/1/W1/upper", "eye_length_over_body_times")); got != "the length of W1's eyes `eye_length` at #/gear/0" {
		t.Errorf("waits for %q", got)
	}
	f, _ = rulesBase(t, "web").drop("gear/0/eye_length").set("gear/0/endless", true).compute(t)
	says(t, f, "bearing/hook/1/W1/upper", "eye_matters", false)
	f, _ = rulesBase(t, "web").drop("gear/0/eye_length", "gear/2/bow_diameter", "gear/0/width").compute(t)
	if got := labels(lacks(t, f, "bearing/hook/1/W1/lower", "pressure_pa")); got != "the section of K1's bow `bow_diameter` at #/gear/2; W1's width `width` at #/gear/0" {
		t.Errorf("waits for %q", got)
	}
}

// TestBasketsOfRoundSlings: in a basket that goes up to the same place one end bears as
// the other does.
func TestBasketsOfRoundSlings(t *testing.T) {
	f, _ := rulesBase(t, "round_slings").compute(t)
	if n := len(f.Document.Bearings); n != 2 {
		t.Errorf("%d bearings of two baskets", n)
	}
	says(t, f, "bearing/hook/1/R1/upper", "on", "ML1")
}
