// Package line is the report of one line a finding, for editors and for
// searching: file:line:column: severity: message [rule].
package line

import (
	"fmt"
	"io"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// Write writes a line for each finding, in reading order, behind a line for each
// failure. The last line says what the run comes to, so that an empty list is
// never taken for a plan in order. The only error is the writer's own.
func Write(w io.Writer, run report.Run) error {
	var b strings.Builder
	for _, f := range run.Failures {
		put(&b, "liftlint: error: could not check: "+report.OneLine(f))
	}
	for _, r := range run.Results {
		if r == nil {
			put(&b, "liftlint: error: not checked: there is no result for one "+run.Noun())
			continue
		}
		for _, f := range r.Findings {
			put(&b, of(r, f))
		}
		if why := unjudged(r); why != "" {
			put(&b, r.File+": error: not checked: "+why)
		}
	}
	for _, r := range run.Results {
		if why := report.DayMissing(r); why != "" {
			put(&b, "liftlint: "+r.File+": "+why)
		}
	}
	put(&b, "liftlint: "+report.Totals(run.Count())+" Outcome: "+report.Outcome(run))
	_, err := io.WriteString(w, b.String())
	return err
}

func of(r *lint.Result, f finding.Finding) string {
	f.Message = report.Named(r, f, message(f))
	if f.Aside != nil {
		return fmt.Sprintf("%s: note: %s %s: %s (%s) [%s]", place(f), f.Word(), severity(f.Severity), message(f), f.Aside.Words(), f.Rule)
	}
	return fmt.Sprintf("%s: %s: %s [%s]", place(f), severity(f.Severity), message(f), f.Rule)
}

// place always has a line, since a reader of such lines looks for one: the first
// stands for the whole of a file.
func place(f finding.Finding) string {
	from := f.Place.Range.From
	return fmt.Sprintf("%s:%d:%d", f.Place.File, max(from.Line, 1), max(from.Column, 1))
}

// severity is one of three words; what is none of them is an error.
func severity(s finding.Severity) finding.Severity {
	if s == finding.Warning || s == finding.Note {
		return s
	}
	return finding.Error
}

func message(f finding.Finding) string {
	if f.Message == "" {
		return f.Title
	}
	return f.Message
}

// unjudged says why nothing is known of a plan that has no finding which says it.
func unjudged(r *lint.Result) string {
	if report.Understood(r) || r.State == lint.Unread && len(r.Findings) > 0 {
		return ""
	}
	return "no rule was put to this " + report.NounOf(r)
}

// put writes one line, whatever stands in the text.
func put(b *strings.Builder, text string) {
	text = report.Visible(text)
	if strings.HasPrefix(strings.TrimLeft(text, " "), "::") {
		text = strings.Replace(text, ":", report.Escape(':'), 1) // no command for a build service
	}
	b.WriteString(text + "\n")
}
