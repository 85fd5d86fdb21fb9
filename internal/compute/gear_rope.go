package compute

import (
	"slices"

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
// strength of its slings. Of a bridle the weakest leg counts.
func (w *work) holdAgainstRope(g *facts.Gear, item gear.Item) {
	g.RatedAgainst = againstNone
	rated := w.ratedByOwnTag(item)
	if rated == nil {
		return
	}
	var all []believed
	for _, s := range underTag(item) {
		b := w.believe(s)
		if all = append(all, b); b.against == againstNone {
			return
		}
	}
	if len(all) == 0 {
		return
	}
	g.RatedAgainst = strongestRope
	if slices.ContainsFunc(all, func(b believed) bool { return b.against == ropeLikeIt }) {
		g.RatedAgainst = ropeLikeIt
	}
	most := overBelieved(*rated, all)
	field := "rated_over_strongest_ratio"
	if g.RatedAgainst == ropeLikeIt {
		field, g.RatedRatio = "rated_over_believable_ratio", most
	} else {
		g.RatedOverBestRatio = most
	}
	if most != nil {
		return
	}
	for _, b := range all {
		w.wait(g.Key, b.needs, field)
	}
	if len(w.out.Gaps[facts.GapKey{Key: g.Key, Field: field}].Inputs) == 0 {
		w.explain(g.Key, facts.Reason{Text: "what a sling like " + g.ID + " can be rated for is not known"}, field)
	}
}

// ratedByOwnTag is what the tag on the item itself rates one straight leg for,
// in newtons; nil where it has none or that does not follow from it. A bridle
// that is not used rates nothing.
func (w *work) ratedByOwnTag(item gear.Item) *float64 {
	if item.Base().Tag == nil {
		return nil
	}
	if b, ok := item.(*gear.Bridle); ok {
		if _, used := w.supportOf(b); used {
			return w.bridleRating(b).ratedN
		}
		return nil
	}
	if gear.IsSling(item) {
		return w.oneLegRating(item).ratedN
	}
	return nil
}

// overBelieved is the rating of one leg over what the weakest of the slings can
// be rated for; nil unless that is known of all.
func overBelieved(ratedN float64, all []believed) *float64 {
	most := 0.0
	for _, b := range all {
		if b.ratedN <= 0 {
			return nil
		}
		most = max(most, ratedN/b.ratedN)
	}
	return &most
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
