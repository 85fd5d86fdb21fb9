package cli

import (
	"cmp"
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"liftlint/internal/onfile"
)

type gearWhere struct {
	env     Environment
	judging judging
}

func newGearWhere(e Environment) *cobra.Command {
	k := &gearWhere{env: e}
	c := &cobra.Command{
		Use:   "where NUMBER PLAN...",
		Short: "Tell which plans use an item of the register, and when",
		Long: `Where lists the plans that take the item with a number from a register, with their
days. Registers are those of --register and of each plan's liftlint.yaml; a number
that is on none of them is wrong usage.`,
		Example: "  liftlint gear where WR-0231 plans",
		Args:    cobra.MinimumNArgs(2),
		RunE:    func(_ *cobra.Command, args []string) error { return k.run(args[0], args[1:]) },
	}
	k.judging.gearFlags(c)
	k.judging.registerFlag(c)
	return c
}

func (k *gearWhere) run(number string, args []string) error {
	users := &gearUsers{env: k.env, judging: &k.judging}
	if err := users.read(args); err != nil {
		return err
	}
	users.linters.tellUnread(k.env)
	var rows [][]string
	for _, r := range users.plans {
		for _, use := range r.Uses() {
			if use.Number == number {
				rows = append(rows, []string{cmp.Or(r.Planned(), "no day"), visible(r.ID), "as " + use.ID, visible(fmt.Sprintf("%s:%d", r.File, use.Line)), visible(r.Title)})
			}
		}
	}
	if len(rows) == 0 {
		if err := users.onFile(number); err != nil {
			return err
		}
	}
	if len(rows) == 0 && len(users.wrong) > 0 {
		fmt.Fprintf(k.env.Stdout, "%s is used in none of the plans that could be read\n", visible(number))
	} else if len(rows) == 0 {
		fmt.Fprintf(k.env.Stdout, "%s is used in none of these plans\n", visible(number))
	} else if err := writeAligned(k.env.Stdout, rows, ""); err != nil {
		return exit{Unchecked, err}
	}
	return users.failed()
}

// onFile sees that a number is on one of the registers of the plans.
func (u *gearUsers) onFile(number string) error {
	if len(u.plans) == 0 {
		return nil // that they could not be read is told by failed
	}
	hint := ""
	for _, r := range u.plans {
		on, err := r.Register()
		switch {
		case errors.Is(err, onfile.ErrNone):
			continue
		case err != nil:
			return registerFailed(u.env, err)
		}
		if _, ok := on.Find(number); ok {
			return nil
		}
		if near, ok := on.Near(number); ok && hint == "" {
			hint = ": did you mean " + near + "?"
		}
	}
	return wrongUsage(fmt.Errorf("%s is not on file in any register of these plans%s", number, hint))
}
