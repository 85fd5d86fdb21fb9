package report

import (
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/lint"
)

func TestSums(t *testing.T) {
	some, waits := []string{"x"}, []lint.Unjudged{{Key: "y"}}
	for want, list := range map[string][]lint.Checked{
		"1 rule: 0 broken, 0 not judged, 1 met, 0 not applicable.":                         {{Met: some}},
		"1 rule: 1 broken, 1 not judged (1 of them broken too), 0 met, 0 not applicable.":  {{Met: some, Broken: some, NotJudged: waits}},
		"1 rule: 0 broken, 1 not judged, 0 met, 0 not applicable.":                         {{Met: some, NotJudged: waits}},
		"1 rule: 0 broken, 0 not judged, 0 met, 1 did nothing, 0 not applicable.":          {{}},
		"3 rules: 2 broken, 0 not judged, 0 met, 1 not applicable.":                        {{Broken: some}, {Broken: some, Met: some}, {DoesNotApply: "indoors"}},
		"2 rules: 1 broken, 2 not judged (1 of them broken too), 0 met, 0 not applicable.": {{Broken: some, NotJudged: waits}, {NotJudged: waits}},
	} {
		if got := SumUp(list).Words(); got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
}

// TestSumsCountEveryRule: no rule falls out of the sums, and one that has a
// subject which is not met is never counted as met.
func TestSumsCountEveryRule(t *testing.T) {
	keys := rapid.SliceOfN(rapid.Just("x"), 0, 2)
	rapid.Check(t, func(t *rapid.T) {
		var list []lint.Checked
		met := 0
		for range rapid.IntRange(0, 12).Draw(t, "n") {
			c := lint.Checked{Broken: keys.Draw(t, "broken"), Met: keys.Draw(t, "met")}
			c.NotJudged = make([]lint.Unjudged, rapid.IntRange(0, 2).Draw(t, "not judged"))
			if Subjects(c) == 0 && rapid.Bool().Draw(t, "idle") {
				c.DoesNotApply = "why"
			}
			if len(c.Met) > 0 && len(c.Met) == Subjects(c) {
				met++
			}
			list = append(list, c)
		}
		s := SumUp(list)
		if s.Met != met || s.Broken+s.NotJudged-s.Both+s.Met+s.Silent+s.Idle != len(list) {
			t.Fatalf("%+v of %d rules, %d met", s, len(list), met)
		}
	})
}
