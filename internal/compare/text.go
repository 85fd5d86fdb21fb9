package compare

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"liftlint/internal/report"
)

// WriteText writes the comparison for people.
func WriteText(w io.Writer, c Comparison) error {
	t := &textPage{}
	t.line("Compared: %s with %s", c.Old, c.New)
	for _, f := range c.Failures {
		t.line("COULD NOT COMPARE: %s", report.OneLine(f))
	}
	for _, p := range c.Plans {
		t.plan(p)
	}
	t.line("")
	t.line("Total: %s", totals(c))
	t.line("")
	t.line("Caution: %s", c.Caution)
	_, err := io.WriteString(w, t.out.String())
	return err
}

type textPage struct{ out strings.Builder }

// line writes one line, in which nothing acts on a terminal.
func (t *textPage) line(format string, args ...any) {
	t.out.WriteString(strings.TrimRight(report.Visible(fmt.Sprintf(format, args...)), " ") + "\n")
}

func (t *textPage) plan(p Plan) {
	t.line("")
	t.line("Plan: %s", filesOf(p))
	if title := titleOf(p); title != "" {
		t.line("  %s", title)
	}
	t.line("  %s", headline(p))
	for _, g := range grouped(p.Findings) {
		t.list(g.head(), g.lines())
	}
	t.list(headUnjudged, subjectLines(p.Unjudged))
	t.figures(p.Figures)
	t.list(headGear, lines(p.Gear, gearLine))
	t.list(headWritten, lines(p.Written, wordLine))
	t.list(headJudged, lines(p.Judged, rulingLine))
}

func (t *textPage) figures(list []Figure) {
	if len(list) == 0 {
		return
	}
	t.line("")
	t.line(headFigures)
	rows := figureRows(list)
	width := make([]int, len(rows[0]))
	for _, row := range rows {
		for i, c := range row {
			width[i] = max(width[i], utf8.RuneCountInString(report.Visible(c)))
		}
	}
	for _, row := range rows {
		var b strings.Builder
		for i, c := range row {
			c = report.Visible(c)
			b.WriteString("  " + c + strings.Repeat(" ", width[i]-utf8.RuneCountInString(c)))
		}
		t.line("%s", b.String())
	}
}

// list writes lines below a head, where there are any.
func (t *textPage) list(head string, lines []string) {
	if len(lines) == 0 {
		return
	}
	t.line("")
	t.line("%s", head)
	for _, l := range lines {
		t.line("  %s", l)
	}
}
