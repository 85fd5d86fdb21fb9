package cli

import (
	"bytes"
	"os"
	"regexp"
	"strings"
	"testing"
)

// TestReadmesShowRealOutput runs every command that a README shows with its
// output and compares. A line of three dots stands for lines left out.
func TestReadmesShowRealOutput(t *testing.T) {
	t.Chdir("../..")
	for file, least := range map[string]int{"README.md": 4, "examples/README.md": 2, "examples/register/README.md": 4} {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		blocks := regexp.MustCompile("(?s)```console\n\\$ liftlint ([^\n]*)\n(.*?)```").FindAllStringSubmatch(string(text), -1)
		if len(blocks) < least {
			t.Fatalf("%s shows %d commands with their output; at least %d are expected", file, len(blocks), least)
		}
		for _, b := range blocks {
			t.Run(file+" "+b[1], func(t *testing.T) {
				got := outputOf(t, strings.Fields(b[1]))
				if !shows(got, b[2]) {
					t.Errorf("%s shows\n%s\nthe program prints\n%s", file, b[2], got)
				}
			})
		}
	}
}

func outputOf(t *testing.T, args []string) string {
	t.Helper()
	var out, errs bytes.Buffer
	Main(args, Environment{Stdin: strings.NewReader(""), Stdout: &out, Stderr: &errs, Getenv: func(string) string { return "" }})
	if errs.Len() > 0 {
		t.Fatalf("%s", errs.String())
	}
	return out.String()
}

// shows reports whether the lines shown are those of the output, with any
// number of lines where three dots stand.
func shows(output, shown string) bool {
	return match(strings.Split(strings.TrimRight(output, "\n"), "\n"), strings.Split(strings.TrimRight(shown, "\n"), "\n"))
}

func match(output, shown []string) bool {
	for i, line := range shown {
		if line == "..." {
			for skip := i; skip <= len(output); skip++ {
				if match(output[skip:], shown[i+1:]) {
					return true
				}
			}
			return false
		}
		if i >= len(output) || output[i] != line {
			return false
		}
	}
	return len(output) == len(shown)
}

func TestShows(t *testing.T) {
	for _, c := range []struct {
		output, shown string
		want          bool
	}{
		{"a\nb\nc\n", "a\nb\nc\n", true},
		{"a\nb\nc\n", "a\n...\nc\n", true},
		{"a\nb\nc\n", "a\n...\n", true},
		{"a\nb\nc\n", "...\nb\n...\n", true},
		{"a\nb\nc\n", "a\nb\n", false},
		{"a\nb\nc\n", "b\n...\n", false},
		{"a\nb\nc\n", "a\n...\nd\n", false},
	} {
		if got := shows(c.output, c.shown); got != c.want {
			t.Errorf("shows(%q, %q) = %v", c.output, c.shown, got)
		}
	}
}
