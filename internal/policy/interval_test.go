package policy_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

func layer(name string, intervals ...policy.Interval) policy.Layer {
	return policy.Layer{Name: name, Intervals: intervals}
}

// sixMonths is what the Lifting Operations and Lifting Equipment Regulations 1998,
// regulation 9(3)(a)(i), ask for accessories for lifting in the United Kingdom; the
// text is from memory.
var sixMonths = policy.Interval{Service: "normal", Months: 6, Citations: []finding.Citation{{Document: "LOLER 1998", Clause: "regulation 9(3)(a)(i)", Basis: finding.Memory}}}

func TestShortenedForAllGear(t *testing.T) {
	for _, name := range []string{"us", "eu"} {
		before := profile(t, name)
		p, overrides, ps := before.Shortened([]policy.Layer{layer("site/liftlint.yaml", sixMonths)})
		if len(ps) > 0 {
			t.Fatal(ps)
		}
		for _, kind := range []string{"wire_rope_sling", "chain_sling", "web_sling", "round_sling", "mesh_sling", "bridle", "shackle", "master_link", "hook", "spreader_beam"} {
			if was, _ := before.IntervalMonths(kind, "normal"); was != 12 {
				t.Errorf("%s: %s was inspected every %d months", name, kind, was)
			}
			if m, ok := p.IntervalMonths(kind, "normal"); !ok || m != 6 {
				t.Errorf("%s: %s is inspected every %d months", name, kind, m)
			}
			for _, service := range []string{"severe", "special"} { // those were shorter, or none
				was, had := before.IntervalMonths(kind, service)
				if m, ok := p.IntervalMonths(kind, service); m != was || ok != had {
					t.Errorf("%s: %s in %s service: %d %v, was %d %v", name, kind, service, m, ok, was, had)
				}
			}
		}
		want := []policy.Override{{Rule: "inspection/overdue", What: "interval in normal service of all gear", From: "site/liftlint.yaml", Was: "12 months",
			Is: "6 months, by LOLER 1998, regulation 9(3)(a)(i) (from memory: confirm before relying on it)"}}
		if diff := cmp.Diff(want, overrides); diff != "" {
			t.Errorf("%s: %s", name, diff)
		}
		if again, _, _ := p.Shortened(nil); again.Name == name {
			if m, _ := again.IntervalMonths("hook", "normal"); m != 12 {
				t.Errorf("without configurations the profile's %d months hold", m)
			}
		}
		if _, twice, _ := p.Shortened([]policy.Layer{layer("site/liftlint.yaml", sixMonths)}); !cmp.Equal(twice, overrides) {
			t.Errorf("of a profile that is shortened already: %v", twice)
		}
	}
}

// TestShortenedStepByStep: a nearer configuration goes on from the one above it,
// and no harder service goes longer than normal service.
func TestShortenedStepByStep(t *testing.T) {
	p, overrides, ps := profile(t, "us").Shortened([]policy.Layer{
		layer("company", sixMonths),
		layer("site", policy.Interval{Kinds: []string{"web_sling", "hook"}, Service: "normal", Months: 2}, policy.Interval{Kinds: []string{"chain_sling"}, Service: "severe", Months: 1}),
		layer("again", policy.Interval{Service: "normal", Months: 6}),
	})
	if len(ps) > 0 {
		t.Fatal(ps)
	}
	for _, c := range []struct {
		kind, service string
		months        int
	}{
		{"web_sling", "normal", 2}, {"hook", "normal", 2}, {"shackle", "normal", 6},
		{"web_sling", "severe", 2}, // three months by the profile
		{"round_sling", "severe", 3},
		{"chain_sling", "severe", 1},
		{"web_sling", "special", 0},
	} {
		if m, ok := p.IntervalMonths(c.kind, c.service); m != c.months || ok != (c.months > 0) {
			t.Errorf("%s in %s service: %d, want %d", c.kind, c.service, m, c.months)
		}
	}
	var told []string
	for _, o := range overrides {
		told = append(told, o.From+": "+o.What+": "+o.Is+" instead of "+o.Was)
	}
	want := []string{
		"company: interval in normal service of all gear: 6 months, by LOLER 1998, regulation 9(3)(a)(i) (from memory: confirm before relying on it) instead of 12 months",
		"site: interval in normal service of web_sling, hook: 2 months instead of 6 months",
		"site: interval in severe service of chain_sling: 1 month instead of 3 months",
	}
	if diff := cmp.Diff(want, told); diff != "" {
		t.Error(diff)
	}
}

