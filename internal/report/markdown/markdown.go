// Package markdown is the report for a comment on a pull request and for the
// summary of a build job: the verdict first, then each lift with its decisive
// figures, what was found, and what was not judged.
package markdown

import (
	"io"
	"strings"

	"liftlint/internal/report"
)

// The bytes that GitHub takes of a comment and of a job's summary, by its
// documentation as remembered (65 536 characters and 1 MiB), with some to spare.
const (
	Comment = 60_000
	Summary = 1_000_000
)

// Options say how much is written.
type Options struct {
	Most int // bytes at most; 0 is no bound
}

// Write writes the report of a run. Of what does not fit the figures of the lifts go
// before errors do, and findings from the end of each plan's, the least bad first. The
// report says ahead of all how much that is.
// The only error is the writer's own.
func Write(w io.Writer, run report.Run, o Options) error {
	_, err := io.WriteString(w, fitting(run, o.Most))
	return err
}

func write(run report.Run, d detail) string {
	p := &page{detail: d}
	if d.longer > 0 {
		p.longer = setOf(worst(run, d.longer))
	}
	p.verdict(run)
	p.cut(run)
	p.failures(run.Failures)
	p.plans(run)
	p.paragraph("**Caution.** " + Text(report.Caution))
	return p.out.String()
}

// page gathers blocks. All that comes from a plan goes through Text or Code.
type page struct {
	out    strings.Builder
	detail detail
	longer map[int]bool // indices of plans that are shown longer than the others
}

// paragraph writes one block, which may have several lines.
func (p *page) paragraph(text string) { p.out.WriteString(text + "\n\n") }

// longest is how many characters of one text are shown: a name or a message of
// thousands would push out all others.
const longest = 600

// short cuts a text that is too long, and says so.
func short(text string) string {
	n := 0
	for i := range text {
		if n == longest {
			return text[:i] + " ... (cut)"
		}
		n++
	}
	return text
}

// cells writes a row of a table.
func (p *page) cells(row []string, cell func(string) string) {
	for _, c := range row {
		p.out.WriteString("| " + cell(short(c)) + " ")
	}
	p.out.WriteString("|\n")
}

// table writes rows of which the first are the heads.
func (p *page) table(rows [][]string) {
	for i, row := range rows {
		p.cells(row, Text)
		if i == 0 {
			p.out.WriteString(strings.Repeat("|---", len(row)) + "|\n")
		}
	}
	p.out.WriteString("\n")
}
