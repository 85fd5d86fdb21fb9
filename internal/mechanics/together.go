package mechanics

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"
)

// joints adds up the lines that the model asks to be taken together.
func (s *system) joints(st []pose, tension []float64, env *envelope) []Joint {
	if len(s.model.Together) == 0 {
		return nil
	}
	var ways [][]float64
	var e extremes
	if !s.opt.SkipBounds {
		ways = s.ways(st, env.cols)
		e = s.extremesOf(ways, env.given, env.bounds)
	}
	out := make([]Joint, len(s.model.Together))
	for k, group := range s.model.Together {
		at, _ := meeting(s.model, group) // check has seen to it that they meet
		force := s.gather(st, at, group, s.strands).sum(tension)
		out[k] = Joint{At: at, ForceN: force, MagnitudeN: r3.Norm(force)}
		out[k].Bound = Bound{TensionN: math.Inf(1), Meaning: Skipped}
		if !s.opt.SkipBounds {
			g := s.gather(st, at, group, env.cols)
			out[k].Bound = g.bound(g.size(env.given), ways, e).atLeast(out[k].MagnitudeN)
		}
	}
	return out
}

// meeting is the anchor at which every one of the lines ends. Where they share
// both, it is the first line's From.
func meeting(m Model, lines []int) (Anchor, bool) {
	first := &m.Lines[lines[0]]
	for j := range first.runs() {
		r := first.run(j)
		for _, at := range []Anchor{r.From, r.To} {
			elsewhere := func(i int) bool { return !m.Lines[i].touches(at) }
			if !slices.ContainsFunc(lines, elsewhere) {
				return at, true
			}
		}
	}
	return Anchor{}, false
}

// touches says whether a run of the line ends at the anchor.
func (l *Line) touches(at Anchor) bool {
	for j := range l.runs() {
		if r := l.run(j); r.From == at || r.To == at {
			return true
		}
	}
	return false
}

// gathered are the columns of a group of lines, with the vectors, in world axes, by
// which a newton of each pulls where they meet.
type gathered struct {
	cols  []int
	pulls []r3.Vec
}

func (s *system) gather(st []pose, at Anchor, group []int, cols []strand) gathered {
	var g gathered
	e := s.end(at)
	for c := range cols {
		if !slices.Contains(group, cols[c].line) {
			continue
		}
		var pull r3.Vec
		for _, r := range cols[c].runs {
			n := unit(r.span(st))
			if r.from == e {
				pull = r3.Add(pull, n)
			}
			if r.to == e {
				pull = r3.Sub(pull, n)
			}
		}
		g.cols = append(g.cols, c)
		g.pulls = append(g.pulls, pull)
	}
	return g
}

// sum adds up the pulls for a whole split, or a change of it.
func (g gathered) sum(split []float64) r3.Vec {
	var f r3.Vec
	for k, c := range g.cols {
		f = r3.Add(f, r3.Scale(split[c], g.pulls[k]))
	}
	return f
}

// size is the magnitude of the sum.
func (g gathered) size(split []float64) float64 { return r3.Norm(g.sum(split)) }

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
