package policy

import (
	"context"
	"errors"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"

	"liftlint/internal/facts"
)

// Judge puts the rules to one lift's facts: one verdict a rule, by id. An
// error says that the lift could not be checked, and names the rule where it
// is one rule's doing; then nothing of the lift counts as judged.
func (p *Pack) Judge(ctx context.Context, d *facts.Document) (verdicts []Verdict, err error) {
	defer func() {
		if r := recover(); r != nil {
			verdicts, err = nil, fmt.Errorf("judging stopped: %v", r)
		}
	}()
	lift, stage, err := liftOf(d)
	if err != nil {
		return nil, err
	}
	records := recordsOf(d)
	found, err := p.findings(ctx, d, records)
	if err != nil {
		return nil, err
	}
	for _, r := range p.rules {
		v, err := r.verdict(records, lift, stage, found[r.ID])
		if err != nil {
			return nil, err
		}
		verdicts = append(verdicts, v)
	}
	return verdicts, nil
}

// liftOf is the lift's own record, by which rules are gated.
func liftOf(d *facts.Document) (facts.View, string, error) {
	lifts, _ := d.Records("lifts")
	if len(lifts) != 1 {
		return facts.View{}, "", fmt.Errorf("facts: one lift is judged at a time, found %d", len(lifts))
	}
	switch stage := d.Lifts[0].Stage; stage {
	case Draft, Review, Prelift:
		return lifts[0], stage, nil
	default:
		return facts.View{}, "", fmt.Errorf("facts: %q is no stage of a lift", stage)
	}
}

func (r *Rule) verdict(all records, lift facts.View, stage string, found []element) (Verdict, error) {
	v := Verdict{Rule: r, DoesNotApply: r.gate(lift, stage)}
	if v.DoesNotApply != "" {
		return v, nil
	}
	records, ok := all.of(r.Over)
	if !ok {
		return v, fmt.Errorf("rule %s: the facts have no %s", r.ID, r.Over)
	}
	var err error
	if v.Outcomes, err = r.outcomes(records, all.answersTo(r, records), found); err != nil {
		return v, err
	}
	if len(v.Outcomes) == 0 {
		v.DoesNotApply = r.NothingToJudge()
	}
	return v, nil
}

// evaluate asks all rules at once, and looks for the culprit where that fails.
func (p *Pack) evaluate(ctx context.Context, input ast.Value) (map[string][]element, error) {
	results, err := p.eval(ctx, p.query, input)
	if err != nil {
		if ctx.Err() != nil { // the caller's own end, not a rule's doing
			return nil, ctx.Err()
		}
		return nil, p.culprit(ctx, input, err)
	}
	found := make(map[string][]element, len(results))
	for _, b := range results {
		id := fmt.Sprintf("%v/%v", b.Bindings["t"], b.Bindings["r"])
		if found[id], err = elements(id, b.Bindings["f"]); err != nil {
			return nil, err
		}
	}
	if len(found) != p.active || len(results) != p.active {
		return nil, p.silent(found)
	}
	return found, nil
}

// eval runs a query within the deadline. A panic of the evaluation becomes an
// error.
func (p *Pack) eval(ctx context.Context, q rego.PreparedEvalQuery, input ast.Value) (rs rego.ResultSet, err error) {
	defer func() {
		if r := recover(); r != nil {
			rs, err = nil, fmt.Errorf("the evaluation stopped: %v", r)
		}
	}()
	ctx, cancel := context.WithTimeout(ctx, p.deadline)
	defer cancel()
	return q.Eval(ctx, rego.EvalParsedInput(input))
}

// culprit runs rule by rule to name the one that failed or took too long,
// since the error of the whole names none.
func (p *Pack) culprit(ctx context.Context, input ast.Value, whole error) error {
	for _, r := range p.rules {
		if r.Off != "" {
			continue
		}
		q, err := prepare(ctx, p.compiler, queryOf(r))
		if err == nil {
			_, err = p.eval(ctx, q, input)
		}
		switch {
		case ctx.Err() != nil:
			return ctx.Err()
		case err != nil:
			return fmt.Errorf("rule %s (%s): %w", r.ID, r.File, p.plain(err))
		}
	}
	return fmt.Errorf("the rules together: %w", p.plain(whole))
}

// ErrDeadline is what a rule that takes too long fails with.
var ErrDeadline = errors.New("took too long")

func (p *Pack) plain(err error) error {
	if topdown.IsCancel(err) || errors.Is(err, context.DeadlineExceeded) {
		return fmt.Errorf("%w: stopped after %v", ErrDeadline, p.deadline)
	}
	return err
}

func (p *Pack) silent(found map[string][]element) error {
	for _, r := range p.rules {
		if _, ok := found[r.ID]; !ok && r.Off == "" {
			return fmt.Errorf("rule %s did not answer", r.ID)
		}
	}
	return fmt.Errorf("%d rules answered, of %d", len(found), p.active)
}
