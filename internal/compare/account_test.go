package compare_test

import (
	"context"
	"strings"
	"testing"

	"liftlint/internal/compare"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// TestWhatHeldIsNotJudged any more: that is as bad as the worst that the rule could
// find, and every format says why.
func TestWhatHeldIsNotJudged(t *testing.T) {
	with := func(c lint.Checked) *compare.Side {
		s := handMade()
		s.Result.Checked[0] = c
		return s
	}
	waits := []lint.Unjudged{{Key: "k", WaitsFor: []string{"the length is not given"}}}
	for _, c := range []struct {
		what string
		new  lint.Checked
		why  string // empty where nothing is worse
	}{
		{"waits", lint.Checked{Rule: "a/b", NotJudged: waits}, "the length is not given"},
		{"renamed, and waits", lint.Checked{Rule: "a/z", FormerIDs: []string{"a/b"}, NotJudged: waits}, "the length is not given"},
		{"off", lint.Checked{Rule: "a/b", NotAsked: true, DoesNotApply: "switched off: kits"}, "switched off: kits"},
		{"taken out", lint.Checked{Rule: "a/c"}, "there is no rule a/b any more"},
		{"applies no more", lint.Checked{Rule: "a/b", DoesNotApply: "there are no legs"}, ""},
		{"still met", lint.Checked{Rule: "a/b", Met: []string{"k"}}, ""},
		{"renamed", lint.Checked{Rule: "a/z", FormerIDs: []string{"a/b"}, Met: []string{"k"}}, ""},
	} {
		for worst, exit := range map[finding.Severity]int{finding.Error: 1, finding.Warning: 0} {
			r := compared(compare.Pair{Old: with(lint.Checked{Rule: "a/b", Title: "Leg", Worst: worst, Met: []string{"k"}}), New: with(c.new)})
			if c.why == "" {
				if r.Exit != 0 || r.Same != 1 {
					t.Errorf("%s: %+v", c.what, r)
				}
				continue
			}
			if r.Exit != exit || len(r.Plans) != 1 || len(r.Plans[0].Unjudged) != 1 {
				t.Errorf("%s, at worst of severity %s: %+v", c.what, worst, r)
				continue
			}
			for format, text := range map[string]string{"text": written(t, compare.WriteText, r), "Markdown": written(t, compare.WriteMarkdown, r), "JSON": written(t, compare.WriteJSON, r)} {
				for _, word := range []string{c.why, "k", "Leg", string(worst)} {
					if !strings.Contains(text, word) {
						t.Errorf("%s: %s does not say %q:\n%s", c.what, format, word, text)
					}
				}
			}
		}
	}
}

// TestInputTakenOut of a plan: in a draft what is missing is but a note, and that what
// held waits for it counts all the same.
func TestInputTakenOut(t *testing.T) {
	l, err := lint.New(lint.Options{Stage: policy.Draft})
	if err != nil {
		t.Fatal(err)
	}
	draft := func(text string) *compare.Side {
		r, err := l.Check(context.Background(), file, []byte(text))
		if err != nil || r.State != lint.Judged {
			t.Fatal(r, err)
		}
		return &compare.Side{Name: file, Result: r, Text: []byte(text)}
	}
	text := example(t, "pump-skid")
	old, new := draft(text), draft(edited(t, text, "body_width: 110 mm, ", ""))
	if w := finding.Worst(new.Result.Findings); w != finding.Note {
		t.Fatalf("the new revision has a finding of severity %s by itself", w)
	}
	c := compared(compare.Pair{Old: old, New: new})
	if c.Exit != 1 || len(c.Plans[0].Unjudged) == 0 {
		t.Fatalf("%+v", c)
	}
	for _, s := range c.Plans[0].Unjudged {
		if s.Change != "not_judged" || s.Title == "" || len(s.Why) == 0 {
			t.Errorf("%+v", s)
		}
	}
	if c := compared(compare.Pair{Old: new, New: old}); c.Exit != 0 {
		t.Errorf("given again: %+v", c)
	}
}

// TestRuleSwitchedOff by a configuration: its findings are not gone, and what it met
// is told of.
func TestRuleSwitchedOff(t *testing.T) {
	f := finding.Finding{Rule: "a/b", Key: "k", Severity: finding.Error, Message: "m"}
	off := handMade()
	off.Result.Checked[0] = lint.Checked{Rule: "a/b", NotAsked: true, DoesNotApply: "switched off: kits"}
	c := compared(compare.Pair{Old: handMade(f), New: off})
	if p := c.Plans[0]; c.Exit != 1 || p.Findings[0].Change != "not_looked_for" || p.Findings[0].Why[0] != "switched off: kits" {
		t.Errorf("%+v", c)
	}
}

// TestRuleSetOtherwise by a configuration: what is not found for that is not gone, and
// counts as bad as it was.
func TestRuleSetOtherwise(t *testing.T) {
	f := finding.Finding{Rule: "a/b", Key: "k", Severity: finding.Error, Message: "m"}
	set := func(s *compare.Side, is string) *compare.Side {
		s.Result.Overrides = []policy.Override{{Rule: "a/b", What: "error_deg", From: "liftlint.yaml", Was: "30", Is: is}}
		return s
	}
	for _, c := range []struct {
		old, new *compare.Side
		change   string
		why      string
		exit     int
	}{
		{handMade(f), set(handMade(), "20"), "judged_otherwise", "error_deg is set to 20 now", 1},
		{set(handMade(f), "45"), handMade(), "judged_otherwise", "error_deg is not set to 45 any more", 1},
		{set(handMade(f), "45"), set(handMade(), "31"), "judged_otherwise", "error_deg is set to 31 now", 1},
		{set(handMade(f), "45"), set(handMade(), "45"), "gone", "", 0},
	} {
		r := compared(compare.Pair{Old: c.old, New: c.new})
		got := r.Plans[0].Findings[0]
		if got.Change != c.change || strings.Join(got.Why, "") != c.why || r.Exit != c.exit {
			t.Errorf("%+v, exit code %d, not %s, %q, %d", got, r.Exit, c.change, c.why, c.exit)
		}
		for format, text := range map[string]string{"text": written(t, compare.WriteText, r), "Markdown": written(t, compare.WriteMarkdown, r)} {
			if c.why != "" && !strings.Contains(text, "JUDGED OTHERWISE error") {
				t.Errorf("%s: %s", format, text)
			}
		}
	}
}

// TestNotValidIsNotTakenOut: of a revision that can't be read nothing is said to be
// gone or taken out.
func TestNotValidIsNotTakenOut(t *testing.T) {
	text := example(t, "pump-skid")
	good, bad := side(t, text), side(t, edited(t, text, "mass: 8650 kg", "mass: 08650 kg\n  x: 010"))
	if bad.Result.State != lint.NotValid {
		t.Fatal(bad.Result.State)
	}
	for _, p := range []compare.Pair{{Old: good, New: bad}, {Old: bad, New: good}} {
		if c := compared(p).Plans[0]; len(c.Figures)+len(c.Gear) > 0 || c.Status != "not_judged" {
			t.Errorf("%+v", c)
		}
	}
}
