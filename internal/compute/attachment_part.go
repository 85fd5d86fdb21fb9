package compute

import (
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
)

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
	by := "own_force"
	for _, i := range legs {
		f := w.out.Document.Legs[i]
		if f.TensionJudgedN == nil {
			own = nil
		} else if own != nil {
			own = ptr(*own + *f.TensionAtWorstN)
			if f.WorstCorner != nil {
				by = "own_force_at_worst"
			}
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
	return pull{own, bound, &by}
}
