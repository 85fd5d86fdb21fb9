package hang

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// LevelLengths are the lengths, by leg and in meters, with which the load would
// hang as intended, its one hook plumb over the center of gravity and as high
// above it as it hangs. False unless all legs run straight from the hook to the
// load.
func (l *Lift) LevelLengths() ([]float64, bool) {
	if len(l.Positions) != 1 || l.Positions[0].Balance == nil {
		return nil, false
	}
	p := &l.Positions[0]
	y := p.layout
	if len(y.hooks()) != 1 || len(p.model.Bodies) != 1 {
		return nil, false
	}
	if slices.ContainsFunc(l.Legs, func(leg Leg) bool { return leg.End.Kind != plan.To }) {
		return nil, false
	}
	above := r3.Sub(y.hookAt[y.hooks()[0]], p.Balance.Bodies[0].CenterOfGravity)
	list := make([]float64, len(l.Legs))
	for i, leg := range l.Legs {
		list[i] = r3.Norm(r3.Sub(r3.Vec{Z: above.Z}, y.onLoad(vector(leg.End.Attachment.At))))
	}
	return list, true
}

// Angles hangs the load with every leg's length changed, and gives the flattest
// angle of each leg from horizontal in degrees; false where the load does not
// hang steady in some phase or a leg is slack. It serves trials of other lengths.
func Angles(p *plan.Plan, length func(lengthM float64) float64) ([]float64, bool) {
	out, l := prepare(p)
	if l == nil {
		return nil, false
	}
	for i := range l.legs {
		l.legs[i].Route.LengthM = length(l.legs[i].Route.LengthM)
	}
	angles := slices.Repeat([]float64{90}, len(l.legs))
	for _, ph := range phasesOf(p) {
		pos := Position{Phase: ph.name, layout: l.newLayout(ph.pitch, ph.released)}
		if !out.hang(&pos) || pos.Balance == nil {
			return nil, false
		}
		for i := range angles {
			line := pos.Line(i)
			if line == nil {
				continue
			}
			for _, run := range line.Runs {
				if run.Slack {
					return nil, false
				}
				angles[i] = min(angles[i], run.AngleFromHorizontalDeg)
			}
		}
	}
	return angles, true
}

// HookAboveM is the height of the hooks' bearings above the highest place where a
// leg holds the load, in meters: of the highest hook, and in the phase where that
// is the most. What is between a hook and its legs hangs plumb.
func (l *Lift) HookAboveM() float64 {
	most := 0.0
	for _, p := range l.Positions {
		y := p.layout
		hook, point := -1e9, -1e9
		for _, s := range y.lift.plan.Supports {
			if s.Hook >= 0 && slices.Contains(y.hooks(), s.Hook) {
				above, _ := heightOf(s)
				at := y.hookAt[s.Hook]
				if n := y.swings[s.Hook]; n >= 0 {
					at = p.Balance.Bodies[n].Origin
				}
				hook = max(hook, at.Z+above)
			}
		}
		body := p.Balance.Bodies[0]
		for i, leg := range y.lift.legs {
			if y.carries[i] && BodyUnder(y.lift.plan, leg.Leg) == 0 {
				point = max(point, r3.Add(body.Origin, body.Attitude.World(y.holdsAt(i))).Z)
			}
		}
		most = max(most, hook-point)
	}
	return most
}

// holdsAt is where a leg holds the load, in the load's axes.
func (y *layout) holdsAt(leg int) r3.Vec {
	if a := y.lift.legs[leg].End.Attachment; a != nil {
		return vector(a.At)
	}
	return y.around[leg].at[0]
}

// BodyAxes gives the direction in which a leg's runs pull on a body of the load,
// along its axis, across it and up, for each run; nothing where the leg goes round
// none or is released.
func (p *Position) BodyAxes(leg int) [][3]float64 {
	r, state := p.layout.lift.legs[leg].End.Round, p.Line(leg)
	if r == nil || state == nil {
		return nil
	}
	along, across, up := axes(r.Body)
	var list [][3]float64
	for _, run := range state.Runs {
		list = append(list, [3]float64{r3.Dot(run.ToPull, along), r3.Dot(run.ToPull, across), r3.Dot(run.ToPull, up)})
	}
	return list
}

// Basket is how the sling of a leg lies round its body in a position.
func (p *Position) TurnedRad(leg int) float64 { return p.layout.around[leg].basket.TurnedRad }

// Choke is the length of a choke's loop and that of the leg's rope beyond it, in
// meters.
func (p *Position) Choke(leg int) (loopM, restM float64) {
	a := p.layout.around[leg]
	return a.choke.LoopM, p.layout.lift.legs[leg].Route.LengthM - a.choke.LoopM
}

// Gathered is the direction in which the pulls of all legs that hang from a
// support act together in a position, world axes, and how much that is.
func (p *Position) sum(legs []int, forceN func(int) float64) r3.Vec {
	var f r3.Vec
	for _, i := range legs {
		if line := p.Line(i); line != nil {
			for _, run := range line.Runs {
				f = r3.Add(f, r3.Scale(forceN(i), run.Direction))
			}
		}
	}
	return f
}

// TogetherN is what some legs that hang from one place pull on it together, with
// a force given for each run of each, in newtons.
func (p *Position) TogetherN(legs []int, forceN func(leg int) float64) float64 {
	return r3.Norm(p.sum(legs, forceN))
}

// Direction is the way in which legs pull down on what they hang from together.
func (p *Position) Direction(legs []int) r3.Vec {
	pull := p.sum(legs, func(i int) float64 { return p.Line(i).TensionN })
	if r3.Norm(pull) > 0 {
		return r3.Unit(pull)
	}
	pull = p.sum(legs, func(int) float64 { return 1 })
	if r3.Norm(pull) > 0 {
		return r3.Unit(pull)
	}
	return r3.Vec{Z: -1}
}

// HeightAboveDatumM is the height of a hook's bearing, above what hangs plumb below it,
// over the load's datum corner, in the first position; false where it does not carry
// there.
func (l *Lift) HeightAboveDatumM(support int) (float64, bool) {
	p := &l.Positions[0]
	y := p.layout
	s := y.lift.plan.Supports[support]
	if s.Hook < 0 || !y.inUse[support] {
		return 0, false
	}
	at := y.hookAt[s.Hook]
	if n := y.swings[s.Hook]; n >= 0 {
		at = p.Balance.Bodies[n].Origin
	}
	above, _ := heightOf(s)
	return at.Z + above - p.Balance.Bodies[0].Origin.Z, true
}

// RunM is the length of a run of a leg, from what it hangs from to where it leaves a
// body or goes through its point, in meters.
func (p *Position) RunM(leg, run int) float64 {
	line := p.model.Lines[p.layout.line[leg]]
	from, to := line.From, line.To
	if run > 0 {
		from, to = line.Further[run-1].From, line.Further[run-1].To
	}
	return r3.Norm(r3.Sub(p.place(to), p.place(from)))
}

// place is where an anchor stands at rest.
func (p *Position) place(a mechanics.Anchor) r3.Vec {
	if a.Body == mechanics.World {
		return a.At
	}
	body := p.Balance.Bodies[a.Body]
	return r3.Add(body.Origin, body.Attitude.World(a.At))
}
