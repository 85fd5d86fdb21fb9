package compute

import (
	"math"
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// bridles compares the parts of each bridle in use with one another.
func (w *work) bridles() {
	for _, s := range w.plan.Supports {
		if s.Bridle != nil {
			w.bridle(s)
		}
	}
}

func (w *work) bridle(s plan.Support) {
	b := s.Bridle.Bridle
	f := facts.Bridle{
		Record:            facts.Record{Key: "bridle/" + b.ID, At: at(b.Pointer)},
		ID:                b.ID,
		Legs:              len(b.Legs()),
		LegsUsed:          len(s.Legs),
		IntermediateLinks: len(intermediateLinks(s)),
		Master:            facts.OfGear{At: at(b.Master.Pointer), IDs: []string{b.Master.ID}},
		WeakLinks:         facts.OfGear{At: at(b.Pointer)},
		WeakFittings:      facts.OfGear{At: at(b.Pointer)},
	}
	w.bridleTag(&f, b)
	w.masterRatio(&f, b)
	w.intermediateRatio(&f, s)
	w.lowerFittings(&f, s)
	w.lengthSpread(&f, b)
	w.grouping(&f, s)
	w.relate(f.Key, s.Bridle.Pointer, "where it hangs")
	w.out.Document.Bridles = append(w.out.Document.Bridles, f)
}

// bridleTag sets what the tag says of legs and ratings.
func (w *work) bridleTag(f *facts.Bridle, b *gear.Bridle) {
	if t := b.Tag; t != nil && t.Condition == gear.Legible {
		if t.Legs != nil {
			f.LegsOnTagGiven, f.LegsOnTag = true, ptr(*t.Legs)
		}
		if t.RatedFor != "" {
			f.RatedFor = ptr(string(t.RatedFor))
		} else {
			w.wait(f.Key, []facts.Input{input(t.Pointer, "tag.rated_for", "what the rated load of "+b.ID+" is for")}, "rated_for")
		}
	} else if why := unreadable(b); why.Text != "" {
		w.explain(f.Key, why, "rated_for")
	}
	r := w.bridleRating(b)
	if f.OneLegRatedN = r.ratedN; f.OneLegRatedN != nil {
		f.AssemblyRatedN = w.wholeRatedN(b, *r.ratedN)
	}
	gone := absent(*f, "one_leg_rated_n", "assembly_rated_n")
	w.wait(f.Key, r.needs, gone...)
	if r.reason.Text != "" {
		w.explain(f.Key, r.reason, gone...)
	}
}

// wholeRatedN is what all legs of a bridle together are rated for: as tagged,
// or from the rating of one leg at the angle for which bridles are usually
// rated.
func (w *work) wholeRatedN(b *gear.Bridle, oneLegN float64) *float64 {
	if b.Tag.RatedFor == gear.RatedForAssembly {
		return ptr(b.Tag.RatedLoad.Newtons)
	}
	p := w.practiceOf(b)
	if all, ok := capacity.BridleAssemblyRatedN(oneLegN, len(b.Legs()), usualBridleAngleDeg(p), p); ok {
		return &all
	}
	return nil
}

// weakest is the item of the least rated load, the first of several; nil where
// one of them has none, and then the fields wait for those.
func (w *work) weakest(key string, list []gear.Item, fields ...string) gear.Item {
	var needs []facts.Input
	var least gear.Item
	leastN := math.Inf(1)
	for _, item := range list {
		load, name := item.Rating()
		if load == nil {
			needs = append(needs, ratingInput(item.Base().Pointer, item.Base().ID, name))
		} else if load.Newtons < leastN {
			least, leastN = item, load.Newtons
		}
	}
	if len(needs) > 0 {
		w.wait(key, needs, fields...)
		return nil
	}
	return least
}

// ratedOver is the rated load of an item over a force in newtons; what that
// waits for, the field waits for too.
func (w *work) ratedOver(key, field string, item gear.Item, forceN *float64, forceField string) *float64 {
	if forceN == nil {
		w.out.Gaps.CopyTo(key, forceField, key, field)
	}
	if item == nil || forceN == nil {
		return nil
	}
	load, _ := item.Rating()
	return ptr(load.Newtons / *forceN)
}

func (w *work) masterRatio(f *facts.Bridle, b *gear.Bridle) {
	const field = "master_over_assembly_ratio"
	master := w.weakest(f.Key, []gear.Item{b.Master}, field)
	f.MasterRatio = w.ratedOver(f.Key, field, master, f.AssemblyRatedN, "assembly_rated_n")
}

func (w *work) intermediateRatio(f *facts.Bridle, s plan.Support) {
	if f.IntermediateLinks == 0 {
		return
	}
	const field = "intermediate_over_leg_ratio"
	links := items(intermediateLinks(s))
	link := w.weakest(f.Key, links, field)
	f.IntermediateRatio = w.ratedOver(f.Key, field, link, f.OneLegRatedN, "one_leg_rated_n")
	f.WeakLinks = weak(f.WeakLinks, links, link, f.OneLegRatedN, leastLinkOverLeg)
}

// lowerFittings compares the fittings below the sling of each leg that carries
// with what one leg may carry.
func (w *work) lowerFittings(f *facts.Bridle, s plan.Support) {
	var list []gear.Item
	for _, leg := range s.Legs {
		for _, u := range leg.Down {
			if !gear.IsSling(u.Item) {
				list = append(list, u.Item)
			}
		}
	}
	if f.LowerFittings = len(list); f.LowerFittings == 0 {
		return
	}
	const field = "lower_fitting_over_leg_ratio"
	fitting := w.weakest(f.Key, list, field)
	f.LowerFittingRatio = w.ratedOver(f.Key, field, fitting, f.OneLegRatedN, "one_leg_rated_n")
	f.WeakFittings = weak(f.WeakFittings, list, fitting, f.OneLegRatedN, leastFittingOverLeg)
}

// What a part of a bridle is rated for at the least, over one leg, so as not to count
// as weak: an intermediate link 1.6 times as much (EN 13414-1, read in a reprint), a
// fitting as much; less what tables are rounded by, as the rules have it.
const (
	leastLinkOverLeg    = 1.55
	leastFittingOverLeg = 0.97
)

// weak lists those of the items that are rated for less than so much of one leg, and
// those that are no stronger than the weakest.
func weak(none facts.OfGear, list []gear.Item, weakest gear.Item, oneLegN *float64, least float64) facts.OfGear {
	if weakest == nil || oneLegN == nil {
		return none
	}
	load, _ := weakest.Rating()
	most, out := load.Newtons, none
	for _, item := range list {
		rated, _ := item.Rating()
		if rated.Newtons > most && rated.Newtons >= least**oneLegN {
			continue
		}
		if len(out.IDs) == 0 {
			out.At = at(item.Base().Pointer)
		}
		out.IDs = append(out.IDs, item.Base().ID)
	}
	return out
}

func items(uses []plan.Use) []gear.Item {
	var list []gear.Item
	for _, u := range uses {
		list = append(list, u.Item)
	}
	return list
}

// lengthSpread compares all legs, in diameters of the thinnest; of chain, in
// those of its links.
func (w *work) lengthSpread(f *facts.Bridle, b *gear.Bridle) {
	if f.Legs < 2 {
		return
	}
	var needs []facts.Input
	var lengths, diameters []float64
	for _, l := range b.Legs() {
		base := l.Sling.Base()
		length, field := l.Sling.Bearing()
		if length == nil {
			needs = append(needs, input(base.Pointer, field, base.ID+"'s "+field))
		} else {
			lengths = append(lengths, float64(*length))
		}
		diameter, field := l.Sling.Section()
		if diameter == nil {
			needs = append(needs, input(base.Pointer, field, base.ID+"'s "+field))
		} else {
			diameters = append(diameters, float64(*diameter))
		}
	}
	if len(needs) > 0 {
		w.wait(f.Key, needs, "length_spread_d")
		return
	}
	f.LengthSpreadD = ptr((slices.Max(lengths) - slices.Min(lengths)) / slices.Min(diameters))
}
