package policy_test

import (
	"context"
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/facts"
	"liftlint/internal/policy"
)

// expressions that rules may be made of: plain ones, and ones that hide a
// field behind not, a name, a list or a comprehension.
func expressions() []string {
	return []string{
		"leg.angle_from_horizontal_deg < 30",
		"leg.slack == true",
		"leg.slack",
		"leg.slack != false",
		"not leg.slack == false",
		"not leg.slack",
		"not leg.tension_n < 1000",
		"leg.tension_n >= 1000",
		"x := leg.tension_n\n\tx > 2000",
		"y := leg.slack\n\tnot y == false",
		"z := leg.length_m + 1\n\tabs(z) > 2",
		"leg.judged_by in {\"own_force\"}",
		"not leg.judged_by in {\"legs_counted\"}",
		"not \"own_force\" == leg.judged_by",
		"count([1 | leg.slack == false]) == 0",
		"count({v | some v in [leg.tension_n, leg.length_m]; v > 1500}) > 0",
		"some v in [leg.tension_n, 0]\n\tv > 1500",
		"some w in {leg.judged_by}\n\tw == \"own_force\"",
		"l := [leg.slack]\n\ttrue in l",
		"leg.tension_n * 2 > leg.tension_judged_n",
		"leg.tension_judged_n - leg.tension_n > 100",
		"not leg.tension_n < leg.tension_judged_n",
		"startswith(leg.judged_by, \"own\")",
		"not startswith(leg.judged_by, \"legs\")",
		"leg.split == \"settled_by_statics\"",
		"not leg.split == \"settled_by_stiffness\"",
	}
}

const generatedHead = `# METADATA
# title: Generated
# description: Made of random expressions.
# custom:
#   severity: error
#   over: legs
#   message: "leg {id}"
#   cite: [{document: common practice, basis: practice}]
package liftlint.rules.angle.bad

`

// Whatever rule is made of these expressions, it is refused when loaded, or no
// absent fact lets a record pass that broke it.
func TestNoRuleThatLoadsTakesAbsentForMet(t *testing.T) {
	loaded, refused, brokeAndMissed := 0, 0, 0
	// Most rules are met as they are: of three runs enough are broken.
	check := func(t *rapid.T) {
		p, text := generate(t)
		if p == nil {
			refused++
			return
		}
		loaded++
		leg := drawLeg(t)
		absent := rapid.SliceOfNDistinct(rapid.SampledFrom([]string{
			"slack", "angle_from_horizontal_deg", "tension_n", "tension_judged_n", "length_m", "judged_by",
		}), 1, 4, rapid.ID).Draw(t, "absent")
		whole, thinned := level(), level()
		whole.Legs, thinned.Legs = []facts.Leg{leg}, []facts.Leg{leg}
		for _, path := range absent {
			drop(thinned, "legs", 0, path)
		}
		before := judge(t, p, whole)["angle/bad"].Outcomes[0]
		after := judge(t, p, thinned)["angle/bad"].Outcomes[0]
		if before.State == policy.NotJudged {
			t.Fatalf("nothing is absent, and it misses %v\n%s", before.Missing, text)
		}
		if before.State != after.State && after.State != policy.NotJudged {
			t.Fatalf("was %s, without %v it is %s\n%s", before.State, absent, after.State, text)
		}
		if before.State == policy.Broken && after.State == policy.NotJudged {
			brokeAndMissed++
		}
	}
	for range 3 {
		rapid.Check(t, check)
	}
	if loaded < 20 || refused < 5 || brokeAndMissed < 3 {
		t.Errorf("loaded %d, refused %d, broken and then not judged %d: too few to tell", loaded, refused, brokeAndMissed)
	}
}

// generate draws a rule of one or two bodies; nil where it is refused.
func generate(t *rapid.T) (*policy.Pack, string) {
	text := generatedHead
	for range rapid.IntRange(1, 2).Draw(t, "bodies") {
		picked := rapid.SliceOfNDistinct(rapid.SampledFrom(expressions()), 1, 4, rapid.ID).Draw(t, "expressions")
		text += "finding contains leg.key if {\n\tsome leg in input.legs\n\t" + strings.Join(picked, "\n\t") + "\n}\n\n"
	}
	p, err := policy.Load(context.Background(), policy.Options{Sources: folder(map[string]string{"angle/bad/rule.rego": text})})
	var ps policy.Problems
	if err != nil && !errors.As(err, &ps) {
		t.Fatal(err)
	}
	return p, text
}

func drawLeg(t *rapid.T) facts.Leg {
	leg := level().Legs[0]
	leg.Slack = ptr(rapid.Bool().Draw(t, "slack"))
	leg.AngleFromHorizontalDeg = ptr(rapid.SampledFrom([]float64{20, 50}).Draw(t, "angle"))
	leg.TensionN = ptr(rapid.SampledFrom([]float64{500, 1600, 3000}).Draw(t, "tension"))
	leg.TensionJudgedN = ptr(rapid.SampledFrom([]float64{500, 1600, 3000}).Draw(t, "judged"))
	leg.LengthM = ptr(rapid.SampledFrom([]float64{0.5, 4}).Draw(t, "length"))
	leg.JudgedBy = ptr(rapid.SampledFrom([]string{"own_force", "legs_counted"}).Draw(t, "by"))
	leg.Split = rapid.SampledFrom([]string{"settled_by_statics", "settled_by_stiffness"}).Draw(t, "split")
	return leg
}
