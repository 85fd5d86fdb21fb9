package compute

import (
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// hooksOfBridles tells of each hook that hangs straight from a leg of a bridle, and from
// nothing else, which bridle that is: whoever inspects the bridle inspects the hooks at
// the ends of its legs too (common practice). A hook with a record of its own on file is
// an item of its own.
func (w *work) hooksOfBridles() map[string]*gear.Bridle {
	part, elsewhere := map[string]*gear.Bridle{}, map[string]bool{}
	for _, s := range w.plan.Supports {
		for _, leg := range slices.Concat(s.Legs, s.Parked) {
			for n, u := range leg.Down {
				if u.Item.Base().Kind != gear.HookKind {
					continue
				}
				id := u.Item.Base().ID
				b := bridleAbove(s, leg, n)
				if b == nil || w.cond.OnFile[id] != nil || part[id] != nil && part[id] != b {
					elsewhere[id] = true
				}
				part[id] = b
			}
		}
	}
	for id := range elsewhere {
		delete(part, id)
	}
	return part
}

// bridleAbove is the bridle a leg of which the n-th part of a leg hangs from directly; nil
// for none.
func bridleAbove(s plan.Support, leg plan.Leg, n int) *gear.Bridle {
	if s.Bridle == nil || n == 0 {
		return nil
	}
	b := s.Bridle.Bridle
	if slices.ContainsFunc(b.Legs(), func(l gear.BridleLeg) bool { return l.Sling == leg.Down[n-1].Item }) {
		return b
	}
	return nil
}
