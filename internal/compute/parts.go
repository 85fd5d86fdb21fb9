package compute

import (
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// parts lists each piece in the way of the force: links, then leg by leg from
// top to bottom; each attachment after the first leg that goes to it.
func (w *work) parts() {
	for _, u := range w.plan.Support.By {
		w.linkPart(u)
	}
	listed := map[*plan.Attachment]bool{}
	for i, leg := range w.plan.Support.Legs {
		for n := range leg.Down {
			w.legPart(i, leg, n)
		}
		if a := leg.End.Attachment; !listed[a] {
			listed[a] = true
			w.attachmentPart(a)
		}
	}
}

// linkPart carries all, however the legs share.
func (w *work) linkPart(u plan.Use) {
	p := itemPart(u, w.plan.Support.From)
	p.Split, p.LoadN, p.JudgedBy = settledByStatics, w.hookLoadN(), ptr("whole_load")
	p.RiggingN = w.riggingMassKg() * quantity.StandardGravity
	if p.LoadN == nil {
		w.wait(p.Key, []facts.Input{massInput()}, "load_n")
	}
	w.rate(&p, u.Item)
	if needs := w.massNeeds(); len(needs) > 0 && p.LoadN != nil && p.RatedLoadN != nil && *p.LoadN <= *p.RatedLoadN {
		// What is missing could bring it over: known to be over, it is not known to be under.
		p.LoadN = nil
		w.wait(p.Key, needs, "load_n")
	}
	w.addPart(p)
}

// massNeeds lists the items in use whose mass is not given.
func (w *work) massNeeds() []facts.Input {
	var needs []facts.Input
	for _, u := range w.uses() {
		if base := u.Item.Base(); base.Mass == nil {
			needs = append(needs, input(base.Pointer, "mass", base.ID+"'s mass"))
		}
	}
	return needs
}

// legPart carries the force in its leg, and the weight of itself and of what
// hangs below it in the leg. Adding that in full to the inclined force is
// never less than their true sum.
func (w *work) legPart(i int, leg plan.Leg, n int) {
	u := leg.Down[n]
	p := itemPart(u, leg.ID)
	p.Split = w.split()
	p.RiggingN = massKg(leg.Down[n:]) * quantity.StandardGravity
	f := w.out.Document.Legs[i]
	p.JudgedBy = f.JudgedBy
	p.LoadN, p.LoadBoundN = plus(f.TensionJudgedN, p.RiggingN), plus(f.TensionBoundN, p.RiggingN)
	w.copyGaps(leg, p)
	w.rate(&p, u.Item)
	w.addPart(p)
}

// plus adds the weight of rigging to a force, where the force is known.
func plus(forceN *float64, weightN float64) *float64 {
	if forceN == nil {
		return nil
	}
	return ptr(*forceN + weightN)
}

func itemPart(u plan.Use, where string) facts.Part {
	base := u.Item.Base()
	return facts.Part{
		Record: facts.Record{Key: "part/" + where + "/" + base.ID, At: at(u.Pointer)},
		ID:     base.ID,
		Kind:   string(base.Kind),
		Where:  where,
	}
}

// attachmentPart carries what all legs that go to it pull.
func (w *work) attachmentPart(a *plan.Attachment) {
	legs := w.legsTo(a)
	first := w.plan.Support.Legs[legs[0]]
	p := facts.Part{
		Record: facts.Record{Key: "part/attachment/" + a.ID, At: at(first.End.Pointer)},
		ID:     a.ID,
		Kind:   a.Kind,
		Where:  w.legNames(legs),
		Split:  w.split(),
	}
	all := w.pullOf(legs)
	p.LoadN, p.LoadBoundN, p.JudgedBy = all.judgedN, all.boundN, all.by
	for _, i := range legs {
		w.copyGaps(w.plan.Support.Legs[i], p)
	}
	for _, i := range legs[1:] {
		w.relate(p.Key, w.plan.Support.Legs[i].End.Pointer, "leg "+w.plan.Support.Legs[i].ID+" too")
	}
	if a.RatedLoad != nil {
		p.RatedLoadN = ptr(a.RatedLoad.Newtons)
		w.relate(p.Key, a.Pointer+"/rated_load", "its rated load")
	} else {
		w.wait(p.Key, []facts.Input{attachmentRating(a)}, "rated_load_n", "used_ratio")
	}
	w.addPart(p)
}

// copyGaps says of a part in a leg why its forces are absent.
func (w *work) copyGaps(leg plan.Leg, p facts.Part) {
	if p.LoadN == nil {
		w.out.Gaps.CopyTo(legKey(leg), "tension_judged_n", p.Key, "load_n")
		w.out.Gaps.CopyTo(legKey(leg), "tension_judged_n", p.Key, "judged_by")
	}
	if p.LoadBoundN == nil {
		w.out.Gaps.CopyTo(legKey(leg), "tension_bound_n", p.Key, "load_bound_n")
	}
}

// legsTo lists the legs that go to an attachment, by their index.
func (w *work) legsTo(a *plan.Attachment) []int {
	var list []int
	for i, leg := range w.plan.Support.Legs {
		if leg.End.Attachment == a {
			list = append(list, i)
		}
	}
	return list
}

func (w *work) legNames(legs []int) string {
	names := make([]string, len(legs))
	for n, i := range legs {
		names[n] = w.plan.Support.Legs[i].ID
	}
	return strings.Join(names, " and ")
}

// pull is what the legs that go to one attachment put on it. They pull along
// one line, so that their own forces add up; what they count for, and what
// small differences of length can do, comes along that line once, whichever of
// them carries it.
type pull struct {
	judgedN, boundN *float64
	by              *string
}

// pullOf finds the pull of some legs; a figure is nil where that of one of
// them is not known.
func (w *work) pullOf(legs []int) pull {
	own, counted, bound := ptr(0.0), 0.0, ptr(0.0)
	for _, i := range legs {
		f := w.out.Document.Legs[i]
		if f.TensionJudgedN == nil {
			own = nil
		} else if own != nil {
			own = ptr(*own + *f.TensionN)
		}
		if f.TensionCountedN != nil {
			counted = max(counted, *f.TensionCountedN)
		}
		if f.TensionBoundN == nil {
			bound = nil
		} else if bound != nil {
			bound = ptr(max(*bound, *f.TensionBoundN))
		}
	}
	switch {
	case own == nil:
		return pull{boundN: bound}
	case counted > *own:
		return pull{ptr(counted), bound, ptr("legs_counted")}
	}
	return pull{own, bound, ptr("own_force")}
}

// rate sets the rated load from the item's marking.
func (w *work) rate(p *facts.Part, item gear.Item) {
	base := item.Base()
	load, field := item.Rating()
	if why := unrated(item); why.Text != "" {
		w.explain(p.Key, why, "rated_load_n", "used_ratio")
		return
	}
	if load == nil {
		w.wait(p.Key, []facts.Input{ratingInput(base.Pointer, base.ID, field)}, "rated_load_n", "used_ratio")
		return
	}
	p.RatedLoadN = ptr(load.Newtons)
	w.relate(p.Key, base.Pointer+"/"+slashed(field), "its rated load")
}

func (w *work) addPart(p facts.Part) {
	if p.LoadN != nil && p.RatedLoadN != nil {
		p.UsedRatio = ptr(*p.LoadN / *p.RatedLoadN)
	} else if p.LoadN == nil {
		w.out.Gaps.CopyTo(p.Key, "load_n", p.Key, "used_ratio")
	}
	w.relate(p.Key, "/load/mass", "the mass")
	w.out.Document.Parts = append(w.out.Document.Parts, p)
}
