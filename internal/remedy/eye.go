package remedy

import (
	"fmt"
	"math"
	"strings"
)

// largerEye is the least inside length of an eye for the body it goes over:
// D / limit for the width over the length; D (1 + 1/sin(a/2)) / 2 for the
// included angle a, which is 2 asin(D / (2 Le - D)) turned round.
func (m *Mender) largerEye(a ask) (string, bool) {
	width, ok := a.number("body_width_m")
	if !ok || a.limit <= 0 {
		return "", false
	}
	least := width / a.limit
	if strings.HasSuffix(a.measured, "_deg") {
		least = width * (1 + 1/math.Sin(a.limit/2*math.Pi/180)) / 2
	}
	return fmt.Sprintf("an eye of at least %s inside length, a thimbled eye that fits, or a link between", m.upwards(least)), true
}
