package policy_test

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/policy"
)

// TestBoundaryTestsKill: tests at the boundary leave no survivor, tests far from
// it do.
func TestBoundaryTestsKill(t *testing.T) {
	for _, c := range []struct {
		name, params, body string
		boundary, far      []string
		survivors          []string // of the tests that are far
	}{
		{"<", "", "item.length_m < 2",
			[]string{`breaks "length_m": 1.99`, `meets "length_m": 2`},
			[]string{`breaks "length_m": 1`, `meets "length_m": 3`},
			[]string{"< became <=", "2 became 2.1", "2 became 1.9"}},
		{"<=", "", "item.length_m <= 2",
			[]string{`breaks "length_m": 2`, `meets "length_m": 2.01`},
			[]string{`breaks "length_m": 1`, `meets "length_m": 3`},
			[]string{"<= became <", "2 became 2.1", "2 became 1.9"}},
		{">", "most_m: 2", "item.length_m > p.most_m",
			[]string{`breaks "length_m": 2.01`, `meets "length_m": 2`},
			[]string{`breaks "length_m": 3`, `meets "length_m": 1`},
			[]string{"most_m 2 became 2.1", "most_m 2 became 1.9", "> became >="}},
		{">=", "", "item.length_m >= 2",
			[]string{`breaks "length_m": 2`, `meets "length_m": 1.99`},
			[]string{`breaks "length_m": 3`, `meets "length_m": 1`},
			[]string{">= became >", "2 became 2.1", "2 became 1.9"}},
		{"==", "", `item.id == "S1"`,
			[]string{`breaks "id": "S1"`, `meets "id": "S2"`},
			[]string{`breaks "id": "S1"`, `meets "uses": 2`},
			[]string{}},
		{"!=", "", `item.id != "S1"`,
			[]string{`breaks "id": "S2"`, `meets "id": "S1"`},
			[]string{`breaks "id": "S2"`, `meets "uses": 2`},
			[]string{}},
		{"in", "", `"knotted" in item.eye_kinds`,
			[]string{`breaks "eye_kinds": ["knotted", "clipped"]`, `meets "eye_kinds": ["clipped"]`},
			[]string{`breaks "eye_kinds": ["knotted"]`, `breaks "eye_kinds": ["knotted", "knotted"]`},
			[]string{`"knotted" in item.eye_kinds was taken out`}},
		{"not in", "", `not "knotted" in item.eye_kinds`,
			[]string{`breaks "eye_kinds": ["clipped"]`, `meets "eye_kinds": ["knotted"]`},
			[]string{`breaks "eye_kinds": ["clipped"]`, `breaks "eye_kinds": []`},
			[]string{`not "knotted" in item.eye_kinds was taken out`}},
		{"a whole number", "", "item.uses > 2",
			[]string{`breaks "uses": 3`, `meets "uses": 2`},
			[]string{`breaks "uses": 4`, `meets "uses": 1`},
			[]string{"> became >=", "2 became 3", "2 became 1"}},
		{"two conditions", "", "item.in_bridle == true\nitem.uses > 2",
			[]string{`breaks "in_bridle": true, "uses": 3`, `meets "in_bridle": true, "uses": 2`, `meets "in_bridle": false, "uses": 3`},
			[]string{`breaks "in_bridle": true, "uses": 3`, `meets "in_bridle": true, "uses": 2`},
			[]string{"item.in_bridle == true was taken out"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			rule := trial("try", c.params, c.body)
			strong := mutate(t, own(rule, trialTests("try", c.boundary)), nil)[0]
			if len(strong.Survivors) > 0 || strong.Killed < 2 {
				t.Errorf("tests at the boundary: %+v", strong)
			}
			weak := mutate(t, own(rule, trialTests("try", c.far)), nil)[0]
			if diff := cmp.Diff(c.survivors, whats(weak)); diff != "" {
				t.Error(diff)
			}
			if all := weak.Killed + len(weak.Survivors); all != strong.Killed {
				t.Errorf("%d mutants under one, %d under the other", strong.Killed, all)
			}
		})
	}
}

