package cli

import (
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

func newPolicy(e Environment) *cobra.Command {
	c := &cobra.Command{
		Use:   "policy",
		Short: "Write, tune, check and test rules",
		Long: `Policy is for those who set the rules: what is in force in this folder and where
each value comes from, a first rule to begin from, and whether rules and their
tests are sound.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(newPolicySettings(e), newPolicyNew(e), newPolicyCheck(e), newPolicyTest(e), newPolicyDocs(e))
	return c
}

// rulesOf lists the rules of one folder.
func rulesOf(l *lint.Linter, s policy.Source) ([]*policy.Rule, error) {
	rules, err := l.Rules(l.Profile())
	return slices.DeleteFunc(rules, func(r *policy.Rule) bool { return !s.HasRule(r.ID) }), err
}
