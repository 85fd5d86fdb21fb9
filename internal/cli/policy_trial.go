package cli

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/rulekit"
)

// trialCommand is `policy test`.
type trialCommand struct {
	env       Environment
	judging   judging
	all       bool
	mutate    bool
	failUnder int
}

func newPolicyTest(e Environment) *cobra.Command {
	k := &trialCommand{env: e}
	c := &cobra.Command{
		Use:   "test [RULE or TOPIC...]",
		Short: "Run the tests of rules, their examples, and mutants of them",
		Long: `Test runs each rule's own tests and puts both its examples to all rules. Then it
changes the rule in small ways, one at a time: a comparison turned, a limit moved,
a condition taken out. A change that no test and no example notices is listed, for
so much of the rule is not held by anything. The exit code is 1 where a test or an
example fails, a change goes unnoticed, or less is covered than --fail-under.

Company rules are tested; with --all those that come with liftlint too, but for the
conditions of their ` + "`where`" + `, of which not all are held by a test yet. Settings of
rules in liftlint.yaml play no part.`,
		Example: "  liftlint policy test angle\n  liftlint policy test --all --mutate=false",
		RunE:    func(c *cobra.Command, args []string) error { return k.run(c.Context(), args) },
	}
	k.judging.flags(c)
	c.Flags().BoolVar(&k.all, "all", false, "the rules that come with liftlint too")
	c.Flags().BoolVar(&k.mutate, "mutate", true, "change rules and see whether that is noticed")
	c.Flags().IntVar(&k.failUnder, "fail-under", 100, "the least share of a rule's expressions that its tests have to reach, in percent")
	return c
}

// outcome counts what a run of tests came to.
type outcome struct {
	tests, examples, mutants int
	faults                   []string
}

func (o *outcome) fault(format string, args ...any) {
	o.faults = append(o.faults, fmt.Sprintf(format, args...))
}

func (k *trialCommand) run(ctx context.Context, names []string) error {
	if ctx == nil {
		ctx = context.Background()
	}
	linter, err := k.bareLinter()
	if err != nil {
		return err
	}
	ids, err := k.chosen(linter, names)
	if err != nil {
		return err
	}
	options, err := linter.RuleOptions(linter.Profile())
	if err != nil {
		return exit{Unchecked, err}
	}
	options.Only = ids
	var o outcome
	for _, step := range []func(context.Context, *lint.Linter, policy.Options, *outcome) error{k.ownTests, k.coverage, k.examples, k.mutants} {
		err := step(ctx, linter, options, &o)
		var ps policy.Problems
		if errors.As(err, &ps) {
			fmt.Fprintln(k.env.Stdout, visibleLines(ps.Error()))
			return exit{code: Findings}
		}
		if err != nil {
			return exit{Unchecked, err}
		}
	}
	return k.report(len(ids), o)
}

// bareLinter has the rules in force without what configurations set of them:
// tests are for rules as they are written.
func (k *trialCommand) bareLinter() (*lint.Linter, error) {
	c, err := k.judging.configFor(".")
	if err != nil {
		return nil, wrongUsage(err)
	}
	o, err := k.judging.options()
	if err != nil {
		return nil, err
	}
	c.Layers = nil
	o.Config = c
	l, err := lint.New(o)
	if err != nil {
		return nil, wrongUsage(err)
	}
	return l, nil
}

// chosen lists the ids of the rules to test: company rules, all with --all,
// of them those whose topic or id is named; a rule that comes with liftlint is
// tested where its id is.
func (k *trialCommand) chosen(l *lint.Linter, names []string) ([]string, error) {
	all, own, err := k.candidates(l)
	if err != nil {
		return nil, err
	}
	if len(names) == 0 {
		if len(own) == 0 {
			return nil, wrongUsage(errors.New("no folder of company rules is in force; --all tests the rules that come with liftlint"))
		}
		return own, nil
	}
	var ids []string
	for _, n := range names {
		found := slices.DeleteFunc(slices.Clone(own), func(id string) bool { return id != n && !strings.HasPrefix(id, n+"/") })
		if len(found) == 0 && slices.Contains(all, n) {
			found = []string{n}
		}
		if len(found) == 0 {
			return nil, wrongUsage(fmt.Errorf("there is no company rule and no topic of one %q; with --all those that come with liftlint are looked through too", n))
		}
		ids = append(ids, found...)
	}
	slices.Sort(ids)
	return slices.Compact(ids), nil
}

