package markdown

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/source"
)

// findings shows those of one plan, like ones together and the worst first. Those
// that there is no room for are counted.
func (p *page) findings(r *lint.Result) {
	if len(r.Findings) == 0 {
		return
	}
	shown, left := p.detail.told(r)
	if p.detail.form != inShort {
		p.paragraph("**Findings**")
	}
	for _, g := range report.Grouped(shown) {
		if p.detail.form == inShort {
			p.kind(r, g)
		} else {
			p.group(r, g)
		}
	}
	p.out.WriteString("\n")
	if len(left) > 0 {
		p.paragraph(fmt.Sprintf("**%s not shown here**, for want of room: %s", wasOrWere(len(left), "finding"), named(left)))
	}
}

// named counts findings by rule.
func named(list []finding.Finding) string {
	var parts []string
	for _, g := range report.Grouped(list) {
		parts = append(parts, fmt.Sprintf("%s %s", report.Plural(len(g), severityOf(g[0])), ruleOf(g[0])))
	}
	return strings.Join(parts, ", ") + "."
}

// severityOf is the word for a finding in a sum.
func severityOf(f finding.Finding) string {
	if f.Aside != nil {
		return f.Word() + " finding"
	}
	return strings.ToLower(string(word(f.Severity)))
}

// mostLines is how many lines of a plan are named of findings that are told together.
const mostLines = 12

// kind tells like findings in one line: the first of them, and where the others are.
func (p *page) kind(r *lint.Result, g []finding.Finding) {
	p.out.WriteString(head(g) + " " + place(r, g[0].Place) + ": " + Text(short(report.Sentence(g[0].Message))) + figures(g[0]))
	if len(g) > 1 {
		var places []string
		for _, f := range g[1:min(len(g), mostLines)] {
			places = append(places, place(r, f.Place))
		}
		if n := len(g) - mostLines; n > 0 {
			places = append(places, fmt.Sprintf("and %d more", n))
		}
		p.out.WriteString(" Likewise: " + strings.Join(places, ", ") + ".")
	}
	p.out.WriteString("\n")
}

// head begins like findings with what they have in common.
func head(g []finding.Finding) string {
	f := g[0]
	severity := word(f.Severity)
	if f.Aside != nil {
		severity = strings.ToUpper(f.Word()) + " " + severity
	}
	text := fmt.Sprintf("- **%s: %s.**", severity, Text(short(f.Title)))
	if len(g) > 1 {
		text += " " + report.Plural(len(g), "finding")
	}
	return text + " " + ruleOf(f)
}

// group shows like findings under what they have in common.
func (p *page) group(r *lint.Result, g []finding.Finding) {
	p.out.WriteString(head(g) + "\n")
	var before *finding.Finding
	for _, x := range g {
		p.one(r, x, before)
		before = &x
	}
	p.out.WriteString("  - Source: " + Text(short(report.Sources(g[0].Citations))) + "\n")
}

// one shows what a finding has of its own. A remedy is told once where several in
// a row have the same.
func (p *page) one(r *lint.Result, f finding.Finding, before *finding.Finding) {
	p.out.WriteString("  - " + place(r, f.Place) + ": " + Text(short(report.Sentence(f.Message))) + figures(f) + "\n")
	switch {
	case before != nil && before.Remedy == f.Remedy:
	case f.Remedy != "":
		p.out.WriteString("    - To put it right: " + Text(short(f.Remedy)) + "\n")
	case before != nil:
		p.out.WriteString("    - To put it right: nothing is offered for this one\n")
	}
	if len(f.Related) == 0 {
		return
	}
	var see []string
	for _, x := range f.Related {
		see = append(see, place(r, x.Place)+", "+Text(short(x.Caption)))
	}
	p.out.WriteString("    - See also " + strings.Join(see, "; ") + "\n")
}

// place names a line of the plan, whose file stands above, or a place elsewhere.
func place(r *lint.Result, at source.Location) string {
	if at.File == r.File && !at.Range.IsZero() {
		return fmt.Sprintf("line %d", at.Range.From.Line)
	}
	return Code(short(report.Place(at)))
}

// figures are told where the sentence does not have them.
func figures(f finding.Finding) string {
	var texts, parts []string
	if f.Measured != nil {
		texts, parts = append(texts, f.Measured.Text), append(parts, "measured "+Text(short(f.Measured.Text)))
	}
	if f.Limit != nil {
		texts, parts = append(texts, f.Limit.Text), append(parts, "limit "+Text(short(f.Limit.Text)))
	}
	if report.Says(f.Message, texts) {
		return ""
	}
	return " (" + strings.Join(parts, ", ") + ")"
}

// ruleOf names the rule and the grade reached.
func ruleOf(f finding.Finding) string {
	words := "(" + Code(short(f.Rule))
	if f.Grade != "" {
		words += ", grade " + Code(short(f.Grade))
	}
	return words + ")"
}

// word is one that nobody takes for less than it is.
func word(s finding.Severity) string {
	switch s {
	case finding.Error, finding.Warning, finding.Note:
		return strings.ToUpper(string(s))
	}
	return "ERROR (severity " + Text(short(fmt.Sprintf("%q", string(s)))) + " is not known)"
}

// mostReasons is how many reasons are named of one rule; the findings name what to
// give.
const mostReasons = 3

// checked tells what was not judged, rule by rule, and the sums of all rules.
func (p *page) checked(r *lint.Result) {
	var open []string
	for _, c := range r.Checked {
		if why := unjudged(c); why != "" {
			open = append(open, "- "+Code(short(c.Rule))+": "+why+"\n")
		}
	}
	if len(open) > 0 {
		p.paragraph("**Not judged**")
		p.out.WriteString(strings.Join(open, "") + "\n")
	}
	p.paragraph("**What was checked:** " + report.SumUp(r.Checked).Words())
}

func unjudged(c lint.Checked) string {
	if report.Subjects(c) == 0 && c.DoesNotApply == "" {
		return "it judged nothing, and does not say why"
	}
	if len(c.NotJudged) == 0 {
		return ""
	}
	var why []string
	for _, u := range c.NotJudged {
		reasons := u.WaitsFor
		if len(reasons) == 0 {
			reasons = []string{u.Key + " waits for something that is not named"}
		}
		for _, x := range reasons {
			if !slices.Contains(why, x) {
				why = append(why, x)
			}
		}
	}
	more := ""
	if len(why) > mostReasons {
		more = fmt.Sprintf("; and %d more", len(why)-mostReasons)
		why = why[:mostReasons]
	}
	return fmt.Sprintf("%d of %s: ", len(c.NotJudged), report.Plural(report.Subjects(c), "subject")) + Text(short(strings.Join(why, "; "))) + more
}
