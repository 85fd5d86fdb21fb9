package capacity

import (
	"math"
	"strconv"
	"strings"
	"sync"

	"liftlint/internal/quantity"
)

const anyPractice BridlePractice = "any"

// thermalLimit is what one source tells of one feature: the coldest, and by how
// hot it gets what is left of a rating.
type thermalLimit struct {
	practice BridlePractice // or anyPractice
	of       thermalFeature
	called   string // what the limit is for, in words
	cited    string // the source, and that it is from memory where it is
	lowestC  float64
	steps    []thermalStep // rising
}

// thermalStep is a factor up to a temperature.
type thermalStep struct{ highestC, factor float64 }

// limits are those that hold for a feature; for one that is not known, those of
// all that it could be.
func (f thermalFeature) limits(p BridlePractice) []thermalLimit {
	var limits []thermalLimit
	for _, l := range thermalLimits() {
		same := l.of.kind == f.kind && l.of.what == f.what && (f.is == "" || l.of.is == f.is)
		if same && (l.practice == p || l.practice == anyPractice) {
			limits = append(limits, l)
		}
	}
	return limits
}

// thermalLimits joins the rows that follow each other for the same feature by the
// same source.
var thermalLimits = sync.OnceValue(func() []thermalLimit {
	var limits []thermalLimit
	for _, row := range embeddedRows("temperature-limits.csv") {
		l := thermalLimit{
			practice: BridlePractice(row["practice"]),
			of:       thermalFeature{Kind(row["kind"]), row["feature"], row["is"]},
			called:   row["called"],
			cited:    row["source"],
			lowestC:  math.Inf(-1),
		}
		if row["basis"] == "memory" {
			l.cited += " (from memory)"
		}
		if row["lowest"] != "" {
			l.lowestC = float64(must(quantity.ParseTemperature(row["lowest"])))
		}
		if last := len(limits) - 1; last < 0 || !limits[last].sameAs(l) {
			limits = append(limits, l)
		}
		last := &limits[len(limits)-1]
		last.steps = append(last.steps, thermalStep{
			float64(must(quantity.ParseTemperature(row["highest"]))),
			must(strconv.ParseFloat(row["factor"], 64)),
		})
	}
	return append(limits, fittingLimits(limits)...)
})

// fittingLimits are those of links and hooks of a chain's grade, which stand what the
// chain does (common practice).
func fittingLimits(all []thermalLimit) []thermalLimit {
	steels := map[string]string{"80": "grade_8", "100": "grade_10"}
	var limits []thermalLimit
	for _, l := range all {
		if steel, ok := steels[l.of.is]; ok && l.of.kind == Chain {
			l.of, l.called = thermalFeature{Hardware, "steel", steel}, "fittings of "+strings.ReplaceAll(steel, "_", " ")
			limits = append(limits, l)
		}
	}
	return limits
}

func (l thermalLimit) sameAs(other thermalLimit) bool {
	return l.practice == other.practice && l.of == other.of && l.cited == other.cited && l.lowestC == other.lowestC
}
