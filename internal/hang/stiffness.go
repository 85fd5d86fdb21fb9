package hang

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// stiffnessOf is EA of a sling between its bearings, in newtons, at the stiff end,
// or what that waits for. It is never a guess: shares between unlike legs hang on
// it.
func stiffnessOf(item gear.Item, leg plan.Leg) (stiffnessN float64, needs []facts.Input) {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		return ropeStiffness(x)
	case *gear.Grommet:
		one, needs := grommetPartStiffness(x)
		parts := 2.0
		if leg.Doubled {
			parts = 4
		}
		return parts * one, needs
	case *gear.TagRatedSling:
		if x.Kind == gear.ChainSlingKind {
			return chainStiffness(x)
		}
		return fabricStiffness(x)
	}
	return 0, nil
}

func ropeStiffness(s *gear.WireRopeSling) (float64, []facts.Input) {
	if s.Body == gear.MultiPart {
		return braidStiffness(s)
	}
	if s.Diameter == nil {
		return 0, []facts.Input{ofItem(s, "diameter", "diameter")}
	}
	if s.Body == gear.CableLaid {
		n, ok := capacity.CableLaidStiffnessN(float64(*s.Diameter), s.Core)
		return n, unless(ok, s, "diameter", "diameter")
	}
	return capacity.AxialStiffnessN(float64(*s.Diameter), s.Core), nil
}

func braidStiffness(s *gear.WireRopeSling) (float64, []facts.Input) {
	var needs []facts.Input
	if s.Component == nil {
		needs = append(needs, ofItem(s, "component_diameter", "component diameter"))
	}
	if s.Parts == nil {
		needs = append(needs, ofItem(s, "parts", "number of parts"))
	}
	if len(needs) > 0 {
		return 0, needs
	}
	n, ok := capacity.MultiPartStiffnessN(float64(*s.Component), *s.Parts, s.Core)
	return n, unless(ok, s, "component_diameter", "component diameter")
}

// grommetPartStiffness counts one of which the plan does not say how it is laid as
// strand-laid, which is the stiffer.
func grommetPartStiffness(g *gear.Grommet) (float64, []facts.Input) {
	if g.Diameter == nil {
		return 0, []facts.Input{ofItem(g, "diameter", "diameter")}
	}
	if g.Laid == "cable_laid" {
		n, ok := capacity.CableLaidStiffnessN(float64(*g.Diameter), g.Core)
		return n, unless(ok, g, "diameter", "diameter")
	}
	return capacity.AxialStiffnessN(float64(*g.Diameter), g.Core), nil
}

func chainStiffness(s *gear.TagRatedSling) (float64, []facts.Input) {
	if s.Size == nil {
		return 0, []facts.Input{ofItem(s, "size", "size")}
	}
	n, ok := capacity.ChainStiffnessN(float64(*s.Size))
	return n, unless(ok, s, "size", "size")
}

// steepestTagDeg is from where an angle on a tag counts as vertical: within 5
// degrees of it, 29 CFR 1910.184(b) (read).
const steepestTagDeg = 85

// fabricStiffness follows from the rated load of a straight pull. What a tag shows
// for a flatter one is less and would make the sling too soft.
func fabricStiffness(s *gear.TagRatedSling) (float64, []facts.Input) {
	const anyLoad = 1
	if _, known := capacity.FabricStiffnessN(capacity.Kind(s.Kind), s.Material, anyLoad); !known {
		return 0, []facts.Input{ofItem(s, "kind", "stretch under load, which is not known for its kind or material")}
	}
	load, field := s.Rating()
	if load == nil || s.Tag.AngleFromHorizontal != nil && *s.Tag.AngleFromHorizontal < steepestTagDeg {
		return 0, []facts.Input{ofItem(s, field, "rated load in a straight pull, from which its stretch follows")}
	}
	n, ok := capacity.FabricStiffnessN(capacity.Kind(s.Kind), s.Material, load.Newtons)
	return n, unless(ok, s, field, "rated load in a straight pull, from which its stretch follows")
}

// fabricTimes is up to how many times its rated load a sling of fabric is followed as
// it stretches: to where it breaks, 7 times (EN 1492-1, from memory).
const fabricTimes = 7

// mostStrain is the stretch over length up to which a leg counts as loaded rather than
// as too short for its place; 0, which leaves that of rope, for legs without fabric.
func mostStrain(leg plan.Leg) float64 {
	most := 0.0
	for _, u := range leg.Down {
		if s, ok := u.Item.(*gear.TagRatedSling); ok {
			stretch, _ := capacity.LeastStretch(capacity.Kind(s.Kind), s.Material)
			most = max(most, fabricTimes*stretch)
		}
	}
	return most
}

// unless is what a stiffness waits for that could not be computed.
func unless(ok bool, item gear.Item, field, label string) []facts.Input {
	if ok {
		return nil
	}
	return []facts.Input{ofItem(item, field, label)}
}

func ofItem(item gear.Item, field, label string) facts.Input {
	base := item.Base()
	return input(base.Pointer, field, base.ID+"'s "+label)
}
