package compute

import (
	"slices"
	"strconv"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/register"
)

// failed is the newest record that did not pass the item and is not answered.
func failed(base *gear.Common, r *register.Item, records []*register.Inspection) facts.FailedOnRecord {
	open := register.Open(records, func(x *register.Inspection) bool { return x.Outcome == register.Failed })
	if len(open) == 0 {
		return facts.FailedOnRecord{At: at(base.Pointer), What: "none"}
	}
	last := open[len(open)-1]
	return facts.FailedOnRecord{At: at(inspectionPointer(base, r.Index(last))), Date: last.Date.Format(time.DateOnly), What: string(last.Kind), Named: last.Kind.Words()}
}

// repaired is the newest repair on record, and whether the item was proof-tested
// after it with no less than its rated load, which somebody who is named has to say.
// Of records of one day that which
// stands last is the newest; a certificate of the day of the repair counts as of after it.
func (w *work) repaired(base *gear.Common, r *register.Item, records []*register.Inspection) facts.RepairOnRecord {
	f := facts.RepairOnRecord{At: at(base.Pointer), ProofTested: "none"}
	var last *register.Inspection
	var since []*register.Inspection
	for n, x := range records {
		if x.Kind == register.Repair {
			last, since = x, records[n+1:]
		}
	}
	if last == nil {
		return f
	}
	f.At, f.Date, f.ProofTested = at(inspectionPointer(base, r.Index(last))), last.Date.Format(time.DateOnly), "no"
	rated := r.RatedLoad
	if t := base.Tag; rated == nil && t != nil && t.Condition == gear.Legible {
		rated = t.RatedLoad
	}
	enough := func(load *quantity.Load) bool {
		return load != nil && rated != nil && load.Newtons >= rated.Newtons
	}
	tested := last.Vouched() && enough(last.ProofLoad)
	for _, x := range since {
		tested = tested || x.Kind == register.ProofTest && x.Vouched() && enough(x.ProofLoad)
	}
	if c := r.Certificate; c != nil && enough(c.ProofLoad) && c.Date != nil && !c.Date.Before(last.Date) && w.byDay(*c.Date) {
		tested = true
	}
	if tested {
		f.ProofTested = "yes"
	}
	return f
}

// doubtful sets the records that leave open what they come to, or one that says
// that none does.
func (w *work) doubtful(item gear.Item, r *register.Item, uses int) {
	d := doubts{item: item, register: r, uses: uses}
	d.unsaid(r.InOrder(w.day))
	d.contradictory()
	d.later(w)
	if len(d.found) == 0 {
		base := item.Base()
		d.found = []facts.Doubtful{{Record: facts.Record{Key: "doubtful/" + base.ID, At: at(base.Pointer)}, ID: base.ID, Uses: uses, Doubt: "none"}}
	}
	w.out.Document.Doubtful = append(w.out.Document.Doubtful, d.found...)
}

// doubts are what is found of the records of one item.
type doubts struct {
	item     gear.Item
	register *register.Item
	uses     int
	found    []facts.Doubtful
}

func (d *doubts) add(x *register.Inspection, doubt, says string) {
	base, n := d.item.Base(), d.register.Index(x)
	d.found = append(d.found, facts.Doubtful{
		Record: facts.Record{Key: "doubtful/" + strconv.Itoa(n) + "/" + doubt + "/" + base.ID, At: at(inspectionPointer(base, n))},
		ID:     base.ID, Uses: d.uses, Date: x.Date.Format(time.DateOnly), Named: x.Kind.Words(), Doubt: doubt, Says: says,
	})
}

// isJudged reports the record that the due day is reckoned by, of which other
// rules tell.
func (d *doubts) isJudged(x *register.Inspection) bool {
	base := d.item.Base()
	return base.Inspection != nil && base.Inspection.Pointer == inspectionPointer(base, d.register.Index(x))
}

// unsaid finds records that do not say what they came to and are not answered.
func (d *doubts) unsaid(records []*register.Inspection) {
	for _, x := range register.Open(records, func(x *register.Inspection) bool { return x.Outcome == "" }) {
		switch {
		case d.isJudged(x):
		case x.Kind == register.BeforeUse || x.Kind == register.Frequent:
			d.add(x, "look_without_outcome", "no outcome")
		default:
			d.add(x, "inspection_without_outcome", "no outcome")
		}
	}
}

func (d *doubts) contradictory() {
	for n := range d.register.Inspections {
		if x := &d.register.Inspections[n]; x.NextDue != nil && x.NextDue.Before(x.Date) {
			d.add(x, "due_before_it", x.NextDue.Format(time.DateOnly))
		}
	}
}

// later finds records dated after the day that is judged for, since a year may be
// mistyped in them. What they found counts for nothing.
func (d *doubts) later(w *work) {
	for n := range d.register.Inspections {
		x := &d.register.Inspections[n]
		switch {
		case w.byDay(x.Date):
		case showsNoFitness(x, d.item):
			d.add(x, "unfit_after_the_day", outcomeWords(x, d.item))
		case !d.isJudged(x):
			d.add(x, "after_the_day", outcomeWords(x, d.item))
		}
	}
}

// showsNoFitness reports a record that does not say that the item is fit, or says
// of something that it is there that ought not to be.
func showsNoFitness(x *register.Inspection, item gear.Item) bool {
	if !x.Passed() {
		return true
	}
	return slices.ContainsFunc(signsOf(x, item), func(s facts.Sign) bool { return s.Seen != nil && *s.Seen })
}

// hasAmounts reports a record of wear, stretch, broken wires and the like, whose limits
// are for rules to know.
func hasAmounts(x *register.Inspection, item gear.Item) bool {
	return slices.ContainsFunc(signsOf(x, item), func(s facts.Sign) bool { return s.Seen == nil && amount(s) > 0 })
}

// signsOf are what one record found, by itself.
func signsOf(x *register.Inspection, item gear.Item) []facts.Sign {
	if x.Found == nil {
		return nil
	}
	var list []facts.Sign
	apart := &work{out: &facts.Facts{Gaps: facts.Gaps{}}}
	for _, l := range looks() {
		if l.given(x.Found) {
			var s facts.Sign
			l.set(&s, x.Found, apart, item)
			list = append(list, s)
		}
	}
	return list
}

func outcomeWords(x *register.Inspection, item gear.Item) string {
	switch {
	case x.Outcome == register.Failed:
		return "failed"
	case x.Outcome == "":
		return "no outcome"
	case showsNoFitness(x, item):
		return "passed, with damage found"
	case hasAmounts(x, item):
		return "passed, with figures that were not judged"
	}
	return "passed"
}
