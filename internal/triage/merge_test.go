package triage

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/finding"
)

// TestBaselineOnlyShrinks: written anew, a baseline sets nothing aside that it did
// not before, and with it every entry occurs; to grow it takes in all of today.
func TestBaselineOnlyShrinks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		then, now := drawFindings(t), drawFindings(t)
		old, _ := taken(then)
		_, today := taken(now)
		known := func(b *Baseline, fs []finding.Finding) (keys []string) {
			for _, f := range Run(slices.Clone(fs), Known(b, "p", plain())) {
				if f.Aside != nil {
					keys = append(keys, f.Rule+" "+f.Key)
				}
			}
			return keys
		}
		m, err := old.Merge([]KnownPlan{today}, false, func(string) bool { return true })
		if err != nil {
			t.Fatal(err)
		}
		if !slices.Equal(known(m.Baseline, now), known(old, now)) {
			t.Fatalf("%v is known, and was %v", known(m.Baseline, now), known(old, now))
		}
		for _, key := range known(m.Baseline, then) {
			if !slices.Contains(known(old, then), key) {
				t.Fatalf("%s has come in", key)
			}
		}
		for _, k := range m.Baseline.plan("p").Findings {
			if !slices.ContainsFunc(now, func(f finding.Finding) bool { return f.Rule == k.Rule && f.Key == k.Key }) {
				t.Fatalf("%s on %s is kept and no longer occurs", k.Rule, k.Key)
			}
		}
		if n := len(today.Findings) - len(known(old, now)); m.LeftOut != n {
			t.Fatalf("%d left out, not %d", m.LeftOut, n)
		}
		grown, err := old.Merge([]KnownPlan{today}, true, nil)
		if err != nil {
			t.Fatal(err)
		}
		if n := len(known(grown.Baseline, now)); n != len(today.Findings) || grown.LeftOut != 0 {
			t.Fatalf("%d of %d are known, %d left out", n, len(today.Findings), grown.LeftOut)
		}
	})
}

// TestNearlyAsKnownStays as it was accepted: many small steps do not add up.
func TestNearlyAsKnownStays(t *testing.T) {
	f := func(v float64) []finding.Finding {
		return []finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error, Measured: figure(v), Limit: figure(30)}}
	}
	b, _ := taken(f(29.19))
	for _, v := range []float64{29.18, 29.16} {
		_, today := taken(f(v))
		m, err := b.Merge([]KnownPlan{today}, false, nil)
		if err != nil || m.LeftOut != 0 || m.Baseline.plan("p").Findings[0].Measured.Value != 29.19 {
			t.Errorf("%+v, %v", m, err)
		}
		b = m.Baseline
	}
	_, today := taken(f(29.1))
	if m, _ := b.Merge([]KnownPlan{today}, false, nil); m.LeftOut != 1 {
		t.Errorf("%+v", m)
	}
}

// TestOtherPlans stay in the baseline as long as there are such plans.
func TestOtherPlans(t *testing.T) {
	old, _ := taken([]finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error}})
	for there, want := range map[bool]int{true: 1, false: 0} {
		m, err := old.Merge(nil, false, func(file string) bool { return there && file == "p" })
		if err != nil || len(m.Baseline.Plans) != want || m.Dropped != 1-want {
			t.Errorf("%v: %+v, %v", there, m, err)
		}
	}
	if _, err := old.Merge([]KnownPlan{{File: "p", Profile: "eu"}}, true, nil); !errors.Is(err, ErrOther) {
		t.Error(err)
	}
	if err := old.FitsStage("prelift"); !errors.Is(err, ErrOther) {
		t.Error(err)
	}
	if err := errors.Join(old.FitsStage("review"), old.Fits("p", "us"), old.Fits("q", "eu")); err != nil {
		t.Error(err)
	}
}

// TestNoBaseline: what is not whole is refused, never read as one with less in it.
func TestNoBaseline(t *testing.T) {
	b, _ := taken([]finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error, Measured: figure(2)}})
	_, text := again(t, b)
	whole := string(text)
	for name, broken := range map[string]string{
		"empty":          "",
		"cut":            whole[:len(whole)/2],
		"more behind":    whole + "{}",
		"version":        strings.Replace(whole, `"version": 1`, `"version": 2`, 1),
		"unknown key":    strings.Replace(whole, `"stage"`, `"stages"`, 1),
		"severity":       strings.Replace(whole, `"error"`, `"fatal"`, 1),
		"other subject":  strings.Replace(whole, `"k1"`, `"k2"`, 1),
		"no profile":     strings.Replace(whole, `"us"`, `""`, 1),
		"no fingerprint": strings.Replace(whole, `"fingerprint"`, `"Xingerprint"`, 1),
		"huge number":    strings.Replace(whole, `"value":2`, `"value":1e999`, 1),
	} {
		if broken == whole {
			t.Fatalf("%s: nothing is changed", name)
		}
		if _, err := ReadBaseline("known.json", []byte(broken)); err == nil || !strings.Contains(err.Error(), "known.json is no baseline") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func FuzzReadBaseline(f *testing.F) {
	b, _ := taken([]finding.Finding{{Rule: "a/plain", Key: "k1", Severity: finding.Error, Measured: figure(2)}})
	text, err := b.Text()
	if err != nil {
		f.Fatal(err)
	}
	f.Add(text)
	f.Add([]byte(`{"version":1,"stage":"review","plans":[]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		b, err := ReadBaseline("known.json", text)
		if err != nil {
			return
		}
		again(t, b)
	})
}
