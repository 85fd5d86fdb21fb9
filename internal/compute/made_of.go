package compute

import (
	"slices"

	"liftlint/internal/gear"
)

// chainGrade is the grade of a chain; none for what is no chain.
func chainGrade(item gear.Item) string {
	s, ok := item.(*gear.TagRatedSling)
	if !ok || s.Kind != gear.ChainSlingKind {
		return "none"
	}
	return orNotGiven(s.Grade)
}

// ofChain reports whether an item is a sling of chain, or a bridle of such legs.
func ofChain(item gear.Item) bool {
	return slices.ContainsFunc(slingsUnder(item), func(s gear.Item) bool { return s.Base().Kind == gear.ChainSlingKind })
}

// meshOf tells whether mesh is coated; none for what is no mesh.
func meshOf(item gear.Item) string {
	s, ok := item.(*gear.TagRatedSling)
	if !ok || s.Kind != gear.MeshSlingKind {
		return "none"
	}
	return orNotGiven(s.Coating)
}

// fabricOf is what webbing or a round sling is made of; none for other gear.
func fabricOf(item gear.Item) string {
	s, ok := item.(*gear.TagRatedSling)
	if !ok || s.Kind != gear.WebSlingKind && s.Kind != gear.RoundSlingKind {
		return "none"
	}
	return orNotGiven(s.Material)
}

// ofGrommet is the core of a grommet's rope and the metal of its sleeve; none for
// other gear.
func ofGrommet(item gear.Item) (core, sleeve string) {
	g, ok := item.(*gear.Grommet)
	if !ok {
		return "none", "none"
	}
	return orNotGiven(string(g.Core)), orNotGiven(g.Sleeve)
}

// seriesOf is the series of a fitting; none for what is none.
func seriesOf(item gear.Item) string {
	switch item.(type) {
	case *gear.Shackle, *gear.Link, *gear.Hook, *gear.InLine:
		return orNotGiven(steelOf(item))
	}
	return "none"
}
