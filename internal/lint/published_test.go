package lint_test

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
)

const publishedPlans = "../../testdata/published/plans/"

// unitsOf the published answers: the pound-force and kilogram-force are exact
// (NIST SP 811, appendix B).
func unitsOf() map[string]float64 {
	return map[string]float64{"lbf": 4.4482216152605, "kgf": 9.80665, "N": 1, "deg": 1}
}

// TestPublishedPlans computes whole plans and compares them with published
// figures, to the last digit that the source prints. Sources stand in the
// table and in each plan.
func TestPublishedPlans(t *testing.T) {
	f, err := os.Open(publishedPlans + "expected.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	l := linter(t, lint.Options{Profile: "us"})
	seen := map[string]*facts.Facts{}
	for _, row := range rows[1:] {
		name, key, field, unit, source := row[0], row[1], row[2], row[3], row[6]
		if source == "" || row[7] == "" {
			t.Errorf("%v names no source", row)
		}
		if seen[name] == nil {
			seen[name] = computed(t, l, publishedPlans+name+".lift.yaml")
		}
		want, rounding := float(t, row[4]), float(t, row[5])
		got := figure(t, seen[name], key, field) / unitsOf()[unit]
		if !(math.Abs(got-want) <= rounding) {
			t.Errorf("%s, %s of %s: %.6g %s, published %g (%s)", name, field, key, got, unit, want, source)
		}
	}
	plans, err := filepath.Glob(publishedPlans + "*.lift.yaml")
	if err != nil || len(plans) != len(seen) || len(seen) == 0 {
		t.Errorf("%d plans, %d of them compared (%v)", len(plans), len(seen), err)
	}
}

func computed(t *testing.T, l *lint.Linter, file string) *facts.Facts {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(text), "Published: ") {
		t.Errorf("%s names no source", file)
	}
	r, err := l.Compute(file, text)
	if err != nil {
		t.Fatal(err)
	}
	if r.State != lint.Computed || len(r.Findings) > 0 {
		t.Fatalf("%s: %s %v", file, r.State, r.Findings)
	}
	return r.Facts
}

func figure(t *testing.T, f *facts.Facts, key, field string) float64 {
	t.Helper()
	for _, c := range facts.Collections() {
		records, _ := f.Document.Records(c)
		for _, r := range records {
			if r.Key != key {
				continue
			}
			v, _ := r.Field(field)
			if x, ok := v.(float64); ok {
				return x
			}
		}
	}
	t.Fatalf("there is no figure %s of %s", field, key)
	return 0
}

func float(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}
