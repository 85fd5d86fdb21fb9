package cli

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime/debug"

	"github.com/spf13/cobra"

	"liftlint/internal/config"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/triage"
)

// bulk is the number of plans from which remedies are no longer computed.
const bulk = 20

type check struct {
	env       Environment
	judging   judging
	output    output
	failOn    *choice
	change    changeFlags
	stdinName string
	// noneIsFine is for hooks: that there is no plan is a line to them, and no report.
	noneIsFine bool
}

func newCheck(e Environment) *cobra.Command {
	k := &check{env: e, output: newOutput(e), failOn: oneOf("error", "warning", "note")}
	c := &cobra.Command{
		Use:   "check [PATH...]",
		Short: "Check lift plans: files, folders, or - for standard input",
		Long: `Check reads lift plans and reports what rules find in them. A folder is searched
for files named *.lift.yaml (or .lift.yml), without its folders whose name begins
with a dot and without following links in it; without a PATH the current folder is.

With --since and --staged only plans are checked that a change concerns: those that
differ, and those of which a rule, a configuration or a register does. Their gear and the
numbers of their lifts are held against those of the other plans too. Where that is
none, nothing is checked, the report says so, and the exit code is 0. Of a branch that
has moved on, --since takes the commit where this history left it; a commit or a tag it
takes as it is. --at checks what a revision holds instead of the files that are there.

What would put a finding right is computed for runs of fewer than 20 plans.`,
		Example: `  liftlint check examples/pump-skid.lift.yaml
  liftlint check --stage prelift --on 2026-12-04 plans/
  liftlint check --since origin/main
  liftlint check --at HEAD --since v1 plans
  liftlint check --format json - < plan.lift.yaml`,
		RunE: func(c *cobra.Command, args []string) error { return k.run(c.Context(), args) },
	}
	k.judging.flags(c)
	k.output.flags(c)
	k.change.flags(c)
	complete(c, "since", completeRevisions(e, cobra.ShellCompDirectiveNoFileComp))
	complete(c, "at", completeRevisions(e, cobra.ShellCompDirectiveNoFileComp))
	c.Flags().Var(k.failOn, "fail-on", "the least severity that makes the exit code 1: error, warning or note")
	c.Flags().StringVar(&k.judging.baseline, "baseline", "", "what is known of the plans already: only findings that are new or worse count; goes before the one that a configuration names")
	c.Flags().StringVar(&k.stdinName, "stdin-filename", "stdin", "what to call standard input in the report")
	return c
}

func (k *check) run(ctx context.Context, args []string) error {
	if ctx == nil {
		ctx = context.Background()
	}
	if len(args) == 0 {
		args = []string{"."}
	}
	if err := k.output.check(); err != nil {
		return err
	}
	if err := k.change.check(args); err != nil {
		return err
	}
	if k.change.asked() {
		return k.runChanged(ctx, args)
	}
	inputs, err := k.inputs(args)
	if err != nil {
		return err
	}
	run, err := k.judge(ctx, inputs, nil)
	if err != nil {
		return err
	}
	return k.finish(run)
}

// judged is a run with the rules that it was judged by.
type judged struct {
	report.Run
	rules func() ([]*policy.Rule, error)
}

