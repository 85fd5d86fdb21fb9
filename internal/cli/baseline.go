package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/config"
	"liftlint/internal/datafile"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/triage"
)

// baseline writes what is known of plans.
type baseline struct {
	env   Environment
	check *check // finds and judges the plans
	write string
	grow  bool
	moved []string                 // OLD=NEW
	stay  map[finding.Severity]int // findings that no baseline takes in
}

func newBaseline(e Environment) *cobra.Command {
	k := &baseline{env: e, check: &check{env: e, output: newOutput(e), stdinName: "stdin"}}
	c := &cobra.Command{
		Use:   "baseline [PATH...]",
		Short: "Write down what is found in plans, so that only what is new or worse counts",
		Long: `Baseline judges plans and writes what rules find in them, each finding with its
figure, for check --baseline. What is waived is left out, and so is what nobody
may accept: check goes on telling of that.

A baseline that is there already only shrinks: what no longer occurs is taken out,
and what got better is kept as it is now. What a rule can't judge any more stays in,
for as long as that can't be told. --grow takes in what is new or worse too.
Nothing is written unless every plan could be judged.

What is known of a plan that was renamed follows it with --renamed OLD=NEW, and is then
held to as before: nothing new comes in by it.`,
		Example: `  liftlint baseline plans --write known.json
  liftlint check --baseline known.json plans
  liftlint baseline --renamed plans/old.lift.yaml=plans/new.lift.yaml --write known.json`,
		RunE: func(c *cobra.Command, args []string) error { return k.run(c.Context(), args) },
	}
	k.check.judging.flags(c)
	c.Flags().StringVar(&k.write, "write", "", "the file to write; without it the baseline is printed")
	c.Flags().BoolVar(&k.grow, "grow", false, "take in findings that are new or worse")
	c.Flags().StringArrayVar(&k.moved, "renamed", nil, "OLD=NEW: a plan that was renamed, whose known findings follow it")
	c.Flags().StringVar(&k.check.output.root, "root", "", "the folder from which plans are named; otherwise that of the repository, the nearest with .git in it")
	return c
}

func (k *baseline) run(ctx context.Context, args []string) error {
	if ctx == nil {
		ctx = context.Background()
	}
	if len(args) == 0 {
		args = []string{"."}
	}
	was, there, err := k.earlier()
	if err != nil {
		return err
	}
	paths, err := k.check.output.paths()
	if err != nil {
		return exit{Unchecked, err}
	}
	if err := k.rename(was, paths); err != nil {
		return wrongUsage(err)
	}
	today, err := k.today(ctx, args)
	if err != nil {
		return err
	}
	m, err := was.Merge(today, k.grow || !there, func(file string) bool {
		_, err := os.Stat(filepath.Join(paths.Root, filepath.FromSlash(file)))
		return !errors.Is(err, fs.ErrNotExist)
	})
	if err != nil {
		return wrongUsage(err)
	}
	return k.put(m)
}

// rename has entries follow the plans that were renamed. One that is still there under
// its old name was not: what is known of it would set aside another's.
func (k *baseline) rename(was *triage.Baseline, paths report.Paths) error {
	for _, pair := range k.moved {
		from, to, ok := strings.Cut(pair, "=")
		switch {
		case !ok || from == "" || to == "":
			return fmt.Errorf("--renamed %s: write OLD=NEW, such as plans/old.lift.yaml=plans/new.lift.yaml", pair)
		case exists(from):
			return fmt.Errorf("--renamed %s: %s is still there", pair, from)
		case !exists(to):
			return fmt.Errorf("--renamed %s: there is no %s", pair, to)
		}
		if err := was.Rename(paths.Relative(from), paths.Relative(to)); err != nil {
			return fmt.Errorf("--renamed %s: %w", pair, err)
		}
	}
	return nil
}

// earlier is the baseline that is there already; an empty one where none is.
func (k *baseline) earlier() (was *triage.Baseline, there bool, err error) {
	stage := k.check.judging.stage
	if _, err := os.Stat(k.write); k.write == "" || errors.Is(err, fs.ErrNotExist) {
		return &triage.Baseline{Stage: stage, File: k.write}, false, nil
	}
	if was, err = readBaseline(k.write); err == nil {
		err = was.FitsStage(stage)
	}
	if err != nil {
		return nil, true, wrongUsage(err)
	}
	return was, true, nil
}

