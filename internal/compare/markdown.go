package compare

import (
	"fmt"
	"io"
	"strings"

	"liftlint/internal/report"
	"liftlint/internal/report/markdown"
)

// WriteMarkdown writes the comparison for a review comment. What is more than such a
// comment takes is left out, plan by plan from the end, and that is said.
func WriteMarkdown(w io.Writer, c Comparison) error {
	text := ""
	for n := len(c.Plans); n >= 0; n-- {
		if text = markdownOf(c, n); len(text) <= markdown.Comment {
			break
		}
	}
	_, err := io.WriteString(w, text)
	return err
}

func markdownOf(c Comparison, plans int) string {
	p := &page{}
	p.block("## Lift plans: what changed")
	p.block(markdown.Text(totals(c)))
	p.block("Compared: " + markdown.Text(c.Old) + " with " + markdown.Text(c.New))
	p.list("Could not compare", lines(c.Failures, report.OneLine))
	for _, x := range c.Plans[:plans] {
		p.plan(x)
	}
	if left := c.Plans[plans:]; len(left) > 0 {
		p.block(fmt.Sprintf("**%d plans more do not fit in here**; the JSON format has all:", len(left)))
		p.list("", lines(left[:min(len(left), 100)], func(x Plan) string { return filesOf(x) + ": " + headline(x) }))
	}
	p.block("**Caution.** " + markdown.Text(c.Caution))
	return p.out.String()
}

// page gathers blocks. All that comes from a plan goes through markdown.Text.
type page struct{ out strings.Builder }

func (p *page) block(text string) { p.out.WriteString(text + "\n\n") }

func (p *page) plan(x Plan) {
	p.block("### " + markdown.Text(filesOf(x)))
	if title := titleOf(x); title != "" {
		p.block(markdown.Text(title))
	}
	p.block("**" + markdown.Text(headline(x)) + "**")
	for _, g := range grouped(x.Findings) {
		p.out.WriteString("- **" + markdown.Text(g.head()) + "**\n")
		for _, l := range g.lines() {
			p.out.WriteString("  - " + markdown.Text(l) + "\n")
		}
	}
	if len(x.Findings) > 0 {
		p.out.WriteString("\n")
	}
	p.list(headUnjudged, subjectLines(x.Unjudged))
	p.figures(x.Figures)
	p.list(headGear, lines(x.Gear, gearLine))
	p.list(headWritten, lines(x.Written, wordLine))
	p.list(headJudged, lines(x.Judged, rulingLine))
}

func (p *page) figures(list []Figure) {
	if len(list) == 0 {
		return
	}
	p.block("**" + headFigures + "**")
	for i, row := range figureRows(list) {
		for _, c := range row {
			p.out.WriteString("| " + markdown.Text(c) + " ")
		}
		p.out.WriteString("|\n")
		if i == 0 {
			p.out.WriteString(strings.Repeat("|---", len(row)) + "|\n")
		}
	}
	p.out.WriteString("\n")
}

func (p *page) list(head string, items []string) {
	if len(items) == 0 {
		return
	}
	if head != "" {
		p.block("**" + head + "**")
	}
	for _, l := range items {
		p.out.WriteString("- " + markdown.Text(l) + "\n")
	}
	p.out.WriteString("\n")
}
