package remedy

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"liftlint/internal/quantity"
)

// strongerIntermediateLink names the least rated load of a link for the legs of
// its bridle: one leg's times the ratio that is asked for.
func (m *Mender) strongerIntermediateLink(a ask) (string, bool) {
	return m.atLeast(a, "one_leg_rated_n", "intermediate links rated for at least %s each, or a bridle that is tagged for less")
}

// strongerMasterLink does so for the whole bridle.
func (m *Mender) strongerMasterLink(a ask) (string, bool) {
	return m.atLeast(a, "assembly_rated_n", "a master link rated for at least %s, or a bridle that is tagged for less")
}

// strongerLowerFitting does so for what is below one leg.
func (m *Mender) strongerLowerFitting(a ask) (string, bool) {
	return m.atLeast(a, "one_leg_rated_n", "shackles or hooks rated for at least %s below each leg")
}

func (m *Mender) atLeast(a ask, field, format string) (string, bool) {
	force, ok := a.number(field)
	if !ok || a.limit <= 0 {
		return "", false
	}
	return fmt.Sprintf(format, m.ratedText(force*a.limit, ceilTo)), true
}

// ratedText words a rated load as tags show it, rounded to 0.01 t or 10 lb.
func (m *Mender) ratedText(newtons float64, round func(x, step float64) float64) string {
	massKg := newtons / quantity.StandardGravity
	if m.units == quantity.US {
		const poundKg = 0.45359237 // exact, NIST SP 811
		return plain(round(massKg/poundKg, 10), 0) + " lb"
	}
	return plain(round(massKg/1000, 0.01), 2) + " t"
}

// plain words a number with so many decimal places at most, and no zeros at
// their end.
func plain(x float64, places int) string {
	text := strconv.FormatFloat(x, 'f', places, 64)
	if places > 0 {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

// downTo rounds down to a multiple of the step. What lies under one by less
// than rounding counts as that one.
func downTo(x, step float64) float64 { return math.Floor(x/step+1e-9) * step }
