package compute

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
)

// What a rating is held against.
const (
	ropeLikeIt    = "rope_like_it"
	strongestRope = "strongest_rope"
	againstNone   = "nothing"
)

// holdAgainstRope holds what the item's own tag rates one leg for against the
// strength of its ropes. Of a bridle the weakest leg counts.
func (w *work) holdAgainstRope(g *facts.Gear, item gear.Item) {
	g.RatedAgainst = againstNone
	rated := w.ratedByOwnTag(item)
	slings := slingsUnderTag(item)
	if rated == nil || len(slings) == 0 { // a bridle of chain has no rope
		return
	}
	g.RatedAgainst = strongestRope
	for _, s := range slings {
		if against(s, w.cond.BridlePractice) == ropeLikeIt {
			g.RatedAgainst = ropeLikeIt
		}
	}
	ratio, needs, reason := w.ratedOverRope(*rated, slings)
	field := "rated_over_strongest_ratio"
	if g.RatedAgainst == ropeLikeIt {
		field = "rated_over_believable_ratio"
		g.RatedRatio = ratio
	} else {
		g.RatedOverBestRatio = ratio
	}
	w.wait(g.Key, needs, field)
	if reason.Text != "" {
		w.explain(g.Key, reason, field)
	}
}

// ratedByOwnTag is what the tag on the item itself rates one straight leg for,
// in newtons; nil where it has none or that does not follow from it. A bridle
// that is not used rates nothing.
func (w *work) ratedByOwnTag(item gear.Item) *float64 {
	if item.Base().Tag == nil {
		return nil
	}
	switch x := item.(type) {
	case *gear.WireRopeSling:
		return w.oneLegRating(x).ratedN
	case *gear.Bridle:
		if _, used := w.supportOf(x); used {
			return w.bridleRating(x).ratedN
		}
	}
	return nil
}

// ratedOverRope is the rating of one leg over what the weakest of the slings can
// be rated for.
func (w *work) ratedOverRope(ratedN float64, slings []*gear.WireRopeSling) (*float64, []facts.Input, facts.Reason) {
	var ratio *float64
	var needs []facts.Input
	for _, s := range slings {
		lacks := strengthNeeds(s, w.cond.BridlePractice)
		needs = append(needs, lacks...)
		if len(lacks) > 0 {
			continue
		}
		most, ok := ratedMost(s, w.cond.BridlePractice)
		if !ok || !s.OfOneRope() { // the tables are for one rope of that diameter
			return nil, nil, facts.Reason{Text: "what a sling of " + s.ID + "'s rope can be rated for is not known"}
		}
		if ratio == nil || ratedN/most > *ratio {
			ratio = ptr(ratedN / most)
		}
	}
	if len(needs) > 0 {
		return nil, needs, facts.Reason{}
	}
	return ratio, nil, facts.Reason{}
}

// against tells whether a sling is held against rope like it: its grade is
// given, and unless something else is missing its strength is known.
func against(s *gear.WireRopeSling, p capacity.BridlePractice) string {
	if s.Grade == "" {
		return strongestRope
	}
	if len(likeItNeeds(s)) > 0 {
		return ropeLikeIt
	}
	if _, ok := capacity.BelievableRatedN(ropeOf(s), termination(s.Upper), termination(s.Lower), p); !ok {
		return strongestRope
	}
	return ropeLikeIt
}

// ratedMost is the most that one straight leg can be rated for in newtons, by
// what is known of the sling.
func ratedMost(s *gear.WireRopeSling, p capacity.BridlePractice) (float64, bool) {
	rated := capacity.StrongestRatedN
	if against(s, p) == ropeLikeIt {
		rated = capacity.BelievableRatedN
	}
	return rated(ropeOf(s), termination(s.Upper), termination(s.Lower), p)
}

// strengthNeeds lists what is missing for ratedMost.
func strengthNeeds(s *gear.WireRopeSling, p capacity.BridlePractice) []facts.Input {
	if against(s, p) == ropeLikeIt {
		return likeItNeeds(s)
	}
	return diameterNeed(s)
}

// likeItNeeds lists what the strength of a rope of known grade, and of its
// eyes, waits for.
func likeItNeeds(s *gear.WireRopeSling) []facts.Input {
	needs := diameterNeed(s)
	if s.Class == "" {
		needs = append(needs, input(s.Pointer, "class", s.ID+"'s class of rope"))
	}
	if s.Core == gear.CoreUnknown {
		needs = append(needs, input(s.Pointer, "core", s.ID+"'s core"))
	}
	for i, e := range []gear.Eye{s.Upper, s.Lower} {
		if e.Kind == "" {
			needs = append(needs, input(e.Pointer, "eyes."+ends[i]+".kind", "how "+s.ID+"'s "+ends[i]+" eye is made"))
		}
	}
	return needs
}

func diameterNeed(s *gear.WireRopeSling) []facts.Input {
	if s.Diameter == nil {
		return []facts.Input{input(s.Pointer, "diameter", s.ID+"'s diameter")}
	}
	return nil
}

// ropeOf is the rope of a sling as its strength is looked up; one of unknown
// finish counts as bright, which is the stronger.
func ropeOf(s *gear.WireRopeSling) capacity.Rope {
	r := capacity.Rope{Class: s.Class, Core: string(s.Core), Grade: s.Grade, Galvanized: s.Finish == "galvanized"}
	if s.Diameter != nil {
		r.DiameterM = float64(*s.Diameter)
	}
	return r
}

func termination(e gear.Eye) capacity.Termination { return capacity.Termination(e.Kind) }
