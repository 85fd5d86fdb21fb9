package text

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// plan prints all that is known of the n-th plan: what it comes to and how the
// load hangs, which a reviewer signs for, before the findings.
func (p *printer) plan(run report.Run, n int) {
	r, of := run.Results[n], len(run.Results)
	if r == nil {
		p.emit(segment{red, "NOT CHECKED: there is no result for one " + run.Noun() + "."})
		p.blank()
		return
	}
	noun := report.NounOf(r)
	noun = strings.ToUpper(noun[:1]) + noun[1:]
	label := noun + ": "
	if of > 1 {
		label = fmt.Sprintf("%s %d of %d: ", noun, n+1, of)
	}
	p.heading(r, label)
	p.item("  ", "Outcome: ", bold, report.OutcomeOf(run, n))
	p.blank()
	judged := report.Understood(r) && r.State == lint.Judged
	if judged && !report.IsGear(r) {
		p.howItHangs(r)
	}
	p.findings(r)
	if judged {
		p.checked(r.Checked)
	}
}

func (p *printer) heading(r *lint.Result, label string) {
	p.emit(segment{bold, label}, segment{bold, r.File})
	if name := report.NameOf(r); name != "" {
		p.item("  ", "", plain, name)
	}
	p.state(r)
}

// state says how far the plan came.
func (p *printer) state(r *lint.Result) {
	switch {
	case r.State == lint.Computed:
		p.item("  ", "NOT JUDGED: ", red, "figures were computed, and no rule was put to them. "+report.Found(report.CountOf(r)))
	case r.State == lint.NotValid:
		p.item("  ", "NOT VALID: ", red, report.NothingKnown(r)+" "+report.Found(report.CountOf(r)))
	case r.State == lint.Unread:
		p.item("  ", "NOT READ: ", red, "nothing in this file was checked.")
	case !report.Understood(r):
		p.item("  ", "NOT CHECKED: ", red, "no rule was put to this "+report.NounOf(r)+".")
	default:
		p.item("  ", "", plain, "Judged by profile "+r.Profile+", at stage "+r.Stage+", "+report.DayOf(r)+".")
		p.overrides(r)
		p.aside(r)
		for _, words := range []string{report.DayMissing(r), report.ItemsOf(r)} {
			if words != "" {
				p.item("  ", "", plain, words)
			}
		}
		p.item("  ", "", plain, report.Found(report.CountOf(r)))
	}
}

// aside lists every waiver in force, and counts what the baseline sets aside.
func (p *printer) aside(r *lint.Result) {
	for _, f := range report.Waived(r) {
		p.hanging("  ", "Waived: ", plain, report.WaiverOf(f)+".", "    ")
	}
	if known := report.Known(r); len(known) > 0 {
		p.hanging("  ", "Known: ", plain, fmt.Sprintf("%s %s.", report.Plural(len(known), "finding"), known[0].Aside.Words()), "    ")
	}
}

// overrides names what configurations set otherwise than the profile: a
// reviewer has to know that a rule was changed.
func (p *printer) overrides(r *lint.Result) {
	for _, o := range r.Overrides {
		p.hanging("  ", "Set by "+o.From+": ", plain, fmt.Sprintf("%s, %s: %s instead of %s.", o.Rule, o.What, o.Is, o.Was), "    ")
	}
}
