package compute

import "liftlint/internal/plan"

// uses lists every place where a link, sling or fitting works or hangs along,
// links first, then leg by leg.
func (w *work) uses() []plan.Use {
	s := w.plan.Support
	list := append([]plan.Use{}, s.By...)
	list = append(list, w.intermediateLinks()...)
	for _, leg := range s.Legs {
		list = append(list, leg.Down...)
	}
	for _, leg := range s.Parked {
		list = append(list, leg.Down...)
	}
	return list
}

// intermediateLinks lists those of the bridle, whether or not the legs on them
// are parked.
func (w *work) intermediateLinks() []plan.Use {
	b := w.plan.Support.Bridle
	if b == nil {
		return nil
	}
	var list []plan.Use
	for _, g := range b.Bridle.Groups {
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
	if b := w.plan.Support.Bridle; b != nil {
		count[b.Bridle.ID]++
	}
	return count
}
