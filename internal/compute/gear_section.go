package compute

import (
	"math"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// bearingSection is a section of an item that bears all it is rated for.
type bearingSection struct {
	words  string // as in its bow
	fields []string
	mostN  float64 // that it can be rated for
}

// holdAgainstSection holds what an item is rated for against the section that can
// bear the least of those that the plan gives.
func (w *work) holdAgainstSection(g *facts.Gear, item gear.Item) {
	rated := w.ratedStraight(item)
	weakest := bearingSection{mostN: math.Inf(1)}
	for _, s := range sectionsOf(item) {
		if s.mostN < weakest.mostN {
			weakest = s
		}
	}
	if rated == nil || math.IsInf(weakest.mostN, 1) {
		return
	}
	g.SectionHeld, g.Section, g.RatedOverSection = true, &weakest.words, ptr(*rated/weakest.mostN)
	base := item.Base()
	for _, field := range weakest.fields {
		w.out.Related[g.Key] = append(w.out.Related[g.Key], facts.Related{
			At: at(base.Pointer + "/" + field), Caption: "the " + words(field) + " of " + base.ID, Field: "rated_over_section_ratio"})
	}
}

// ratedStraight is what a fitting is marked with, or what a sling's own tag rates one
// straight leg for. Where it says so of other hitches alone, a choke carries no more
// than a straight pull and a basket no more than two.
func (w *work) ratedStraight(item gear.Item) *float64 {
	if !gear.IsSling(item) {
		load, _ := item.Rating()
		return newtons(load)
	}
	if rated := w.ratedByOwnTag(item); rated != nil {
		return rated
	}
	t := item.Base().Tag
	if t == nil || t.Condition != gear.Legible || t.ChokerRatedLoad == nil && t.BasketRatedLoad == nil {
		return nil
	}
	most := value(newtons(t.ChokerRatedLoad))
	return ptr(max(most, value(newtons(t.BasketRatedLoad))/2))
}

// sectionsOf lists the sections of an item that the plan gives. Rope and chain are
// held against rope and chain.
func sectionsOf(item gear.Item) []bearingSection {
	switch x := item.(type) {
	case *gear.Shackle:
		return givenSections(
			sectionBy("its bow", "bow_diameter", x.BowDiameter, capacity.BarsMostRatedN),
			sectionBy("its pin", "pin_diameter", x.PinDiameter, capacity.PinMostRatedN))
	case *gear.Link:
		return givenSections(sectionBy("its section", "section_diameter", x.SectionDiameter, capacity.BarsMostRatedN))
	case *gear.Hook:
		return givenSections(
			sectionBy("its eye", "eye_diameter", x.EyeDiameter, capacity.EyeMostRatedN),
			sectionBy("its bowl", "body_width", x.BodyWidth, capacity.BowlMostRatedN))
	case *gear.InLine:
		return givenSections(
			sectionBy("its eye", "eye_section", x.EyeSection, capacity.EyeMostRatedN),
			sectionBy("its upper pin", "upper_pin_diameter", x.Upper.PinDiameter, capacity.PinMostRatedN),
			sectionBy("its lower pin", "lower_pin_diameter", x.Lower.PinDiameter, capacity.PinMostRatedN))
	case *gear.TagRatedSling:
		return fabricSection(x)
	}
	return nil
}

func sectionBy(words, field string, size *quantity.Length, most func(float64) float64) bearingSection {
	s := bearingSection{words: words, fields: []string{field}}
	if size != nil {
		s.mostN = most(float64(*size))
	}
	return s
}

func fabricSection(x *gear.TagRatedSling) []bearingSection {
	if x.Width == nil || x.Thickness == nil {
		return nil
	}
	return givenSections(bearingSection{
		words:  "its width and thickness",
		fields: []string{"width", "thickness"},
		mostN:  capacity.FabricMostRatedN(capacity.Kind(x.Kind), x.Material, float64(*x.Width), float64(*x.Thickness)),
	})
}

// givenSections leaves out those of which the plan gives no size.
func givenSections(all ...bearingSection) []bearingSection {
	var list []bearingSection
	for _, s := range all {
		if s.mostN > 0 {
			list = append(list, s)
		}
	}
	return list
}
