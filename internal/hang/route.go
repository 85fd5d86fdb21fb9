package hang

import (
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// Route is the way of the force down one leg.
type Route struct {
	LengthM    float64       // bearing to bearing; good only where it needs nothing
	StiffnessN float64       // good only where neither needs anything; EA of a line of that length that gives as the parts do
	Needs      []facts.Input // what the length waits for
	StiffNeeds []facts.Input // what the stiffness waits for
	open       *gear.Common  // the one sling without a length
}

// PartsOf lists what is between the support and the end of a leg, the
// intermediate link it hangs from first.
func PartsOf(leg plan.Leg) []plan.Use {
	if leg.Link == nil {
		return leg.Down
	}
	return append([]plan.Use{*leg.Link}, leg.Down...)
}

// routeOf adds the parts of a leg up, bearing point to bearing point. Only
// slings give: the stretch of parts in a row adds, so 1/k is the sum of L/EA.
// openM stands for the length of a sling that has none, unless it is nil.
func routeOf(leg plan.Leg, openM *float64) Route {
	var r Route
	give, lacking := 0.0, 0
	for _, u := range PartsOf(leg) {
		base := u.Item.Base()
		length, field := u.Item.Bearing()
		sling := gear.IsSling(u.Item)
		if length == nil && sling {
			lacking++
			r.open = base
			if openM != nil {
				length = (*quantity.Length)(openM)
			}
		}
		stiffnessN, needs := stiffnessOf(u.Item, leg)
		r.StiffNeeds = append(r.StiffNeeds, needs...)
		if length == nil {
			r.Needs = append(r.Needs, input(base.Pointer, field, base.ID+"'s "+strings.ReplaceAll(field, "_", " ")))
			continue
		}
		m := float64(*length)
		if sling && leg.Doubled {
			m /= 2
		}
		r.LengthM += m
		if stiffnessN > 0 {
			give += m / stiffnessN
		}
	}
	if lacking != 1 {
		r.open = nil
	}
	if give > 0 {
		r.StiffnessN = r.LengthM / give
	}
	return r
}

// ropeIn is the rope of what is made of one.
func ropeIn(item gear.Item) (gear.Rope, bool) {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		return x.Rope, true
	case *gear.Grommet:
		return x.Rope, true
	}
	return gear.Rope{}, false
}

// heightOf adds up what hangs plumb below a support before its legs, and what
// that waits for.
func heightOf(s plan.Support) (float64, []facts.Input) {
	sum := 0.0
	var needs []facts.Input
	for _, u := range s.By {
		length, field := u.Item.Bearing()
		if base := u.Item.Base(); length == nil {
			needs = append(needs, input(base.Pointer, field, base.ID+"'s "+strings.ReplaceAll(field, "_", " ")))
		} else {
			sum += float64(*length)
		}
	}
	return sum, needs
}

func input(pointer, field, label string) facts.Input {
	return facts.Input{At: "#" + pointer, Field: field, Label: label}
}

func massOf(uses []plan.Use) float64 {
	sum := 0.0
	for _, u := range uses {
		if m := u.Item.Base().Mass; m != nil {
			sum += float64(*m)
		}
	}
	return sum
}
