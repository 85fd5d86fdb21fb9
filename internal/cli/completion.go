package cli

import (
	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// completeWords lets a shell complete the words that flags take, and the names of
// plans.
func completeWords(c *cobra.Command) {
	c.Flags().VisitAll(func(f *pflag.Flag) {
		words := wordsOf(f)
		if len(words) == 0 {
			return
		}
		err := c.RegisterFlagCompletionFunc(f.Name, cobra.FixedCompletions(words, cobra.ShellCompDirectiveNoFileComp))
		if err != nil {
			panic(err) // a flag of this command, registered once
		}
	})
	for _, below := range c.Commands() {
		completeWords(below)
	}
}

// wordsOf are the words that a flag takes; none where it takes anything.
func wordsOf(f *pflag.Flag) []string {
	if c, ok := f.Value.(*choice); ok {
		return c.allowed
	}
	switch f.Name {
	case "stage":
		return policy.Stages()
	case "profile":
		if names, err := lint.ProfileNames(); err == nil {
			return names
		}
	}
	return nil
}
