package cli

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"liftlint/internal/gitrepo"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// refuseUnknown has the commands that the library adds refuse what they don't know,
// where they would show their help and call that a success.
func refuseUnknown(root *cobra.Command) {
	root.InitDefaultCompletionCmd()
	root.InitDefaultHelpCmd()
	for _, c := range root.Commands() {
		switch c.Name() {
		case "completion":
			c.Args = cobra.NoArgs
			c.RunE = func(c *cobra.Command, _ []string) error { return c.Help() }
			for _, shell := range c.Commands() {
				shell.Example = "  liftlint completion " + shell.Name() + " > liftlint-completion"
			}
		case "help":
			c.Args = func(c *cobra.Command, args []string) error {
				found, rest, err := root.Find(args)
				if err == nil && len(rest) > 0 {
					err = fmt.Errorf("unknown command %q for %q", rest[0], found.CommandPath())
				}
				return err
			}
		}
	}
}

// completeWords lets a shell complete the words that flags take, and the names of
// plans.
func completeWords(c *cobra.Command) {
	c.Flags().VisitAll(func(f *pflag.Flag) {
		words := wordsOf(f)
		if len(words) == 0 {
			return
		}
		complete(c, f.Name, cobra.FixedCompletions(words, cobra.ShellCompDirectiveNoFileComp))
	})
	for _, below := range c.Commands() {
		completeWords(below)
	}
}

// completeRevisions offers branches and tags, and files where they are among what is
// asked for.
func completeRevisions(e Environment, files cobra.ShellCompDirective) cobra.CompletionFunc {
	return func(c *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
		ctx := c.Context()
		if ctx == nil {
			ctx = context.Background()
		}
		repo, err := gitrepo.Open(ctx, ".", e.Getenv)
		if err != nil {
			return nil, files
		}
		names, err := repo.Names(ctx)
		if err != nil {
			return nil, files
		}
		return append(names, "HEAD"), files
	}
}

// complete registers what completes a flag.
func complete(c *cobra.Command, flag string, by cobra.CompletionFunc) {
	if err := c.RegisterFlagCompletionFunc(flag, by); err != nil {
		panic(err) // a flag of this command, registered once
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
