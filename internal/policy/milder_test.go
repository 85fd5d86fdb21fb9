package policy_test

import (
	"testing"

	"liftlint/internal/policy"
)

// TestMilderWay of parameters: that of a limit is known, that of what is read in
// another way is not.
func TestMilderWay(t *testing.T) {
	pack := builtin(t, "us")
	ways := map[string]int{}
	for _, r := range pack.Rules() {
		for _, p := range r.Params {
			ways[r.ID+" "+p.Name] = p.Milder
		}
	}
	for name, want := range map[string]int{
		"angle/leg_too_flat error_deg":    -1, // a leg is too flat under it
		"load/over_rated_load over_ratio": 1,  // a part is overloaded over it
		"load/over_rated_load near_ratio": 1,
	} {
		if got, ok := ways[name]; !ok || got != want {
			t.Errorf("%s: %d, not %d", name, got, want)
		}
	}
	known := 0
	for _, way := range ways {
		if way != 0 {
			known++
		}
	}
	if known*2 < len(ways) {
		t.Errorf("of %d of %d parameters the way is known", known, len(ways))
	}
}

// TestMilderWayNotKnown where a condition says the opposite of another, or reads the
// parameter otherwise.
func TestMilderWayNotKnown(t *testing.T) {
	for condition, want := range map[string]int{
		"leg.angle_from_horizontal_deg < p.minimum_deg":                                                -1,
		"p.minimum_deg > leg.angle_from_horizontal_deg":                                                -1,
		"not leg.angle_from_horizontal_deg >= p.minimum_deg":                                           -1,
		"leg.angle_from_horizontal_deg > p.minimum_deg":                                                1,
		"leg.angle_from_horizontal_deg * 2 < p.minimum_deg":                                            -1,
		"leg.angle_from_horizontal_deg < p.minimum_deg * 2":                                            0,
		"leg.angle_from_horizontal_deg < p.minimum_deg\n\tleg.angle_from_vertical_deg > p.minimum_deg": 0,
		"leg.angle_from_horizontal_deg == p.minimum_deg":                                               0,
	} {
		got, err := wayOf(condition)
		if err != nil || got != want {
			t.Errorf("%s: %d, %v, not %d", condition, got, err, want)
		}
	}
}

func wayOf(condition string) (int, error) { return policy.MilderWay(condition, "minimum_deg") }
