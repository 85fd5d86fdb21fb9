package hang

import (
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
)

// needs lists what the plan has to say before its load can be hung.
func needs(p *plan.Plan, legs []Leg) []facts.Input {
	var list []facts.Input
	if p.Load.Mass == nil {
		list = append(list, MassInput())
	}
	if p.Load.CenterOfGravity == nil {
		list = append(list, input("/load", "center_of_gravity", "the load's center of gravity"))
	}
	for _, b := range p.Beams {
		if b.Item.Mass == nil {
			list = append(list, input(b.Item.Pointer, "mass", b.Item.ID+"'s mass"))
		}
	}
	for _, s := range p.Supports {
		if s.Hook < 0 || s.Height != nil {
			_, missing := heightOf(s)
			list = append(list, missing...)
		}
		if s.Point != nil {
			list = append(list, placeNeeds(s.Point)...)
		}
	}
	stiffness := SplitByStiffness(p, legs)
	for _, leg := range legs {
		if leg.Route.open == nil || p.Supports[leg.Support].Height == nil {
			list = append(list, leg.Route.Needs...)
		} else {
			list = append(list, butFor(leg.Route.Needs, "#"+leg.Route.open.Pointer)...)
		}
		if stiffness {
			list = append(list, leg.Route.StiffNeeds...)
		}
		for _, a := range []*plan.Attachment{leg.End.Attachment, leg.End.Second} {
			if a != nil {
				list = append(list, placeNeeds(a)...)
			}
		}
		if r := leg.End.Round; r != nil {
			list = append(list, bodyNeeds(r.Body)...)
		}
	}
	return unique(list)
}

// MassInput is the load's mass as a thing that the plan could say.
func MassInput() facts.Input { return input("/load", "mass", "the load's mass") }

// butFor leaves out the length of the item at a place.
func butFor(list []facts.Input, at string) []facts.Input {
	return slices.DeleteFunc(slices.Clone(list), func(in facts.Input) bool { return in.At == at })
}

func placeNeeds(a *plan.Attachment) []facts.Input {
	var list []facts.Input
	name := "attachment " + a.ID
	if a.Beam != nil {
		name = a.ID
	}
	for _, c := range a.Lacks {
		list = append(list, input(a.Pointer, c, name+"'s "+c))
	}
	return list
}

func bodyNeeds(b *plan.Body) []facts.Input {
	if s := Section(b); s.PerimeterM() > 0 {
		return nil
	}
	if b.Round {
		return []facts.Input{input(b.Pointer, "diameter", b.ID+"'s diameter")}
	}
	var list []facts.Input
	if b.Width == nil {
		list = append(list, input(b.Pointer, "width", b.ID+"'s width"))
	}
	if b.Height == nil {
		list = append(list, input(b.Pointer, "height", b.ID+"'s height"))
	}
	return list
}

// stiffNeeds lists what the stiffness of the legs waits for.
func stiffNeeds(legs []Leg) []facts.Input {
	var list []facts.Input
	for _, leg := range legs {
		list = append(list, leg.Route.StiffNeeds...)
	}
	return unique(list)
}
