package hang

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// rounds is how often everything is placed anew: where a sling leaves a body
// depends on what it hangs from, and how high that stands on the length that the
// body takes.
const rounds = 12

// placeAll finds where hooks and beams stand with the load held as intended.
func (y *layout) placeAll() {
	y.placeFirst()
	for range rounds {
		for i := range y.lift.legs {
			if y.carries[i] {
				y.wrap(i)
			}
		}
		y.placeOnce()
	}
}

// placeFirst begins with every sling that goes round a body as if it pulled on
// the axis and half of the body's perimeter lay in it.
func (y *layout) placeFirst() {
	for i, leg := range y.lift.legs {
		if r := leg.End.Round; r != nil {
			at := stationOf(r)
			y.around[i] = around{at: [2]r3.Vec{at, at}, roundM: lineRound(leg).PerimeterM() / 2}
		}
	}
	y.placeOnce()
}

// placeOnce places beams from the load upward, then the hooks.
func (y *layout) placeOnce() {
	for i := range y.beamAt {
		y.beamAt[i].placed = false
	}
	for range y.beamAt {
		for i := range y.beamAt {
			if !y.beamAt[i].placed {
				y.placeBeam(i)
			}
		}
	}
	for _, h := range y.hooks() {
		y.placeHook(h)
	}
}

// placeBeam puts a beam over what hangs below it, turned about the vertical so
// that its points come to stand as near as can be over their places. It waits
// for the beams below.
func (y *layout) placeBeam(i int) {
	var points []*plan.Attachment
	var targets []r3.Vec
	for n, s := range y.lift.plan.Supports {
		if !y.inUse[n] || y.lift.bodyOf(s.Point) != i+1 {
			continue
		}
		target, ok := y.target(n)
		if !ok {
			return
		}
		below, _ := heightOf(s)
		target.Z += below
		points, targets = append(points, s.Point), append(targets, target)
	}
	if len(points) == 0 {
		return
	}
	p := &y.beamAt[i]
	p.attitude = mechanics.TurnBy(heading(points, targets), r3.Vec{Z: 1})
	p.origin = r3.Vec{}
	for k, a := range points {
		p.origin = r3.Add(p.origin, r3.Scale(1/float64(len(points)), r3.Sub(targets[k], p.attitude.World(vector(a.At)))))
	}
	p.placed = true
}

// heading is the turn about the vertical, in radians, that brings points nearest
// to their targets in plan (least squares).
func heading(points []*plan.Attachment, targets []r3.Vec) float64 {
	var a, b r3.Vec
	n := float64(len(points))
	for k, p := range points {
		a, b = r3.Add(a, r3.Scale(1/n, vector(p.At))), r3.Add(b, r3.Scale(1/n, targets[k]))
	}
	sin, cos := 0.0, 0.0
	for k, p := range points {
		u, v := r3.Sub(vector(p.At), a), r3.Sub(targets[k], b)
		cos += u.X*v.X + u.Y*v.Y
		sin += u.X*v.Y - u.Y*v.X
	}
	if math.Hypot(sin, cos) < 1e-9 {
		return 0
	}
	return math.Atan2(sin, cos)
}

// target is where a support would stand plumb over what its legs hold, by their
// lengths or by its own height; false while a beam below is not placed.
func (y *layout) target(support int) (r3.Vec, bool) {
	var ends []r3.Vec
	var lengths []float64
	for i, leg := range y.lift.legs {
		if !y.carries[i] || leg.Support != support && !y.goesUpTo(leg, support) {
			continue
		}
		at, length, ok := y.endOf(i, support)
		if !ok {
			return r3.Vec{}, false
		}
		ends, lengths = append(ends, at...), append(lengths, length...)
	}
	return y.over(support, ends, lengths), true
}

func (y *layout) goesUpTo(leg Leg, support int) bool {
	return leg.End.UpTo != nil && *leg.End.UpTo == support
}

// over is the place plumb over some ends, so high that the legs just reach them
// on average, or as high as the plan has it.
func (y *layout) over(support int, ends []r3.Vec, lengths []float64) r3.Vec {
	var mid r3.Vec
	for _, e := range ends {
		mid = r3.Add(mid, r3.Scale(1/float64(len(ends)), e))
	}
	return r3.Vec{X: mid.X, Y: mid.Y, Z: y.height(support, mid, ends, lengths)}
}

// height is how high a support stands for its legs to reach from a place in plan:
// on average. Only while lengths are open it is as the plan has it, which speaks of
// one attitude: in the others, the legs are as long as they came out there.
func (y *layout) height(support int, from r3.Vec, ends []r3.Vec, lengths []float64) float64 {
	s := y.lift.plan.Supports[support]
	if y.given && s.Height != nil {
		below, _ := heightOf(s)
		return y.onLoad(r3.Vec{}).Z + float64(*s.Height) - below
	}
	sum := 0.0
	for i, e := range ends {
		off := math.Hypot(e.X-from.X, e.Y-from.Y)
		sum += e.Z + math.Sqrt(math.Max(lengths[i]*lengths[i]-off*off, 0.01*lengths[i]*lengths[i]))
	}
	return sum / float64(len(ends))
}

