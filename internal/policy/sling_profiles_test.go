package policy_test

import (
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// TestSlingLimitsByProfile: figures of 29 CFR and ASME B30.9 beside those of
// EN 13414-1 and DGUV 109-005; each rule's citations say which was read.
func TestSlingLimitsByProfile(t *testing.T) {
	packs := map[string]*policy.Pack{"us": builtin(t, "us"), "eu": builtin(t, "eu")}
	const met = finding.Severity("")
	rope := func(change func(*facts.Rope)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.Ropes[0]) }
	}
	for _, c := range []struct {
		name, rule string
		change     func(*facts.Document)
		us, eu     finding.Severity
	}{
		{"5.9 mm", "sling/rope_too_thin", rope(func(r *facts.Rope) { r.DiameterM = ptr(0.0059) }), finding.Warning, finding.Error},
		{"1/4 in", "sling/rope_too_thin", rope(func(r *facts.Rope) { r.DiameterM = ptr(0.00635) }), met, finding.Error},
		{"8 mm", "sling/rope_too_thin", rope(func(r *facts.Rope) { r.DiameterM = ptr(0.008) }), met, met},
		{"under what practice asks for", "sling/body_too_short", rope(func(r *facts.Rope) { r.ClearRopeD, r.LeastClearRopeD = ptr(14.9), ptr(15.0) }), finding.Error, finding.Error},
		{"as much as practice asks for", "sling/body_too_short", rope(func(r *facts.Rope) { r.ClearRopeD, r.LeastClearRopeD = ptr(15.0), ptr(15.0) }), met, met},
		{"fiber core at 83 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC, r.Core = ptr(83.0), "fiber" }), finding.Error, met},
		{"fiber core at 101 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC, r.Core = ptr(101.0), "fiber" }), finding.Error, finding.Error},
		{"unknown core at 101 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC, r.Core = ptr(101.0), "not_given" }), finding.Error, finding.Error},
		{"steel core at 150 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC, r.Sleeves = ptr(150.0), []string{"not_given"} }), met, met},
		{"aluminum sleeves at 151 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC, r.Sleeves = ptr(151.0), []string{"aluminum"} }), finding.Error, finding.Error},
		{"steel sleeves at 205 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC = ptr(205.0) }), finding.Error, met},
		{"steel sleeves at 401 C", "sling/temperature", rope(func(r *facts.Rope) { r.HighestC = ptr(401.0) }), finding.Error, finding.Error},
		{"-41 C", "sling/temperature", rope(func(r *facts.Rope) { r.LowestC = ptr(-41.0) }), finding.Error, finding.Error},
		{"bridle's tag without what it is for", "tag/missing_or_incomplete", bridleTag("maker", "serial", "diameter", "rated_load", "angle_from_horizontal", "legs"), finding.Error, finding.Error},
		{"bridle's tag without serial and diameter", "tag/missing_or_incomplete", bridleTag("maker", "rated_load", "rated_for", "angle_from_horizontal", "legs"), finding.Error, finding.Error},
		{"webbing with a factor of 6", "tag/design_factor_low", func(d *facts.Document) { d.Gear[0].Kind, d.Gear[0].Tag.DesignFactor = "web_sling", ptr(6.0) }, met, finding.Error},
		{"mesh in a basket without a rating for it", "tag/hitch_rating_missing", meshTag("basket", "maker", "width", "rated_load"), met, finding.Error},
		{"mesh in a choke without a rating for it", "tag/hitch_rating_missing", meshTag("choke", "maker", "width", "rated_load"), met, finding.Error},
		{"mesh without a rating for every hitch", "tag/missing_or_incomplete", meshTag("basket", "maker", "width", "basket_rated_load"), finding.Error, met},
		{"bridle's tag without a hitch", "tag/missing_or_incomplete", bridleTag("maker", "serial", "diameter", "rated_load", "rated_for", "angle_from_horizontal", "legs"), met, met},
	} {
		for profile, want := range map[string]finding.Severity{"us": c.us, "eu": c.eu} {
			d := level()
			c.change(d)
			v := judge(t, packs[profile], d)[c.rule]
			got := met
			if o := v.Outcomes[0]; o.State != policy.Met {
				got = v.Rule.SeverityOf(o, policy.Review)
			}
			if got != want {
				t.Errorf("%s, %s: %q, want %q", c.name, profile, got, want)
			}
		}
	}
}

// meshTag makes the first sling one of mesh in a hitch, whose tag shows the fields.
func meshTag(hitch string, shows ...string) func(*facts.Document) {
	return func(d *facts.Document) {
		d.Gear[0].Kind, d.Gear[0].Hitches, d.Gear[0].Tag.Shows = "mesh_sling", []string{hitch}, shows
	}
}

// bridleTag makes the first sling a bridle whose tag shows the fields.
func bridleTag(shows ...string) func(*facts.Document) {
	return func(d *facts.Document) { d.Gear[0].Kind, d.Gear[0].Tag.Shows = "bridle", shows }
}

// TestNoTagFieldOfABridleIsBothRequiredAndUseful: one that is missing would be
// found twice.
func TestNoTagFieldOfABridleIsBothRequiredAndUseful(t *testing.T) {
	for _, name := range []string{"us", "eu"} {
		d := level()
		bridleTag()(d)
		got := judge(t, builtin(t, name), d)
		seen := map[string]bool{}
		for _, id := range []string{"tag/missing_or_incomplete", "tag/useful_fields_missing"} {
			for _, field := range got[id].Outcomes[0].Names {
				if seen[field] {
					t.Errorf("%s: %s is required and useful", name, field)
				}
				seen[field] = true
			}
		}
		if len(seen) < 6 {
			t.Errorf("%s: only %v are missing of an empty tag", name, seen)
		}
	}
}

// TestPartsOfABridleAreNotJudgedTwice: its tag and inspection are judged once,
// on the bridle.
func TestPartsOfABridleAreNotJudgedTwice(t *testing.T) {
	d := level()
	d.Gear[0].TaggedWithBridle, d.Gear[0].InspectedWithBridle = true, true
	d.Gear[0].Tag.State, d.Gear[0].Inspection.OverdueDays = "not_recorded", ptr(9.0)
	got := judge(t, builtin(t, "us"), d)
	for _, id := range []string{"tag/missing_or_incomplete", "inspection/overdue", "inspection/due_soon"} {
		for _, o := range got[id].Outcomes {
			if o.Subject.Key == d.Gear[0].Key {
				t.Errorf("%s judges a part of a bridle: %s", id, o.State)
			}
		}
	}
}