// What no longer loads is no merit of the tests.
func TestStillbornAreCountedApart(t *testing.T) {
	rule := trial("try", "", `item.pin_kind in ["bolt", "round"]`)
	got := mutate(t, own(rule, trialTests("try", []string{`breaks "pin_kind": "bolt"`, `meets "pin_kind": "screw"`})), nil)
	if want := []policy.RuleMutants{{Rule: "own/try", Killed: 1, Stillborn: 1}}; !cmp.Equal(got, want) {
		t.Errorf("got %+v", got)
	}
}

// farRule is a rule whose tests are far from its boundary.
func farRule(name string) (rule, tests string) {
	return trial(name, "most_m: 2", "item.length_m > p.most_m"), trialTests(name, []string{`breaks "length_m": 9`, `meets "length_m": 1`})
}

// manyFar is that rule under twelve names, one of them off.
func manyFar() policy.Options {
	files := map[string]string{}
	for i := range 12 {
		name := fmt.Sprintf("r%02d", i)
		files["own/"+name+"/rule.rego"], files["own/"+name+"/rule_test.rego"] = farRule(name)
	}
	o := policy.Options{Sources: folder(files)}
	o.Profile.Rules = map[string]policy.Setting{"own/r03": {Off: "not here"}}
	return o
}

func TestOrderIsThatOfRulesAndPlaces(t *testing.T) {
	late := func(context.Context, policy.Mutant, policy.Options) (bool, error) {
		time.Sleep(rand.N(time.Millisecond))
		return true, nil
	}
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
	first := mutate(t, manyFar(), late)
	runtime.GOMAXPROCS(8)
	for range 3 {
		if diff := cmp.Diff(first, mutate(t, manyFar(), late)); diff != "" {
			t.Fatal(diff)
		}
	}
	if len(first) != 11 || first[2].Rule != "own/r02" || first[3].Rule != "own/r04" {
		t.Errorf("%+v", first)
	}
	want := []string{"most_m 2 became 2.1", "most_m 2 became 1.9", "> became >="}
	for _, m := range first {
		if !slices.Equal(whats(m), want) || m.Survivors[2].String() != m.Survivors[2].File+":17:16: > became >=" {
			t.Errorf("%+v", m)
		}
	}
}

func TestMutantsOfSomeRulesAlone(t *testing.T) {
	o := manyFar()
	o.Only = []string{"own/r05", "own/r03"} // of which the second is off
	if got := mutate(t, o, nil); len(got) != 1 || got[0].Rule != "own/r05" || len(got[0].Survivors) != 3 {
		t.Errorf("%+v", got)
	}
}

// TestAlive: what survives the tests is put to the callback, with options that
// load the mutant alone under the same layers; its no kills.
func TestAlive(t *testing.T) {
	o := manyFar()
	o.Layers = []policy.Layer{{Name: "company", Locked: []string{"own/r01"}, Rules: map[string]policy.Setting{"own/r02": {Severity: ptr(policy.Always("note"))}}}}
	var mu sync.Mutex
	values := map[string][]float64{}
	alive := func(ctx context.Context, m policy.Mutant, o policy.Options) (bool, error) {
		p, err := policy.Load(ctx, o)
		if err != nil || len(p.Rules()) != 1 {
			return false, fmt.Errorf("%d rules, %w", len(p.Rules()), err)
		}
		r := p.Rules()[0]
		if r.ID != m.Rule || r.File != m.File || (r.Severity.Draft == "note") != (r.ID == "own/r02") {
			return false, fmt.Errorf("%+v is not %v", r, m)
		}
		v, _ := r.Param("most_m")
		mu.Lock()
		defer mu.Unlock()
		values[m.Rule] = append(values[m.Rule], v.(float64))
		return v != 2.1, nil
	}
	for _, m := range mutate(t, o, alive) {
		if got, want := whats(m), []string{"most_m 2 became 1.9", "> became >="}; !slices.Equal(got, want) || m.Killed != 3 {
			t.Errorf("%+v", m)
		}
		slices.Sort(values[m.Rule])
		if !slices.Equal(values[m.Rule], []float64{1.9, 2, 2.1}) {
			t.Errorf("%s: %v", m.Rule, values[m.Rule])
		}
	}
}

