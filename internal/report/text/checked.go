package text

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
)

// checked accounts for every rule: nothing that was put to the plan is left
// out. A rule stands in each group where it has subjects.
func (p *printer) checked(list []lint.Checked) {
	p.item("", "What was checked: ", bold, count(len(list), "rule")+", each with the number of its subjects")
	column := ruleColumn(list)
	p.group("Broken", list, column, func(c lint.Checked) int { return len(c.Broken) }, nil)
	p.group("Not judged", list, column, func(c lint.Checked) int { return len(c.NotJudged) }, p.waits)
	p.group("Met", list, column, func(c lint.Checked) int { return len(c.Met) }, nil)
	p.idle(list, column)
	p.blank()
}

func (p *printer) group(title string, list []lint.Checked, column int, number func(lint.Checked) int, more func(lint.Checked)) {
	first := true
	for _, c := range list {
		n := number(c)
		if n == 0 {
			continue
		}
		if first {
			p.emit(segment{plain, "  "}, segment{bold, title})
			first = false
		}
		p.row(c.Rule, column, fmt.Sprintf("%d of %d", n, subjects(c)))
		if more != nil {
			more(c)
		}
	}
}

// idle lists the rules that had nothing to judge, and why.
func (p *printer) idle(list []lint.Checked, column int) {
	first := true
	for _, c := range list {
		if subjects(c) > 0 && c.DoesNotApply == "" {
			continue
		}
		if first {
			p.emit(segment{plain, "  "}, segment{bold, "Does not apply"})
			first = false
		}
		why := c.DoesNotApply
		if why == "" {
			why = "it judged nothing, and does not say why"
		}
		p.row(c.Rule, column, why)
	}
}

func (p *printer) row(rule string, column int, text string) {
	pad := strings.Repeat(" ", max(column-width(rule), 0)+2)
	p.hanging("    ", rule+pad, plain, text, strings.Repeat(" ", 8))
}

// waits lists the subjects not judged, together where they wait for the same.
func (p *printer) waits(c lint.Checked) {
	var order []string
	keys := map[string][]string{}
	for _, u := range c.NotJudged {
		why := strings.Join(u.WaitsFor, "; ")
		if why == "" {
			why = "something that is not named"
		}
		if _, ok := keys[why]; !ok {
			order = append(order, why)
		}
		keys[why] = append(keys[why], u.Key)
	}
	for _, why := range order {
		p.item("      ", "", plain, strings.Join(keys[why], ", ")+" waits for: "+why)
	}
}

func subjects(c lint.Checked) int { return len(c.Broken) + len(c.NotJudged) + len(c.Met) }

func ruleColumn(list []lint.Checked) int {
	n := 0
	for _, c := range list {
		n = max(n, width(c.Rule))
	}
	return min(n, 40)
}
