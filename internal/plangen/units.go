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

// grain moves meters onto the grid of small parts: millimeters, or
// thirty-seconds of an inch. grainUp goes to the next one above.
func (s *sketch) grain(m float64) float64 { return math.Round(m/s.grid()) * s.grid() }

func (s *sketch) grainUp(m float64) float64 { return math.Ceil(m/s.grid()-1e-9) * s.grid() }

func (s *sketch) grid() float64 {
	if s.us {
		return inchM / 32
	}
	return 0.001
}

// part writes a size of a small part.
func (s *sketch) part(m float64) string {
	count := int(math.Round(m / s.grid()))
	if s.us {
		return fraction(count, 32) + " in"
	}
	return fmt.Sprint(count, " mm")
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

// own writes the mass of an item of gear in tenths, as a scale has it.
func (s *sketch) own(kg float64) string {
	if s.us {
		return plain(max(math.Round(kg/poundKg*10), 1)/10) + " lb"
	}
	return plain(max(math.Round(kg*10), 1)/10) + " kg"
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

// marked writes a rated load as it stands on a tag, exactly.
func (s *sketch) marked(t float64) string {
	lb := math.Round(t * 1000 / poundKg)
	switch {
	case s.us && s.r.IntN(3) == 0:
		return plain(lb/2000) + " short_ton"
	case s.us:
		return plain(lb) + " lb"
	case t < 1 || s.r.IntN(5) == 0:
		return plain(math.Round(t*1000)) + " kg"
	}
	return plain(t) + " t"
}

// plain writes a number without an exponent.
func plain(v float64) string {
	return strconv.FormatFloat(math.Round(v*1e6)/1e6, 'f', -1, 64)
}
