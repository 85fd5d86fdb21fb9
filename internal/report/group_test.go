package report

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
)

func TestGroups(t *testing.T) {
	of := func(rule, grade, key string, s finding.Severity) finding.Finding {
		return finding.Finding{Rule: rule, Grade: grade, Key: key, Severity: s}
	}
	company := of("a/flat", "low", "8", finding.Error)
	company.Citations = []finding.Citation{{Document: "site rules", Basis: finding.Company}}
	got := Grouped([]finding.Finding{
		of("b/note", "", "1", finding.Note),
		of(InputMissing, "", "2", finding.Error),
		of("a/flat", "low", "3", finding.Warning),
		of("a/flat", "over", "4", finding.Error),
		of("a/load", "", "5", finding.Error),
		of("a/flat", "over", "6", finding.Error),
		of(InputMissing, "", "7", finding.Error),
		company,
		of("a/flat", "low", "9", finding.Warning),
		of("a/odd", "", "10", "fatal"),
	})
	var order []string
	for _, g := range got {
		order = append(order, Keys(g))
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
				Rule:     rapid.SampledFrom([]string{"a", "b", InputMissing}).Draw(t, "rule"),
				Grade:    rapid.SampledFrom([]string{"", "low"}).Draw(t, "grade"),
				Severity: rapid.SampledFrom([]finding.Severity{finding.Error, finding.Warning, finding.Note, "x"}).Draw(t, "severity"),
				Key:      fmt.Sprint(i),
			})
		}
		seen := map[string]bool{}
		rank := 4
		for _, g := range Grouped(list) {
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
