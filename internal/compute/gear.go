package compute

import (
	"fmt"
	"slices"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

func (w *work) gear() {
	count := w.timesUsed()
	part, hooks, chain := w.partOf(), w.hooksOfBridles(), w.chainHeld()
	for _, item := range w.plan.Gear {
		base, in := item.Base(), part[item.Base().ID]
		inspectedIn := in
		if in == nil && base.Inspection == nil {
			inspectedIn = hooks[base.ID]
		}
		g := facts.Gear{
			Record:              facts.Record{Key: "gear/" + base.ID, At: at(base.Pointer)},
			ID:                  base.ID,
			Kind:                string(base.Kind),
			Uses:                count[base.ID],
			Hitches:             w.hitchesOf(item),
			ChainGrade:          chainGrade(item),
			Mesh:                meshOf(item),
			OfChain:             ofChain(item),
			Fabric:              fabricOf(item),
			Steel:               seriesOf(item),
			Labels:              base.Labels,
			InBridle:            in != nil,
			TaggedWithBridle:    in != nil && base.Tag == nil,
			InspectedWithBridle: inspectedIn != nil && base.Inspection == nil,
			Tag:                 tagOf(base),
		}
		g.TemperatureGiven, g.LowestC, g.HighestC = w.temperature()
		w.sizes(&g, item)
		g.GrommetCore, g.GrommetSleeve = ofGrommet(item)
		w.own(&g, item)
		againstChain(&g, item, chain[base.ID])
		w.tag(&g, item)
		w.holdAgainstRope(&g, item)
		w.overVertical(&g, item)
		w.holdAgainstSection(&g, item)
		w.breakingLoad(&g, item)
		g.LookedOver, g.FaultsSeen = base.LookedOver, base.FaultsSeen
		if g.SeenOn.At = g.At; g.LookedOver {
			g.SeenOn.At = at(base.Pointer + "/faults_seen")
		}
		w.inspected(&g, base, inspectedIn)
		w.out.Document.Gear = append(w.out.Document.Gear, g)
	}
}

// partOf tells of each item, by its id, which bridle it is part of.
func (w *work) partOf() map[string]*gear.Bridle {
	part := map[string]*gear.Bridle{}
	for _, item := range w.plan.Gear {
		if b, ok := item.(*gear.Bridle); ok {
			for _, m := range b.Members() {
				part[m.Base().ID] = b
			}
		}
	}
	return part
}

// temperature is how cold and how hot the gear gets, whichever of the two the
// plan calls lowest.
func (w *work) temperature() (given bool, lowestC, highestC *float64) {
	t := w.plan.Lift.Temperature
	if t == nil {
		return false, nil, nil
	}
	a, b := float64(t.Lowest), float64(t.Highest)
	return true, ptr(min(a, b)), ptr(max(a, b))
}

// sizes sets length and diameter of what has one.
func (w *work) sizes(g *facts.Gear, item gear.Item) {
	base := item.Base()
	length, field := item.Bearing() // no field: it has no length that is read
	if g.LengthM = number(length); g.LengthM == nil && field != "" {
		w.wait(g.Key, []facts.Input{input(base.Pointer, field, base.ID+"'s "+words(field))}, "length_m")
	}
	section, field := item.Section()
	if g.DiameterM = number(section); g.DiameterM == nil && field != "" {
		w.wait(g.Key, []facts.Input{input(base.Pointer, field, base.ID+"'s "+words(field))}, "diameter_m")
	}
}

// own sets what only one kind of gear has.
func (w *work) own(g *facts.Gear, item gear.Item) {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		g.EyeKinds = eyeKinds(x)
	case *gear.InLine:
		w.setTo(g, x)
	case *gear.Shackle:
		w.pinTurned(g, x)
		if x.PinKind != "" {
			g.PinKind = &x.PinKind
			return
		}
		w.wait(g.Key, []facts.Input{input(x.Pointer, "pin_kind", x.ID+"'s kind of pin")}, "pin_kind")
	}
}

// setTo holds the length that a turnbuckle or an adjuster is set to against its
// range.
func (w *work) setTo(g *facts.Gear, x *gear.InLine) {
	if x.Kind != gear.TurnbuckleKind && x.Kind != gear.AdjusterKind {
		return
	}
	if x.Length != nil && x.Shortest != nil && x.Longest != nil {
		g.OutsideRangeM = ptr(max(0, float64(*x.Shortest-*x.Length), float64(*x.Length-*x.Longest)))
		return
	}
	for _, of := range []struct {
		field, label string
		value        *quantity.Length
	}{{"length", "length", x.Length}, {"shortest", "shortest length", x.Shortest}, {"longest", "longest length", x.Longest}} {
		if of.value == nil {
			w.wait(g.Key, []facts.Input{input(x.Pointer, of.field, x.ID+"'s "+of.label)}, "outside_range_m")
		}
	}
}

func eyeKinds(s *gear.WireRopeSling) []string {
	var kinds []string
	for _, e := range []gear.Eye{s.Upper, s.Lower} {
		kind := e.Kind
		if kind == "" {
			kind = notGiven
		}
		if !slices.Contains(kinds, kind) {
			kinds = append(kinds, kind)
		}
	}
	return kinds
}

// notGiven stands among words for what the plan does not say.
const notGiven = "not_given"

// inspected sets the item's last inspection, or that of the bridle it is part
// of: that holds for all its members that have none of their own. How long
// either holds goes by the bridle.
func (w *work) inspected(g *facts.Gear, base *gear.Common, in *gear.Bridle) {
	kind := base.Kind
	if in != nil {
		kind = gear.BridleKind
		if base.Inspection == nil {
			base = &in.Common
		}
	}
	g.Inspection = w.inspection(g.Key, kind, base)
}

// inspection reckons when the last inspection stops holding. The day on which
// it is due still counts as held.
func (w *work) inspection(key string, kind gear.Kind, base *gear.Common) *facts.Inspection {
	i := base.Inspection
	if i == nil {
		w.wait(key, []facts.Input{w.noInspection(base)}, "inspection")
		return nil
	}
	void := i.Void
	i, due, ok := w.dueFirst(kind, i)
	f := &facts.Inspection{At: at(i.Pointer), Named: inspectionNamed(i), Date: i.Date.Format(time.DateOnly)}
	if ok {
		f.Due, f.Because = ptr(due.Format(time.DateOnly)), overruled(i, due)
	} else {
		w.wait(key, []facts.Input{input(i.Pointer, "next_due", base.ID+"'s next inspection, since the profile gives no interval for its service")},
			"inspection.due", "inspection.overdue_days")
	}
	switch {
	case w.day == nil:
		w.wait(key, []facts.Input{dayInput()}, "inspection.overdue_days")
	case i.Date.After(*w.day): // it has not taken place: what it says of the next one is worth nothing
		w.explain(key, facts.Reason{Text: fmt.Sprintf("the inspection of %s on %s comes after the day that is judged for, %s",
			base.ID, f.Date, w.day.Format(time.DateOnly))}, "inspection.overdue_days")
	case i.Void != "" || void != "": // what it found, or that it says nothing of that, is told by rules over the record
		w.explain(key, facts.Reason{Text: fmt.Sprintf("the inspection of %s on %s does not show that it is fit", base.ID, f.Date), ToldOf: base.ID}, "inspection.overdue_days")
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
