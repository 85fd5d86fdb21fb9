package text

import (
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// findings prints all findings of a plan, those of one kind together.
func (p *printer) findings(r *lint.Result) {
	for _, g := range report.Grouped(r.Findings) {
		if g[0].Rule == report.InputMissing && len(g) > 1 {
			p.inputs(g)
		} else {
			p.group(r, g)
		}
	}
}

// group prints the first finding of a group in full, and of the others what they
// have of their own.
func (p *printer) group(r *lint.Result, g []finding.Finding) {
	p.finding(r, g)
	for _, f := range g[1:] {
		p.also(r, f, g[0])
	}
	p.blank()
}

// also prints a finding that is like the first of its group.
func (p *printer) also(r *lint.Result, f, first finding.Finding) {
	p.emit(segment{plain, "  "}, segment{bold, pad("also", labelColumn)}, segment{plain, report.Place(f.Place)})
	rest := strings.Repeat(" ", labelColumn+2)
	p.hanging(rest, "", plain, report.Sentence(f.Message), rest)
	p.figures(f)
	switch {
	case f.Remedy == first.Remedy:
	case f.Remedy == "":
		p.labeled("put it right", "nothing is offered for this one")
	default:
		p.labeled("put it right", f.Remedy)
	}
	if r.State == lint.Judged {
		return // the places that had a part are like those of the first
	}
	for _, x := range f.Related {
		p.labeled("see also", report.Place(x.Place)+", "+x.Caption)
	}
}
