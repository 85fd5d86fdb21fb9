package remedy

import (
	"fmt"
	"math"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/quantity"
)

// How far a make-up may be off the length that is needed, as a share of it, and of
// how many slings it is made at most.
const (
	mostOver   = 0.02
	mostUnder  = 0.05
	mostSlings = 3
)

// makeUp words what takes the place of a sling whose length is open: slings of the
// plan's gear that work nowhere, joined by such shackles, whose lengths come nearest;
// or the length to order. Either is hung before it is offered.
func (m *Mender) makeUp(a ask) (string, bool) {
	number, leg, ok := m.openLeg(a)
	if !ok {
		return "", false
	}
	need := *leg.LengthNeededM
	if best, ok := m.nearestMakeUp(number, leg); ok {
		return fmt.Sprintf("%s: %s together, where %s is needed", best.words(), quantity.Length(best.lengthM).Format(m.units), quantity.Length(need).Format(m.units)), true
	}
	order := math.Round(need/m.orderStep()) * m.orderStep()
	if !m.hangsWith(number, order-need) {
		return "", false
	}
	return fmt.Sprintf("order a sling of %s bearing to bearing; no slings of the plan that work nowhere come near that", quantity.Length(order).Format(m.units)), true
}

// orderStep is what lengths to order are rounded to.
func (m *Mender) orderStep() float64 {
	if m.units == quantity.US {
		return usStepM / 2
	}
	return metricStepM
}

// openLeg finds the number of the leg at fault.
func (m *Mender) openLeg(a ask) (int, facts.Leg, bool) {
	if m.plan == nil {
		return 0, facts.Leg{}, false
	}
	for i, leg := range m.facts.Document.Legs {
		if leg.Key == a.subject.Key && leg.LengthOpen && leg.LengthNeededM != nil {
			return i, leg, true
		}
	}
	return 0, facts.Leg{}, false
}

// made is a make-up: slings in their order, a shackle between each two.
type made struct {
	slings, shackles []string
	lengthM          float64
}

func (x made) words() string {
	text := strings.Join(x.slings, " and ")
	if len(x.shackles) > 0 {
		text += " joined by " + strings.Join(x.shackles, " and ")
	}
	return text
}

// nearer reports whether a make-up comes nearer to what is needed than another, or
// as near with fewer slings.
func (x made) nearer(other made, needM float64) bool {
	closer := math.Abs(other.lengthM-needM) - math.Abs(x.lengthM-needM)
	return closer > sameM || closer > -sameM && len(x.slings) < len(other.slings)
}

// nearestMakeUp is the make-up whose length is nearest to what a leg needs; of two,
// that of fewer slings.
func (m *Mender) nearestMakeUp(number int, leg facts.Leg) (made, bool) {
	need := *leg.LengthNeededM
	slings, shackles := m.spare(gear.WireRopeSlingKind, leg), m.spare(gear.ShackleKind, leg)
	var best made
	found := false
	var add func(from int, x made)
	add = func(from int, x made) {
		off := x.lengthM - need
		if len(x.slings) > 0 && off <= mostOver*need && -off <= mostUnder*need &&
			(!found || x.nearer(best, need)) && m.hangsWith(number, off) {
			best, found = x, true
		}
		joint := len(x.slings) - 1 // of the next shackle
		if len(x.slings) == mostSlings || joint >= len(shackles) || x.lengthM > need*(1+mostOver) {
			return
		}
		for i := from; i < len(slings); i++ {
			next := made{append(append([]string{}, x.slings...), slings[i].id), x.shackles, x.lengthM + slings[i].lengthM}
			if joint >= 0 {
				next.shackles = append(append([]string{}, x.shackles...), shackles[joint].id)
				next.lengthM += shackles[joint].lengthM
			}
			add(i+1, next)
		}
	}
	add(0, made{})
	return best, found
}

// spare is a part that works nowhere.
type spare struct {
	id      string
	lengthM float64
}

// spare lists those parts of a kind that work nowhere, of known length, and rated for
// what the leg carries.
func (m *Mender) spare(kind gear.Kind, leg facts.Leg) []spare {
	var list []spare
	for _, g := range m.facts.Document.Gear {
		if g.Uses > 0 || g.InBridle || g.Kind != string(kind) || g.LengthM == nil || !m.carries(g.ID, leg) {
			continue
		}
		list = append(list, spare{g.ID, *g.LengthM})
	}
	return list
}

// carries reports whether an item is rated for what a leg is judged by; false where
// either is not known.
func (m *Mender) carries(id string, leg facts.Leg) bool {
	for _, item := range m.plan.Gear {
		if item.Base().ID == id {
			load, _ := item.Rating()
			return load != nil && leg.TensionJudgedN != nil && load.Newtons >= *leg.TensionJudgedN
		}
	}
	return false
}

// hangsWith hangs the load with the open sling of a leg so much longer than it needs
// to be, in meters.
func (m *Mender) hangsWith(number int, moreM float64) bool {
	if m.facts.Document.Legs[number].Doubled {
		moreM /= 2
	}
	tried := hang.Try(m.plan, hang.Change{LengthM: func(leg int, nowM float64) float64 {
		if leg == number {
			return nowM + moreM
		}
		return nowM
	}}, true)
	if !tried.Stands(0) {
		return false
	}
	own, worst := tried.TiltDeg()
	return own <= levelDeg && worst <= levelDeg
}
