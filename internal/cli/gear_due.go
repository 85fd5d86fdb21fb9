package cli

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/report"
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
With plans, each item comes with the lifts that use it and their days, and is held
against the last of those days where that is later.

The day is that of --on or, left out, the first day of the plans. Registers are
those of --register and of liftlint.yaml, otherwise those of this folder. Items that
are quarantined, out of service or scrapped are counted and not listed.

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
	last := users.lastDays()
	list := soon(all, days, func(number string) time.Time { return later(on, last[number]) })
	if err := k.show(list, on, users); err != nil {
		return exit{Unchecked, err}
	}
	k.total(dueCount{len(r.Items), len(list), len(all) - len(list), lint.NotInService(r)}, on, days, users)
	if err := users.failed(); err != nil {
		return err
	}
	if missing := users.notOn(r); len(missing) > 0 {
		return exit{Unchecked, fmt.Errorf("these plans use gear that is not on the registers looked at, and whose due day is not known: %s; name their registers with --register", strings.Join(missing, ", "))}
	}
	return k.outcome(list)
}

func later(a, b time.Time) time.Time {
	if b.After(a) {
		return b
	}
	return a
}

// outcome is the exit code of what is listed.
func (k *gearDue) outcome(list []listed) error {
	fails := slices.ContainsFunc(list, func(d listed) bool {
		switch k.failOn.value {
		case failOnDue:
			return true
		case failOnNothing:
			return false
		}
		return d.Why != "" || d.Day.Before(d.by)
	})
	if fails {
		return exit{code: Findings}
	}
	return nil
}

// listed is an item with the day that it is held against.
type listed struct {
	lint.Due
	by time.Time
}

// soon keeps what is due by so many days after the day that each item is held against, or
// not known to be later, the unknown first, then by day.
func soon(all []lint.Due, days int, by func(number string) time.Time) []listed {
	var list []listed
	for _, d := range all {
		if l := (listed{d, by(d.Item.Number)}); d.Why != "" || !d.Day.After(l.by.AddDate(0, 0, days)) {
			list = append(list, l)
		}
	}
	slices.SortStableFunc(list, func(a, b listed) int {
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

func (k *gearDue) show(list []listed, on time.Time, users *gearUsers) error {
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
		return nil
	}
	return writeAligned(k.env.Stdout, rows, "")
}

// dueCount is what became of the items.
type dueCount struct{ items, listed, later, aside int }

// total says which days items were held against, and what is not listed.
func (k *gearDue) total(c dueCount, on time.Time, days int, users *gearUsers) {
	out := k.env.Stdout
	by := on.AddDate(0, 0, days).Format(time.DateOnly)
	if len(users.plans) > 0 {
		by += fmt.Sprintf(" or, where that is later, by %s after the last lift that uses it", report.Plural(days, "day"))
	}
	if c.listed == 0 && c.later > 0 {
		fmt.Fprintf(out, "nothing falls due by %s\n", by)
	} else if c.listed > 0 {
		fmt.Fprintf(out, "liftlint: listed is what falls due by %s.\n", by)
	}
	fmt.Fprintf(out, "liftlint: %s: %d listed, %d due later, %d not in service and left out.\n", report.Plural(c.items, "item"), c.listed, c.later, c.aside)
	if n := users.withoutDay(); n > 0 {
		fmt.Fprintf(out, "liftlint: no day is given in %s: what is used there is held against none.\n", report.Plural(n, "plan"))
	}
}

func dueWords(d listed, on time.Time) string {
	switch {
	case d.Why != "":
		return "not known: " + visible(d.Why)
	case d.Day.Before(on):
		return d.Day.Format(time.DateOnly) + ", overdue"
	case d.Day.Before(d.by):
		return d.Day.Format(time.DateOnly) + ", overdue on " + d.by.Format(time.DateOnly)
	}
	return d.Day.Format(time.DateOnly)
}
