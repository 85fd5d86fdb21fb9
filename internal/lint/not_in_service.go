package lint

import "liftlint/internal/register"

// NotInService counts the items that the register itself keeps from being used.
func NotInService(r *register.Register) int {
	n := 0
	for i := range r.Items {
		if !usable(&r.Items[i]) {
			n++
		}
	}
	return n
}
