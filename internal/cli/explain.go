package cli

import (
	"errors"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/builtin"
	"liftlint/internal/lint"
	"liftlint/internal/rulepage"
)

type explainCommand struct {
	env     Environment
	judging judging
	format  *choice
}

func newExplain(e Environment) *cobra.Command {
	k := &explainCommand{env: e, format: oneOf("text", "json")}
	c := &cobra.Command{
		Use:     "explain RULE",
		Short:   "Tell what a rule asks for, why, with which limits, on whose authority",
		Example: "  liftlint explain angle/leg_too_flat",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return k.run(args[0]) },
	}
	c.ValidArgsFunction = func(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
		if len(args) > 0 {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		return k.ids(), cobra.ShellCompDirectiveNoFileComp
	}
	k.judging.flags(c)
	c.Flags().Var(k.format, "format", "text or json")
	return c
}

// ids are all that there is to explain here; none where the rules can't be read.
func (k *explainCommand) ids() []string {
	linter, err := k.judging.linter(".", false)
	if err != nil {
		return nil
	}
	rules, err := linter.Rules(linter.Profile())
	if err != nil {
		return nil
	}
	list := builtin.IDs()
	for _, r := range rules {
		list = append(list, r.ID)
	}
	slices.Sort(list)
	return list
}

func (k *explainCommand) run(id string) error {
	linter, err := k.judging.linter(".", false)
	if err != nil {
		return err
	}
	p, err := k.page(linter, id)
	if errors.Is(err, rulepage.ErrUnknown) {
		return wrongUsage(err)
	}
	if err != nil {
		return exit{Unchecked, err}
	}
	if k.format.value == "json" {
		return writeJSON(k.env.Stdout, p)
	}
	_, err = fmt.Fprint(k.env.Stdout, visibleLines(p.Text()))
	return err
}

func (k *explainCommand) page(l *lint.Linter, id string) (rulepage.Page, error) {
	names, err := profilesOf(&k.judging)
	if err != nil {
		return rulepage.Page{}, err
	}
	return rulepage.Build(l, rulepage.Options{Profiles: names, Stage: k.judging.stage}, id)
}
