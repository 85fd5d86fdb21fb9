// Package text writes a report for people: each finding with its place, its
// figures and its source, then what was checked, then the caution.
package text

import (
	"bufio"
	"fmt"
	"io"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// Options say how to lay the report out.
type Options struct {
	Color bool
	Width int // columns of running text; 0 takes 100
}

const defaultWidth = 100

// page is a report being written. The first error of the writer is kept by
// the buffer and returned at the end.
type page struct {
	out   *bufio.Writer
	paint paint
	width int
}

// Write writes the whole run.
func Write(w io.Writer, run report.Run, o Options) error {
	p := &page{out: bufio.NewWriter(w), paint: paint(o.Color), width: o.Width}
	if p.width <= 0 {
		p.width = defaultWidth
	}
	p.failures(run.Failures)
	for _, r := range run.Results {
		p.result(r)
	}
	if len(run.Results) != 1 {
		p.total(run.Count())
	}
	p.line("")
	p.text("", report.Caution)
	return p.out.Flush()
}

func (p *page) line(format string, args ...any) { fmt.Fprintf(p.out, format+"\n", args...) }

// text writes running words, wrapped, behind a label or an indent.
func (p *page) text(label, words string) {
	for _, l := range wrap(label, report.Visible(words), p.width) {
		p.line("%s", l)
	}
}

func (p *page) failures(list []string) {
	for _, f := range list {
		p.line("%s", p.paint.severity(finding.Error, "COULD NOT CHECK"))
		for _, l := range lines(f) {
			p.line("  %s", report.Visible(l))
		}
		p.line("")
	}
}

func (p *page) result(r *lint.Result) {
	p.line("%s", p.paint.strong(report.Visible(r.File)))
	p.head(r)
	for _, f := range r.Findings {
		p.line("")
		p.finding(r, f)
	}
	p.line("")
	switch r.State {
	case lint.Unread:
		p.text("", "The file could not be read. Nothing in it was checked.")
	case lint.NotValid:
		p.text("", "The plan is not valid, so nothing was computed and no rule was put to it. Nothing else is known of this lift.")
	default:
		p.checked(r)
	}
	p.line("")
}

func (p *page) head(r *lint.Result) {
	if r.ID == "" {
		return
	}
	p.line("%s  %s", report.Visible(r.ID), report.Visible(r.Title))
	day := "for " + r.Day
	if r.Day == "" {
		day = "for no day: the plan gives none, so nothing that depends on the date was judged"
	}
	p.text("", fmt.Sprintf("Profile %s, stage %s, %s.", r.Profile, r.Stage, day))
}

func (p *page) total(c report.Counts) {
	if c.Plans == 0 {
		p.line("No plan was checked.")
		return
	}
	p.text("", fmt.Sprintf("%s: %s.", count(c.Plans, "plan"), sums(c)))
}

// sums words the counts of a plan or a run.
func sums(c report.Counts) string {
	words := fmt.Sprintf("%s, %s, %s", count(c.Errors, "error"), count(c.Warnings, "warning"), count(c.Notes, "note"))
	for _, x := range []struct {
		n    int
		what string
	}{{c.NotValid, "not valid"}, {c.Unread, "not read"}, {c.NotJudged, "not judged"}, {c.Failures, "not checked"}} {
		if x.n > 0 {
			words += fmt.Sprintf(", %d %s", x.n, x.what)
		}
	}
	return words
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
