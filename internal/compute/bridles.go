package compute

import (
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// bridles compares the parts of the bridle in use with one another.
func (w *work) bridles() {
	use := w.plan.Support.Bridle
	if use == nil {
		return
	}
	b := use.Bridle
	f := facts.Bridle{
		Record:            facts.Record{Key: "bridle/" + b.ID, At: at(b.Pointer)},
		ID:                b.ID,
		Legs:              len(b.Legs()),
		LegsUsed:          len(w.plan.Support.Legs),
		IntermediateLinks: len(w.intermediateLinks()),
	}
	w.bridleTag(&f, b)
	w.masterRatio(&f, b)
	w.intermediateRatio(&f)
	w.lowerFittings(&f)
	w.lengthSpread(&f, b)
	w.grouping(&f)
	w.relate(f.Key, use.Pointer, "where it hangs")
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
	r := w.bridleRating()
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
	p := w.cond.BridlePractice
	if all, ok := capacity.BridleAssemblyRatedN(oneLegN, len(b.Legs()), usualBridleAngleDeg(p), p); ok {
		return &all
	}
	return nil
}

// ratedOverN is the least rated load of the items over a force; what it waits
// for comes from each item without a rating and from the other field.
func (w *work) ratedOverN(key, field, otherField string, otherN *float64, items []gear.Item) *float64 {
	var least *float64
	known := otherN != nil
	if otherN == nil {
		w.out.Gaps.CopyTo(key, otherField, key, field)
	}
	for _, item := range items {
		load, name := item.Rating()
		if load == nil {
			base := item.Base()
			w.wait(key, []facts.Input{ratingInput(base.Pointer, base.ID, name)}, field)
			known = false
			continue
		}
		if least == nil || load.Newtons < *least {
			least = ptr(load.Newtons)
		}
	}
	if !known || least == nil {
		return nil
	}
	return ptr(*least / *otherN)
}

func (w *work) masterRatio(f *facts.Bridle, b *gear.Bridle) {
	f.MasterRatio = w.ratedOverN(f.Key, "master_over_assembly_ratio", "assembly_rated_n", f.AssemblyRatedN, []gear.Item{b.Master})
}

func (w *work) intermediateRatio(f *facts.Bridle) {
	if f.IntermediateLinks == 0 {
		return
	}
	f.IntermediateRatio = w.ratedOverN(f.Key, "intermediate_over_leg_ratio", "one_leg_rated_n", f.OneLegRatedN, items(w.intermediateLinks()))
}

// lowerFittings compares the lowest part of each leg that carries with what one
// leg may carry.
func (w *work) lowerFittings(f *facts.Bridle) {
	var list []gear.Item
	for _, leg := range w.plan.Support.Legs {
		lowest := leg.Down[len(leg.Down)-1].Item
		if k := lowest.Base().Kind; k == gear.ShackleKind || k == gear.HookKind {
			list = append(list, lowest)
		}
	}
	if f.LowerFittings = len(list); f.LowerFittings > 0 {
		f.LowerFittingRatio = w.ratedOverN(f.Key, "lower_fitting_over_leg_ratio", "one_leg_rated_n", f.OneLegRatedN, list)
	}
}

func items(uses []plan.Use) []gear.Item {
	var list []gear.Item
	for _, u := range uses {
		list = append(list, u.Item)
	}
	return list
}

// lengthSpread compares all legs, in diameters of the thinnest.
func (w *work) lengthSpread(f *facts.Bridle, b *gear.Bridle) {
	if f.Legs < 2 {
		return
	}
	var needs []facts.Input
	var lengths, diameters []float64
	for _, l := range b.Legs() {
		lacks := append(lengthNeed(l.Sling), diameterNeed(l.Sling)...)
		needs = append(needs, lacks...)
		if len(lacks) == 0 {
			lengths = append(lengths, float64(*l.Sling.Length))
			diameters = append(diameters, float64(*l.Sling.Diameter))
		}
	}
	if len(needs) > 0 {
		w.wait(f.Key, needs, "length_spread_d")
		return
	}
	f.LengthSpreadD = ptr((slices.Max(lengths) - slices.Min(lengths)) / slices.Min(diameters))
}
