package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// parts lists each piece in the way of the force: of each support what is between
// it and its legs, then leg by leg from top to bottom; each attachment after the
// first leg that goes to it, each beam after the first leg that holds it.
func (w *work) parts() {
	listed := map[*plan.Attachment]bool{}
	beams := map[*gear.Beam]bool{}
	for i, s := range w.plan.Supports {
		w.partsAbove(i, s)
		for n, leg := range s.Legs {
			index := w.legIndex(i) + n
			for k := range leg.Down {
				w.legPart(index, leg, k)
			}
			for _, a := range []*plan.Attachment{leg.End.Attachment, leg.End.Second} {
				// An insert has no rated load: its factors are facts of the attachment.
				if a == nil || listed[a] || a.Kind == plan.InsertIn {
					continue
				}
				listed[a] = true
				w.attachmentPart(a)
				if a.Beam != nil && !beams[a.Beam] {
					beams[a.Beam] = true
					w.beamPart(a.Beam)
				}
			}
		}
	}
	for i := range w.plan.Supports {
		if a := w.plan.Supports[i].Point; a != nil && !listed[a] {
			listed[a] = true
			w.attachmentPart(a)
		}
	}
}

// partsAbove are those between a support and its legs.
func (w *work) partsAbove(i int, s plan.Support) {
	for n, u := range s.By {
		w.linkPart(i, s, u, s.By[n:])
	}
	if s.Bridle != nil {
		w.bridlePart(i, s)
	}
	for k := range s.Links {
		w.intermediatePart(i, s, k)
	}
}

// linkPart carries all that hangs from its support, however the legs share; below
// are the items from there down to the legs, itself among them.
func (w *work) linkPart(support int, s plan.Support, u plan.Use, below []plan.Use) {
	p := itemPart(u, s.From)
	p.RiggingN = (massKg(below) + w.legsMassKg(s)) * quantity.StandardGravity
	w.carriesAll(&p, support)
	w.rate(&p, u.Item)
	if u.Item == s.By[0].Item && s.Point != nil {
		w.derateShackleAt(w.heldBy(support).legs, s.Point, u.Item, &p)
	}
	w.inHeat(&p, u.Item)
	w.heedMissingMasses(&p)
	w.addPart(p)
}

// legsMassKg is the mass of all that hangs below the links of a support: of one
// hook everything; else its own legs, since that of what they hold is in their
// pull.
func (w *work) legsMassKg(s plan.Support) float64 {
	if w.oneHook(s) {
		return w.riggingMassKg() - massKg(s.By)
	}
	return massKg(usesOf(s)) - massKg(s.By)
}

// oneHook reports whether a support is the one hook that everything hangs from.
func (w *work) oneHook(s plan.Support) bool { return s.Hook >= 0 && len(w.plan.Hooks) == 1 }

// heedMissingMasses takes back the force on a part where masses that are not given
// could bring it over its rated load: known to be over, it is not known to be
// under.
func (w *work) heedMissingMasses(p *facts.Part) {
	if needs := w.massNeeds(); len(needs) > 0 && p.LoadN != nil && p.RatedLoadN != nil && *p.LoadN <= *p.RatedLoadN {
		p.LoadN = nil
		w.wait(p.Key, needs, "load_n")
	}
}

// carriesAll sets what the part is judged by: below the one hook the weight of the
// load and of the part's rigging; elsewhere what the legs of its support pull
// together, and that rigging.
func (w *work) carriesAll(p *facts.Part, support int) {
	s := w.plan.Supports[support]
	p.Split = settledByStatics
	if w.oneHook(s) {
		p.JudgedBy = ptr("whole_load")
		if m := w.upperMassKg(); m != nil {
			p.LoadN = ptr(*m*quantity.StandardGravity + p.RiggingN)
		} else {
			w.wait(p.Key, []facts.Input{hang.MassInput()}, "load_n")
		}
		return
	}
	h := w.heldBy(support)
	p.Split, p.JudgedBy, p.Phase = h.split, h.by, h.phase
	p.LoadN, p.LoadBoundN = plus(h.loadN, p.RiggingN), plus(h.boundN, p.RiggingN)
	w.unheld(p, h)
}

// beamPart is a beam as a whole: all that hangs from it against its rated load.
func (w *work) beamPart(b *gear.Beam) {
	p := itemPart(plan.Use{Pointer: b.Pointer, Item: b}, w.legNames(w.legsHolding(b)))
	p.Split = settledByStatics
	sum, by := ptr(0.0), ptr("own_force")
	phases := map[string]bool{}
	for i, s := range w.plan.Supports {
		if s.Point == nil || s.Point.Beam != b {
			continue
		}
		p.RiggingN += massKg(usesOf(s)) * quantity.StandardGravity
		h := w.heldBy(i)
		h.loadN = w.ownN(i, h)
		if h.loadN == nil {
			sum, by = nil, nil
			w.unheld(&p, h)
			break
		}
		sum = ptr(*sum + *h.loadN)
		if p.Phase = h.phase; h.phase != nil {
			phases[*h.phase] = true
		}
		if *h.by != "own_force" {
			by = ptr("own_force_at_worst")
		}
	}
	if sum == nil || len(phases) != 1 {
		p.Phase = nil // none, or no single one
	}
	p.LoadN, p.JudgedBy = plus(sum, p.RiggingN), by
	w.rate(&p, b)
	w.heedMissingMasses(&p)
	w.addPart(p)
}

