package compute_test

import (
	"fmt"
	"strings"
	"testing"
)

func TestRopeAsDescribed(t *testing.T) {
	v := rulesBase(t, "two_legs").drop("gear/0/finish", "gear/0/lay", "gear/0/construction", "gear/1/core").
		set("gear/0/faults_seen", []any{"kink", "heat"}).set("gear/1/class", "35x7").set("gear/1/lay", "left_lang")
	f := v.facts(t)
	for key, want := range map[string]map[string]any{
		"rope/S1": {"described": "[class core grade]", "core": "iwrc", "faults_seen": "[kink heat]", "rotation_resistant": false, "lang_lay": false},
		"rope/S2": {"described": "[class construction grade finish lay]", "core": "not_given", "faults_seen": "[]", "rotation_resistant": true, "lang_lay": true},
	} {
		for field, w := range want {
			if got, _ := find(t, f, key).Field(field); fmt.Sprint(got) != fmt.Sprint(w) {
				t.Errorf("%s of %s is %v, not %v", field, key, got, w)
			}
		}
	}
}

// TestSleeves: an eye that may have a sleeve, and of which nothing is said,
// may have one of aluminum.
func TestSleeves(t *testing.T) {
	for _, c := range []struct {
		upper, lower map[string]any
		want         string
		tucked       bool
	}{
		{map[string]any{"kind": "flemish_sleeve", "sleeve": "steel"}, map[string]any{"kind": "turn_back_sleeve", "sleeve": "aluminum"}, "[steel aluminum]", false},
		{map[string]any{"kind": "flemish_sleeve", "sleeve": "steel"}, map[string]any{"kind": "flemish_sleeve"}, "[steel not_given]", false},
		{map[string]any{"kind": "flemish_sleeve"}, map[string]any{}, "[not_given]", false},
		{map[string]any{"kind": "hand_tucked"}, map[string]any{"kind": "hidden_tuck"}, "[]", true},
		{map[string]any{"kind": "hand_tucked"}, map[string]any{"kind": "socket"}, "[]", false},
		{map[string]any{"kind": "hand_tucked"}, map[string]any{}, "[not_given]", false},
	} {
		f, _ := rulesBase(t, "two_legs").set("gear/0/eyes", map[string]any{"upper": c.upper, "lower": c.lower}).compute(t)
		r := find(t, f, "rope/S1")
		if got, _ := r.Field("sleeves"); fmt.Sprint(got) != c.want {
			t.Errorf("%v, %v: sleeves %v, not %s", c.upper, c.lower, got, c.want)
		}
		if got, _ := r.Field("tucked_splices"); got != c.tucked {
			t.Errorf("%v, %v: tucked is %v", c.upper, c.lower, got)
		}
	}
}

// clearRope makes S1, of 14 mm, so long with such eyes.
func clearRope(t *testing.T, length string, upper, lower map[string]any) tree {
	return rulesBase(t, "two_legs").set("gear/0/length", length).set("gear/0/eyes", map[string]any{"upper": upper, "lower": lower})
}

