package compute

import (
	"math"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
)

func tagOf(base *gear.Common) facts.Tag {
	t := base.Tag
	if t == nil {
		return facts.Tag{At: at(base.Pointer), State: "not_recorded"}
	}
	return facts.Tag{At: at(t.Pointer), State: string(t.Condition), Shows: t.Shows}
}

// tag compares a tag that can be read with the sling or bridle it is on.
func (w *work) tag(g *facts.Gear, item gear.Item) {
	t := item.Base().Tag
	if t == nil || t.Condition != gear.Legible {
		return
	}
	if t.DesignFactor != nil && len(underTag(item)) > 0 {
		g.TagNamesDesignFactor, g.Tag.DesignFactor = true, ptr(*t.DesignFactor)
	}
	slings := slingsUnderTag(item)
	if len(slings) == 0 {
		return
	}
	if t.Diameter != nil {
		g.TagNamesDiameter = true
		g.Tag.Diameter = w.compareDiameter(g.Key, float64(*t.Diameter), slings)
	}
}

// slingsUnderTag are the slings of wire rope that an item's tag speaks of: the
// sling itself, or all legs of the bridle.
func slingsUnderTag(item gear.Item) []*gear.WireRopeSling {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		return []*gear.WireRopeSling{x}
	case *gear.Bridle:
		var slings []*gear.WireRopeSling
		for _, l := range x.Legs() {
			if s, ok := l.Sling.(*gear.WireRopeSling); ok {
				slings = append(slings, s)
			}
		}
		return slings
	}
	return nil
}

// sameDiameter is by how much a rope and its tag may differ as the same size
// in millimeters and in inches does: 22 mm and 7/8 in are 1 % apart, sizes that
// follow each other 6 % and more.
const sameDiameter = 0.03

// compareDiameter compares what a tag names with the ropes under it: one that
// differs is enough, and all have to be known to agree.
func (w *work) compareDiameter(key string, tagM float64, slings []*gear.WireRopeSling) *string {
	var needs []facts.Input
	for _, s := range slings {
		switch {
		case s.Diameter == nil:
			needs = append(needs, input(s.Pointer, "diameter", s.ID+"'s diameter"))
		case math.Abs(tagM-float64(*s.Diameter)) > sameDiameter*float64(*s.Diameter):
			return ptr("differs")
		}
	}
	if len(needs) > 0 {
		w.wait(key, needs, "tag.diameter")
		return nil
	}
	return ptr("agrees")
}