// legsHolding lists the legs that end at a point of a beam, by their index.
func (w *work) legsHolding(b *gear.Beam) []int {
	var list []int
	for i, leg := range w.hung.Legs {
		if a := leg.End.Attachment; a != nil && a.Beam == b {
			list = append(list, i)
		}
	}
	return list
}

// bridlePart is the bridle as a whole: what hangs from its legs against what
// its tag allows for so many of them.
func (w *work) bridlePart(support int, s plan.Support) {
	b := s.Bridle
	p := itemPart(plan.Use{Pointer: b.Pointer, Item: b.Bridle}, s.From)
	p.RiggingN = massKg(belowBridle(s)) * quantity.StandardGravity
	w.carriesAll(&p, support)
	if w.oneHook(s) {
		// What its legs hold hangs from them too, down to the load.
		p.RiggingN = (w.riggingMassKg() - massKg(s.By) - massKg(bridleOwn(s))) * quantity.StandardGravity
		if m := w.upperMassKg(); m != nil {
			p.LoadN = ptr(*m*quantity.StandardGravity + p.RiggingN)
		}
	}
	r := w.bridleRating(b.Bridle)
	if r.assemblyN == nil {
		w.unratedPart(p.Key, r)
	} else {
		p.MarkedLoadN, p.RatedLoadN = ptr(*r.assemblyN), ptr(*r.assemblyN)
		w.flatter(&p, support)
		w.inHeat(&p, heatedWith(b.Bridle)...)
		w.relate(p.Key, b.Bridle.Tag.Pointer+"/rated_load", "the rated load on its tag")
	}
	w.addPart(p)
}

// belowBridle lists the fittings that hang from the legs of a bridle.
func belowBridle(s plan.Support) []plan.Use {
	var list []plan.Use
	for _, leg := range s.Legs {
		list = append(list, leg.Down[1:]...)
	}
	return list
}

// bridleOwn lists what is part of a bridle below its master link, and all that
// hangs from its parked legs.
func bridleOwn(s plan.Support) []plan.Use {
	list := intermediateLinks(s)
	for _, leg := range s.Legs {
		list = append(list, leg.Down[0])
	}
	for _, leg := range s.Parked {
		list = append(list, leg.Down...)
	}
	return list
}

// intermediatePart carries what its legs pull together, each in its direction,
// and the weight of itself and its legs.
func (w *work) intermediatePart(support int, s plan.Support, k int) {
	l := s.Links[k]
	legs := offset(l.Legs, w.legIndex(support))
	p := itemPart(l.Use, w.legNames(legs))
	p.Key = "part/" + s.From + "/" + l.Item.Base().ID
	p.Split = settledByStatics
	below := []plan.Use{l.Use}
	for _, i := range legs {
		below = append(below, w.hung.Legs[i].Down...)
		if w.split(i) == settledByStiffness {
			p.Split = settledByStiffness
		}
	}
	for _, leg := range l.Parked {
		below = append(below, leg.Down...)
	}
	p.RiggingN = massKg(below) * quantity.StandardGravity
	p.LoadN, p.JudgedBy = w.togetherN(legs)
	p.Phase = w.samePhase(legs)
	p.LoadN = plus(p.LoadN, p.RiggingN)
	if p.Split == settledByStiffness {
		p.LoadBoundN = plus(w.togetherBoundN(support, k, legs), p.RiggingN)
	}
	for _, i := range legs {
		w.copyGaps(w.hung.Legs[i].Leg, p)
	}
	if p.LoadBoundN == nil && p.Split == settledByStiffness && w.steady() {
		w.explain(p.Key, facts.Reason{Text: "the most that the legs on it can be made to carry together could not be computed"}, "load_bound_n")
	}
	w.rate(&p, l.Item)
	w.inHeat(&p, l.Item)
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
	p.Split, p.Hitch = w.split(i), hitchOf(leg.End.Kind)
	if isSling(u) && u.Item != lastOf(leg) {
		p.Hitch = straight
	}
	p.RiggingN = massKg(leg.Down[n:]) * quantity.StandardGravity
	f := w.out.Document.Legs[i]
	p.JudgedBy, p.Phase = f.JudgedBy, f.JudgedPhase
	p.LoadN, p.LoadBoundN = plus(f.TensionJudgedN, p.RiggingN), plus(f.TensionBoundN, p.RiggingN)
	w.copyGaps(leg, p)
	w.rateInLeg(i, leg, u.Item, &p)
	switch s := w.plan.Supports[w.hung.Legs[i].Support]; {
	case n == len(leg.Down)-1 && leg.End.Kind == plan.To:
		w.derateShackleAt([]int{i}, leg.End.Attachment, u.Item, &p)
	case n == 0 && leg.End.Kind == plan.RunsTo:
		w.derateShackleAt([]int{i}, leg.End.Attachment, u.Item, &p)
	case n == len(leg.Down)-1 && leg.End.Kind == plan.RunsTo:
		w.derateShackleAt([]int{i}, leg.End.Second, u.Item, &p)
	case n > 0 && n == len(leg.Down)-1 && leg.End.Kind == plan.Basket:
		if other := w.otherSupport(w.hung.Legs[i]); len(other.By) == 0 && other.Point != nil {
			w.derateShackleAt([]int{i}, other.Point, u.Item, &p)
		}
	case n == 0 && len(s.By) == 0 && s.Point != nil:
		w.derateShackleAt([]int{i}, s.Point, u.Item, &p)
	}
	w.inHeat(&p, u.Item)
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
		Hitch:  straight,
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
	w.keepFactors(&p)
	w.out.Document.Parts = append(w.out.Document.Parts, p)
}
