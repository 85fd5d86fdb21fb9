package compute_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/plangen"
)

// byProduct holds the rated load of every part to that marked times all its
// factors, and every factor to a part.
func byProduct(f *facts.Facts) error {
	left, used := map[string]float64{}, 0
	for _, x := range f.Document.Factors {
		if _, ok := left[x.Part]; !ok {
			left[x.Part] = 1
		}
		left[x.Part] *= x.Ratio
		if x.Ratio > 1 && x.What != "parts" {
			return fmt.Errorf("%s leaves %g", x.Key, x.Ratio)
		}
	}
	for _, p := range f.Document.Parts {
		product, ok := left[p.Key]
		if ok {
			used++
		} else {
			product = 1
		}
		switch {
		case p.RatedLoadN == nil && ok:
			return fmt.Errorf("%s has factors and no rated load", p.Key)
		case p.RatedLoadN == nil:
		case p.MarkedLoadN == nil || math.Abs(*p.RatedLoadN / *p.MarkedLoadN - product) > 1e-6:
			return fmt.Errorf("%s: rated over marked is not %g", p.Key, product)
		}
	}
	if used != len(left) {
		return fmt.Errorf("factors of %d parts, of which %d are listed", len(left), used)
	}
	return nil
}

// TestRatedIsMarkedTimesFactors in every situation, example and base, and in
// generated plans.
func TestRatedIsMarkedTimesFactors(t *testing.T) {
	seen := map[string]int{}
	hold := func(name string, f *facts.Facts) {
		if err := byProduct(f); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		for _, x := range f.Document.Factors {
			seen[x.What]++
		}
	}
	for name, make := range situations(t) {
		f, _ := make().compute(t)
		hold(name, f)
	}
	files, _ := filepath.Glob("../../examples/*.lift.yaml")
	bases, _ := filepath.Glob("../../policies/bases/*.lift.yaml")
	if len(files) < 10 || len(bases) < 5 {
		t.Fatalf("%d examples, %d bases", len(files), len(bases))
	}
	for _, file := range append(files, bases...) {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(string(text), "kind: "+plan.OnRegister) {
			continue // what the register says is put in its place before anything is computed
		}
		f, _ := computeText(t, string(text))
		hold(file, f)
	}
	for seed := range uint64(30) {
		f, _ := computeText(t, plangen.Arranged(seed))
		hold(fmt.Sprint("seed ", seed), f)
	}
	for _, what := range strings.Fields("choke_angle bend edge parts shackle_pull eyebolt_angle tag_angle temperature") {
		if seen[what] == 0 {
			t.Errorf("no part loses anything by %s", what)
		}
	}
}

// factor finds a factor by its part and what it comes from.
func factor(t testing.TB, f *facts.Facts, part, what string) facts.Factor {
	t.Helper()
	for _, x := range f.Document.Factors {
		if x.Part == part && x.What == what {
			return x
		}
	}
	t.Fatalf("%s has no factor by %s", part, what)
	return facts.Factor{}
}

// TestFactorsSayWhatTheyFollowFrom: a choke at 100 deg leaves 0.87 (trade tables,
// from 90 to 120 deg); a bend round 10 diameters leaves 1 - 0.5/sqrt 10 over
// that at the stated 25, the strength not being known (marine lifting guideline,
// read); one run of a basket carries half; up to 300 C a sling with steel core and
// sleeves keeps 0.75 (EN 13414-1, read in a reprint), a chain of grade 80 up to
// 500 F 0.90 (US trade tables).
func TestFactorsSayWhatTheyFollowFrom(t *testing.T) {
	f, _ := computeText(t, changed(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300", "station: 4 m", "station: 4 m, choke_angle: 100 deg"))
	x := factor(t, f, "part/hook/1/C", "choke_angle")
	near(t, "by the choke", x.Ratio, 0.87, 1e-9)
	near(t, "its angle", *x.AngleDeg, 100, 1e-3)

	f, _ = computeText(t, changed(t, inBaskets, "diameter: 600 mm", "diameter: 200 mm"))
	x = factor(t, f, "part/hook/1/W1", "bend")
	near(t, "by the bend", x.Ratio, (1-0.5/math.Sqrt(10))/(1-0.5/5), 1e-8)
	near(t, "over the rope", *x.BodyOverRatio, 10, 1e-9)
	x = factor(t, f, "part/hook/1/W1", "parts")
	if x.Ratio != 0.5 || *x.Parts != 2 {
		t.Errorf("%d parts leave %g", *x.Parts, x.Ratio)
	}

	hot := heated(rulesBase(t, "two_legs"), "280 C")
	for _, g := range []string{"0", "1"} {
		for _, end := range []string{"upper", "lower"} {
			hot.set("gear/"+g+"/eyes/"+end+"/sleeve", "steel")
		}
	}
	f, _ = compute.Facts(decode(t, hot.text()), europe())
	x = factor(t, f, "part/hook/1/S1", "temperature")
	near(t, "by heat", x.Ratio, 0.75, 1e-9)
	near(t, "as hot as", *x.TemperatureC, 280, 1e-9)
	if x.Basis != "read" || !strings.Contains(x.Source, "EN 13414-1") {
		t.Errorf("from %q, %s", x.Source, x.Basis)
	}

	f, _ = heated(rulesBase(t, "two_legs").withSlings(t, ofChain), "250 C").compute(t)
	x = factor(t, f, "part/hook/1/S1", "temperature")
	near(t, "chain by heat", x.Ratio, 0.9, 1e-9)
	if x.Basis != "practice" {
		t.Errorf("basis %s", x.Basis)
	}
}

// TestBeyondWhatHeatLeaves: where only the maker can say, nothing is rated, and what
// a rule finds is told already: cores and sleeves.
func TestBeyondWhatHeatLeaves(t *testing.T) {
	for _, c := range []struct {
		name, core, sleeve, highest string
		told                        bool
	}{
		{"fiber core", "fiber", "steel", "90 C", true},
		{"wire core", "iwrc", "steel", "210 C", true},
		{"aluminum", "iwrc", "aluminum", "160 C", true},
		{"no one says which", "iwrc", "", "160 C", true},
	} {
		v := heated(rulesBase(t, "two_legs"), c.highest).set("gear/0/core", c.core)
		for _, end := range []string{"upper", "lower"} {
			if c.sleeve != "" {
				v.set("gear/0/eyes/"+end+"/sleeve", c.sleeve)
			}
		}
		f, _ := v.compute(t)
		text, told := why(t, f, "part/hook/1/S1")
		if told != c.told || !strings.Contains(text, "S1 is not rated at its temperature") {
			t.Errorf("%s: %q, told %v", c.name, text, told)
		}
	}
	f, _ := heated(rulesBase(t, "two_legs"), "210 C").compute(t)
	if text, told := why(t, f, "part/hook/1/K1"); !told || !strings.Contains(text, "fittings") {
		t.Errorf("shackle: %q, told %v", text, told)
	}
	f, _ = heated(rulesBase(t, "two_legs").withSlings(t, changed(t, ofChain, "'80'", "'120'")), "210 C").compute(t)
	if text, _ := why(t, f, "part/hook/1/S1"); !strings.Contains(text, "chain of grade 120") {
		t.Errorf("grade 120: %q", text)
	}
	f, _ = heated(rulesBase(t, "two_legs").withSlings(t, changed(t, ofChain, "'80'", "'120'")), "60 C").compute(t)
	figure(t, f, "part/hook/1/S1", "rated_load_n")
}
