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
	left := p.detail.findings
	p.paragraph("**Findings**")
	for _, g := range report.Grouped(r.Findings) {
		n := min(left, len(g))
		if n > 0 {
			p.group(r, g, n)
		}
		left -= n
	}
	p.out.WriteString("\n")
	if rest := len(r.Findings) - min(p.detail.findings, len(r.Findings)); rest > 0 {
		p.paragraph(fmt.Sprintf("**%s not shown here**, for want of room: the last of the least severity. The counts above take them in.", wasOrWere(rest, "finding")))
	}
}

// group shows the first so many of like findings under what they have in common.
func (p *page) group(r *lint.Result, g []finding.Finding, n int) {
	f := g[0]
	severity := word(f.Severity)
	if f.Aside != nil {
		severity = strings.ToUpper(f.Word()) + " " + severity
	}
	head := fmt.Sprintf("- **%s: %s.**", severity, Text(short(f.Title)))
	if len(g) > 1 {
		head += " " + report.Plural(len(g), "finding")
	}
	p.out.WriteString(head + " " + ruleOf(f) + "\n")
	var before *finding.Finding
	for _, x := range g[:n] {
		p.one(r, x, before)
		before = &x
	}
	p.out.WriteString("  - Source: " + Text(short(report.Sources(f.Citations))) + "\n")
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
