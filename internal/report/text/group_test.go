package text

import (
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// TestRemediesOfAGroup: silence below the first means that the same remedy does.
func TestRemediesOfAGroup(t *testing.T) {
	f := func(key, remedy string) finding.Finding {
		return finding.Finding{Rule: "a/b", Severity: finding.Error, Key: key, Message: "m", Remedy: remedy}
	}
	for name, c := range map[string]struct {
		first, second string
		want          string
	}{
		"same":      {"longer", "longer", ""},
		"other":     {"longer", "thicker", "put it right  thicker\n"},
		"none":      {"longer", "", "put it right  nothing is offered for this one\n"},
		"only here": {"", "thicker", "put it right  thicker\n"},
		"nowhere":   {"", "", ""},
	} {
		r := &lint.Result{File: "p", State: lint.Judged, Findings: []finding.Finding{f("1", c.first), f("2", c.second)}}
		got := written(t, report.Run{Results: []*lint.Result{r}}, Options{})
		_, below, _ := strings.Cut(got, "\n  also ")
		_, remedy, _ := strings.Cut(below[:strings.Index(below, "\n\n")+1], "M.\n")
		if strings.TrimLeft(remedy, " ") != c.want {
			t.Errorf("%s: below the first stands %q, not %q", name, remedy, c.want)
		}
	}
}

// TestFaultsKeepTheirOtherPlaces: in a file that could not be read, the place of
// the first of two like keys is half of each message.
func TestFaultsKeepTheirOtherPlaces(t *testing.T) {
	text := strings.Replace(twoLegs, "  mass: 1000 kg\n", "  mass: 1000 kg\n  mass: 2000 kg\n", 1)
	text = strings.Replace(text, "gear:\n", "gear: []\ngear:\n", 1)
	r := linted(t, name, text)
	got := written(t, report.Run{Results: []*lint.Result{r}}, Options{})
	if r.State != lint.NotValid || strings.Count(got, "first written here") != 2 || strings.Count(got, "\n  also ") != 1 {
		t.Errorf("two keys that are given twice:\n%s", got)
	}
}
