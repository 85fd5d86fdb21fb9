package cli

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// TestStarterFilledIn: with what a review asks for filled in as its comments show
// it, the first plan is one that a review finds no error in.
func TestStarterFilledIn(t *testing.T) {
	k := &initCommand{profile: oneOf("us")}
	files, err := k.files()
	if err != nil {
		t.Fatal(err)
	}
	text := string(files[0].text)
	tag, inspection := offered(t, text, "#? tag: "), offered(t, text, "#? inspection: ")
	text = strings.ReplaceAll(text, "throat: 70 mm}   #? and latch: works", "throat: 70 mm, latch: works}")
	text = strings.ReplaceAll(text, "  #? ", "  ")
	text = strings.ReplaceAll(text, "    diameter: 14 mm\n", "    diameter: 14 mm\n    tag: "+tag+"\n    inspection: "+inspection+"\n")
	text = strings.Replace(text, `tag: {condition: legible, maker: loft, serial: "0011"`, `tag: {condition: legible, maker: loft, serial: "0012"`, 2) // the comment and S1
	text = strings.ReplaceAll(text, "mass: 0.7 kg}", "mass: 0.7 kg, inspection: "+inspection+"}")
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	r, err := l.Check(t.Context(), "first.lift.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range r.Findings {
		if f.Severity == finding.Error {
			t.Errorf("%s: %s", f.Severity, f.Message)
		}
	}
	if r.State != lint.Judged {
		t.Errorf("the plan is %s:\n%s", r.State, text)
	}
}

// offered is what a comment of the plan offers to be filled in.
func offered(t *testing.T, text, mark string) string {
	t.Helper()
	_, rest, ok := strings.Cut(text, mark)
	if !ok {
		t.Fatalf("no %s", mark)
	}
	line, _, _ := strings.Cut(rest, "\n")
	return line
}

// TestStarterConfiguration: what is commented out is valid as well.
func TestStarterConfiguration(t *testing.T) {
	dir := t.TempDir()
	text, err := starter.ReadFile("starter/liftlint.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var lines []string
	for line := range strings.Lines(string(text)) {
		if line = strings.TrimRight(line, "\n"); strings.HasPrefix(line, "# ") && strings.Contains(line, ": ") || strings.HasPrefix(line, "# rules:") || strings.HasPrefix(line, "#   ") {
			line = strings.TrimPrefix(line, "# ")
		}
		lines = append(lines, line)
	}
	all := strings.Join(lines, "\n")
	for _, key := range []string{"\nrules:\n  angle", "\nrule_folders: ", "\nlocked: "} {
		if !strings.Contains(all, key) {
			t.Errorf("%q is not offered:\n%s", key, all)
		}
	}
	if err := os.CopyFS(filepath.Join(dir, "rules"), os.DirFS("../../examples/contractor/rules")); err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(dir, "liftlint.yaml")
	if err := os.WriteFile(file, []byte(all), 0o644); err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	if code := Main([]string{"policy", "settings", "--config", file}, Environment{Stdout: &out, Stderr: &errs, Getenv: os.Getenv}); code != Clean {
		t.Errorf("exit code %d: %s\n%s", code, errs.String(), all)
	}
}
