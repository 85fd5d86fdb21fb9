package lint

import (
	"fmt"
	"strconv"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
	"liftlint/internal/quantity"
)

// printer words the figures of one finding in the plan's units. Measured and
// limit are printed as a pair, so that rounding can't hide which is greater.
type printer struct {
	units           quantity.System
	measured, limit *finding.Figure
}

func (r *Result) printerFor(rule *policy.Rule, o policy.Outcome) printer {
	p := printer{units: r.Units}
	mf, mv, hasMeasured := rule.MeasuredOf(o)
	lf, lv, hasLimit := rule.LimitOf(o)
	if hasMeasured {
		p.measured = &finding.Figure{Field: mf, Value: mv, Text: single(mf, mv, r.Units)}
	}
	if hasLimit {
		p.limit = &finding.Figure{Field: lf, Value: lv, Text: single(lf, lv, r.Units)}
	}
	if hasMeasured && hasLimit {
		p.measured.Text, p.limit.Text = pair(mf, mv, lv, r.Units)
	}
	return p
}

// text words a value that a message names.
func (p printer) text(field string, value any) string {
	for _, f := range []*finding.Figure{p.measured, p.limit} {
		if f != nil && f.Field == field {
			return f.Text
		}
	}
	switch v := value.(type) {
	case float64:
		return single(field, v, p.units)
	case string:
		switch field {
		case "judged_by":
			return strings.ReplaceAll(strings.Replace(v, "own_force", "computed_force", 1), "_", " ")
		case "surface":
			return strings.ReplaceAll(v, "_", " ")
		}
		return v
	case []string:
		return strings.Join(v, ", ")
	}
	return fmt.Sprint(value)
}

func single(field string, v float64, units quantity.System) string {
	text, ok := quantity.FormatSuffix(field, v, units)
	if !ok {
		return strconv.FormatFloat(v, 'g', 6, 64)
	}
	if inTonnes(field, units) {
		also, _ := quantity.FormatSuffix(massName, asMass(v), units)
		text += " (" + also + ")"
	}
	return text
}

func pair(field string, measured, limit float64, units quantity.System) (string, string) {
	m, l := quantity.FormatPair(field, measured, limit, units)
	if inTonnes(field, units) {
		mt, lt := quantity.FormatPair(massName, asMass(measured), asMass(limit), units)
		m, l = m+" ("+mt+")", l+" ("+lt+")"
	}
	return m, l
}

// inTonnes reports whether a force is also shown as the mass that weighs as
// much: tags and crane charts are read in tonnes and kilograms.
func inTonnes(field string, units quantity.System) bool {
	return units == quantity.Metric && strings.HasSuffix(field, "_n")
}

// massName tells the printing of quantities that a number is in kilograms.
const massName = "mass_kg"

func asMass(newtons float64) float64 { return newtons / quantity.StandardGravity }
