package text

import (
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"liftlint/internal/report"
	"liftlint/internal/report/reporttest"
)

// harmless reports what in an output could act on a terminal or a build log.
func harmless(out string) (string, bool) {
	if !utf8.ValidString(out) {
		return "bytes that are no UTF-8", false
	}
	for _, r := range out {
		if r != '\n' && report.Hidden(r) {
			return "character " + report.Escape(r), false
		}
	}
	if strings.Contains(out, "##[") || strings.Contains(out, "##vso[") {
		return "a command for a build service", false
	}
	for line := range strings.Lines(out) {
		if strings.HasPrefix(strings.TrimSpace(line), "::") {
			return "a line that begins with ::", false
		}
	}
	return "", true
}

func stripped(out string) string {
	for _, s := range []style{bold, red, yellow, cyan, reset} {
		out = strings.ReplaceAll(out, string(s), "")
	}
	return out
}

// TestHostileText puts random text everywhere and lets none of it act.
func TestHostileText(t *testing.T) {
	l, err := linter()
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		draw := func(what string) string { return reporttest.HostileText().Draw(t, what) }
		r, err := l.Check(t.Context(), draw("file"), []byte(draw("plan")))
		if err != nil {
			t.Fatal(err)
		}
		run := reporttest.HostileRun(t, r)
		run.Results[0].Findings = append(run.Results[0].Findings, r.Findings...)
		run.Results = append(run.Results, r)

		var plainText, colored strings.Builder
		width := rapid.IntRange(-5, 200).Draw(t, "width")
		all := rapid.Bool().Draw(t, "all")
		Write(&plainText, run, Options{Width: width, ListChecks: all})
		Write(&colored, run, Options{Width: width, ListChecks: all, Color: true})
		if what, ok := harmless(plainText.String()); !ok {
			t.Fatalf("%s in\n%q", what, plainText.String())
		}
		if stripped(colored.String()) != plainText.String() {
			t.Fatal("color changes more than color")
		}
	})
}
