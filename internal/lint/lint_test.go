package lint_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// comparable leaves out what two results of one text need not share.
func comparable() cmp.Options {
	return cmp.Options{cmpopts.IgnoreUnexported(lint.Result{}, policy.Rule{}, policy.Grade{})}
}

// TestFileAndStreamGiveTheSame: the name of the source is all that differs.
func TestFileAndStreamGiveTheSame(t *testing.T) {
	text := example(t, "filter-vessel")
	file := filepath.Join(t.TempDir(), "plan.lift.yaml")
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	read, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	l := linter(t, lint.Options{Remedies: true})
	fromFile, err := l.Check(context.Background(), file, read)
	if err != nil {
		t.Fatal(err)
	}
	fromStream, err := l.Check(context.Background(), "-", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	name := cmp.Transformer("file", func(s string) string {
		if s == file || s == "-" {
			return "the plan"
		}
		return s
	})
	opts := cmp.Options{comparable(), cmp.FilterPath(func(p cmp.Path) bool {
		f, ok := p.Last().(cmp.StructField)
		return ok && f.Name() == "File"
	}, name)}
	if diff := cmp.Diff(fromFile, fromStream, opts); diff != "" {
		t.Error(diff)
	}
	if len(fromFile.Findings) < 6 {
		t.Errorf("only %s", rules(fromFile))
	}
}

// TestSameTextSameResult, from many goroutines at once and from new linters.
func TestSameTextSameResult(t *testing.T) {
	text := changed(t, example(t, "filter-vessel"), "mass_tolerance: 3 %", "mass_tolerance: 4 %", "hook: {body_width: 120 mm, throat: 100 mm, latch: works}", "hook: {}")
	l := linter(t, lint.Options{Remedies: true})
	want := check(t, l, text)
	var wait sync.WaitGroup
	results := make([]*lint.Result, 8)
	for i := range results {
		wait.Go(func() { results[i], _ = l.Check(context.Background(), "plan.lift.yaml", []byte(text)) })
	}
	wait.Wait()
	results = append(results, check(t, linter(t, lint.Options{Remedies: true}), text))
	for i, got := range results {
		if diff := cmp.Diff(want, got, comparable()); diff != "" {
			t.Errorf("run %d: %s", i, diff)
		}
	}
}

func inOrder(r *lint.Result) bool {
	return slices.IsSortedFunc(r.Findings, func(a, b finding.Finding) int {
		switch {
		case a.Place.Range.From.Before(b.Place.Range.From):
			return -1
		case b.Place.Range.From.Before(a.Place.Range.From):
			return 1
		}
		return b.Severity.Rank() - a.Severity.Rank()
	})
}

func TestFindingsStandInTheOrderOfTheFile(t *testing.T) {
	l := linter(t, lint.Options{})
	for name, text := range map[string]string{
		"findings of rules": example(t, "filter-vessel"),
		"inputs missing":    changed(t, example(t, "filter-vessel"), "  mass: 11.4 t\n", "", "hook: {body_width: 120 mm, throat: 100 mm, latch: works}", "hook: {}"),
		"faults of form":    changed(t, example(t, "pump-skid"), "length: 6.4 m", "length: 6.4", "mass: 8650 kg", "mass: 8650", "title:", "titel:"),
		"faults of linking": changed(t, example(t, "pump-skid"), "by: [ML1]", "by: [ML2]", "id: S2", "id: S1", "at: D", "at: E"),
	} {
		r := check(t, l, text)
		if len(r.Findings) < 3 || !inOrder(r) {
			t.Errorf("%s: %s", name, rules(r))
		}
	}
}

// TestNotValidRunsNoRule: one error a fault, no facts, nothing called checked.
func TestNotValidRunsNoRule(t *testing.T) {
	l := linter(t, lint.Options{Remedies: true})
	for name, c := range map[string]struct{ text, rules string }{
		"empty":                 {"", "yaml/empty"},
		"not YAML":              {"lift: [", "yaml/syntax"},
		"no plan":               {"a: b\n", "plan/unknown_key plan/missing_key plan/missing_key plan/missing_key plan/missing_key plan/missing_key"},
		"a number for a length": {changed(t, example(t, "pump-skid"), "length: 6.4 m", "length: 6.4"), "plan/unit"},
		"id given twice":        {changed(t, example(t, "pump-skid"), "id: S2", "id: S3"), "plan/duplicate_id plan/unknown_reference"},
	} {
		r := check(t, l, c.text)
		if r.State != lint.NotValid || r.Facts != nil || r.Checked != nil {
			t.Errorf("%s: %s, facts %v, checked %v", name, r.State, r.Facts, r.Checked)
		}
		if finding.Worst(r.Findings) != finding.Error {
			t.Errorf("%s: %v", name, r.Findings)
		}
		if name != "no plan" && rules(r) != c.rules {
			t.Errorf("%s: %s", name, rules(r))
		}
		for _, f := range r.Findings {
			if f.Remedy != "" || f.Message == "" || f.Place.File != "plan.lift.yaml" || len(f.Citations) != 1 {
				t.Errorf("%s: %+v", name, f)
			}
		}
	}
}

func TestTroubleIsAFinding(t *testing.T) {
	text := example(t, "pump-skid")
	text = strings.ReplaceAll(text, "length: 6.4 m", "length: 2 m")
	r := check(t, linter(t, lint.Options{}), text)
	got := of(r, "mechanics/out_of_reach")
	if r.State != lint.Judged || len(got) != 1 || got[0].Severity != finding.Error {
		t.Fatalf("%s: %s", r.State, rules(r))
	}
	f := got[0]
	if line := r.Line(f.Place.Range.From.Line); !strings.Contains(line, "down: [S1, K1]") {
		t.Errorf("it stands at %q", line)
	}
	if len(f.Related) != 3 { // the other legs
		t.Errorf("%d related places: %v", len(f.Related), f.Related)
	}
	for _, c := range r.Checked {
		if c.Rule == "load/over_rated_load" && (len(c.Met) != 1 || len(c.NotJudged) != 12) {
			t.Errorf("all but the link wait for the forces: %+v", c) // it carries all, however the load hangs
		}
	}
	if more := of(r, "input/not_judged"); len(more) != 0 {
		t.Errorf("the trouble is told twice: %v", more)
	}
}

func TestComputeJudgesNothing(t *testing.T) {
	l := linter(t, lint.Options{})
	r, err := l.Compute("a.lift.yaml", []byte(example(t, "filter-vessel")))
	if err != nil || r.State != lint.Computed || r.Facts == nil || len(r.Findings) != 0 || r.Checked != nil {
		t.Errorf("%v: %s %v", err, r.State, r.Findings)
	}
	if r.ID != "SQ-034" || r.Profile != "us" || r.Day != "2026-12-11" {
		t.Errorf("%+v", r)
	}
	r, err = l.Compute("a.lift.yaml", []byte("lift: 1"))
	if err != nil || r.State != lint.NotValid || r.Facts != nil || len(r.Findings) == 0 {
		t.Errorf("%v: %s %v", err, r.State, r.Findings)
	}
}

func TestUnreadable(t *testing.T) {
	r := lint.Unreadable("gone.lift.yaml", errors.New("no such file"))
	if r.State != lint.Unread || rules(r) != "file/unreadable" || r.Findings[0].Severity != finding.Error || r.Line(1) != "" {
		t.Errorf("%+v", r)
	}
}

// TestProfile: the option overrules the plan, the plan the default.
func TestProfile(t *testing.T) {
	plain := example(t, "pump-skid")
	european := changed(t, plain, "units: metric", "profile: eu")
	for _, c := range []struct{ text, option, want string }{
		{plain, "", lint.DefaultProfile}, {european, "", "eu"}, {european, "us", "us"}, {plain, "eu", "eu"},
	} {
		r := check(t, linter(t, lint.Options{Profile: c.option}), c.text)
		if r.Profile != c.want || r.Facts.Document.Lifts[0].Profile != c.want {
			t.Errorf("option %q: judged by %s, not %s", c.option, r.Profile, c.want)
		}
	}
}

func TestWrongOptions(t *testing.T) {
	for _, c := range []struct {
		options lint.Options
		says    string
	}{
		{lint.Options{Stage: "prelfit"}, `did you mean "prelift"?`},
		{lint.Options{Stage: ""}, "draft, review, prelift"},
		{lint.Options{Stage: "review", Profile: "ue"}, "there is eu, us"},
	} {
		if _, err := lint.New(c.options); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%+v: %v", c.options, err)
		}
	}
}

// TestDayOverrulesThePlan: what was due on the day of the plan is overdue the
// day after.
func TestDayOverrulesThePlan(t *testing.T) {
	text := changed(t, example(t, "pump-skid"), "inspection: {date: 2026-06-11, by: site rigging loft}", "inspection: {date: 2025-12-04}")
	r := check(t, linter(t, lint.Options{}), text)
	if got := rules(r); got != "inspection/due_soon" || r.Day != "2026-12-04" {
		t.Errorf("on %s: %s", r.Day, got)
	}
	next := time.Date(2026, 12, 5, 7, 30, 0, 0, time.UTC)
	r = check(t, linter(t, lint.Options{On: &next}), text)
	if got := of(r, "inspection/overdue"); len(got) != 1 || rules(r) != "inspection/overdue" || r.Day != "2026-12-05" || got[0].Message != "ML1 is 1 day past its periodic inspection, due on 2026-12-04" {
		t.Errorf("on %s: %v", r.Day, got)
	}
}

func TestEndedContextIsAnError(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	r, err := linter(t, lint.Options{}).Check(ctx, "a", []byte(example(t, "pump-skid")))
	if !errors.Is(err, context.Canceled) || r != nil {
		t.Errorf("judged all the same: %v", err)
	}
}
