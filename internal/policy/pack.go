// Package policy loads, checks, types, sandboxes and runs the rules that judge
// a lift's facts, and tests them.
//
// A rule is one Rego package that holds one set, finding, and METADATA above
// it. Who is judged, what could not be judged for want of a fact, and what is
// met are derived here, so that no author can forget them.
package policy

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"sync"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"liftlint/internal/facts"
)

// Options say what to load.
type Options struct {
	Sources  []Source      // folders of rules
	Profile  Profile       // parameters and severities; the zero value leaves METADATA's
	Layers   []Layer       // configurations, the outermost first
	Only     []string      // the ids of the rules to load; nil loads all
	Deadline time.Duration // for one Judge; DefaultDeadline when zero
	Remedies []string      // the remedies there are; nil leaves their names unchecked
	BuiltIn  []string      // checks that are no rules, for messages

	mutant  bool   // what nothing reads is let pass: a mutant may have lost the condition that did
	without string // the field whose condition in where a mutant has lost
}

// layers are the profile and the configurations, in their order.
func (o Options) layers() []Layer { return append([]Layer{o.Profile.layer()}, o.Layers...) }

// wants reports whether a rule is to be loaded.
func (o Options) wants(id string) bool { return o.Only == nil || slices.Contains(o.Only, id) }

// DefaultDeadline is far more than any plan takes.
const DefaultDeadline = 5 * time.Second

// Pack is a set of rules, ready to judge. It is safe for concurrent use.
type Pack struct {
	rules     []*Rule
	compiler  *ast.Compiler
	query     rego.PreparedEvalQuery
	active    int // rules that the query answers for
	reads     facts.Choice
	apartFrom int                                               // the number of records from which rules are asked one by one; 0: never
	queries   func() (map[string]rego.PreparedEvalQuery, error) // of single rules, prepared when first asked for
	deadline  time.Duration
}

// Rules lists the rules by id, those that the profile switches off included.
func (p *Pack) Rules() []*Rule { return slices.Clone(p.rules) }

// Overrides lists what configurations set otherwise than METADATA and profile,
// by rule.
func (p *Pack) Overrides() []Override {
	var list []Override
	for _, r := range p.rules {
		list = append(list, r.Overrides...)
	}
	return list
}

// Rule finds a rule by its id.
func (p *Pack) Rule(id string) (*Rule, bool) {
	i, ok := slices.BinarySearchFunc(p.rules, id, func(r *Rule, id string) int { return strings.Compare(r.ID, id) })
	if !ok {
		return nil, false
	}
	return p.rules[i], true
}

// Load reads and checks the rules. Where any is wrong the error is Problems,
// all of them at once, and there is no Pack.
func Load(ctx context.Context, o Options) (*Pack, error) {
	l, err := newLoader(o)
	if err != nil {
		return nil, err
	}
	l.read()
	l.intervals()
	l.compile()
	if err := l.problems.Sorted(); err != nil {
		return nil, err
	}
	p := &Pack{rules: l.rules, compiler: l.compiler, active: len(l.modules), deadline: o.Deadline}
	if p.deadline == 0 {
		p.deadline = DefaultDeadline
	}
	if p.reads, err = readsOf(p.rules); err != nil {
		return nil, fmt.Errorf("rules: %w", err)
	}
	p.apartFrom, p.queries = manyRecords, sync.OnceValues(p.apartQueries)
	if p.query, err = prepare(ctx, p.compiler, allFindings); err != nil {
		return nil, fmt.Errorf("rules: %w", err)
	}
	return p, nil
}

// readsOf is what the rules read of the facts.
func readsOf(rules []*Rule) (facts.Choice, error) {
	fields := map[string][]string{}
	for _, r := range rules {
		if r.Off == "" {
			fields[r.Over] = append(fields[r.Over], r.reads...)
		}
	}
	return facts.Choose(fields)
}

// allFindings asks every rule in one query.
const allFindings = "f = data.liftlint.rules[t][r].finding"

func prepare(ctx context.Context, c *ast.Compiler, query string) (rego.PreparedEvalQuery, error) {
	return rego.New(
		rego.Compiler(c),
		rego.Capabilities(c.Capabilities()),
		rego.Query(query),
		rego.StrictBuiltinErrors(true),
	).PrepareForEval(ctx)
}
