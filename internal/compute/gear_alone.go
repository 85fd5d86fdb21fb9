package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// Gear computes what rules may ask of gear that is on file, without a plan that
// uses it: each item as if it were used once.
func Gear(items []gear.Item, c Conditions) *facts.Facts {
	p := &plan.Plan{Gear: items}
	w := &work{
		plan: p,
		cond: c,
		day:  c.Day(p),
		hung: &hang.Lift{},
		out:  &facts.Facts{Gaps: facts.Gaps{}, Related: map[string][]facts.Related{}},
	}
	w.lift()
	w.gear()
	for i := range w.out.Document.Gear {
		w.out.Document.Gear[i].Uses = 1
	}
	w.onFile()
	w.out.Document.Finish()
	return w.out
}
