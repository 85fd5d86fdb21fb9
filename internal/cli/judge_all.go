package cli

import (
	"context"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"

	"liftlint/internal/datafile"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// judgeAll judges the plans on all cores, each with its linter. There is a result
// or a failure for each plan, in their order.
func judgeAll(ctx context.Context, each []assigned, inputs []input) (results []*lint.Result, failures []error) {
	return forAll(each, inputs, func(l *lint.Linter, in input) (*lint.Result, error) { return judge(ctx, l, in) })
}

// forAll puts each plan to its linter, on all cores.
func forAll(each []assigned, inputs []input, do func(*lint.Linter, input) (*lint.Result, error)) (results []*lint.Result, failures []error) {
	results, failures = make([]*lint.Result, len(inputs)), make([]error, len(inputs))
	var group sync.WaitGroup
	slots := make(chan struct{}, runtime.GOMAXPROCS(0))
	for i, in := range inputs {
		if failures[i] = each[i].fault; failures[i] != nil {
			continue
		}
		slots <- struct{}{}
		group.Go(func() {
			defer func() { <-slots }()
			results[i], failures[i] = do(each[i].Linter, in)
		})
	}
	group.Wait()
	return results, failures
}

// runOf is the run of plans with their results or failures.
func runOf(inputs []input, results []*lint.Result, failures []error) report.Run {
	var run report.Run
	for i := range results {
		if results[i] != nil {
			run.Results = append(run.Results, results[i])
		}
		if failures[i] != nil {
			run.Lost = append(run.Lost, inputs[i].path)
		}
	}
	run.Failures = told(inputs, failures, error.Error, func(path string) string { return path })
	return run
}

// told words failures. What has failed for several plans is told once, with those that
// it keeps from being checked.
func told(inputs []input, failures []error, words func(error) string, name func(path string) string) []string {
	var texts []string
	plans := map[string][]string{}
	for i, err := range failures {
		if err == nil {
			continue
		}
		text := words(cause{err, inputs[i].path})
		if !slices.Contains(texts, text) {
			texts = append(texts, text)
		}
		plans[text] = append(plans[text], name(inputs[i].path))
	}
	for i, text := range texts {
		texts[i] += keptBack(plans[text])
	}
	return texts
}

// cause is what has failed, without the name of the plan that it has failed for.
type cause struct {
	error
	plan string
}

// Error is the text without the name.
func (c cause) Error() string { return strings.TrimPrefix(c.error.Error(), c.plan+": ") }

// Unwrap gives what has failed.
func (c cause) Unwrap() error { return c.error }

// mostKeptBack is how many plans are named that something keeps from being checked.
const mostKeptBack = 5

// keptBack names the plans that a failure keeps from being checked.
func keptBack(plans []string) string {
	more := ""
	if n := len(plans) - mostKeptBack; n > 0 {
		more = fmt.Sprintf(" and %d more", n)
		plans = plans[:mostKeptBack]
	}
	return "\n  not checked for it: " + strings.Join(plans, ", ") + more
}

func judge(ctx context.Context, l *lint.Linter, in input) (r *lint.Result, err error) {
	defer func() {
		if p := recover(); p != nil {
			r, err = nil, fmt.Errorf("%s: the check stopped: %v", in.path, p)
		}
	}()
	content, err := in.read()
	if err != nil {
		return lint.Unreadable(in.path, datafile.Cause(err)), nil
	}
	return l.Check(ctx, in.path, content)
}
