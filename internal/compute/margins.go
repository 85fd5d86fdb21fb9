package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
)

// margins sets of each leg the part that is used the most and what that has left.
func (w *work) margins() {
	parts := map[string]facts.Part{}
	for _, p := range w.out.Document.Parts {
		parts[p.Key] = p
	}
	for i := range w.out.Document.Legs {
		w.margin(&w.out.Document.Legs[i], w.hung.Legs[i], parts)
	}
}

// margin asks all parts of a leg and its ends that have a rated load. Where one is
// not known, that one might be it.
func (w *work) margin(f *facts.Leg, leg hang.Leg, parts map[string]facts.Part) {
	worst, name, known := -1.0, "", true
	for _, key := range partKeys(leg) {
		p, ok := parts[key]
		switch {
		case !ok: // an insert, which has no rated load
		case p.UsedRatio == nil:
			known = false
			w.out.Gaps.CopyTo(key, "used_ratio", f.Key, "weakest_part")
			w.out.Gaps.CopyTo(key, "used_ratio", f.Key, "margin_ratio")
		case *p.UsedRatio > worst:
			worst, name = *p.UsedRatio, p.ID
		}
	}
	if known && worst >= 0 {
		f.WeakestPart, f.MarginRatio = &name, ptr(1-worst)
	}
}

// partKeys are the keys of a leg's parts, from the top down, and of its ends.
func partKeys(leg hang.Leg) []string {
	var keys []string
	for _, u := range leg.Down {
		keys = append(keys, "part/"+leg.ID+"/"+u.Item.Base().ID)
	}
	for _, a := range []*plan.Attachment{leg.End.Attachment, leg.End.Second} {
		if a != nil {
			keys = append(keys, "part/attachment/"+a.ID)
		}
	}
	return keys
}

// samePhase is the phase that all of some legs are judged in; nil where they differ.
func (w *work) samePhase(legs []int) *string {
	var phase *string
	for n, i := range legs {
		of := w.out.Document.Legs[i].JudgedPhase
		if of == nil || n > 0 && *of != *phase {
			return nil
		}
		phase = of
	}
	return phase
}
