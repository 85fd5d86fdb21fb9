package bundle

import (
	"fmt"
	"regexp"
	"strings"

	"liftlint/internal/quantity"
)

// Parts of the patterns, in the syntax that ECMA 262 and RE2 share. They follow
// the grammar in the documentation of the quantity package.
const (
	number = `([0-9]+(\.[0-9]+)?|\.[0-9]+|[0-9]+/[0-9]+|[0-9]+(-|[ \t]+)[0-9]+/[0-9]+)`
	zero   = `(0+(\.0+)?|\.0+|0+/[0-9]+|0+(-|[ \t]+)0+/[0-9]+)`
	gap    = `[ \t]*`
	day    = `^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$`
)

// addPattern puts a pattern for our own keywords.
func addPattern(out, s object) error {
	if name, ok := s["quantity"]; ok {
		kind, err := quantity.ParseKind(fmt.Sprint(name))
		if err != nil {
			return err
		}
		sign, err := quantity.ParseSign(fmt.Sprint(s["sign"]))
		if err != nil {
			return err
		}
		if kind == quantity.KindTemperature && sign != quantity.AnySign {
			return fmt.Errorf("bundle: the sign of a temperature is that of degrees Celsius, which no pattern can tell")
		}
		out["pattern"] = quantityPattern(kind, sign)
		out["patternErrorMessage"] = "Write a number with its unit (" + strings.Join(kind.Units(), ", ") + "), such as " + kind.Example() + "."
	}
	if s["calendar_day"] == true {
		out["pattern"] = day
		out["patternErrorMessage"] = "Write year, month and day, such as 2026-12-04."
	}
	return nil
}

// quantityPattern accepts every text that the kind reads with the sign.
func quantityPattern(kind quantity.Kind, sign quantity.Sign) string {
	var units []string
	for _, u := range kind.Units() {
		units = append(units, strings.ReplaceAll(regexp.QuoteMeta(u), " ", `[ \t]+`))
	}
	after := gap + "(" + strings.Join(units, "|") + ")"
	forms := func(feet, number string) string {
		form := number + after
		if kind == quantity.KindLength {
			form += "|" + feet + gap + "ft" + gap + number + gap + "in"
		}
		return "(" + form + ")"
	}
	value := `\+?` + forms(`[0-9]+`, number)
	switch sign {
	case quantity.AnySign:
		value = `[-+]?` + forms(`[0-9]+`, number)
	case quantity.NotNegative:
		value = "(" + value + "|-" + forms(`0+`, zero) + ")"
	}
	return "^" + gap + value + gap + "$"
}
