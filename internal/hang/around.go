package hang

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/gear"
	"liftlint/internal/hitch"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// around is a sling round a body of the load.
type around struct {
	// at is where its runs pull on the load, in the load's axes: one place for
	// a choke, two for a basket.
	at [2]r3.Vec
	// roundM is what it takes of the sling, so that the rest reaches from there.
	roundM  float64
	basket  hitch.Basket
	choke   hitch.Choke
	trouble string // why it can't lie so
}

// Section is the outline of a body across its axis; nothing where its
// dimensions are not known.
func Section(b *plan.Body) hitch.Section {
	switch {
	case b.Diameter != nil:
		return hitch.Section{DiameterM: float64(*b.Diameter)}
	case b.Width != nil && b.Height != nil:
		return hitch.Section{WidthM: float64(*b.Width), HeightM: float64(*b.Height)}
	}
	return hitch.Section{}
}

// lineRound is the outline along which the middle of a leg's sling lies round a
// body.
func lineRound(leg Leg) hitch.Section {
	s := Section(leg.End.Round.Body)
	d := 0.0
	for _, u := range leg.Down {
		if thick := thickness(u.Item); thick != nil {
			d = float64(*thick)
		}
	}
	if s.DiameterM > 0 {
		return hitch.Section{DiameterM: s.DiameterM + d}
	}
	return hitch.Section{WidthM: s.WidthM + d, HeightM: s.HeightM + d}
}

// thickness is how thick a sling lies round a body: the diameter of its rope, the
// thickness of a flat one under load, the size of a chain, whose links lie flat and
// on edge in turn; nil where it is not given.
func thickness(item gear.Item) *quantity.Length {
	if rope, ok := ropeIn(item); ok {
		return rope.Diameter
	}
	s, ok := item.(*gear.TagRatedSling)
	switch {
	case !ok:
		return nil
	case s.Kind == gear.ChainSlingKind:
		return s.Size
	}
	return s.Thickness
}

// axes are the directions along a body, across it and up, in the load's axes.
func axes(b *plan.Body) (along, across, up r3.Vec) {
	x, y, z := r3.Vec{X: 1}, r3.Vec{Y: 1}, r3.Vec{Z: 1}
	switch b.Axis {
	case "across":
		return y, x, z
	case "up":
		return z, x, y
	}
	return x, y, z
}

// stationOf is the point of a body's axis where a sling lies round it, in the
// load's axes.
func stationOf(r *plan.Round) r3.Vec {
	along, _, _ := axes(r.Body)
	start := r.Body.Start
	return r3.Add(vector(&start), r3.Scale(float64(r.Station), along))
}

// wrap lays the sling of a leg round its body, as seen from what it hangs from.
func (y *layout) wrap(i int) {
	leg := y.lift.legs[i]
	r := leg.End.Round
	if r == nil {
		return
	}
	s := lineRound(leg)
	switch leg.End.Kind {
	case plan.Basket:
		y.wrapBasket(i, leg, r, s)
	case plan.Choke:
		y.wrapChoke(i, leg, r, s)
	}
}

// seenFrom is the way from where a sling lies round its body to a support, in the
// load's axes.
func (y *layout) seenFrom(r *plan.Round, support int) r3.Vec {
	return r3.Sub(y.attitude.Body(y.hangsAt(support)), r3.Sub(stationOf(r), y.lift.center()))
}

func (y *layout) wrapBasket(i int, leg Leg, r *plan.Round, s hitch.Section) {
	second := leg.Support
	if leg.End.UpTo != nil {
		second = *leg.End.UpTo
	}
	center := stationOf(r)
	_, across, up := axes(r.Body)
	seen := func(support int) hitch.Point {
		from := y.seenFrom(r, support)
		return hitch.Point{Y: r3.Dot(from, across), Z: r3.Dot(from, up)}
	}
	b, err := s.Basket(seen(leg.Support), seen(second), r.Turns)
	a := &y.around[i]
	if err != nil {
		a.trouble = err.Error()
		return
	}
	place := func(p hitch.Point) r3.Vec {
		return r3.Add(center, r3.Add(r3.Scale(p.Y, across), r3.Scale(p.Z, up)))
	}
	*a = around{at: [2]r3.Vec{place(b.Left), place(b.Right)}, roundM: b.RoundM, basket: b}
}

// NaturalChokeDeg is the angle at which a choke sets itself on a load that hangs
// free (common practice).
const NaturalChokeDeg = 135.0

// wrapChoke pulls on the choke point, which lies over the body as the load is
// drawn. A pull along the body draws the choke on to it: a column that stands is
// held at its surface, and leans.
func (y *layout) wrapChoke(i int, leg Leg, r *plan.Round, s hitch.Section) {
	angle := NaturalChokeDeg
	if r.ChokeAngle != nil {
		angle = float64(*r.ChokeAngle)
	}
	along, across, up := axes(r.Body)
	pull := y.seenFrom(r, leg.Support)
	if lean := hitch.ChokeAngleDeg(r3.Dot(pull, along), 0, math.Hypot(r3.Dot(pull, across), r3.Dot(pull, up)), angle); lean < angle {
		angle = lean
	}
	c, err := s.Choke(r.Turns, angle)
	a := &y.around[i]
	if err != nil {
		a.trouble = err.Error()
		return
	}
	*a = around{at: [2]r3.Vec{r3.Add(stationOf(r), r3.Scale(c.StandsM, up))}, roundM: c.LoopM, choke: c}
}
