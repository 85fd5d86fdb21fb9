package quantity

import (
	"math/big"
	"strconv"
	"strings"
)

// unitFor finds a unit by name among those that the kind is read in.
func unitFor(k Kind, name string) (*unit, bool) {
	u, ok := unitNamed(name)
	return u, ok && k.takesUnit(u)
}

// from is the value si in the unit that s describes, exactly. It is nil for
// what is not finite.
func (s scale) from(si float64) *big.Rat {
	v := new(big.Rat).SetFloat64(si)
	if v == nil {
		return nil
	}
	v.Quo(v, s.rat())
	return v.Add(v, new(big.Rat).SetInt64(s.zero))
}

// exactText tries ever more decimals until the text reads back as si.
func exactText(k Kind, si float64, name string) string {
	u, ok := unitFor(k, name)
	if !ok {
		u, _ = unitNamed(k.Units()[0])
	}
	s := u.scaleOf(k)
	v := s.from(si)
	if v == nil {
		return notFinite(si, u)
	}
	for places := range mostDecimals {
		text := trimZeros(v.FloatString(places), 0)
		if back, err := strict(k, join(text, u), text); err == nil && back.si == si {
			return join(text, u)
		}
	}
	return join(trimZeros(v.FloatString(mostDecimals), 0), u)
}

// roundedText prints si as its unit is rounded for people.
func roundedText(si float64, u *unit, s scale) string {
	v := s.from(si)
	if v == nil {
		return notFinite(si, u)
	}
	return u.text(v, u.places(v), 0)
}

func notFinite(si float64, u *unit) string {
	return join(strconv.FormatFloat(si, 'f', -1, 64), u)
}

// places is the number of decimals that people want for v in this unit.
func (u *unit) places(v *big.Rat) int {
	whole := new(big.Int).Quo(v.Num(), v.Denom())
	size := len(whole.Abs(whole).String())
	if whole.Sign() == 0 {
		size = 0
	}
	return min(max(u.show.sig-size, u.show.least), u.show.most)
}

// text prints v, a value in this unit, to the given decimals and `more`.
func (u *unit) text(v *big.Rat, places, more int) string {
	if u.split {
		return feetAndInches(v, more)
	}
	return join(trimZeros(v.FloatString(places+more), u.show.least), u)
}

func join(number string, u *unit) string {
	switch {
	case u.name == "":
		return number
	case u.name == dayUnit && (number == "1" || number == "-1"):
		return number + " day"
	}
	return number + " " + u.name
}

// trimZeros drops zeros at the end of the decimals, down to `least` decimals,
// and the sign of a zero.
func trimZeros(s string, least int) string {
	whole, decimals, _ := strings.Cut(s, ".")
	for len(decimals) > least && strings.HasSuffix(decimals, "0") {
		decimals = decimals[:len(decimals)-1]
	}
	if isZero(strings.TrimPrefix(whole, "-") + decimals) {
		whole = "0"
	}
	if decimals == "" {
		return whole
	}
	return whole + "." + decimals
}
