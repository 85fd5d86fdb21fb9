package compute_test

import (
	"testing"

	"liftlint/internal/compute"
	"liftlint/internal/quantity"
)

// TestBridleWithLegsLeftUnused: by European practice three of four legs may carry
// what the tag says, two two thirds of it and one a third: EN 818-6 (from memory).
// Where statics rates the legs, their number does.
func TestBridleWithLegsLeftUnused(t *testing.T) {
	const tagT = 7.8
	for _, c := range []struct {
		name  string
		cond  compute.Conditions
		used  int
		wantT float64
	}{
		{"all of four", europe(), 4, tagT},
		{"three of four", europe(), 3, tagT},
		{"three of four, by statics", conditions(), 3, tagT},
	} {
		t.Run(c.name, func(t *testing.T) {
			v := rulesBase(t, "bridle")
			for i := 3; i >= c.used; i-- {
				v = park(v, i)
			}
			f, _ := compute.Facts(decode(t, v.text()), c.cond)
			near(t, "marked_load_n", figure(t, f, "part/hook/B1", "marked_load_n"), c.wantT*1000*quantity.StandardGravity, 1e-6)
		})
	}
}
