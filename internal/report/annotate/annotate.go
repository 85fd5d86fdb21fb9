// Package annotate is the report for the log of a build on GitHub Actions, which
// shows commands in it as notes beside the lines of a pull request. Names and
// escapes of commands are those of that service's documentation, as remembered.
package annotate

import (
	"cmp"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// most is how many annotations of one level the service shows for a step; what
// is beyond is dropped there without a word.
const most = 10

// Write writes at most ten annotations of each level, then the outcome for those
// who read the log. Where there are more findings of a level, the tenth tells how
// many. Files are to be named from the root of the repository. The only error is
// the writer's own.
func Write(w io.Writer, run report.Run) error {
	var b strings.Builder
	for _, level := range levels() {
		put(&b, level, ranked(run, level))
	}
	for _, r := range run.Results {
		if r == nil {
			continue
		}
		for _, f := range report.Waived(r) { // all, however few of them are annotations
			plain(&b, "Waived: "+report.WaiverOf(f))
		}
	}
	for _, words := range run.LeftOut() {
		plain(&b, report.Sentence(words))
	}
	plain(&b, report.Totals(run.Count()))
	for _, r := range run.Results {
		if why := report.DayMissing(r); why != "" {
			plain(&b, r.File+": "+why)
		}
	}
	plain(&b, "Outcome: "+report.Outcome(run))
	plain(&b, "Caution: "+report.Caution)
	_, err := io.WriteString(w, b.String())
	return err
}

// levels are the service's, the worst first.
func levels() []string { return []string{"error", "warning", "notice"} }

func levelOf(f finding.Finding) string {
	switch {
	case f.Aside != nil || f.Severity == finding.Note:
		return "notice"
	case f.Severity == finding.Warning:
		return "warning"
	}
	return "error" // a severity that nobody knows is never read as harmless
}

// note is one annotation.
type note struct {
	file, title, message string
	line, endLine        int
	column, endColumn    int
}

func put(b *strings.Builder, level string, notes []note) {
	shown := notes
	if len(notes) > most {
		shown = notes[:most-1]
	}
	for _, n := range shown {
		b.WriteString(n.command(level) + "\n")
	}
	if rest := len(notes) - len(shown); rest > 0 {
		more := note{title: fmt.Sprintf("%d more of level %s", rest, level), message: fmt.Sprintf("%d of %d are shown. The report in another format tells all.", len(shown), len(notes))}
		b.WriteString(more.command(level) + "\n")
	}
}

// ranked are all annotations of a level, what could not be checked first. Of the
// findings, the first of each rule in each plan stand before the second of any, so
// that few annotations tell of as many causes as they can.
func ranked(run report.Run, level string) []note {
	var list []note
	if level == "error" {
		list = failures(run)
	}
	if level == "warning" {
		for _, c := range run.GoneConfigs {
			list = append(list, note{title: "Configuration gone", message: report.Sentence(report.GoneConfig(c))})
		}
	}
	var rounds [][]note
	for _, r := range run.Results {
		if r == nil {
			continue
		}
		nth := map[string]int{}
		for _, f := range r.Findings {
			if levelOf(f) != level {
				continue
			}
			n := nth[f.Rule]
			nth[f.Rule]++
			if n == len(rounds) {
				rounds = append(rounds, nil)
			}
			rounds[n] = append(rounds[n], noteOf(r, f))
		}
	}
	for _, round := range rounds {
		list = append(list, round...)
	}
	return list
}

func failures(run report.Run) []note {
	var list []note
	for _, f := range run.Failures {
		list = append(list, placed(f)...)
	}
	for _, r := range run.Results {
		switch {
		case r == nil:
			list = append(list, note{title: "Not checked", message: "there is no result for one plan"})
		case r.State == lint.Unread && len(r.Findings) > 0: // a finding says it
		case !report.Understood(r):
			list = append(list, note{title: "Not checked", file: r.File, message: "no rule was put to this " + report.NounOf(r)})
		}
	}
	if run.Exit() == report.Nothing {
		list = append(list, note{title: "Nothing checked", message: "there was no plan to judge"})
	}
	return list
}

// atPlace is a line of a failure that begins with where it is for.
var atPlace = regexp.MustCompile(`^([^:]+):([0-9]+):([0-9]+): (.*)$`)

// placed are the notes of a failure, one for each place that it names. What belongs to
// none stands with the one before.
func placed(failure string) []note {
	var list []note
	for line := range strings.SplitSeq(strings.TrimSpace(failure), "\n") {
		m := atPlace.FindStringSubmatch(line)
		switch {
		case m != nil:
			n := note{title: "Could not check", file: m[1], message: m[4]}
			n.line, _ = strconv.Atoi(m[2]) // left out where it is no number
			n.column, _ = strconv.Atoi(m[3])
			list = append(list, n)
		case len(list) == 0:
			list = append(list, note{title: "Could not check", message: line})
		default:
			list[len(list)-1].message += "\n" + line
		}
	}
	return list
}

func noteOf(of *lint.Result, f finding.Finding) note {
	r := f.Place.Range
	n := note{file: f.Place.File, line: r.From.Line, column: r.From.Column, title: fmt.Sprintf("%s [%s]", f.Title, f.Rule)}
	if f.Aside != nil {
		n.title = fmt.Sprintf("%s %s: %s", f.Word(), f.Severity, n.title)
	}
	if r.To.Line == r.From.Line && r.To.Column > r.From.Column {
		n.endLine, n.endColumn = r.To.Line, r.To.Column-1 // the service counts the last column in
	}
	n.message = report.Named(of, f, report.Sentence(cmp.Or(f.Message, f.Title)))
	if f.Aside != nil {
		n.message += "\n" + report.Sentence(f.Word()+" "+f.Aside.Words())
	}
	if f.Remedy != "" {
		n.message += "\nTo put it right: " + strings.TrimSuffix(f.Remedy, ".") + "."
	}
	n.message += "\nSource: " + report.Sources(f.Citations) + "."
	return n
}
