package compute_test

import "testing"

// TestJawsOfPartsInLineAtPlates: the pin of a swivel's jaw through the hole of a padeye
// and the plate between its cheeks, as for a shackle; in a ring both may be wide.
func TestJawsOfPartsInLineAtPlates(t *testing.T) {
	jaw := func() tree { return rulesBase(t, "swivels").set("rigging/0/legs/0/down", []any{"S1", "K3", "SW1"}) }
	const hole, plate = "fit/hook/1/SW1/lower_in_hole", "fit/hook/1/SW1/lower_jaw"
	f := jaw().facts(t)
	says(t, f, hole, "what", "pin_in_hole")
	says(t, f, hole, "inner", "the pin of SW1's lower end")
	near(t, "pin in the hole", figure(t, f, hole, "filled_ratio"), 18.0/22, 1e-8)
	says(t, f, plate, "what", "plate_in_jaw")
	near(t, "plate in the jaw", figure(t, f, plate, "filled_ratio"), 20.0/28, 1e-8)
	f = jaw().set("load/attachments/0", ring("A", "eyebolt", 0)).facts(t)
	says(t, f, hole, "what", "pin_in_ring")
	says(t, f, plate, "what", "ring_in_jaw")
}

// TestEndsInLineThatNothingIsSaidOf: without pin and eye the pin is asked for; where
// nothing is said of either end the check is open, and waits for no one field.
func TestEndsInLineThatNothingIsSaidOf(t *testing.T) {
	with := func(drop ...string) tree {
		return rulesBase(t, "swivels").set("rigging/0/legs/0/down", []any{"S1", "K3", "SW1"}).drop(drop...)
	}
	const hole = "fit/hook/1/SW1/lower_in_hole"
	f, _ := with("gear/4/lower_pin_diameter", "gear/4/eye_section").compute(t)
	if got := labels(lacks(t, f, hole, "needs_m")); got != "the pin of SW1's lower end, or `eye_section` where that is an eye `lower_pin_diameter` at #/gear/4" {
		t.Errorf("it waits for %q", got)
	}
	f, _ = with("gear/4/lower_pin_diameter", "gear/4/eye_section", "gear/4/upper_opening", "gear/4/lower_opening").compute(t)
	if gap := lacks(t, f, hole, "filled_ratio"); len(gap.Inputs) != 0 || len(gap.Reasons) != 1 {
		t.Errorf("it waits for %q", labels(gap))
	}
}

// TestTwoJawsInOneHole add up, whichever way round the legs are written.
func TestTwoJawsInOneHole(t *testing.T) {
	v := rulesBase(t, "swivels").set("rigging/0/legs/0/down", []any{"S1", "K3", "SW1"}).set("rigging/0/legs/1/end/at", "A")
	f, _ := v.compute(t)
	near(t, "jaw and shackle", figure(t, f, "fit/hook/1/SW1/lower_in_hole", "needs_m"), 0.018+0.019, 1e-12)
}

// TestPartsInLineBelowABeam hang from a point of it by their upper ends: a jaw fits as
// at a padeye, an eye does not go into the plate.
func TestPartsInLineBelowABeam(t *testing.T) {
	below := func(ends string) tree {
		v := rulesBase(t, "spreader")
		leg := v["rigging"].([]any)[1].(map[string]any)["legs"].([]any)[0].(map[string]any)
		leg["down"] = append([]any{"SW"}, leg["down"].([]any)[1:]...)
		return v.add(map[string]any(parse(t, "{id: SW, kind: swivel, length: 100 mm, rated_load: 3 t, turns_under_load: false, "+ends+"}")))
	}
	f, _ := below("upper_opening: 28 mm, upper_pin_diameter: 18 mm, lower_opening: 30 mm, eye_section: 16 mm").compute(t)
	found := false
	for _, fit := range f.Document.Fits {
		found = found || fit.Inner == "the pin of SW's upper end" && fit.What == "pin_in_hole"
	}
	if !found {
		t.Error("the pin of the upper jaw is not fitted")
	}
	if got := closedFits(t, below("upper_opening: 28 mm, lower_pin_diameter: 18 mm, lower_opening: 30 mm, eye_section: 16 mm")); len(got) != 1 {
		t.Errorf("an eye below a beam: %q", got)
	}
}