// mutantTexts is the text of each mutant that loads and passes its tests.
func mutantTexts(t *testing.T, o policy.Options) []string {
	var mu sync.Mutex
	var texts []string
	mutate(t, o, func(_ context.Context, m policy.Mutant, o policy.Options) (bool, error) {
		text, err := fs.ReadFile(o.Sources[0].Files, m.Rule+"/rule.rego")
		mu.Lock()
		defer mu.Unlock()
		texts = append(texts, string(text))
		return true, err
	})
	return texts
}

// The first mutant's error is returned, whichever comes about first.
func TestAnErrorOfTheCallback(t *testing.T) {
	broken := errors.New("no plans")
	for range 5 {
		_, err := policy.Mutate(t.Context(), manyFar(), func(_ context.Context, m policy.Mutant, _ policy.Options) (bool, error) {
			time.Sleep(rand.N(time.Millisecond))
			if m.Rule > "own/r00" || m.Line > 14 {
				return false, broken
			}
			return true, nil
		})
		if want := "own/r00/rule.rego:17:16: > became >=: no plans"; !errors.Is(err, broken) || err.Error() != want {
			t.Errorf("got %v", err)
		}
	}
}

func TestMutantsWithinTheContext(t *testing.T) {
	done, stop := context.WithCancel(t.Context())
	stop()
	if m, err := policy.Mutate(done, manyFar(), nil); m != nil || !errors.Is(err, context.Canceled) {
		t.Errorf("%v, %v", m, err)
	}
	if c, err := policy.Cover(done, manyFar()); c != nil || !errors.Is(err, context.Canceled) {
		t.Errorf("%v, %v", c, err)
	}
	ctx, cancel := context.WithTimeout(t.Context(), 300*time.Millisecond)
	defer cancel()
	begun := time.Now()
	_, err := policy.Mutate(ctx, manyFar(), func(ctx context.Context, _ policy.Mutant, _ policy.Options) (bool, error) {
		<-ctx.Done()
		return false, ctx.Err()
	})
	if !errors.Is(err, context.DeadlineExceeded) || time.Since(begun) > 5*time.Second {
		t.Errorf("%v after %v", err, time.Since(begun))
	}
}

// Tests that fail on the rule itself would seem to kill every mutant.
func TestMutantsOfWhatFailsAsItIs(t *testing.T) {
	rule, tests := farRule("try")
	_, err := policy.Mutate(t.Context(), own(rule, strings.Replace(tests, "== 1", "== 0", 1)), nil)
	var ps policy.Problems
	if want := "own/try/rule_test.rego:10:1: test_breaks_0 fails with the rule as it is"; !errors.As(err, &ps) || !strings.HasPrefix(err.Error(), want) {
		t.Errorf("got %v", err)
	}
	_, err = policy.Mutate(t.Context(), own(rule, "package x"), nil)
	if !errors.As(err, &ps) {
		t.Errorf("tests that don't load: %v", err)
	}
	_, err = policy.Mutate(t.Context(), policy.Options{}, nil)
	if !errors.As(err, &ps) {
		t.Errorf("no rules: %v", err)
	}
}

// A test that looks at another rule fails by itself, and that is said.
func TestMutantsUnderATestOfAnotherRule(t *testing.T) {
	files := map[string]string{}
	for _, name := range []string{"a", "b"} {
		files["own/"+name+"/rule.rego"], files["own/"+name+"/rule_test.rego"] = farRule(name)
	}
	files["own/a/rule_test.rego"] += "\ntest_other if data.liftlint.rules.own.b.finding == set() with input as {\"gear\": []}\n"
	o := policy.Options{Sources: folder(files)}
	if results, err := policy.Test(t.Context(), o); err != nil || slices.ContainsFunc(results, func(r policy.TestResult) bool { return !r.Passed }) {
		t.Fatalf("%+v %v", results, err)
	}
	if _, err := policy.Mutate(t.Context(), o, nil); err == nil || !strings.Contains(err.Error(), "test_other fails with the rule as it is and no other beside it") {
		t.Errorf("got %v", err)
	}
}
