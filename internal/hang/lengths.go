package hang

import (
	"math"
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// lengthCorners lists changes of the legs' lengths to try, by leg: none unless
// they are asked for.
func (p *Position) lengthCorners(asked bool) [][]float64 {
	if !asked {
		return nil
	}
	tolerances := lengthTolerances(p.layout.lift.legs)
	if len(tolerances) <= allCorners {
		return combinations(tolerances)
	}
	return p.worstLengths(tolerances)
}

// combinations are all of longest and shortest.
func combinations(tolerances []float64) [][]float64 {
	var list [][]float64
	for n := range 1 << len(tolerances) {
		change := slices.Clone(tolerances)
		for i := range change {
			if n>>i&1 == 0 {
				change[i] = -change[i]
			}
		}
		list = append(list, change)
	}
	return list
}

// worstLengths are, for each leg, the lengths that pull it the most as far as each
// one's own effect tells, and those with the signs turned; and each leg alone at
// its longest and shortest.
func (p *Position) worstLengths(tolerances []float64) [][]float64 {
	n := len(tolerances)
	var list [][]float64
	effect := make([][]float64, n) // by changed leg, by leg
	for i := range tolerances {
		alone := make([]float64, n)
		alone[i] = -tolerances[i]
		longer := make([]float64, n)
		longer[i] = tolerances[i]
		list = append(list, alone, longer)
		effect[i] = p.effectOf(alone)
	}
	for j := range tolerances {
		worst, best := make([]float64, n), make([]float64, n)
		for i, t := range tolerances {
			worst[i] = -t
			if effect[i] != nil && effect[i][j] < 0 {
				worst[i] = t
			}
			best[i] = -worst[i]
		}
		list = append(list, p.flipped(worst, j), best)
	}
	return list
}

// mostFlips is how often all legs are tried the other way.
const mostFlips = 3

// flipped turns the length of one leg after another the other way as long as that
// pulls leg j the more: where legs go slack, what each does alone does not tell.
func (p *Position) flipped(change []float64, j int) []float64 {
	pull := func(change []float64) float64 {
		if effect := p.effectOf(change); effect != nil {
			return effect[j]
		}
		return math.Inf(1) // does not hang so: the corner itself is to tell
	}
	best := pull(change)
	for range mostFlips {
		moved := false
		for i := range change {
			change[i] = -change[i]
			if is := pull(change); is > best {
				best, moved = is, true
			} else {
				change[i] = -change[i]
			}
		}
		if !moved {
			break
		}
	}
	return change
}

// effectOf is by how much each leg's force grows with a change of lengths; nil
// where that is not known.
func (p *Position) effectOf(change []float64) []float64 {
	m := p.model
	m.Lines = slices.Clone(m.Lines)
	for i, n := range p.layout.line {
		if n >= 0 {
			m.Lines[n].LengthM += change[i]
		}
	}
	r, err := mechanics.SolveNear(m, mechanics.Options{SkipBounds: true}, p.Balance)
	if err != nil || r.Balance == nil {
		return nil
	}
	out := make([]float64, len(change))
	for i, n := range p.layout.line {
		if n >= 0 {
			out[i] = r.Balance.Lines[n].TensionN - p.Balance.Lines[n].TensionN
		}
	}
	return out
}

// lengthTolerances adds up those of each leg's slings.
func lengthTolerances(legs []Leg) []float64 {
	var list []float64
	for _, leg := range legs {
		sum := 0.0
		for _, s := range AllSlingsOf(leg.Leg) {
			if t := lengthTolerance(s); t != nil {
				sum += float64(*t)
			}
		}
		list = append(list, sum)
	}
	return list
}

// allLengthTolerances reports whether every leg has slings, all with a tolerance
// of their length.
func allLengthTolerances(legs []Leg) bool {
	for _, leg := range legs {
		slings := AllSlingsOf(leg.Leg)
		if len(slings) == 0 || slices.ContainsFunc(slings, func(s gear.Item) bool { return lengthTolerance(s) == nil }) {
			return false
		}
	}
	return true
}

// lengthTolerance is that of a sling; nil where the plan gives none, and of a
// grommet, which has none.
func lengthTolerance(item gear.Item) *quantity.Length {
	switch s := item.(type) {
	case *gear.WireRopeSling:
		return s.LengthTolerance
	case *gear.TagRatedSling:
		return s.LengthTolerance
	}
	return nil
}

// AllSlingsOf lists the slings of a leg of any kind, from the top down.
func AllSlingsOf(leg plan.Leg) []gear.Item {
	var list []gear.Item
	for _, u := range leg.Down {
		if gear.IsSling(u.Item) {
			list = append(list, u.Item)
		}
	}
	return list
}

// SlingsOf lists the wire rope slings of a leg, from the top down.
func SlingsOf(leg plan.Leg) []*gear.WireRopeSling {
	var list []*gear.WireRopeSling
	for _, u := range leg.Down {
		if s, ok := u.Item.(*gear.WireRopeSling); ok {
			list = append(list, s)
		}
	}
	return list
}
