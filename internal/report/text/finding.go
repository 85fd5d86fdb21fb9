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
	p.item("", word+"  ", s, f.Title)
	p.emit(segment{plain, "  " + place(f.Place)})
	p.excerpt(r, f.Place, s, true)
	p.hanging("  ", "", plain, sentence(f.Message), "  ")
	p.figures(f)
	if f.Remedy != "" {
		p.labeled("put it right", f.Remedy)
	}
	for _, x := range f.Related {
		p.labeled("see also", place(x.Place)+", "+x.Caption)
		p.excerpt(r, x.Place, plain, false)
	}
	p.sources(f.Citations)
	p.labeled("rule", ruleOf(f))
	p.blank()
}

// labeled prints a line of a finding behind its label; the texts of all stand
// below each other.
func (p *printer) labeled(label, text string) {
	const column = 14
	label += strings.Repeat(" ", column-len(label))
	p.hanging("  ", label, bold, text, strings.Repeat(" ", column+2))
}

// sentence gives a message a capital and a stop, where it has none.
func sentence(message string) string {
	if message == "" {
		return "no message is given"
	}
	if c := message[0]; 'a' <= c && c <= 'z' {
		message = strings.ToUpper(message[:1]) + message[1:]
	}
	if strings.ContainsAny(message[len(message)-1:], ".?!") {
		return message
	}
	return message + "."
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
	switch {
	case f.Measured != nil && f.Limit != nil:
		p.labeled("measured", f.Measured.Text+" against "+f.Limit.Text)
	case f.Measured != nil:
		p.labeled("measured", f.Measured.Text)
	case f.Limit != nil:
		p.labeled("limit", f.Limit.Text)
	}
}

func (p *printer) sources(list []finding.Citation) {
	if len(list) == 0 {
		p.labeled("source", "none is given")
	}
	for _, c := range list {
		p.labeled("source", c.String())
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
