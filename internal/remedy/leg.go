package remedy

import (
	"fmt"

	"liftlint/internal/hang"
	"liftlint/internal/quantity"
)

const (
	mostTimes = 4.0 // no leg is offered that is longer than this times its length
	mostTries = 40

	// usualDeg is the angle from horizontal that legs are usually kept at
	// (common practice).
	usualDeg = 60.0
)

// longerLeg words the length at which the leg hangs no flatter than is asked
// for, and the one at which it hangs as legs usually do. Where the leg's tag
// asks for more than the limit, the tag decides: whichever rule asks, one leg
// is offered one length.
func (m *Mender) longerLeg(a ask) (string, bool) {
	leg, length, ok := m.legOf(a)
	if !ok {
		return "", false
	}
	limit, by := a.limit, ""
	for _, field := range []string{"band_least_from_horizontal_deg", "tag_angle_from_horizontal_deg"} {
		if tag, ok := a.number(field); ok && tag > limit {
			limit, by = tag, fmt.Sprintf(" for the %s from horizontal of its tag", inDeg(tag))
		}
	}
	offered, ok := m.lengthFor(leg, length, limit)
	if !ok {
		return "", false
	}
	in := func(lengthM float64) string { return quantity.Length(lengthM).Format(m.units) }
	const others = "; the others longer in proportion, which takes more headroom"
	usual, ok := m.lengthFor(leg, length, usualDeg)
	if !ok || usual <= offered {
		return fmt.Sprintf("a leg of at least %s bearing to bearing (now %s)%s%s%s", in(offered), in(length), by, m.slingFor(leg, offered-length), others), true
	}
	return fmt.Sprintf("for %s from horizontal a leg of %s bearing to bearing (now %s)%s; a leg of at least %s%s%s is the bare minimum, with nothing left for stretch and tolerance%s",
		inDeg(usualDeg), in(usual), in(length), m.slingFor(leg, usual-length), in(offered), by, comma(m.slingFor(leg, offered-length)), others), true
}

// comma closes what is put in between.
func comma(between string) string {
	if between == "" {
		return ""
	}
	return between + ","
}

// lengthFor finds by what factor all legs have to grow, keeping their
// proportions, for the leg to hang no flatter than the limit, and gives its
// length then. The load is hung anew for each trial, and the length that is
// offered is hung once more.
func (m *Mender) lengthFor(leg int, length, limitDeg float64) (float64, bool) {
	steep := func(factor float64) bool {
		angles, ok := hang.Angles(m.plan, func(lengthM float64) float64 { return lengthM * factor })
		return ok && angles[leg] >= limitDeg
	}
	low, high := 1.0, mostTimes
	if !steep(high) {
		return 0, false
	}
	for range mostTries {
		mid := (low + high) / 2
		if steep(mid) {
			high = mid
		} else {
			low = mid
		}
	}
	offered := m.step(length * high)
	return offered, steep(offered / length)
}

// slingFor words the length of the sling that lengthens a leg by so much,
// where the leg has one sling.
func (m *Mender) slingFor(leg int, moreM float64) string {
	slings := hang.SlingsOf(m.plan.Legs()[leg])
	if len(slings) != 1 || slings[0].Length == nil {
		return ""
	}
	return ", with a sling of " + m.upwards(float64(*slings[0].Length)+moreM)
}

// legOf finds the number and the length of the leg at fault.
func (m *Mender) legOf(a ask) (number int, lengthM float64, ok bool) {
	for i, leg := range m.facts.Document.Legs {
		if leg.Key == a.subject.Key && leg.LengthM != nil {
			return i, *leg.LengthM, true
		}
	}
	return 0, 0, false
}
