//go:build unix

package main

import (
	"context"
	"fmt"
	"io"
	"slices"
	"time"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/plan"
	"liftlint/internal/plangen"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/report/text"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
	"liftlint/policies"
)

const plans = 200

// times are the durations of one station over all plans.
type times struct {
	name string
	all  []time.Duration
}

func (t *times) measure(f func()) {
	start := time.Now()
	f()
	t.all = append(t.all, time.Since(start))
}

func (t *times) median() time.Duration {
	slices.Sort(t.all)
	return t.all[len(t.all)/2]
}

// tools are what the stations need, loaded once.
type tools struct {
	validator *validate.Validator
	profile   policy.Profile
	pack      *policy.Pack
	linter    *lint.Linter
}

func load() (tools, time.Duration, error) {
	var t tools
	start := time.Now()
	files, err := policies.Profiles()
	if err != nil {
		return t, 0, err
	}
	if t.profile, err = policy.LoadProfile(files, "us"); err != nil {
		return t, 0, err
	}
	t.pack, err = policy.Load(context.Background(), policy.Options{
		Sources: []policy.Source{{Root: "policies", Files: policies.Rules()}}, Profile: t.profile})
	took := time.Since(start)
	if err != nil {
		return t, 0, err
	}
	if t.validator, err = validate.New(); err != nil {
		return t, 0, err
	}
	t.linter, err = lint.New(lint.Options{Stage: policy.Review, Remedies: true})
	return t, took, err
}

func stations() error {
	t, loading, err := load()
	if err != nil {
		return err
	}
	row("load rules and profile, once", loading.Round(10*time.Microsecond).String())
	list := []*times{{name: "read"}, {name: "validate and decode"}, {name: "compute"}, {name: "judge"}, {name: "report"}, {name: "all, with remedies"}}
	for seed := range uint64(plans) {
		if err := t.one([]byte(plangen.Valid(seed)), list); err != nil {
			return err
		}
	}
	for _, s := range list {
		row(s.name, s.median().Round(time.Microsecond).String())
	}
	return nil
}

// one takes a plan through every station.
func (t tools) one(source []byte, list []*times) (err error) {
	var doc *yamldoc.Document
	list[0].measure(func() { doc, _ = yamldoc.Read("plan", source) })
	if doc == nil {
		return fmt.Errorf("a generated plan can't be read")
	}
	var p *plan.Plan
	list[1].measure(func() {
		if faults := t.validator.Plan(doc); len(faults) == 0 {
			p, _, err = plan.Decode(doc)
		}
	})
	if p == nil {
		return fmt.Errorf("a generated plan is not valid: %w", err)
	}
	var f *facts.Facts
	list[2].measure(func() {
		f, _ = compute.Facts(p, compute.Conditions{Profile: "us", Stage: policy.Review,
			LegsThatCount: t.profile.LegsThatCount.Legs, IntervalMonths: t.profile.IntervalMonths})
	})
	list[3].measure(func() { _, err = t.pack.Judge(context.Background(), &f.Document) })
	if err != nil {
		return err
	}
	var r *lint.Result
	list[5].measure(func() { r, err = t.linter.Check(context.Background(), "plan", source) })
	if err != nil {
		return err
	}
	list[4].measure(func() { err = text.Write(io.Discard, report.Run{Results: []*lint.Result{r}}, text.Options{}) })
	return err
}
