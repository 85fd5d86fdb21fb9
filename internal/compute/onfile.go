package compute

import (
	"math"
	"slices"
	"strconv"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/register"
)

// onFile sets what registers have on the gear, after the gear itself.
func (w *work) onFile() {
	for i, item := range w.plan.Gear {
		base := item.Base()
		if r := w.cond.OnFile[base.ID]; r != nil {
			w.itemOnFile(item, r, &w.out.Document.Gear[i])
			w.signs(item, r, w.out.Document.Gear[i].Uses)
			w.doubtful(item, r, w.out.Document.Gear[i].Uses)
		}
	}
}

func (w *work) itemOnFile(item gear.Item, r *register.Item, g *facts.Gear) {
	base := item.Base()
	records := r.InOrder(w.day)
	f := facts.OnFile{
		Record:       facts.Record{Key: "on_file/" + base.ID, At: at(base.Pointer)},
		ID:           base.ID,
		Number:       r.Number,
		Named:        onFileNamed(base.ID, r.Number),
		Kind:         string(base.Kind),
		Uses:         g.Uses,
		Status:       orNotGiven(string(r.Status)),
		Overload:     w.overload(r.Overloaded),
		HistoryKnown: notGiven,
	}
	if r.Why != "" {
		f.Because = ": " + r.Why
	}
	if r.HistoryKnown != nil {
		f.HistoryKnown = map[bool]string{true: "yes", false: "no"}[*r.HistoryKnown]
	}
	f.SerialsUnlike, f.RatedLoadsUnlike = serialsUnlike(base, r), ratedLoadsUnlike(base, r)
	f.Inspected = base.Inspection != nil
	f.Newest = newestOnRecord(base, r, isOverdue(g))
	f.Failed, f.Repair = failed(base, r, records), w.repaired(base, r, records)
	w.proof(&f, item, r)
	w.out.Document.OnFile = append(w.out.Document.OnFile, f)
}

// onFileNamed is what an item is called in a plan, or in a register by itself.
func onFileNamed(id, number string) string {
	if id == number {
		return id
	}
	return id + ", item " + number + ","
}

// byDay reports whether something on record had happened by the day of the lift;
// without a day everything has.
func (w *work) byDay(t time.Time) bool { return w.day == nil || !t.After(*w.day) }

// overload judges an overload on record. It is cleared by a person, on a day
// that is named and not before it took place. One dated after the day of the lift counts too: a year that is
// mistyped must not make it vanish.
func (w *work) overload(o *register.Overload) string {
	switch {
	case o == nil:
		return "none"
	case o.ClearedBy == "":
		return "not_cleared"
	case o.ClearedOn == nil, o.ClearedOn.Before(o.Date), w.byDay(o.Date) && !w.byDay(*o.ClearedOn):
		return "not_cleared"
	}
	return "cleared"
}

// Where a serial number or a rated load can stand.
const (
	inRegister    = "register"
	onTag         = "tag"
	onCertificate = "certificate"
)

func serialsUnlike(base *gear.Common, r *register.Item) []string {
	serials := map[string]string{inRegister: r.Serial}
	if t := base.Tag; t != nil && t.Condition == gear.Legible {
		serials[onTag] = t.Serial
	}
	if r.Certificate != nil {
		serials[onCertificate] = r.Certificate.Serial
	}
	return differing(func(place string) string { return serials[place] }, "", register.SameSerial)
}

// sameLoad is by how much two rated loads may differ as one load in two units
// does, each of them rounded.
const sameLoad = 0.01

func ratedLoadsUnlike(base *gear.Common, r *register.Item) []string {
	loads := map[string]*quantity.Load{inRegister: r.RatedLoad}
	if t := base.Tag; t != nil && t.Condition == gear.Legible && ratedStraight(base.Kind, t) {
		loads[onTag] = t.RatedLoad
	}
	if r.Certificate != nil {
		loads[onCertificate] = r.Certificate.RatedLoad
	}
	return differing(func(place string) *quantity.Load { return loads[place] }, nil, func(a, b *quantity.Load) bool {
		return math.Abs(a.Newtons-b.Newtons) <= sameLoad*max(a.Newtons, b.Newtons)
	})
}