// TestSomeWithinAll: what a configuration says of some kinds shortens what it says of
// all, in whichever order they stand.
func TestSomeWithinAll(t *testing.T) {
	all, some := policy.Interval{Service: "normal", Months: 6}, policy.Interval{Kinds: []string{"web_sling"}, Service: "normal", Months: 3}
	for _, entries := range [][]policy.Interval{{all, some}, {some, all}} {
		p, _, ps := profile(t, "eu").Shortened([]policy.Layer{layer("company", entries...)})
		web, _ := p.IntervalMonths("web_sling", "normal")
		hook, _ := p.IntervalMonths("hook", "normal")
		if len(ps) > 0 || web != 3 || hook != 6 {
			t.Errorf("webbing every %d months, hooks every %d: %v", web, hook, ps)
		}
	}
}

// TestNeverLengthened: what would lengthen an interval, or set one where the day
// counts that an inspector sets, is refused and changes nothing.
func TestNeverLengthened(t *testing.T) {
	for _, c := range []struct {
		name string
		set  []policy.Interval
		says string
	}{
		{"longer than the profile", []policy.Interval{{Kinds: []string{"shackle"}, Service: "normal", Months: 13}}, "shackle in normal service is inspected every 12 months already: a configuration can only shorten that"},
		{"longer for all", []policy.Interval{{Service: "normal", Months: 24}}, "gear in normal service is inspected every 12 months already, at the least"},
		{"longer than one above", []policy.Interval{{Kinds: []string{"hook"}, Service: "normal", Months: 3}, {Kinds: []string{"shackle"}, Service: "normal", Months: 8}}, "every 6 months already"},
		{"none in the profile", []policy.Interval{{Kinds: []string{"web_sling"}, Service: "special", Months: 1}}, "profile us gives no interval for web_sling in special service"},
		{"none in the profile, for all", []policy.Interval{{Service: "special", Months: 1}}, "profile us gives no interval in special service, where the day counts"},
		{"twice", []policy.Interval{{Kinds: []string{"hook"}, Service: "normal", Months: 3}, {Kinds: []string{"hook"}, Service: "normal", Months: 2}}, "hook in normal service has an interval here already"},
		{"for some longer than for all", []policy.Interval{{Kinds: []string{"hook"}, Service: "normal", Months: 5}, {Service: "normal", Months: 4}}, "hook in normal service is inspected every 4 months already"},
		{"no kind", []policy.Interval{{Kinds: []string{"shakle"}, Service: "normal", Months: 3}}, "\"shakle\" is no kind of gear: did you mean \"shackle\"?"},
	} {
		t.Run(c.name, func(t *testing.T) {
			layers := []policy.Layer{layer("company", sixMonths), layer("site", c.set...)}
			if strings.HasPrefix(c.name, "longer than the profile") || strings.HasSuffix(c.name, "for all") {
				layers = layers[1:]
			}
			_, _, ps := profile(t, "us").Shortened(layers)
			if len(ps) != 1 || !strings.Contains(ps[0].Message, c.says) {
				t.Error(ps)
			}
			if _, err := policy.Load(context.Background(), policy.Options{Sources: sources(), Profile: profile(t, "us"), Layers: layers}); err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("rules load: %v", err)
			}
		})
	}
}

// TestIntervalsAreTold: the rule that goes by intervals tells of those that are set.
func TestIntervalsAreTold(t *testing.T) {
	p, err := policy.Load(context.Background(), policy.Options{Sources: sources(), Profile: profile(t, "eu"), Layers: []policy.Layer{layer("site", sixMonths)}})
	if err != nil {
		t.Fatal(err)
	}
	if o := p.Overrides(); len(o) != 1 || o[0].Rule != "inspection/overdue" || o[0].Was != "12 months" || o[0].From != "site" {
		t.Errorf("%+v", o)
	}
}
