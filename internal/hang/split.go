package hang

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// splitLegs is the number of legs on one body from which statics alone as a rule
// no longer settles what each carries.
const splitLegs = 4

// nearlyDependent is how small the sine of the angle between one leg and the
// plane or line of the others may be before their forces turn on millimeters:
// about 3 degrees. It is this project's own choice, with no source.
const nearlyDependent = 0.05

// SplitByStiffness reports whether stiffness and exact lengths may come to settle
// what some leg carries: with four legs and more on one body.
func SplitByStiffness(p *plan.Plan, legs []Leg) bool {
	count := map[int]int{}
	for _, leg := range legs {
		if count[BodyUnder(p, leg.Leg)]++; count[BodyUnder(p, leg.Leg)] >= splitLegs {
			return true
		}
	}
	return false
}

// ByStiffness reports whether stiffness and exact lengths settle what a leg
// carries, in any position: statics alone leaves it open, or all but does. Before
// anything hangs it goes by the number of legs.
func (l *Lift) ByStiffness(leg int, p *plan.Plan) bool {
	if len(l.Positions) == 0 || !l.Steady() {
		body := BodyUnder(p, l.Legs[leg].Leg)
		n := 0
		for _, other := range l.Legs {
			if BodyUnder(p, other.Leg) == body {
				n++
			}
		}
		return n >= splitLegs
	}
	return slices.ContainsFunc(l.Positions, func(pos Position) bool { return pos.byStiffness(leg) })
}

func (l *Lift) needsStiffness() bool {
	if !l.Steady() {
		return false
	}
	for i := range l.Legs {
		if slices.ContainsFunc(l.Positions, func(pos Position) bool { return pos.byStiffness(i) }) {
			return true
		}
	}
	return false
}

// byStiffness tells so for one position. Legs that all hang from one place are as
// many lines through one point: three of them at most are settled. Others are
// asked what their lengths change.
func (p *Position) byStiffness(leg int) bool {
	state := p.Line(leg)
	if state == nil {
		return false
	}
	group := p.Group(leg)
	switch {
	case p.onePlace(group):
		return len(group) >= splitLegs || p.Dependent(group)
	case state.Bound.Meaning != mechanics.Determinate:
		return true
	}
	return len(group) >= splitLegs && p.sensitive(group)
}

// Group lists the legs in use that hold the same body as one of them.
func (p *Position) Group(leg int) []int {
	y := p.layout
	body := BodyUnder(y.lift.plan, y.lift.legs[leg].Leg)
	var list []int
	for i, other := range y.lift.legs {
		if y.line[i] >= 0 && BodyUnder(y.lift.plan, other.Leg) == body {
			list = append(list, i)
		}
	}
	return list
}

// onePlace reports whether legs all hang from one support, straight.
func (p *Position) onePlace(group []int) bool {
	legs := p.layout.lift.legs
	return !slices.ContainsFunc(group, func(i int) bool {
		return legs[i].Support != legs[group[0]].Support || legs[i].End.Kind != plan.To
	})
}

// Dependent reports whether the directions of two or three legs from one place
// lie in one line or plane, or nearly so: then statics alone does not settle
// their forces.
func (p *Position) Dependent(group []int) bool {
	if !p.onePlace(group) {
		return false
	}
	var d []r3.Vec
	for _, i := range group {
		d = append(d, p.Line(i).Direction)
	}
	switch len(d) {
	case 2:
		return r3.Norm(r3.Cross(d[0], d[1])) < nearlyDependent
	case 3:
		return outOfPlane(d[0], d[1], d[2]) < nearlyDependent
	}
	return false
}

// outOfPlane is the sine of the angle by which one of three directions leaves
// the plane of the other two, those that spread the most: their volume over
// the area of the two. The volume alone would shrink with steep legs too, which
// statics settles well. Directions that all lie in one line have no plane.
func outOfPlane(a, b, c r3.Vec) float64 {
	area := max(r3.Norm(r3.Cross(a, b)), r3.Norm(r3.Cross(b, c)), r3.Norm(r3.Cross(c, a)))
	if area < nearlyDependent {
		return 0
	}
	return math.Abs(r3.Dot(a, r3.Cross(b, c))) / area
}

// Distinct counts the legs of a group that pull along lines of their own: of
// several that go to one point, one may come to carry for all.
func (p *Position) Distinct(group []int) int {
	n := 0
	for k, i := range group {
		own := !slices.ContainsFunc(group[:k], func(j int) bool {
			return p.layout.sameLine(i, j) || p.onePlace([]int{i, j}) && r3.Norm(r3.Cross(p.Line(i).Direction, p.Line(j).Direction)) < nearlyDependent
		})
		if own {
			n++
		}
	}
	return n
}

// sameLine reports whether two legs run between the same two places.
func (y *layout) sameLine(i, j int) bool {
	a, b := y.lift.legs[i], y.lift.legs[j]
	return a.Support == b.Support && a.End.Attachment != nil && a.End.Attachment == b.End.Attachment
}

// How much shorter a leg is made to see whether the forces turn on its length,
// as a share of it, and how much of the mean force that may change.
const (
	shorterShare  = 0.002
	sensitiveness = 0.1
)

// sensitive reports whether small differences of length change what legs carry
// by much. Where the forces can't be found with other lengths they do.
func (p *Position) sensitive(group []int) bool {
	mean := 0.0
	for _, i := range group {
		mean += p.Line(i).TensionN / float64(len(group))
	}
	for _, i := range group {
		m := p.model
		m.Lines = slices.Clone(m.Lines)
		n := p.layout.line[i]
		m.Lines[n].LengthM *= 1 - shorterShare
		r, err := mechanics.SolveNear(m, mechanics.Options{SkipBounds: true}, p.Balance)
		if err != nil || r.Balance == nil {
			return true
		}
		for _, j := range group {
			if math.Abs(r.Balance.Lines[p.layout.line[j]].TensionN-p.Line(j).TensionN) > sensitiveness*mean {
				return true
			}
		}
	}
	return false
}
