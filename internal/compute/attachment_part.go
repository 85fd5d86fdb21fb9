package compute

import (
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// attachmentPart carries what all legs that go to it pull.
func (w *work) attachmentPart(a *plan.Attachment) {
	legs := w.legsAt(a)
	p := facts.Part{
		Record: facts.Record{Key: "part/attachment/" + a.ID, At: at(w.whereAt(a, legs[0]))},
		ID:     a.ID,
		Kind:   a.Kind,
		Where:  w.legNames(legs),
		Split:  settledByStatics,
		Hitch:  straight,
	}
	if a.Beam != nil {
		p.Kind = "beam_point"
	}
	for _, i := range legs {
		if w.split(i) == settledByStiffness {
			p.Split = settledByStiffness
		}
	}
	for _, s := range w.plan.Supports {
		if s.Point == a {
			p.RiggingN += massKg(usesOf(s)) * quantity.StandardGravity
		}
	}
	all := w.pullOf(a)
	p.LoadN, p.JudgedBy = plus(all.judgedN, p.RiggingN), all.by
	if p.Split == settledByStiffness {
		p.LoadBoundN = plus(all.boundN, p.RiggingN)
	}
	p.Phase = w.samePhase(legs)
	for _, i := range legs {
		w.copyGaps(w.hung.Legs[i].Leg, p)
	}
	for _, i := range legs[1:] {
		w.relate(p.Key, w.whereAt(a, i), "leg "+w.hung.Legs[i].ID+" too")
	}
	if a.RatedLoad != nil {
		p.MarkedLoadN, p.RatedLoadN = ptr(a.RatedLoad.Newtons), ptr(a.RatedLoad.Newtons)
		w.relate(p.Key, a.Pointer+"/rated_load", "its rated load")
	} else {
		w.wait(p.Key, []facts.Input{attachmentRating(a)}, "marked_load_n", "rated_load_n", "used_ratio")
	}
	if a.Kind == plan.Eyebolt {
		w.derateEyebolt(a, legs, &p)
	}
	w.addPart(p)
}

// legsAt lists the legs that pull on an attachment or on a point of a beam, by
// their index: those that go to it, and those that hang from it.
func (w *work) legsAt(a *plan.Attachment) []int {
	var list []int
	for i, leg := range w.hung.Legs {
		if leg.End.Attachment == a || leg.End.Second == a || w.plan.Supports[leg.Support].Point == a ||
			leg.End.UpTo != nil && w.plan.Supports[*leg.End.UpTo].Point == a {
			list = append(list, i)
		}
	}
	return list
}

// whereAt is the place where the plan says that a leg pulls on an attachment.
func (w *work) whereAt(a *plan.Attachment, leg int) string {
	l := w.hung.Legs[leg]
	if l.End.Attachment == a || l.End.Second == a {
		return l.End.Pointer
	}
	return w.plan.Supports[l.Support].Pointer + "/from"
}

func (w *work) legNames(legs []int) string {
	names := make([]string, len(legs))
	for n, i := range legs {
		names[n] = w.hung.Legs[i].ID
	}
	return strings.Join(names, " and ")
}

// pull is what bears on an attachment or on a point of a beam.
type pull struct {
	judgedN, boundN *float64
	by              *string
}

// pullOf adds up what the legs that go to an attachment pull, as if they pulled one
// way, and what hangs from it. Legs from one place pull along one line: their own
// forces add up; what they count for, and what differences of length can do, comes
// along that line once, whichever of them carries it. A figure is nil where that of
// one of them is not known.
func (w *work) pullOf(a *plan.Attachment) pull {
	all := pull{ptr(0.0), ptr(0.0), ptr("own_force")}
	for _, line := range w.linesTo(a) {
		all.add(w.alongLine(a, line))
	}
	for _, i := range w.supportsAt(a) {
		h := w.heldBy(i)
		bound := h.boundN
		if h.split == settledByStatics {
			bound = h.loadN
		}
		all.add(pull{h.loadN, bound, h.by})
	}
	if all.judgedN == nil {
		all.by = nil
	}
	return all
}

// add adds another pull; what is not known of one is not known of both. The word for
// the force is that of the one that is judged by more than its own.
func (p *pull) add(other pull) {
	sum := func(a, b *float64) *float64 {
		if a == nil || b == nil {
			return nil
		}
		return ptr(*a + *b)
	}
	p.judgedN, p.boundN = sum(p.judgedN, other.judgedN), sum(p.boundN, other.boundN)
	if other.by != nil && *other.by != "own_force" && (*p.by == "own_force" || *p.by == "own_force_at_worst") {
		p.by = other.by
	}
}

// linesTo groups the legs that end at an attachment by the support they hang from.
func (w *work) linesTo(a *plan.Attachment) [][]int {
	var lines [][]int
	from := map[int]int{}
	for i, leg := range w.hung.Legs {
		if leg.End.Attachment != a && leg.End.Second != a {
			continue
		}
		n, known := from[leg.Support]
		if !known {
			n = len(lines)
			from[leg.Support] = n
			lines = append(lines, nil)
		}
		lines[n] = append(lines[n], i)
	}
	return lines
}

// alongLine is the pull of legs that pull along one line. A basket through the
// attachment pulls with both its runs.
func (w *work) alongLine(a *plan.Attachment, legs []int) pull {
	own, judged, bound := ptr(0.0), 0.0, ptr(0.0)
	by, decided := "own_force", ""
	for _, i := range legs {
		f := w.out.Document.Legs[i]
		runs := 1.0
		if e := w.hung.Legs[i].End; e.Kind == plan.Basket && e.Attachment == a {
			runs = 2
		}
		if f.TensionJudgedN == nil {
			own = nil
		} else if own != nil {
			own = ptr(*own + *f.TensionAtWorstN*runs)
			if f.WorstCorner != nil {
				by = "own_force_at_worst"
			}
			if *f.JudgedBy == "legs_counted" || *f.JudgedBy == "bound" {
				judged, decided = max(judged, *f.TensionJudgedN*runs), *f.JudgedBy
			}
		}
		switch {
		case f.Split == settledByStatics && f.TensionAtWorstN != nil && bound != nil:
			bound = ptr(max(*bound, *f.TensionAtWorstN*runs))
		case f.TensionBoundN == nil:
			bound = nil
		case bound != nil:
			bound = ptr(max(*bound, *f.TensionBoundN*runs))
		}
	}
	switch {
	case own == nil:
		return pull{boundN: bound}
	case judged > *own:
		return pull{ptr(judged), bound, &decided}
	}
	return pull{own, bound, &by}
}
