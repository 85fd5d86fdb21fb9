package compute

import (
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
	if w.cond.BridlePractice != capacity.ByBand {
		return
	}
	b := w.bridleOf(leg.Down[0].Item)
	if b == nil || unreadable(b).Text != "" || b.Tag.RatedFor != gear.RatedForAssembly || b.Tag.AngleFromHorizontal == nil {
		return
	}
	if least, ok := capacity.BandLeastFromHorizontalDeg(float64(*b.Tag.AngleFromHorizontal)); ok {
		f.RatedByBand, f.BandLeastDeg = true, &least
	}
}

// tagAngle sets the angle on the tag of the leg's bridle, where its legs are
// rated by statics at that angle.
func (w *work) tagAngle(leg plan.Leg, f *facts.Leg) {
	if w.cond.BridlePractice != capacity.ByAngle {
		return
	}
	b := w.bridleOf(leg.Down[0].Item)
	if b == nil || unreadable(b).Text != "" || b.Tag.RatedFor != gear.RatedForAssembly || b.Tag.AngleFromHorizontal == nil {
		return
	}
	f.TagNamesAngle, f.TagAngleDeg = true, number(b.Tag.AngleFromHorizontal)
}

// ropesUnlike compares the slings of the legs of each support, as far as the plan
// describes them: those of a tail are not held against those of the head.
func (w *work) ropesUnlike() bool {
	for i := range w.plan.Supports {
		var first gear.Rope
		for _, leg := range w.legsOfSupport(i) {
			for _, s := range hang.SlingsOf(w.hung.Legs[leg].Leg) {
				if first.Diameter != nil && s.Diameter != nil && *first.Diameter != *s.Diameter ||
					unlike(first.Class, s.Class) || unlike(string(first.Core), string(s.Core)) {
					return true
				}
				first = known(first, s.Rope)
			}
		}
		if w.kindsUnlike(i) {
			return true
		}
	}
	return false
}

// kindsUnlike reports whether the legs of a support end in slings of unlike kinds
// or materials, which stretch unlike.
func (w *work) kindsUnlike(support int) bool {
	kind, material := "", ""
	for _, leg := range w.legsOfSupport(support) {
		item := lastOf(w.hung.Legs[leg].Leg)
		if item == nil {
			continue
		}
		if unlike(kind, string(item.Base().Kind)) {
			return true
		}
		kind = string(item.Base().Kind)
		if s, ok := item.(*gear.TagRatedSling); ok && s.Material != "" {
			if unlike(material, s.Material) {
				return true
			}
			material = s.Material
		}
	}
	return false
}

func unlike(a, b string) bool { return a != "" && b != "" && a != b }

// known fills what is not known of a rope from another.
func known(a, b gear.Rope) gear.Rope {
	if a.Diameter == nil {
		a.Diameter = b.Diameter
	}
	if a.Class == "" {
		a.Class = b.Class
	}
	if a.Core == "" {
		a.Core = b.Core
	}
	return a
}
