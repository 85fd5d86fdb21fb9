package cli

import (
	"errors"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/register"
)

func newGear(e Environment) *cobra.Command {
	c := &cobra.Command{
		Use:   "gear",
		Short: "Read registers of slings and fittings",
		Long: `Gear is for registers: slings and fittings with their serial numbers, certificates
and inspections, in *.gear.yaml files, or in a table in CSV with a *.columns.yaml
that says what its columns are.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(newGearShow(e), newGearImport(e), newGearCheck(e), newGearDue(e), newGearWhere(e))
	return c
}

// registerFailed shows what is wrong with a register and gives the exit code: a
// file that can't be read was not checked, one that says what columns are is
// configuration, and everything else is a finding.
func registerFailed(e Environment, err error) error {
	var problems register.Problems
	if !errors.As(err, &problems) {
		return exit{Unchecked, err}
	}
	has := func(id string) bool {
		return slices.ContainsFunc(problems, func(p register.Problem) bool { return p.ID == id })
	}
	for _, p := range problems {
		fmt.Fprintf(e.Stderr, "%s (%s)\n", visible(p.String()), p.ID)
	}
	switch {
	case wrongColumns(problems):
		return exit{code: Usage}
	case has(register.Unreadable):
		return exit{code: Unchecked}
	}
	return exit{code: Findings}
}
