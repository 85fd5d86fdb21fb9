package cli

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

type settingsCommand struct {
	env     Environment
	judging judging
	format  *choice
	changed bool
}

// settingList is what is in force, as JSON.
type settingList struct {
	Profile        string        `json:"profile" doc:"Whose practice plans are judged by that name none."`
	Configurations []string      `json:"configurations" doc:"The configurations that hold, the outermost first."`
	Settings       []settingLine `json:"settings" doc:"Every value that is set, by rule."`
}

// settingLine is one value in force and where it comes from.
type settingLine struct {
	Rule  string `json:"rule" doc:"Id of the rule."`
	What  string `json:"what" doc:"A parameter, severity, a grade, off, or an inspection interval."`
	Value string `json:"value" doc:"What is in force."`
	From  string `json:"from" doc:"The configuration or profile that sets it, or the rule itself."`
}

func newPolicySettings(e Environment) *cobra.Command {
	k := &settingsCommand{env: e, format: oneOf("table", "json")}
	c := &cobra.Command{
		Use:     "settings",
		Short:   "Show what is in force in this folder, and where each value comes from",
		Example: "  liftlint policy settings --changed",
		Args:    cobra.NoArgs,
		RunE:    func(*cobra.Command, []string) error { return k.run() },
	}
	k.judging.flags(c)
	c.Flags().Var(k.format, "format", "table or json")
	c.Flags().BoolVar(&k.changed, "changed", false, "only what a configuration sets otherwise than rule and profile")
	return c
}

func (k *settingsCommand) run() error {
	c, err := k.judging.configFor(".")
	if err != nil {
		return wrongUsage(err)
	}
	linter, err := k.judging.linter(".", false)
	if err != nil {
		return err
	}
	lines, err := k.lines(linter)
	if err != nil {
		return exit{Unchecked, err}
	}
	list := settingList{Profile: linter.Profile(), Configurations: []string{}, Settings: lines}
	for _, l := range c.Layers {
		list.Configurations = append(list.Configurations, l.Name)
	}
	if k.format.value == "json" {
		return writeJSON(k.env.Stdout, list)
	}
	return k.table(list)
}

func (k *settingsCommand) lines(l *lint.Linter) ([]settingLine, error) {
	rules, err := l.Rules(l.Profile())
	if err != nil {
		return nil, err
	}
	lines := []settingLine{}
	for _, r := range rules {
		for _, s := range settingsOf(r) {
			if !k.changed || setByConfig(r, s) {
				lines = append(lines, s)
			}
		}
	}
	return lines, nil
}

// settingsOf lists a rule's severities and parameters with where they come
// from.
func settingsOf(r *policy.Rule) []settingLine {
	var lines []settingLine
	if r.Off != "" {
		lines = append(lines, settingLine{r.ID, "off", r.Off, r.OffBy})
	}
	if len(r.Grades) == 0 {
		lines = append(lines, settingLine{r.ID, "severity", r.Severity.String(), r.SeverityFrom})
	}
	for _, g := range r.Grades {
		lines = append(lines, settingLine{r.ID, g.Name, g.Severity.String(), g.From})
	}
	for _, p := range r.Params {
		lines = append(lines, settingLine{r.ID, p.Name, policy.Words(p.Value), p.From})
	}
	for _, o := range r.Overrides { // what is no parameter and no severity, such as an interval
		if !slices.ContainsFunc(lines, func(l settingLine) bool { return l.What == o.What }) {
			lines = append(lines, settingLine{r.ID, o.What, o.Is, o.From})
		}
	}
	for i := range lines {
		if lines[i].From == "" {
			lines[i].From = "the rule"
		}
	}
	return lines
}

func setByConfig(r *policy.Rule, s settingLine) bool {
	for _, o := range r.Overrides {
		if o.What == s.What {
			return true
		}
	}
	return false
}

func (k *settingsCommand) table(list settingList) error {
	configurations := "no configuration"
	if len(list.Configurations) > 0 {
		configurations = strings.Join(list.Configurations, ", then ")
	}
	fmt.Fprintf(k.env.Stdout, "Profile %s; %s.\n\n", list.Profile, visible(configurations))
	if len(list.Settings) == 0 {
		fmt.Fprintln(k.env.Stdout, "Nothing is set otherwise than rules and profile have it.")
		return nil
	}
	rows := [][]string{{"rule", "what", "value", "from"}}
	for _, s := range list.Settings {
		rows = append(rows, []string{s.Rule, s.What, visible(s.Value), visible(s.From)})
	}
	return writeAligned(k.env.Stdout, rows, "")
}
