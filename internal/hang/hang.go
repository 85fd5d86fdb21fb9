package hang

import (
	"fmt"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// Of finds how a plan's load hangs, unless inputs are missing.
func Of(p *plan.Plan) *Lift {
	out, l := prepare(p)
	if l == nil {
		return out
	}
	return l.hangAll(out, true)
}

// hangAll hangs the load in every phase and, where that is asked for, at the corners
// of what the plan gives tolerances of.
func (l *lifter) hangAll(out *Lift, corners bool) *Lift {
	for _, ph := range phasesOf(l.plan) {
		pos := Position{Phase: ph.name, Pitch: ph.pitch, layout: l.newLayout(ph.pitch, ph.released)}
		if !out.hang(&pos) {
			return out
		}
		out.Positions = append(out.Positions, pos)
	}
	if l.stiff && out.needsStiffness() {
		// The split depends on stiffness after all, and it is not known.
		return &Lift{Legs: out.Legs, Needs: stiffNeeds(out.Legs)}
	}
	if out.Reason == "" && corners {
		for i := range out.Positions {
			out.envelope(&out.Positions[i])
		}
	}
	return out
}

// prepare lays the plan out, or says what is missing; the lifter is nil then.
func prepare(p *plan.Plan) (*Lift, *lifter) {
	out := &Lift{Legs: legsOf(p)}
	if out.Needs = needs(p, out.Legs); len(out.Needs) > 0 {
		return out, nil
	}
	l := &lifter{plan: p, legs: out.Legs, mass: upperMassKg(p)}
	l.stiff = len(stiffNeeds(out.Legs)) > 0
	l.setOpen()
	for _, leg := range l.legs {
		if leg.OpenM != nil && *leg.OpenM <= 0 {
			out.fail(OutOfReach, leg.Pointer, fmt.Sprintf("the other parts of leg %s already reach further than from what it hangs from, at the height that the plan gives, to its end: there is no place for a sling", leg.ID), nil)
			return out, nil
		}
	}
	for i, leg := range l.legs {
		// Where the load lies as intended, every sling has to go round.
		y := l.newLayout(float64(p.Load.Pitch), nil)
		if why := y.cantLie(i); why != "" {
			out.fail(NoBalance, leg.Pointer, why, nil)
			return out, nil
		}
	}
	return out, l
}

// legsOf lists all legs with their routes.
func legsOf(p *plan.Plan) []Leg {
	var list []Leg
	for i, s := range p.Supports {
		for _, leg := range s.Legs {
			list = append(list, Leg{Leg: leg, Support: i, Route: routeOf(leg, nil)})
		}
	}
	return list
}

// setOpen gives each sling without a length the one it needs, from the highest
// legs to the lowest: with the load as intended.
func (l *lifter) setOpen() {
	y := l.unplaced(l.openPitch(), nil)
	y.given = true
	y.placeAll()
	y.findOpen()
	for i, m := range y.open {
		l.legs[i].OpenM = &m
		l.legs[i].Route = routeOf(l.legs[i].Leg, &m)
	}
}

// openPitch is the pitch at which open lengths are measured: the load's own, or
// that of the first phase.
func (l *lifter) openPitch() float64 { return phasesOf(l.plan)[0].pitch }

// letGo says that one end of a basket hangs from what is released while the other
// holds: then it holds nothing.
func (y *layout) letGo(i int) string {
	leg := y.lift.legs[i]
	if leg.End.UpTo == nil || y.inUse[leg.Support] == y.inUse[*leg.End.UpTo] {
		return ""
	}
	return "one end of leg " + leg.ID + " is let go while the other holds, so that its sling runs out"
}

// cantLie says why the sling of a leg can't go round its body as it should.
func (y *layout) cantLie(i int) string {
	leg := y.lift.legs[i]
	switch a := y.around[i]; {
	case leg.End.Round == nil:
		return ""
	case a.trouble != "":
		return "the sling of leg " + leg.ID + " can't go round " + leg.End.Round.Body.ID + " so: " + a.trouble
	case leg.Route.LengthM <= a.roundM:
		return fmt.Sprintf("the sling of leg %s is too short to go round %s: %.3g m of it would lie on the body", leg.ID, leg.End.Round.Body.ID, a.roundM)
	}
	return ""
}

// upperMassKg is the load's mass at the upper end of its tolerance.
func upperMassKg(p *plan.Plan) float64 {
	m := float64(*p.Load.Mass)
	if p.Load.MassTolerance != nil {
		m *= 1 + float64(*p.Load.MassTolerance)
	}
	return m
}

// hang finds the rest in one position; false where the lift can't exist so.
func (out *Lift) hang(pos *Position) bool {
	for i := range out.Legs {
		why := pos.layout.letGo(i)
		if why == "" && pos.layout.carries[i] {
			why = pos.layout.cantLie(i)
		}
		if why != "" {
			out.fail(NoBalance, out.Legs[i].Pointer, why+inPhase(pos), nil)
			return false
		}
	}
	result, model, err := pos.layout.solve()
	if err != nil {
		out.fail(NoBalance, "/rigging/0", "the lift can't be computed"+inPhase(pos)+": "+err.Error(), nil)
		return false
	}
	pos.Result, pos.Balance, pos.model = &result, result.Balance, model
	switch result.Verdict {
	case mechanics.OutOfReach, mechanics.NoBalance:
		out.notHanging(pos)
		return false
	case mechanics.Overturns:
		out.Reason = "the load turns over" + inPhase(pos)
	case mechanics.Steady:
	default:
		out.fail(NoBalance, "/rigging/0", fmt.Sprintf("the lift can't be computed: unknown result %q", result.Verdict), nil)
		return false
	}
	return true
}

func inPhase(pos *Position) string {
	if pos.Phase == "" {
		return ""
	}
	return " in phase " + pos.Phase
}

// notHanging words what keeps the load from hanging.
func (out *Lift) notHanging(pos *Position) {
	id := NoBalance
	if pos.Result.Verdict == mechanics.OutOfReach {
		id = OutOfReach
	}
	thin := id == OutOfReach && tooThin(pos.model)
	for _, why := range pos.Result.Why {
		pointer, related := "", []facts.Related(nil)
		for _, n := range why.Lines {
			i := slices.Index(pos.layout.line, n)
			switch {
			case i < 0: // a link, which does not stretch
			case pointer == "":
				pointer = out.Legs[i].Pointer
			default:
				related = append(related, facts.Related{At: "#" + out.Legs[i].Pointer, Caption: "leg " + out.Legs[i].ID + " too"})
			}
		}
		if pointer == "" {
			pointer = pos.layout.pointerOf(why.Body)
		}
		message := why.Text
		if thin {
			message = "the slings are too thin for this mass, or one of the two is not as written: " + message
		}
		out.fail(id, pointer, message+inPhase(pos), related)
	}
	if len(pos.Result.Why) == 0 {
		out.fail(id, "/rigging/0", "no position was found in which the load hangs at rest"+inPhase(pos), nil)
	}
}

// pointerOf is where the plan describes a body of the model.
func (y *layout) pointerOf(body int) string {
	for i, b := range y.beam {
		if b == body && b >= 0 {
			return y.lift.plan.Beams[i].Item.Pointer
		}
	}
	for i, b := range y.node {
		if b == body && b >= 0 {
			return y.lift.plan.Supports[i].Pointer
		}
	}
	return "/rigging/0"
}

func (out *Lift) fail(id, pointer, message string, related []facts.Related) {
	out.Troubles = append(out.Troubles, Trouble{ID: id, Message: message, At: pointer, Related: related})
	out.Reason = "no position was found in which the load hangs"
	out.Positions = nil
}

// tooThin reports whether legs that stretch out of all reason would reach if
// they were of stiffer rope.
func tooThin(m mechanics.Model) bool {
	weight := 0.0
	for _, b := range m.Bodies {
		weight += b.MassKg * quantity.StandardGravity
	}
	m.Lines = slices.Clone(m.Lines)
	for i := range m.Lines {
		m.Lines[i].StiffnessN = max(m.Lines[i].StiffnessN, stiffWeight*weight)
	}
	result, err := mechanics.Solve(m, mechanics.Options{})
	return err == nil && result.Verdict != mechanics.OutOfReach && result.Verdict != mechanics.NoBalance
}

const (
	mostLevelings = 12
	leveledDeg    = 1e-4
)

// solve hangs the load. Several hooks are raised and lowered until it hangs as
// intended, as far as that can be done with them.
func (y *layout) solve() (mechanics.Result, mechanics.Model, error) {
	model := y.model()
	result, err := mechanics.Solve(model, mechanics.Options{})
	if err != nil || len(y.hooks()) < 2 {
		return result, model, err
	}
	for range mostLevelings {
		stood := slices.Clone(y.hookAt)
		if result.Balance == nil || result.Balance.Bodies[0].TiltDeg < leveledDeg || !y.raiseHooks(result.Balance) {
			break
		}
		next := y.model()
		leveled, err := mechanics.Solve(next, mechanics.Options{})
		if err != nil || leveled.Balance == nil || leveled.Balance.Bodies[0].TiltDeg > result.Balance.Bodies[0].TiltDeg {
			y.hookAt = stood
			break // no nearer: the rest is not for the hooks to set right
		}
		model, result = next, leveled
	}
	return result, model, nil
}

// raiseHooks moves each hook up by as much as what it holds hangs too low; false
// where nothing moves.
func (y *layout) raiseHooks(b *mechanics.Balance) bool {
	moved := false
	mean, rise := 0.0, map[int]float64{}
	for _, h := range y.hooks() {
		at, ok := y.heldBy(h)
		if !ok {
			continue
		}
		meant := y.attitude.World(at)
		rise[h] = meant.Z - b.Bodies[0].Attitude.World(at).Z
		mean += rise[h] / float64(len(y.hooks()))
	}
	for h, up := range rise {
		y.hookAt[h].Z += up - mean
		moved = moved || up != mean
	}
	return moved
}

// heldBy is the middle of the places, from the center of gravity in the load's
// axes, at which a hook holds the load.
func (y *layout) heldBy(hook int) (r3.Vec, bool) {
	var sum r3.Vec
	n := 0.0
	for i, leg := range y.lift.legs {
		if !y.carries[i] || BodyUnder(y.lift.plan, leg.Leg) != 0 || y.lift.hookOf(leg.Support) != hook {
			continue
		}
		at := r3.Sub(y.around[i].at[0], y.lift.center())
		if leg.End.Attachment != nil {
			at = r3.Sub(vector(leg.End.Attachment.At), y.lift.center())
		}
		sum, n = r3.Add(sum, at), n+1
	}
	return r3.Scale(1/max(1, n), sum), n > 0
}

// hookOf is the hook that a support hangs from, however far above; that of the
// first leg that holds its beam.
func (l *lifter) hookOf(support int) int {
	for range l.plan.Supports {
		s := l.plan.Supports[support]
		if s.Hook >= 0 {
			return s.Hook
		}
		i := slices.IndexFunc(l.legs, func(leg Leg) bool { return BodyUnder(l.plan, leg.Leg) == l.bodyOf(s.Point) })
		if i < 0 {
			return -1
		}
		support = l.legs[i].Support
	}
	return -1
}
