package policy

import (
	"archive/zip"
	"bytes"
	"context"
	"io"
	"io/fs"
	"path"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// tested is a rule and the tests beside it.
type tested struct {
	rule, tests regoFile
	without     string // the field whose condition in where is left out
}

// tested lists the rules that are on, by id.
func (l *loader) tested() []tested {
	files, _ := regoFiles(l.options.Sources) // their problems are noted already
	byID := map[string]tested{}
	for _, f := range files {
		t := byID[f.id]
		if f.test {
			t.tests = f
		} else {
			t.rule = f
		}
		byID[f.id] = t
	}
	var out []tested
	for _, r := range l.rules {
		if r.Off == "" {
			out = append(out, byID[r.ID])
		}
	}
	return out
}

// runAlone loads a rule with no other beside it and runs its tests. The error
// is Problems where it does not load. Facts are not typed again, which takes as
// long as all the rest: the rules were typed when they were loaded, and no mutant
// changes what sort of value anything is. All is parsed anew each time: OPA
// shares terms between modules, and these run at once.
func (l *loader) runAlone(ctx context.Context, t tested, tracer topdown.QueryTracer) ([]TestResult, error) {
	one := *l
	one.problems, one.rules, one.modules = nil, nil, map[string]*ast.Module{}
	one.options.mutant, one.options.without = true, t.without
	one.take(one.rule(t.rule))
	tests, ps := t.tests.parse(l.caps)
	if err := append(one.problems, ps...).Sorted(); err != nil {
		return nil, err
	}
	one.modules[t.tests.name] = tests
	return runTests(ctx, l.caps, one.modules, tracer)
}

// options load the rule as it is here and no other.
func (t tested) options(o Options) (Options, error) {
	place := path.Join(t.rule.id, ruleFile)
	files, err := memory([]string{place, path.Join(t.rule.id, testFile)}, []string{t.rule.text, t.tests.text})
	o.Only, o.mutant, o.without = []string{t.rule.id}, true, t.without
	o.Sources = []Source{{Root: strings.TrimSuffix(strings.TrimSuffix(t.rule.name, place), "/"), Files: files}}
	return o, err
}

// memory is a file system of these texts. An archive is one that the library
// has ready.
func memory(names, texts []string) (fs.FS, error) {
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for i, name := range names {
		f, err := w.Create(name)
		if err != nil {
			return nil, err
		}
		if _, err := io.WriteString(f, texts[i]); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return zip.NewReader(bytes.NewReader(b.Bytes()), int64(b.Len()))
}

// each does f for every item, on as many workers as there are processors, and
// returns the results in the items' order. Items are begun in order, and none
// after an error, so that of several errors it is always the first item's that
// is returned.
func each[T, R any](ctx context.Context, items []T, f func(T) (R, error)) ([]R, error) {
	results, errs := make([]R, len(items)), make([]error, len(items))
	var next atomic.Int64
	var failed atomic.Bool
	var workers sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(items)) {
		workers.Go(func() {
			for !failed.Load() {
				i := int(next.Add(1)) - 1
				if i >= len(items) {
					return
				}
				if errs[i] = ctx.Err(); errs[i] == nil {
					results[i], errs[i] = f(items[i])
				}
				if errs[i] != nil {
					failed.Store(true)
				}
			}
		})
	}
	workers.Wait()
	for _, err := range errs {
		if err != nil {
			return nil, err
		}
	}
	return results, nil
}
