package remedy

import (
	"regexp"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// TestStrongerFittingIsStrongEnoughAndNoStronger takes the rated load offered,
// and one a step less, back to the ratio that is judged.
func TestStrongerFittingIsStrongEnoughAndNoStronger(t *testing.T) {
	number := regexp.MustCompile(`at least ([0-9.]+) (t|lb)`)
	rapid.Check(t, func(rt *rapid.T) {
		units := rapid.SampledFrom([]quantity.System{quantity.Metric, quantity.US}).Draw(rt, "units")
		name := rapid.SampledFrom([]string{"stronger_intermediate_link", "stronger_master_link", "stronger_lower_fitting"}).Draw(rt, "remedy")
		limit := float64(rapid.IntRange(100, 200).Draw(rt, "percent")) / 100
		force := float64(rapid.IntRange(1000, 1000000).Draw(rt, "N"))
		b := facts.Bridle{OneLegRatedN: ptr(force), AssemblyRatedN: ptr(force)}
		text, ok := New(nil, conditions(), nil, units).Mend(name, facts.ViewOf(b), "", limit)
		found := number.FindStringSubmatch(text)
		if !ok || found == nil {
			rt.Fatalf("%q", text)
		}
		offered, _ := strconv.ParseFloat(found[1], 64)
		unitN, step := 1000*quantity.StandardGravity, 0.01
		if found[2] == "lb" {
			unitN, step = 0.45359237*quantity.StandardGravity, 10 // the pound: NIST SP 811
		}
		if facts.Round(offered*unitN/force) < limit {
			rt.Fatalf("%q is %g of %g N", text, offered*unitN/force, force)
		}
		if facts.Round((offered-step)*unitN/force) >= limit {
			rt.Fatalf("%q: a step less is enough for %g N", text, force)
		}
	})
}

func TestWhichForceAFittingIsHeldAgainst(t *testing.T) {
	b := facts.Bridle{OneLegRatedN: ptr(1000 * quantity.StandardGravity), AssemblyRatedN: ptr(2100 * quantity.StandardGravity)}
	m := New(nil, conditions(), nil, quantity.Metric)
	for name, want := range map[string]string{
		"stronger_intermediate_link": "intermediate links rated for at least 1.6 t each, or a bridle that is tagged for less",
		"stronger_master_link":       "a master link rated for at least 3.36 t, or a bridle that is tagged for less",
		"stronger_lower_fitting":     "shackles or hooks rated for at least 1.6 t below each leg",
	} {
		if text, ok := m.Mend(name, facts.ViewOf(b), "", 1.6); !ok || text != want {
			t.Errorf("%s: %q", name, text)
		}
		if text, ok := m.Mend(name, facts.ViewOf(facts.Bridle{}), "", 1.6); ok {
			t.Errorf("%s of an unknown rating: %q", name, text)
		}
	}
}
