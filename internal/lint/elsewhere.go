package lint

import (
	"fmt"

	"liftlint/internal/finding"
)

// Elsewhere says of a finding that stands in a register of which item it is, and what
// that is in which plan: WR-103 (S1 in SQ-071, plans/a.lift.yaml). It is empty for one
// that stands in the plan, and for one that is about no item of a register.
func (r *Result) Elsewhere(f finding.Finding) string {
	if f.Place.File == r.File || r.Gear != nil {
		return ""
	}
	for _, x := range f.Related {
		for _, item := range r.items {
			if item.shown == "" || x.Place.File != r.File || x.Place.Range != item.place.Range {
				continue
			}
			plan := r.File
			if r.ID != "" {
				plan = r.ID + ", " + plan
			}
			return fmt.Sprintf("%s (%s in %s)", item.shown, item.id, plan)
		}
	}
	return ""
}
