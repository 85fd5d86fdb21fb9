package policy

import (
	"context"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"liftlint/internal/facts"
)

// manyRecords is the number of records from which rules are asked one by one. A
// lift has some hundred, and is judged sooner by one query for all rules.
const manyRecords = 1000

// findings is what each rule that is on finds in the facts.
func (p *Pack) findings(ctx context.Context, d *facts.Document, records records) (map[string][]element, error) {
	input, err := d.ValueOf(p.reads)
	if err != nil {
		return nil, err
	}
	if p.apartFrom > 0 && records.count() >= p.apartFrom {
		return p.eachApart(ctx, input, records)
	}
	return p.evaluate(ctx, input)
}

// records are those of each collection, which is looked through once however many
// rules go over it.
type records struct {
	document *facts.Document
	known    map[string][]facts.View
	answers  map[*Rule][]answer
}

func recordsOf(d *facts.Document) records {
	return records{d, map[string][]facts.View{}, map[*Rule][]answer{}}
}

// answersTo says of each record of a rule's collection whether its conditions keep
// it.
func (r records) answersTo(rule *Rule, views []facts.View) []answer {
	answers, ok := r.answers[rule]
	if !ok {
		answers = make([]answer, len(views))
		for i, v := range views {
			answers[i] = askAll(rule.Where, v)
		}
		r.answers[rule] = answers
	}
	return answers
}

func (r records) of(collection string) ([]facts.View, bool) {
	views, ok := r.known[collection]
	if !ok {
		if views, ok = r.document.Records(collection); ok {
			r.known[collection] = views
		}
	}
	return views, ok
}

func (r records) count() int {
	n := 0
	for _, name := range facts.Collections() {
		views, _ := r.of(name)
		n += len(views)
	}
	return n
}

// eachApart asks one rule after another, and shows each the records alone that its
// conditions keep: what they drop can't be found, and going over it for every body
// of every rule is most of the work on a large register.
func (p *Pack) eachApart(ctx context.Context, input ast.Value, records records) (map[string][]element, error) {
	queries, err := p.queries()
	if err != nil {
		return nil, err
	}
	whole, ok := input.(ast.Object)
	if !ok {
		return nil, fmt.Errorf("facts: %v is no object", input)
	}
	found := map[string][]element{}
	for _, r := range p.rules {
		if r.Off != "" {
			continue
		}
		kept, err := keptBy(r, whole, records)
		if err != nil {
			return nil, err
		}
		if len(kept) == 0 {
			continue
		}
		list := ast.NewObject([2]*ast.Term{ast.StringTerm(r.Over), ast.ArrayTerm(kept...)})
		if found[r.ID], err = p.ask(ctx, r, queries[r.ID], list); err != nil {
			return nil, err
		}
	}
	return found, nil
}

// keptBy are the records, as rules see them, that a rule's conditions do not drop.
func keptBy(r *Rule, whole ast.Object, records records) ([]*ast.Term, error) {
	views, known := records.of(r.Over)
	term := whole.Get(ast.StringTerm(r.Over))
	if !known || term == nil {
		return nil, fmt.Errorf("rule %s: the facts have no %s", r.ID, r.Over)
	}
	list, ok := term.Value.(*ast.Array)
	if !ok || list.Len() != len(views) {
		return nil, fmt.Errorf("rule %s: %s of the facts is not as it was read", r.ID, r.Over)
	}
	var kept []*ast.Term
	for i, applies := range records.answersTo(r, views) {
		if applies != no {
			kept = append(kept, list.Elem(i))
		}
	}
	return kept, nil
}

// ask puts one rule to the records that it is to judge.
func (p *Pack) ask(ctx context.Context, r *Rule, q rego.PreparedEvalQuery, input ast.Value) ([]element, error) {
	results, err := p.eval(ctx, q, input)
	switch {
	case err != nil && ctx.Err() != nil: // the caller's own end, not the rule's doing
		return nil, ctx.Err()
	case err != nil:
		return nil, fmt.Errorf("rule %s (%s): %w", r.ID, r.File, p.plain(err))
	case len(results) != 1:
		return nil, fmt.Errorf("rule %s did not answer", r.ID)
	}
	return elements(r.ID, results[0].Bindings["f"])
}

// queryOf asks one rule.
func queryOf(r *Rule) string { return "f = " + r.ref() + ".finding" }

// apartQueries prepares a query for each rule that is on.
func (p *Pack) apartQueries() (map[string]rego.PreparedEvalQuery, error) {
	queries := map[string]rego.PreparedEvalQuery{}
	for _, r := range p.rules {
		if r.Off != "" {
			continue
		}
		q, err := prepare(context.Background(), p.compiler, queryOf(r))
		if err != nil {
			return nil, fmt.Errorf("rule %s (%s): %w", r.ID, r.File, err)
		}
		queries[r.ID] = q
	}
	return queries, nil
}