// judge judges plans, each by the configuration of its folder. Their gear is held
// against that of the unchanged too, which are not judged.
func (k *check) judge(ctx context.Context, inputs, unchanged []input) (judged, error) {
	failOn, err := finding.ParseSeverity(k.failOn.value)
	if err != nil {
		return judged{}, wrongUsage(err)
	}
	if len(inputs) < bulk && k.env.Getenv("GOGC") == "" {
		// A short run ends before memory matters: collecting rubbish less often
		// makes it a quarter faster.
		debug.SetGCPercent(400)
	}
	told := map[string]bool{}
	all := newLinters(&k.judging, len(inputs) < bulk)
	all.settle = func(c config.Config, o *lint.Options) error {
		if err := k.known(c, o); err != nil || o.Baseline == nil || told[o.Baseline.File] {
			return err
		}
		told[o.Baseline.File] = true
		if why := o.Baseline.NotHeld(o.Stage); why != "" {
			fmt.Fprintf(k.env.Stderr, "liftlint: %s\n", visible(why))
			return nil
		}
		return k.tellGone(o.Baseline)
	}
	each, err := all.forInputs(inputs)
	if err != nil {
		return judged{}, err
	}
	progress := k.env.progress(len(inputs))
	stop := progress.start()
	results, failures := judgeAll(ctx, each, progress.counting(inputs))
	stop()
	others, notCompared := all.identify(ctx, each, unchanged)
	all.tellUnread(k.env)
	lint.SameDay(results, others)
	lint.ToldOnce(results)
	run := runOf(inputs, results, failures)
	run.FailOn, run.NotCompared = failOn, notCompared
	return judged{run, func() ([]*policy.Rule, error) { return rulesJudging(each, results) }}, nil
}

// finish reports a run, and ends with what it comes to.
func (k *check) finish(run judged) error {
	if k.noneIsFine && run.Exit() == report.Nothing {
		fmt.Fprintln(k.env.Stderr, "liftlint: there is no plan here, and nothing was checked")
		return exit{code: Nothing}
	}
	reported, err := k.output.write(run.Run, k.judging.stage, run.rules)
	if err != nil {
		return exit{Unchecked, err}
	}
	if code := int(reported.Exit()); code != Clean {
		return exit{code: code}
	}
	return nil
}

func (k *check) inputs(args []string) ([]input, error) {
	inputs, skipped, err := findPlans(args)
	if err != nil {
		return nil, err
	}
	for _, path := range skipped {
		fmt.Fprintf(k.env.Stderr, "liftlint: not searched: %s is a link to a folder; name it to have it searched\n", visible(path))
	}
	for i := range inputs {
		if inputs[i].path != "-" {
			continue
		}
		text, err := readBounded(k.env.Stdin)
		inputs[i] = input{path: k.stdinName, read: func() ([]byte, error) { return text, err }}
	}
	return inputs, nil
}

// known adds the baseline that the command or the configuration names.
func (k *check) known(c config.Config, o *lint.Options) error {
	path := cmp.Or(k.judging.baseline, c.Baseline)
	if path == "" {
		return nil
	}
	paths, err := k.planPaths()
	if err != nil {
		return err
	}
	o.Named = paths.Relative
	o.Baseline, err = readBaseline(path)
	switch {
	case err != nil && k.judging.baseline != "":
		return wrongUsage(err)
	case err != nil:
		return configFault{fmt.Errorf("%w; a configuration names it", err)}
	}
	return nil
}

// tellGone names the plans that a baseline has and that are not there any more: no
// plan's report would tell of them.
func (k *check) tellGone(b *triage.Baseline) error {
	paths, err := k.planPaths()
	if err != nil {
		return err
	}
	for _, p := range b.Plans {
		if _, err := os.Lstat(filepath.Join(paths.Root, filepath.FromSlash(p.File))); errors.Is(err, fs.ErrNotExist) {
			fmt.Fprintf(k.env.Stderr, "liftlint: %s has %s of %s, which is not there any more: write the baseline anew, with --renamed OLD=NEW where the plan has another name now\n", visible(b.File), report.Plural(len(p.Findings), "finding"), visible(p.File))
		}
	}
	return nil
}

// planPaths are what a baseline names plans by: in a snapshot, by where they stand
// in the repository.
func (k *check) planPaths() (report.Paths, error) {
	s := k.judging.snapshot
	if s == nil {
		return k.output.paths()
	}
	paths := report.Paths{Root: s.dir, Folder: filepath.Join(s.dir, s.here)}
	if k.output.root == "" {
		return paths, nil
	}
	root, err := s.path(k.output.root)
	if !filepath.IsAbs(root) {
		root = filepath.Join(paths.Folder, root)
	}
	paths.Root = root
	return paths, err
}
