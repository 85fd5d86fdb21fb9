package hang

import (
	"math"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
)

// Lift is how a plan's load hangs, as far as it could be found.
type Lift struct {
	Needs     []facts.Input // what it waits for; then nothing else is known
	Troubles  []Trouble     // why it can't hang as it is described
	Reason    string        // why there are no figures though nothing is missing
	Positions []Position    // in the order of the phases; one for a lift in one attitude
	Legs      []Leg         // by leg, in the order of the plan
}

// Leg is what is known of a leg before anything hangs.
type Leg struct {
	plan.Leg
	Support int // index among the plan's supports
	Route   Route
	// OpenM is the length of its sling where the plan leaves that open and
	// gives the height of what it hangs from.
	OpenM *float64
}

// LeftOpen reports whether the plan leaves the length of one sling of the leg open
// and gives the height of what it hangs from, so that the length can be found.
func (l *Leg) LeftOpen(p *plan.Plan) bool {
	return l.Route.open != nil && p.Supports[l.Support].Height != nil
}

// Trouble is a fault of the plan that comes out when it is hung: as it is
// described, the lift can't exist.
type Trouble struct {
	ID      string
	Message string
	At      string // JSON pointer
	Related []facts.Related
}

// The troubles.
const (
	OutOfReach = "mechanics/out_of_reach"
	NoBalance  = "mechanics/no_balance"
)

// Position is the load at rest in one phase.
type Position struct {
	Phase   string // its name with the pitch; empty for a lift in one attitude
	Pitch   float64
	Result  *mechanics.Result
	Balance *mechanics.Balance // nil unless it hangs steady
	Worst   Envelope           // good only where there is a balance
	model   mechanics.Model
	layout  *layout
}

// Steady reports whether figures are known in every position.
func (l *Lift) Steady() bool {
	for _, p := range l.Positions {
		if p.Balance == nil {
			return false
		}
	}
	return len(l.Positions) > 0
}

// AtWorst reports whether it hangs steady at every corner of every position.
func (l *Lift) AtWorst() bool {
	return l.Failed() == nil
}

// Failed is the first position that does not hang steady at some corner of its
// tolerances; nil where there is none.
func (l *Lift) Failed() *Position {
	for i := range l.Positions {
		if p := &l.Positions[i]; p.Balance != nil && p.Worst.Failed != nil {
			return p
		}
	}
	return nil
}

// AsideM is how far sideways of where it was meant to be, in meters, the center of
// gravity hangs.
func (p *Position) AsideM() float64 {
	c := p.Balance.Bodies[0].CenterOfGravity // meant to be plumb over the origin
	return math.Hypot(c.X, c.Y)
}

// Line is what a leg does in a position; nil where its hook is released.
func (p *Position) Line(leg int) *mechanics.LineState {
	n := p.layout.line[leg]
	if n < 0 {
		return nil
	}
	return &p.Balance.Lines[n]
}

// InUse reports whether a leg carries in a position at all.
func (p *Position) InUse(leg int) bool { return p.layout.line[leg] >= 0 }

// Pull is a force on a point: of a leg at its end, or at what it hangs from.
type Pull struct {
	On       *plan.Attachment
	Along    [3]float64 // unit vector in the axes of the body that the point is on
	TensionN float64
}

// Pulls lists where a leg pulls on points, at both of its ends: on those of the
// load and of beams.
func (p *Position) Pulls(leg int) []Pull {
	state := p.Line(leg)
	if state == nil {
		return nil
	}
	var list []Pull
	add := func(on *plan.Attachment, run mechanics.RunState, upper bool) {
		along := run.ToPull
		if upper {
			along = run.FromPull
		}
		if on != nil {
			list = append(list, Pull{on, [3]float64{along.X, along.Y, along.Z}, run.TensionN})
		}
	}
	tops, ends := p.layout.tops[leg], p.layout.ends[leg]
	for i, run := range state.Runs {
		add(ends[i], run, false)
		add(tops[i], run, true)
	}
	return list
}

// PullBelow is the direction, in the beam's own axes, in which what hangs between
// a point of a beam and the legs of a support pulls on that point; false where
// nothing of a length does, or the support hangs from another.
func (p *Position) PullBelow(support int, on *plan.Attachment) ([3]float64, bool) {
	y := p.layout
	if s := y.lift.plan.Supports[support]; s.Point != on || y.node[support] < 0 {
		return [3]float64{}, false
	}
	along := p.Balance.Lines[y.nodeLine[support]].FromPull
	return [3]float64{along.X, along.Y, along.Z}, true
}

// Joint is what the legs on an intermediate link do together, and its index in
// the envelope; nil where one leg at most hangs from it, or its hook is released.
func (p *Position) Joint(support, link int) (*mechanics.Joint, int) {
	n := p.layout.joint[support][link]
	if n < 0 {
		return nil, -1
	}
	return &p.Balance.Together[n], n
}

// UsesBeam reports whether a beam carries in a position.
func (p *Position) UsesBeam(i int) bool { return p.layout.beam[i] >= 0 }

// BodyUnder names the body that a leg holds: 0 for the load, 1 and on for the
// beams in their order.
func BodyUnder(p *plan.Plan, leg plan.Leg) int {
	a := leg.End.Attachment
	if a == nil || a.Beam == nil {
		return 0
	}
	for i, b := range p.Beams {
		if b.Item == a.Beam {
			return i + 1
		}
	}
	return 0
}
