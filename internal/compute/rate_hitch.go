package compute

import (
	"fmt"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// rateInLeg rates a part of a leg; a sling by the hitch that it is used in.
func (w *work) rateInLeg(i int, leg plan.Leg, item gear.Item, p *facts.Part) {
	_, grommet := item.(*gear.Grommet)
	last := item == lastRope(leg)
	_, byTag := item.(*gear.TagRatedSling)
	switch {
	case byTag:
		w.unratedPart(p.Key, rating{reason: facts.Reason{Text: "what " + item.Base().ID + " may carry is not judged: it is a " + words(string(item.Base().Kind))}})
	case last && leg.End.Kind == plan.Choke:
		w.rateChoke(i, item, p)
	case last && leg.End.Kind == plan.Basket:
		w.rateBasket(i, item, p)
	case last && leg.End.Kind == plan.RunsTo:
		w.rateOverSheave(i, item, p)
	case grommet:
		w.rateParts(leg, item, p)
	default:
		w.rate(p, item)
	}
}

func isRope(item gear.Item) bool {
	switch item.(type) {
	case *gear.WireRopeSling, *gear.Grommet:
		return true
	}
	return false
}

// lastRope is the last sling of a leg, of either kind.
func lastRope(leg plan.Leg) gear.Item {
	var last gear.Item
	for _, u := range leg.Down {
		if isRope(u.Item) {
			last = u.Item
		}
	}
	return last
}

// hitchTag is the rated load that an item's own tag shows for a hitch, or why there
// is none. field is that of the tag. That a tag which can be read shows none is
// found at the sling, and so is a tag of its own that can't be read or is missing;
// that of a bridle rates straight legs.
func (w *work) hitchTag(item gear.Item, field string) rating {
	base := item.Base()
	hitch := words(field[:len(field)-len("_rated_load")])
	if base.Tag == nil || base.Tag.Condition != gear.Legible {
		why := unreadable(item)
		s, ok := item.(*gear.WireRopeSling)
		if why.Told = ok; ok && base.Tag == nil {
			if b := w.bridleOf(s); b != nil {
				why = facts.Reason{Text: b.ID + "'s tag is for straight legs: what " + s.ID + " may carry in a " + hitch + " hitch is not on it"}
			}
		}
		return rating{reason: why}
	}
	load := base.Tag.ChokerRatedLoad
	if field == "basket_rated_load" {
		load = base.Tag.BasketRatedLoad
	}
	if load == nil {
		return rating{reason: facts.Reason{Text: base.ID + "'s tag shows no rated load in a " + hitch + " hitch", Told: true}}
	}
	return rating{ratedN: ptr(load.Newtons), pointer: base.Tag.Pointer + "/" + field}
}

// rateBy sets the marked load from a rating; false where there is none.
func (w *work) rateBy(p *facts.Part, r rating) bool {
	if r.ratedN == nil {
		w.unratedPart(p.Key, r)
		return false
	}
	p.MarkedLoadN = ptr(*r.ratedN)
	w.relate(p.Key, r.pointer, "its rated load")
	return true
}

// used sets what is left of the marked load in the hitch.
func (w *work) used(p *facts.Part, ratio float64) {
	p.HitchRatio, p.RatedLoadN = &ratio, ptr(*p.MarkedLoadN*ratio)
}

// rateChoke takes the choker rating on the tag, less what the angle of the choke
// takes.
func (w *work) rateChoke(i int, item gear.Item, p *facts.Part) {
	if !w.rateBy(p, w.hitchTag(item, "choker_rated_load")) {
		w.out.Gaps.CopyTo(p.Key, "rated_load_n", p.Key, "hitch_ratio")
		return
	}
	angle := w.chokeAngle(i, w.hung.Legs[i].End.Round)
	w.unposed(p.Key, absent(*p, "hitch_ratio", "rated_load_n", "used_ratio")...)
	if angle == nil {
		return
	}
	factor, err := capacity.ChokeFactor(*angle)
	if err != nil {
		w.notRated(p, "of "+p.ID+" in its choke nothing can be said: "+err.Error())
		return
	}
	w.used(p, factor)
}

// notRated says why nothing is known of what a part may carry in its hitch.
func (w *work) notRated(p *facts.Part, why string) {
	w.explain(p.Key, facts.Reason{Text: why}, "hitch_ratio", "rated_load_n", "used_ratio")
}

// bentTooSharply says why nothing is known of a sling that is bent round less than
// itself, which is found at the hitch; not so over corners that are softened, of
// which the plan gives the bare edge.
func (w *work) bentTooSharply(i int, p *facts.Part, how string, bend float64, err error) {
	r := w.hung.Legs[i].End.Round
	softened := r != nil && !r.Body.Round && r.Softened
	text := "of " + p.ID + " " + how + " nothing can be said: " + err.Error()
	if bend < 1 {
		text = fmt.Sprintf("%s %s is bent round %.2f of its rope's diameter, for which nothing is rated", p.ID, how, bend)
	}
	if softened {
		text += "; give the radius over what softens the edges of " + r.Body.ID + " as its edge_radius"
	}
	w.explain(p.Key, facts.Reason{Text: text, Told: bend < 1 && !softened}, "hitch_ratio", "rated_load_n", "used_ratio")
}

// statedBend is the diameter over the rope's for which basket ratings are usually
// stated (common practice): 25 for mechanical splices, 15 for hand-tucked ones, 5
// for grommets.
func statedBend(item gear.Item) float64 {
	s, ok := item.(*gear.WireRopeSling)
	switch {
	case !ok:
		return 5
	case tucked(s.Upper) && tucked(s.Lower):
		return 15
	}
	return 25
}

// bendOf is the diameter that a leg's sling is bent round over its own; nil, with
// what that waits for noted, where it is not known.
func (w *work) bendOf(i int, p *facts.Part) *float64 {
	leg := w.hung.Legs[i]
	rope, id, pointer := ropeOfLeg(leg.Leg)
	fields := []string{"hitch_ratio", "rated_load_n", "used_ratio"}
	over := w.take(p.Key, leg.End.Pointer, w.bentRound(leg).bend, fields...)
	if rope.Diameter == nil {
		w.wait(p.Key, []facts.Input{input(pointer, "diameter", id+"'s diameter")}, fields...)
	}
	return ratio(over, number(rope.Diameter))
}

// rateBasket takes the basket rating on the tag, which is for both runs, less what
// the bend takes; each run may carry half of it.
func (w *work) rateBasket(i int, item gear.Item, p *facts.Part) {
	if !w.rateBy(p, w.hitchTag(item, "basket_rated_load")) {
		w.out.Gaps.CopyTo(p.Key, "rated_load_n", p.Key, "hitch_ratio")
		return
	}
	bend := w.bendOf(i, p)
	if bend == nil {
		return
	}
	rated, err := *p.MarkedLoadN, error(nil)
	if *bend < statedBend(item) {
		rated, err = capacity.BasketRatedN(*p.MarkedLoadN, nominalN(item), *bend, statedBend(item))
	}
	if err != nil {
		w.bentTooSharply(i, p, "in its basket", *bend, err)
		return
	}
	w.used(p, rated / *p.MarkedLoadN / 2)
}

// nominalN is the nominal strength of an item's rope, in newtons; 0 where it is not
// known.
func nominalN(item gear.Item) float64 {
	s, ok := item.(*gear.WireRopeSling)
	if !ok || !s.OfOneRope() {
		return 0
	}
	strength, known := capacity.NominalStrengthN(ropeOf(s))
	if !known {
		return 0
	}
	return strength
}

// rateOverSheave takes the rating for a straight pull, less what the bend over the
// sheave takes.
func (w *work) rateOverSheave(i int, item gear.Item, p *facts.Part) {
	r := w.ratingOf(item)
	if !w.rateBy(p, r) {
		w.out.Gaps.CopyTo(p.Key, "rated_load_n", p.Key, "hitch_ratio")
		return
	}
	bend := w.bendOf(i, p)
	if bend == nil {
		return
	}
	// Twice one run's rating is what a basket of it would be rated for.
	both, err := capacity.BasketRatedN(2**p.MarkedLoadN, nominalN(item), *bend, statedBend(item))
	if err != nil {
		w.bentTooSharply(i, p, "over its sheave", *bend, err)
		return
	}
	w.used(p, both / *p.MarkedLoadN / 2)
}

// rateParts takes the rating of an endless sling used straight: laid double it
// carries more, by the share of its most loaded part.
func (w *work) rateParts(leg plan.Leg, item gear.Item, p *facts.Part) {
	if !w.rateBy(p, w.ratingOf(item)) {
		w.out.Gaps.CopyTo(p.Key, "rated_load_n", p.Key, "hitch_ratio")
		return
	}
	if !leg.Doubled {
		p.RatedLoadN = ptr(*p.MarkedLoadN)
		return
	}
	two, err := capacity.PartShares(2, w.cond.Parts)
	if err != nil {
		w.notRated(p, err.Error())
		return
	}
	four, err := capacity.PartShares(4, w.cond.Parts)
	if err != nil {
		w.notRated(p, err.Error())
		return
	}
	w.used(p, two/four)
}
