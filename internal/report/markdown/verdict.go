package markdown

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// verdict is what the run comes to, ahead of everything.
func (p *page) verdict(run report.Run) {
	c := run.Count()
	words := headline(run)
	if n := c.Waived + c.Known; n > 0 {
		words += fmt.Sprintf(", %d set aside", n)
	}
	if c.NotJudged > 0 {
		words += ", " + report.Plural(c.NotJudged, "subject") + " not judged"
	}
	title := "Lift plans"
	if run.Noun() == "register" {
		title = "Gear registers"
	}
	p.paragraph("## " + title + ": " + words)
	p.paragraph("**Outcome: " + Text(report.Outcome(run)) + "** " + Text(report.Totals(c)))
	if left := run.LeftOut(); len(left) > 0 {
		p.paragraph("**Left out of this check.** It is over what changed, and does not speak for the following.")
		p.list(left)
	}
}

// mostLeftOut is how many lines are shown of what a check leaves out.
const mostLeftOut = 20

func (p *page) list(lines []string) {
	for i, l := range lines {
		if i == mostLeftOut {
			p.out.WriteString(fmt.Sprintf("- and %d more\n", len(lines)-i))
			break
		}
		p.out.WriteString("- " + Text(short(report.Sentence(l))) + "\n")
	}
	p.out.WriteString("\n")
}

// headline is the run in a few words. It never says that all is well.
func headline(run report.Run) string {
	c := run.Count()
	switch {
	case run.Exit() == report.Nothing, run.Exit() == report.Clean && c.Plans == 0:
		return "nothing was checked"
	case run.Exit() == report.Unchecked:
		return "could not check everything"
	case c.NotValid > 0:
		return fmt.Sprintf("%d of %d not valid", c.NotValid, c.Plans)
	case c.Errors > 0:
		return report.Plural(c.Errors, "error")
	case c.Warnings > 0:
		return report.Plural(c.Warnings, "warning")
	}
	return "nothing found of severity warning or worse"
}

func (p *page) failures(list []string) {
	if len(list) == 0 {
		return
	}
	p.paragraph("**Could not check.** What is named here was not checked, and nothing below speaks for it.")
	for _, f := range list {
		p.out.WriteString("- " + Text(short(report.OneLine(f))) + "\n")
	}
	p.out.WriteString("\n")
}

// plans shows the worst as far as there is room, in the order they were given.
func (p *page) plans(run report.Run) {
	shown := worst(run, p.detail.plans)
	if len(run.Results) > 1 && len(shown) > 0 {
		p.overview(run, shown)
	}
	for _, i := range shown {
		p.plan(run, i)
	}
	if rest := len(run.Results) - len(shown); rest > 0 {
		p.paragraph(fmt.Sprintf("**%s not shown here**, for want of room: those with the fewest and least findings. The counts above take them in.", wasOrWere(rest, run.Noun())))
	}
}

func wasOrWere(n int, what string) string {
	if n == 1 {
		return "1 " + what + " is"
	}
	return report.Plural(n, what) + " are"
}

// worst are the indices of so many plans, the worst of all, in their order.
func worst(run report.Run, n int) []int {
	list := make([]int, len(run.Results))
	for i := range list {
		list[i] = i
	}
	if n >= len(list) {
		return list
	}
	slices.SortStableFunc(list, func(a, b int) int { return badness(run.Results[b]) - badness(run.Results[a]) })
	list = list[:n]
	slices.Sort(list)
	return list
}

// badness orders plans: not checked, not valid, then by the worst finding.
func badness(r *lint.Result) int {
	switch {
	case !report.Understood(r):
		return 6
	case r.State == lint.NotValid:
		return 5
	}
	if w := finding.Worst(finding.Counting(r.Findings)); w != "" {
		return w.Rank()
	}
	return 0
}

// overview has a row for each plan.
func (p *page) overview(run report.Run, shown []int) {
	rows := [][]string{{run.Noun(), "state", "errors", "warnings", "notes", "not judged"}}
	for _, i := range shown {
		r := run.Results[i]
		if r == nil {
			rows = append(rows, []string{"no result", "not checked", "-", "-", "-", "-"})
			continue
		}
		c := report.CountOf(r)
		name := r.File
		if r.ID != "" {
			name = r.ID + ", " + r.File
		}
		rows = append(rows, []string{name, stateOf(r), strconv.Itoa(c.Errors), strconv.Itoa(c.Warnings), strconv.Itoa(c.Notes), strconv.Itoa(c.NotJudged)})
	}
	p.table(rows)
}