// TestClearRope: length less eyes and splices, over 14 mm. A sleeve is taken
// for 3 to 8 diameters, a tuck for 8 to 30, an end of unknown make for 3 to 30
// (common practice).
func TestClearRope(t *testing.T) {
	eye := func(kind, length, splice string) map[string]any {
		e := map[string]any{}
		for k, v := range map[string]string{"kind": kind, "length": length, "splice_length": splice} {
			if v != "" {
				e[k] = v
			}
		}
		return e
	}
	for _, c := range []struct {
		name         string
		length       string
		upper, lower map[string]any
		want         float64 // absent where under 0
		waits        string
	}{
		{"exact", "2.5 m", eye("flemish_sleeve", "300 mm", "70 mm"), eye("flemish_sleeve", "90 mm", "70 mm"), 1970.0 / 14, ""},
		{"exact between 10 and 20", "750 mm", eye("flemish_sleeve", "300 mm", "70 mm"), eye("flemish_sleeve", "100 mm", "70 mm"), 210.0 / 14, ""},
		{"nothing left", "500 mm", eye("flemish_sleeve", "300 mm", "70 mm"), eye("flemish_sleeve", "100 mm", "70 mm"), 0, ""},
		{"plenty with the longest sleeves", "904 mm", eye("flemish_sleeve", "300 mm", ""), eye("turn_back_sleeve", "100 mm", ""), 504.0/14 - 16, ""},
		{"not plenty with the longest sleeves", "903 mm", eye("flemish_sleeve", "300 mm", ""), eye("turn_back_sleeve", "100 mm", ""), -1,
			"the length of S1's upper sleeve or splice `eyes.upper.splice_length` at #/gear/0/eyes/upper; the length of S1's lower sleeve or splice `eyes.lower.splice_length` at #/gear/0/eyes/lower"},
		{"too little with the shortest sleeves", "623 mm", eye("flemish_sleeve", "300 mm", ""), eye("flemish_sleeve", "100 mm", ""), 223.0/14 - 6, ""},
		{"enough with the shortest sleeves", "625 mm", eye("flemish_sleeve", "300 mm", ""), eye("flemish_sleeve", "100 mm", "42 mm"), -1,
			"the length of S1's upper sleeve or splice `eyes.upper.splice_length` at #/gear/0/eyes/upper"},
		{"plenty with the longest tucks", "1.52 m", eye("hand_tucked", "300 mm", ""), eye("hidden_tuck", "100 mm", ""), 1120.0/14 - 60, ""},
		{"eyes of unknown make", "1.52 m", eye("", "300 mm", ""), eye("", "100 mm", ""), 1120.0/14 - 60, ""},
		{"a socket", "2.5 m", eye("socket", "300 mm", ""), eye("flemish_sleeve", "90 mm", "70 mm"), 2040.0 / 14, ""},
		{"an eye of unknown length", "2.5 m", eye("flemish_sleeve", "", ""), eye("flemish_sleeve", "90 mm", ""), -1, "S1's upper eye length `eyes.upper.length` at #/gear/0/eyes/upper"},
		{"too little whatever the eye", "314 mm", eye("flemish_sleeve", "", ""), eye("flemish_sleeve", "90 mm", ""), 224.0/14 - 6, "S1's upper eye length `eyes.upper.length` at #/gear/0/eyes/upper"},
		{"too little though the eye is not known", "313 mm", eye("flemish_sleeve", "", ""), eye("flemish_sleeve", "90 mm", ""), 223.0/14 - 6, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, _ := clearRope(t, c.length, c.upper, c.lower).compute(t)
			if c.want < 0 || c.waits != "" {
				if got := labels(lacks(t, f, "rope/S1", "clear_rope_d")); got != c.waits {
					t.Errorf("it waits for %q, not %q", got, c.waits)
				}
				return
			}
			near(t, "clear rope", figure(t, f, "rope/S1", "clear_rope_d"), c.want, 1e-6)
		})
	}
}

func TestClearRopeWaitsForSizes(t *testing.T) {
	f, _ := rulesBase(t, "two_legs").drop("gear/0/length", "gear/0/diameter", "gear/0/eyes").compute(t)
	want := "S1's diameter `diameter` at #/gear/0; S1's length `length` at #/gear/0; " +
		"S1's upper eye length `eyes.upper.length` at #/gear/0; S1's lower eye length `eyes.lower.length` at #/gear/0"
	if got := labels(lacks(t, f, "rope/S1", "clear_rope_d")); got != want {
		t.Errorf("it waits for %q", got)
	}
}

// TestRopesAreThoseInUse: those of parked legs too, none of idle slings.
func TestRopesAreThoseInUse(t *testing.T) {
	var ids []string
	for _, r := range park(withIdleBridle(rulesBase(t, "bridle")), 3).facts(t).Document.Ropes {
		ids = append(ids, r.ID)
		if !r.InBridle {
			t.Errorf("%s is said to be in no bridle", r.ID)
		}
	}
	if got := strings.Join(ids, " "); got != "S1 S2 S3 S4" {
		t.Errorf("ropes of %s", got)
	}
}

// TestTemperature: the colder of the two is the lowest, whichever the plan
// calls so.
func TestTemperature(t *testing.T) {
	v := hotAndTucked(rulesBase(t, "two_legs")).set("lift/temperature", map[string]any{"lowest": "212 F", "highest": "-10 C"})
	f := v.facts(t)
	for _, key := range []string{"rope/S1", "gear/S1", "gear/K1"} {
		near(t, "lowest", figure(t, f, key, "lowest_c"), -10, 1e-9)
		near(t, "highest", figure(t, f, key, "highest_c"), 100, 1e-9)
	}
	f = rulesBase(t, "two_legs").facts(t)
	if given, _ := find(t, f, "rope/S1").Field("temperature_given"); given != false {
		t.Error("a temperature out of nothing")
	}
}
