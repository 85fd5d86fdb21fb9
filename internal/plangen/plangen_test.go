package plangen_test

import (
	"context"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/plangen"
	"liftlint/internal/quantity"
)

func linter(t testing.TB) *lint.Linter {
	t.Helper()
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func check(t testing.TB, l *lint.Linter, text string) *lint.Result {
	t.Helper()
	r, err := l.Check(context.Background(), "generated.lift.yaml", []byte(text))
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return r
}

// TestValidPlans: each is judged, hangs steady, breaks no rule worse than a
// note, and its legs' vertical parts add up to the weight.
func TestValidPlans(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range uint64(200) {
		text := plangen.Valid(seed)
		if text != plangen.Valid(seed) {
			t.Fatalf("seed %d gives two texts", seed)
		}
		r := check(t, l, text)
		if r.State != lint.Judged {
			t.Fatalf("seed %d is %s:\n%s\n%s", seed, r.State, told(r), text)
		}
		for _, f := range r.Findings {
			if f.Severity != finding.Note {
				t.Errorf("seed %d: %s %s: %s\n%s", seed, f.Severity, f.Rule, f.Message, text)
			}
		}
		balance(t, seed, r)
		if again := check(t, l, text); !reflect.DeepEqual(r.Findings, again.Findings) || !reflect.DeepEqual(r.Checked, again.Checked) {
			t.Errorf("seed %d is judged in two ways", seed)
		}
	}
}

func balance(t *testing.T, seed uint64, r *lint.Result) {
	t.Helper()
	up := 0.0
	for _, leg := range r.Facts.Document.Legs {
		if leg.AngleFromHorizontalDeg != nil {
			up += *leg.TensionN * math.Sin(*leg.AngleFromHorizontalDeg*math.Pi/180)
		}
	}
	weight := *r.Facts.Document.Loads[0].MassUpperKg * quantity.StandardGravity
	if math.Abs(up-weight) > 1e-4*weight {
		t.Errorf("seed %d: the legs hold %g N of %g N", seed, up, weight)
	}
}

// TestSeededFaultsAreFound: each mistake is reported by what should report it,
// as bad as it is, with its line first; and nothing else fails the plan.
func TestSeededFaultsAreFound(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range uint64(6 * plangen.Mistakes()) {
		f := plangen.Fault(seed)
		if f != plangen.Fault(seed) {
			t.Fatalf("seed %d gives two plans", seed)
		}
		r := check(t, l, f.Text)
		if !found(r, f) {
			t.Errorf("seed %d: %s is not reported as %s of %s at line %d:\n%s\n%s", seed, f.What, f.Severity, f.Rule, f.Line, told(r), f.Text)
		}
		for _, x := range r.Findings {
			if f.Rule == "tension/leg_slack" && x.Rule == "tension/leg_nearly_slack" {
				continue // the leg across from it is close to it
			}
			if x.Rule != f.Rule && x.Severity.AtLeast(finding.Severity(f.Severity)) {
				t.Errorf("seed %d: %s also gives\n%s", seed, f.What, told(r))
			}
		}
	}
}

func found(r *lint.Result, f plangen.Faulty) bool {
	return slices.ContainsFunc(r.Findings, func(x finding.Finding) bool {
		return x.Rule == f.Rule && string(x.Severity) == f.Severity && x.Place.Range.From.Line == f.Line
	})
}

func told(r *lint.Result) string {
	var b strings.Builder
	for _, x := range r.Findings {
		fmt.Fprintf(&b, "%d: %s %s: %s\n", x.Place.Range.From.Line, x.Severity, x.Rule, x.Message)
	}
	return b.String()
}
