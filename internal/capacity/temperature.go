package capacity

import (
	"fmt"
	"math"
	"strconv"
)

// Thermal is what of a sling or a fitting bears on how hot and how cold it may
// get. What is not known is empty, and counts as what stands the least.
type Thermal struct {
	Kind     Kind
	Core     string   // of wire rope: "fiber" or "iwrc"
	Sleeves  []string // of the ends of wire rope: "aluminum", "steel", "none" or "socket"
	Grade    string   // of chain: "80" or "100"
	Material string   // of webbing and round slings: "polyester", "nylon", "polypropylene", "hmpe" or "aramid"
	Coating  string   // of mesh: "coated" or "none"
	Steel    string   // of fittings: "grade_8", "grade_10" or "other"
}

// coldestC is absolute zero: what is colder is no temperature.
const coldestC = -273.15

// temperatureSlackC is left for rounding where a temperature meets a limit.
const temperatureSlackC = 1e-6

// TemperatureFactor is the part of a rating that is left where the gear gets as
// cold and as hot as given, in degrees Celsius, by ASME B30.9, B30.26 and 29 CFR
// or by EN 13414-1, EN 1492 and EN 13889, trade tables for chain; the table has the basis of each row.
// Where two sources tell of the same, both have to be met. It is while the gear
// is at that temperature: what heat leaves behind is for its inspection. ok is
// false, and the factor 0, beyond the limits, where only the maker can say what
// still holds, and for what no source tells of. why names the limit, what has
// it and the source wherever the factor is under 1.
func TemperatureFactor(t Thermal, p BridlePractice, lowestC, highestC float64) (factor float64, ok bool, why string) {
	switch {
	case p != ByAngle && p != ByBand:
		return 0, false, fmt.Sprintf("no limits of temperature are known for the practice %q", p)
	case !(lowestC >= coldestC && lowestC <= highestC) || math.IsInf(highestC, 1):
		return 0, false, fmt.Sprintf("%g to %g C are no temperatures", lowestC, highestC)
	}
	factor = 1
	for _, f := range t.features() {
		left, reason := f.factor(p, lowestC, highestC)
		if left < factor {
			factor, why = left, reason
		}
	}
	return factor, factor > 0, why
}

// thermalFeature is one thing of a sling that bears on its limits: "core" is
// "fiber", of a wire rope sling.
type thermalFeature struct {
	kind     Kind
	what, is string
}

func (t Thermal) features() []thermalFeature {
	switch t.Kind {
	case WireRope, Grommet:
		features := []thermalFeature{{WireRope, "core", t.Core}}
		if len(t.Sleeves) == 0 && t.Kind == WireRope {
			return append(features, thermalFeature{WireRope, "sleeve", ""})
		}
		for _, s := range t.Sleeves {
			features = append(features, thermalFeature{WireRope, "sleeve", s})
		}
		return features
	case Chain:
		return []thermalFeature{{Chain, "grade", t.Grade}}
	case Web, Round:
		return []thermalFeature{{t.Kind, "material", t.Material}}
	case Mesh:
		return []thermalFeature{{Mesh, "coating", t.Coating}}
	case Hardware:
		return []thermalFeature{{Hardware, "steel", t.Steel}}
	}
	return []thermalFeature{{t.Kind, "any", "any"}}
}

// factor is the lowest by any source that tells of the feature, 0 where one is
// broken or none tells. The table has what was read before what was not, and of
// equals the first is named.
func (f thermalFeature) factor(p BridlePractice, lowestC, highestC float64) (left float64, why string) {
	limits := f.limits(p)
	if len(limits) == 0 {
		return 0, fmt.Sprintf("no limits of temperature are known for the kind %q whose %s is %q", f.kind, f.what, f.is)
	}
	left = 1
	for _, l := range limits {
		if by, reason := l.factor(lowestC, highestC); by < left {
			left, why = by, reason
		}
	}
	if why != "" && f.is == "" {
		why += ", and its " + f.what + " is not known"
	}
	return left, why
}

// factor is what the steps of one source leave.
func (l thermalLimit) factor(lowestC, highestC float64) (left float64, why string) {
	if lowestC < l.lowestC-temperatureSlackC {
		return 0, fmt.Sprintf("%s C is under %s C, where %s ends for %s", celsius(lowestC), celsius(l.lowestC), l.cited, l.called)
	}
	for _, s := range l.steps {
		switch {
		case highestC > s.highestC+temperatureSlackC:
			continue
		case s.factor == 1:
			return 1, ""
		}
		return s.factor, fmt.Sprintf("up to %s C %s leaves %g of a rating for %s", celsius(s.highestC), l.cited, s.factor, l.called)
	}
	end := l.steps[len(l.steps)-1].highestC
	return 0, fmt.Sprintf("%s C is over %s C, where %s ends for %s", celsius(highestC), celsius(end), l.cited, l.called)
}

func celsius(c float64) string { return strconv.FormatFloat(math.Round(c*10)/10, 'f', -1, 64) }
