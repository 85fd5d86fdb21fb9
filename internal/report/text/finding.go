package text

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// finding prints the first of like findings: what, where, how much, the way out,
// on whose authority, and the subjects of all.
func (p *printer) finding(r *lint.Result, g []finding.Finding) {
	f := g[0]
	word, s := severity(f.Severity)
	if f.Aside != nil {
		word, s = strings.ToUpper(f.Word())+" "+word, plain
	}
	title := f.Title
	if len(g) > 1 {
		title += ": " + report.Plural(len(g), "finding")
	}
	p.item("", word+"  ", s, title)
	p.emit(segment{plain, "  " + report.Place(f.Place)})
	p.excerpt(r, f.Place, s, true)
	p.hanging("  ", "", plain, report.Sentence(f.Message), "  ")
	p.figures(f)
	if f.Aside != nil {
		p.labeled(f.Word(), f.Aside.Words())
	}
	if f.Remedy != "" {
		p.labeled("put it right", f.Remedy)
	}
	for _, x := range f.Related {
		p.labeled("see also", report.Place(x.Place)+", "+x.Caption)
		p.excerpt(r, x.Place, plain, false)
	}
	p.labeled("source", report.Sources(f.Citations))
	p.labeled("rule", report.RuleOf(g))
}

// labelColumn is the width of the labels in front of a finding's lines.
const labelColumn = 14

// labeled prints a line of a finding behind its label; the texts of all stand
// below each other.
func (p *printer) labeled(label, text string) {
	p.hanging("  ", pad(label, labelColumn), bold, text, strings.Repeat(" ", labelColumn+2))
}

// severity is never told by color alone.
func severity(s finding.Severity) (string, style) {
	switch s {
	case finding.Error:
		return "ERROR", red
	case finding.Warning:
		return "WARNING", yellow
	case finding.Note:
		return "NOTE", cyan
	}
	return fmt.Sprintf("ERROR (severity %q is not known)", string(s)), red
}

// figures prints what was measured and what was asked for, unless the sentence
// has it.
func (p *printer) figures(f finding.Finding) {
	var texts []string
	for _, x := range []*finding.Figure{f.Measured, f.Limit} {
		if x != nil {
			texts = append(texts, x.Text)
		}
	}
	switch {
	case report.Says(f.Message, texts):
	case f.Measured == nil:
		p.labeled("limit", texts[0])
	default:
		p.labeled("measured", strings.Join(texts, " against "))
	}
}
