package quantity

import (
	"fmt"
	"strconv"
	"strings"
)

// ParseSuffix reads what FormatSuffix and FormatPair print: a number in the unit
// that the end of the name asks for, or in another unit of the same kind. A name
// without a known end takes a plain number.
func ParseSuffix(name, text string) (float64, error) {
	s, ok := suffixOf(name)
	if !ok {
		return plainNumber(text, "")
	}
	if s.kind == 0 {
		return plainNumber(text, strings.TrimPrefix(s.end, "_"))
	}
	v, err := s.kind.Parse(text)
	return v * float64(s.per), err
}

// plainNumber reads a number with a unit that is only printed, or with none.
func plainNumber(text, unit string) (float64, error) {
	digits := text
	if unit != "" {
		var ok bool
		if digits, ok = strings.CutSuffix(text, " "+unit); !ok {
			return 0, fmt.Errorf("%s is no number of %s; write such as `12 %s`", quote(text), unit, unit)
		}
	}
	if strings.Trim(strings.TrimPrefix(digits, "-"), "0123456789.") != "" {
		return 0, fmt.Errorf("%s is no plain number", quote(text))
	}
	v, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		return 0, fmt.Errorf("%s is no plain number", quote(text))
	}
	return v, nil
}
