package compute_test

import (
	"fmt"
	"strings"
	"testing"

	"liftlint/internal/facts"
)

// TestEyesOverHookAndLink: 2 asin(D / (2 Le - D)), worked by hand: 36 mm over
// 350 mm gives 36/664 and 6.2158 deg; 110 mm gives 110/590 and 21.490 deg.
func TestEyesOverHookAndLink(t *testing.T) {
	const key = "fit/hook/1/S1/upper"
	v := example(t, "pump-skid").set("gear/1/eyes/upper", map[string]any{"length": "350 mm"})
	f := v.facts(t)
	near(t, "angle", figure(t, f, key, "eye_included_angle_deg"), 6.2158, 5e-4)
	near(t, "ratio", figure(t, f, key, "width_over_length_ratio"), 36./350, 1e-9)
	near(t, "bend", figure(t, f, key, "bend_d"), 36./22, 1e-8)
	says(t, f, key, "what", "eye_over_link")
	f = v.drop("rigging/0/by").facts(t)
	near(t, "angle", figure(t, f, key, "eye_included_angle_deg"), 21.4903, 5e-4)
	near(t, "bend", figure(t, f, key, "bend_d"), 110./22, 1e-8)
	says(t, f, key, "what", "eye_over_hook")
}

// says holds a field of a record against a value.
func says(t *testing.T, f *facts.Facts, key, field string, want any) {
	t.Helper()
	if got, ok := find(t, f, key).Field(field); !ok || got != want {
		t.Errorf("%s of %s is %v, not %v", field, key, got, want)
	}
}

