package quantity

import (
	"math/big"
	"strconv"
	"strings"
)

// feetAndInches prints a length given in inches. Without more digits it is
// never off by more than 0.005 in: sixteenths where they come that near,
// otherwise two decimals. More digits are always decimals.
func feetAndInches(inches *big.Rat, more int) string {
	size := new(big.Rat).Abs(inches)
	text, ok := "", false
	if more == 0 {
		text, ok = sixteenths(size)
	}
	if !ok {
		text = decimalInches(size, 2+more)
	}
	if inches.Sign() < 0 && text != "0 in" {
		return "-" + text
	}
	return text
}

// sixteenths prints size in whole sixteenths if it is within 0.005 in of them.
func sixteenths(size *big.Rat) (string, bool) {
	scaled := new(big.Rat).Mul(size, big.NewRat(16, 1))
	count := integer(scaled.FloatString(0))
	off := new(big.Rat).Sub(scaled, new(big.Rat).SetInt(count))
	if off.Abs(off).Cmp(big.NewRat(16*5, 1000)) > 0 {
		return "", false
	}
	feet, part := new(big.Int).QuoRem(count, big.NewInt(12*16), new(big.Int))
	return withFeet(feet, fraction(int(part.Int64()))), true
}

// fraction prints a count of sixteenths in lowest terms, as `1-1/8`.
func fraction(count int) string {
	whole, over, under := count/16, count%16, 16
	if over == 0 {
		return strconv.Itoa(whole)
	}
	for over%2 == 0 {
		over, under = over/2, under/2
	}
	text := strconv.Itoa(over) + "/" + strconv.Itoa(under)
	if whole == 0 {
		return text
	}
	return strconv.Itoa(whole) + "-" + text
}

// decimalInches rounds before it parts feet from inches, so that no inches
// reach 12.
func decimalInches(size *big.Rat, places int) string {
	text := size.FloatString(places)
	whole, decimals, _ := strings.Cut(text, ".")
	feet, inches := new(big.Int).QuoRem(integer(whole), big.NewInt(12), new(big.Int))
	return withFeet(feet, trimZeros(inches.String()+"."+decimals, 0))
}

func withFeet(feet *big.Int, inches string) string {
	switch {
	case feet.Sign() == 0:
		return inches + " in"
	case inches == "0":
		return feet.String() + " ft"
	}
	return feet.String() + " ft " + inches + " in"
}
