package remedy

import (
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/facts"
	"liftlint/internal/quantity"
)

// TestRemediesOfFits: least and greatest widths by hand, in millimeters and in
// sixteenths of an inch.
func TestRemediesOfFits(t *testing.T) {
	fit := facts.ViewOf(facts.Fit{
		NeedsM: ptr(0.0195), RoomM: ptr(0.0251), BodyWidthM: ptr(0.0801), RopeDiameterM: ptr(0.0127),
	})
	bent := facts.ViewOf(facts.Hitch{SizeM: ptr(0.0075)})
	use := facts.ViewOf(facts.HookUse{WidestM: ptr(0.028)})
	for _, c := range []struct {
		name     string
		subject  facts.View
		measured string
		limit    float64
		metric   string
		us       string
	}{
		{"wider_hole", fit, "needs_m", 0.0251, "a hole of at least 20 mm, or a thinner part in it", "a hole of at least 13/16 in, or a thinner part in it"},
		// 0.8 x 25.1 mm is 20.08 mm; 13/16 in is 20.64 mm
		{"wider_hole", fit, "filled_ratio", 0.8, "a shackle with a pin of at least 21 mm, or a bush in the hole", "a shackle with a pin of at least 13/16 in, or a bush in the hole"},
		{"wider_jaw", fit, "needs_m", 0.0251, "a shackle with at least 20 mm there", "a shackle with at least 13/16 in there"},
		// 19.5 mm / 0.6 is 32.5 mm; 1-1/4 in is 31.75 mm
		{"wider_jaw", fit, "filled_ratio", 0.6, "spacers on the pin on both sides, or a shackle with a jaw of at most 32 mm", "spacers on the pin on both sides, or a shackle with a jaw of at most 1-1/4 in"},
		{"wider_link", fit, "needs_m", 0.0251, "a link or shackle of at least 20 mm inside width, or a link between that goes over the hook", "a link or shackle of at least 13/16 in inside width, or a link between that goes over the hook"},
		{"wider_opening", fit, "needs_m", 0.0251, "an opening of at least 20 mm, or a thinner part in it", "an opening of at least 13/16 in, or a thinner part in it"},
		{"wider_collector", fit, "needs_m", 0.0251, "at least 20 mm of clear width, or a wider link that gathers the legs", "at least 13/16 in of clear width, or a wider link that gathers the legs"},
		{"wider_throat", use, "widest_m", 0.025, "a hook with a throat of at least 28 mm, or something thinner in it", "a hook with a throat of at least 1-1/8 in, or something thinner in it"},
		{"wider_eye", fit, "body_width_m", 0.06, "an eye that lies at least 81 mm wide, a thimbled eye that fits, or a link between", "an eye that lies at least 3-3/16 in wide, a thimbled eye that fits, or a link between"},
		{"wider_thimble", fit, "body_width_m", 0.06, "a thimble of at least 81 mm inside, or a shackle or link between", "a thimble of at least 3-3/16 in inside, or a shackle or link between"},
		{"thimble_for_rope", fit, "thimble_over_rope_ratio", 1.03, "a thimble made for a rope of 12.7 mm", "a thimble made for a rope of 1/2 in"},
		{"thicker_body", fit, "bend_d", 2, "a body of at least 26 mm to bend round, or a thimble in the eye", "a body of at least 1 in to bend round, or a thimble in the eye"},
		// 3 and 6 times 7.5 mm are 22.5 and 45 mm; 7/8 in is 22.2 mm, 1-3/4 in 44.5 mm
		{"rounder_edge", bent, "body_over_rope_ratio", 6, "edges, or corner pieces over them, of at least 23 mm in radius", "edges, or corner pieces over them, of at least 15/16 in in radius"},
		{"thicker_round", bent, "body_over_rope_ratio", 6, "something of at least 45 mm to bend round, or a thinner sling", "something of at least 1-13/16 in to bend round, or a thinner sling"},
	} {
		for units, want := range map[quantity.System]string{quantity.Metric: c.metric, quantity.US: c.us} {
			got, ok := New(nil, conditions(), nil, units).Mend(c.name, c.subject, c.measured, c.limit)
			if !ok || got != want {
				t.Errorf("%s: %q, not %q", c.name, got, want)
			}
		}
	}
}

// TestNoWidthForAnUnknownOne: nothing is offered from what is not known.
func TestNoWidthForAnUnknownOne(t *testing.T) {
	m := New(nil, conditions(), nil, quantity.Metric)
	for _, name := range []string{"rounder_edge", "thicker_round", "thicker_body", "thimble_for_rope", "wider_collector", "wider_eye", "wider_hole", "wider_jaw", "wider_link", "wider_opening", "wider_thimble", "wider_throat"} {
		for _, measured := range []string{"needs_m", "filled_ratio"} {
			for _, subject := range []facts.View{facts.ViewOf(facts.Fit{}), facts.ViewOf(facts.HookUse{})} {
				if text, ok := m.Mend(name, subject, measured, 0.5); ok {
					t.Errorf("%s offers %q", name, text)
				}
			}
		}
	}
	if text, ok := m.Mend("wider_jaw", facts.ViewOf(facts.Fit{NeedsM: ptr(0.0001)}), "filled_ratio", 0.9); ok {
		t.Errorf("a jaw of nothing: %q", text)
	}
}

// TestWidthsOfferedAreEnough: what is offered keeps the limit, and a step less
// or more does not.
func TestWidthsOfferedAreEnough(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		units := rapid.SampledFrom([]quantity.System{quantity.Metric, quantity.US}).Draw(rt, "units")
		m := New(nil, conditions(), nil, units)
		width := rapid.Float64Range(0.005, 0.2).Draw(rt, "width")
		limit := rapid.Float64Range(0.3, 1).Draw(rt, "limit")
		step := m.fine()
		offered := func(name, measured string, f facts.Fit, before string) float64 {
			text, ok := m.Mend(name, facts.ViewOf(f), measured, limit)
			if !ok {
				rt.Fatalf("%s offers nothing", name)
			}
			return length(t, text, before)
		}
		const rounding = 5e-7 // as far as a step in print is off
		hole := offered("wider_hole", "needs_m", facts.Fit{NeedsM: &width}, `a hole of at least`)
		if hole < width-rounding || hole-step >= width {
			rt.Fatalf("a hole of %g m for %g m", hole, width)
		}
		pin := offered("wider_hole", "filled_ratio", facts.Fit{RoomM: &width}, `a pin of at least`)
		if pin/width < limit-1e-4 || (pin-step)/width >= limit {
			rt.Fatalf("a pin of %g m in a hole of %g m for %g", pin, width, limit)
		}
		jaw := offered("wider_jaw", "filled_ratio", facts.Fit{NeedsM: &width}, `a jaw of at most`)
		if width/jaw < limit-1e-4 || width/(jaw+step) >= limit {
			rt.Fatalf("a jaw of %g m for a plate of %g m and %g", jaw, width, limit)
		}
	})
}
