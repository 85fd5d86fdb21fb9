package compute

import (
	"math"
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
)

// grouping tells whether the legs on one intermediate link go to points next to
// each other round the load. It matters with four legs in use, two of them on
// one link.
func (w *work) grouping(f *facts.Bridle, s plan.Support) {
	pairs := pairsOnLinks(s)
	if len(s.Legs) != 4 || len(pairs) == 0 {
		f.GroupedAs = ptr("does_not_matter")
		return
	}
	var needs []facts.Input
	var points [4]plan.Point
	for i, leg := range s.Legs {
		a := leg.End.Attachment
		if leg.End.Kind != plan.To {
			f.GroupedAs = ptr("does_not_matter")
			return
		}
		for _, c := range a.Lacks {
			needs = append(needs, input(a.Pointer, c, "attachment "+a.ID+"'s "+c))
		}
		if a.At != nil {
			points[i] = *a.At
		}
	}
	if len(needs) > 0 {
		w.wait(f.Key, needs, "grouped_as")
		return
	}
	f.GroupedAs = ptr("adjacent")
	for _, pair := range pairs {
		if opposite(points, pair) {
			f.GroupedAs = ptr("diagonal")
		}
	}
}

// pairsOnLinks lists the legs in use, by their index, of each intermediate link
// that has two.
func pairsOnLinks(s plan.Support) [][]int {
	var pairs [][]int
	for _, l := range s.Links {
		if len(l.Legs) == 2 {
			pairs = append(pairs, l.Legs)
		}
	}
	return pairs
}

// sameDirection is the angle, in radians, under which two points are seen in
// one direction.
const sameDirection = 1e-9

// opposite reports whether two of four points, those of the indexes, alternate
// with the other two as one goes round their mean in plan. Points of both pairs
// in one direction alternate with nothing: either may be counted first.
func opposite(points [4]plan.Point, pair []int) bool {
	var x, y float64
	for _, p := range points {
		x, y = x+float64(p.X)/4, y+float64(p.Y)/4
	}
	direction := func(i int) float64 { return math.Atan2(float64(points[i].Y)-y, float64(points[i].X)-x) }
	order := []int{0, 1, 2, 3}
	slices.SortStableFunc(order, func(a, b int) int {
		switch d := direction(a) - direction(b); {
		case d < 0:
			return -1
		case d > 0:
			return 1
		}
		return 0
	})
	for k := range order {
		a, b := order[k], order[(k+1)%4]
		turn := math.Mod(direction(b)-direction(a)+2*math.Pi, 2*math.Pi)
		if slices.Contains(pair, a) == slices.Contains(pair, b) || turn < sameDirection || turn > 2*math.Pi-sameDirection {
			return false
		}
	}
	return true
}
