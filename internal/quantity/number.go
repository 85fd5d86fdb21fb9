package quantity

import (
	"math/big"
	"math/bits"
	"strconv"
	"strings"
)

// number is a number as written: a whole part with either decimals or a
// fraction. All parts are digits only, and at most as long as the limits
// below, so that no text makes parsing slow.
type number struct {
	negative bool
	whole    string
	decimals string
	over     string // numerator, empty without a fraction
	under    string // denominator
}

// Limits of a number's parts, in digits. The decimals leave room for the
// exact text of every value that is read, in every unit.
const (
	mostWhole    = 15
	mostDecimals = 40
	mostFraction = 6
)

func (n number) tooLong() bool {
	return len(n.whole) > mostWhole || len(n.decimals) > mostDecimals ||
		len(n.over) > mostFraction || len(n.under) > mostFraction
}

// isWhole reports whether the number has neither decimals nor a fraction.
func (n number) isWhole() bool { return n.decimals == "" && n.over == "" }

// isZero reports whether a string of digits is zero.
func isZero(digits string) bool { return strings.Trim(digits, "0") == "" }

// convert gives the SI value, rounded once from the exact product.
func (n number) convert(s scale) float64 {
	v, ok := n.fast(s)
	if !ok {
		v, _ = n.exact(s).Float64()
	}
	if v == 0 {
		return 0 // never minus zero
	}
	if n.negative && ok {
		return -v
	}
	return v
}

// fast is the size of the value when both sides of the exact fraction fit the
// 53 bits of a float64: then one division rounds correctly by itself.
func (n number) fast(s scale) (float64, bool) {
	over, under, ok := n.small()
	if !ok || s.zero != 0 {
		return 0, false
	}
	hi1, num := bits.Mul64(over, s.num)
	hi2, den := bits.Mul64(under, s.den)
	if hi1|hi2 != 0 || num > 1<<53 || den > 1<<53 {
		return 0, false
	}
	return float64(num) / float64(den), true
}

// small is the number without its sign as a fraction of machine integers.
func (n number) small() (over, under uint64, ok bool) {
	if len(n.whole)+len(n.decimals) > mostWhole {
		return 0, 0, false
	}
	under = 1
	for _, digits := range [...]string{n.whole, n.decimals} {
		for i := range len(digits) {
			over = over*10 + uint64(digits[i]-'0')
		}
	}
	for range n.decimals {
		under *= 10
	}
	if n.over == "" {
		return over, under, true
	}
	top, err1 := strconv.ParseUint(n.over, 10, 32)
	under, err2 := strconv.ParseUint(n.under, 10, 32)
	hi, over := bits.Mul64(over, under)
	return over + top, under, err1 == nil && err2 == nil && hi == 0
}

// exact is the SI value as a fraction.
func (n number) exact(s scale) *big.Rat {
	v := n.rat()
	v.Sub(v, new(big.Rat).SetInt64(s.zero))
	return v.Mul(v, s.rat())
}

func (s scale) rat() *big.Rat {
	return new(big.Rat).SetFrac(new(big.Int).SetUint64(s.num), new(big.Int).SetUint64(s.den))
}

// rat is the number with its sign as a fraction. The parts are digits, so
// reading them cannot fail.
func (n number) rat() *big.Rat {
	v := new(big.Rat).SetInt(integer(n.whole + n.decimals))
	ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(n.decimals))), nil)
	v.Quo(v, new(big.Rat).SetInt(ten))
	if n.over != "" {
		v.Add(v, new(big.Rat).SetFrac(integer(n.over), integer(n.under)))
	}
	if n.negative {
		v.Neg(v)
	}
	return v
}

func integer(digits string) *big.Int {
	i, ok := new(big.Int).SetString(digits, 10)
	if !ok {
		return new(big.Int)
	}
	return i
}
