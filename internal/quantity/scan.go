package quantity

import (
	"slices"
	"strconv"
	"strings"
)

// longestText is more than the exact text of any value that is read.
const longestText = 80

// most and least are the sizes, in SI units, between which a value that is not
// zero has to be. They only catch slips: 1e9 kg is a million tonnes.
const (
	most  = 1e9
	least = 1e-9
)

// absoluteZero is in degrees Celsius.
const absoluteZero = -273.15

// value is a text that was read.
type value struct {
	si   float64
	unit *unit
}

// read is the one way in: the strict grammar, and for what it refuses the
// clearest thing that can be said about it.
func read(k Kind, text string) (value, *Error) {
	if len(text) > longestText {
		return value{}, asker{k, text}.inUnits("is longer than any value")
	}
	v, err := strict(k, text, text)
	if err != nil {
		return value{}, explain(k, text, err)
	}
	return v, nil
}

// strict reads text by the grammar of the package. Its errors show `shown`.
func strict(k Kind, text, shown string) (value, *Error) {
	a := asker{k, shown}
	if k.info().takes == nil {
		return value{}, &Error{Input: shown, Problem: a.problem("cannot be read"), Allowed: "the kind of value asked for is unknown"}
	}
	s := strings.Trim(text, " \t")
	if s == "" {
		err := a.inUnits("")
		err.Problem = "the text is empty"
		return value{}, err
	}
	negative, unsigned := cutSign(s)
	n, rest, ok := scanNumber(unsigned)
	if !ok {
		return value{}, a.inUnits("does not begin with a number")
	}
	n.negative = negative
	word, rest := scanUnit(rest)
	switch {
	case word == "" && rest == "":
		return value{}, a.noUnit(s)
	case word == "":
		return value{}, a.inUnits("has two numbers before its unit")
	}
	return a.finish(n, word, rest)
}

// finish reads what follows the first number and joins the parts.
func (a asker) finish(n number, word, rest string) (value, *Error) {
	u, err := a.unit(word)
	if err == nil && rest != "" {
		n, u, err = a.inches(n, u, rest)
	}
	if err == nil {
		err = a.wellFormed(n, u)
	}
	if err != nil {
		return value{}, err
	}
	v := value{n.convert(u.scaleOf(a.kind)), u}
	return v, a.inRange(n, v.si)
}

func (a asker) unit(word string) (*unit, *Error) {
	u, ok := unitNamed(word)
	if !ok {
		return nil, a.unknownUnit(word)
	}
	if !a.kind.takesUnit(u) {
		return nil, a.wrongKind(u.kind)
	}
	return u, nil
}

// inches joins whole feet with the inches that follow them.
func (a asker) inches(feet number, u *unit, rest string) (number, *unit, *Error) {
	n, tail, ok := scanNumber(rest)
	if u.name != "ft" || !ok {
		return n, nil, a.example("goes on after its unit", "one number and one unit are asked for")
	}
	const form = "feet and inches are written together"
	word, tail := scanUnit(tail)
	inch, known := unitNamed(word)
	n.negative = feet.negative
	switch {
	case !known || !inch.split || tail != "":
		return n, nil, a.exampleOf("does not end in inches after its feet", form, "12 ft 6 in")
	case !feet.isWhole():
		return n, nil, a.exampleOf("has part of a foot before its inches", form, "12 ft 6 in")
	}
	if err := a.wellFormed(n, inch); err != nil {
		return n, nil, err
	}
	if over, under, _ := (number{whole: n.whole, over: n.over, under: n.under}).small(); over >= 12*under {
		return n, nil, a.exampleOf("has 12 in or more after its feet", "inches after feet run from 0 to under 12", "12 ft 6 in")
	}
	whole, err := strconv.ParseInt(feet.whole, 10, 64)
	if err != nil || feet.tooLong() {
		return n, nil, a.tooLarge()
	}
	inches, _, _ := number{whole: n.whole}.small()
	n.whole = strconv.FormatInt(12*whole+int64(inches), 10)
	return n, inch, nil
}

