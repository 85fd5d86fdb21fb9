package compute

import (
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/register"
)

// dueFirst is the inspection whose next is due first, with that day: the last one
// or the thorough examination before it. The day is false where it is not known.
func (w *work) dueFirst(kind gear.Kind, i *gear.Inspection) (*gear.Inspection, time.Time, bool) {
	due, ok := w.dueDay(kind, i)
	if i.Standing == nil || !ok {
		return i, due, ok
	}
	if examined, known := w.dueDay(kind, i.Standing); !known || examined.Before(due) {
		return i.Standing, examined, known
	}
	return i, due, ok
}

func inspectionNamed(i *gear.Inspection) string {
	if i.Thorough {
		return register.Thorough.Words()
	}
	return register.Periodic.Words()
}

// overruled says that the day which the inspector set does not count.
func overruled(i *gear.Inspection, due time.Time) string {
	if i.NextDue == nil || !i.NextDue.After(due) {
		return ""
	}
	return ", by the interval from " + i.Date.Format(time.DateOnly) + " on; the day on the record, " + i.NextDue.Format(time.DateOnly) + ", is later and does not count"
}

// noInspection is what an item without an inspection waits for. A register has
// others too, which do not go over the whole item.
func (w *work) noInspection(base *gear.Common) facts.Input {
	if w.cond.OnFile[base.ID] != nil {
		return input(base.Pointer, "inspections", "a periodic or thorough inspection of "+base.ID)
	}
	return input(base.Pointer, "inspection", base.ID+"'s last inspection")
}
