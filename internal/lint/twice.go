package lint

import (
	"cmp"
	"fmt"
	"slices"

	"liftlint/internal/finding"
	"liftlint/internal/plan"
	"liftlint/internal/register"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// sameItemTwice is found where one item would have to be in two places.
const sameItemTwice = "register/same_item_twice"

// identity is what an item is known by: its number in a register, and its maker's
// serial number.
type identity struct {
	id     string // in its plan
	number string // with the register's file; empty for gear that is on no register
	shown  string // the number alone
	kind   string
	serial string
	maker  string // empty where it is not known
	place  source.Location
}

// same reports whether two are one item, and by what. Two makers may use one
// serial number; of an item whose maker is not named it is not known whose it is.
func (a identity) same(b identity) (by string, ok bool) {
	switch {
	case a.number != "" && b.number != "":
		return "item " + a.shown + " of the register", a.number == b.number
	case a.folded() == "" || a.folded() != b.folded() || a.kind != b.kind:
		return "", false
	}
	by = "serial number " + a.serial
	if a.serial != b.serial {
		by += ", written " + b.serial + " too"
	}
	return by, a.maker == "" || b.maker == "" || register.SameSerial(a.maker, b.maker)
}

// folded is what its serial number is known again by.
func (a identity) folded() string { return register.FoldedSerial(a.serial) }

// identities lists the items of a plan that are known by anything.
func (r *Result) identities(p *plan.Plan) []identity {
	list := r.onFile.Doc.Root().Get("gear").List()
	var all []identity
	for i, g := range p.Gear {
		base := g.Base()
		a := identity{id: base.ID, kind: string(base.Kind)}
		a.serial, a.maker = textAt(list[i], "serial"), textAt(list[i], "maker")
		where := base.Pointer
		if e, _, ok := r.onFile.Of(base.Pointer); ok {
			where = e.Use
			a.shown, a.number = e.Item.Number, e.Item.Place("").File+"#"+e.Item.Number
			a.serial, a.maker = cmp.Or(e.Item.Serial, a.serial), cmp.Or(e.Item.Maker, a.maker)
		}
		if a.number == "" && a.serial == "" {
			continue
		}
		a.place = r.inPlan("#" + where)
		all = append(all, a)
	}
	return all
}

// textAt is what a tag shows under a key.
func textAt(item *yamldoc.Node, key string) string {
	if n := item.Get("tag").Get(key); n != nil {
		return n.Text
	}
	return ""
}

// addTwice finds items that one plan uses twice.
func (r *Result) addTwice() {
	for i, b := range r.items {
		for _, a := range r.items[:i] {
			if by, ok := a.same(b); ok {
				message := fmt.Sprintf("%s and %s are one and the same, %s: it can't be in two places", a.id, b.id, by)
				r.addBuiltin(sameItemTwice, message, "gear/"+b.id, b.place, []finding.Related{{Caption: "its first place", Place: a.place}})
				break
			}
		}
	}
}

// SameDay finds items that two lifts of one day use, among plans that are checked
// together, where one of them at least takes it from a register: two plans that
// describe the same sling each by itself are often two versions of one lift. It
// is a warning, since one lift can follow the other. The finding stands in the
// later plan. A plan without a day is not compared: that it has none is told of
// by itself. unchanged are plans that were identified and are not checked: they go
// before all others, and nothing is found in them.
func SameDay(results, unchanged []*Result) {
	type use struct {
		result *Result
		item   identity
	}
	byNumber, bySerial := map[string][]use{}, map[string][]use{}
	sameNumber(results, unchanged)
	for i, r := range slices.Concat(unchanged, results) {
		if r == nil || r.planned == "" {
			continue
		}
		checked := i >= len(unchanged)
		for _, b := range r.items {
			candidates := bySerial[b.folded()]
			if b.number != "" {
				candidates = append(candidates[:len(candidates):len(candidates)], byNumber[b.number]...)
			}
			for _, a := range candidates {
				onFile := a.item.number != "" || b.number != ""
				if by, ok := a.item.same(b); ok && checked && onFile && a.result.planned == r.planned && !versions(a.result, r) {
					r.addSameDay(a.result, a.item, b, by)
					break
				}
			}
			if b.number != "" {
				byNumber[b.number] = append(byNumber[b.number], use{r, b})
			}
			if serial := b.folded(); serial != "" {
				bySerial[serial] = append(bySerial[serial], use{r, b})
			}
		}
	}
}

// versions reports whether two plans can be two versions of one lift.
func versions(a, b *Result) bool { return a.ID == b.ID && a.Title == b.Title }

// sameNumber finds lift numbers that two plans have. They may be two versions of
// one lift, of which only one is to be lifted by. Nothing is found in the unchanged.
func sameNumber(results, unchanged []*Result) {
	first := map[string]*Result{}
	for i, r := range slices.Concat(unchanged, results) {
		if r == nil || r.ID == "" {
			continue
		}
		other := first[r.ID]
		if other == nil {
			first[r.ID] = r
			continue
		}
		if i < len(unchanged) {
			continue
		}
		message := fmt.Sprintf("%s is the number of the lift in %s too: give this one its own or, where they are two versions of one lift, keep only the one that counts; gear that both use was not held against each other", r.ID, other.File)
		if !versions(other, r) {
			message = fmt.Sprintf("%s is the number of the lift %q in %s too: give each its own", r.ID, other.Title, other.File)
		}
		r.addBuiltin(numberTwice, message, "lift", r.inPlan("#/lift/id"), []finding.Related{{Caption: "the other plan", Place: other.inPlan("#/lift/id")}})
		r.Findings = finding.Sort(r.Findings)
	}
}

// numberTwice is found where two plans have one lift number.
const numberTwice = "plan/lift_number_twice"

func (r *Result) addSameDay(other *Result, a, b identity, by string) {
	message := fmt.Sprintf("%s is used on %s in lift %s too, as %s, %s: see that it is free in time, or use another", b.id, r.planned, other.ID, a.id, by)
	r.addBuiltin(sameItemTwice, message, "gear/"+b.id, b.place, []finding.Related{{Caption: "in lift " + other.ID, Place: a.place}}).Severity = finding.Warning
	r.Findings = finding.Sort(r.Findings)
}
