package policy_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"liftlint/internal/policy"
)

// TestRefused loads each file in testdata/refused as the rule angle/bad. Its
// last lines, "# want LINE:COLUMN: message", are all the problems it has.
func TestRefused(t *testing.T) {
	files, err := filepath.Glob("testdata/refused/*.rego")
	if err != nil || len(files) < 40 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	for _, f := range files {
		t.Run(strings.TrimSuffix(filepath.Base(f), ".rego"), func(t *testing.T) {
			text, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			want := wanted(string(text))
			rule, _, _ := strings.Cut(string(text), "\n# want ")
			got := problemsOf(t, loadText(rule))
			if os.Getenv("LIFTLINT_UPDATE") != "" {
				rewrite(t, f, string(text), got)
			}
			if strings.Join(got, "\n") != strings.Join(want, "\n") {
				t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
			}
		})
	}
}

// rewrite puts the problems found in place of those wanted.
func rewrite(t *testing.T, file, text string, got []string) {
	t.Helper()
	rule, _, _ := strings.Cut(text, "\n# want ")
	rule = strings.TrimRight(rule, "\n") + "\n"
	for _, line := range got {
		rule += "\n# want " + line
	}
	if err := os.WriteFile(file, []byte(rule+"\n"), 0o644); err != nil {
		t.Fatal(err)
	}
}

func wanted(text string) []string {
	var want []string
	for line := range strings.Lines(text) {
		if w, ok := strings.CutPrefix(line, "# want "); ok {
			want = append(want, strings.TrimSpace(w))
		}
	}
	return want
}

func folder(files map[string]string) []policy.Source {
	m := fstest.MapFS{}
	for name, text := range files {
		m[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return []policy.Source{{Files: m}}
}

func loadText(text string) error {
	_, err := policy.Load(context.Background(), policy.Options{
		Sources:  folder(map[string]string{"angle/bad/rule.rego": text}),
		Remedies: []string{"longer_leg", "larger_eye"},
	})
	return err
}

// problemsOf lists problems without their file.
func problemsOf(t *testing.T, err error) []string {
	t.Helper()
	var ps policy.Problems
	if err != nil && !errors.As(err, &ps) {
		t.Fatalf("%v is no list of problems", err)
	}
	var got []string
	for _, p := range ps {
		got = append(got, strings.TrimPrefix(p.String(), "angle/bad/rule.rego:"))
	}
	return got
}
