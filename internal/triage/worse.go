package triage

import (
	"fmt"
	"math"
	"math/big"
	"regexp"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/quantity"
)

// accepted is how bad a finding was when somebody accepted it.
type accepted struct {
	grade           string
	measured, limit *amount // nil where nothing is said of it
}

// amount is a figure as it was.
type amount struct {
	value   float64 // in the unit of the finding's field
	text    string
	rounded bool // it was read from a text: as near as the digits of a report
}

// worse says how a finding is worse than what was accepted; empty where it is
// not. Of grades, worst first, an earlier one is worse; under a later one the
// figures are those of another limit and are not compared.
func (a accepted) worse(f finding.Finding, grades []string) string {
	is, was := slices.Index(grades, f.Grade), slices.Index(grades, a.grade)
	switch {
	case f.Grade == a.grade:
	case is < 0 || was < 0:
		return fmt.Sprintf("its grade is %q, and %q was accepted", f.Grade, a.grade)
	case is < was:
		return fmt.Sprintf("its grade is %s, and %s was accepted, which is less bad", f.Grade, a.grade)
	default:
		return ""
	}
	if a.measured == nil {
		return ""
	}
	return a.figuresWorse(f)
}

func (a accepted) figuresWorse(f finding.Finding) string {
	if f.Measured == nil {
		return "the figure is not known now, and " + a.measured.text + " was accepted"
	}
	way := direction(f)
	if way == 0 {
		if !a.measured.same(*f.Measured) {
			return fmt.Sprintf("the figure is %s, and %s was accepted: which way is worse can't be told", f.Measured.Text, a.measured.text)
		}
		return ""
	}
	switch {
	case a.limit == nil:
		return "the limit then is not known"
	case a.measured.passedBy(*f.Measured, way):
		return fmt.Sprintf("the figure is %s, further beyond its limit than the %s that was accepted", f.Measured.Text, a.measured.text)
	case a.limit.passedBy(*f.Limit, -way):
		return fmt.Sprintf("the limit is %s now, stricter than the %s that the figure was accepted against", f.Limit.Text, a.limit.text)
	}
	return ""
}

// direction is the side of its limit on which a figure lies: 1 above it, -1
// below, 0 where that can't be told.
func direction(f finding.Finding) float64 {
	switch {
	case f.Measured == nil || f.Limit == nil:
		return 0
	case f.Measured.Value > f.Limit.Value:
		return 1
	case f.Measured.Value < f.Limit.Value:
		return -1
	}
	return 0
}

// passedBy reports whether a figure lies further in a direction, by more than half a
// unit of the last digit that is printed: who reads both would see no difference. One
// accepted by its text is passed where the texts tell it too, since the digits behind
// them were never seen. What is no number passes everything.
func (a amount) passedBy(f finding.Figure, way float64) bool {
	if way*(f.Value-a.value) <= 0 {
		return false
	}
	if a.rounded {
		return !(way*(printed(f)-a.value) <= 0)
	}
	return !a.near(f)
}

func (a amount) same(f finding.Figure) bool {
	return f.Value == a.value || a.rounded && printed(f) == a.value || !a.rounded && a.near(f)
}

// near reports whether both are printed alike, or differ by no more than half a unit of
// the last digit of the text that has more of them.
func (a amount) near(f finding.Figure) bool {
	if a.text == f.Text && f.Text != "" {
		return true
	}
	return math.Abs(f.Value-a.value) <= min(lastDigit(f.Field, a.text), lastDigit(f.Field, f.Text))/2
}

var lastNumber = regexp.MustCompile(`[0-9]+(\.[0-9]+)?([^0-9]*)$`)

// lastDigit is one unit of the last digit that a text has, in the unit of the field; 0
// where the text can't be read.
func lastDigit(field, text string) float64 {
	text = withoutMass(text)
	at := lastNumber.FindStringSubmatchIndex(text)
	if at == nil {
		return 0
	}
	number := text[at[0]:at[4]]
	v, ok := new(big.Rat).SetString(number)
	if !ok {
		return 0
	}
	_, decimals, _ := strings.Cut(number, ".")
	unit := new(big.Rat).SetFrac(big.NewInt(1), new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(decimals))), nil))
	more, err := parse(field, text[:at[0]]+v.Add(v, unit).FloatString(len(decimals))+text[at[4]:])
	is, err2 := parse(field, text)
	if err != nil || err2 != nil {
		return 0
	}
	return math.Abs(more - is)
}

// printed is a figure as its text has it; the figure itself where that can't be
// read.
func printed(f finding.Figure) float64 {
	if v, err := parse(f.Field, f.Text); err == nil {
		return v
	}
	return f.Value
}

// parse reads a figure as reports print it.
func parse(field, text string) (float64, error) {
	return quantity.ParseSuffix(field, withoutMass(text))
}

// withoutMass leaves out the mass behind a force, in parentheses, which says the same
// again.
func withoutMass(text string) string {
	if cut := strings.Index(text, " ("); cut > 0 && strings.HasSuffix(text, ")") {
		return text[:cut]
	}
	return text
}
