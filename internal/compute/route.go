package compute

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// route is the way of the force down one leg.
type route struct {
	lengthM    float64       // good only where the length needs nothing
	stiffnessN float64       // good only where neither needs anything; EA of a line of that length that gives as the parts do
	needs      []facts.Input // what the length waits for
	stiffNeeds []facts.Input // what the stiffness waits for
}

// partsOf lists what is between the support and the end of a leg, the
// intermediate link it hangs from first.
func partsOf(leg plan.Leg) []plan.Use {
	if leg.Link == nil {
		return leg.Down
	}
	return append([]plan.Use{*leg.Link}, leg.Down...)
}

// routeOf adds the parts of a leg up, bearing point to bearing point. Only
// ropes give: the stretch of parts in a row adds, so 1/k is the sum of L/EA.
func routeOf(leg plan.Leg) route {
	var r route
	give := 0.0
	for _, u := range partsOf(leg) {
		base := u.Item.Base()
		length, field := u.Item.Bearing()
		if length == nil {
			r.needs = append(r.needs, input(base.Pointer, field, base.ID+"'s "+words(field)))
		} else {
			r.lengthM += float64(*length)
		}
		s, ok := u.Item.(*gear.WireRopeSling)
		switch {
		case !ok:
		case s.Diameter == nil:
			r.stiffNeeds = append(r.stiffNeeds, input(base.Pointer, "diameter", base.ID+"'s diameter"))
		case length != nil:
			give += float64(*length) / capacity.AxialStiffnessN(float64(*s.Diameter), s.Core)
		}
	}
	if give > 0 {
		r.stiffnessN = r.lengthM / give
	}
	return r
}
