package text

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/source"
)

// finding prints one finding: what, where, how much, the way out, on whose
// authority.
func (p *printer) finding(r *lint.Result, f finding.Finding) {
	word, s := severity(f.Severity)
	p.item("", word+": ", s, f.Title)
	p.emit(segment{plain, "  " + place(f.Place)})
	p.excerpt(r, f.Place, s, true)
	p.item("  ", "", plain, f.Message)
	p.figures(f)
	if f.Remedy != "" {
		p.item("  ", "To put it right: ", bold, f.Remedy)
	}
	for _, x := range f.Related {
		p.related(r, x)
	}
	p.sources(f.Citations)
	p.item("  ", "Rule: ", plain, ruleOf(f))
	p.blank()
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

// place is a location in the form that terminals and editors follow.
func place(at source.Location) string {
	switch {
	case !at.Range.IsZero():
		return fmt.Sprintf("%s:%d:%d", at.File, at.Range.From.Line, at.Range.From.Column)
	case at.Pointer != "":
		return at.File + ", at " + at.Pointer
	}
	return at.File
}

func (p *printer) figures(f finding.Finding) {
	var parts []string
	if f.Measured != nil {
		parts = append(parts, "measured "+figure(f.Measured))
	}
	if f.Limit != nil {
		parts = append(parts, "limit "+figure(f.Limit))
	}
	if len(parts) > 0 {
		p.item("  ", "Figures: ", plain, strings.Join(parts, "; "))
	}
}

// figure names the field too: it holds the unit and what an angle is from.
func figure(x *finding.Figure) string { return x.Text + " [" + x.Field + "]" }

func (p *printer) related(r *lint.Result, x finding.Related) {
	p.item("  ", "See also ", plain, place(x.Place)+", "+x.Caption)
	p.excerpt(r, x.Place, plain, false)
}

func (p *printer) sources(list []finding.Citation) {
	if len(list) == 0 {
		p.item("  ", "Source: ", plain, "none is given")
	}
	for _, c := range list {
		p.item("  ", "Source: ", plain, c.String())
	}
}

func ruleOf(f finding.Finding) string {
	text := f.Rule
	if f.Grade != "" {
		text += ", grade " + f.Grade
	}
	if f.Key != "" {
		text += ", on " + f.Key
	}
	return text
}
