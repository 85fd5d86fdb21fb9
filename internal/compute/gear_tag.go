package compute

import (
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
	on := slingsUnder(item)
	named := markedOn(t)
	if len(on) > 0 && len(named) > 0 {
		g.TagNamesMake = true
		g.Tag.DisagreesIn = w.disagreesIn(g.Key, named, on)
	}
}
