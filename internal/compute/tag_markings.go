package compute

import (
	"math"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// marking is something that a tag names of what it is on.
type marking struct {
	field string // in the plan
	label string
	size  *quantity.Length // for what is measured
	word  string           // for the rest
	apart float64          // how far two measures of the same size may lie apart
}

// How far what is the same size may differ from its tag. A diameter as millimeters
// and inches do: 22 mm and 7/8 in are 1 % apart, sizes of rope that follow each other
// 6 % and more. The size of a chain too, of which 10 mm and 3/8 in are the same, 5 %
// apart. A length by what play and stretch make of it; this project's own choice.
const (
	sameDiameter = 0.03
	sameSize     = 0.055
	sameLength   = 0.05
)

// markedOn lists what a tag names that the plan says too, the gravest first.
func markedOn(t *gear.Tag) []marking {
	all := []marking{
		{field: "diameter", label: "diameter", size: t.Diameter, apart: sameDiameter},
		{field: "component_diameter", label: "component diameter", size: t.Component, apart: sameDiameter},
		{field: "size", label: "size", size: t.Size, apart: sameSize},
		{field: "grade", label: "grade", word: t.Grade},
		{field: "material", label: "material", word: t.Material},
		{field: "width", label: "width", size: t.Width, apart: sameDiameter},
		{field: "length", label: "length", size: t.Length, apart: sameLength},
	}
	var named []marking
	for _, m := range all {
		if m.size != nil || m.word != "" {
			named = append(named, m)
		}
	}
	return named
}

// slingsUnder are the slings that an item's tag speaks of: itself, or all legs of
// the bridle.
func slingsUnder(item gear.Item) []gear.Item {
	switch x := item.(type) {
	case *gear.WireRopeSling, *gear.Grommet, *gear.TagRatedSling:
		return []gear.Item{item}
	case *gear.Bridle:
		var slings []gear.Item
		for _, l := range x.Legs() {
			if l.Sling != nil {
				slings = append(slings, l.Sling)
			}
		}
		return slings
	}
	return nil
}

// made is what the plan gives of a sling for a field of its tag; ok is false for
// what nothing of its kind has, as the grade of a chain.
func made(item gear.Item, field string) (size *quantity.Length, word string, ok bool) {
	var sizes map[string]*quantity.Length
	var words map[string]string
	switch x := item.(type) {
	case *gear.WireRopeSling:
		sizes = map[string]*quantity.Length{"diameter": x.Diameter, "component_diameter": x.Component, "length": x.Length}
	case *gear.Grommet:
		sizes = map[string]*quantity.Length{"diameter": x.Diameter, "component_diameter": x.Component}
	case *gear.TagRatedSling:
		sizes = map[string]*quantity.Length{"size": x.Size, "width": x.Width, "length": x.Length}
		words = map[string]string{"grade": x.Grade, "material": x.Material}
	}
	size, measured := sizes[field]
	word, named := words[field]
	return size, word, measured || named
}

// disagreesIn names the first marking that one of the slings does not bear out; none
// where all are borne out by all. Absent, with what it waits for, where the plan
// leaves out what the tag names; but for a length, which may be left open.
func (w *work) disagreesIn(key string, named []marking, slings []gear.Item) *string {
	var needs []facts.Input
	for _, m := range named {
		for _, s := range slings {
			size, word, ok := made(s, m.field)
			switch {
			case !ok:
				return &m.label
			case size == nil && word == "":
				if m.field != "length" {
					needs = append(needs, input(s.Base().Pointer, m.field, s.Base().ID+"'s "+m.label))
				}
			case m.word != word, m.size != nil && math.Abs(float64(*m.size-*size)) > m.apart*float64(*size):
				return &m.label
			}
		}
	}
	if len(needs) > 0 {
		w.wait(key, needs, "tag.disagrees_in")
		return nil
	}
	return ptr("none")
}