// endOf lists where a leg's runs that belong to a support end, and their
// lengths. A basket between two supports has one run to each.
func (y *layout) endOf(leg, support int) ([]r3.Vec, []float64, bool) {
	x := y.lift.legs[leg]
	if b := BodyUnder(y.lift.plan, x.Leg); b > 0 && !y.beamAt[b-1].placed {
		return nil, nil, false
	}
	switch x.End.Kind {
	case plan.RunsTo:
		half := x.Route.LengthM / 2
		return []r3.Vec{y.point(x.End.Attachment), y.point(x.End.Second)}, []float64{half, half}, true
	case plan.Basket:
		half := (x.Route.LengthM - y.around[leg].roundM) / 2
		at := y.basketEnds(leg)
		if x.End.UpTo != nil && *x.End.UpTo != x.Support {
			if support == x.Support {
				return at[:1], []float64{half}, true
			}
			return at[1:], []float64{half}, true
		}
		return at, []float64{half, half}, true
	case plan.Choke:
		return []r3.Vec{y.onLoad(y.around[leg].at[0])}, []float64{x.Route.LengthM - y.around[leg].roundM}, true
	}
	return []r3.Vec{y.point(x.End.Attachment)}, []float64{x.Route.LengthM}, true
}

// basketEnds are where the two runs of a basket leave the body, or go through
// their point.
func (y *layout) basketEnds(leg int) []r3.Vec {
	if a := y.lift.legs[leg].End.Attachment; a != nil {
		return []r3.Vec{y.point(a), y.point(a)}
	}
	at := y.around[leg].at
	return []r3.Vec{y.onLoad(at[0]), y.onLoad(at[1])}
}

// placeHook puts a hook over the load, or over what it holds, so high that its
// legs reach.
func (y *layout) placeHook(h int) {
	var ends []r3.Vec
	var lengths []float64
	support := -1
	for n, s := range y.lift.plan.Supports {
		if s.Hook != h {
			continue
		}
		support = n
		for i, leg := range y.lift.legs {
			if !y.carries[i] || leg.Support != n && !y.goesUpTo(leg, n) {
				continue
			}
			if at, length, ok := y.endOf(i, n); ok {
				ends, lengths = append(ends, at...), append(lengths, length...)
			}
		}
	}
	if len(ends) == 0 {
		return
	}
	from := y.centerOfAll()
	if len(y.hooks()) > 1 {
		from = y.over(support, ends, lengths)
	}
	if hook := y.lift.plan.Hooks[h]; hook.X != nil && hook.Y != nil {
		at := r3.Sub(r3.Vec{X: float64(*hook.X), Y: float64(*hook.Y)}, y.lift.center())
		from.X, from.Y = at.X, at.Y
	}
	from.Z = y.height(support, from, ends, lengths)
	y.hookAt[h] = from
}

// centerOfAll is the center of gravity of the load, which is the origin, and the
// beams with what hangs from them, while all are held as intended: what a sole hook
// stands plumb over.
func (y *layout) centerOfAll() r3.Vec {
	mass := y.lift.mass
	var moment r3.Vec
	for i, b := range y.lift.plan.Beams {
		if !y.beamAt[i].placed {
			continue
		}
		own := float64(*b.Item.Mass)
		mass += own
		moment = r3.Add(moment, r3.Scale(own, r3.Add(y.beamAt[i].origin, y.beamAt[i].attitude.World(centerOf(b)))))
		for n, s := range y.lift.plan.Supports {
			if s.Point != nil && s.Point.Beam == b.Item && y.inUse[n] {
				below := massOf(s.By) + y.legsMass(n)
				mass += below
				moment = r3.Add(moment, r3.Scale(below, y.point(s.Point)))
			}
		}
	}
	return r3.Scale(1/mass, moment)
}

// findOpen finds the length that each sling without one needs, to reach from
// what it hangs from at the height that the plan gives.
func (y *layout) findOpen() {
	for i, leg := range y.lift.legs {
		if !y.carries[i] || leg.Route.open == nil || y.lift.plan.Supports[leg.Support].Height == nil {
			continue
		}
		from := y.hangsAt(leg.Support)
		var reach float64
		switch leg.End.Kind {
		case plan.Basket, plan.RunsTo:
			second := from
			if leg.End.UpTo != nil {
				second = y.hangsAt(*leg.End.UpTo)
			}
			at := y.twoEnds(i)
			reach = r3.Norm(r3.Sub(at[0], from)) + r3.Norm(r3.Sub(at[1], second)) + y.around[i].roundM
		case plan.Choke:
			reach = r3.Norm(r3.Sub(y.onLoad(y.around[i].at[0]), from)) + y.around[i].roundM
		default:
			reach = r3.Norm(r3.Sub(y.point(leg.End.Attachment), from))
		}
		y.open[i] = reach - leg.Route.LengthM // of the other parts
		if leg.Doubled {
			y.open[i] *= 2
		}
	}
}

func (y *layout) twoEnds(leg int) []r3.Vec {
	x := y.lift.legs[leg]
	if x.End.Kind == plan.RunsTo {
		return []r3.Vec{y.point(x.End.Attachment), y.point(x.End.Second)}
	}
	return y.basketEnds(leg)
}
