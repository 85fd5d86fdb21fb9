package compute

import (
	"maps"
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// alone lists the collections that gear by itself has records in, each with the
// fields that only a plan gives. The number of uses is taken to be one.
var alone = map[string][]string{
	"gear": {
		"hitches", "outside_range_m", "pin_turned_by", "chain_held", "steel_against_chain",
		"temperature_given", "lowest_c", "highest_c",
	},
	"on_file":          nil,
	"signs":            nil,
	"doubtful_records": nil,
	"ropes":            {"temperature_given", "lowest_c", "highest_c"},
}

// Alone reports whether gear by itself has records in a collection, and lists the
// fields of those, dotted, that only a plan gives.
func Alone(collection string) (onlyInPlan []string, ok bool) {
	onlyInPlan, ok = alone[collection]
	return slices.Clone(onlyInPlan), ok
}

// AloneCollections lists the collections that gear by itself has records in, in
// order.
func AloneCollections() []string { return slices.Sorted(maps.Keys(alone)) }

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
	w.ropesOf(items)
	w.out.Document.Finish()
	return w.out
}

// ropesOf describes the rope of each sling among items.
func (w *work) ropesOf(items []gear.Item) {
	part := w.partOf()
	for _, item := range items {
		if s, ok := item.(*gear.WireRopeSling); ok {
			w.out.Document.Ropes = append(w.out.Document.Ropes, w.rope(s, part[s.ID] != nil))
		}
	}
}
