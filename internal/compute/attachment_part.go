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
	all := w.pullOf(a, legs)
	p.LoadN, p.LoadBoundN, p.JudgedBy = plus(all.judgedN, p.RiggingN), plus(all.boundN, p.RiggingN), all.by
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

// pull is what the legs that go to one attachment put on it. They pull along
// one line, so that their own forces add up; what they count for, and what
// small differences of length can do, comes along that line once, whichever of
// them carries it.
type pull struct {
	judgedN, boundN *float64
	by              *string
}

// pullOf finds the pull of some legs on an attachment; a figure is nil where that
// of one of them is not known. A basket through it pulls with both its runs.
func (w *work) pullOf(a *plan.Attachment, legs []int) pull {
	own, judged, bound := ptr(0.0), 0.0, ptr(0.0)
	by, decided := "own_force", ""
	for _, i := range legs {
		f := w.out.Document.Legs[i]
		runs := w.runsOn(a, i)
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
		if f.TensionBoundN == nil {
			bound = nil
		} else if bound != nil {
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

// runsOn is the number of runs with which a leg pulls on an attachment.
func (w *work) runsOn(a *plan.Attachment, leg int) float64 {
	if e := w.hung.Legs[leg].End; e.Kind == plan.Basket && e.Attachment == a {
		return 2
	}
	return 1
}
