package compute

import (
	"math"
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

// steels counts the fittings of a leg of which the plan names the steel, and
// tells whether these are of unlike series.
func steels(leg plan.Leg) (named int, mixed bool) {
	first := ""
	for _, u := range hang.PartsOf(leg) {
		steel := steelOf(u.Item)
		if steel == "" {
			continue
		}
		named++
		mixed = mixed || first != "" && steel != first
		first = steel
	}
	return named, mixed
}

func steelOf(item gear.Item) string {
	switch x := item.(type) {
	case *gear.Shackle:
		return x.Steel
	case *gear.Link:
		return x.Steel
	case *gear.Hook:
		return x.Steel
	case *gear.InLine:
		return x.Steel
	}
	return ""
}

// band sets the flattest angle at which a leg of a bridle may hang where its
// tag holds for a band of angles.
func (w *work) band(leg plan.Leg, f *facts.Leg) {
	if w.cond.BridlePractice != capacity.ByBand {
		return
	}
	s, ok := leg.Down[0].Item.(*gear.WireRopeSling)
	if !ok {
		return
	}
	b := w.bridleOf(s)
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
	s, ok := leg.Down[0].Item.(*gear.WireRopeSling)
	if !ok || w.cond.BridlePractice != capacity.ByAngle {
		return
	}
	b := w.bridleOf(s)
	if b == nil || unreadable(b).Text != "" || b.Tag.RatedFor != gear.RatedForAssembly || b.Tag.AngleFromHorizontal == nil {
		return
	}
	f.TagNamesAngle, f.TagAngleDeg = true, number(b.Tag.AngleFromHorizontal)
}

// ropesUnlike compares the slings of all legs, as far as the plan describes
// them.
func (w *work) ropesUnlike() bool {
	var first gear.Rope
	for _, leg := range w.hung.Legs {
		for _, s := range hang.SlingsOf(leg.Leg) {
			if first.Diameter != nil && s.Diameter != nil && *first.Diameter != *s.Diameter ||
				unlike(first.Class, s.Class) || unlike(string(first.Core), string(s.Core)) {
				return true
			}
			first = known(first, s.Rope)
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
