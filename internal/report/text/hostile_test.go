package text

import (
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
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

func hostileText() *rapid.Generator[string] {
	pieces := rapid.SampledFrom([]string{"\x1b[2J", "\x1b]0;x\a", "\r", "\n", "\t", "\x00", "\u009b", "\u202e", "\u2028", "\xff", "::error::", "##[x]", "##vso[y]", " ", "鋼", "\u0301", "a b"})
	mixed := rapid.Map(rapid.SliceOfN(rapid.OneOf(pieces, rapid.String()), 0, 12), func(p []string) string { return strings.Join(p, "") })
	return rapid.OneOf(mixed, rapid.String())
}

func hostileFinding(t *rapid.T, file string) finding.Finding {
	text := hostileText()
	draw := func(what string) string { return text.Draw(t, what) }
	line, from := rapid.IntRange(0, 4).Draw(t, "line"), rapid.IntRange(0, 40).Draw(t, "from")
	place := at(file, line, from, from+rapid.IntRange(-3, 30).Draw(t, "length"))
	place.Pointer = draw("pointer")
	return finding.Finding{
		Rule: draw("rule"), Title: draw("title"), Severity: finding.Severity(draw("severity")), Grade: draw("grade"), Key: draw("key"),
		Message: draw("message"), Place: place, Related: []finding.Related{{Caption: draw("caption"), Place: place}},
		Measured: &finding.Figure{Field: draw("field"), Text: draw("figure")}, Remedy: draw("remedy"),
		Citations: []finding.Citation{{Document: draw("document"), Clause: draw("clause"), Basis: finding.Basis(draw("basis"))}},
	}
}

// TestHostileText puts random text everywhere and lets none of it act.
func TestHostileText(t *testing.T) {
	l, err := linter()
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		text := hostileText()
		draw := func(what string) string { return text.Draw(t, what) }
		r, err := l.Check(t.Context(), draw("file"), []byte(draw("plan")))
		if err != nil {
			t.Fatal(err)
		}
		r.State = rapid.SampledFrom([]lint.State{lint.Judged, lint.NotValid, lint.Unread, "\x1b"}).Draw(t, "state")
		r.ID, r.Title, r.Profile, r.Stage, r.Day = draw("id"), draw("title"), draw("profile"), draw("stage"), draw("day")
		first, second := hostileFinding(t, r.File), hostileFinding(t, r.File)
		like := second // printed below the first
		like.Rule, like.Grade, like.Title, like.Severity, like.Citations = first.Rule, first.Grade, first.Title, first.Severity, first.Citations
		r.Findings = append(r.Findings, first, second, like)
		r.Checked = []lint.Checked{{Rule: draw("rule"), DoesNotApply: draw("why"), NotJudged: []lint.Unjudged{{Key: draw("key"), WaitsFor: []string{draw("waits")}}}}}
		run := report.Run{Results: []*lint.Result{r, r}, Failures: []string{draw("failure")}, FailOn: finding.Severity(draw("fail on"))}

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
