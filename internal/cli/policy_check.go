package cli

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"liftlint/internal/policy"
)

func newPolicyCheck(e Environment) *cobra.Command {
	var j judging
	c := &cobra.Command{
		Use:     "check",
		Short:   "Check that configuration and rules are sound",
		Example: "  liftlint policy check",
		Long: `Check loads the configuration and the rules of this folder in every profile and
names all that is wrong with them, with file, line and column. The exit code is 1
where something is.`,
		Args: cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error { return checkRules(e, &j) },
	}
	j.flags(c)
	return c
}

func checkRules(e Environment, j *judging) error {
	linter, err := j.linter(".", false)
	if err != nil {
		return err
	}
	names, err := profilesOf(j)
	if err != nil {
		return exit{Unchecked, err}
	}
	count := 0
	for _, name := range names {
		rules, err := linter.Rules(name)
		var ps policy.Problems
		if errors.As(err, &ps) {
			fmt.Fprintln(e.Stdout, visibleLines(ps.Error()))
			return exit{code: Findings}
		}
		if err != nil {
			return exit{Unchecked, err}
		}
		count = len(rules)
	}
	fmt.Fprintf(e.Stdout, "%d rules are sound.\n", count)
	return nil
}