// today judges the plans. A plan that could not be judged keeps the baseline from
// being written: what is not known of it would look as if it were gone.
func (k *baseline) today(ctx context.Context, args []string) ([]triage.KnownPlan, error) {
	inputs, err := k.check.inputs(args)
	if err != nil {
		return nil, err
	}
	all := newLinters(&k.check.judging, false)
	all.settle = k.record
	each, err := all.forInputs(inputs)
	if err != nil {
		return nil, err
	}
	results, failures := judgeAll(ctx, each, inputs)
	if len(results) == 0 {
		return nil, exit{Nothing, errors.New("there is no plan to judge, and nothing is written")}
	}
	var list []triage.KnownPlan
	for i, r := range results {
		switch {
		case failures[i] != nil:
			return nil, exit{Unchecked, fmt.Errorf("%w; nothing is written", failures[i])}
		case !report.Understood(r) || r.State != lint.Judged || r.Recorded == nil:
			return nil, exit{Unchecked, fmt.Errorf("%s could not be judged, and nothing is written: liftlint check tells why", inputs[i].path)}
		}
		list = append(list, *r.Recorded)
		k.countStaying(r)
	}
	return list, nil
}

// countStaying counts what goes on counting: findings that nobody may accept, and those
// of liftlint itself.
func (k *baseline) countStaying(r *lint.Result) {
	if k.stay == nil {
		k.stay = map[finding.Severity]int{}
	}
	for _, f := range finding.Counting(r.Findings) {
		k.stay[f.Severity]++
	}
	for _, f := range r.Recorded.Findings {
		k.stay[finding.Severity(f.Severity)]--
	}
}

// staying words them; empty where there is none.
func (k *baseline) staying() string {
	var parts []string
	for _, s := range finding.Severities() {
		if n := k.stay[s]; n > 0 {
			parts = append(parts, report.Plural(n, string(s)))
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "; no baseline takes in " + strings.Join(parts, ", ") + ", which go on counting: what nobody may accept, and what liftlint itself finds, such as inputs that are missing"
}

func (k *baseline) record(_ config.Config, o *lint.Options) error {
	paths, err := k.check.output.paths()
	o.Record, o.Named = true, paths.Relative
	return err
}

// put writes the baseline and tells what became of it.
func (k *baseline) put(m triage.Merged) error {
	text, err := m.Baseline.Text()
	if err != nil {
		return exit{Unchecked, err}
	}
	if k.write == "" {
		if _, err := k.env.Stdout.Write(text); err != nil {
			return exit{Unchecked, err}
		}
		return nil
	}
	if err := replaceFile(k.write, text, 0o644); err != nil {
		return exit{Unchecked, err}
	}
	n := 0
	for _, p := range m.Baseline.Plans {
		n += len(p.Findings)
	}
	said := fmt.Sprintf("written  %s: %s known, %d taken out", visible(k.write), report.Plural(n, "finding"), m.Dropped)
	if m.Kept > 0 {
		said += fmt.Sprintf("; of %s it can't be told whether they are still there, and they stay in", report.Plural(m.Kept, "finding"))
	}
	if m.LeftOut > 0 {
		said += fmt.Sprintf("; %s new or worse, not taken in (--grow does)", report.Plural(m.LeftOut, "finding"))
	}
	if _, err := fmt.Fprintln(k.env.Stdout, said+k.staying()); err != nil {
		return exit{Unchecked, err}
	}
	return nil
}

// mostBaseline is how many bytes of a baseline are read: some 40 000 findings.
const mostBaseline = 16 << 20

// readBaseline reads a baseline by its path, and names it from the working folder.
func readBaseline(path string) (*triage.Baseline, error) {
	name := path
	if here, err := os.Getwd(); err == nil && filepath.IsAbs(path) {
		if rel, err := filepath.Rel(here, path); err == nil {
			name = rel
		}
	}
	name = filepath.ToSlash(name)
	f, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("baseline %s: %w", name, datafile.Cause(err))
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, mostBaseline+1))
	switch {
	case err != nil:
		return nil, fmt.Errorf("baseline %s: %w", name, datafile.Cause(err))
	case len(text) > mostBaseline:
		return nil, fmt.Errorf("baseline %s has more than %d bytes", name, mostBaseline)
	}
	return triage.ReadBaseline(name, text)
}
