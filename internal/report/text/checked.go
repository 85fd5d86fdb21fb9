package text

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// checked tells what was put to the plan and how it stood: what was broken and
// what could not be judged first.
func (p *page) checked(r *lint.Result) {
	c := report.CountOf(r)
	p.text("", fmt.Sprintf("What was checked: %s.", sums(c)))
	width := 0
	for _, k := range r.Checked {
		width = max(width, len(k.Rule))
	}
	p.group("broken", r.Checked, width, func(k lint.Checked) string {
		if len(k.Broken) == 0 {
			return ""
		}
		return fmt.Sprintf("%d of %d", len(k.Broken), len(k.Broken)+len(k.NotJudged)+len(k.Met))
	})
	p.group("not judged", r.Checked, width, notJudged)
	p.group("met", r.Checked, width, func(k lint.Checked) string {
		switch {
		case len(k.Met) == 0:
			return ""
		case len(k.Broken)+len(k.NotJudged) == 0:
			return fmt.Sprintf("all %d", len(k.Met))
		}
		return fmt.Sprintf("%d of %d", len(k.Met), len(k.Broken)+len(k.NotJudged)+len(k.Met))
	})
	p.group("does not apply", r.Checked, width, func(k lint.Checked) string { return k.DoesNotApply })
}

// group lists the rules for which there is something to say.
func (p *page) group(name string, all []lint.Checked, width int, say func(lint.Checked) string) {
	head := name
	for _, k := range all {
		words := say(k)
		if words == "" {
			continue
		}
		p.text(fmt.Sprintf("  %-14s  %-*s  ", head, width, k.Rule), words)
		head = ""
	}
}

// notJudged says how many subjects a rule could not judge, and what they wait
// for. Subjects that wait for the same stand together.
func notJudged(k lint.Checked) string {
	if len(k.NotJudged) == 0 {
		return ""
	}
	var why []string
	for _, u := range k.NotJudged {
		if words := strings.Join(u.WaitsFor, ", "); !slices.Contains(why, words) {
			why = append(why, words)
		}
	}
	total := len(k.Broken) + len(k.NotJudged) + len(k.Met)
	return fmt.Sprintf("%d of %d: %s", len(k.NotJudged), total, strings.Join(why, "; "))
}
