package report

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/quantity"
)

// Hanging are the decisive figures of a plan, in its units: how the load hangs
// and what each leg carries. Tables begin with a row of heads.
type Hanging struct {
	Words       []string   // of the load, the hooks and the legs that count, to be joined
	Legs        [][]string // a row for each leg; none where the load turns over
	AboveLegs   string     // what carries several legs, empty where nothing does
	InsideBeams string     // compression and bending of each beam, empty without beams
	Phases      [][]string // a row for each position, of a lift in several
}

// HangingOf gives the figures of a plan; false where it was not computed how the
// load hangs.
func HangingOf(r *lint.Result) (Hanging, bool) {
	if r == nil || r.Facts == nil || len(r.Facts.Document.Loads) == 0 || r.Facts.Document.Loads[0].Hangs == nil {
		return Hanging{}, false
	}
	d := &r.Facts.Document
	h := Hanging{Words: hangSentences(d, r.Units)}
	if d.Loads[0].TiltDeg == nil {
		return h, true
	}
	h.Legs, h.AboveLegs, h.InsideBeams = legRows(d, r.Units), aboveLegs(d, r.Units), insideBeams(d, r.Units)
	if len(d.Positions) > 0 {
		h.Phases = phaseRows(d, r.Units)
	}
	return h, true
}

// hangSentences tell of the load, the hook and the legs that count.
func hangSentences(d *facts.Document, units quantity.System) []string {
	load := d.Loads[0]
	out := []string{hangs(*load.Hangs)}
	if load.WorstCorner != nil {
		out[0] += " as the plan has it, and not with " + *load.WorstCorner
	}
	if load.TiltDeg != nil {
		out = append(out, "tilted by "+figure("tilt_deg", *load.TiltDeg, units))
	}
	if load.TiltAtWorstDeg != nil && load.Corners > 0 {
		out = append(out, "by up to "+figure("tilt_deg", *load.TiltAtWorstDeg, units)+" within its tolerances")
	}
	out = append(out, onHooks(d, units)...)
	out = append(out, ropesTaken(d, units)...)
	if load.Phases > 1 {
		out = append(out, fmt.Sprintf("looked at in %d positions, of which each figure is the worst", load.Phases))
	}
	if n, of := d.Lifts[0].LegsThatCount, legsThatShare(d); load.TiltDeg != nil && n > 0 && n < of {
		out = append(out, fmt.Sprintf("%d of %d legs are taken to carry", n, of))
	}
	return out
}

// legsThatShare counts the legs whose share is counted and not settled by statics.
func legsThatShare(d *facts.Document) int {
	n := 0
	for _, l := range d.Legs {
		if l.TensionCountedN != nil {
			n++
		}
	}
	return n
}

// onHooks tells the force on each hook.
func onHooks(d *facts.Document, units quantity.System) []string {
	var out []string
	for _, h := range d.Hooks {
		switch {
		case h.LoadN == nil:
		case h.OfSeveral:
			out = append(out, figure("load_n", *h.LoadN, units)+" on hook "+h.ID)
		default:
			out = append(out, figure("load_n", *h.LoadN, units)+" on the hook")
		}
	}
	return out
}

// ropesTaken tells that hoist ropes of which the plan gives no length are taken as so
// long.
func ropesTaken(d *facts.Document, units quantity.System) []string {
	for _, h := range d.Hooks {
		if h.RopeTakenM > 0 {
			return []string{"hoist ropes taken as " + figure("length_m", h.RopeTakenM, units)}
		}
	}
	return nil
}

// insideBeams tells the compression and bending moment in each beam, with its share
// of what it is rated for where that is given, and how it is tilted.
func insideBeams(d *facts.Document, units quantity.System) string {
	var beams []string
	for _, b := range d.Beams {
		if b.TiltDeg == nil || b.CompressionN == nil || b.BendingNm == nil {
			continue
		}
		beams = append(beams, fmt.Sprintf("%s compression %s%s, bending moment %s%s, tilted by %s", b.ID,
			figure("compression_n", *b.CompressionN, units), ofRated(b.CompressionRatio, units),
			figure("bending_nm", *b.BendingNm, units), ofRated(b.BendingRatio, units), figure("tilt_deg", *b.TiltDeg, units)))
	}
	return strings.Join(beams, "; ")
}

