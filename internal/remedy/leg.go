package remedy

import (
	"fmt"

	"liftlint/internal/compute"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

const (
	mostTimes = 4.0 // no leg is offered that is longer than this times its length
	mostTries = 40
)

// longerLeg finds by what factor all legs have to grow, keeping their
// proportions, for the leg to hang no flatter than the limit. The load is
// hung anew for each trial, and the lengths offered are hung once more.
func (m *Mender) longerLeg(a ask) (string, bool) {
	leg, length, ok := m.legOf(a)
	if !ok {
		return "", false
	}
	steep := func(factor float64) bool {
		angles, ok := compute.LegAngles(m.plan, m.cond, func(lengthM float64) float64 { return lengthM * factor })
		return ok && angles[leg] >= a.limit
	}
	low, high := 1.0, mostTimes
	if !steep(high) {
		return "", false
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
	if !steep(offered / length) {
		return "", false
	}
	return fmt.Sprintf("a leg of at least %s bearing to bearing (now %s)%s, the others longer in proportion; it takes more headroom",
		quantity.Length(offered).Format(m.units), quantity.Length(length).Format(m.units), m.slingFor(leg, offered-length)), true
}

// slingFor words the length of the sling that lengthens a leg by so much,
// where the leg has one sling.
func (m *Mender) slingFor(leg int, moreM float64) string {
	var slings []*gear.WireRopeSling
	for _, u := range m.plan.Support.Legs[leg].Down {
		if s, ok := u.Item.(*gear.WireRopeSling); ok {
			slings = append(slings, s)
		}
	}
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
