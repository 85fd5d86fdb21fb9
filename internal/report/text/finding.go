package text

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// Labels of the lines below a finding, all of one width.
const (
	measuredLabel  = "  measured   "
	mendLabel      = "  to mend    "
	alsoLabel      = "  see also   "
	authorityLabel = "  authority  "
	ruleLabel      = "  rule       "
)

func (p *page) finding(r *lint.Result, f finding.Finding) {
	p.line("%s  %s", p.paint.severity(f.Severity, strings.ToUpper(string(f.Severity))), p.paint.strong(report.Visible(f.Title)))
	p.line("  %s", report.Visible(place(f)))
	p.excerpt(r, f)
	p.text("  ", sentence(f.Message))
	p.figures(f)
	if f.Remedy != "" {
		p.text(mendLabel, f.Remedy)
	}
	p.related(f)
	for _, c := range f.Citations {
		p.text(authorityLabel, c.String())
	}
	p.line("%s%s", ruleLabel, f.Rule)
}

// place is file, line and column in the form that editors open.
func place(f finding.Finding) string {
	from := f.Place.Range.From
	if from.Line == 0 {
		return f.Place.File
	}
	return fmt.Sprintf("%s:%d:%d", f.Place.File, from.Line, from.Column)
}

func (p *page) figures(f finding.Finding) {
	switch {
	case f.Measured != nil && f.Limit != nil:
		p.text(measuredLabel, f.Measured.Text+" against "+f.Limit.Text)
	case f.Measured != nil:
		p.text(measuredLabel, f.Measured.Text)
	}
}

func (p *page) related(f finding.Finding) {
	for _, x := range f.Related {
		where := fmt.Sprintf("line %d", x.Place.Range.From.Line)
		if x.Place.File != f.Place.File {
			where = x.Place.File + ", " + where
		}
		p.text(alsoLabel, where+": "+x.Caption)
	}
}

// sentence gives a message a capital and a stop. A message that begins with a
// quotation or a name in code keeps its beginning.
func sentence(message string) string {
	if message == "" {
		return message
	}
	first := message[:1]
	message = strings.ToUpper(first) + message[1:]
	if last := message[len(message)-1]; last != '.' && last != '?' {
		message += "."
	}
	return message
}
