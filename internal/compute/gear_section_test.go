package compute_test

import (
	"math"
	"testing"
)

// TestHeldAgainstTheWeakestSection: steel at 1000 N/mm2, 600 in a pin, under four
// times the rated load; fabric at 1000 N/mm2 and mesh at 400 under five times, worked
// by hand.
func TestHeldAgainstTheWeakestSection(t *testing.T) {
	const shortTon, tonne = 2000 * 0.45359237 * gravity, 1000 * gravity
	pin := func(mm float64) float64 { return 2 * math.Pi / 4 * mm * mm * 600 / 4 }
	bars := func(mm float64) float64 { return 2 * math.Pi / 4 * mm * mm * 1000 / 4 }
	for _, c := range []struct {
		name, base, key, section string
		change                   func(tree)
		ratio                    float64
	}{
		{"pin of 19 mm", "two_legs", "gear/K1", "its pin", func(tree) {}, 3.25 * shortTon / pin(19)},
		{"bow of 10 mm", "two_legs", "gear/K1", "its bow", func(v tree) { v.set("gear/2/bow_diameter", "10 mm") }, 3.25 * shortTon / bars(10)},
		{"no pin given", "two_legs", "gear/K1", "its bow", func(v tree) { v.drop("gear/2/pin_diameter") }, 3.25 * shortTon / bars(16)},
		{"swivel", "swivels", "gear/SW1", "its lower pin", func(tree) {}, 3 * tonne / pin(18)},
		{"swivel with two eyes", "swivels", "gear/SW1", "its eye", func(v tree) { v.drop("gear/4/lower_pin_diameter") }, 3 * tonne / (3 * 256 * 1000 / 4)},
		{"link", "round_slings", "gear/ML1", "its section", func(tree) {}, 8 * tonne / bars(32)},
		{"webbing", "web", "gear/W1", "its width and thickness", func(tree) {}, 2 * tonne / (30 * 9 * 1000 / 5)},
		{"webbing rated for a choke and a basket alone", "web", "gear/W1", "its width and thickness", func(v tree) {
			v.drop("gear/0/tag/rated_load").set("gear/0/tag/basket_rated_load", "10 t")
		}, 5 * tonne / (30 * 9 * 1000 / 5)},
	} {
		v := rulesBase(t, c.base)
		c.change(v)
		f, _ := v.compute(t)
		says(t, f, c.key, "section", c.section)
		near(t, c.name, figure(t, f, c.key, "rated_over_section_ratio"), c.ratio, 1e-9)
	}
}

// TestHeldAgainstNoSection: rope and chain have a table of their own; where the plan
// gives no size, or no rated load, there is nothing to hold.
func TestHeldAgainstNoSection(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").drop("gear/2/pin_diameter", "gear/2/bow_diameter", "gear/3/rated_load").compute(t)
	for _, key := range []string{"gear/S1", "gear/K1", "gear/K2"} {
		says(t, f, key, "section_held", false)
		lacks(t, f, key, "rated_over_section_ratio")
	}
	f, _ = rulesBase(t, "web").drop("gear/0/thickness").set("gear/1/tag/condition", "illegible").compute(t)
	says(t, f, "gear/W1", "section_held", false)
	says(t, f, "gear/W2", "section_held", false)
}

// TestHooksBySection: 2 t on a bowl of 18 mm, of which the square counts, and on
// an eye of 12 mm.
func TestHooksBySection(t *testing.T) {
	v := rulesBase(t, "two_legs").set("gear/2", map[string]any{"id": "K1", "kind": "hook", "rated_load": "2 t", "body_width": "18 mm", "eye_diameter": "12 mm"})
	f, _ := v.compute(t)
	says(t, f, "gear/K1", "section", "its bowl")
	near(t, "bowl", figure(t, f, "gear/K1", "rated_over_section_ratio"), 2000*gravity/(18*18*1000/4), 1e-9)
	f, _ = v.set("gear/2/eye_diameter", "6 mm").compute(t)
	says(t, f, "gear/K1", "section", "its eye")
}
