package compute

import (
	"fmt"
	"strings"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
)

// How far a figure is to be relied on.
const (
	read     = "read"
	practice = "practice"
	derived  = "derived"
)

// What makes a rated load as used differ from the one that is marked.
const (
	byChokeAngle   = "choke_angle"
	byBend         = "bend"
	byEndBend      = "bend_at_end"
	byEdge         = "edge"
	byParts        = "parts"
	byShacklePull  = "shackle_pull"
	byEyeboltAngle = "eyebolt_angle"
	byTagAngle     = "tag_angle"
	byTemperature  = "temperature"
)

// takes leaves so much of what a part may carry, and keeps what does until the part
// is added.
func (w *work) takes(p *facts.Part, f facts.Factor) {
	if p.RatedLoadN == nil {
		return
	}
	p.RatedLoadN = ptr(*p.RatedLoadN * f.Ratio)
	if f.Ratio == 1 {
		return
	}
	f.Record = facts.Record{Key: "factor/" + p.Key + "/" + f.What, At: p.At}
	f.Part, f.ID, f.Where = p.Key, p.ID, p.Where
	w.pending = append(w.pending, f)
}

// inHitch is takes for what the hitch leaves.
func (w *work) inHitch(p *facts.Part, f facts.Factor) {
	if p.RatedLoadN == nil {
		return
	}
	if p.HitchRatio == nil {
		p.HitchRatio = ptr(1.0)
	}
	p.HitchRatio = ptr(*p.HitchRatio * f.Ratio)
	w.takes(p, f)
}

// unratedAsUsed takes back what a part may carry as it is used.
func (w *work) unratedAsUsed(p *facts.Part) { p.RatedLoadN, p.HitchRatio = nil, nil }

// keepFactors lists what made the rated load of a part, where that is known.
func (w *work) keepFactors(p *facts.Part) {
	if p.RatedLoadN != nil {
		p.Takes = takes(w.pending)
		w.out.Document.Factors = append(w.out.Document.Factors, w.pending...)
	}
	w.pending = nil
}

// takes words factors, as in heat, 450 C or 842 F, leaves 70 %.
func takes(list []facts.Factor) string {
	names := map[string]string{
		byChokeAngle: "the angle of the choke", byBend: "the bend", byEndBend: "the bend where it bears", byEdge: "the edge",
		byParts: "the number of parts", byShacklePull: "the pull aside", byEyeboltAngle: "the angle from its axis",
		byTagAngle: "a leg flatter than the tag's angle", byTemperature: "heat",
	}
	var said []string
	for _, f := range list {
		name := names[f.What]
		if f.TemperatureC != nil {
			name += fmt.Sprintf(", %.4g C or %.4g F,", *f.TemperatureC, *f.TemperatureC*9/5+32)
		}
		said = append(said, fmt.Sprintf("%s leaves %.3g %%", name, f.Ratio*100))
	}
	return strings.Join(said, ", and ")
}

func chokeAngleFactor(ratio, angleDeg float64) facts.Factor {
	return facts.Factor{What: byChokeAngle, Ratio: ratio, AngleDeg: &angleDeg, Source: "ASME B30.9 as trade tables give it", Basis: practice}
}

func bendFactor(ratio, bodyOverRope float64) facts.Factor {
	return facts.Factor{What: byBend, Ratio: ratio, BodyOverRatio: &bodyOverRope, Source: "marine lifting guideline, bend of rope", Basis: read}
}

func edgeFactor(ratio, bodyOverSize float64) facts.Factor {
	return facts.Factor{What: byEdge, Ratio: ratio, BodyOverRatio: &bodyOverSize, Source: "a glossary of insurers, radius of edges; marine lifting guideline, bend of rope", Basis: read}
}

// runsFactor is for one of the two runs of a basket, both of which the tag rates.
func runsFactor() facts.Factor {
	return facts.Factor{What: byParts, Ratio: 0.5, Parts: ptr(2), Source: "statics of two runs", Basis: derived}
}

func doubledFactor(ratio float64, p capacity.PartPractice) facts.Factor {
	f := facts.Factor{What: byParts, Ratio: ratio, Parts: ptr(4), Source: "statics of equal parts", Basis: derived}
	if p != capacity.EqualParts {
		f.Source, f.Basis = "marine lifting guideline, shares of parts", read
	}
	return f
}

func shacklePullFactor(ratio, offDeg float64) facts.Factor {
	return facts.Factor{What: byShacklePull, Ratio: ratio, AngleDeg: &offDeg, Source: "trade tables of shackles pulled aside, in the bands of WAC 296-155-33905", Basis: practice}
}

func eyeboltFactor(ratio, offDeg float64) facts.Factor {
	return facts.Factor{What: byEyeboltAngle, Ratio: ratio, AngleDeg: &offDeg, Source: "its own rated load at that angle, as the plan gives it", Basis: practice}
}

func tagAngleFactor(ratio, fromHorizontalDeg float64) facts.Factor {
	return facts.Factor{What: byTagAngle, Ratio: ratio, AngleDeg: &fromHorizontalDeg, Source: "statics of a leg flatter than its tag's angle", Basis: derived}
}