// ofRated is a share of what something is rated for, in brackets; nothing where that
// is not known.
func ofRated(ratio *float64, units quantity.System) string {
	if ratio == nil {
		return ""
	}
	return " (" + figure("used_ratio", *ratio, units) + " of rated)"
}

// phaseRows has a row for each position and a column for each leg, with the force
// in it.
func phaseRows(d *facts.Document, units quantity.System) [][]string {
	head := []string{"phase"}
	for _, l := range d.Legs {
		head = append(head, l.ID)
	}
	rows := [][]string{head}
	for _, x := range d.Positions {
		if x.Leg == d.Legs[0].ID {
			rows = append(rows, []string{x.Phase})
		}
		cell := "released"
		if x.TensionN != nil {
			cell = figure("tension_n", *x.TensionN, units)
		}
		rows[len(rows)-1] = append(rows[len(rows)-1], cell)
	}
	return rows
}

// hangs words how the load hangs.
func hangs(state string) string {
	switch state {
	case "overturns":
		return "it would turn over, so that no forces in the legs are given"
	case "points_below_center_of_gravity":
		return "it would turn over, its points lying below its center of gravity, so that no forces in the legs are given"
	}
	return strings.ReplaceAll(state, "_", " ")
}

func figure(field string, si float64, units quantity.System) string {
	text, _ := quantity.FormatSuffix(field, si, units)
	return text
}

// legRows has a row for each leg, below a row of heads.
func legRows(d *facts.Document, units quantity.System) [][]string {
	rows := [][]string{{"leg", "to", "from horizontal", "computed", "design force", "worst split", "highest utilization"}}
	optional := func(field string, v *float64) string {
		if v == nil {
			return "-"
		}
		return figure(field, *v, units)
	}
	for _, l := range d.Legs {
		rows = append(rows, []string{
			l.ID, l.To,
			optional("angle_from_horizontal_deg", l.AngleFromHorizontalDeg),
			optional("tension_n", l.TensionN),
			optional("tension_judged_n", l.TensionJudgedN),
			optional("tension_bound_n", l.TensionBoundN),
			mostUsed(d, l.ID, units),
		})
	}
	return rows
}

// mostUsed names the part of a leg that is used the most. A part that is not
// known might be it.
func mostUsed(d *facts.Document, leg string, units quantity.System) string {
	worst, name := -1.0, "-"
	for _, part := range d.Parts {
		if part.Where != leg {
			continue
		}
		if part.UsedRatio == nil {
			return "not known"
		}
		if *part.UsedRatio > worst {
			worst, name = *part.UsedRatio, part.ID+" "+figure("used_ratio", *part.UsedRatio, units)
		}
	}
	return name
}

// severalLegs reports a part that works neither in one leg nor at its end.
func severalLegs(d *facts.Document, part facts.Part) bool {
	inLeg := slices.ContainsFunc(d.Legs, func(l facts.Leg) bool { return l.ID == part.Where })
	atEnd := slices.ContainsFunc(d.Attachments, func(a facts.Attachment) bool { return part.Key == "part/"+a.Key })
	return !inLeg && !atEnd
}

// aboveLegs names what carries several legs, with its share of its rated load.
func aboveLegs(d *facts.Document, units quantity.System) string {
	var parts []string
	for _, part := range d.Parts {
		switch {
		case !severalLegs(d, part):
		case part.UsedRatio == nil:
			parts = append(parts, part.ID+" not known")
		default:
			parts = append(parts, part.ID+" "+figure("used_ratio", *part.UsedRatio, units))
		}
	}
	return strings.Join(parts, ", ")
}
