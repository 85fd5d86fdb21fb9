package policy_test

import (
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// TestSlidingBasketsByProfile: practice in the United States is to leave an inclined
// basket to who rigs it (common practice); DGUV 109-017 (read) wants it held.
func TestSlidingBasketsByProfile(t *testing.T) {
	packs := map[string]*policy.Pack{"us": builtin(t, "us"), "eu": builtin(t, "eu")}
	for _, c := range []struct {
		surface string
		us, eu  finding.Severity
	}{
		{"dry_steel", finding.Warning, finding.Error},
		{"wood", finding.Warning, finding.Error},
		{"wet_or_oily", finding.Error, finding.Error},
	} {
		for profile, want := range map[string]finding.Severity{"us": c.us, "eu": c.eu} {
			d := level()
			h := &d.Hitches[basketLevel]
			h.Surface, h.FrictionNeededRatio = c.surface, ptr(1.01)
			v := judge(t, packs[profile], d)["hitch/basket_slides_along"]
			if o := v.Outcomes[0]; o.State != policy.Broken || v.Rule.SeverityOf(o, policy.Review) != want {
				t.Errorf("%s, %s: %s, want %s", c.surface, profile, o.State, want)
			}
		}
	}
}

// TestOneFindingForASlidingBasket: on a load that is meant to be tilted the basket is
// found for that alone, whatever friction it needs.
func TestOneFindingForASlidingBasket(t *testing.T) {
	d := level()
	for i := range d.Hitches {
		h := &d.Hitches[i]
		h.LoadTilts, h.HeldAgainstSliding = true, false
		if h.FrictionNeededRatio != nil {
			h.FrictionNeededRatio = ptr(9.0)
		}
	}
	got := judge(t, builtin(t, "us"), d)
	if v := got["hitch/basket_slides_along"]; len(v.Outcomes) != 0 {
		t.Errorf("found beside: %v", v.Outcomes)
	}
	for _, o := range got["hitch/basket_on_tilted_load"].Outcomes {
		if o.State != policy.Broken {
			t.Errorf("%s is %s", o.Subject.Key, o.State)
		}
	}
	if n := len(got["hitch/basket_on_tilted_load"].Outcomes); n != 3 {
		t.Errorf("%d baskets round bodies judged, want 3", n)
	}
}

// TestWhichHitchesRulesPickOut: edges are judged where there are edges, what is bent
// round a body, a point or a sheave where there are none.
func TestWhichHitchesRulesPickOut(t *testing.T) {
	d := level()
	for i := range d.Hitches {
		d.Hitches[i].BodyOverRopeRatio = ptr(0.9)
	}
	got := judge(t, builtin(t, "us"), d)
	seen := map[string]int{}
	for _, rule := range []string{"bend/edge_unprotected", "bend/sling_round_thin_body"} {
		for _, o := range got[rule].Outcomes {
			if o.State == policy.Broken {
				seen[o.Subject.Key]++
			}
		}
	}
	for _, h := range d.Hitches {
		if want := map[bool]int{false: 1}[h.EdgesProtected]; seen[h.Key] != want {
			t.Errorf("%s on a %s has %d findings, want %d", h.Key, h.On, seen[h.Key], want)
		}
	}
}
