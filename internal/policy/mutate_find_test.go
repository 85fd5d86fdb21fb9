package policy_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/policy"
)

// TestWhatIsChanged: under tests that see nothing every mutant that loads
// survives, so that the survivors are all that is changed, in their order.
func TestWhatIsChanged(t *testing.T) {
	for _, c := range []struct {
		name, params, body string
		want               []string
		stillborn          int
	}{
		{"under", "", "item.length_m < 2.50", []string{
			"item.length_m < 2.50 was taken out", "< became <=", "< became >=", "2.5 became 2.625", "2.5 became 2.375",
		}, 0},
		{"at most", "", "item.length_m <= -4", []string{
			"item.length_m <= -4 was taken out", "<= became <", "-4 became -3.8", "-4 became -4.2",
		}, 0},
		{"over, as a call", "", "gt(item.length_m, 1e2)", []string{
			"gt became gte", "gt became lte", "gt(item.length_m, 1e2) was taken out", "100 became 105", "100 became 95",
		}, 0},
		{"at least, on two lines", "", "item.length_m # ü\n\t>= 0", []string{
			"item.length_m # ü >= 0 was taken out", ">= became >",
		}, 0},
		{"within brackets", "", `((item.id == "S1") == true)`, []string{
			`((item.id == "S1") == true) was taken out`, "== became !=", "== became !=",
		}, 0},
		{"in", "", `item.kind in ["hook", "bridle"]`, []string{
			`item.kind in ["hook", "bridle"] was taken out`,
			`item.kind in ["hook", "bridle"] became not item.kind in ["hook", "bridle"]`,
		}, 0},
		{"not in", "", `not "knotted" in item.eye_kinds`, []string{
			`not "knotted" in item.eye_kinds was taken out`, `not "knotted" in item.eye_kinds became "knotted" in item.eye_kinds`,
		}, 0},
		{"not before brackets", "", `not(item.id == "S1")`, []string{
			`not(item.id == "S1") was taken out`, `not(item.id == "S1") became (item.id == "S1")`, "== became !=",
		}, 0},
		{"what may be absent, not to be negated", "", `item.pin_kind in ["bolt", "round"]`, []string{
			`item.pin_kind in ["bolt", "round"] was taken out`,
		}, 1},
		{"bare", "", "item.in_bridle", []string{"item.in_bridle was taken out"}, 0},
		{"true", "", "true", []string{}, 0},
		{"two on a line", "", `item.uses >= 2; item.id != "S1"`, []string{
			"item.uses >= 2 was taken out", ">= became >", "2 became 3", "2 became 1",
			`item.id != "S1" was taken out`, "!= became ==",
		}, 0},
		{"within a comprehension", "wanted: [maker]", "lacking := [f | some f in p.wanted; not f in item.tag.shows]\ncount(lacking) > 0", []string{
			"not f in item.tag.shows was taken out", "not f in item.tag.shows became f in item.tag.shows",
			"> became >=", "> became <=", "0 became 1", "0 became -1",
		}, 1}, // a name that is used no more is refused
		{"what is gathered to be counted", "", `count([1 | some l in item.labels; l == "a"]) == 2`, []string{
			`count([1 | some l in item.labels; l == "a"]) == 2 was taken out`, `l == "a" was taken out`, "== became !=",
			"== became !=", "2 became 3", "2 became 1",
		}, 0},
		{"no whole number", "", "item.uses * 0.5 > 3", []string{
			"item.uses * 0.5 > 3 was taken out", "0.5 became 0.525", "0.5 became 0.475", "> became >=", "> became <=",
			"3 became 3.15", "3 became 2.85",
		}, 0},
		{"a named value", "", "n := item.uses\nn > 20", []string{
			"> became >=", "> became <=", "20 became 21", "20 became 19",
		}, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := mutate(t, own(trial("try", c.params, c.body), blind("try")), nil)
			if len(got) != 1 || got[0].Killed != 0 || got[0].Stillborn != c.stillborn {
				t.Fatalf("%+v", got)
			}
			if diff := cmp.Diff(c.want, whats(got[0])); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestDefaultsThatAreMoved(t *testing.T) {
	for _, c := range []struct {
		name, params, body string
		want               []string
	}{
		{"up and down", "most_m: 0.15", "item.length_m > p.most_m", []string{"8:7: most_m 0.15 became 0.1575", "8:7: most_m 0.15 became 0.1425"}},
		{"with bounds", "most_c: {default: -40, at_least: -60, at_most: 10}", "item.lowest_c > p.most_c", []string{"8:16: most_c -40 became -38", "8:16: most_c -40 became -42"}},
		{"not over what it can be", "most_c: {at_most: 82, default: 80}", "item.lowest_c > p.most_c", []string{"8:29: most_c 80 became 76"}},
		{"not under what it can be", `most_c: {"default": 80, at_least: 79}`, "item.lowest_c > p.most_c", []string{"8:16: most_c 80 became 84"}},
		{"on a line of its own", "most_c:\n  at_least: 0\n  default: 80 # usual\n", "item.lowest_c > p.most_c", []string{"10:9: most_c 80 became 84", "10:9: most_c 80 became 76"}},
		{"on the next line", "most_c:\n  80", "item.lowest_c > p.most_c", []string{"8:7: most_c 80 became 84", "8:7: most_c 80 became 76"}},
		{"whole", "most: 2", "item.uses > p.most", []string{"8:7: most 2 became 3", "8:7: most 2 became 1"}},
		{"whole in one place alone", "most: 20", "item.uses > p.most\nitem.length_m > p.most", []string{"8:7: most 20 became 21", "8:7: most 20 became 19"}},
		{"a share of a whole number", "most: 0.5", "item.uses > p.most", []string{"8:7: most 0.5 became 0.525", "8:7: most 0.5 became 0.475"}},
		{"zero", "most_m: 0", "item.length_m > p.most_m", nil},
		{"no number", "wanted: maker", "p.wanted in item.tag.shows", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := mutate(t, own(trial("try", c.params, c.body), blind("try")), nil)
			var moved []string
			for _, m := range got[0].Survivors {
				if m.Line < 14 {
					moved = append(moved, fmt.Sprintf("%d:%d: %s", m.Line, m.Column, m.What))
				}
			}
			if diff := cmp.Diff(c.want, moved); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// A number that can't be found in the text would be passed over in silence.
func TestADefaultInAnotherWriting(t *testing.T) {
	_, err := policy.Mutate(t.Context(), own(trial("try", "most_c:\n  # usual\n  80", "item.lowest_c > p.most_c"), blind("try")), nil)
	if err == nil || !strings.Contains(err.Error(), "own/try/rule.rego:8:7: parameter most_c can't be moved") {
		t.Errorf("got %v", err)
	}
}

// What a layer sets is not moved: the default is not in use.
func TestDefaultsThatAreNotInUse(t *testing.T) {
	o := own(trial("try", "most_c: 80\nmost_m: 5", "item.lowest_c > p.most_c\nitem.length_m > p.most_m"), blind("try"))
	o.Profile.Rules = map[string]policy.Setting{"own/try": {Params: map[string]any{"most_c": 80.0}}}
	o.Layers = []policy.Layer{{Name: "company", Rules: map[string]policy.Setting{"own/try": {Params: map[string]any{"most_m": 6.0}}}}}
	for _, w := range whats(mutate(t, o, nil)[0]) {
		if strings.HasPrefix(w, "most_") {
			t.Error(w)
		}
	}
}

// Nothing but what is said is changed: the rest of the text, line ends and
// letters beyond ASCII in it, stays.
func TestNothingElseIsChanged(t *testing.T) {
	rule := strings.ReplaceAll(trial("try", "most_c: 80", "item.lowest_c > p.most_c # über\n\titem.id != \"ö\"; item.length_m > 2"), "this test", "Prüfung")
	for _, text := range []string{rule, strings.ReplaceAll(rule, "\n", "\r\n")} {
		texts := mutantTexts(t, own(text, blind("try")))
		slices.Sort(texts)
		want := []string{}
		for _, c := range [][2]string{
			{"80", "84"}, {"80", "76"}, {"> p", ">= p"}, {"> p", "<= p"}, {"item.lowest_c > p.most_c", "true"},
			{"!=", "=="}, {`item.id != "ö"`, "true"}, {"> 2", ">= 2"}, {"> 2", "<= 2"}, {"2\r\n}", "2.1\r\n}"}, {"2\r\n}", "1.9\r\n}"}, {"item.length_m > 2", "true"},
		} {
			if !strings.Contains(text, "\r") {
				c[0], c[1] = strings.ReplaceAll(c[0], "\r", ""), strings.ReplaceAll(c[1], "\r", "")
			}
			if strings.Count(text, c[0]) != 1 {
				t.Fatalf("%q stands in the rule %d times", c[0], strings.Count(text, c[0]))
			}
			want = append(want, strings.Replace(text, c[0], c[1], 1))
		}
		slices.Sort(want)
		if diff := cmp.Diff(want, texts); diff != "" {
			t.Error(diff)
		}
	}
}
