package compute

import (
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/register"
)

// uses lists every place where a link, sling, fitting or beam works or hangs
// along: support by support, links first, then leg by leg; then the beams.
func (w *work) uses() []plan.Use {
	var list []plan.Use
	for _, s := range w.plan.Supports {
		list = append(list, usesOf(s)...)
	}
	for _, b := range w.plan.Beams {
		list = append(list, plan.Use{Pointer: b.Item.Pointer, Item: b.Item})
	}
	return list
}

// usesOf lists those of one support.
func usesOf(s plan.Support) []plan.Use {
	list := append(slices.Clone(s.By), intermediateLinks(s)...)
	for _, leg := range slices.Concat(s.Legs, s.Parked) {
		list = append(list, leg.Down...)
	}
	return list
}

// intermediateLinks lists those of a support's bridle, whether or not the legs
// on them are parked.
func intermediateLinks(s plan.Support) []plan.Use {
	if s.Bridle == nil {
		return nil
	}
	var list []plan.Use
	for _, g := range s.Bridle.Bridle.Groups {
		if g.Link != nil {
			list = append(list, plan.Use{Pointer: g.LinkPointer, Item: g.Link})
		}
	}
	return list
}

// timesUsed counts the uses of each item by its id; a bridle is used where it
// hangs.
func (w *work) timesUsed() map[string]int {
	count := map[string]int{}
	for _, u := range w.uses() {
		count[u.Item.Base().ID]++
	}
	for _, s := range w.plan.Supports {
		if s.Bridle != nil {
			count[s.Bridle.Bridle.ID]++
		}
	}
	return count
}

// notLookedOver is the gear in use of which neither the plan says what is seen on it,
// nothing included, nor its register that somebody who is named looked at it on the
// day, in the order in which it is used. Of a bridle they say so of its parts.
func (w *work) notLookedOver() facts.OfGear {
	list := facts.OfGear{At: "#/lift"}
	for _, u := range w.uses() {
		base := u.Item.Base()
		if base.LookedOver || w.lookedAtOnTheDay(base.ID) || base.Kind == gear.BridleKind || slices.Contains(list.IDs, base.ID) {
			continue
		}
		if len(list.IDs) == 0 {
			list.At = at(base.Pointer)
			if w.cond.OnFile[base.ID] != nil { // what is missing is missing in the plan
				list.At = at(u.Pointer)
			}
		}
		list.IDs = append(list.IDs, base.ID)
	}
	return list
}

// lookedAtOnTheDay reports whether the register has a record of the day of the lift by
// somebody who is named and found the item fit.
func (w *work) lookedAtOnTheDay(id string) bool {
	item := w.cond.OnFile[id]
	return item != nil && w.day != nil && slices.ContainsFunc(item.Inspections, func(i register.Inspection) bool {
		return i.Date.Equal(*w.day) && i.Vouched()
	})
}

// supportOf is the support that a bridle is used at; false where it is not used.
func (w *work) supportOf(b *gear.Bridle) (plan.Support, bool) {
	for _, s := range w.plan.Supports {
		if s.Bridle != nil && s.Bridle.Bridle == b {
			return s, true
		}
	}
	return plan.Support{}, false
}

// legIndex is the index among all legs of the first leg of a support; those of
// one support follow each other.
func (w *work) legIndex(support int) int {
	n := 0
	for _, s := range w.plan.Supports[:support] {
		n += len(s.Legs)
	}
	return n
}

// legsOfSupport are the indexes among all legs of those of a support.
func (w *work) legsOfSupport(support int) []int {
	first := w.legIndex(support)
	var list []int
	for i := range w.plan.Supports[support].Legs {
		list = append(list, first+i)
	}
	return list
}
