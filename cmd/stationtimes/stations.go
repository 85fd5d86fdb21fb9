//go:build unix

package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"runtime"
	"sync"
	"time"

	"liftlint/internal/capacity"
	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/plan"
	"liftlint/internal/plangen"
	"liftlint/internal/policy"
	"liftlint/internal/remedy"
	"liftlint/internal/report"
	"liftlint/internal/report/text"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
	"liftlint/policies"
)

const plans = 200

// tools are what the stations need, loaded once.
type tools struct {
	validator *validate.Validator
	profile   policy.Profile
	pack      *policy.Pack
	linter    *lint.Linter
}

// loads is how often the rules are loaded anew.
const loads = 15

// load makes the tools; loading the rules is measured.
func load(rules *times) (t tools, err error) {
	files, err := policies.Profiles()
	if err != nil {
		return t, err
	}
	rules.measure(func() {
		if t.profile, err = policy.LoadProfile(files, lint.DefaultProfile); err == nil {
			t.pack, err = policy.Load(context.Background(), policy.Options{
				Sources: []policy.Source{{Root: "policies", Files: policies.Rules()}}, Profile: t.profile, Remedies: remedy.Names()})
		}
	})
	if err != nil {
		return t, err
	}
	if t.validator, err = validate.New(); err != nil {
		return t, err
	}
	t.linter, err = lint.New(lint.Options{Stage: policy.Review, Remedies: true})
	return t, err
}

func stations() error {
	var t tools
	var err error
	rules := &times{name: "load rules and profile"}
	for range loads {
		if t, err = load(rules); err != nil {
			return err
		}
	}
	rules.row()
	list := []*times{{name: "read YAML"}, {name: "validate"}, {name: "decode and compute"}, {name: "judge"}, {name: "text report"}, {name: "all but the report, with remedies"}}
	for seed := range uint64(plans) {
		if err := t.one([]byte(plangen.Valid(seed)), list); err != nil {
			return fmt.Errorf("seed %d: %w", seed, err)
		}
	}
	for _, s := range list {
		s.row()
	}
	rate, err := t.rate()
	figure("plans a second, all cores", fmt.Sprintf("%.0f", rate), manyPlans)
	return err
}

// rate judges many plans on all cores and gives plans a second.
func (t tools) rate() (float64, error) {
	texts := make([][]byte, manyPlans)
	for i := range texts {
		texts[i] = []byte(plangen.Valid(uint64(i)))
	}
	var group sync.WaitGroup
	cores := runtime.GOMAXPROCS(0)
	failures := make([]error, cores)
	start := time.Now()
	for core := range cores {
		group.Go(func() {
			for i := core; i < len(texts) && failures[core] == nil; i += cores {
				_, failures[core] = t.linter.Check(context.Background(), "plan", texts[i])
			}
		})
	}
	group.Wait()
	return manyPlans / time.Since(start).Seconds(), errors.Join(failures...)
}

// one takes a plan through every station.
func (t tools) one(source []byte, list []*times) (err error) {
	var doc *yamldoc.Document
	list[0].measure(func() { doc, _ = yamldoc.Read("plan", source) })
	if doc == nil {
		return fmt.Errorf("a generated plan can't be read")
	}
	var faults []yamldoc.Fault
	list[1].measure(func() { faults = t.validator.Plan(doc) })
	if len(faults) > 0 {
		return fmt.Errorf("a generated plan is not valid: %s", faults[0].Message)
	}
	var f *facts.Facts
	list[2].measure(func() {
		var p *plan.Plan
		if p, faults, err = plan.Decode(doc); p == nil {
			return
		}
		f, _ = compute.Facts(p, compute.Conditions{Profile: "us", Stage: policy.Review,
			Decides: compute.Decides(t.profile.RigidSplit.Decides), Parts: capacity.EqualParts, IntervalMonths: t.profile.IntervalMonths})
	})
	if f == nil {
		return fmt.Errorf("a generated plan can't be decoded: %v %w", faults, err)
	}
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
