package text

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
)

// checked accounts for every rule: nothing that was put to the plan is left
// out. A rule stands in each group where it has subjects.
func (p *printer) checked(list []lint.Checked) {
	p.item("", "What was checked: ", bold, count(len(list), "rule")+", with the number of subjects of each.")
	t := table{p, list, ruleColumn(list)}
	t.group("broken", func(c lint.Checked) []string { return share(len(c.Broken), c) })
	t.group("not judged", notJudged)
	t.group("met", func(c lint.Checked) []string { return share(len(c.Met), c) })
	t.group("does not apply", idle)
	p.blank()
}

// table is the account of one plan.
type table struct {
	*printer
	list   []lint.Checked
	column int // width of the rules' ids
}

// group prints the rules that have something to say, which is one or more
// texts. The first row carries the group's name.
func (t table) group(name string, say func(lint.Checked) []string) {
	const nameColumn = 16
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
	case subjects(c):
		return []string{fmt.Sprintf("all %d", n)}
	}
	return []string{fmt.Sprintf("%d of %d", n, subjects(c))}
}

// notJudged lists the subjects too, together where they wait for the same.
func notJudged(c lint.Checked) []string {
	texts := share(len(c.NotJudged), c)
	var order []string
	keys := map[string][]string{}
	for _, u := range c.NotJudged {
		why := strings.Join(u.WaitsFor, "; ")
		if why == "" {
			why = "something that is not named"
		}
		if len(keys[why]) == 0 {
			order = append(order, why)
		}
		keys[why] = append(keys[why], u.Key)
	}
	for _, why := range order {
		texts = append(texts, strings.Join(keys[why], ", ")+": "+why)
	}
	return texts
}

// idle says why a rule judged nothing.
func idle(c lint.Checked) []string {
	switch {
	case c.DoesNotApply != "":
		return []string{c.DoesNotApply}
	case subjects(c) == 0:
		return []string{"it judged nothing, and does not say why"}
	}
	return nil
}

func subjects(c lint.Checked) int { return len(c.Broken) + len(c.NotJudged) + len(c.Met) }

func ruleColumn(list []lint.Checked) int {
	n := 0
	for _, c := range list {
		n = max(n, width(c.Rule))
	}
	return min(n, 40)
}
