package compute

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// compareAngle sets by how much a leg hangs otherwise than the plan states.
func (w *work) compareAngle(leg plan.Leg, f *facts.Leg) {
	if leg.StatedAngle == nil {
		return
	}
	f.AngleStated, f.StatedAngleDeg = true, number(leg.StatedAngle)
	if f.AngleFromHorizontalDeg != nil {
		f.StatedAngleOffDeg = ptr(math.Abs(*f.AngleFromHorizontalDeg - *f.StatedAngleDeg))
	}
}

// joinedLays says whether a right-lay and a left-lay sling follow each other in
// a leg of several: the two would unlay one another. It is known as soon as two
// differ, or once all are known.
func (w *work) joinedLays(leg plan.Leg, f *facts.Leg) {
	slings := hang.SlingsOf(leg)
	if len(slings) < 2 {
		return
	}
	var unknown []facts.Input
	hands := map[string]bool{}
	for _, s := range slings {
		hand, _, _ := strings.Cut(s.Lay, "_")
		if hand == "" {
			unknown = append(unknown, input(s.Pointer, "lay", s.ID+"'s lay"))
		} else {
			hands[hand] = true
		}
	}
	switch {
	case len(hands) > 1:
		f.LaysJoined = ptr("unlike")
	case len(unknown) == 0:
		f.LaysJoined = ptr("alike")
	}
	w.wait(f.Key, unknown, absent(*f, "lays_joined")...)
}

// swivelInLine tells whether a swivel lets an ordinary rope in a leg unlay: one that
// turns under load, beside a sling of one rope of six or eight strands.
func swivelInLine(leg plan.Leg) string {
	ordinary := slices.ContainsFunc(hang.SlingsOf(leg), func(s *gear.WireRopeSling) bool {
		return s.OfOneRope() && !slices.Contains(rotationResistant, s.Class)
	})
	state := "no"
	for _, u := range hang.PartsOf(leg) {
		x, ok := u.Item.(*gear.InLine)
		switch {
		case !ordinary || !ok || x.Kind != gear.SwivelKind:
		case x.TurnsUnderLoad == nil && state == "no":
			state = notGiven
		case x.TurnsUnderLoad != nil && *x.TurnsUnderLoad:
			return "load_bearing"
		}
	}
	return state
}

// band sets the flattest angle at which a leg of a bridle may hang where its
// tag holds for a band of angles.
func (w *work) band(leg plan.Leg, f *facts.Leg) {
	b := w.bridleOf(leg.Down[0].Item)
	if b == nil || w.practiceOf(b) != capacity.ByBand || unreadable(b).Text != "" || b.Tag.RatedFor != gear.RatedForAssembly || b.Tag.AngleFromHorizontal == nil {
		return
	}
	if least, ok := capacity.BandLeastFromHorizontalDeg(float64(*b.Tag.AngleFromHorizontal)); ok {
		f.RatedByBand, f.BandLeastDeg = true, &least
	}
}

// tagAngle sets the angle on the tag of the leg's bridle, where its legs are
// rated by statics at that angle.
func (w *work) tagAngle(leg plan.Leg, f *facts.Leg) {
	b := w.bridleOf(leg.Down[0].Item)
	if b == nil || w.practiceOf(b) != capacity.ByAngle || unreadable(b).Text != "" || b.Tag.RatedFor != gear.RatedForAssembly || b.Tag.AngleFromHorizontal == nil {
		return
	}
	f.TagNamesAngle, f.TagAngleDeg = true, number(b.Tag.AngleFromHorizontal)
}

// legsUnlike finds the first two slings of the legs of one support that are unlike in
// what makes them stretch, as far as the plan describes them: those of a tail are not
// held against those of the head. Nothing is found where all are alike.
func (w *work) legsUnlike() facts.Unlike {
	for i := range w.plan.Supports {
		first := map[string]trait{}
		for _, leg := range w.legsOfSupport(i) {
			for _, t := range traitsOf(w.hung.Legs[leg].Leg) {
				before, known := first[t.name]
				switch {
				case !known:
					first[t.name] = t
				case before.value != t.value:
					return w.unlikeIn(before, t)
				}
			}
		}
	}
	return facts.Unlike{At: "#/lift"}
}

func (w *work) unlikeIn(a, b trait) facts.Unlike {
	how := a.name
	if a.words != "" {
		how += ", " + a.words + " and " + b.words
	}
	w.out.Related["lift"] = append(w.out.Related["lift"], facts.Related{
		At: at(a.sling.Base().Pointer), Caption: a.sling.Base().ID, Field: "legs_unlike"})
	return facts.Unlike{At: at(b.sling.Base().Pointer), How: fmt.Sprintf("%s and %s are unlike in %s", a.sling.Base().ID, b.sling.Base().ID, how)}
}

// trait is something that makes a sling stretch as it does.
type trait struct {
	name  string
	value any
	words string // empty for what is measured
	sling gear.Item
}

// traitsOf lists what the plan says of the slings of a leg: of the last one its kind
// and material, of each of wire rope its diameter, class and core.
func traitsOf(leg plan.Leg) []trait {
	var list []trait
	word := func(name, value string, sling gear.Item) {
		if value != "" {
			list = append(list, trait{name, value, words(value), sling})
		}
	}
	if last := lastOf(leg); last != nil {
		word("kind", string(last.Base().Kind), last)
		if s, ok := last.(*gear.TagRatedSling); ok {
			word("material", s.Material, s)
		}
	}
	for _, s := range hang.SlingsOf(leg) {
		if s.Diameter != nil {
			list = append(list, trait{"diameter", *s.Diameter, "", s})
		}
		word("class", s.Class, s)
		word("core", string(s.Core), s)
	}
	return list
}
