package compute

import (
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// lastOf is the last sling of a leg, which makes its hitch; nil where it has none.
func lastOf(leg plan.Leg) gear.Item {
	slings := hang.AllSlingsOf(leg)
	if len(slings) == 0 {
		return nil
	}
	return slings[len(slings)-1]
}

func isSling(u plan.Use) bool { return gear.IsSling(u.Item) }

// makeOf is how a sling of wire rope is made up; empty for all others, and for a
// grommet of which the plan does not say how it is laid.
func makeOf(item gear.Item) capacity.Make {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		if x.OfOneRope() {
			return capacity.SinglePart
		}
		return capacity.Make(x.Body)
	case *gear.Grommet:
		if x.Laid != "" {
			return capacity.Make(x.Laid + "_grommet")
		}
	}
	return ""
}

// sizeOf is what bends of a sling are counted by: the diameter of its rope, of a
// braided one that of its component (common practice), the size of a chain, the
// thickness of a flat one under load.
func sizeOf(item gear.Item) measure {
	base := item.Base()
	of := func(field, words string) (string, string, string, string) {
		return base.Pointer, field, base.ID + "'s " + words, "the " + words + " of " + base.ID
	}
	switch x := item.(type) {
	case *gear.WireRopeSling:
		if x.Body == gear.MultiPart {
			p, f, l, c := of("component_diameter", "component diameter")
			return given(x.Component, p, f, l, c)
		}
		p, f, l, c := of("diameter", "diameter")
		return given(x.Diameter, p, f, l, c)
	case *gear.Grommet:
		p, f, l, c := of("diameter", "diameter")
		return given(x.Diameter, p, f, l, c)
	case *gear.TagRatedSling:
		if x.Kind == gear.ChainSlingKind {
			p, f, l, c := of("size", "size")
			return given(x.Size, p, f, l, c)
		}
		p, f, l, c := of("thickness", "thickness under load")
		return given(x.Thickness, p, f, l, c)
	}
	return measure{}
}

// statedBend is the diameter over the rope's for which the basket rating of a
// sling of wire rope is usually stated.
func statedBend(item gear.Item) float64 {
	make, upper, lower := makeOf(item), capacity.Termination(""), capacity.Termination("")
	switch x := item.(type) {
	case *gear.WireRopeSling:
		upper, lower = termination(x.Upper), termination(x.Lower)
	case *gear.Grommet:
		if make == "" {
			make = capacity.StrandLaidGrommet // stated for the same as the other
		}
	}
	stated, _ := capacity.StatedBendD(make, upper, lower)
	return stated
}

// ofRope reports whether a sling is of wire rope.
func ofRope(item gear.Item) bool {
	switch item.(type) {
	case *gear.WireRopeSling, *gear.Grommet:
		return true
	}
	return false
}

// hitchesOf lists the hitches that an item makes where it is used: the last sling of
// a leg makes that of the leg, those above it pull straight.
func (w *work) hitchesOf(item gear.Item) []string {
	list := []string{}
	for _, s := range w.plan.Supports {
		for _, leg := range s.Legs {
			if !slices.Contains(hang.AllSlingsOf(leg), item) {
				continue
			}
			made := straight
			if item == lastOf(leg) {
				made = hitchOf(leg.End.Kind)
			}
			if !slices.Contains(list, made) {
				list = append(list, made)
			}
		}
	}
	return list
}
