package cli

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/register"
)

type gearDue struct {
	env     Environment
	judging judging
	within  string
	failOn  *choice
}

// What makes the exit code of gear due 1, the default first. Whatever is listed
// as not known counts as overdue.
const (
	failOnOverdue = "overdue"
	failOnDue     = "due"
	failOnNothing = "nothing"
)

func newGearDue(e Environment) *cobra.Command {
	k := &gearDue{env: e, failOn: oneOf(failOnOverdue, failOnDue, failOnNothing)}
	c := &cobra.Command{
		Use:   "due [PLAN...]",
		Short: "List the gear whose inspection falls due, and the plans that use it",
		Long: `Due lists the items that may be used and whose inspection falls due within so many
days of a day, those that are overdue first, and those of which no due day is known.
With plans, each item comes with the lifts that use it and their days.

The day is that of --on or, left out, the first day of the plans. Registers are
those of --register and of liftlint.yaml, otherwise those of this folder.

The exit code is 1 where an item is overdue or its due day is not known; with
--fail-on due, where anything is listed; with --fail-on nothing, never for that.`,
		Example: "  liftlint gear due --within 30d --on 2026-12-04 plans",
		RunE:    func(c *cobra.Command, args []string) error { return k.run(c.Context(), args) },
	}
	k.judging.gearFlags(c)
	k.judging.registerFlag(c)
	c.Flags().StringVar(&k.within, "within", "30d", "how many days ahead, such as 30d")
	c.Flags().Var(k.failOn, "fail-on", "what makes the exit code 1: overdue (or not known), due, or nothing")
	return c
}

func (k *gearDue) run(ctx context.Context, args []string) error {
	if ctx == nil {
		ctx = context.Background()
	}
	days, err := strconv.Atoi(strings.TrimSuffix(k.within, "d"))
	if err != nil || days < 0 || days > 36_500 {
		return wrongUsage(fmt.Errorf("--within %s is no number of days: write 30d", k.within))
	}
	users := &gearUsers{env: k.env, judging: &k.judging}
	if err := users.read(args); err != nil {
		return err
	}
	if k.judging.on == "" {
		k.judging.on = users.firstDay()
	}
	if k.judging.on == "" {
		return wrongUsage(errors.New("say which day it is: --on 2026-12-04; there is no clock in here, and no plan names a day"))
	}
	linter, registers, err := k.judging.gearLinter(nil)
	if err != nil {
		return err
	}
	r, err := k.env.read(registers)
	if err != nil {
		return registerFailed(k.env, err)
	}
	k.env.tellNotRead(filesOf(registers.Notes()))
	all, err := linter.DueDays(ctx, r)
	if err != nil {
		return exit{Unchecked, err}
	}
	on, err := time.Parse(time.DateOnly, k.judging.on)
	if err != nil {
		return wrongUsage(err)
	}
	list := soon(all, on, days)
	if err := k.show(list, on, users); err != nil {
		return exit{Unchecked, err}
	}
	if err := users.failed(); err != nil {
		return err
	}
	return k.outcome(list, on)
}

// outcome is the exit code of what is listed.
func (k *gearDue) outcome(list []lint.Due, on time.Time) error {
	fails := slices.ContainsFunc(list, func(d lint.Due) bool {
		switch k.failOn.value {
		case failOnDue:
			return true
		case failOnNothing:
			return false
		}
		return d.Why != "" || d.Day.Before(on)
	})
	if fails {
		return exit{code: Findings}
	}
	return nil
}

// soon keeps what is due by so many days after a day, or not known to be later,
// the unknown first, then by day.
func soon(all []lint.Due, on time.Time, days int) []lint.Due {
	last := on.AddDate(0, 0, days)
	list := slices.DeleteFunc(all, func(d lint.Due) bool { return d.Why == "" && d.Day.After(last) })
	slices.SortStableFunc(list, func(a, b lint.Due) int {
		switch {
		case (a.Why == "") != (b.Why == ""):
			if a.Why != "" {
				return -1
			}
			return 1
		case a.Why != "":
			return 0
		}
		return a.Day.Compare(*b.Day)
	})
	return list
}

func (k *gearDue) show(list []lint.Due, on time.Time, users *gearUsers) error {
	rows := [][]string{{"due", "item", "kind", "last inspected", "where", "used in"}}
	for _, d := range list {
		last := "-"
		if d.Last != nil {
			last = d.Last.Format(time.DateOnly)
		}
		rows = append(rows, []string{dueWords(d, on), visible(d.Item.Number), strings.ReplaceAll(string(d.Item.Gear.Base().Kind), "_", " "), last,
			visible(cmp.Or(d.Item.Location, "-")), visible(cmp.Or(strings.Join(users.of(d.Item.Number), "; "), "-"))})
	}
	if len(list) == 0 {
		_, err := fmt.Fprintln(k.env.Stdout, "nothing falls due by then")
		return err
	}
	return writeAligned(k.env.Stdout, rows, "")
}

func dueWords(d lint.Due, on time.Time) string {
	if d.Why != "" {
		return "not known: " + visible(d.Why)
	}
	words := d.Day.Format(time.DateOnly)
	if d.Day.Before(on) {
		words += ", overdue"
	}
	return words
}

// gearUsers are plans and the items on file that they use.
type gearUsers struct {
	env     Environment
	judging *judging
	linters *linters
	plans   []*lint.Result
	wrong   []string // plans that could not be read
}

// read reads plans; those that are not valid are named at the end.
func (u *gearUsers) read(args []string) error {
	if len(args) == 0 {
		return nil
	}
	inputs, err := (&check{env: u.env, stdinName: "stdin"}).inputs(args)
	if err != nil {
		return err
	}
	if len(inputs) == 0 {
		return exit{Nothing, errors.New("there is no plan to read")}
	}
	each := newLinters(u.judging, false)
	u.linters = each
	for _, in := range inputs {
		linter, err := each.forFolder(filepath.Dir(in.path))
		if err != nil {
			return asUsage(err)
		}
		text, err := in.read()
		if err != nil {
			return exit{Unchecked, err}
		}
		r, err := linter.Compute(in.path, text)
		var problems register.Problems
		switch {
		case errors.As(err, &problems):
			return registerFailed(u.env, problems)
		case err != nil:
			return exit{Unchecked, err}
		case r.State == lint.NotValid:
			u.wrong = append(u.wrong, in.path)
		default:
			u.plans = append(u.plans, r)
		}
	}
	return nil
}

// failed names plans that could not be read: what they use is not known.
func (u *gearUsers) failed() error {
	if len(u.wrong) == 0 {
		return nil
	}
	return exit{Findings, fmt.Errorf("what these plans use is not known, since they are not valid: %s", strings.Join(u.wrong, ", "))}
}

func (u *gearUsers) firstDay() string {
	first := ""
	for _, r := range u.plans {
		if d := r.Planned(); d != "" && (first == "" || d < first) {
			first = d
		}
	}
	return first
}

// of lists the lifts that use an item.
func (u *gearUsers) of(number string) []string {
	var list []string
	for _, r := range u.plans {
		for _, use := range r.Uses() {
			if use.Number == number {
				list = append(list, fmt.Sprintf("%s on %s, as %s", r.ID, cmp.Or(r.Planned(), "a day that is not given"), use.ID))
			}
		}
	}
	return list
}
