package compute

import (
	"fmt"
	"math"
	"slices"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
)

func (w *work) gear() {
	count := w.timesUsed()
	for _, item := range w.plan.Gear {
		base := item.Base()
		g := facts.Gear{
			Record: facts.Record{Key: "gear/" + base.ID, At: at(base.Pointer)},
			ID:     base.ID,
			Kind:   string(base.Kind),
			Uses:   count[base.ID],
			Tag:    tagOf(base),
		}
		if s, ok := item.(*gear.WireRopeSling); ok {
			g.EyeKinds = eyeKinds(s)
			w.compareDiameter(&g, s)
			if t := s.Tag; t != nil && t.Condition == gear.Legible && t.DesignFactor != nil {
				g.TagNamesDesignFactor, g.Tag.DesignFactor = true, ptr(*t.DesignFactor)
			}
		}
		length, field := item.Bearing()
		if g.LengthM = number(length); g.LengthM == nil {
			w.wait(g.Key, []facts.Input{input(base.Pointer, field, base.ID+"'s "+words(field))}, "length_m")
		}
		section, field := item.Section() // no field: it has no diameter that is read
		if g.DiameterM = number(section); g.DiameterM == nil && field != "" {
			w.wait(g.Key, []facts.Input{input(base.Pointer, field, base.ID+"'s "+words(field))}, "diameter_m")
		}
		g.Inspection = w.inspection(g.Key, base)
		w.out.Document.Gear = append(w.out.Document.Gear, g)
	}
}

func eyeKinds(s *gear.WireRopeSling) []string {
	var kinds []string
	for _, e := range []gear.Eye{s.Upper, s.Lower} {
		kind := e.Kind
		if kind == "" {
			kind = "not_given"
		}
		if !slices.Contains(kinds, kind) {
			kinds = append(kinds, kind)
		}
	}
	return kinds
}

// sameDiameter is by how much a rope and its tag may differ as the same size
// in millimeters and in inches does: 22 mm and 7/8 in are 1 % apart, sizes that
// follow each other 6 % and more.
const sameDiameter = 0.03

// compareDiameter compares a rope with its tag, where the tag names one.
func (w *work) compareDiameter(g *facts.Gear, s *gear.WireRopeSling) {
	if s.Tag == nil || s.Tag.Condition != gear.Legible || s.Tag.Diameter == nil {
		return
	}
	g.TagNamesDiameter = true
	if s.Diameter == nil {
		w.wait(g.Key, []facts.Input{input(s.Pointer, "diameter", s.ID+"'s diameter")}, "tag.diameter")
		return
	}
	g.Tag.Diameter = ptr("agrees")
	if math.Abs(float64(*s.Tag.Diameter)-float64(*s.Diameter)) > sameDiameter*float64(*s.Diameter) {
		g.Tag.Diameter = ptr("differs")
	}
}

func tagOf(base *gear.Common) facts.Tag {
	t := base.Tag
	if t == nil {
		return facts.Tag{At: at(base.Pointer), State: "not_recorded"}
	}
	return facts.Tag{At: at(t.Pointer), State: string(t.Condition), Shows: t.Shows}
}

// inspection reckons when the last inspection stops holding. The day on which
// it is due still counts as held.
func (w *work) inspection(key string, base *gear.Common) *facts.Inspection {
	i := base.Inspection
	if i == nil {
		w.wait(key, []facts.Input{input(base.Pointer, "inspection", base.ID+"'s last inspection")}, "inspection")
		return nil
	}
	f := &facts.Inspection{At: at(i.Pointer), Date: i.Date.Format(time.DateOnly)}
	due, ok := w.dueDay(base.Kind, i)
	if ok {
		f.Due = ptr(due.Format(time.DateOnly))
	} else {
		w.wait(key, []facts.Input{input(i.Pointer, "next_due", base.ID+"'s next inspection, since the profile gives no interval for its service")},
			"inspection.due", "inspection.overdue_days")
	}
	switch {
	case w.day == nil:
		w.wait(key, []facts.Input{dayInput()}, "inspection.overdue_days")
	case i.Date.After(*w.day): // it has not taken place: what it says of the next one is worth nothing
		w.explain(key, facts.Reason{Text: fmt.Sprintf("the inspection of %s on %s comes after the day of the lift, %s",
			base.ID, f.Date, w.day.Format(time.DateOnly))}, "inspection.overdue_days")
	case ok:
		f.OverdueDays = ptr(float64(daysBetween(due, *w.day)))
	}
	w.relateDay(key)
	return f
}

// relateDay points to the day that an inspection is judged for, where the
// plan itself gives it.
func (w *work) relateDay(key string) {
	if w.plan.Lift.Date == nil || w.cond.On != nil {
		return
	}
	w.out.Related[key] = append(w.out.Related[key], facts.Related{
		At: "#/lift/date", Caption: "judged for " + w.day.Format(time.DateOnly), Field: "inspection"})
}

// dueDay is the earlier of the day the inspector set and the day the
// profile's interval runs out. Where the profile gives no interval for a harder
// service the inspector has to set a day, and it counts no longer than that of
// normal service: harder work is never inspected less often.
func (w *work) dueDay(kind gear.Kind, i *gear.Inspection) (time.Time, bool) {
	months, ok := w.cond.IntervalMonths(string(kind), string(i.Service))
	if !ok {
		if i.NextDue == nil {
			return time.Time{}, false
		}
		if months, ok = w.cond.IntervalMonths(string(kind), string(gear.NormalService)); !ok {
			return *i.NextDue, true
		}
	}
	due := addMonths(i.Date, months)
	if i.NextDue != nil && i.NextDue.Before(due) {
		due = *i.NextDue
	}
	return due, true
}

// addMonths is the same day so many months on, or the last day of that month
// where it is shorter: 31 August and six months is 28 or 29 February.
func addMonths(t time.Time, months int) time.Time {
	first := time.Date(t.Year(), t.Month()+time.Month(months), 1, 0, 0, 0, 0, time.UTC)
	last := first.AddDate(0, 1, -1).Day()
	return time.Date(first.Year(), first.Month(), min(t.Day(), last), 0, 0, 0, 0, time.UTC)
}

// daysBetween counts the days from one midnight to another.
func daysBetween(from, to time.Time) int {
	return int(to.Sub(from).Hours() / 24)
}
