// Package text is the report for people: in a terminal or the log of a build.
// Its meaning stands in words; color only repeats it.
package text

import (
	"io"
	"strings"

	"liftlint/internal/report"
)

const (
	defaultWidth = 100
	leastWidth   = 40
)

// Options say how the report is laid out.
type Options struct {
	Color bool // ANSI colors, besides the words that say the same
	Width int  // columns; 0 is 100, and fewer than 40 are taken as 40

	// ListChecks names the rules that were met and those that do not apply, which
	// are counted otherwise.
	ListChecks bool
}

// Write writes the report of a run. The only error is the writer's own.
func Write(w io.Writer, run report.Run, o Options) error {
	p := newPrinter(o)
	p.failures(run.Failures)
	for i := range run.Results {
		p.plan(run, i)
	}
	p.total(run)
	p.hint(run)
	p.hanging("", "Caution: ", bold, report.Caution, "")
	_, err := io.WriteString(w, p.out.String())
	return err
}

// failures come first: what they name was not checked, whatever stands below.
func (p *printer) failures(list []string) {
	if len(list) == 0 {
		return
	}
	p.emit(segment{red, "COULD NOT CHECK"})
	for _, f := range list {
		for i, line := range strings.Split(strings.TrimRight(f, "\n"), "\n") {
			indent := "  "
			if i > 0 {
				indent = "    "
			}
			p.item(indent, "", plain, line)
		}
	}
	p.item("  ", "", plain, "What is named here was not checked, and nothing below speaks for it.")
	p.blank()
}

func (p *printer) total(run report.Run) {
	c := run.Count()
	if run.Exit() == report.Nothing {
		p.emit(segment{red, "NOTHING CHECKED: there was no plan to judge."})
	} else if c.Plans > 1 {
		p.item("", "Total: ", bold, report.Totals(c))
	}
	p.item("", "Outcome: ", bold, report.Outcome(run))
	p.blank()
}

// hint says once where a rule is explained.
func (p *printer) hint(run report.Run) {
	for _, r := range run.Results {
		if r != nil && len(r.Findings) > 0 {
			p.item("", "", plain, "More about a rule: liftlint explain "+report.Grouped(r.Findings)[0][0].Rule)
			p.blank()
			return
		}
	}
}