// candidates lists the ids of all rules, and of those that names pick from.
func (k *trialCommand) candidates(l *lint.Linter) (all, own []string, err error) {
	c, err := k.judging.configFor(".")
	if err != nil {
		return nil, nil, wrongUsage(err)
	}
	o, err := k.judging.options()
	if err != nil {
		return nil, nil, err
	}
	rules, err := l.Rules(l.Profile())
	var ps policy.Problems
	if errors.As(err, &ps) {
		fmt.Fprintln(k.env.Stdout, visibleLines(ps.Error()))
		return nil, nil, exit{code: Findings}
	}
	if err != nil {
		return nil, nil, exit{Unchecked, err}
	}
	sources := slices.Concat(c.Rules, o.Rules)
	for _, r := range rules {
		all = append(all, r.ID)
		if k.all || slices.ContainsFunc(sources, func(s policy.Source) bool { return s.HasRule(r.ID) }) {
			own = append(own, r.ID)
		}
	}
	return all, own, nil
}

func (k *trialCommand) ownTests(ctx context.Context, _ *lint.Linter, options policy.Options, o *outcome) error {
	results, err := policy.Test(ctx, options)
	if err != nil {
		return err
	}
	o.tests = len(results)
	for _, r := range results {
		if !r.Passed {
			o.fault("%s:%d: %s failed %s", r.File, r.Line, r.Name, r.Reason)
		}
	}
	return nil
}

func (k *trialCommand) coverage(ctx context.Context, _ *lint.Linter, options policy.Options, o *outcome) error {
	list, err := policy.Cover(ctx, options)
	if err != nil {
		return err
	}
	for _, c := range list {
		if c.Share()*100 < float64(k.failUnder) {
			o.fault("%s: its tests reach %.0f %% of it; lines that none reaches: %s", c.Rule, c.Share()*100, lineList(c.NotCovered))
		}
	}
	return nil
}

func lineList(lines []int) string {
	words := make([]string, len(lines))
	for i, l := range lines {
		words[i] = fmt.Sprint(l)
	}
	return strings.Join(words, ", ")
}

func (k *trialCommand) examples(ctx context.Context, l *lint.Linter, options policy.Options, o *outcome) error {
	for _, id := range options.Only {
		trials, err := rulekit.Examples(ctx, l, id)
		if err != nil {
			return err
		}
		for _, t := range trials {
			o.examples++
			for _, f := range t.Faults {
				o.fault("%s, the example that %s it: %s", id, t.Kind, f)
			}
		}
	}
	return nil
}

func (k *trialCommand) mutants(ctx context.Context, l *lint.Linter, options policy.Options, o *outcome) error {
	if !k.mutate {
		return nil
	}
	list, err := policy.Mutate(ctx, options, rulekit.Unnoticed(l, l.Profile()))
	if err != nil {
		return err
	}
	builtIn := options.Sources[0]
	for _, r := range list {
		o.mutants += r.Killed
		for _, m := range r.Survivors {
			if m.OfWhere() && builtIn.HasRule(r.Rule) {
				continue // those of the built-in rules are not held yet, and no user can mend them
			}
			o.mutants++
			o.fault("%s, and no test and no example notices", m)
		}
	}
	return nil
}

func (k *trialCommand) report(rules int, o outcome) error {
	for _, f := range o.faults {
		fmt.Fprintln(k.env.Stdout, visibleLines(f))
	}
	if len(o.faults) > 0 {
		fmt.Fprintln(k.env.Stdout)
	}
	fmt.Fprintf(k.env.Stdout, "%d rules: %d tests, %d examples, %d changes tried; %d faults.\n", rules, o.tests, o.examples, o.mutants, len(o.faults))
	if len(o.faults) > 0 {
		return exit{code: Findings}
	}
	return nil
}
