package compare_test

import (
	"strings"
	"testing"

	"liftlint/internal/compare"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// ruled is a plan in which one rule is put to two subjects and finds nothing.
func ruled(set func(*lint.Result, *policy.Rule), fs ...finding.Finding) *compare.Side {
	r := &policy.Rule{ID: "a/b", Sum: "1", Waivable: true, Limit: "least_deg", Grades: []policy.Grade{{Name: "bad", Severity: policy.Always(finding.Error)}},
		Params: []policy.Param{{Name: "least_deg", Value: 45.0, Milder: -1}, {Name: "kinds", Value: []string{"chain"}}}}
	s := handMade(fs...)
	s.Result.Profile, s.Result.Stage = "us", policy.Review
	s.Result.Checked[0] = lint.Checked{Rule: "a/b", Title: "Leg", Worst: finding.Error, Met: []string{"k1", "k2"}, By: r}
	if set != nil {
		set(s.Result, r)
	}
	return s
}

// TestMilderRulings of which no plan feels anything yet count, and the way back does not.
func TestMilderRulings(t *testing.T) {
	param := func(v any) func(*lint.Result, *policy.Rule) {
		return func(_ *lint.Result, r *policy.Rule) {
			r.Params = []policy.Param{{Name: "least_deg", Value: v, Milder: -1}, r.Params[1]}
		}
	}
	for _, c := range []struct {
		what     string
		old, new func(*lint.Result, *policy.Rule)
		says     string
		back     string // the other way; empty is that it differs only in words
		same     bool   // neither way is milder
	}{
		{what: "lock", old: func(_ *lint.Result, r *policy.Rule) { r.LockedBy = "x.yaml" }, says: "a/b, locked: taken out (was by x.yaml), which is milder", back: "a/b, locked: by x.yaml (was not given)"},
		{what: "not waivable", old: func(_ *lint.Result, r *policy.Rule) { r.HeldBy = "x.yaml" }, says: "a/b, not waivable: taken out (was by x.yaml), which is milder", back: "a/b, not waivable: by x.yaml (was not given)"},
		{what: "profile", old: func(x *lint.Result, _ *policy.Rule) { x.ProfileLockedBy = "x.yaml" }, says: "profile, locked: taken out (was by x.yaml), which is milder", back: "profile, locked: by x.yaml (was not given)"},
		{what: "limit", new: param(30.0), says: "a/b, least_deg: 30 deg (was 45 deg), which is milder", back: "a/b, least_deg: 45 deg (was 30 deg)\n"},
		{what: "severity", new: func(_ *lint.Result, r *policy.Rule) { r.Grades[0].Severity = policy.Always(finding.Warning) }, says: "a/b, bad: warning (was error), which is milder"},
		{what: "grade", new: func(_ *lint.Result, r *policy.Rule) { r.Grades[0].Name = "worse" }, says: "a/b, bad: taken out (was error), which is milder", back: "a/b, worse: taken out (was error), which is milder"},
		{what: "off", new: func(x *lint.Result, r *policy.Rule) { r.Off, x.Checked[0].Met = "not here", nil }, says: "a/b, off: not here (was not given), which is milder"},
		{what: "rule", new: func(x *lint.Result, _ *policy.Rule) { x.Checked = nil }, says: "there is no rule a/b any more", back: "there is a rule a/b now"},
		{what: "interval", old: func(x *lint.Result, _ *policy.Rule) {
			x.Overrides = []policy.Override{{Rule: "inspection/overdue", What: "interval in normal service of chain slings", Is: "6 months"}}
		}, says: "taken out (was 6 months), which is milder"},
		{what: "text", new: func(_ *lint.Result, r *policy.Rule) { r.Sum = "2" }, says: "a/b, the rule's text: changed", same: true},
		{what: "words", new: func(_ *lint.Result, r *policy.Rule) { r.Params[1].Value = []string{"rope"} }, says: "a/b, kinds: [rope] (was [chain])\n", same: true},
	} {
		old, new := ruled(c.old), ruled(c.new)
		if c.what == "rule" {
			new.Result.Checked = []lint.Checked{{Rule: "a/c"}}
			old.Result.Checked[0].Met, old.Result.Checked = nil, append(old.Result.Checked, lint.Checked{Rule: "a/c"})
		}
		if c.what == "off" {
			old.Result.Checked[0].Met = nil
		}
		want := 1
		if c.same {
			want = 0
		}
		r := compared(compare.Pair{Old: old, New: new})
		for format, text := range map[string]string{"text": written(t, compare.WriteText, r), "Markdown": written(t, compare.WriteMarkdown, r)} {
			text = strings.NewReplacer("\\", "").Replace(text)
			if r.Exit != want || !strings.Contains(text, c.says) {
				t.Errorf("%s, %s: exit code %d\n%s", c.what, format, r.Exit, text)
			}
		}
		back := compared(compare.Pair{Old: new, New: old})
		if milder := strings.HasSuffix(c.back, "milder"); back.Exit == 0 == milder || !strings.Contains(written(t, compare.WriteText, back), c.back) {
			t.Errorf("%s, the other way: %s", c.what, written(t, compare.WriteText, back))
		}
	}
}

// TestMilderBelowTheThreshold does not count.
func TestMilderBelowTheThreshold(t *testing.T) {
	warning := func(least float64) *compare.Side {
		return ruled(func(x *lint.Result, r *policy.Rule) {
			r.Grades[0].Severity, x.Checked[0].Worst = policy.Always(finding.Warning), finding.Warning
			r.Params[0].Value = least
		})
	}
	p := compare.Pair{Old: warning(45), New: warning(30)}
	for failOn, want := range map[finding.Severity]int{finding.Error: 0, finding.Warning: 1} {
		if c := compare.Of("old", "new", []compare.Pair{p}, nil, failOn); c.Exit != want {
			t.Errorf("%s: %+v", failOn, c)
		}
	}
}

// TestRuleGutted: what a rule with another text does not find is not gone, and what it
// does not look at any more is not judged.
func TestRuleGutted(t *testing.T) {
	f := finding.Finding{Rule: "a/b", Key: "k1", Severity: finding.Error, Message: "m"}
	old := ruled(func(x *lint.Result, _ *policy.Rule) {
		x.Checked[0].Met, x.Checked[0].Broken = []string{"k2"}, []string{"k1"}
	}, f)
	for _, c := range []struct {
		what     string
		met      []string
		unjudged int
	}{{"where drops all", nil, 1}, {"a condition more", []string{"k1", "k2"}, 0}} {
		new := ruled(func(x *lint.Result, r *policy.Rule) { r.Sum, x.Checked[0].Met = "2", c.met })
		r := compared(compare.Pair{Old: old, New: new})
		p := r.Plans[0]
		if got := p.Findings[0]; r.Exit != 1 || got.Change != "judged_otherwise" || !strings.HasPrefix(got.Why[0], "the rule's text changed") || len(p.Unjudged) != c.unjudged {
			t.Errorf("%s: %+v", c.what, r)
		}
		if text := written(t, compare.WriteText, r); strings.Contains(text, "GONE") {
			t.Error(text)
		}
	}
}
