package onfile

import (
	"strconv"
	"time"

	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/register"
)

// History gives each item of the plan that is on file its newest inspection by
// the day of the lift, and its record. Without a day all inspections count.
func (p *Plan) History(of *plan.Plan, day *time.Time) map[string]*register.Item {
	items := map[string]*register.Item{}
	byID := map[string]Entry{}
	for _, e := range p.Entries {
		items[e.ID], byID[e.ID] = e.Item, e
	}
	for _, g := range of.Gear {
		if e, ok := byID[g.Base().ID]; ok {
			g.Base().Inspection = newest(e, day)
		}
	}
	return items
}

// newest is the newest inspection that goes over an item as a whole, as a plan
// would give it. One that comes after the day of the lift counts only where
// there is no other: what it says is then judged as if the plan gave it.
func newest(e Entry, day *time.Time) *gear.Inspection {
	found := newestOf(e, day, (*register.Inspection).Whole)
	if found == nil || found.Thorough {
		return found
	}
	found.Standing = newestOf(e, day, func(r *register.Inspection) bool {
		return r.Kind == register.Thorough && (day == nil || !r.Date.After(*day))
	})
	return found
}

// newestOf is the newest of the inspections that are wanted; nil where there is
// none.
func newestOf(e Entry, day *time.Time, wanted func(*register.Inspection) bool) *gear.Inspection {
	best := -1
	for i := range e.Item.Inspections {
		if !wanted(&e.Item.Inspections[i]) {
			continue
		}
		if best < 0 || later(e.Item.Inspections[i].Date, e.Item.Inspections[best].Date, day) {
			best = i
		}
	}
	if best < 0 {
		return nil
	}
	return asInPlan(&e.Item.Inspections[best], e.Pointer+"/inspections/"+strconv.Itoa(best))
}

// later reports whether a counts before b: the later one of those not after the
// day, otherwise the earlier. Of two on one day the one that stands last.
func later(a, b time.Time, day *time.Time) bool {
	if day == nil {
		return !a.Before(b)
	}
	switch aPast, bPast := !a.After(*day), !b.After(*day); {
	case aPast != bPast:
		return aPast
	case aPast:
		return !a.Before(b)
	}
	return !b.Before(a)
}

func asInPlan(r *register.Inspection, pointer string) *gear.Inspection {
	i := &gear.Inspection{Pointer: pointer, Date: r.Date, Service: r.Service, NextDue: r.NextDue, Thorough: r.Kind == register.Thorough}
	if i.Service == "" {
		i.Service = gear.NormalService
	}
	switch r.Outcome {
	case register.Failed:
		i.Void = gear.NotPassed
	case "":
		i.Void = gear.NoOutcome
	}
	return i
}
