package register

import (
	"regexp"
	"strings"
)

// decimalSign is how a column writes its numbers; empty: it is not said.
type decimalSign string

const (
	decimalComma decimalSign = "comma"
	decimalPoint decimalSign = "point"
)

var (
	// leadingNumber takes the number that a text begins with, with all signs
	// that may stand inside one.
	leadingNumber = regexp.MustCompile(`^[+-]?(?:[.,]?[0-9](?:[0-9.,'\x{2019}\x{a0}\x{202f} ]*[0-9])?)`)
	// bareNumber is a number, a fraction among them, without a unit.
	bareNumber = regexp.MustCompile(`^[+-]?[0-9.]+(?:[ -][0-9]+/[0-9]+|/[0-9]+)?$`)
	thousands  = regexp.MustCompile(`^[0-9]{1,3}(?:[ '][0-9]{3})+(?:[.,][0-9]+)?$`)
	points     = regexp.MustCompile(`^[1-9][0-9]{0,2}(?:\.[0-9]{3})+$`)
	commas     = regexp.MustCompile(`^[1-9][0-9]{0,2}(?:,[0-9]{3})+$`)
	onePoint   = regexp.MustCompile(`^[0-9]*\.[0-9]+$`)
	oneComma   = regexp.MustCompile(`^[0-9]*,[0-9]+$`)
)

// blanks that spreadsheets put between thousands.
var blanks = strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\u2019", "'")

// plainNumber writes the number that a text begins with the way this format
// does: a point before the decimals, nothing between thousands. What follows
// stays. Where the number can be read in two ways, or not at all, why says so.
func plainNumber(text string, sign decimalSign) (plain, why string) {
	found := leadingNumber.FindString(text)
	rest := text[len(found):]
	if found == "" || strings.HasPrefix(rest, "/") || strings.HasPrefix(rest, "-") {
		return text, "" // a fraction, or no number
	}
	number := blanks.Replace(found)
	minus := ""
	if number[0] == '+' || number[0] == '-' {
		minus, number = strings.TrimPrefix(number[:1], "+"), number[1:]
	}
	if strings.ContainsAny(number, " '") {
		if !thousands.MatchString(number) {
			return text, quote(found) + " has blanks or marks inside its number that are not between thousands"
		}
		number = strings.NewReplacer(" ", "", "'", "").Replace(number)
		if i := strings.IndexAny(number, ".,"); i >= 0 {
			return withDecimals(minus, number, i, rest, sign)
		}
	}
	if !strings.ContainsAny(number, ".,") {
		return minus + number + rest, ""
	}
	return oneOfTwo(minus, number, rest, sign)
}

// oneOfTwo reads a number with points or commas.
func oneOfTwo(minus, number, rest string, sign decimalSign) (plain, why string) {
	last := strings.LastIndexAny(number, ".,")
	before, marks := number[:last], strings.Count(number, ".")+strings.Count(number, ",")
	switch {
	case marks == 1 && (points.MatchString(number) && sign != decimalPoint || commas.MatchString(number) && sign != decimalComma):
		return "", twoReadings(before, number[last+1:], number, sign)
	case commas.MatchString(number) && sign != decimalComma, points.MatchString(number) && sign != decimalPoint:
		return minus + strings.NewReplacer(".", "", ",", "").Replace(number) + rest, ""
	case onePoint.MatchString(number), oneComma.MatchString(number):
		return withDecimals(minus, number, last, rest, sign)
	case number[last] == ',' && points.MatchString(before), number[last] == '.' && commas.MatchString(before):
		joined := strings.NewReplacer(".", "", ",", "").Replace(before)
		return withDecimals(minus, joined+number[last:], len(joined), rest, sign)
	}
	return "", quote(number) + " is no number with its thousands apart by threes and one decimal sign"
}

// twoReadings says that one group of three digits may be decimals or thousands:
// where the columns file names the other sign, the cell is as likely a slip as it is
// thousands.
func twoReadings(before, group, number string, sign decimalSign) string {
	can := quote(number) + " can be read as " + before + "." + group + " and as " + before + group
	mark := "."
	switch sign {
	case "":
		return can + "; say `decimal: comma` or `decimal: point` in the columns file"
	case decimalComma:
		mark = ","
	}
	return can + ", and the columns file says `decimal: " + string(sign) + "`; write " + quote(before+mark+group) + " or " + quote(before+group)
}

// withDecimals puts a point for the decimal sign at i.
func withDecimals(minus, number string, i int, rest string, sign decimalSign) (plain, why string) {
	is := decimalPoint
	if number[i] == ',' {
		is = decimalComma
	}
	if sign != "" && sign != is {
		return "", quote(number) + " has a decimal " + string(is) + ", and the columns file says `decimal: " + string(sign) + "`"
	}
	whole := number[:i]
	if whole == "" {
		whole = "0"
	}
	return minus + whole + "." + number[i+1:] + rest, ""
}
