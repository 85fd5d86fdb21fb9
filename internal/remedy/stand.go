package remedy

import (
	"fmt"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

const (
	// riseM is by how much the center of gravity of a load that is offered to stand
	// may rise (common practice): no more is known of such heights.
	riseM = 0.05

	standTries = 16   // halvings: to a few millimeters of the longest leg
	stretched  = 1.02 // by how much more is tried where the corners ask for more
	stretches  = 25
	mostLowerM = 10.0
)

// higherHook words what makes a load stand that turns over: longer legs, all in
// proportion; below a beam its drops, or the legs above it; or a lower center of
// gravity. Each is hung anew before it is offered.
func (m *Mender) higherHook(ask) (string, bool) {
	if m.plan == nil {
		return "", false
	}
	var offers []string
	for _, g := range m.groups() {
		if text, ok := m.longer(g); ok {
			offers = append(offers, text)
		}
	}
	if len(offers) > 0 {
		return strings.Join(offers, "; or ") + "; which takes more headroom", true
	}
	return m.lower()
}

// group is legs that are made longer together.
type group struct {
	what string
	has  func(plan.Leg) bool
}

func (m *Mender) groups() []group {
	holdsLoad := func(leg plan.Leg) bool { return hang.BodyUnder(m.plan, leg) == 0 }
	if len(m.plan.Beams) == 0 {
		return []group{{"legs", holdsLoad}}
	}
	return []group{
		{"drops below the beam", holdsLoad},
		{"legs above the beam", func(leg plan.Leg) bool { return !holdsLoad(leg) }},
	}
}

// longer finds the least lengths of a group of legs, all in proportion, with which
// the load stands.
func (m *Mender) longer(g group) (string, bool) {
	legs := m.plan.Legs()
	by := func(factor float64) hang.Change {
		return hang.Change{LengthM: func(leg int, nowM float64) float64 {
			if !g.has(legs[leg]) {
				return nowM
			}
			return m.step(nowM * factor)
		}}
	}
	factor, tilt, ok := m.least(1, mostTimes, by)
	if !ok {
		return "", false
	}
	var all []string
	for i, leg := range m.facts.Document.Legs {
		if g.has(legs[i]) {
			if leg.LengthM == nil {
				return "", false
			}
			all = append(all, m.fromTo(leg, m.step(*leg.LengthM*factor)))
		}
	}
	return fmt.Sprintf("%s of at least, bearing to bearing, %s%s", g.what, strings.Join(all, ", "), tilt), true
}

func (m *Mender) fromTo(leg facts.Leg, toM float64) string {
	return fmt.Sprintf("%s %s (now %s)", leg.ID, quantity.Length(toM).Format(m.units), quantity.Length(*leg.LengthM).Format(m.units))
}

// lower finds by how much lower the center of gravity has to lie.
func (m *Mender) lower() (string, bool) {
	by := func(lowerM float64) hang.Change { return hang.Change{LowerM: m.step(lowerM)} }
	lowerM, tilt, ok := m.least(0, mostLowerM, by)
	if !ok {
		return "", false
	}
	return fmt.Sprintf("hold the load by points at least %s higher than these, or bring its center of gravity down by as much%s", m.upwards(lowerM), tilt), true
}

// least finds the least amount of a change, from one that does not do to one that
// does, with which the load stands; false where the most does not do either. It is
// sought as the plan has it, and then grown until the load stands within the
// tolerances too. What it then tilts is told where it is more than level enough.
func (m *Mender) least(none, most float64, by func(float64) hang.Change) (x float64, tilt string, ok bool) {
	stands := func(x float64) bool { return hang.Try(m.plan, by(x), false).Stands(riseM) }
	if !stands(most) {
		return 0, "", false
	}
	low, high := none, most
	for range standTries {
		if mid := (low + high) / 2; stands(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	for range stretches {
		if high > most {
			break
		}
		if tried := hang.Try(m.plan, by(high), true); tried.Stands(riseM) {
			return high, tilts(tried), true
		}
		high *= stretched
	}
	return 0, "", false
}

func tilts(l *hang.Lift) string {
	if own, _ := l.TiltDeg(); own > levelDeg {
		return ", with which it hangs tilted by " + inDeg(own)
	}
	return ""
}
