package cli

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/register"
	"liftlint/internal/report"
)

type gearCheck struct {
	env     Environment
	judging judging
	output  output
	failOn  *choice
}

func newGearCheck(e Environment) *cobra.Command {
	k := &gearCheck{env: e, output: newOutput(e, "line", "text"), failOn: oneOf("error", "warning", "note")}
	c := &cobra.Command{
		Use:   "check [REGISTER...]",
		Short: "Check the gear of registers by itself",
		Long: `Check judges what registers say of each item that may be used: inspections and what
they found, what is seen on it, tags, certificates, status. Every rule is asked,
company rules too, but for those that ask for what only a plan has, such as angles and
loads; what is not asked is counted, and --format json lists it. Left out, the
registers of liftlint.yaml are checked or, where it names none, those of this folder.
Items that are quarantined, out of service or scrapped are counted and not judged.

Its formats are those of liftlint check; left out it is line, one a finding, with the
cell of a table instead of a line and a column. The others hold all findings in memory.

There is no clock in here: what is overdue is judged for the day that --on names.
Without it the exit code is 3, since that was not judged, and 4 where no item may be
used.`,
		Example: `  liftlint gear check --on 2026-12-04 register
  liftlint gear check --on 2026-12-04 --format sarif register > gear.sarif`,
		RunE: func(c *cobra.Command, args []string) error { return k.run(c.Context(), args) },
	}
	k.judging.gearFlags(c)
	k.output.flags(c)
	c.Flags().Var(k.failOn, "fail-on", "the least severity that makes the exit code 1: error, warning or note")
	return c
}

func (k *gearCheck) run(ctx context.Context, paths []string) error {
	if ctx == nil {
		ctx = context.Background()
	}
	failOn, err := finding.ParseSeverity(k.failOn.value)
	if err != nil {
		return wrongUsage(err)
	}
	if err := k.output.check(); err != nil {
		return err
	}
	linter, registers, err := k.judging.gearLinter(paths)
	if err != nil {
		return err
	}
	if k.output.format.value != "line" || k.output.jobSummary {
		return k.report(ctx, linter, registers, failOn)
	}
	return k.lines(ctx, linter, registers, failOn)
}

// report judges all gear, then writes a report of it.
func (k *gearCheck) report(ctx context.Context, linter *lint.Linter, registers *lint.Registers, failOn finding.Severity) error {
	run := report.Run{FailOn: failOn}
	r, err := k.env.read(registers)
	var problems register.Problems
	switch {
	case errors.As(err, &problems) && !wrongColumns(problems):
		run.Results = lint.GearNotValid(problems)
	case err != nil:
		return registerFailed(k.env, err)
	default:
		if run.Results, err = linter.GearResults(ctx, r); err == nil {
			err = registers.AddNotRead(run.Results)
		}
		if err != nil {
			return exit{Unchecked, err}
		}
	}
	rules := func() ([]*policy.Rule, error) { return linter.GearRules(ctx) }
	reported, err := k.output.write(run, k.judging.stage, rules)
	if err != nil {
		return exit{Unchecked, err}
	}
	if code := int(reported.Exit()); code != Clean {
		return exit{code: code}
	}
	return nil
}

// wrongColumns reports whether a columns file is wrong, which is configuration and
// no finding.
func wrongColumns(problems register.Problems) bool {
	return slices.ContainsFunc(problems, func(p register.Problem) bool { return p.ID == register.BadColumns })
}

// lines writes what is found as it is found: a register may be large.
func (k *gearCheck) lines(ctx context.Context, linter *lint.Linter, registers *lint.Registers, failOn finding.Severity) error {
	r, err := k.env.read(registers)
	if err != nil {
		return registerFailed(k.env, err)
	}
	out := bufio.NewWriter(k.env.Stdout)
	show := func(list []finding.Finding) error {
		for _, f := range list {
			if _, err := fmt.Fprintf(out, "%s: %s: %s [%s]\n", visible(gearPlace(f)), f.Severity, visible(f.Message), f.Rule); err != nil {
				return err
			}
		}
		return nil
	}
	count, err := linter.CheckGear(ctx, r, show)
	if err == nil {
		notRead := registers.NotRead()
		for _, f := range notRead {
			count.Findings[f.Severity]++
		}
		err = show(notRead)
	}
	if err == nil {
		k.total(out, count)
		err = out.Flush()
	}
	if err != nil {
		return exit{Unchecked, err}
	}
	return k.outcome(count, failOn)
}

// outcome is the exit code: without a day the inspections were not judged, and
// where no item may be used nothing was.
func (k *gearCheck) outcome(count lint.GearCount, failOn finding.Severity) error {
	switch {
	case count.Judged == 0:
		return exit{Nothing, errors.New("no item here may be used, so that nothing was judged")}
	case k.judging.on == "":
		return exit{code: Unchecked}
	}
	for severity, n := range count.Findings {
		if n > 0 && severity.AtLeast(failOn) {
			return exit{code: Findings}
		}
	}
	return nil
}

// gearPlace is where a finding stands, with the cell in a table.
func gearPlace(f finding.Finding) string {
	at := f.Place.Range.From
	if p := f.Place.Pointer; p != "" && p[0] != '/' {
		return f.Place.File + "#" + p
	}
	return fmt.Sprintf("%s:%d:%d", f.Place.File, max(at.Line, 1), max(at.Column, 1))
}

func (k *gearCheck) total(out *bufio.Writer, c lint.GearCount) {
	fmt.Fprintf(out, "liftlint: %s: %d judged, %d not in service and not judged. %s, %s, %s.\n", report.Plural(c.Items, "item"), c.Judged, c.Aside,
		report.Plural(c.Findings[finding.Error], "error"), report.Plural(c.Findings[finding.Warning], "warning"), report.Plural(c.Findings[finding.Note], "note"))
	if open := report.LeftToPlan(c); open != "" {
		fmt.Fprintln(out, "liftlint: "+open)
	}
	fmt.Fprintln(out, "liftlint: this speaks of records: each item is looked at before each use.")
	if k.judging.on == "" {
		fmt.Fprintln(out, "liftlint: no day is given with --on: what is overdue, or due soon, was not judged.")
	}
}

// gearLinter judges gear by the configuration of this folder. Registers are those
// named, those of the configuration, or those of this folder.
func (j *judging) gearLinter(paths []string) (*lint.Linter, *lint.Registers, error) {
	c, err := j.configFor(".")
	if err != nil {
		return nil, nil, wrongUsage(err)
	}
	if len(paths) == 0 {
		paths = append(append(paths, c.Registers...), j.registers...)
	}
	if len(paths) == 0 {
		paths = []string{"."}
	}
	linter, err := j.linter(".", false)
	if err != nil {
		return nil, nil, err
	}
	for i := range paths {
		paths[i] = filepath.ToSlash(filepath.Clean(paths[i]))
	}
	registers := lint.NewRegisters(paths...)
	return linter.WithRegisters(registers), registers, nil
}
