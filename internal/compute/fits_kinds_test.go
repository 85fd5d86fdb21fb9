package compute_test

import "testing"

// TestFlatSlingsTakeTheirWidth: 60 mm of webbing in a bow of 43 mm; it goes over any
// hook, and straight on a plate it is no fit.
func TestFlatSlingsTakeTheirWidth(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").withSlings(t, ofWeb).compute(t)
	near(t, "webbing in a bow", figure(t, f, "fit/hook/1/K1/round", "filled_ratio"), 60.0/43, 1e-8)
	near(t, "side by side on the hook", figure(t, f, "gather/hook", "needs_m"), 0.12, 1e-9)
	if got := fitsBelow(f, "fit/hook/1/S1"); got != "" {
		t.Errorf("fits of the sling itself: %s", got)
	}
	f, _ = rulesBase(t, "two_legs").withSlings(t, ofWeb).set("rigging/0/legs/0/down", []any{"S1"}).compute(t)
	if got := fitsBelow(f, "fit/hook/1"); got != "" {
		t.Errorf("straight on a plate: %s", got)
	}
}

// TestNarrowEyesOfWebbing: an eye of 60 mm webbing folded to 30 mm goes into a bow of 43
// mm, and is 16 mm thick where it passes the throat; one wider than its webbing does not
// count, nor does one of webbing without eyes.
func TestNarrowEyesOfWebbing(t *testing.T) {
	with := func(width string) tree {
		return rulesBase(t, "two_legs").withSlings(t, ofWeb).set("gear/0/eye_width", width).set("gear/1/eye_width", width)
	}
	f, _ := with("30 mm").compute(t)
	near(t, "eye in a bow", figure(t, f, "fit/hook/1/K1/round", "filled_ratio"), 30.0/43, 1e-8)
	near(t, "side by side on the hook", figure(t, f, "gather/hook", "needs_m"), 0.06, 1e-9)
	near(t, "past the throat", figure(t, f, "hook_use/hook", "widest_m"), 0.016, 1e-9)
	near(t, "contact", figure(t, f, "bearing/hook/1/S1/upper", "contact_width_m"), 0.03, 1e-9)
	for what, v := range map[string]tree{"wider than the webbing": with("90 mm"), "no eyes": with("30 mm").set("gear/0/endless", true)} {
		f, _ = v.compute(t)
		near(t, what, figure(t, f, "fit/hook/1/K1/round", "needs_m"), 0.06, 1e-9)
	}
}

// TestHandlesOfMesh: what hangs is the handle of 30 mm, and not 100 mm of mesh; without
// it the fit waits for it, and the throat of a hook for its thickness.
func TestHandlesOfMesh(t *testing.T) {
	v := rulesBase(t, "two_legs").withSlings(t, ofMesh)
	for _, n := range []string{"0", "1"} {
		v.set("gear/"+n+"/handle_width", "30 mm").set("gear/"+n+"/handle_thickness", "25 mm")
	}
	f, _ := v.compute(t)
	near(t, "handle in a bow", figure(t, f, "fit/hook/1/K1/round", "needs_m"), 0.03, 1e-9)
	near(t, "side by side on the hook", figure(t, f, "gather/hook", "needs_m"), 0.06, 1e-9)
	near(t, "past the throat", figure(t, f, "hook_use/hook", "widest_m"), 0.025, 1e-9)
	f, _ = v.drop("gear/0/handle_width", "gear/0/handle_thickness").compute(t)
	for key, c := range map[string][2]string{
		"fit/hook/1/K1/round": {"needs_m", "the width of S1's handles `handle_width` at #/gear/0"},
		"gather/hook":         {"needs_m", "the width of S1's handles `handle_width` at #/gear/0"},
		"hook_use/hook":       {"widest_m", "the thickness of S1's handles `handle_thickness` at #/gear/0"},
	} {
		if got := labels(lacks(t, f, key, c[0])); got != c[1] {
			t.Errorf("%s waits for %q", key, got)
		}
	}
}

// TestChainEndsAreNoFit: no plan describes the couplings of a chain; side by side
// they count as twice its size.
func TestChainEndsAreNoFit(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").withSlings(t, ofChain).compute(t)
	near(t, "side by side on the hook", figure(t, f, "gather/hook", "needs_m"), 2*2*0.01, 1e-9)
	if got := fitsBelow(f, "fit/hook/1/S1"); got != "" {
		t.Errorf("fits of the chain: %s", got)
	}
}

// TestEndsOfPartsInLine: a rope's eye over a swivel's eye of 16 mm and in its
// opening of 30 mm, a shackle's bow on its lower jaw of 28 mm; of one of which
// nothing is given all is asked for once.
func TestEndsOfPartsInLine(t *testing.T) {
	with := func(ends string, down ...any) tree {
		return rulesBase(t, "two_legs").
			add(map[string]any(parse(t, "{id: SW, kind: swivel, length: 100 mm, rated_load: 3 t, turns_under_load: false"+ends+"}"))).
			set("rigging/0/legs/0/down", down)
	}
	const ends = ", upper_opening: 30 mm, lower_opening: 28 mm, lower_pin_diameter: 18 mm, eye_section: 16 mm"
	f, _ := with(ends, "S1", "SW", "K1").compute(t)
	says(t, f, "fit/hook/1/S1/lower", "what", "eye_over_link")
	near(t, "eye over the swivel's eye", figure(t, f, "fit/hook/1/S1/lower", "body_width_m"), 0.016, 1e-9)
	near(t, "eye in the swivel's eye", figure(t, f, "fit/hook/1/S1/lower/in", "room_m"), 0.030, 1e-9)
	near(t, "shackle in its jaw", figure(t, f, "fit/hook/1/K1/in", "filled_ratio"), 16.0/28, 1e-9)
	near(t, "its pin in the shackle", figure(t, f, "fit/hook/1/K1/round", "needs_m"), 0.018, 1e-9)
	f, _ = with("", "S1", "SW", "K1").compute(t)
	gap := lacks(t, f, "fit/hook/1/K1/in", "filled_ratio")
	if len(gap.Inputs) != 0 || len(gap.Reasons) != 1 {
		t.Errorf("it waits for %q", labels(gap))
	}
}

// TestBraidsBendByTheirComponents: round a bow of 16 mm a braid of 9.5 mm rope is
// bent to 1.68 d, and fills a bow by its body.
func TestBraidsBendByTheirComponents(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").withSlings(t, braided).compute(t)
	near(t, "bend", figure(t, f, "fit/hook/1/S1/lower", "bend_d"), 16/9.5, 1e-8)
	near(t, "in the bow", figure(t, f, "fit/hook/1/S1/lower/in", "needs_m"), 0.034, 1e-9)
}
