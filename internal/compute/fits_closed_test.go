package compute_test

import (
	"slices"
	"testing"
)

// closedFits lists the places of a plan where a closed eye is in a closed eye.
func closedFits(t *testing.T, v tree) []string {
	t.Helper()
	f, _ := v.compute(t)
	var list []string
	for _, fit := range f.Document.Fits {
		if fit.BothClosed {
			list = append(list, fit.Inner+" in "+fit.Outer)
		}
	}
	return list
}

// TestClosedEyesInClosedEyes: a swivel has an eye above and a jaw below. A shackle, a
// jaw and the end of a chain open; links and hooks are made into their slings.
func TestClosedEyesInClosedEyes(t *testing.T) {
	down := func(v tree, list ...any) tree { return v.set("rigging/0/legs/0/down", list) }
	swivels := func() tree { return rulesBase(t, "swivels") }
	with := func(item map[string]any) tree {
		v := swivels()
		return v.set("gear", append(v["gear"].([]any), item))
	}
	ring := map[string]any(parse(t, "{id: LC, kind: load_cell, rated_load: 3 t, length: 120 mm, upper_opening: 30 mm, lower_opening: 30 mm, eye_section: 16 mm}"))
	hook := map[string]any(parse(t, "{id: K1, kind: hook, rated_load: 3 t, inside_length: 60 mm, eye_diameter: 14 mm, body_width: 19 mm}"))
	for name, c := range map[string]struct {
		plan tree
		want []string
	}{
		"a shackle between":              {swivels(), nil},
		"a sling's eye":                  {down(swivels(), "S1", "SW1", "K1"), []string{"S1's lower eye in SW1's upper end"}},
		"a jaw above":                    {down(swivels().set("gear/4/upper_pin_diameter", "18 mm"), "S1", "SW1", "K1"), nil},
		"ends of which nothing is said":  {down(swivels().drop("gear/4/eye_section", "gear/4/upper_opening", "gear/4/lower_opening", "gear/4/lower_pin_diameter"), "S1", "SW1", "K1"), nil},
		"eye below the jaw of a swivel":  {down(with(ring), "S1", "K3", "SW1", "LC", "K1"), nil},
		"eye below the eye of a swivel":  {down(with(ring).drop("gear/4/lower_pin_diameter"), "S1", "K3", "SW1", "LC", "K1"), []string{"LC's upper end in SW1's lower end"}},
		"the eye of a hook in one":       {down(swivels().set("gear/2", hook).drop("gear/4/lower_pin_diameter"), "S1", "K3", "SW1", "K1"), []string{"K1's eye in SW1's lower end"}},
		"an endless sling on one":        {down(swivels().set("gear/0", map[string]any(parse(t, "{id: S1, kind: round_sling, width: 40 mm, length: 2.5 m}"))), "S1", "SW1", "K1"), []string{"S1 in SW1's upper end"}},
		"the end of a chain in one":      {down(swivels().set("gear/0", map[string]any(parse(t, "{id: S1, kind: chain_sling, size: 10 mm, length: 2.5 m}"))), "S1", "SW1", "K1"), nil},
		"an eye on a padeye":             {down(with(ring), "S1", "K3", "LC"), []string{"LC's lower end in the hole of attachment A"}},
		"an eye in a ring":               {down(with(ring).set("load/attachments/0/kind", "eyebolt"), "S1", "K3", "LC"), []string{"LC's lower end in the hole of attachment A"}},
		"a jaw on a padeye":              {down(swivels(), "S1", "K3", "SW1"), nil},
		"a socket, which may have a pin": {down(swivels().set("gear/0/eyes/lower", map[string]any{"kind": "socket", "width": "30 mm"}), "S1", "SW1", "K1"), nil},
	} {
		if got := closedFits(t, c.plan); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, not %q", name, got, c.want)
		}
	}
}