// ratedStraight reports tags whose rated load is that of one straight pull, within 5
// degrees of which a pull counts as straight: 29 CFR 1910.184(b).
func ratedStraight(kind gear.Kind, t *gear.Tag) bool {
	return kind != gear.BridleKind && (t.AngleFromHorizontal == nil || *t.AngleFromHorizontal >= 85)
}

// differing lists the places that have a value, if any two of them differ.
func differing[T comparable](at func(place string) T, none T, same func(a, b T) bool) []string {
	var places []string
	differ := false
	for _, place := range []string{inRegister, onTag, onCertificate} {
		v := at(place)
		if v == none {
			continue
		}
		for _, other := range places {
			differ = differ || !same(v, at(other))
		}
		places = append(places, place)
	}
	if !differ {
		return nil
	}
	return places
}

func isOverdue(g *facts.Gear) bool {
	return g.Inspection != nil && g.Inspection.OverdueDays != nil && *g.Inspection.OverdueDays > 0
}

// newestOnRecord tells of the inspection that the item's due day is reckoned by.
// Where that has passed it is no longer asked for.
func newestOnRecord(base *gear.Common, r *register.Item, overdue bool) facts.LastOnRecord {
	i := base.Inspection
	if i == nil {
		return facts.LastOnRecord{At: at(base.Pointer), Outcome: notGiven}
	}
	n := facts.LastOnRecord{At: at(i.Pointer), Date: i.Date.Format(time.DateOnly), Outcome: notGiven}
	for k := range r.Inspections {
		x := &r.Inspections[k]
		if i.Pointer != inspectionPointer(base, k) {
			continue
		}
		n.Outcome = orNotGiven(string(x.Outcome))
		for _, of := range []struct {
			what  string
			given bool
		}{{"inspector", x.Inspector != ""}, {"outcome", x.Outcome != ""}, {"next_due", x.NextDue != nil || overdue}, {"measures", x.Found != nil}} {
			if !of.given {
				n.Lacks = append(n.Lacks, of.what)
			}
		}
	}
	return n
}

func inspectionPointer(base *gear.Common, i int) string {
	return base.Pointer + "/inspections/" + strconv.Itoa(i)
}

// proof finds the greatest proof test on record. One that nobody who is named has
// passed, or that has not taken place by the day of the lift, shows nothing.
func (w *work) proof(f *facts.OnFile, item gear.Item, r *register.Item) {
	f.ProofTested = "no"
	var loads []float64 // in newtons
	note := func(load *quantity.Load) {
		if load == nil {
			if f.ProofTested == "no" {
				f.ProofTested = "load_not_given"
			}
			return
		}
		f.ProofTested = "yes"
		loads = append(loads, load.Newtons)
	}
	for i := range r.Inspections {
		if x := &r.Inspections[i]; x.Kind == register.ProofTest && x.Vouched() && w.byDay(x.Date) {
			note(x.ProofLoad)
		}
	}
	if c := r.Certificate; c != nil && c.ProofLoad != nil && (c.Date == nil || w.byDay(*c.Date)) {
		note(c.ProofLoad)
	}
	rated := r.RatedLoad
	if b, ok := item.(*gear.Beam); ok && b.ProofTest != nil && (b.ProofTest.Date == nil || w.byDay(*b.ProofTest.Date)) {
		w.proofOfBeam(f, b, note)
	}
	switch {
	case f.ProofTested != "yes":
	case f.ProofRatio != nil && len(loads) == 0:
	case rated == nil || rated.Newtons == 0:
		w.wait(f.Key, []facts.Input{input(item.Base().Pointer, "rated_load", f.ID+"'s rated load")}, "proof_over_rated_ratio")
		f.ProofRatio = nil
	default:
		most := slices.Max(loads) / rated.Newtons
		if f.ProofRatio != nil {
			most = max(most, *f.ProofRatio)
		}
		f.ProofRatio = &most
	}
}

// proofOfBeam takes what a beam itself says of its proof test, as a share of its
// rated load.
func (w *work) proofOfBeam(f *facts.OnFile, b *gear.Beam, note func(*quantity.Load)) {
	if b.ProofTest.Load == nil {
		note(nil)
		return
	}
	f.ProofTested, f.ProofRatio = "yes", ptr(float64(*b.ProofTest.Load))
}
