package mechanics

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// joints adds up the lines that the model asks to be taken together.
func (s *system) joints(st []pose, lines []LineState) []Joint {
	if len(s.model.Together) == 0 {
		return nil
	}
	ways := s.ways(st)
	e := s.extremesOf(ways, lines)
	out := make([]Joint, len(s.model.Together))
	for k, group := range s.model.Together {
		at, _ := meeting(s.model, group) // check has seen to it that they meet
		g := s.gather(at, group, lines)
		given := g.sum(func(i int) float64 { return lines[i].TensionN })
		out[k] = Joint{At: at, ForceN: given, MagnitudeN: r3.Norm(given)}
		out[k].Bound = g.bound(out[k].MagnitudeN, ways, e)
	}
	return out
}

// meeting is the anchor at which every one of the lines ends. Where they share
// both, it is the first line's From.
func meeting(m Model, lines []int) (Anchor, bool) {
	first := m.Lines[lines[0]]
	for _, at := range []Anchor{first.From, first.To} {
		elsewhere := func(i int) bool { return m.Lines[i].From != at && m.Lines[i].To != at }
		if !slices.ContainsFunc(lines, elsewhere) {
			return at, true
		}
	}
	return Anchor{}, false
}

// gathered is a group of lines with the unit vectors, in world axes, along
// which they pull where they meet.
type gathered struct {
	lines []int
	pulls []r3.Vec
}

func (s *system) gather(at Anchor, group []int, lines []LineState) gathered {
	g := gathered{lines: group}
	for _, i := range group {
		pull := lines[i].Direction
		if s.model.Lines[i].From != at {
			pull = r3.Scale(-1, pull)
		}
		g.pulls = append(g.pulls, pull)
	}
	return g
}

// sum adds up the pulls, each times what its line carries.
func (g gathered) sum(carries func(line int) float64) r3.Vec {
	var f r3.Vec
	for k, i := range g.lines {
		f = r3.Add(f, r3.Scale(carries(i), g.pulls[k]))
	}
	return f
}

// size is the magnitude of the sum for a whole split, or a change of it.
func (g gathered) size(split []float64) float64 {
	return r3.Norm(g.sum(func(i int) float64 { return split[i] }))
}

// bound is the largest magnitude of the sum over all splits that balance. A
// magnitude is convex in the tensions, so the largest is at an end of what
// balances, or nowhere.
func (g gathered) bound(given float64, ways [][]float64, e extremes) Bound {
	changes := func(split []float64) bool { return g.size(split) > dependent }
	switch {
	case !slices.ContainsFunc(ways, changes):
		return Bound{TensionN: given, Meaning: Determinate}
	case !e.known:
		return Bound{TensionN: math.Inf(1), Meaning: Unknown}
	case slices.ContainsFunc(e.rays, changes):
		return Bound{TensionN: math.Inf(1), Meaning: Unbounded}
	}
	top := given
	for _, split := range e.corners {
		top = math.Max(top, g.size(split))
	}
	if !finite(top) {
		return Bound{TensionN: math.Inf(1), Meaning: Unknown}
	}
	return Bound{TensionN: top, Meaning: AnySplit}
}
