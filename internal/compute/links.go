package compute

import (
	"maps"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
)

// solve hangs the load. Where two legs share an intermediate link, the link hangs
// in the line of their resultant, and the legs spread from its lower end: that
// makes them flatter than if it lay in line with each, and their pull greater. The
// link's lower end is moved into that line until it stays. Whether the load stands
// is said of the legs as one line each, for a fixed lower end would hold it.
func (w *work) solve(model mechanics.Model) (mechanics.Result, error) {
	straight, err := mechanics.Solve(model, mechanics.Options{})
	if err != nil || straight.Verdict != mechanics.Steady || !w.linksBend() {
		return straight, err
	}
	bent := model
	bent.Lines = append([]mechanics.Line{}, model.Lines...)
	lines := straight.Balance.Lines
	for bend := range mostBends {
		moved := w.bendLinks(&bent, model, lines, bend > manyBends)
		result, err := mechanics.Solve(bent, mechanics.Options{})
		if err != nil {
			return result, err
		}
		if result.Verdict == mechanics.Overturns {
			break // of ends held fast, which they are not: nothing follows from it
		}
		if result.Verdict != mechanics.Steady {
			return result, nil
		}
		lines = result.Balance.Lines
		if moved < sameEndM {
			return withStability(result, straight), nil
		}
	}
	straight.Verdict, straight.Balance = mechanics.NoBalance, nil
	straight.Why = []mechanics.Reason{{Cause: mechanics.Unsettled, Body: mechanics.World, Text: "no rest was found for the intermediate links"}}
	return straight, nil
}

const (
	mostBends = 60
	manyBends = 8    // after which a link goes half the way only, lest it swing to and fro
	meetShare = 0.05 // of the links' length, within which their lower ends meet
	sameEndM  = 1e-7 // by which a link's lower end may still move
)

// linksBend reports whether any intermediate link takes two legs and has a
// length.
func (w *work) linksBend() bool {
	for _, l := range w.plan.Support.Links {
		if length, _ := l.Item.Bearing(); len(l.Legs) > 1 && length != nil {
			return true
		}
	}
	return false
}

// bendLinks puts the lower end of each link into the line of its legs' pull, as they
// pulled last, or half the way there, and gives how far the furthest moved, in
// meters.
func (w *work) bendLinks(bent *mechanics.Model, straight mechanics.Model, lines []mechanics.LineState, half bool) float64 {
	furthest := 0.0
	ends := map[int]r3.Vec{}
	for n, l := range w.plan.Support.Links {
		length, _ := l.Item.Bearing()
		if length == nil || len(l.Legs) < 2 {
			continue
		}
		var pull r3.Vec
		for _, i := range l.Legs {
			pull = r3.Add(pull, r3.Scale(max(lines[i].TensionN, 1e-9), lines[i].Direction))
		}
		end := r3.Scale(float64(*length), r3.Unit(pull))
		if half {
			end = r3.Scale(float64(*length), r3.Unit(r3.Add(end, bent.Lines[l.Legs[0]].From.At)))
		}
		ends[n] = end
	}
	sameEnd(ends)
	for n, l := range w.plan.Support.Links {
		end, ok := ends[n]
		if !ok {
			continue
		}
		length, _ := l.Item.Bearing()
		for _, i := range l.Legs {
			line := straight.Lines[i]
			furthest = max(furthest, r3.Norm(r3.Sub(end, bent.Lines[i].From.At)))
			line.From, line.LengthM = mechanics.Hook(end), line.LengthM-float64(*length)
			line.StiffnessN *= line.LengthM / straight.Lines[i].LengthM // the same rope, without the link
			bent.Lines[i] = line
		}
	}
	return furthest
}

// sameEnd takes lower ends that all but meet, as of links whose legs go to opposite
// corners, for one point: the load turns about the vertical below one point freely,
// and two that lie side by side would seem to hold it or to turn it.
func sameEnd(ends map[int]r3.Vec) {
	if len(ends) != 2 {
		return
	}
	keys := slices.Sorted(maps.Keys(ends)) // so that the same end is the measure every time
	a, b := ends[keys[0]], ends[keys[1]]
	if r3.Norm(r3.Sub(a, b)) < meetShare*r3.Norm(a) {
		mid := r3.Scale(0.5, r3.Add(a, b))
		ends[keys[0]], ends[keys[1]] = mid, mid
	}
}

// withStability takes what is said of standing, and of the hook's place, from the
// legs as straight lines.
func withStability(bent, straight mechanics.Result) mechanics.Result {
	b := *bent.Balance
	b.RightingM, b.Rocks, b.Rests = straight.Balance.RightingM, straight.Balance.Rocks, straight.Balance.Rests
	b.Bodies = append([]mechanics.BodyState{}, b.Bodies...)
	for i, body := range straight.Balance.Bodies {
		b.Bodies[i].HookOffset, b.Bodies[i].HasHookOffset = body.HookOffset, body.HasHookOffset
	}
	bent.Balance = &b
	return bent
}
