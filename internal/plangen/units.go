package plangen

import (
	"fmt"
	"math"
	"strconv"

	"liftlint/internal/quantity"
)

const (
	inchM    = 0.0254     // exact: NIST SP 811, appendix B
	poundKg  = 0.45359237 // exact: the same
	shortTon = 2000 * poundKg / 1000
)

// snap moves meters onto the grid that lengths are written on, so that every
// way of writing them is exact: millimeters, or eighths of an inch.
func (s *sketch) snap(m float64) float64 {
	if s.us {
		return math.Round(m/inchM*8) / 8 * inchM
	}
	return math.Round(m*1000) / 1000
}

// length writes meters in one of the ways that people do.
func (s *sketch) length(m float64) string {
	if s.us {
		return s.inches(int(math.Round(m / inchM * 8)))
	}
	mm := math.Round(m * 1000)
	switch s.r.IntN(6) {
	case 0:
		return plain(mm) + " mm"
	case 1:
		return plain(mm/10) + " cm"
	}
	if math.Abs(mm) < 1000 && mm != 0 {
		return plain(mm) + " mm"
	}
	return plain(mm/1000) + " m"
}

func (s *sketch) inches(eighths int) string {
	sign := ""
	if eighths < 0 {
		sign, eighths = "-", -eighths
	}
	if s.r.IntN(6) == 0 {
		return sign + plain(float64(eighths)/8) + " in"
	}
	feet, rest := 0, eighths
	if eighths >= 96 && s.r.IntN(6) > 0 {
		feet, rest = eighths/96, eighths%96
	}
	switch {
	case feet == 0:
		return sign + fraction(rest, 8) + " in"
	case rest == 0:
		return fmt.Sprintf("%s%d ft", sign, feet)
	}
	return fmt.Sprintf("%s%d ft %s in", sign, feet, fraction(rest, 8))
}

// fraction writes a count of parts in lowest terms, as 1-1/8.
func fraction(count, parts int) string {
	whole, part := count/parts, count%parts
	for part%2 == 0 && part > 0 {
		part, parts = part/2, parts/2
	}
	switch {
	case part == 0:
		return strconv.Itoa(whole)
	case whole == 0:
		return fmt.Sprintf("%d/%d", part, parts)
	}
	return fmt.Sprintf("%d-%d/%d", whole, part, parts)
}

// diameter writes the rope's, in sixteenths of an inch for US plans.
func (s *sketch) diameter() string {
	if s.us {
		return fraction(int(math.Round(s.rope.diameterMM/25.4*16)), 16) + " in"
	}
	return plain(s.rope.diameterMM) + " mm"
}

// mass writes tonnes.
func (s *sketch) mass(t float64) string {
	lb := math.Round(t * 1000 / poundKg)
	switch {
	case s.us && s.r.IntN(4) == 0:
		return plain(lb/2000) + " short_ton"
	case s.us:
		return plain(lb) + " lb"
	case t < 2 || s.r.IntN(4) == 0:
		return plain(math.Round(t*1000)) + " kg"
	}
	return quantity.Mass(math.Round(t * 1000)).In("t")
}

// rating writes a rated load of at least so many tonnes.
func (s *sketch) rating(t float64) string {
	halves := int(math.Ceil(2 * t / shortTon))
	switch {
	case s.us && s.r.IntN(2) == 0:
		return fraction(halves, 2) + " short_ton"
	case s.us:
		return plain(math.Ceil(t*10/poundKg)*100) + " lb"
	case s.r.IntN(5) == 0:
		return plain(math.Ceil(t*quantity.StandardGravity)) + " kN"
	}
	return plain(math.Ceil(t*100)/100) + " t"
}

// plain writes a number without an exponent.
func plain(v float64) string {
	return strconv.FormatFloat(math.Round(v*1e6)/1e6, 'f', -1, 64)
}
