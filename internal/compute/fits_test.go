package compute_test

import "testing"

// TestEyesOverHookAndLink: 2 asin(D / (2 Le - D)), worked by hand: 36 mm over
// 350 mm gives 36/664 and 6.2158 deg; 110 mm gives 110/590 and 21.490 deg.
func TestEyesOverHookAndLink(t *testing.T) {
	f := example(t, "pump-skid").facts(t)
	near(t, "angle", figure(t, f, "fit/hook/1/S1/upper", "eye_included_angle_deg"), 6.2158, 5e-4)
	near(t, "ratio", figure(t, f, "fit/hook/1/S1/upper", "width_over_length_ratio"), 36./350, 1e-9)
	if what, _ := find(t, f, "fit/hook/1/S1/upper").Field("what"); what != "eye_over_link" {
		t.Errorf("the eye goes over %v", what)
	}
	f = example(t, "pump-skid").drop("rigging/0/by").facts(t)
	near(t, "angle", figure(t, f, "fit/hook/1/S1/upper", "eye_included_angle_deg"), 21.4903, 5e-4)
	if what, _ := find(t, f, "fit/hook/1/S1/upper").Field("what"); what != "eye_over_hook" {
		t.Errorf("the eye goes over %v", what)
	}
}

func TestFitAsksForWhatItLacks(t *testing.T) {
	const key = "fit/hook/1/S1/upper"
	eye, link := "S1's upper eye length `eyes.upper.length` at #/gear/1/eyes/upper", "ML1's section diameter `section_diameter` at #/gear/0"
	f := example(t, "pump-skid").drop("gear/1/eyes/upper/length", "gear/0/section_diameter").facts(t)
	for field, want := range map[string]string{
		"eye_length_m": eye, "body_width_m": link,
		"width_over_length_ratio": eye + "; " + link, "eye_included_angle_deg": eye + "; " + link,
	} {
		if got := labels(lacks(t, f, key, field)); got != want {
			t.Errorf("%s waits for %q, not %q", field, got, want)
		}
	}
	hook := "the width of the crane hook's section `crane.hook.body_width` at #/rigging/0/from"
	f = example(t, "pump-skid").drop("rigging/0/by", "crane", "gear/1/eyes").facts(t)
	want := "S1's upper eye length `eyes.upper.length` at #/gear/1; " + hook
	if got := labels(lacks(t, f, key, "eye_included_angle_deg")); got != want {
		t.Errorf("without crane and eyes it waits for %q, not %q", got, want)
	}
}

// TestShackleAtTheTop has no eye to spread.
func TestShackleAtTheTop(t *testing.T) {
	v := example(t, "pump-skid").set("rigging/0/legs/0/down", []any{"K1", "S1"})
	f := v.facts(t)
	if n := len(f.Document.Fits); n != 3 {
		t.Errorf("%d fits", n)
	}
}

// TestThimble: both spellings of true that YAML has, and an eye without it.
func TestThimble(t *testing.T) {
	text := `
liftlint: 1
lift: {id: A, title: A}
load:
  attachments: [{id: A, kind: padeye}, {id: B, kind: padeye}]
gear:
  - {id: S1, kind: wire_rope_sling, eyes: {upper: {thimble: True}}}
  - {id: S2, kind: wire_rope_sling}
rigging:
  - {from: hook, legs: [{down: [S1], end: {kind: to, at: A}}, {down: [S2], end: {kind: to, at: B}}]}
`
	f, _ := computeText(t, text)
	for key, want := range map[string]bool{"fit/hook/1/S1/upper": true, "fit/hook/2/S2/upper": false} {
		if got, _ := find(t, f, key).Field("thimble"); got != want {
			t.Errorf("%s: thimble %v", key, got)
		}
	}
}
