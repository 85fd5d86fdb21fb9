package compute

import (
	"slices"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
)

// Where the length of a splice is not given, the usual ones decide only if
// they leave more plain rope than any rule asks for, or less than the least.
const (
	plentyClearD = 20.0 // what EN 13414-1 asks for between ferrules (from memory)
	tooLittleD   = 10.0 // what 29 CFR 1910.184(f)(2) asks for (read in a state's text)
)

// clearRope sets the length of plain rope between the splices, in diameters.
func (w *work) clearRope(r *facts.Rope, s *gear.WireRopeSling) {
	longest, shortest, lengths := splicesOf(s)
	r.SplicesGiven = len(lengths) == 0
	needs := append(diameterNeed(s), w.lengthNeed(s)...)
	eyes := eyeLengthNeeds(s)
	if len(needs) > 0 {
		w.wait(r.Key, append(needs, eyes...), "clear_rope_d")
		return
	}
	least, most := w.clearD(s, longest), w.clearD(s, shortest)
	switch {
	case most < tooLittleD: // an eye not given counts as nothing here, which leaves the most
		r.ClearRopeD = &most
	case len(eyes) > 0: // splices are asked for once it is seen that they matter
		w.wait(r.Key, eyes, "clear_rope_d")
	case len(lengths) == 0 || least >= plentyClearD:
		r.ClearRopeD = &least
	default:
		w.wait(r.Key, lengths, "clear_rope_d")
	}
}

// clearD is the length of plain rope in diameters, with splices so long. An
// eye whose length is not given takes none.
func (w *work) clearD(s *gear.WireRopeSling, spliceM [2]float64) float64 {
	var eyeM [2]float64
	for i, e := range []gear.Eye{s.Upper, s.Lower} {
		if e.Length != nil {
			eyeM[i] = float64(*e.Length)
		}
	}
	return capacity.ClearRopeM(*w.lengthM(s), eyeM[0], spliceM[0], eyeM[1], spliceM[1]) / float64(*s.Diameter)
}

// splicesOf are the lengths of the upper and the lower splice in meters at the
// longest and at the shortest, and the inputs that would tell exactly.
func splicesOf(s *gear.WireRopeSling) (longest, shortest [2]float64, needs []facts.Input) {
	for i, e := range []gear.Eye{s.Upper, s.Lower} {
		end := ends[i]
		if e.SpliceLength != nil {
			longest[i], shortest[i] = float64(*e.SpliceLength), float64(*e.SpliceLength)
			continue
		}
		least, most := capacity.SpliceLengthRangeD(termination(e))
		if s.Diameter != nil {
			longest[i], shortest[i] = most*float64(*s.Diameter), least*float64(*s.Diameter)
		}
		if most > 0 {
			needs = append(needs, input(e.Pointer, "eyes."+end+".splice_length", "the length of "+s.ID+"'s "+end+" sleeve or splice"))
		}
	}
	return longest, shortest, needs
}

// ends names a sling's eyes in their order.
var ends = []string{"upper", "lower"}

// lengthM is the length of a sling, or the one that it needs where the plan leaves it
// open; nil where neither is known.
func (w *work) lengthM(s *gear.WireRopeSling) *float64 {
	if s.Length != nil {
		return number(s.Length)
	}
	for _, leg := range w.hung.Legs {
		if slices.Contains(hang.SlingsOf(leg.Leg), s) {
			return leg.OpenM
		}
	}
	return nil
}

func (w *work) lengthNeed(s *gear.WireRopeSling) []facts.Input {
	if w.lengthM(s) == nil {
		return []facts.Input{input(s.Pointer, "length", s.ID+"'s length")}
	}
	return nil
}

func eyeLengthNeeds(s *gear.WireRopeSling) []facts.Input {
	var needs []facts.Input
	for i, e := range []gear.Eye{s.Upper, s.Lower} {
		if e.Length == nil {
			needs = append(needs, input(e.Pointer, "eyes."+ends[i]+".length", s.ID+"'s "+ends[i]+" eye length"))
		}
	}
	return needs
}