func TestFitAsksForWhatItLacks(t *testing.T) {
	const key = "fit/hook/1/S1/upper"
	eye, link := "S1's upper eye length `eyes.upper.length` at #/gear/1/eyes/upper", "ML1's section diameter `section_diameter` at #/gear/0"
	f := example(t, "pump-skid").drop("gear/1/eyes/upper/length", "gear/0/section_diameter").facts(t)
	for field, want := range map[string]string{
		"eye_length_m": eye, "body_width_m": link, "bend_d": link,
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

// fitsBelow lists the kinds of place whose key begins so, in their order.
func fitsBelow(f *facts.Facts, prefix string) string {
	var list []string
	for _, r := range f.Document.Fits {
		if strings.HasPrefix(r.Key, prefix) {
			list = append(list, fmt.Sprintf("%s %s>%s", r.What, r.Inner, r.Outer))
		}
	}
	return strings.Join(list, "; ")
}

// TestEveryPlaceOfALeg: from the hook down, whichever way round shackles are.
func TestEveryPlaceOfALeg(t *testing.T) {
	two := withCollectors(rulesBase(t, "two_legs")).add(hook("H1"))
	const end = "; pin_in_hole K1's pin>the hole of attachment A; plate_in_jaw attachment A>the jaw at K1's pin"
	for _, c := range []struct {
		by, down []any
		want     string
	}{
		{nil, []any{"S1", "K1"}, "eye_over_hook S1's upper eye>the crane hook; eye_over_bow S1's lower eye>K1's bow; eye_in_opening S1's lower eye>K1's bow" + end},
		{[]any{"KU"}, []any{"S1", "K1"}, "eye_over_bow S1's upper eye>KU's bow; eye_in_opening S1's upper eye>KU's bow; eye_over_bow S1's lower eye>K1's bow; eye_in_opening S1's lower eye>K1's bow" + end},
		{[]any{"KL"}, []any{"S1", "K1"}, "eye_over_pin S1's upper eye>KL's pin; eye_in_jaw S1's upper eye>the jaw at KL's pin; eye_over_bow S1's lower eye>K1's bow; eye_in_opening S1's lower eye>K1's bow" + end},
		{[]any{"KX"}, []any{"S1", "K1"}, "eye_over_shackle S1's upper eye>KX; eye_over_bow S1's lower eye>K1's bow; eye_in_opening S1's lower eye>K1's bow" + end},
		{nil, []any{"KU", "S1", "K1"}, "link_over_hook the jaw at KU's pin>the crane hook; eye_over_bow S1's upper eye>KU's bow; eye_in_opening S1's upper eye>KU's bow; eye_over_bow S1's lower eye>K1's bow; eye_in_opening S1's lower eye>K1's bow" + end},
		{[]any{"ML8"}, []any{"KL", "S1", "K1"}, "part_in_link KL's bow>ML8; link_in_bow ML8>KL's bow; eye_over_pin S1's upper eye>KL's pin; eye_in_jaw S1's upper eye>the jaw at KL's pin; eye_over_bow S1's lower eye>K1's bow; eye_in_opening S1's lower eye>K1's bow" + end},
		{nil, []any{"S1", "S2", "K1"}, "eye_over_hook S1's upper eye>the crane hook; eye_over_bow S2's lower eye>K1's bow; eye_in_opening S2's lower eye>K1's bow" + end},
		{nil, []any{"S1", "KX", "K1"}, "eye_over_hook S1's upper eye>the crane hook; eye_over_shackle S1's lower eye>KX; link_in_bow K1's bow>KX; link_in_bow KX>K1's bow" + end},
		{nil, []any{"S1", "H1"}, "eye_over_hook S1's upper eye>the crane hook; eye_over_fitting S1's lower eye>H1's eye; hook_in_hole H1>the hole of attachment A"},
		{nil, []any{"S1", "KL", "H1"}, "eye_over_hook S1's upper eye>the crane hook; eye_over_bow S1's lower eye>KL's bow; eye_in_opening S1's lower eye>KL's bow; link_in_bow H1's eye>the jaw at KL's pin; hook_in_hole H1>the hole of attachment A"},
		{nil, []any{"S1", "KU"}, "eye_over_hook S1's upper eye>the crane hook; eye_over_pin S1's lower eye>KU's pin; eye_in_jaw S1's lower eye>the jaw at KU's pin; bow_in_hole KU's bow>the hole of attachment A; plate_in_bow attachment A>KU's bow"},
		{nil, []any{"S1"}, "eye_over_hook S1's upper eye>the crane hook"},
	} {
		two.set("rigging/0/legs/0/down", c.down)
		two.set("rigging/0/legs/1/down", []any{"S3", "K3"})
		two.drop("rigging/0/by")
		if c.by != nil {
			two.set("rigging/0/by", c.by)
		}
		v := parse(t, string(two.text())).add(map[string]any{"id": "S3", "kind": "wire_rope_sling"}).add(shackle("K3", ""))
		f, _ := v.compute(t)
		if got := fitsBelow(f, "fit/hook/1/"); got != c.want {
			t.Errorf("%v %v:\n%s\nnot\n%s", c.by, c.down, got, c.want)
		}
	}
}

// TestEveryPlaceAboveTheLegs: links, bows and pins over the hook and in one
// another.
func TestEveryPlaceAboveTheLegs(t *testing.T) {
	for by, want := range map[string]string{
		"":           "",
		"ML8":        "link_over_hook ML8>the crane hook",
		"KL":         "link_over_hook KL's bow>the crane hook",
		"KU":         "link_over_hook the jaw at KU's pin>the crane hook",
		"KX":         "link_over_hook KX>the crane hook",
		"KL ML8":     "link_over_hook KL's bow>the crane hook; link_in_bow ML8>the jaw at KL's pin; part_in_link KL's pin>ML8",
		"ML8 KU":     "link_over_hook ML8>the crane hook; part_in_link KU's pin>ML8; link_in_bow ML8>the jaw at KU's pin",
		"ML8 ML9":    "link_over_hook ML8>the crane hook; part_in_link ML9>ML8; part_in_link ML8>ML9",
		"KU KL":      "link_over_hook the jaw at KU's pin>the crane hook; link_in_bow KL's bow>KU's bow; link_in_bow KU's bow>KL's bow",
		"KU ML8 KL":  "link_over_hook the jaw at KU's pin>the crane hook; link_in_bow ML8>KU's bow; part_in_link KU's bow>ML8; part_in_link KL's bow>ML8; link_in_bow ML8>KL's bow",
		"ML8 KX ML9": "link_over_hook ML8>the crane hook; part_in_link KX>ML8; link_in_bow ML8>KX; link_in_bow ML9>KX; part_in_link KX>ML9",
	} {
		v := withCollectors(rulesBase(t, "two_legs"))
		if by != "" {
			v.by(strings.Fields(by)...)
		}
		f, _ := v.compute(t)
		got := fitsBelow(f, "fit/hook/")
		got, _, _ = strings.Cut(got, "eye_over")
		if got = strings.TrimSuffix(got, "; "); got != want {
			t.Errorf("%s: %s\nnot %s", by, got, want)
		}
	}
}

// TestWidthsOfOpenings: which width goes into which opening, as written in the
// plan of two legs and its collectors.
func TestWidthsOfOpenings(t *testing.T) {
	v := withCollectors(rulesBase(t, "two_legs")).by("KL", "ML8").set("rigging/0/legs/0/down", []any{"KU", "S1", "K1"})
	f := v.facts(t)
	for key, want := range map[string][2]float64{
		"fit/hook/KL/over_hook": {0.080, 0.092}, // hook through the bow
		"fit/hook/ML8/in":       {0.028, 0.057}, // link between the ears
		"fit/hook/ML8/round":    {0.038, 0.140}, // pin through the link
		"fit/hook/1/KU/in":      {0.038, 0.140},
		"fit/hook/1/KU/round":   {0.028, 0.057},
		"fit/hook/1/K1/in_hole": {0.019, 0.022},
		"fit/hook/1/K1/jaw":     {0.020, 0.027},
		"fit/hook/2/K2/in_hole": {0.019, 0.022},
		"fit/hook/2/S2/upper":   {},
		"fit/hook/1/S1/lower":   {},
		"fit/hook/1/S1/upper":   {},
		"fit/hook/2/K2/jaw":     {0.020, 0.027},
		"fit/hook/2/S2/lower":   {},
	} {
		if want == [2]float64{} {
			find(t, f, key)
			continue
		}
		near(t, key+" needs", figure(t, f, key, "needs_m"), want[0], 1e-12)
		near(t, key+" has", figure(t, f, key, "room_m"), want[1], 1e-12)
		near(t, key+" filled", figure(t, f, key, "filled_ratio"), want[0]/want[1], 1e-8)
	}
	if n := len(f.Document.Fits); n != 17 {
		t.Errorf("%d fits", n)
	}
}

// TestShackleOfUnknownEnds asks which end the pin is at, and for nothing that
// it may not need.
func TestShackleOfUnknownEnds(t *testing.T) {
	const pin = "KX's pin: at its upper or lower end `pin` at #/gear/6"
	f, _ := withCollectors(rulesBase(t, "two_legs")).by("KX").compute(t)
	for key, fields := range map[string][]string{
		"fit/hook/KX/over_hook": {"room_m", "filled_ratio"},
		"fit/hook/1/S1/upper":   {"body_width_m", "width_over_length_ratio", "eye_included_angle_deg", "bend_d"},
	} {
		for _, field := range fields {
			if got := labels(lacks(t, f, key, field)); got != pin {
				t.Errorf("%s of %s waits for %q", field, key, got)
			}
		}
	}
}

// TestPearIsNarrowerAbove: the inside width of a pear-shaped link is that of its
// wide end, which says only whether the hook is too wide; its upper width says
// the rest.
func TestPearIsNarrowerAbove(t *testing.T) {
	const key = "fit/hook/ML9/over_hook"
	v := withCollectors(rulesBase(t, "two_legs")).by("ML9")
	f := v.facts(t)
	if got := labels(lacks(t, f, key, "filled_ratio")); got != "ML9's upper inside width `upper_width` at #/gear/8" {
		t.Errorf("it waits for %q", got)
	}
	f = v.set("gear/8/upper_width", "90 mm").facts(t)
	near(t, "filled", figure(t, f, key, "filled_ratio"), 80./90, 1e-8)
	v.drop("gear/8/upper_width")
	f = v.set("crane/hook/body_width", "150 mm").facts(t)
	near(t, "filled", figure(t, f, key, "filled_ratio"), 150./140, 1e-8)
	f = v.set("crane/hook/body_width", "80 mm").drop("gear/8/shape").facts(t)
	if got := labels(lacks(t, f, key, "room_m")); got != "ML9's shape `shape` at #/gear/8" {
		t.Errorf("a link of unknown shape waits for %q", got)
	}
	f = v.set("gear/8/shape", "oblong").facts(t)
	near(t, "filled", figure(t, f, key, "filled_ratio"), 80./140, 1e-8)
}

// TestTwoPinsInOneHole are added up, and told once.
func TestTwoPinsInOneHole(t *testing.T) {
	v := rulesBase(t, "two_legs").set("rigging/0/legs/1/end/at", "A").set("gear/3/pin_diameter", "16 mm")
	f, _ := v.compute(t)
	near(t, "both", figure(t, f, "fit/hook/1/K1/in_hole", "needs_m"), 0.035, 1e-12)
	near(t, "the second", figure(t, f, "fit/hook/2/K2/in_hole", "needs_m"), 0.016, 1e-12)
	says(t, f, "fit/hook/1/K1/in_hole", "inner", "K1's pin with K2 beside it")
	f, _ = v.drop("gear/3/pin_diameter").compute(t)
	if got := labels(lacks(t, f, "fit/hook/1/K1/in_hole", "filled_ratio")); got != "K2's pin diameter `pin_diameter` at #/gear/3" {
		t.Errorf("it waits for %q", got)
	}
}

// TestEarsThroughAHole: a shackle turned round in a padeye of 22 mm has ears round a pin
// of 19 mm.
func TestEarsThroughAHole(t *testing.T) {
	const key = "fit/hook/1/K1/in_hole"
	v := rulesBase(t, "two_legs").set("gear/2/pin", "upper")
	f := v.facts(t)
	says(t, f, key, "what", "bow_in_hole")
	near(t, "pin over hole", figure(t, f, key, "pin_over_hole_ratio"), 19.0/22, 1e-8)
	f = v.drop("gear/2/pin_diameter").facts(t)
	if got := labels(lacks(t, f, key, "pin_over_hole_ratio")); got != "K1's pin diameter `pin_diameter` at #/gear/2" {
		t.Errorf("it waits for %q", got)
	}
	f, _ = rulesBase(t, "two_legs").compute(t)
	if _, ok := find(t, f, key).Field("pin_over_hole_ratio"); ok {
		t.Error("it concerns a pin in its hole")
	}
}

// TestRings: what goes through the ring of an eyebolt or a hoist ring is no
// plate.
func TestRings(t *testing.T) {
	v := rulesBase(t, "two_legs").set("load/attachments/0", ring("A", "eyebolt", 0)).set("load/attachments/1", ring("B", "hoist_ring", 2000))
	v.set("rigging/0/legs/1/down", []any{"S2"})
	f, _ := v.compute(t)
	for key, want := range map[string]string{"fit/hook/1/K1/in_hole": "pin_in_ring", "fit/hook/1/K1/jaw": "ring_in_jaw", "fit/hook/2/S2/lower": "eye_over_fitting"} {
		says(t, f, key, "what", want)
	}
	near(t, "ring", figure(t, f, "fit/hook/2/S2/lower", "body_width_m"), 0.018, 1e-12)
}

// TestSocket: what it goes over has to go into its opening, as a thimble's.
func TestSocket(t *testing.T) {
	v := rulesBase(t, "two_legs").set("gear/0/eyes/lower", map[string]any{"kind": "socket", "width": "20 mm"})
	f := v.facts(t)
	says(t, f, "fit/hook/1/S1/lower", "what", "body_in_socket")
	near(t, "filled", figure(t, f, "fit/hook/1/S1/lower", "filled_ratio"), 16./20, 1e-12)
	f = v.drop("gear/0/eyes/lower/width").facts(t)
	if got := labels(lacks(t, f, "fit/hook/1/S1/lower", "filled_ratio")); got != "the inside width of S1's lower socket `eyes.lower.width` at #/gear/0/eyes/lower" {
		t.Errorf("it waits for %q", got)
	}
}

// TestThimbleSize: 16 mm over a rope of 14 mm.
func TestThimbleSize(t *testing.T) {
	v := rulesBase(t, "two_legs").set("gear/0/eyes/lower/thimble_size", "16 mm")
	near(t, "ratio", figure(t, v.facts(t), "fit/hook/1/S1/lower", "thimble_over_rope_ratio"), 16./14, 1e-8)
	says(t, v.facts(t), "fit/hook/1/S1/upper", "thimble_size_given", false)
	f := v.drop("gear/0/diameter").facts(t)
	for _, field := range []string{"thimble_over_rope_ratio", "rope_diameter_m", "bend_d"} {
		if got := labels(lacks(t, f, "fit/hook/1/S1/lower", field)); got != "S1's diameter `diameter` at #/gear/0" {
			t.Errorf("%s waits for %q", field, got)
		}
	}
}

// TestThimbleIsWideInAJaw: one and a half ropes, against one of a soft eye.
func TestThimbleIsWideInAJaw(t *testing.T) {
	v := withCollectors(rulesBase(t, "two_legs")).set("rigging/0/legs/0/down", []any{"S1", "KU"})
	near(t, "thimbled", figure(t, v.facts(t), "fit/hook/1/S1/lower/in", "needs_m"), 0.021, 1e-12)
	v.set("gear/0/eyes/lower/thimble", false)
	near(t, "soft", figure(t, v.facts(t), "fit/hook/1/S1/lower/in", "needs_m"), 0.014, 1e-12)
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
		says(t, f, key, "thimble", want)
	}
}

// TestParkedLegsFitNothing: only what carries is looked at.
func TestParkedLegsFitNothing(t *testing.T) {
	f := park(rulesBase(t, "bridle"), 3).facts(t)
	if got := fitsBelow(f, "fit/hook/4/"); got != "" {
		t.Errorf("a parked leg has %s", got)
	}
	says(t, f, "fit/hook/3/S3/upper", "outer", "IL2")
}
