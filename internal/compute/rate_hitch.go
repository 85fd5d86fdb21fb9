package compute

import (
	"fmt"
	"math"
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// rateInLeg rates a part of a leg; a sling by the hitch that it is used in.
func (w *work) rateInLeg(i int, leg plan.Leg, item gear.Item, p *facts.Part) {
	_, grommet := item.(*gear.Grommet)
	last := item == lastOf(leg)
	switch {
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
	if grommet {
		w.bentAtItsEnds(item, p)
	}
}

// bentAtItsEnds takes off what a grommet loses where it bears: its rated load is
// stated for bends of five times its body (common practice), and it is bent round
// whatever hook, link, bow or pin it hangs on.
func (w *work) bentAtItsEnds(item gear.Item, p *facts.Part) {
	i := slices.IndexFunc(w.out.Document.Grommets, func(g facts.Grommet) bool { return g.ID == item.Base().ID })
	if i < 0 || p.RatedLoadN == nil {
		return
	}
	g := w.out.Document.Grommets[i]
	bends := map[string]*float64{"upper_bend_d": g.UpperBendD}
	if g.Hitch == straight {
		bends["lower_bend_d"] = g.LowerBendD
	}
	least := math.Inf(1)
	for field, bend := range bends {
		if bend == nil {
			p.RatedLoadN = nil
			w.out.Gaps.CopyTo(g.Key, field, p.Key, "rated_load_n")
			w.out.Gaps.CopyTo(g.Key, field, p.Key, "used_ratio")
			continue
		}
		least = min(least, *bend)
	}
	if p.RatedLoadN == nil || least >= statedGrommetBend {
		return
	}
	used, err := capacity.BendEfficiency(least)
	stated, _ := capacity.BendEfficiency(statedGrommetBend) // which it has
	if err != nil {
		p.RatedLoadN = nil
		w.explain(p.Key, facts.Reason{Text: "of " + p.ID + " nothing can be said where it bears: " + err.Error(), ToldOf: p.ID}, "rated_load_n", "used_ratio")
		return
	}
	f := bendFactor(used/stated, least)
	f.What = byEndBend
	w.takes(p, f)
}

// statedGrommetBend is the diameter over the body's for which the rated loads of
// grommets are stated (common practice).
const statedGrommetBend = 5.0

// hitchTag is the rated load that an item's own tag shows for a hitch, or why there
// is none. field is that of the tag. That a tag which can be read shows none is
// found at the sling, and so is a tag of its own that can't be read or is missing;
// that of a bridle rates straight legs.
func (w *work) hitchTag(item gear.Item, field string) rating {
	base := item.Base()
	hitch := words(field[:len(field)-len("_rated_load")])
	if base.Tag == nil || base.Tag.Condition != gear.Legible {
		why := unreadable(item)
		if b := w.bridleOf(item); b != nil && base.Tag == nil {
			why = facts.Reason{Text: b.ID + "'s tag is for straight legs: what " + base.ID + " may carry in a " + hitch + " hitch is not on it"}
		}
		return rating{reason: why}
	}
	load := base.Tag.ChokerRatedLoad
	if field == "basket_rated_load" {
		load = base.Tag.BasketRatedLoad
	}
	if load == nil {
		return rating{reason: facts.Reason{Text: base.ID + "'s tag shows no rated load in a " + hitch + " hitch", ToldOf: base.ID}}
	}
	return rating{ratedN: ptr(load.Newtons), pointer: base.Tag.Pointer + "/" + field}
}

// rateBy sets the marked load from a rating, to begin with as what the part may
// carry as used; false where there is none.
func (w *work) rateBy(p *facts.Part, r rating) bool {
	if r.ratedN == nil {
		w.unratedPart(p.Key, r)
		w.out.Gaps.CopyTo(p.Key, "rated_load_n", p.Key, "hitch_ratio")
		return false
	}
	p.MarkedLoadN, p.RatedLoadN = ptr(*r.ratedN), ptr(*r.ratedN)
	w.relate(p.Key, r.pointer, "its rated load")
	return true
}

// rateChoke takes the choker rating on the tag, less what the angle of the choke
// and the edges of the body take.
func (w *work) rateChoke(i int, item gear.Item, p *facts.Part) {
	if !w.rateBy(p, w.hitchTag(item, "choker_rated_load")) {
		return
	}
	angle, _ := w.chokeAngle(i, w.hung.Legs[i].End.Round)
	if angle == nil {
		w.unratedAsUsed(p)
		w.unposed(p.Key, "hitch_ratio", "rated_load_n", "used_ratio")
		return
	}
	factor, err := capacity.ChokeFactor(*angle)
	if err != nil {
		w.notRated(p, "of "+p.ID+" in its choke nothing can be said: "+err.Error())
		return
	}
	w.inHitch(p, chokeAngleFactor(factor, *angle))
	w.overEdges(i, item, p, "in its choke")
}

// notRated says why nothing is known of what a part may carry in its hitch.
func (w *work) notRated(p *facts.Part, why string) {
	w.unratedAsUsed(p)
	w.explain(p.Key, facts.Reason{Text: why}, "hitch_ratio", "rated_load_n", "used_ratio")
}

// bentTooSharply says why nothing is known of a sling that is bent round less than
// itself, or over an edge that is sharp for it, which is found at the hitch; not so
// over corners that are softened, of which the plan may give the bare edge alone.
func (w *work) bentTooSharply(i int, p *facts.Part, how, why string, told bool) {
	r := w.hung.Legs[i].End.Round
	softened := r != nil && !r.Body.Round && r.Softened
	bare := softened && r.SoftenedRadius == nil
	reason := facts.Reason{Text: p.ID + " " + how + " " + why}
	switch {
	case bare:
		reason.Text += "; give the radius over what softens the edges of " + r.Body.ID + " as `softened_radius` beside `softened`"
	case told && !softened:
		reason.ToldOf = w.hung.Legs[i].ID
	}
	w.unratedAsUsed(p)
	w.explain(p.Key, reason, "hitch_ratio", "rated_load_n", "used_ratio")
}

// bendOf is the diameter that a leg's sling is bent round over its own size; nil,
// with what that waits for noted, where it is not known.
func (w *work) bendOf(i int, p *facts.Part) *float64 {
	leg := w.hung.Legs[i]
	fields := []string{"hitch_ratio", "rated_load_n", "used_ratio"}
	over := w.take(p.Key, leg.End.Pointer, w.bentRound(leg).bend, fields...)
	size := w.take(p.Key, leg.End.Pointer, sizeOf(lastOf(leg.Leg)), fields...)
	if over == nil || size == nil {
		w.unratedAsUsed(p)
	}
	return ratio(over, size)
}

// bentRope takes off what the bend of a rope takes, both runs being rated for the
// marked load so many times.
func (w *work) bentRope(i int, item gear.Item, p *facts.Part, how string, both float64) {
	bend := w.bendOf(i, p)
	if bend == nil {
		return
	}
	rated, err := capacity.BasketRatedN(both**p.MarkedLoadN, nominalN(item), *bend, statedBend(item))
	switch {
	case *bend < 1:
		w.bentTooSharply(i, p, how, fmt.Sprintf("is bent round %.2f of its rope's diameter, for which nothing is rated", *bend), true)
	case err != nil:
		w.bentTooSharply(i, p, how, "is not rated: "+err.Error(), false)
	default:
		w.inHitch(p, bendFactor(rated/(both**p.MarkedLoadN), *bend))
	}
}

// rateBasket takes the basket rating on the tag, which is for both runs, less what
// the bend or an edge takes; each run may carry half of it.
func (w *work) rateBasket(i int, item gear.Item, p *facts.Part) {
	if !w.rateBy(p, w.hitchTag(item, "basket_rated_load")) {
		return
	}
	w.inHitch(p, runsFactor())
	if ofRope(item) {
		w.bentRope(i, item, p, "in its basket", 1)
		return
	}
	w.overEdges(i, item, p, "in its basket")
}

// overEdges takes off what edges take; of chain and fabric also what a round body
// does that is as thin as an edge. What a rope loses round a round body a choker
// rating holds already.
func (w *work) overEdges(i int, item gear.Item, p *facts.Part, how string) {
	leg := w.hung.Legs[i]
	round := leg.End.Round != nil && leg.End.Round.Body.Round
	mesh := item.Base().Kind == gear.MeshSlingKind
	if round && (ofRope(item) || mesh) { // no source tells of mesh
		return
	}
	bend := w.bendOf(i, p)
	if bend == nil {
		return
	}
	kind := capacity.Kind(item.Base().Kind)
	left, ok, why := capacity.EdgeFactor(kind, *bend/2, 1)
	if !ok {
		w.bentTooSharply(i, p, how, "is not rated: "+why, true)
		return
	}
	w.inHitch(p, edgeFactor(left, *bend))
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
// sheave takes: twice one run's rating is what a basket of it would be rated for.
func (w *work) rateOverSheave(i int, item gear.Item, p *facts.Part) {
	if w.rateBy(p, w.ratingOf(item)) {
		w.bentRope(i, item, p, "over its sheave", 2)
	}
}

// rateParts takes the rating of an endless sling used straight: laid double it
// carries more, by the share of its most loaded part.
func (w *work) rateParts(leg plan.Leg, item gear.Item, p *facts.Part) {
	if !w.rateBy(p, w.ratingOf(item)) || !leg.Doubled {
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
	w.inHitch(p, doubledFactor(two/four, w.cond.Parts))
}
