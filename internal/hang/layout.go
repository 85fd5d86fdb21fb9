package hang

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/num/quat"
	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// layout is a lift laid out for one phase: who carries, where hooks and beams
// stand while the load is held as intended, and which line of the model is
// whose.
type layout struct {
	lift     *lifter
	attitude mechanics.Attitude // of the load, as intended
	given    bool               // supports stand at the heights that the plan gives, by which open lengths are found
	released map[string]bool
	inUse    []bool // by support
	carries  []bool // by leg

	hookAt []r3.Vec  // by hook: where its lowest link, or itself, takes legs
	beamAt []placing // by beam
	around []around  // by leg: the basket or choke of it

	swings   []int           // by hook: its body in the model where it swings on its hoist rope; -1 of a sole hook
	beam     []int           // by beam: its body in the model, -1 where it is not used
	node     []int           // by support below a beam: the body of what hangs there, -1 for none
	nodeLine []int           // by support: the line of that
	link     [][]int         // by support and link: its body, -1 where one leg at most hangs from it
	joint    [][]int         // the same: its group of lines
	line     []int           // by leg
	tops     []ends          // by leg, by run: the point it hangs from
	ends     []ends          // the same: the point it ends at
	open     map[int]float64 // by leg: the length that its sling needs
}

// ends are the points of a leg's two runs; nil where there is none.
type ends [2]*plan.Attachment

// placing is where a beam stands: its attitude, and its own origin.
type placing struct {
	placed   bool
	attitude mechanics.Attitude
	origin   r3.Vec
}

func (p placing) place(a *plan.Attachment) r3.Vec {
	return r3.Add(p.origin, p.attitude.World(vector(a.At)))
}

// lifter is one plan with what is the same in all its phases.
type lifter struct {
	plan  *plan.Plan
	legs  []Leg
	mass  float64
	stiff bool // the rope of some leg is not known, so that all are taken to be stiff
}

func vector(p *plan.Point) r3.Vec {
	return r3.Vec{X: float64(p.X), Y: float64(p.Y), Z: float64(p.Z)}
}

func (l *lifter) center() r3.Vec { return vector(l.plan.Load.CenterOfGravity) }

// newLayout lays a lift out with the load at a pitch and some hooks released.
func (l *lifter) newLayout(pitchDeg float64, released []string) *layout {
	y := l.unplaced(pitchDeg, released)
	y.placeAll()
	return y
}

// unplaced is a layout in which hooks and beams have no places yet.
func (l *lifter) unplaced(pitchDeg float64, released []string) *layout {
	y := &layout{lift: l, attitude: attitudeOf(pitchDeg, float64(l.plan.Load.Roll)), released: map[string]bool{}, open: map[int]float64{}}
	for _, id := range released {
		y.released[id] = true
	}
	y.findUsed()
	y.hookAt = make([]r3.Vec, len(l.plan.Hooks))
	y.beamAt = make([]placing, len(l.plan.Beams))
	y.around = make([]around, len(l.legs))
	return y
}

// attitudeOf raises the end of the x axis by the pitch and that of the y axis
// by the roll, the roll first.
func attitudeOf(pitchDeg, rollDeg float64) mechanics.Attitude {
	roll := quat.Number(mechanics.TurnBy(rollDeg*math.Pi/180, r3.Vec{X: 1}))
	pitch := quat.Number(mechanics.TurnBy(-pitchDeg*math.Pi/180, r3.Vec{Y: 1}))
	return mechanics.Attitude(quat.Mul(pitch, roll))
}

// findUsed tells which supports and legs carry: those that hang from a hook
// that is not released, however far below it.
func (y *layout) findUsed() {
	l := y.lift
	y.inUse, y.carries = make([]bool, len(l.plan.Supports)), make([]bool, len(l.legs))
	hung := make([]bool, len(l.plan.Beams)+1)
	for range l.plan.Supports { // as often as the deepest could lie
		for i, s := range l.plan.Supports {
			switch {
			case s.Hook >= 0:
				y.inUse[i] = !y.released[l.plan.Hooks[s.Hook].ID]
			default:
				y.inUse[i] = hung[l.bodyOf(s.Point)]
			}
		}
		for i, leg := range l.legs {
			if y.carries[i] = y.inUse[leg.Support]; y.carries[i] {
				hung[BodyUnder(l.plan, leg.Leg)] = true
			}
		}
	}
}

// bodyOf is 0 for a point of the load, else one more than the index of its beam.
func (l *lifter) bodyOf(a *plan.Attachment) int {
	return 1 + slices.IndexFunc(l.plan.Beams, func(b plan.Beam) bool { return a != nil && a.Beam == b.Item })
}

// point is where an attachment stands with all held as intended.
func (y *layout) point(a *plan.Attachment) r3.Vec {
	if b := y.lift.bodyOf(a); b > 0 {
		return y.beamAt[b-1].place(a)
	}
	return y.onLoad(vector(a.At))
}

// onLoad is where a point of the load stands then.
func (y *layout) onLoad(at r3.Vec) r3.Vec { return y.attitude.World(r3.Sub(at, y.lift.center())) }

// hangsAt is what the legs of a support hang from then: below a beam, plumb
// under its point.
func (y *layout) hangsAt(support int) r3.Vec {
	s := y.lift.plan.Supports[support]
	if s.Hook >= 0 {
		return y.hookAt[s.Hook]
	}
	at := y.point(s.Point)
	below, _ := heightOf(s)
	at.Z -= below
	return at
}

// UsualRopeM is the length of hoist rope above each of several hooks where the plan
// gives none, in meters: a short one (this project's own choice). On a shorter rope
// a hook swings less far after the legs that pull it aside, and leans more.
const UsualRopeM = 10.0

// headOf is what a hook hangs from: the head of the boom, plumb over where it
// stands with the load held; a sole hook is fixed, since the load comes to hang
// plumb below it.
func (y *layout) headOf(hook int) r3.Vec {
	at := y.hookAt[hook]
	if len(y.lift.plan.Hooks) > 1 {
		at.Z += y.lift.ropeM(hook)
	}
	return at
}

func (l *lifter) ropeM(hook int) float64 {
	if rope := l.plan.Hooks[hook].HoistRope; rope != nil {
		return float64(*rope)
	}
	return UsualRopeM
}

// hooks in use, by their index.
func (y *layout) hooks() []int {
	var list []int
	for i, h := range y.lift.plan.Hooks {
		if !y.released[h.ID] && slices.ContainsFunc(y.lift.plan.Supports, func(s plan.Support) bool { return s.Hook == i }) {
			list = append(list, i)
		}
	}
	return list
}

const (
	stiffestN   = 50e6  // the EA of a thick sling
	stiffWeight = 1000. // EA over the load's weight at which a plumb leg stretches by a thousandth
)

// stiffN stands for the EA of a rope of unknown diameter where statics alone
// settles the forces and the stretch only moves the load by millimeters, and for
// that of links. The stiff end hangs the legs flattest.
func (l *lifter) stiffN() float64 {
	return math.Max(stiffestN, stiffWeight*l.mass*quantity.StandardGravity)
}

func unique(list []facts.Input) []facts.Input {
	var out []facts.Input
	seen := map[facts.Input]bool{}
	for _, in := range list {
		if !seen[in] {
			seen[in] = true
			out = append(out, in)
		}
	}
	return out
}
