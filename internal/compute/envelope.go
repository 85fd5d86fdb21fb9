package compute

import (
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
	"liftlint/internal/mechanics"
)

// envelope is how the load hangs at the corners of what the plan gives
// tolerances of: the box of the center of gravity, and the lengths of the legs.
type envelope struct {
	corners int
	// The first corner, of the center of gravity or of the lengths, where it does not hang
	// steady; its verdict and where that is.
	failed      *mechanics.Result
	failedAt    string
	tiltDeg     float64
	ownN        []float64 // by leg: the most with the lengths as given
	ownAt       []string
	lengthN     []float64 // by leg: the most with lengths within their tolerance
	bounds      []float64 // by leg: the largest bound at any center of gravity
	together    []float64 // by group: the same
	lengthGroup []float64 // by group: the most with lengths within their tolerance
	lengths     bool      // every sling has a tolerance of its length
}

// slack below which a force at a corner is not greater than the own one.
const sameForce = 1e-9

// envelope hangs the load at all corners. It costs nothing where the plan gives
// no tolerance.
func (w *work) envelope(model mechanics.Model) {
	b := w.pose.balance
	e := &w.pose.worst
	e.tiltDeg = b.Bodies[0].TiltDeg
	e.lengths = w.split() == settledByStiffness && w.allLengthTolerances()
	for _, l := range b.Lines {
		e.ownN = append(e.ownN, l.TensionN)
		e.ownAt = append(e.ownAt, "")
		e.lengthN = append(e.lengthN, l.TensionN)
		e.bounds = append(e.bounds, boundOf(l.Bound))
	}
	for _, j := range b.Together {
		e.together = append(e.together, boundOf(j.Bound))
		e.lengthGroup = append(e.lengthGroup, j.MagnitudeN)
	}
	for _, c := range w.centers() {
		shifted := model
		shifted.Bodies = []mechanics.Body{model.Bodies[0]}
		shifted.Bodies[0].CenterOfGravity = r3.Add(model.Bodies[0].CenterOfGravity, c.shift)
		if c.name != "" && !e.center(w, shifted, c.name) {
			return
		}
		if e.lengths && !e.stretch(w, shifted, w.lengthTolerances(), c.name) {
			return
		}
	}
}

// boundOf is a bound as a number; infinite where there is none.
func boundOf(b mechanics.Bound) float64 {
	if b.Meaning == mechanics.AnySplit || b.Meaning == mechanics.Determinate {
		return b.TensionN
	}
	return math.Inf(1)
}

// center takes one position of the center of gravity; false where the load does
// not hang steady there.
func (e *envelope) center(w *work, m mechanics.Model, name string) bool {
	e.corners++
	result, err := w.solve(m)
	if err != nil || result.Verdict != mechanics.Steady {
		e.failed, e.failedAt = &result, centerAt(name)
		return false
	}
	b := result.Balance
	e.tiltDeg = max(e.tiltDeg, b.Bodies[0].TiltDeg)
	for i, l := range b.Lines {
		if l.TensionN > e.ownN[i]*(1+sameForce) {
			e.ownN[i], e.ownAt[i] = l.TensionN, name
		}
		e.bounds[i] = max(e.bounds[i], boundOf(l.Bound))
	}
	for i, j := range b.Together {
		e.together[i] = max(e.together[i], boundOf(j.Bound))
	}
	return true
}

// stretch takes all corners of the lengths, at one position of the center of
// gravity; false where the load does not hang steady at one.
func (e *envelope) stretch(w *work, m mechanics.Model, tolerances []float64, name string) bool {
	for corner := range 1 << len(tolerances) {
		e.corners++
		long := m
		long.Lines = append([]mechanics.Line{}, m.Lines...)
		for i, t := range tolerances {
			if corner>>i&1 == 0 {
				t = -t
			}
			long.Lines[i].LengthM += t
		}
		result, err := w.solve(long)
		if err != nil || result.Verdict != mechanics.Steady {
			e.failed, e.failedAt = &result, "legs at the ends of their length tolerance"
			if name != "" {
				e.failedAt = centerAt(name) + " and " + e.failedAt
			}
			return false
		}
		for i, l := range result.Balance.Lines {
			e.lengthN[i] = max(e.lengthN[i], l.TensionN)
		}
		for i, j := range result.Balance.Together {
			e.lengthGroup[i] = max(e.lengthGroup[i], j.MagnitudeN)
		}
	}
	return true
}

func centerAt(name string) string { return "its center of gravity at " + name + " of its tolerance" }

// position is a place of the center of gravity within its tolerance.
type position struct {
	shift r3.Vec
	name  string // empty as the plan has it
}

// centers lists the plan's own center of gravity and the corners of its box.
func (w *work) centers() []position {
	list := []position{{}}
	t := w.plan.Load.CenterTolerance
	if t == nil {
		return list
	}
	for corner := range 8 {
		var shift [3]float64
		var words []string
		for i, axis := range []string{"x", "y", "z"} {
			sign := "+"
			shift[i] = float64(*t)
			if corner>>i&1 == 0 {
				sign, shift[i] = "-", -shift[i]
			}
			words = append(words, sign+axis)
		}
		list = append(list, position{r3.Vec{X: shift[0], Y: shift[1], Z: shift[2]}, strings.Join(words, " ")})
	}
	return list
}

// lengthTolerances adds up those of each leg's slings.
func (w *work) lengthTolerances() []float64 {
	var list []float64
	for _, leg := range w.plan.Support.Legs {
		sum := 0.0
		for _, s := range slingsOf(leg) {
			sum += float64(*s.LengthTolerance)
		}
		list = append(list, sum)
	}
	return list
}

func (w *work) allLengthTolerances() bool {
	for _, leg := range w.plan.Support.Legs {
		for _, s := range slingsOf(leg) {
			if s.LengthTolerance == nil {
				return false
			}
		}
	}
	return true
}

// describeWorst sets how the load hangs at its worst.
func (h hanging) describeWorst(l *facts.Load) {
	l.Corners = h.worst.corners
	l.HangsAtWorst = l.Hangs
	if h.balance == nil {
		return
	}
	if f := h.worst.failed; f != nil {
		l.HangsAtWorst, l.WorstCorner = ptr(verdictAtWorst(*f)), ptr(h.worst.failedAt)
		return
	}
	l.TiltAtWorstDeg = ptr(h.worst.tiltDeg)
}

func verdictAtWorst(r mechanics.Result) string {
	if r.Verdict != mechanics.Overturns {
		return "does_not_balance"
	}
	for _, why := range r.Why {
		if why.Cause == mechanics.PointsBelow {
			return "points_below_center_of_gravity"
		}
	}
	return "overturns"
}

// notAtWorst says why figures at the worst corner are absent.
func (h hanging) notAtWorst() facts.Reason {
	return facts.Reason{Text: "the load does not hang steady with " + h.worst.failedAt, Told: true}
}
