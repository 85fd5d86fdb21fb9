package cli

import (
	"context"
	"errors"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/compare"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

type compareCommand struct {
	env     Environment
	judging judging
	format  *choice
	failOn  *choice
}

func newCompare(e Environment) *cobra.Command {
	k := &compareCommand{env: e, format: oneOf("text", "json", "markdown"), failOn: oneOf("error", "warning", "note")}
	c := &cobra.Command{
		Use:   "compare OLD NEW [PATH...]",
		Short: "Show what changed between two revisions of plans: figures, gear and findings",
		Long: `Compare judges plans in two revisions, each by the rules and the configuration that
belong to it, and shows what changed: masses, forces, angles and utilizations; gear;
what else is written; and which findings are new, worse, better or gone. The order in
which things are written, and the units, are no change.

OLD and NEW are files, folders, or of a git repository REVISION:PATH or REVISION, with
the path from the top of the repository. With a revision alone on one side, the path
of the other side is taken; with two, the PATHs, or else all plans.

Exit codes: 0 compared; 1 something of severity --fail-on or worse is new or worse, a
rule that could find such a thing can't judge any more what it judged before or is
switched off, a rule, a lock or a limit is taken out or made milder, or a new plan is
not valid; 2 wrong usage; 3 something could not be compared; 4 there was no plan.`,
		Example: `  liftlint compare examples/filter-vessel.lift.yaml examples/filter-vessel-reviewed.lift.yaml
  liftlint compare origin/main plans
  liftlint compare --format markdown origin/main HEAD plans
  liftlint compare v1:plans/skid.lift.yaml plans/skid.lift.yaml`,
		Args: cobra.MinimumNArgs(2),
		RunE: func(c *cobra.Command, args []string) error { return k.run(c.Context(), args[0], args[1], args[2:]) },
	}
	c.ValidArgsFunction = completeRevisions(e, cobra.ShellCompDirectiveDefault)
	k.judging.flags(c)
	c.Flags().Var(k.format, "format", "text, json, or markdown, for a review comment")
	c.Flags().Var(k.failOn, "fail-on", "the least severity of what is new or worse that makes the exit code 1: error, warning or note")
	return c
}

func (k *compareCommand) run(ctx context.Context, old, new string, paths []string) error {
	failOn, err := finding.ParseSeverity(k.failOn.value)
	if err != nil {
		return wrongUsage(err)
	}
	a, b, err := k.sides(ctx, old, new, paths)
	if err != nil {
		return err
	}
	is, more, err := k.judge(ctx, b)
	if err != nil {
		return b.failed(err)
	}
	was, failures, err := k.judge(ctx, a)
	if err != nil { // the new side went well, so that it is not for how the command is called
		return exit{Unchecked, a.failed(err)}
	}
	alone := a.alone && b.alone
	for _, name := range append(a.lost, b.lost...) { // what there is of them would look added or gone
		delete(was, name)
		delete(is, name)
		if alone {
			clear(was)
			clear(is)
		}
	}
	c := compare.Of(old, new, compare.Pairs(was, is, alone), append(failures, more...), failOn)
	c.NotCompared = len(distinct(append(a.lost, b.lost...)))
	if err := k.write(c); err != nil {
		return exit{Unchecked, err}
	}
	if c.Exit != Clean {
		return exit{code: c.Exit}
	}
	return nil
}

func distinct(list []string) []string {
	list = slices.Clone(list)
	slices.Sort(list)
	return slices.Compact(list)
}

func (k *compareCommand) write(c compare.Comparison) error {
	switch k.format.value {
	case "text":
		return compare.WriteText(k.env.Stdout, c)
	case "json":
		return compare.WriteJSON(k.env.Stdout, c)
	case "markdown":
		return compare.WriteMarkdown(k.env.Stdout, c)
	}
	return fmt.Errorf("there is no format %s", k.format.value)
}

// judge judges all plans of a side.
func (k *compareCommand) judge(ctx context.Context, s *side) (sides map[string]*compare.Side, failures []string, err error) {
	if s.rev == "" {
		return k.judgeHere(ctx, s, k.judging, s.paths)
	}
	taken, err := takeSnapshot(ctx, s.repo, s.tree)
	if err != nil {
		return nil, nil, exit{Unchecked, err}
	}
	defer func() { err = errors.Join(err, taken.close()) }()
	j, err := taken.judging(k.judging)
	if err != nil {
		return nil, nil, exit{Unchecked, err}
	}
	paths, err := taken.paths(s.paths)
	if err != nil {
		return nil, nil, exit{Unchecked, err}
	}
	err = taken.within(func() error {
		sides, failures, err = k.judgeHere(ctx, s, j, paths)
		return err
	})
	for _, x := range sides {
		taken.rename(x.Result)
	}
	return sides, failures, err
}

// judgeHere judges the plans of some paths as the file system has them.
func (k *compareCommand) judgeHere(ctx context.Context, s *side, j judging, paths []string) (map[string]*compare.Side, []string, error) {
	sides := map[string]*compare.Side{}
	if len(paths) == 0 {
		return sides, nil, nil
	}
	c := &check{env: k.env, judging: j, output: newOutput(k.env)}
	inputs, err := c.inputs(paths)
	if err != nil {
		return nil, nil, err
	}
	texts := make([][]byte, len(inputs))
	for i, in := range inputs {
		inputs[i].read = func() (text []byte, err error) {
			texts[i], err = in.read()
			return texts[i], err
		}
	}
	all := newLinters(&j, false)
	all.settle = c.known
	each, err := all.forInputs(inputs)
	if err != nil {
		return nil, nil, err
	}
	results, failed := judgeAll(ctx, each, inputs)
	lint.SameDay(results, nil)
	for i, r := range results {
		name := s.nameOf(inputs[i].path, paths)
		if failed[i] != nil {
			s.lost = append(s.lost, name)
			continue
		}
		sides[name] = &compare.Side{Name: s.label(inputs[i].path), Result: r, Text: texts[i]}
	}
	return sides, told(inputs, failed, s.words, s.label), nil
}
