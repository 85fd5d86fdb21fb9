package finding

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"liftlint/internal/source"
)

func at(file string, line, column int) source.Location {
	p := source.Position{Line: line, Column: column}
	return source.Location{File: file, Range: source.Range{From: p, To: p}}
}

// inOrder stand as they are to be read.
func inOrder() []Finding {
	return []Finding{
		{Rule: "r", Severity: Note, Place: at("a", 1, 1)},
		{Rule: "r", Severity: Error, Place: at("a", 1, 5)},
		{Rule: "q", Severity: Error, Place: at("a", 2, 1)},
		{Rule: "r", Severity: Error, Place: at("a", 2, 1)},
		{Rule: "r", Severity: Warning, Place: at("a", 2, 1), Key: "leg/1"},
		{Rule: "r", Severity: Warning, Place: at("a", 2, 1), Key: "leg/2"},
		{Rule: "r", Severity: Warning, Place: at("a", 2, 1), Key: "leg/2", Message: "else"},
		{Rule: "b", Severity: Note, Place: at("a", 2, 1)},
		{Rule: "a", Severity: Error, Place: at("a", 10, 1)},
		{Rule: "a", Severity: Error, Place: at("b", 1, 1)},
	}
}

func TestSort(t *testing.T) {
	want := inOrder()
	for seed := range uint64(20) {
		got := append(inOrder(), inOrder()...) // each twice
		rand.New(rand.NewPCG(seed, 1)).Shuffle(len(got), func(i, j int) { got[i], got[j] = got[j], got[i] })
		if diff := cmp.Diff(want, Sort(got)); diff != "" {
			t.Fatalf("seed %d: %s", seed, diff)
		}
	}
}

func TestWorst(t *testing.T) {
	for _, c := range []struct {
		have []Severity
		want Severity
	}{
		{nil, ""},
		{[]Severity{Note}, Note},
		{[]Severity{Note, Error, Warning}, Error},
		{[]Severity{Warning, Note}, Warning},
		{[]Severity{Error, "fatal"}, "fatal"}, // unknown is never harmless
	} {
		var fs []Finding
		for _, s := range c.have {
			fs = append(fs, Finding{Severity: s})
		}
		if got := Worst(fs); got != c.want {
			t.Errorf("the worst of %v is %q", c.have, got)
		}
	}
}

func TestSeverity(t *testing.T) {
	for _, s := range Severities() {
		if got, err := ParseSeverity(string(s)); err != nil || got != s {
			t.Errorf("%s reads as %s, %v", s, got, err)
		}
	}
	for _, bad := range []string{"", "Error", "err", "errors"} {
		if got, err := ParseSeverity(bad); err == nil || got != "" {
			t.Errorf("%q reads as %q", bad, got)
		}
	}
	if !slices.IsSortedFunc(Severities(), func(a, b Severity) int { return b.Rank() - a.Rank() }) {
		t.Error("the list does not begin with the worst")
	}
	rapid.Check(t, func(t *rapid.T) {
		unknown := Severity(rapid.String().Filter(func(s string) bool { _, err := ParseSeverity(s); return err != nil }).Draw(t, "unknown"))
		if !unknown.AtLeast(Error) {
			t.Fatalf("%q ranks under error", unknown)
		}
	})
}

func TestCitation(t *testing.T) {
	for _, c := range []struct {
		cite Citation
		want string
	}{
		{Citation{Document: "EN 13414-1", Edition: "2003", Clause: "Table 4", Basis: Read}, "EN 13414-1, 2003, Table 4 (text read)"},
		{Citation{Document: "ASME B30.9", Basis: Memory}, "ASME B30.9 (from memory: confirm before relying on it)"},
		{Citation{Document: "common practice", Basis: Practice}, "common practice (no published source)"},
		{Citation{Document: "Site rules", Clause: "4", Basis: Company}, "Site rules, 4 (company rule)"},
		{Citation{Document: "liftlint", Basis: Format}, "liftlint (liftlint's own rule for its files)"},
		{Citation{Document: "a text"}, "a text (basis unknown)"},
	} {
		if got := fmt.Sprint(c.cite); got != c.want {
			t.Errorf("%q, not %q", got, c.want)
		}
	}
}
