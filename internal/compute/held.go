package compute

import (
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// held is what hangs from a support: what all ends of slings on it pull together.
type held struct {
	loadN, boundN *float64 // nil where it is not known
	by, phase     *string
	split         string
	legs          []int // those with an end on it
}

// heldBy finds what hangs from a support. What statics settles is the most at any
// corner. Where legs share with those of other supports, and stiffness settles how,
// it is no less than what they are judged by.
func (w *work) heldBy(support int) held {
	h := held{split: settledByStatics}
	for _, end := range w.hung.EndsOn(support) {
		if !slices.Contains(h.legs, end.Leg) {
			h.legs = append(h.legs, end.Leg)
		}
	}
	if !w.steady() || w.hung.Failed() != nil {
		return h
	}
	w.heldAtWorst(support, &h)
	if !w.sharedBeyond(support, h.legs) {
		return h
	}
	h.split = settledByStiffness
	w.heldAsJudged(support, &h)
	return h
}

// heldAtWorst sets the most that hangs from a support at any corner.
func (w *work) heldAtWorst(support int, h *held) {
	s := w.plan.Supports[support]
	most := 0.0
	h.by = ptr("own_force")
	for _, p := range w.hung.Positions {
		if p.Worst.Corners > 0 {
			h.by = ptr("own_force_at_worst")
		}
		is := p.Worst.SupportN[support]
		if s.Hook >= 0 {
			is = max(is, p.Worst.Hooks[s.Hook].LoadN)
		}
		if is > most || h.phase == nil {
			most, h.phase = max(most, is), phaseOf(p)
		}
	}
	h.loadN = &most
}

// sharedBeyond reports whether legs on a support share what they hold with legs of
// other supports, and stiffness settles how.
func (w *work) sharedBeyond(support int, legs []int) bool {
	return slices.ContainsFunc(legs, func(i int) bool {
		if w.split(i) != settledByStiffness {
			return false
		}
		return slices.ContainsFunc(w.hung.Positions, func(p hang.Position) bool {
			return p.InUse(i) && slices.ContainsFunc(p.Group(i), func(j int) bool { return w.hung.Legs[j].Support != support })
		})
	})
}

// ownN is what hangs from a support by the legs' own forces at their worst, however
// they are judged: what all of them hold together is settled. It is nil where it is
// not known.
func (w *work) ownN(support int, h held) *float64 {
	if h.loadN == nil {
		return nil
	}
	own := held{}
	w.heldAtWorst(support, &own)
	return own.loadN
}

// heldAsJudged raises what hangs from a support to what its legs are judged by, and
// adds the most that any lengths can bring about.
func (w *work) heldAsJudged(support int, h *held) {
	judged, by := h.loadN, *h.by
	bound := ptr(0.0)
	for _, i := range h.legs {
		f := w.out.Document.Legs[i]
		if f.TensionJudgedN == nil {
			judged = nil
			break
		}
		if *f.JudgedBy == "legs_counted" || *f.JudgedBy == "bound" {
			by = *f.JudgedBy
		}
	}
	for _, p := range w.hung.Positions {
		if judged != nil {
			if is := p.PullOnN(support, func(i int) float64 { return *w.out.Document.Legs[i].TensionJudgedN }); is > *judged {
				judged, h.by = &is, &by
			}
		}
		for _, i := range h.legs {
			if w.out.Document.Legs[i].TensionBoundN == nil && w.split(i) == settledByStiffness {
				bound = nil
			}
		}
		if bound != nil {
			bound = ptr(max(*bound, p.PullOnN(support, func(i int) float64 {
				f := w.out.Document.Legs[i]
				return max(value(f.TensionBoundN), value(f.TensionAtWorstN))
			})))
		}
	}
	h.loadN, h.boundN = judged, bound
	if judged == nil {
		h.by, h.phase = nil, nil
	}
}

// unheld says why the forces on what carries all that hangs from a support are not
// known.
func (w *work) unheld(p *facts.Part, h held) {
	for _, i := range h.legs {
		key := legKey(w.hung.Legs[i].Leg)
		if p.LoadN == nil {
			w.out.Gaps.CopyTo(key, "tension_judged_n", p.Key, "load_n")
			w.out.Gaps.CopyTo(key, "tension_judged_n", p.Key, "judged_by")
		}
		if p.LoadBoundN == nil && p.Split == settledByStiffness {
			w.out.Gaps.CopyTo(key, "tension_bound_n", p.Key, "load_bound_n")
		}
	}
}

// supportsAt lists the supports, by their index, that hang from a point of a beam.
func (w *work) supportsAt(a *plan.Attachment) []int {
	var list []int
	for i := range w.plan.Supports {
		if w.plan.Supports[i].Point == a {
			list = append(list, i)
		}
	}
	return list
}
