package cli

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

type rulesCommand struct {
	env     Environment
	judging judging
	format  *choice
	keep    filter
}

// filter says which rules to list; an empty field keeps all.
type filter struct{ topic, severity, basis string }

// keeps reports whether a line passes: its topic, a severity it can reach, the
// basis of any of its sources.
func (f filter) keeps(l ruleLine) bool {
	topic, _, _ := strings.Cut(l.ID, "/")
	return (f.topic == "" || f.topic == topic) &&
		(f.severity == "" || slices.Contains(l.Severities, finding.Severity(f.severity))) &&
		(f.basis == "" || slices.ContainsFunc(l.Sources, func(c policy.Cited) bool { return c.Basis == finding.Basis(f.basis) }))
}

// check refuses words that no rule could match.
func (f filter) check(lines []ruleLine) error {
	if f.severity != "" {
		if _, err := finding.ParseSeverity(f.severity); err != nil {
			return wrongUsage(fmt.Errorf("--severity: %w", err))
		}
	}
	if !slices.Contains(append(finding.Bases(), ""), finding.Basis(f.basis)) {
		return wrongUsage(fmt.Errorf("--basis %s: write read, memory, practice, company or format", f.basis))
	}
	if f.topic != "" && !slices.ContainsFunc(lines, func(l ruleLine) bool { return strings.HasPrefix(l.ID, f.topic+"/") }) {
		return wrongUsage(fmt.Errorf("--topic %s: no rule has that topic, the part of its id before the stroke", f.topic))
	}
	return nil
}

// ruleList is the list as JSON.
type ruleList struct {
	Profile string     `json:"profile" doc:"Whose practice the rules follow."`
	Stage   string     `json:"stage" doc:"The stage that the severities are for."`
	Rules   []ruleLine `json:"rules" doc:"Rules by id, then the built-in checks."`
}

// ruleLine is one rule as the list shows it.
type ruleLine struct {
	ID         string             `json:"id" doc:"Id of the rule or of the built-in check."`
	Severities []finding.Severity `json:"severities" enum:"error,warning,note" doc:"What it can reach, worst first."`
	Title      string             `json:"title" doc:"What it is called."`
	Over       string             `json:"over,omitempty" doc:"The collection of facts whose records it judges; absent for built-in checks."`
	Off        string             `json:"off,omitempty" doc:"Why the profile switches it off; absent where it does not."`
	Sources    []policy.Cited     `json:"sources" doc:"On whose authority."`
}

func newRules(e Environment) *cobra.Command {
	k := &rulesCommand{env: e, format: oneOf("table", "json")}
	c := &cobra.Command{
		Use:     "rules",
		Short:   "List what is checked, how severely and on whose authority",
		Example: "  liftlint rules --profile eu\n  liftlint rules --severity error --basis memory",
		Args:    cobra.NoArgs,
		RunE:    func(*cobra.Command, []string) error { return k.run() },
	}
	k.judging.flags(c)
	c.Flags().Var(k.format, "format", "table or json")
	c.Flags().StringVar(&k.keep.topic, "topic", "", "only rules of this topic, the part of the id before the stroke")
	c.Flags().StringVar(&k.keep.severity, "severity", "", "only rules that can reach this severity")
	c.Flags().StringVar(&k.keep.basis, "basis", "", "only rules with a source of this basis: read, memory, practice, company or format")
	return c
}

func (k *rulesCommand) run() error {
	linter, err := k.judging.linter(".", false)
	if err != nil {
		return err
	}
	lines, err := k.lines(linter)
	if err != nil {
		return exit{Unchecked, err}
	}
	if err := k.keep.check(lines); err != nil {
		return err
	}
	lines = slices.DeleteFunc(lines, func(l ruleLine) bool { return !k.keep.keeps(l) })
	if k.format.value == "json" {
		return writeJSON(k.env.Stdout, ruleList{linter.Profile(), k.judging.stage, lines})
	}
	return k.writeTable(linter.Profile(), lines)
}

func (k *rulesCommand) lines(l *lint.Linter) ([]ruleLine, error) {
	rules, err := l.Rules(l.Profile())
	if err != nil {
		return nil, err
	}
	var lines []ruleLine
	for _, r := range rules {
		lines = append(lines, ruleLine{r.ID, severitiesOf(r, k.judging.stage), r.Title, r.Over, r.Off, r.Citations})
	}
	checks, err := builtin.All()
	if err != nil {
		return nil, err
	}
	for _, c := range checks {
		lines = append(lines, ruleLine{ID: c.ID, Severities: []finding.Severity{c.Severity}, Title: c.Title, Sources: []policy.Cited{{Citation: c.Citation()}}})
	}
	return lines, nil
}

// severitiesOf lists the severities that a rule can reach, worst first.
func severitiesOf(r *policy.Rule, stage string) []finding.Severity {
	if len(r.Grades) == 0 {
		return []finding.Severity{r.Severity.At(stage)}
	}
	var list []finding.Severity
	for _, g := range r.Grades {
		if s := g.Severity.At(stage); len(list) == 0 || list[len(list)-1] != s {
			list = append(list, s)
		}
	}
	return list
}

func (k *rulesCommand) writeTable(profile string, lines []ruleLine) error {
	rows := [][]string{{"rule", "severity", "what", "authority"}}
	for _, l := range lines {
		rows = append(rows, []string{l.ID, severityWords(l), visible(l.Title), visible(authority(l.Sources))})
	}
	fmt.Fprintf(k.env.Stdout, "Rules by profile %s at stage %s. liftlint explain RULE tells more.\n\n", profile, k.judging.stage)
	return writeAligned(k.env.Stdout, rows, "")
}

func severityWords(l ruleLine) string {
	if l.Off != "" {
		return "off"
	}
	words := make([]string, len(l.Severities))
	for i, s := range l.Severities {
		words[i] = string(s)
	}
	return strings.Join(words, ", ")
}

// authority names the first source, its basis, and how many more there are.
func authority(sources []policy.Cited) string {
	if len(sources) == 0 {
		return "none"
	}
	c := sources[0]
	text := fmt.Sprintf("%s (%s)", c.Document, c.Basis)
	if n := len(sources) - 1; n > 0 {
		text += fmt.Sprintf(" and %d more", n)
	}
	return text
}
