package mechanics

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"
)

func (s *system) lineStates(st []pose, tension []float64, env *envelope) []LineState {
	out := make([]LineState, len(s.model.Lines))
	count := 0
	for i := range s.strands {
		count += len(s.strands[i].runs)
	}
	all := make([]RunState, 0, count)
	for i := range s.strands {
		l := &s.strands[i]
		for j := range l.runs {
			all = append(all, s.runState(st, &l.runs[j], tension[i]))
		}
		line := &out[l.line]
		if line.Runs == nil {
			line.Strain = l.reach(st)/l.length - 1
			line.Runs = all[len(all)-len(l.runs):]
		} else { // strands of one line follow one another
			line.Runs = line.Runs[:len(line.Runs)+len(l.runs)]
		}
	}
	for i := range out {
		runs := out[i].Runs
		out[i].Runs = runs[:len(runs):len(runs)]
		out[i].asFirst()
		out[i].Bound = Bound{TensionN: math.Inf(1), Meaning: Skipped}
		if !s.opt.SkipBounds {
			out[i].Bound = env.boundOf(i, out[i].TensionN)
		}
	}
	return out
}

// asFirst fills the fields of a line from its runs.
func (l *LineState) asFirst() {
	r := &l.Runs[0]
	l.Direction, l.FromPull, l.ToPull = r.Direction, r.FromPull, r.ToPull
	l.AngleFromHorizontalDeg, l.AngleFromVerticalDeg = r.AngleFromHorizontalDeg, r.AngleFromVerticalDeg
	l.Slack = true
	for j := range l.Runs {
		l.TensionN = math.Max(l.TensionN, l.Runs[j].TensionN)
		l.Slack = l.Slack && l.Runs[j].Slack
	}
}

func (s *system) runState(st []pose, r *run, tension float64) RunState {
	n := unit(r.span(st))
	flat := degrees(math.Atan2(math.Abs(n.Z), math.Hypot(n.X, n.Y)))
	return RunState{
		TensionN: tension, Slack: tension <= carriesNothing*s.weight,
		Direction: n, FromPull: r.from.own(st, n), ToPull: r.to.own(st, r3.Scale(-1, n)),
		AngleFromHorizontalDeg: flat, AngleFromVerticalDeg: 90 - flat,
	}
}

func (s *system) hookStates(lines []LineState) []HookState {
	var out []HookState
	add := func(a Anchor, load r3.Vec) {
		if a.Body != World {
			return
		}
		for i := range out {
			if out[i].At == a.At {
				out[i].LoadN = r3.Add(out[i].LoadN, load)
				return
			}
		}
		out = append(out, HookState{At: a.At, LoadN: load})
	}
	for i := range lines {
		for j := range lines[i].Runs {
			r, is := s.model.Lines[i].run(j), &lines[i].Runs[j]
			add(r.From, r3.Scale(is.TensionN, is.FromPull))
			add(r.To, r3.Scale(is.TensionN, is.ToPull))
		}
	}
	return out
}
