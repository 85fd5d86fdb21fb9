package validate

import (
	"regexp"
	"strconv"
	"time"
)

// exampleDay shows how a day is written.
const exampleDay = "2026-12-04"

// Ways in which people write days. The last group of stamped is what follows
// the day.
var (
	yearFirst = regexp.MustCompile(`^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$`)
	yearLast  = regexp.MustCompile(`^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4})$`)
	stamped   = regexp.MustCompile(`^(\d{4}-\d{2}-\d{2})[T ].*$`)
)

// badDay says what is wrong with a text that is no day, and what to write.
func badDay(text string) string {
	if m := yearFirst.FindStringSubmatch(text); m != nil {
		return badYearFirst(text, m)
	}
	if m := yearLast.FindStringSubmatch(text); m != nil {
		return badYearLast(text, m)
	}
	if m := stamped.FindStringSubmatch(text); m != nil && isDay(m[1]) {
		return quote(text) + " has more than a day; write `" + m[1] + "`"
	}
	return quote(text) + " is no day; write year, month and day, such as `" + exampleDay + "`"
}

// badYearFirst is about a day in the right order.
func badYearFirst(text string, m []string) string {
	day := joinDay(m[1], m[2], m[3])
	if isDay(day) {
		return quote(text) + " is not how a day is written; write `" + day + "`"
	}
	year, _ := strconv.Atoi(m[1])
	month, _ := strconv.Atoi(m[2])
	if month < 1 || month > 12 {
		return quote(text) + " is no day: months run from 01 to 12; write such as `" + exampleDay + "`"
	}
	last := time.Date(year, time.Month(month)+1, 0, 0, 0, 0, 0, time.UTC).Day()
	return quote(text) + " is not in the calendar: " + time.Month(month).String() + " " + m[1] + " runs from 01 to " + strconv.Itoa(last)
}

// badYearLast is about a day with its year last, where day and month stand in
// one order in some countries and in the other elsewhere.
func badYearLast(text string, m []string) string {
	dayFirst, monthFirst := joinDay(m[3], m[2], m[1]), joinDay(m[3], m[1], m[2])
	switch {
	case isDay(dayFirst) && isDay(monthFirst) && dayFirst != monthFirst:
		return quote(text) + " can be read as two days; write `" + dayFirst + "` or `" + monthFirst + "`"
	case isDay(dayFirst):
		return quote(text) + " is not how a day is written; write `" + dayFirst + "`"
	case isDay(monthFirst):
		return quote(text) + " is not how a day is written; write `" + monthFirst + "`"
	}
	return quote(text) + " is no day; write year, month and day, such as `" + exampleDay + "`"
}

func joinDay(year, month, day string) string { return year + "-" + two(month) + "-" + two(day) }

func two(digits string) string {
	if len(digits) < 2 {
		return "0" + digits
	}
	return digits
}

func isDay(text string) bool {
	_, err := time.Parse(time.DateOnly, text)
	return err == nil
}
