package remedy

import (
	"fmt"
	"strings"
)

// strongerInsert names the least breaking load of an insert in concrete, or of
// the hardware in it: the pull on it times the factor that is asked for.
func (m *Mender) strongerInsert(a ask) (string, bool) {
	pull, ok := a.number("pull_n")
	if !ok || pull <= 0 || a.limit <= 0 {
		return "", false
	}
	what := "an insert"
	if strings.HasPrefix(a.measured, "hardware_") {
		what = "lifting hardware"
	}
	text := fmt.Sprintf("%s that holds at least %s in the direction of the pull", what, m.ratedText(pull*a.limit, ceilTo))
	if angle, ok := a.number("pull_angle_from_horizontal_deg"); !ok || angle < steepDeg {
		text += ", or less pull on it: steeper legs"
	}
	return text, true
}
