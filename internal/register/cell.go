package register

import (
	"errors"
	"regexp"
	"slices"
	"strings"

	"liftlint/internal/nearest"
	"liftlint/internal/quantity"
	"liftlint/internal/source"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// value is what a cell comes to, as YAML would have it.
type value struct {
	text  string
	plain bool // a number, true or false
	valid bool // by the schema of its field alone
	// Of a cell that can't be read.
	id, why string
}

func (v value) node(at source.Place) *yamldoc.Node {
	if v.plain {
		return yamldoc.Plain(v.text, "", at)
	}
	return yamldoc.Text(v.text, "", at)
}

func refused(id, why string) value { return value{id: id, why: why} }

// settings are how a column writes its values.
type settings struct {
	unit        string
	order       dayOrder
	decimal     decimalSign
	numbersFrom int
	words       map[string]string
}

func (b *binding) settings(t target) settings {
	s := settings{unit: t.spec.Unit, order: t.spec.Dates, decimal: t.spec.Decimal, words: t.words}
	if c := b.columns; c != nil {
		if s.order == "" {
			s.order = c.Dates
		}
		if s.decimal == "" {
			s.decimal = c.Decimal
		}
		s.numbersFrom = c.DayNumbersFrom
	}
	return s
}

var (
	// formulaText is how spreadsheets are made to keep zeros at the front.
	formulaText = regexp.MustCompile(`^="(.*)"$`)
	// cutShort is a long number that a spreadsheet has shown with an exponent.
	cutShort = regexp.MustCompile(`^\d[.,]?\d*E\+?\d+$`)
	// sheetError is what a spreadsheet shows of a formula that fails, or of a
	// column that is too narrow.
	sheetError = regexp.MustCompile(`^#(N/A|NV|REF!|BEZUG!|VALUE!|WERT!|NAME\?|DIV/0!|NUM!|ZAHL!|NULL!|#+)$`)
)

// convert reads a cell that is not blank as what its field takes.
func convert(cell string, f validate.Field, kinds []string, s settings) value {
	text := strings.Trim(cell, " \t\u00a0\u202f\n")
	if m := formulaText.FindStringSubmatch(text); m != nil {
		text = m[1]
	}
	if sheetError.MatchString(text) {
		return refused(BadValue, quote(text)+" is a spreadsheet's own error, no value")
	}
	if means, ok := s.words[text]; ok {
		text = means
	}
	switch {
	case kinds != nil:
		return oneOf(text, kinds, "is no kind of gear")
	case len(f.Words) > 0:
		return oneOf(text, f.Words, "is none of the values here")
	case f.Quantity != 0:
		return convertQuantity(text, f.Quantity, s)
	case f.Day:
		plain, why := plainDay(text, s.order, s.numbersFrom)
		if why != "" {
			return refused("register/bad_date", why)
		}
		return value{text: plain}
	case f.Type == "boolean":
		return convertBool(text)
	case f.Type == "integer", f.Type == "number":
		return convertNumber(text, f.Type, s)
	case cutShort.MatchString(text):
		return refused(BadValue, quote(text)+" is a long number that a spreadsheet has cut short; format the column as text and enter it anew")
	}
	return value{text: text}
}

// oneOf takes a word in any case, with blanks for underscores.
func oneOf(text string, allowed []string, what string) value {
	word := strings.ReplaceAll(strings.ToLower(text), " ", "_")
	for _, a := range allowed {
		if a == text || strings.ToLower(a) == word {
			return value{text: a}
		}
	}
	if near, ok := nearest.Name(word, allowed); ok && len(word) > 2 {
		what += ": did you mean " + quote(near) + "?"
	} else {
		what += "."
	}
	return refused("register/not_allowed", quote(text)+" "+what+" Say under `words` what it means: "+quoteAll(allowed))
}

func convertBool(text string) value {
	switch strings.ToLower(text) {
	case "true", "false":
		return value{text: strings.ToLower(text), plain: true}
	}
	return refused(BadValue, quote(text)+" is neither true nor false; say under `words` which it means")
}

func convertNumber(text, kind string, s settings) value {
	plain, why := plainNumber(text, s.decimal)
	if why != "" {
		return refused(BadNumber, why)
	}
	plain = strings.TrimPrefix(plain, "+")
	if !wholeOrDecimal.MatchString(plain) {
		return refused(BadNumber, quote(text)+" is no number")
	}
	if kind == "integer" {
		whole, decimals, _ := strings.Cut(plain, ".")
		if strings.Trim(decimals, "0") != "" {
			return refused(BadNumber, quote(text)+" is no whole number")
		}
		plain = whole
	}
	return value{text: plain, plain: true}
}

var wholeOrDecimal = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)

// convertQuantity reads a number with its unit, which the cell or its column
// names. A cell's own unit comes first.
func convertQuantity(text string, k quantity.Kind, s settings) value {
	plain, why := plainNumber(text, s.decimal)
	if why != "" {
		return refused(BadNumber, why)
	}
	if bareNumber.MatchString(plain) {
		if s.unit == "" {
			return refused(NoUnit, quote(text)+" has no unit, and the column names none; say `unit:` in the columns file, one of "+quoteAll(k.Units()))
		}
		plain += " " + s.unit
	}
	err := k.Check(plain)
	if err == nil {
		return value{text: plain}
	}
	var bad *quantity.Error
	if errors.As(err, &bad) && bad.Fix != "" && slices.Equal(figures(bad.Fix), figures(plain)) && k.Check(bad.Fix) == nil {
		return value{text: bad.Fix} // only the unit's name was another
	}
	return refused("register/unit", err.Error())
}

// figures are the numbers of a text.
func figures(text string) []string { return digits.FindAllString(text, -1) }

var digits = regexp.MustCompile(`[0-9.,/]+`)
