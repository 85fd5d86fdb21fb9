package validate

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/yamldoc"
)

// update rewrites what tests compare with.
func update() bool { return os.Getenv("LIFTLINT_UPDATE") == "1" }

func mustNew(t testing.TB) *Validator {
	t.Helper()
	v, err := New()
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func mustRead(t testing.TB, text string) *yamldoc.Document {
	t.Helper()
	doc, faults := yamldoc.Read("plan.lift.yaml", []byte(text))
	for _, f := range faults {
		t.Fatalf("%d:%d %s %s", f.Range.From.Line, f.Range.From.Column, f.ID, f.Message)
	}
	return doc
}

func mustReadFile(t testing.TB, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func matches(t testing.TB, pattern string) []string {
	t.Helper()
	paths, err := filepath.Glob(pattern)
	if err != nil || len(paths) == 0 {
		t.Fatalf("%s: %d files, %v", pattern, len(paths), err)
	}
	return paths
}

// render writes faults as the golden files hold them.
func render(faults []yamldoc.Fault) string {
	var b strings.Builder
	for _, f := range faults {
		from, to := f.Range.From, f.Range.To
		fmt.Fprintf(&b, "%d:%d-%d:%d %s %s\n", from.Line, from.Column, to.Line, to.Column, f.ID, f.Message)
	}
	return b.String()
}

func TestFaultyPlans(t *testing.T) {
	v := mustNew(t)
	seen := map[string]bool{}
	for _, path := range matches(t, "testdata/faulty/*.yaml") {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".yaml"), func(t *testing.T) {
			faults := v.Plan(mustRead(t, mustReadFile(t, path)))
			for _, f := range faults {
				seen[f.ID] = true
				if !slices.Contains(FaultIDs(), f.ID) {
					t.Errorf("%s is not in FaultIDs", f.ID)
				}
				if strings.ContainsAny(f.Message, "\n\t") || f.Range.IsZero() || f.Range.To.Before(f.Range.From) {
					t.Errorf("%+v", f)
				}
			}
			if len(faults) == 0 {
				t.Error("taken as valid")
			}
			compare(t, strings.TrimSuffix(path, ".yaml")+".golden", render(faults))
		})
	}
	for _, id := range FaultIDs() {
		if !seen[id] && id != NotValid { // see TestFailsClosed
			t.Errorf("no faulty plan shows %s", id)
		}
	}
}

func compare(t *testing.T, path, got string) {
	t.Helper()
	if update() {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if want := mustReadFile(t, path); got != want {
		t.Errorf("%s: got\n%swant\n%s", path, got, want)
	}
}

func TestValidPlans(t *testing.T) {
	v := mustNew(t)
	for _, path := range matches(t, "testdata/valid/*.yaml") {
		if got := render(v.Plan(mustRead(t, mustReadFile(t, path)))); got != "" {
			t.Errorf("%s:\n%s", path, got)
		}
	}
}