func stateOf(r *lint.Result) string {
	switch {
	case !report.Understood(r):
		return "not checked"
	case r.State == lint.NotValid:
		return "not valid"
	}
	return "judged"
}

// plan shows one plan: what it is, how it hangs, what was found and what was not
// judged.
func (p *page) plan(run report.Run, n int) {
	r := run.Results[n]
	defer func(d detail) { p.detail = d }(p.detail)
	p.detail = p.detailOf(n)
	if r == nil {
		p.paragraph("### Not checked")
		p.paragraph("There is no result for one plan.")
		return
	}
	p.paragraph("### " + Text(short(cmp.Or(report.NameOf(r), r.File))))
	p.paragraph(Code(short(r.File)) + ". " + p.state(r))
	if len(run.Results) > 1 && p.detail.form != inShort {
		p.paragraph("Outcome: " + Text(report.OutcomeOf(run, n)))
	}
	judged := report.Understood(r) && r.State == lint.Judged
	if judged {
		p.overrides(r)
		p.aside(r)
		if p.detail.form == whole && !report.IsGear(r) {
			p.hanging(r)
		}
	}
	p.findings(r)
	if judged && p.detail.form != inShort {
		p.checked(r)
	}
}

func (p *page) state(r *lint.Result) string {
	found, gear := report.Found(report.CountOf(r)), ""
	if report.IsGear(r) {
		gear = strings.TrimLeft(report.DayMissing(r)+" "+report.ItemsOf(r)+" ", " ")
	}
	switch {
	case r.State == lint.NotValid:
		return "**Not valid:** " + report.NothingKnown(r) + " " + found
	case r.State == lint.Unread:
		return "**Not read:** nothing in this file was checked."
	case !report.Understood(r):
		return "**Not checked:** no rule was put to this " + report.NounOf(r) + "."
	}
	return "Judged by profile " + Text(short(r.Profile)) + ", at stage " + Text(short(r.Stage)) + ", " + Text(short(report.DayOf(r))) + ". " + gear + found
}

// overrides names what configurations set otherwise: a reviewer has to know.
func (p *page) overrides(r *lint.Result) {
	for _, o := range r.Overrides {
		p.out.WriteString("- Set by " + Code(short(o.From)) + ": " + Code(short(o.Rule)) + ", " + Text(short(fmt.Sprintf("%s: %s instead of %s.", o.What, o.Is, o.Was))) + "\n")
	}
	if len(r.Overrides) > 0 {
		p.out.WriteString("\n")
	}
}

// aside lists every waiver in force, and counts what the baseline sets aside.
func (p *page) aside(r *lint.Result) {
	var lines []string
	for _, f := range report.Waived(r) {
		lines = append(lines, "- Waived: "+Text(short(report.WaiverOf(f)))+"\n")
	}
	if known := report.Known(r); len(known) > 0 {
		lines = append(lines, fmt.Sprintf("- Known: %s ", report.Plural(len(known), "finding"))+Text(short(known[0].Aside.Words()))+"\n")
	}
	if len(lines) > 0 {
		p.out.WriteString(strings.Join(lines, "") + "\n")
	}
}

// hanging shows the decisive figures.
func (p *page) hanging(r *lint.Result) {
	h, ok := report.HangingOf(r)
	if !ok {
		p.paragraph("**How it hangs** could not be computed.")
		return
	}
	p.paragraph("**How it hangs:** " + Text(strings.Join(h.Words, "; ")) + ".")
	if len(h.Legs) > 0 {
		p.table(h.Legs)
	}
	var more []string
	if h.AboveLegs != "" {
		more = append(more, "Above the legs: "+Text(h.AboveLegs)+".")
	}
	if h.InsideBeams != "" {
		more = append(more, "In the beams: "+Text(h.InsideBeams)+".")
	}
	if len(more) > 0 {
		p.paragraph(strings.Join(more, " "))
	}
	switch {
	case len(h.Phases) == 0:
	case p.detail.findings >= fewFindings:
		p.table(h.Phases)
	default:
		p.paragraph(fmt.Sprintf("The figures of %s are not shown here, for want of room.", report.Plural(len(h.Phases)-1, "position")))
	}
}
