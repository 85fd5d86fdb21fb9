package policy

import (
	"cmp"
	"context"
	"fmt"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/open-policy-agent/opa/v1/topdown"

	"liftlint/internal/datafile"
)

// TestResult is how one test of a rule went.
type TestResult struct {
	Rule   string // id of the rule
	Name   string // of the test
	File   string
	Line   int
	Passed bool
	Reason string // why it did not pass, where that is more than being false
}

// Tests of a rule that breaks it and that meets it are told by their names;
// every rule has both.
const (
	breaksPrefix = "test_breaks"
	meetsPrefix  = "test_meets"
)

// Test runs the rules' own tests, with the parameters of METADATA and the
// profile given. The error is Problems where rules or tests are wrong, or a
// rule lacks a test that breaks it or one that meets it.
func Test(ctx context.Context, o Options) ([]TestResult, error) {
	l, err := loadTests(o)
	if err != nil {
		return nil, err
	}
	results, err := runTests(ctx, l.caps, l.modules, nil)
	if err != nil {
		return nil, err
	}
	if rules := len(l.modules) / 2; len(results) < 2*rules {
		return nil, fmt.Errorf("%d tests ran for %d rules", len(results), rules)
	}
	return results, nil
}

// loadTests loads the rules, and beside each that is on its tests.
func loadTests(o Options) (*loader, error) {
	l, err := newLoader(o)
	if err != nil {
		return nil, err
	}
	l.read()
	l.compile()
	l.readTests()
	if err := l.problems.Sorted(); err != nil {
		return nil, err
	}
	return l, nil
}

// readTests adds the tests of each rule that is on to the modules.
func (l *loader) readTests() {
	files, _ := regoFiles(l.options.Sources) // their problems are noted already
	tests := map[string]*ast.Module{}
	for _, f := range files {
		if !f.test || !l.options.wants(f.id) {
			continue
		}
		m, ps := f.parse(l.caps)
		l.problems = append(l.problems, ps...)
		tests[f.id] = m
	}
	for _, r := range l.rules {
		m, ok := tests[r.ID]
		switch {
		case !ok:
			l.problems.Add(Problem{File: r.File, Line: 1, Column: 1, Message: "the rule has no " + testFile + " beside it"})
		case m != nil && r.Off == "":
			l.testsOf(r, m)
			l.modules[m.Package.Location.File] = m
		}
	}
}

// testsOf holds a rule's tests to having both kinds, and to records that the
// facts could hold: a misspelt field would make any rule look met.
func (l *loader) testsOf(r *Rule, m *ast.Module) {
	for _, prefix := range []string{breaksPrefix, meetsPrefix} {
		if !slices.ContainsFunc(m.Rules, func(t *ast.Rule) bool { return strings.HasPrefix(t.Head.Ref().String(), prefix) }) {
			noteAt(&l.problems, m.Package.Location, "there is no test named %s...", prefix)
		}
	}
	ast.WalkTerms(m, func(t *ast.Term) bool {
		o, ok := t.Value.(ast.Object)
		if !ok || o.Get(ast.StringTerm(elementKey)) == nil || o.Get(ast.StringTerm(elementGrade)) != nil {
			return false
		}
		l.testRecord(r, o, "")
		return true
	})
}

func (l *loader) testRecord(r *Rule, o ast.Object, under string) {
	o.Foreach(func(k, v *ast.Term) {
		name, _ := k.Value.(ast.String)
		path := under + string(name)
		got, ok := l.shape.field(r.Over, path)
		inner, isObject := v.Value.(ast.Object)
		switch {
		case !ok && under == "" && string(name) == elementNames:
		case !ok:
			noteAt(&l.problems, k.Location, "%q is no field of %s%s", path, r.Over, datafile.Guess(string(name), got.known))
		case isObject:
			l.testRecord(r, inner, path+".")
		}
	})
}

// runTests runs the tests among the modules. The tracer may be nil.
func runTests(ctx context.Context, caps *ast.Capabilities, modules map[string]*ast.Module, tracer topdown.QueryTracer) ([]TestResult, error) {
	ch, err := tester.NewRunner().
		SetCompiler(newCompiler(caps, nil)).
		SetModules(withLib(modules)).
		RaiseBuiltinErrors(true).
		SetTimeout(DefaultDeadline).
		SetCoverageQueryTracer(tracer).
		SetCoverageRuns(nil). // what is reached only without an optimization is not reached
		RunTests(ctx, nil)
	if err != nil {
		var ps Problems
		noteRego(&ps, "", err)
		return nil, ps.Sorted()
	}
	var out []TestResult
	for r := range ch {
		out = append(out, resultOf(r))
	}
	slices.SortFunc(out, func(a, b TestResult) int {
		return cmp.Or(cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Name, b.Name))
	})
	return out, ctx.Err()
}

func resultOf(r *tester.Result) TestResult {
	id := strings.TrimSuffix(strings.TrimPrefix(r.Package, "data.liftlint.rules."), "_test")
	t := TestResult{
		Rule:   strings.ReplaceAll(id, ".", "/"),
		Name:   r.Name,
		Passed: r.Pass(),
	}
	if r.Location != nil {
		t.File, t.Line = r.Location.File, r.Location.Row
	}
	switch {
	case r.Error != nil:
		t.Reason = r.Error.Error()
	case r.Skip:
		t.Reason = "skipped: a test runs or is taken out"
	}
	return t
}
