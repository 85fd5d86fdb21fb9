package remedy

import (
	"fmt"
	"math"

	"liftlint/internal/quantity"
)

// higherRating names the least rated load, as used, that keeps a part within
// the limit: force over the share that is allowed, rounded up to what tags
// show.
func (m *Mender) higherRating(a ask) (string, bool) {
	load, ok := a.number("load_n")
	if !ok || a.limit <= 0 {
		return "", false
	}
	massKg := load / a.limit / quantity.StandardGravity
	least := fmt.Sprintf("%.2f t", ceilTo(massKg/1000, 0.01))
	if m.units == quantity.US {
		const poundKg = 0.45359237 // exact, NIST SP 811
		least = fmt.Sprintf("%.0f lb", ceilTo(massKg/poundKg, 10))
	}
	return "a part rated for at least " + least + " as used, or less force in it: steeper legs, or more of them", true
}

// ceilTo rounds up to a multiple of the step. What lies above one by less than
// rounding counts as that one.
func ceilTo(x, step float64) float64 { return math.Ceil(x/step-1e-9) * step }
