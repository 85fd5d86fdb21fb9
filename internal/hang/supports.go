package hang

import (
	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// RunEnd is the upper end of one run of a leg.
type RunEnd struct{ Leg, Run int }

// EndsOn lists the upper ends of slings that hang from a support: those of its own
// legs, both of a basket that goes up to it again, and that of one which comes up
// from elsewhere.
func (l *Lift) EndsOn(support int) []RunEnd { return endsOn(l.Legs, support) }

func endsOn(legs []Leg, support int) []RunEnd {
	var list []RunEnd
	for i, leg := range legs {
		second := leg.Support
		if leg.End.UpTo != nil {
			second = *leg.End.UpTo
		}
		if leg.Support == support {
			list = append(list, RunEnd{i, 0})
		}
		twoRuns := leg.End.Kind == plan.Basket || leg.End.Kind == plan.RunsTo
		if twoRuns && second == support {
			list = append(list, RunEnd{i, 1})
		}
	}
	return list
}

// pullOn adds up what hangs from a support, with a force given for each run, in
// world axes.
func (p *Position) pullOn(support int, b *mechanics.Balance, forceN func(leg int, run mechanics.RunState) float64) r3.Vec {
	var f r3.Vec
	for _, end := range endsOn(p.layout.lift.legs, support) {
		n := p.layout.line[end.Leg]
		if n < 0 || end.Run >= len(b.Lines[n].Runs) {
			continue
		}
		run := b.Lines[n].Runs[end.Run]
		f = r3.Add(f, r3.Scale(forceN(end.Leg, run), run.Direction))
	}
	return f
}

// PullOnN is what hangs from a support pulls on it together, with a force given for
// each run of a leg, in newtons.
func (p *Position) PullOnN(support int, forceN func(leg int) float64) float64 {
	return r3.Norm(p.pullOn(support, p.Balance, func(leg int, _ mechanics.RunState) float64 { return forceN(leg) }))
}
