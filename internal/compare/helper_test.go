package compare_test

import (
	"strings"
	"testing"

	"liftlint/internal/compare"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report/reporttest"
)

const file = "plans/a.lift.yaml"

func example(t *testing.T, name string) string {
	t.Helper()
	return reporttest.Example(t, "../..", name+".lift.yaml")
}

// edited replaces each text, which stands in the plan once, by the one after it.
func edited(t *testing.T, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if strings.Count(text, pairs[i]) != 1 {
			t.Fatalf("%q does not stand in the plan once", pairs[i])
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

func side(t *testing.T, text string) *compare.Side {
	t.Helper()
	return &compare.Side{Name: file, Result: reporttest.Judge(t, file, text), Text: []byte(text)}
}

func compared(pairs ...compare.Pair) compare.Comparison {
	return compare.Of("old", "new", pairs, nil, finding.Error)
}

// between compares two texts of one plan, of which something changed.
func between(t *testing.T, old, new string) compare.Plan {
	t.Helper()
	c := compared(compare.Pair{Old: side(t, old), New: side(t, new)})
	if len(c.Plans) != 1 {
		t.Fatalf("nothing changed: %+v", c)
	}
	return c.Plans[0]
}

// became lists what became of the findings of a rule.
func became(p compare.Plan, rule string) string {
	var list []string
	for _, f := range p.Findings {
		if f.Rule == rule {
			list = append(list, f.Change+" "+f.Key)
		}
	}
	return strings.Join(list, ", ")
}

func handMade(fs ...finding.Finding) *compare.Side {
	return &compare.Side{Name: file, Result: &lint.Result{File: file, State: lint.Judged, Findings: fs, Checked: []lint.Checked{{Rule: "a/b"}}}}
}
