package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// parts lists each piece in the way of the force: links, then leg by leg from
// top to bottom, the attachment last.
func (w *work) parts() {
	for _, u := range w.plan.Support.By {
		w.linkPart(u)
	}
	for i, leg := range w.plan.Support.Legs {
		for _, u := range leg.Down {
			w.legPart(i, leg, u)
		}
		w.attachmentPart(i, leg)
	}
}

func (w *work) linkPart(u plan.Use) {
	p := w.newPart(u.Item.Base().ID, string(u.Item.Base().Kind), w.plan.Support.From, u.Pointer)
	p.Split = settledByStatics // it carries all, however the legs share
	if m := w.upperMassKg(); m != nil {
		p.LoadN = ptr((*m + w.riggingMassKg()) * quantity.StandardGravity)
	} else {
		w.wait(p.Key, []facts.Input{massInput()}, "load_n")
	}
	w.rate(&p, u.Item)
	w.addPart(p)
}

func (w *work) legPart(i int, leg plan.Leg, u plan.Use) {
	p := w.newPart(u.Item.Base().ID, string(u.Item.Base().Kind), leg.ID, u.Pointer)
	p.LoadN, p.LoadBoundN = w.judgedN(i), w.boundN(i)
	w.without(p.Key, "load_n", "load_bound_n")
	w.out.Gaps.CopyTo("leg/"+leg.ID, "tension_bound_n", p.Key, "load_bound_n")
	w.rate(&p, u.Item)
	w.addPart(p)
}

func (w *work) attachmentPart(i int, leg plan.Leg) {
	a := leg.End.Attachment
	p := w.newPart(a.ID, a.Kind, leg.ID, leg.End.Pointer)
	p.LoadN, p.LoadBoundN = w.judgedN(i), w.boundN(i)
	w.without(p.Key, "load_n", "load_bound_n")
	w.out.Gaps.CopyTo("leg/"+leg.ID, "tension_bound_n", p.Key, "load_bound_n")
	if a.RatedLoad != nil {
		p.RatedLoadN = ptr(a.RatedLoad.Newtons)
		w.relate(p.Key, a.Pointer+"/rated_load", "its rated load")
	} else {
		w.wait(p.Key, []facts.Input{ratingInput(a.Pointer, "attachment "+a.ID, "rated_load")}, "rated_load_n", "used_ratio")
	}
	w.addPart(p)
}

func (w *work) newPart(id, kind, where, pointer string) facts.Part {
	return facts.Part{
		Record: facts.Record{Key: "part/" + where + "/" + id, At: at(pointer)},
		ID:     id,
		Kind:   kind,
		Where:  where,
		Split:  w.split(),
	}
}

// rate sets the rated load from the item's marking.
func (w *work) rate(p *facts.Part, item gear.Item) {
	base := item.Base()
	load, field := item.Rating()
	if load != nil {
		p.RatedLoadN = ptr(load.Newtons)
		w.relate(p.Key, base.Pointer+"/"+slashed(field), "its rated load")
		return
	}
	if reason := untagged(item); reason != "" {
		w.out.Gaps.Reason(p.Key, "rated_load_n", reason)
		w.out.Gaps.Reason(p.Key, "used_ratio", reason)
		return
	}
	w.wait(p.Key, []facts.Input{ratingInput(base.Pointer, base.ID, field)}, "rated_load_n", "used_ratio")
}

// untagged tells why a sling has no rated load to go by; the tag has a rule of
// its own, so that the missing figure is not asked for a second time.
func untagged(item gear.Item) string {
	base := item.Base()
	if base.Kind != gear.WireRopeSlingKind {
		return ""
	}
	switch {
	case base.Tag == nil:
		return "no tag of " + base.ID + " is recorded"
	case base.Tag.Condition == gear.Legible:
		return base.ID + "'s tag shows no rated load"
	}
	return base.ID + "'s tag is " + string(base.Tag.Condition)
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

func (w *work) relate(key, pointer, caption string) {
	w.out.Related[key] = append(w.out.Related[key], facts.Related{At: at(pointer), Caption: caption})
}
