package text

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// checked accounts for every rule: nothing that was put to the plan is left
// out of the sums. What is broken and what could not be judged is always named;
// a rule stands in each group where it has subjects.
func (p *printer) checked(list []lint.Checked) {
	sums := report.SumUp(list)
	words := sums.Words()
	if p.all || sums.Broken+sums.NotJudged > 0 {
		words += " Below, with the number of subjects of each."
	}
	p.item("", "What was checked: ", bold, words)
	t := table{p, list, ruleColumn(list)}
	t.group("broken", func(c lint.Checked) []string { return share(len(c.Broken), c) })
	t.topics("not judged", func(c lint.Checked) string { return strings.Join(share(len(c.NotJudged), c), "") })
	t.group("why not", unnamed)
	if p.all {
		t.topics("met", func(c lint.Checked) string { return strings.Join(share(len(c.Met), c), "") })
	}
	t.group("did nothing", silent)
	switch {
	case p.all:
		t.topics("does not apply", idle)
	case sums.Met+sums.Idle+sums.Partly > 0:
		p.item("  ", "", plain, "--list-checks names the rules that are met and those that do not apply.")
	}
	p.blank()
}

// table is the account of one plan.
type table struct {
	*printer
	list   []lint.Checked
	column int // width of the rules' ids
}

// nameColumn is the width of the groups' names.
const nameColumn = 16

// group prints the rules that have something to say, which is one or more
// texts. The first row carries the group's name.
func (t table) group(name string, say func(lint.Checked) []string) {
	rest := 2 + nameColumn + t.column + 2
	if rest > t.width*3/5 {
		rest = 6
	}
	for _, c := range t.list {
		rule := c.Rule
		for _, text := range say(c) {
			label := pad(rule, t.column) + "  "
			t.hanging("  ", pad(name, nameColumn)+label, plain, text, strings.Repeat(" ", rest))
			name, rule = "", ""
		}
	}
}

func pad(text string, column int) string {
	return text + strings.Repeat(" ", max(column-width(text), 0))
}

// share says how many of the subjects stand in a group; nothing where none do.
func share(n int, c lint.Checked) []string {
	switch n {
	case 0:
		return nil
	case report.Subjects(c):
		return []string{fmt.Sprintf("all %d", n)}
	}
	return []string{fmt.Sprintf("%d of %d", n, report.Subjects(c))}
}

// unnamed lists the subjects that wait for something that is not named. What the
// others wait for are findings, each told once.
func unnamed(c lint.Checked) []string {
	var texts []string
	for _, u := range c.NotJudged {
		if len(u.WaitsFor) == 0 {
			texts = append(texts, u.Key+": something that is not named")
		}
	}
	return texts
}

// silent is for a rule that judged nothing and does not say why, which must
// never pass for met.
func silent(c lint.Checked) []string {
	if report.Subjects(c) == 0 && c.DoesNotApply == "" {
		return []string{"it judged nothing, and does not say why"}
	}
	return nil
}

// idle marks a rule that has nothing to judge in the plan. Why it has none
// stands in the report for programs, and `explain` says what it judges.
func idle(c lint.Checked) string {
	if c.DoesNotApply == "" {
		return ""
	}
	return "-"
}

// topics prints the rules that have something short to say, those of one topic
// together: a clean plan meets many.
func (t table) topics(name string, say func(lint.Checked) string) {
	var order []string
	lines := map[string][]string{}
	for _, c := range t.list {
		text := say(c)
		if text == "" {
			continue
		}
		topic, rule, _ := strings.Cut(c.Rule, "/")
		if text != "-" {
			rule += " (" + text + ")"
		}
		if lines[topic] == nil {
			order = append(order, topic)
		}
		lines[topic] = append(lines[topic], rule)
	}
	column := 0
	for _, topic := range order {
		column = max(column, width(topic))
	}
	for _, topic := range order {
		label := pad(name, nameColumn) + pad(topic, column) + "  "
		t.hanging("  ", label, plain, strings.Join(lines[topic], ", "), strings.Repeat(" ", 2+width(label)))
		name = ""
	}
}

func ruleColumn(list []lint.Checked) int {
	n := 0
	for _, c := range list {
		n = max(n, width(c.Rule))
	}
	return min(n, 40)
}
