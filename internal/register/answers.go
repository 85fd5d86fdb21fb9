package register

import (
	"slices"
	"time"
)

// thoroughness ranks the kinds of looks: each goes over all that those below it
// do. A proof test and a repair come with an inspection of the whole item.
func (k InspectionKind) thoroughness() int {
	switch k {
	case BeforeUse:
		return 0
	case Frequent:
		return 1
	case Thorough:
		return 3
	}
	return 2
}

// Words is what a record of this kind is called in a sentence.
func (k InspectionKind) Words() string {
	switch k {
	case BeforeUse:
		return "look before use"
	case Frequent, Periodic:
		return string(k) + " inspection"
	case Thorough:
		return "thorough examination"
	case ProofTest:
		return "proof test"
	}
	return "repair"
}

// AtLeast reports whether a look of this kind goes as far as one of another.
func (k InspectionKind) AtLeast(other InspectionKind) bool {
	return k.thoroughness() >= other.thoroughness()
}

// Vouched reports whether the record shows that somebody who is named found the
// item fit.
func (i *Inspection) Vouched() bool { return i.Inspector != "" && i.Passed() }

// Passed reports whether the record says that the item is fit, with remarks or
// without.
func (i *Inspection) Passed() bool { return i.Outcome == Passed || i.Outcome == PassedWithRemarks }

// Answers reports whether a later record takes away what an earlier one left open:
// that it was not passed, or does not say. Somebody who is named has to have
// passed it in an inspection that goes as far; a failed proof test is answered
// by another proof test only, and a repair never by a look that is no
// inspection of the whole item.
func (i *Inspection) Answers(earlier *Inspection) bool {
	if !i.Vouched() {
		return false
	}
	switch {
	case earlier.Kind == ProofTest:
		return i.Kind == ProofTest
	case earlier.Kind == Repair:
		return i.Kind == Repair || i.Whole()
	case i.Kind == Repair || i.Kind == ProofTest:
		return i.Kind == Repair && !earlier.Whole()
	}
	return i.Kind.AtLeast(earlier.Kind)
}

// InOrder gives the records that had been made by a day, the oldest first; of
// several on one day the one that stands last is the newest, but that one which did not
// pass the item comes after those that did, unless there was a repair that day: which
// was first no record says. Without a day it gives all.
func (i *Item) InOrder(day *time.Time) []*Inspection {
	list := make([]*Inspection, 0, len(i.Inspections))
	for n := range i.Inspections {
		if r := &i.Inspections[n]; day == nil || !r.Date.After(*day) {
			list = append(list, r)
		}
	}
	slices.SortStableFunc(list, func(a, b *Inspection) int {
		switch c := a.Date.Compare(b.Date); {
		case c != 0, failedRank(a) == failedRank(b), i.repairedOn(a.Date):
			return c
		}
		return failedRank(a) - failedRank(b)
	})
	return list
}

func (i *Item) repairedOn(day time.Time) bool {
	return slices.ContainsFunc(i.Inspections, func(r Inspection) bool { return r.Kind == Repair && r.Date.Equal(day) })
}

func failedRank(i *Inspection) int {
	if i.Outcome == Failed {
		return 1
	}
	return 0
}

// Open gives those of some records, the oldest first, that left something open,
// as wanted says, which no later one of them answers.
func Open(records []*Inspection, wanted func(*Inspection) bool) []*Inspection {
	var open []*Inspection
	for n, r := range records {
		if wanted(r) && !slices.ContainsFunc(records[n+1:], func(later *Inspection) bool { return later.Answers(r) }) {
			open = append(open, r)
		}
	}
	return open
}

// Index is the place of a record among the item's inspections; -1 for one of
// another item.
func (i *Item) Index(r *Inspection) int {
	for n := range i.Inspections {
		if &i.Inspections[n] == r {
			return n
		}
	}
	return -1
}
