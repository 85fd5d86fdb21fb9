package compute

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
)

// believed is what one straight leg of a sling can be rated for, and by what that
// is known.
type believed struct {
	against string
	ratedN  float64 // 0 where it is not known
	needs   []facts.Input
}

// believe finds what one straight leg of a sling can be rated for; of fabric and
// mesh no source tells.
func (w *work) believe(item gear.Item) believed {
	p := w.cond.BridlePractice
	switch x := item.(type) {
	case *gear.WireRopeSling:
		switch x.Body {
		case gear.MultiPart:
			return believeBraid(x, p)
		case gear.CableLaid:
			return believeCable(x, p)
		}
		return believeRope(x, p)
	case *gear.Grommet:
		return believeGrommet(x, p)
	case *gear.TagRatedSling:
		if x.Kind == gear.ChainSlingKind {
			return believeChain(x, p)
		}
	}
	return believed{against: againstNone}
}

func believeRope(s *gear.WireRopeSling, p capacity.BridlePractice) believed {
	b := believed{against: against(s, p), needs: strengthNeeds(s, p)}
	if len(b.needs) == 0 {
		b.ratedN, _ = ratedMost(s, p)
	}
	return b
}

// believeBraid counts the component ropes of a multi-part sling.
func believeBraid(s *gear.WireRopeSling, p capacity.BridlePractice) believed {
	component := ropeOf(s)
	component.DiameterM = 0
	b := believed{against: strongestRope}
	if s.Component == nil {
		b.needs = append(b.needs, componentNeed(s))
	} else {
		component.DiameterM = float64(*s.Component)
	}
	if s.Parts == nil {
		b.needs = append(b.needs, input(s.Pointer, "parts", s.ID+"'s number of parts"))
	}
	if len(b.needs) > 0 {
		return b
	}
	if rated, ok := capacity.MultiPartRatedN(component, *s.Parts, p); ok {
		return believed{against: ropeLikeIt, ratedN: rated}
	}
	b.ratedN, _ = capacity.StrongestMultiPartRatedN(component, *s.Parts, p)
	return b
}

// believeCable holds a cable-laid body against the strongest rope as thick as
// itself, in which there is more metal (geometry).
func believeCable(s *gear.WireRopeSling, p capacity.BridlePractice) believed {
	b := believed{against: strongestRope, needs: diameterNeed(s)}
	if len(b.needs) == 0 {
		b.ratedN, _ = capacity.StrongestRatedN(capacity.Rope{DiameterM: float64(*s.Diameter)}, termination(s.Upper), termination(s.Lower), p)
	}
	return b
}

// believeGrommet holds a grommet against its breaking load; against the strongest
// rope of its grade where none is given or it can't be right, which is found by
// itself.
func believeGrommet(g *gear.Grommet, p capacity.BridlePractice) believed {
	over := breakingOverStrongest(g)
	beyond := over != nil && *over > capacity.BelievableBreakingRatio
	if g.BreakingLoad != nil && g.BreakingParts != nil && !beyond {
		rated, _ := capacity.GrommetRatedN(g.BreakingLoad.Newtons, *g.BreakingParts)
		return believed{against: ropeLikeIt, ratedN: rated}
	}
	b := believed{against: strongestRope}
	switch {
	case g.BreakingLoad != nil && !beyond:
		b.against, b.needs = ropeLikeIt, []facts.Input{breakingPartsNeed(g)}
	case g.Diameter == nil:
		b.needs = []facts.Input{input(g.Pointer, "diameter", g.ID+"'s diameter")}
	default:
		body := capacity.Rope{Grade: g.Grade, DiameterM: float64(*g.Diameter), Galvanized: g.Finish == "galvanized"}
		b.ratedN, _ = capacity.StrongestGrommetRatedN(body, p)
	}
	return b
}

// breakingOverStrongest is the breaking load of a grommet over that of the strongest
// rope as thick; nil where one is not known.
func breakingOverStrongest(g *gear.Grommet) *float64 {
	if g.BreakingLoad == nil || g.BreakingParts == nil || g.Diameter == nil {
		return nil
	}
	most, ok := capacity.StrongestGrommetBreakingN(float64(*g.Diameter), *g.BreakingParts)
	if !ok {
		return nil
	}
	return ptr(g.BreakingLoad.Newtons / most)
}

// breakingLoad sets what a grommet is said to break at over what it could.
func (w *work) breakingLoad(f *facts.Gear, item gear.Item) {
	g, ok := item.(*gear.Grommet)
	if !ok || g.BreakingLoad == nil {
		return
	}
	f.BreakingLoadGiven, f.BreakingRatio = true, breakingOverStrongest(g)
	if f.BreakingRatio != nil {
		w.out.Related[f.Key] = append(w.out.Related[f.Key], facts.Related{
			At: at(g.Pointer + "/breaking_load"), Caption: "its breaking load", Field: "breaking_over_strongest_ratio"})
		return
	}
	var needs []facts.Input
	if g.BreakingParts == nil {
		needs = append(needs, breakingPartsNeed(g))
	}
	if g.Diameter == nil {
		needs = append(needs, input(g.Pointer, "diameter", g.ID+"'s diameter"))
	}
	w.wait(f.Key, needs, "breaking_over_strongest_ratio")
}

func breakingPartsNeed(g *gear.Grommet) facts.Input {
	return input(g.Pointer, "breaking_load_is_for_parts", "whether "+g.ID+"'s breaking load is for one of its parts or for both")
}

func believeChain(s *gear.TagRatedSling, p capacity.BridlePractice) believed {
	if s.Size == nil {
		return believed{against: strongestRope, needs: []facts.Input{input(s.Pointer, "size", s.ID+"'s size")}}
	}
	if rated, ok := capacity.ChainRatedN(float64(*s.Size), s.Grade, p); ok {
		return believed{against: ropeLikeIt, ratedN: rated}
	}
	rated, _ := capacity.StrongestChainRatedN(float64(*s.Size), s.Grade)
	return believed{against: strongestRope, ratedN: rated}
}

// underTag are the slings that an item's tag speaks of: the sling itself, or all
// legs of the bridle.
func underTag(item gear.Item) []gear.Item {
	if b, ok := item.(*gear.Bridle); ok {
		var slings []gear.Item
		for _, l := range b.Legs() {
			slings = append(slings, l.Sling)
		}
		return slings
	}
	if gear.IsSling(item) {
		return []gear.Item{item}
	}
	return nil
}

// overVertical sets what a sling's own tag shows for other hitches over what it
// rates one straight leg for.
func (w *work) overVertical(g *facts.Gear, item gear.Item) {
	t := item.Base().Tag
	if t == nil || t.Condition != gear.Legible || !gear.IsSling(item) {
		return
	}
	g.TagNamesChoker, g.TagNamesBasket = t.ChokerRatedLoad != nil, t.BasketRatedLoad != nil
	straight := rating{}
	if straight.reason = unrated(item); straight.reason.Text == "" {
		straight = marked(item)
	}
	for _, of := range []struct {
		field string
		shown *float64
		ratio **float64
	}{
		{"choker_over_vertical_ratio", newtons(t.ChokerRatedLoad), &g.ChokerRatio},
		{"basket_over_vertical_ratio", newtons(t.BasketRatedLoad), &g.BasketRatio},
	} {
		if of.shown == nil {
			continue
		}
		if *of.ratio = ratio(of.shown, straight.ratedN); *of.ratio == nil {
			w.wait(g.Key, straight.needs, of.field)
			w.explain(g.Key, straight.reason, of.field)
		}
	}
}
