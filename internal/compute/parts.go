package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// parts lists each piece in the way of the force: what is between the hook and
// the legs, then leg by leg from top to bottom; each attachment after the first
// leg that goes to it.
func (w *work) parts() {
	for n, u := range w.plan.Support.By {
		w.linkPart(u, w.plan.Support.By[:n])
	}
	if b := w.plan.Support.Bridle; b != nil {
		w.bridlePart(b)
	}
	for i, l := range w.plan.Support.Links {
		w.intermediatePart(i, l)
	}
	listed := map[*plan.Attachment]bool{}
	for i, leg := range w.plan.Support.Legs {
		for n := range leg.Down {
			w.legPart(i, leg, n)
		}
		// An insert has no rated load: its factors are facts of the attachment.
		if a := leg.End.Attachment; !listed[a] && a.Kind != plan.InsertIn {
			listed[a] = true
			w.attachmentPart(a)
		}
	}
}

// linkPart carries all, however the legs share; above are the items that it
// does not carry.
func (w *work) linkPart(u plan.Use, above []plan.Use) {
	p := itemPart(u, w.plan.Support.From)
	p.RiggingN = (w.riggingMassKg() - massKg(above)) * quantity.StandardGravity
	w.carriesAll(&p)
	w.rate(&p, u.Item)
	if needs := w.massNeeds(); len(needs) > 0 && p.LoadN != nil && p.RatedLoadN != nil && *p.LoadN <= *p.RatedLoadN {
		// What is missing could bring it over: known to be over, it is not known to be under.
		p.LoadN = nil
		w.wait(p.Key, needs, "load_n")
	}
	w.addPart(p)
}

// carriesAll sets the weight of the load and of the part's rigging as what the
// part is judged by.
func (w *work) carriesAll(p *facts.Part) {
	p.Split, p.JudgedBy = settledByStatics, ptr("whole_load")
	if m := w.upperMassKg(); m != nil {
		p.LoadN = ptr(*m*quantity.StandardGravity + p.RiggingN)
	} else {
		w.wait(p.Key, []facts.Input{massInput()}, "load_n")
	}
}

// bridlePart is the bridle as a whole: what hangs from its legs against what
// its tag allows for so many of them.
func (w *work) bridlePart(b *plan.BridleUse) {
	p := itemPart(plan.Use{Pointer: b.Pointer, Item: b.Bridle}, w.plan.Support.From)
	p.RiggingN = massKg(w.belowBridle()) * quantity.StandardGravity
	w.carriesAll(&p)
	r := w.bridleRating()
	if r.assemblyN == nil {
		w.unratedPart(p.Key, r)
	} else {
		p.MarkedLoadN, p.RatedLoadN = ptr(*r.assemblyN), ptr(*r.assemblyN*w.flatterShare())
		w.relate(p.Key, b.Bridle.Tag.Pointer+"/rated_load", "the rated load on its tag")
	}
	w.addPart(p)
}

// belowBridle lists the fittings that hang from the legs of a bridle.
func (w *work) belowBridle() []plan.Use {
	var list []plan.Use
	for _, leg := range w.plan.Support.Legs {
		list = append(list, leg.Down[1:]...)
	}
	return list
}

// intermediatePart carries what its legs pull together, each in its direction,
// and the weight of itself and its legs.
func (w *work) intermediatePart(i int, l plan.LinkUse) {
	p := itemPart(l.Use, w.legNames(l.Legs))
	p.Key = "part/" + w.plan.Support.From + "/" + l.Item.Base().ID
	p.Split = w.split()
	below := []plan.Use{l.Use}
	for _, n := range l.Legs {
		below = append(below, w.plan.Support.Legs[n].Down...)
	}
	for _, leg := range l.Parked {
		below = append(below, leg.Down...)
	}
	p.RiggingN = massKg(below) * quantity.StandardGravity
	p.LoadN, p.JudgedBy = w.togetherN(l.Legs)
	p.LoadN = plus(p.LoadN, p.RiggingN)
	p.LoadBoundN = plus(w.togetherBoundN(i), p.RiggingN)
	for _, n := range l.Legs {
		w.copyGaps(w.plan.Support.Legs[n], p)
	}
	if p.LoadBoundN == nil && p.Split == settledByStiffness && w.pose.balance != nil {
		w.explain(p.Key, facts.Reason{Text: "the most that the legs on it can be made to carry together could not be computed"}, "load_bound_n")
	}
	w.rate(&p, l.Item)
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
	if n == len(leg.Down)-1 {
		w.derateShackle(i, leg, u.Item, &p)
	}
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

func (w *work) addPart(p facts.Part) {
	if p.LoadN != nil && p.RatedLoadN != nil {
		p.UsedRatio = ptr(*p.LoadN / *p.RatedLoadN)
	} else if p.LoadN == nil {
		w.out.Gaps.CopyTo(p.Key, "load_n", p.Key, "used_ratio")
	}
	w.relate(p.Key, "/load/mass", "the mass")
	w.out.Document.Parts = append(w.out.Document.Parts, p)
}
