// Package summary is the report for runs over many plans: how many findings there
// are of each severity, of each rule and in each plan, and which plans no rule could
// be put to. The findings themselves stand in the other formats.
package summary

import (
	"cmp"
	"fmt"
	"io"
	"maps"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// Write writes the summary of a run. The only error is the writer's own.
func Write(w io.Writer, run report.Run) error {
	p := &page{}
	p.failures(run.Failures)
	p.table("By rule", byRule(run))
	p.table("By "+run.Noun(), byPlan(run))
	for _, r := range run.Results {
		if why := report.DayMissing(r); why != "" {
			p.line(r.File + ": " + why)
		}
	}
	p.waivers(run.Results)
	p.line("Total: " + report.Totals(run.Count()))
	p.line("Outcome: " + report.Outcome(run))
	p.line("")
	p.line("Caution: " + report.Caution)
	_, err := io.WriteString(w, p.out.String())
	return err
}

type page struct{ out strings.Builder }

// line writes one line, in which nothing acts on a terminal.
func (p *page) line(text string) {
	p.out.WriteString(strings.TrimRight(report.Visible(text), " ") + "\n")
}

func (p *page) failures(list []string) {
	for _, f := range list {
		p.line("COULD NOT CHECK: " + report.OneLine(f))
	}
	if len(list) > 0 {
		p.line("")
	}
}

// waivers lists those in force, with who answers for each.
func (p *page) waivers(results []*lint.Result) {
	head := "Waived"
	for _, r := range results {
		if r == nil {
			continue
		}
		for _, f := range report.Waived(r) {
			if head != "" {
				p.line(head)
				head = ""
			}
			p.line("  " + report.WaiverOf(f))
		}
	}
	if head == "" {
		p.line("")
	}
}

// table writes rows, of which the first has the heads, in columns; none without
// another row.
func (p *page) table(title string, rows [][]string) {
	if len(rows) < 2 {
		return
	}
	width := make([]int, len(rows[0]))
	for _, row := range rows {
		for i := range row {
			row[i] = report.Visible(row[i])
			width[i] = max(width[i], utf8.RuneCountInString(row[i]))
		}
	}
	p.line(title)
	for _, row := range rows {
		var b strings.Builder
		for i, c := range row {
			b.WriteString("  " + c + strings.Repeat(" ", width[i]-utf8.RuneCountInString(c)))
		}
		p.line(b.String())
	}
	p.line("")
}

// ofRule sums up one rule.
type ofRule struct {
	severities [3]int
	aside      int
	plans      int
}

// byRule has a row for each rule that found something, the worst first.
func byRule(run report.Run) [][]string {
	sums := map[string]*ofRule{}
	for _, r := range run.Results {
		if r != nil {
			addRules(sums, r)
		}
	}
	rules := slices.SortedFunc(maps.Keys(sums), func(a, b string) int {
		x, y := sums[a], sums[b]
		return cmp.Or(slices.Compare(y.severities[:], x.severities[:]), y.plans-x.plans, cmp.Compare(a, b))
	})
	rows := [][]string{{"rule", "errors", "warnings", "notes", "set aside", run.Noun() + "s"}}
	for _, rule := range rules {
		s := sums[rule]
		rows = append(rows, []string{rule, number(s.severities[0]), number(s.severities[1]), number(s.severities[2]), number(s.aside), number(s.plans)})
	}
	return rows
}

func addRules(sums map[string]*ofRule, r *lint.Result) {
	seen := map[string]bool{}
	for _, f := range r.Findings {
		s := sums[f.Rule]
		if s == nil {
			s = &ofRule{}
			sums[f.Rule] = s
		}
		if !seen[f.Rule] {
			seen[f.Rule] = true
			s.plans++
		}
		if f.Aside != nil {
			s.aside++
			continue
		}
		s.severities[column(f.Severity)]++
	}
}

// column is where a severity is counted; one that nobody knows is an error.
func column(s finding.Severity) int {
	switch s {
	case finding.Warning:
		return 1
	case finding.Note:
		return 2
	}
	return 0
}

// byPlan has a row for each plan, in the order in which they were given.
func byPlan(run report.Run) [][]string {
	rows := [][]string{{run.Noun(), "errors", "warnings", "notes", "set aside", "not judged", "state"}}
	for i, r := range run.Results {
		c := report.CountOf(r)
		name := fmt.Sprintf("%s %d", run.Noun(), i+1)
		if r != nil {
			name = r.File
		}
		rows = append(rows, []string{name, number(c.Errors), number(c.Warnings), number(c.Notes), number(c.Waived + c.Known), number(c.NotJudged), stateOf(r)})
	}
	return rows
}

func stateOf(r *lint.Result) string {
	switch {
	case !report.Understood(r):
		return "not checked"
	case r.State == lint.NotValid:
		return "not valid: no rule ran"
	}
	return "judged"
}

// number shows no zeros, which would hide the others.
func number(n int) string {
	if n == 0 {
		return "."
	}
	return strconv.Itoa(n)
}
