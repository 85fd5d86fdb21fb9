package policy_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"testing"
	"time"

	"liftlint/internal/policy"
)

// A rule of any text either loads and judges, or is refused with a place.
func FuzzRule(f *testing.F) {
	files, err := filepath.Glob("testdata/refused/*.rego")
	if err != nil || len(files) == 0 {
		f.Fatal("no seeds")
	}
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(text))
	}
	f.Add(quick)
	d := level()
	f.Fuzz(func(t *testing.T, text string) {
		p, err := policy.Load(context.Background(), policy.Options{
			Sources:  folder(map[string]string{"angle/quick/rule.rego": text}),
			Deadline: 200 * time.Millisecond,
		})
		var ps policy.Problems
		if err != nil {
			if !errors.As(err, &ps) || ps[0].File == "" {
				t.Fatalf("%v has no place", err)
			}
			return
		}
		if _, err := p.Judge(context.Background(), d); err != nil && !errors.Is(err, policy.ErrDeadline) {
			t.Fatalf("a rule that loads fails: %v", err)
		}
	})
}

// A profile of any text is either read or refused with a place.
func FuzzProfile(f *testing.F) {
	f.Add(plainProfile)
	f.Add(plainProfile + "rules: {load/tilt: {params: {error_deg: 3}, grades: {far: note}, off: x}}")
	f.Add("name: own\n---\na: [&x {b: *x}, .nan, 1e3, 010]\n")
	f.Fuzz(func(t *testing.T, text string) {
		p, err := readProfile(text)
		var ps policy.Problems
		switch {
		case err != nil && (!errors.As(err, &ps) || ps[0].File != "own.yaml"):
			t.Fatalf("%v has no place", err)
		case err == nil && (p.Name != "own" || p.RigidSplit.Decides == "" || len(p.RigidSplit.Citations) == 0):
			t.Fatalf("%+v is taken", p)
		}
	})
}
