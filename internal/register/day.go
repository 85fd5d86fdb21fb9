package register

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"
)

// dayOrder is how a column writes its days; empty: it is not said.
type dayOrder string

const (
	dayFirst   dayOrder = "day_first"
	monthFirst dayOrder = "month_first"
)

var (
	yearFirst = regexp.MustCompile(`^(\d{4})([-/.])(\d{1,2})([-/.])(\d{1,2})$`)
	yearLast  = regexp.MustCompile(`^(\d{1,2})([-/.])\s?(\d{1,2})([-/.])\s?(\d{4})$`)
	shortYear = regexp.MustCompile(`^\d{1,2}[-/.]\s?(\d{1,2}|\pL+)[-/.]\s?\d{2}$`)
	dayNumber = regexp.MustCompile(`^\d{4,6}$`)
	named     = regexp.MustCompile(`^(\d{1,2})[-. ]{1,2}(\pL+)\.?[-, ]{1,2}(\d{4})$`)
	midnight  = regexp.MustCompile(`[T ]0{1,2}:00(:00(\.0+)?)?Z?$`)
)

// The years that a day on file can be in.
const (
	firstYear = 1900
	lastYear  = 2199
)

// plainDay writes a day as year, month and day. Where it can be read as two
// days, or is none, why says so.
func plainDay(text string, order dayOrder, numbersFrom int) (plain, why string) {
	text = midnight.ReplaceAllString(text, "")
	if dayNumber.MatchString(text) {
		return fromNumber(text, numbersFrom)
	}
	if m := yearFirst.FindStringSubmatch(text); m != nil && m[2] == m[4] {
		return joinDay(text, m[1], m[3], m[5])
	}
	if m := yearLast.FindStringSubmatch(text); m != nil && m[2] == m[4] {
		return fromYearLast(text, m[5], m[1], m[3], order)
	}
	if m := named.FindStringSubmatch(text); m != nil {
		for month := time.January; month <= time.December; month++ {
			if name := month.String(); strings.EqualFold(m[2], name) || strings.EqualFold(m[2], name[:3]) {
				return joinDay(text, m[3], strconv.Itoa(int(month)), m[1])
			}
		}
	}
	if shortYear.MatchString(text) {
		return "", quote(text) + " has a year of two digits; write all four"
	}
	return "", quote(text) + " is no day; write year, month and day, such as `2026-12-04`"
}

// fromYearLast reads a day with its year last, where day and month stand in
// either order.
func fromYearLast(text, year, first, second string, order dayOrder) (plain, why string) {
	switch order {
	case dayFirst:
		return joinDay(text, year, second, first)
	case monthFirst:
		return joinDay(text, year, first, second)
	}
	asDay, noDay := joinDay(text, year, second, first)
	asMonth, noMonth := joinDay(text, year, first, second)
	switch {
	case noDay == "" && noMonth == "" && asDay != asMonth:
		return "", quote(text) + " can be " + asDay + " or " + asMonth + "; say `dates: day_first` or `dates: month_first` in the columns file"
	case noDay == "":
		return asDay, ""
	case noMonth == "":
		return asMonth, ""
	}
	return "", noDay
}

func joinDay(text, year, month, day string) (plain, why string) {
	plain = fmt.Sprintf("%s-%02s-%02s", year, month, day)
	d, err := time.Parse(time.DateOnly, plain)
	switch {
	case err != nil:
		return "", quote(text) + " is not in the calendar"
	case d.Year() < firstYear || d.Year() > lastYear:
		return "", quote(text) + " is in no year that gear on file is from"
	}
	return plain, ""
}

// fromNumber reads a day as spreadsheets hold it: days since the end of 1899,
// with a February 29 in 1900 that never was, or since the start of 1904. Only
// numbers of days from 1950 on are taken for days.
func fromNumber(text string, from int) (plain, why string) {
	n, err := strconv.Atoi(text)
	if err != nil {
		return "", quote(text) + " is no day"
	}
	start := time.Date(1899, time.December, 30, 0, 0, 0, 0, time.UTC)
	if from == 1904 {
		start = time.Date(1904, time.January, 1, 0, 0, 0, 0, time.UTC)
	}
	d := start.AddDate(0, 0, n)
	if d.Year() < 1950 || d.Year() > lastYear {
		return "", quote(text) + " is no day, nor a spreadsheet's number of a day from 1950 on"
	}
	return d.Format(time.DateOnly), ""
}
