package text

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

func TestGroups(t *testing.T) {
	of := func(rule, grade, key string, s finding.Severity) finding.Finding {
		return finding.Finding{Rule: rule, Grade: grade, Key: key, Severity: s}
	}
	company := of("a/flat", "low", "8", finding.Error)
	company.Citations = []finding.Citation{{Document: "site rules", Basis: finding.Company}}
	got := grouped([]finding.Finding{
		of("b/note", "", "1", finding.Note),
		of(inputMissing, "", "2", finding.Error),
		of("a/flat", "low", "3", finding.Warning),
		of("a/flat", "over", "4", finding.Error),
		of("a/load", "", "5", finding.Error),
		of("a/flat", "over", "6", finding.Error),
		of(inputMissing, "", "7", finding.Error),
		company,
		of("a/flat", "low", "9", finding.Warning),
		of("a/odd", "", "10", "fatal"),
	})
	var order []string
	for _, g := range got {
		order = append(order, keysOf(g))
	}
	if s := strings.Join(order, "; "); s != "10; 4, 6; 5; 8; 2, 7; 3, 9; 1" {
		t.Errorf("groups are %s", s)
	}
}

// TestGroupsLoseNothing: every finding stands in one group, with those of its
// kind alone.
func TestGroupsLoseNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var list []finding.Finding
		for i := range rapid.IntRange(0, 20).Draw(t, "n") {
			list = append(list, finding.Finding{
				Rule:     rapid.SampledFrom([]string{"a", "b", inputMissing}).Draw(t, "rule"),
				Grade:    rapid.SampledFrom([]string{"", "low"}).Draw(t, "grade"),
				Severity: rapid.SampledFrom([]finding.Severity{finding.Error, finding.Warning, finding.Note, "x"}).Draw(t, "severity"),
				Key:      fmt.Sprint(i),
			})
		}
		seen := map[string]bool{}
		rank := 4
		for _, g := range grouped(list) {
			for _, f := range g {
				if f.Rule != g[0].Rule || f.Grade != g[0].Grade || f.Severity != g[0].Severity || seen[f.Key] {
					t.Fatalf("%+v stands with %+v, or twice", f, g[0])
				}
				seen[f.Key] = true
			}
			if g[0].Severity.Rank() > rank {
				t.Fatalf("severity %s comes late", g[0].Severity)
			}
			rank = g[0].Severity.Rank()
		}
		if len(seen) != len(list) {
			t.Fatalf("%d of %d findings are left", len(seen), len(list))
		}
	})
}

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
