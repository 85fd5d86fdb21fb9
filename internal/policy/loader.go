package policy

import (
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
	"liftlint/internal/nearest"
)

// loader gathers rules, and all that is wrong with them.
type loader struct {
	options  Options
	shape    shape
	schema   *datafile.Schema
	caps     *ast.Capabilities
	problems Problems
	rules    []*Rule
	modules  map[string]*ast.Module // of rules that are on and have no problem
	compiler *ast.Compiler
}

func newLoader(o Options) (*loader, error) {
	schema, err := datafile.Compile("metadata.schema.json")
	if err != nil {
		return nil, fmt.Errorf("schema of METADATA: %w", err)
	}
	return &loader{
		options: o,
		shape:   newShape(),
		schema:  schema,
		caps:    sandbox(),
		modules: map[string]*ast.Module{},
	}, nil
}

// read parses and checks every rule by itself, then the pack as a whole.
func (l *loader) read() {
	files, ps := regoFiles(l.options.Sources)
	l.problems = append(l.problems, ps...)
	home := map[string]string{} // id -> file
	var rules []regoFile
	for _, f := range files {
		if f.test || !l.options.wants(f.id) {
			continue
		}
		if first, twice := home[f.id]; twice {
			l.problems.Add(Problem{File: f.name, Line: 1, Column: 1, Message: fmt.Sprintf("rule %s stands in %s already", f.id, first)})
			continue
		}
		home[f.id] = f.name
		rules = append(rules, f)
	}
	for _, r := range l.readAll(rules) {
		l.take(r)
	}
	for _, f := range files {
		if f.test && home[f.id] == "" && l.options.wants(f.id) {
			l.problems.Add(Problem{File: f.name, Line: 1, Column: 1, Message: "there is no " + ruleFile + " beside these tests"})
		}
	}
	slices.SortFunc(l.rules, func(a, b *Rule) int { return strings.Compare(a.ID, b.ID) })
	l.formerIDs(home)
	l.strangers(sortedKeys(home))
	if len(files) == 0 && len(l.problems) == 0 {
		l.problems.Add(Problem{Message: "there are no rules to judge by"})
	}
}

// readRule is one rule as it was read.
type readRule struct {
	rule     *Rule       // nil where its METADATA could not be read
	module   *ast.Module // nil for one that is off or has a problem
	problems Problems
}

// take adds a rule that was read.
func (l *loader) take(r readRule) {
	l.problems = append(l.problems, r.problems...)
	if r.rule != nil {
		l.rules = append(l.rules, r.rule)
	}
	if r.module != nil {
		l.modules[r.rule.File] = r.module
	}
}

// readAll reads rules on all cores, each by itself; the results stand in the
// order of the files.
func (l *loader) readAll(files []regoFile) []readRule {
	out := make([]readRule, len(files))
	next := make(chan int)
	var group sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(files)) {
		group.Go(func() {
			for i := range next {
				out[i] = l.rule(files[i])
			}
		})
	}
	for i := range files {
		next <- i
	}
	close(next)
	group.Wait()
	return out
}

func (l *loader) rule(f regoFile) (r readRule) {
	m, ps := f.parse(l.caps)
	r.problems = ps
	if m == nil {
		return r
	}
	meta, tree, ps := readMetadata(m, l.schema)
	r.problems = append(r.problems, ps...)
	if len(ps) > 0 {
		return r
	}
	c := &checker{
		shape: l.shape, profile: l.options.Profile.Name, layers: l.options.layers(), remedies: l.options.Remedies, mutant: l.options.mutant, without: l.options.without,
		module: m, tree: tree, needs: map[string]bool{}, unsaid: unsaid{}, read: map[string]bool{},
		rule: &Rule{ID: f.id, File: f.name, Sum: f.sum()},
	}
	c.run(meta)
	r.problems = append(r.problems, c.problems...)
	r.rule = c.rule
	if len(c.problems) == 0 {
		milderWays(m, c.rule)
		inline(m, c.rule)
		if c.rule.Off == "" {
			r.module = m
		}
	}
	return r
}

// formerIDs may name no rule that exists, and none twice.
func (l *loader) formerIDs(home map[string]string) {
	owner := map[string]string{}
	for _, r := range l.rules {
		for _, id := range r.FormerIDs {
			if _, live := home[id]; live {
				l.problems.Add(Problem{File: r.File, Line: 1, Column: 1, Message: fmt.Sprintf("former id %s of %s is a rule of its own", id, r.ID)})
			}
			if other, taken := owner[id]; taken {
				l.problems.Add(Problem{File: r.File, Line: 1, Column: 1, Message: fmt.Sprintf("former id %s is claimed by %s too", id, other)})
			}
			owner[id] = r.ID
		}
	}
}

// strangers are rules that a layer sets, locks or keeps from being waived, and
// that there are not.
func (l *loader) strangers(known []string) {
	for _, layer := range l.options.layers() {
		for _, id := range sortedKeys(layer.Rules) {
			if l.options.wants(id) && !slices.Contains(known, id) {
				l.problems.Add(layer.problem("/rules/"+datafile.Escape(id), "%s", l.noRule(id, "set", known)))
			}
		}
		for i, id := range layer.Locked {
			if strings.Contains(id, "/") && l.options.wants(id) && !slices.Contains(known, id) { // "profile" is no rule
				l.problems.Add(layer.problem(fmt.Sprintf("/locked/%d", i), "%s", l.noRule(id, "locked", known)))
			}
		}
		for i, id := range layer.NotWaivable {
			if l.options.wants(id) && !slices.Contains(known, id) {
				l.problems.Add(layer.problem(fmt.Sprintf("/not_waivable/%d", i), "%s", l.noRule(id, "waived", known)))
			}
		}
	}
}

// noRule words that there is no rule to be set or locked. Not all are listed:
// there are too many.
func (l *loader) noRule(id, verb string, known []string) string {
	if slices.Contains(l.options.BuiltIn, id) {
		return fmt.Sprintf("%s is a check that is built in: it can't be %s", id, verb)
	}
	if near, ok := nearest.Name(id, known); ok {
		return fmt.Sprintf("there is no rule %q: did you mean %q?", id, near)
	}
	return fmt.Sprintf("there is no rule %q: liftlint rules lists them", id)
}

// compile types and compiles the rules that have no problem of their own.
func (l *loader) compile() {
	defer func() {
		if r := recover(); r != nil {
			l.problems.Add(Problem{Message: fmt.Sprintf("the rules cannot be compiled: %v", r)})
		}
	}()
	l.compiler = newCompiler(l.caps, l.shape.root)
	l.compiler.SetErrorLimit(0) // all at once
	l.compiler.Compile(withLib(l.modules))
	if l.compiler.Failed() {
		noteRego(&l.problems, "", l.compiler.Errors)
	}
}

// newCompiler types input by the facts' schema in every module; nil leaves
// input untyped, for tests that feed parts of a document.
func newCompiler(caps *ast.Capabilities, schema any) *ast.Compiler {
	c := ast.NewCompiler().WithStrict(true).WithCapabilities(caps).WithUseTypeCheckAnnotations(true)
	if schema != nil {
		set := ast.NewSchemaSet()
		set.Put(ast.SchemaRootRef, schema)
		c = c.WithSchemas(set)
	}
	return c
}
