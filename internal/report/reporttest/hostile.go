package reporttest

import (
	"strings"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
)

// HostileText is text that means something to a terminal, a build service, a
// browser or a reader of XML or Markdown, mixed with any other.
func HostileText() *rapid.Generator[string] {
	pieces := rapid.SampledFrom([]string{
		"\x1b[2J", "\x1b]0;x\a", "\r", "\n", "\r\n", "\t", "\x00", "\u009b", "\u202e", "\u2028", "\ufffe", "\xff", "\U000e0041",
		"::error::", "\n::error file=a::b", "%0A", "%0a::warning::x", "%", "##[error]", "##vso[task]", ":", ",", "::",
		`"`, "'", "`", "```", "|", `\`, `\|`, "*", "_", "~", "#", "- ", "1. ", "[x](http://example.invalid)", "![x](y)", "<script>", "<!--", "-->", "]]>", "&lt;", "&", "@someone", "#12", "http://example.invalid", "$x$",
		"{0}", "{", "}", "[", "](", " ", "鋼", "\u0301", "a b",
	})
	mixed := rapid.Map(rapid.SliceOfN(rapid.OneOf(pieces, rapid.String()), 0, 12), func(p []string) string { return strings.Join(p, "") })
	return rapid.OneOf(mixed, rapid.String())
}

// HostileFinding has hostile text wherever a finding has text.
func HostileFinding(t *rapid.T, file string) finding.Finding {
	draw := drawer(t)
	line, from := rapid.IntRange(0, 4).Draw(t, "line"), rapid.IntRange(0, 40).Draw(t, "from")
	place := At(file, line, from, from+rapid.IntRange(-3, 30).Draw(t, "length"))
	place.Pointer = draw("pointer")
	elsewhere := place
	elsewhere.File = draw("other file")
	var aside *finding.Aside
	if means := rapid.SampledFrom([]finding.Means{"", finding.ByWaiver, finding.ByBaseline}).Draw(t, "means"); means != "" {
		aside = &finding.Aside{Means: means, Reason: draw("reason"), By: draw("by"), ApprovedBy: draw("approved by"), Until: draw("until"), Place: elsewhere}
	}
	return finding.Finding{
		Aside: aside,
		Rule:  draw("rule"), Title: draw("title"), Severity: severity(t), Grade: draw("grade"), Key: draw("key"),
		Message: draw("message"), Place: place, Related: []finding.Related{{Caption: draw("caption"), Place: elsewhere}},
		Measured: &finding.Figure{Field: draw("field"), Text: draw("figure")}, Remedy: draw("remedy"),
		Citations: []finding.Citation{{Document: draw("document"), Clause: draw("clause"), Basis: finding.Basis(draw("basis"))}},
	}
}

// HostileRun has hostile text wherever a run has text, and real figures below it.
func HostileRun(t *rapid.T, real *lint.Result) report.Run {
	draw := drawer(t)
	r := *real
	r.File = draw("file")
	r.State = rapid.SampledFrom([]lint.State{lint.Judged, lint.NotValid, lint.Unread, "\x1b"}).Draw(t, "state")
	r.ID, r.Title, r.Profile, r.Stage, r.Day = draw("id"), draw("title"), draw("profile"), draw("stage"), draw("day")
	r.Findings = nil
	for range rapid.IntRange(0, 3).Draw(t, "findings") {
		r.Findings = append(r.Findings, HostileFinding(t, r.File))
	}
	if len(r.Findings) > 0 { // another of its kind
		f := HostileFinding(t, r.File)
		first := r.Findings[0]
		f.Rule, f.Grade, f.Title, f.Severity, f.Citations = first.Rule, first.Grade, first.Title, first.Severity, first.Citations
		r.Findings = append(r.Findings, f)
	}
	r.Checked = []lint.Checked{
		{Rule: draw("rule"), Title: draw("title"), DoesNotApply: draw("why"), NotJudged: []lint.Unjudged{{Key: draw("key"), WaitsFor: []string{draw("waits")}}}},
		{Rule: draw("rule"), Title: draw("title"), Met: []string{draw("key")}, Broken: []string{draw("key")}},
		{Rule: draw("rule"), DoesNotApply: draw("why")},
	}
	r.Overrides = []policy.Override{{Rule: draw("rule"), What: draw("what"), From: draw("from"), Was: draw("was"), Is: draw("is")}}
	run := report.Run{Results: []*lint.Result{&r}, FailOn: severity(t)}
	if rapid.Bool().Draw(t, "fails") {
		run.Failures = []string{draw("failure")}
	}
	if rapid.Bool().Draw(t, "over a change") {
		run.NotCompared = []string{draw("not compared")}
		run.Unchanged, run.Gone, run.GoneConfigs = 1, []string{draw("gone")}, []string{draw("gone configuration")}
	}
	return run
}

func drawer(t *rapid.T) func(string) string {
	text := HostileText()
	return func(what string) string { return text.Draw(t, what) }
}

func severity(t *rapid.T) finding.Severity {
	return rapid.OneOf(rapid.SampledFrom(finding.Severities()), rapid.Map(HostileText(), func(s string) finding.Severity { return finding.Severity(s) })).Draw(t, "severity")
}
