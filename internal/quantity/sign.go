package quantity

import (
	"fmt"
	"slices"
)

// Sign is the sign that a field asks of its value.
type Sign int

// The signs. Temperatures and coordinates take any; a mass is positive.
const (
	AnySign     Sign = iota
	NotNegative      // zero or more
	Positive         // more than zero
)

// signNames holds the names in the order of the constants.
var signNames = [...]string{"any", "not_negative", "positive"}

// ParseSign finds a sign by its name: any, not_negative or positive.
func ParseSign(name string) (Sign, error) {
	if i := slices.Index(signNames[:], name); i >= 0 {
		return Sign(i), nil
	}
	return 0, fmt.Errorf("%s is not a sign; the signs are %s", quote(name), list(signNames[:], "and"))
}

// String is the sign's name. A Sign that is none of the constants is named by
// its number.
func (s Sign) String() string {
	if s < 0 || int(s) >= len(signNames) {
		return fmt.Sprintf("sign %d", int(s))
	}
	return signNames[s]
}

// check refuses a value of the wrong sign, and every value when the sign is
// none of the constants.
func (s Sign) check(k Kind, text string, si float64) *Error {
	a := asker{kind: k, shown: text}
	switch {
	case s == AnySign, s == NotNegative && si >= 0, s == Positive && si > 0:
		return nil
	case s == NotNegative:
		return a.example("is negative", "zero or more is asked for")
	case s == Positive && si == 0:
		return a.example("is zero", "more than zero is asked for")
	case s == Positive:
		return a.example("is negative", "more than zero is asked for")
	}
	return &Error{Kind: k, Input: text, Problem: a.problem("cannot be checked for its sign"), Allowed: "the sign asked for is unknown"}
}