// wellFormed refuses numbers that are written right but make no sense.
func (a asker) wellFormed(n number, u *unit) *Error {
	switch {
	case n.over != "" && isZero(n.under):
		return a.exampleOf("divides by zero", "the number under a fraction's bar is more than zero", "1/2 "+u.name)
	case n.tooLong():
		return a.example("has more digits than any measured value", "fewer digits are asked for")
	case n.over != "" && n.whole != "" && integer(n.over).Cmp(integer(n.under)) >= 0:
		return a.exampleOf("has a fraction of one or more after its whole number", "such a fraction is less than one", "1-1/8 "+u.name)
	}
	return nil
}

func (a asker) inRange(n number, si float64) *Error {
	size := max(si, -si)
	switch {
	case size > most:
		return a.tooLarge()
	case size > 0 && size < least || size == 0 && n.rat().Sign() != 0 && a.kind != KindTemperature:
		return a.example("has more decimals than any measured value", "fewer decimals are asked for")
	case a.kind == KindTemperature && si < absoluteZero:
		return a.example("is below absolute zero", "a temperature is at least -273.15 C")
	}
	return nil
}

func (a asker) tooLarge() *Error {
	return a.example("is larger than anything on a lift", "a value that can be measured is asked for")
}

// cutSign takes a sign off that stands right before the number.
func cutSign(s string) (negative bool, rest string) {
	if len(s) > 1 && (s[0] == '-' || s[0] == '+') {
		return s[0] == '-', s[1:]
	}
	return false, s
}

// scanNumber takes an unsigned number off the front of s.
func scanNumber(s string) (n number, rest string, ok bool) {
	n.whole, rest = cutDigits(s)
	if after, point := strings.CutPrefix(rest, "."); point {
		n.decimals, rest = cutDigits(after)
		return n, rest, n.decimals != ""
	}
	if n.whole == "" {
		return n, s, false
	}
	if under, after, slash := cutUnder(rest); slash {
		return number{over: n.whole, under: under}, after, true
	}
	over, after := cutDigits(cutJoint(rest))
	if under, after, slash := cutUnder(after); slash && over != "" {
		n.over, n.under = over, under
		return n, after, true
	}
	return n, rest, true
}

// cutJoint takes off what joins a whole number and its fraction.
func cutJoint(s string) string {
	if after, ok := strings.CutPrefix(s, "-"); ok {
		return after
	}
	return strings.TrimLeft(s, " \t")
}

// cutUnder takes a fraction's bar and denominator off.
func cutUnder(s string) (under, rest string, ok bool) {
	after, bar := strings.CutPrefix(s, "/")
	under, rest = cutDigits(after)
	return under, rest, bar && under != ""
}

func cutDigits(s string) (digits, rest string) {
	i := 0
	for i < len(s) && '0' <= s[i] && s[i] <= '9' {
		i++
	}
	return s[:i], s[i:]
}

// scanUnit takes one word off, or two that are a unit together, as kN m.
func scanUnit(s string) (word, rest string) {
	word, rest = scanWord(s)
	second, after := scanWord(rest)
	if second != "" && isUnit(word+" "+second) {
		return word + " " + second, after
	}
	return word, rest
}

// isUnit reports whether a name is that of a unit that is read or of one that
// is known and not read.
func isUnit(name string) bool {
	if _, ok := unitNamed(name); ok {
		return true
	}
	return slices.ContainsFunc(foreigners[:], func(f foreign) bool { return named(f.names, name) })
}

// scanWord takes one word off: up to a space or, unless the word holds a slash
// like t/m2, up to a digit.
func scanWord(s string) (word, rest string) {
	s = strings.Trim(s, " \t")
	slash := false
	for i := range len(s) {
		c := s[i]
		slash = slash || c == '/'
		if c == ' ' || c == '\t' || !slash && '0' <= c && c <= '9' {
			return s[:i], strings.TrimLeft(s[i:], " \t")
		}
	}
	return s, ""
}
