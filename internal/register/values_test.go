package register

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"liftlint/internal/quantity"
	"liftlint/internal/validate"
)

func TestPlainNumber(t *testing.T) {
	for _, c := range []struct {
		text string
		sign decimalSign
		want string // empty: refused
	}{
		{"6,3", "", "6.3"}, {"6.3", "", "6.3"}, {"6", "", "6"}, {"-6,3 t", "", "-6.3 t"}, {"+2 t", "", "2 t"},
		{"1.234,5", "", "1234.5"}, {"1,234.5", "", "1234.5"}, {"1.234.567", "", "1234567"}, {"1,234,567.25 kg", "", "1234567.25 kg"},
		{"1.234", "", ""}, {"1,234", "", ""}, {"1.234", "comma", ""}, {"1.234", "point", "1.234"}, {"1,234", "comma", "1.234"}, {"1,234", "point", ""}, {"1.234.567", "comma", "1234567"}, {"1,234,567", "point", "1234567"}, {"0.950", "comma", ""}, {"12.950 t", "comma", ""}, {"1 234", "comma", "1234"},
		{"0.125", "", "0.125"}, {"0,125", "", "0.125"}, {"1234.567", "", "1234.567"}, {",5", "", "0.5"}, {".5 t", "", "0.5 t"},
		{"6.3", "comma", ""}, {"6,3", "point", ""}, {"1.234,5", "point", ""}, {"1,234.5", "comma", ""},
		{"1 234,5", "", "1234.5"}, {"1\u00a0234", "", "1234"}, {"1'234.5 kg", "", "1234.5 kg"}, {"1\u2019234 kg", "", "1234 kg"}, {"12 34", "", ""},
		{"1 234.567", "", "1234.567"}, {"1.25.0", "", ""}, {"1,2,3", "", ""}, {"1.2345,6", "", ""}, {"12.34,567.8", "", ""},
		{"1-1/8 in", "", "1-1/8 in"}, {"1 1/8 in", "", "1 1/8 in"}, {"12 ft 6 in", "", "12 ft 6 in"}, {"five", "", "five"},
	} {
		got, why := plainNumber(c.text, c.sign)
		if (why != "") != (c.want == "") || why == "" && got != c.want {
			t.Errorf("%q %s: %q %q, want %q", c.text, c.sign, got, why, c.want)
		}
	}
}

// TestNumbersReadBack: a number written in any habit is read as that number, or
// refused because it could be another.
func TestNumbersReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := rapid.IntRange(0, 99_999_999).Draw(t, "whole")
		places := rapid.IntRange(0, 4).Draw(t, "places")
		x := float64(whole) / []float64{1, 10, 100, 1000, 10000}[places]
		plain := strconv.FormatFloat(x, 'f', places, 64)
		sign := rapid.SampledFrom([]decimalSign{decimalComma, decimalPoint}).Draw(t, "sign")
		marks := rapid.SampledFrom([]string{"", " ", "'", "\u00a0", map[decimalSign]string{decimalComma: ".", decimalPoint: ","}[sign]}).Draw(t, "marks")
		text := written(plain, sign, marks)
		said, why := plainNumber(text+" t", sign)
		if oneGroup := places == 0 && whole >= 1000 && whole < 1_000_000; oneGroup && strings.ContainsAny(marks, ".,") {
			if why == "" {
				t.Fatalf("%q with `decimal: %s` is taken for %s", text, sign, said)
			}
			return
		}
		if back, err := strconv.ParseFloat(strings.TrimSuffix(said, " t"), 64); why != "" || err != nil || back != x {
			t.Fatalf("%q: %q %q, want %v", text, said, why, x)
		}
		guessed, why := plainNumber(text, "")
		if back, err := strconv.ParseFloat(guessed, 64); why == "" && (err != nil || back != x) {
			t.Fatalf("%q is guessed to be %q, and was %v", text, guessed, x)
		}
	})
}

// written writes a number the way a spreadsheet does in some place.
func written(plain string, sign decimalSign, marks string) string {
	whole, decimals, _ := strings.Cut(plain, ".")
	var parts []string
	for len(whole) > 3 {
		parts = append([]string{whole[len(whole)-3:]}, parts...)
		whole = whole[:len(whole)-3]
	}
	text := strings.Join(append([]string{whole}, parts...), marks)
	if decimals == "" {
		return text
	}
	return text + map[decimalSign]string{decimalComma: ",", decimalPoint: "."}[sign] + decimals
}

func TestPlainDay(t *testing.T) {
	for _, c := range []struct {
		text  string
		order dayOrder
		want  string // empty: refused
	}{
		{"2026-03-04", "", "2026-03-04"}, {"2026/3/4", "", "2026-03-04"}, {"2026-03-04 00:00:00", "", "2026-03-04"}, {"2026-03-04T00:00:00Z", "", "2026-03-04"},
		{"2026-03-04 13:30", "", ""}, {"4.3.2026", "", ""}, {"4.3.2026", dayFirst, "2026-03-04"}, {"4.3.2026", monthFirst, "2026-04-03"},
		{"03/04/2026", "", ""}, {"03/04/2026", dayFirst, "2026-04-03"}, {"03/04/2026", monthFirst, "2026-03-04"},
		{"13/04/2026", "", "2026-04-13"}, {"04/13/2026", "", "2026-04-13"}, {"04/13/2026", dayFirst, ""}, {"04/04/2026", "", "2026-04-04"},
		{"31.2.2026", dayFirst, ""}, {"29.2.2024", "", "2024-02-29"}, {"29.2.2026", "", ""}, {"4-Mar-2026", "", "2026-03-04"}, {"4 March 2026", "", "2026-03-04"},
		{"4/3-2026", dayFirst, ""}, {"04.03.26", dayFirst, ""}, {"4-Mar-26", "", ""}, {"0206-03-04", "", ""}, {"46085", "", "2026-03-04"}, {"2026", "", ""}, {"999999", "", ""},
		{"soon", "", ""}, {"", "", ""},
	} {
		got, why := plainDay(c.text, c.order, 1900)
		if (why != "") != (c.want == "") || why == "" && got != c.want {
			t.Errorf("%q %s: %q %q, want %q", c.text, c.order, got, why, c.want)
		}
	}
	if got, _ := plainDay("44623", "", 1904); got != "2026-03-04" {
		t.Error(got)
	}
}

// TestDayNumbers: numbers of days of the serial date systems, from memory: day
// 36526 is January 1, 2000 in the one from 1900, and the one from 1904 runs
// 1462 days behind.
func TestDayNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 50_000).Draw(t, "days")
		want := time.Date(2000, time.January, 1+n, 0, 0, 0, 0, time.UTC).Format(time.DateOnly)
		for from, number := range map[int]int{1900: 36526 + n, 1904: 36526 + n - 1462} {
			if got, why := fromNumber(strconv.Itoa(number), from); got != want {
				t.Fatalf("%d from %d: %q %s, want %s", number, from, got, why, want)
			}
		}
	})
}

// TestDaysReadBack: a day written in any order is read as that day, or refused
// because it could be another.
func TestDaysReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := time.Date(2000, time.January, 1+rapid.IntRange(0, 20_000).Draw(t, "days"), 0, 0, 0, 0, time.UTC)
		want := d.Format(time.DateOnly)
		for order, layout := range map[dayOrder]string{dayFirst: "2.1.2006", monthFirst: "01/02/2006"} {
			text := d.Format(layout)
			if got, why := plainDay(text, order, 1900); got != want {
				t.Fatalf("%q: %q %s", text, got, why)
			}
			if got, why := plainDay(text, "", 1900); why == "" && got != want {
				t.Fatalf("%q is guessed to be %s", text, got)
			}
		}
	})
}

func TestConvert(t *testing.T) {
	load := validate.Field{Quantity: quantity.KindLoad, Type: "string"}
	length := validate.Field{Quantity: quantity.KindLength, Type: "string"}
	for _, c := range []struct {
		cell  string
		field validate.Field
		set   settings
		want  string // empty: refused
	}{
		{"4,75", load, settings{unit: "t"}, "4.75 t"}, {"4,75", load, settings{}, ""}, {"500 kg", load, settings{unit: "t"}, "500 kg"},
		{"6500 LBS", load, settings{}, "6500 lb"}, {"5 tonnes", load, settings{}, "5 t"}, {"5 ton", load, settings{}, ""}, {"5 T", load, settings{}, ""}, {"4.75 t (wet)", load, settings{}, ""},
		{"9-1/2", load, settings{unit: "short_ton"}, "9-1/2 short_ton"}, {"5/8", length, settings{unit: "in"}, "5/8 in"}, {`1-1/8"`, length, settings{}, "1-1/8 in"},
		{"12 ft 6,5 in", length, settings{}, ""}, {"26mm", length, settings{}, "26mm"}, {"1e3", load, settings{unit: "kg"}, ""},
		{"5%", validate.Field{Quantity: quantity.KindRatio}, settings{}, "5%"}, {"0,05", validate.Field{Quantity: quantity.KindRatio}, settings{}, ""},
		{"TRUE", validate.Field{Type: "boolean"}, settings{}, "true"}, {"ja", validate.Field{Type: "boolean"}, settings{words: map[string]string{"ja": "true"}}, "true"}, {"ja", validate.Field{Type: "boolean"}, settings{}, ""},
		{"3,0", validate.Field{Type: "integer"}, settings{}, "3"}, {"3,5", validate.Field{Type: "integer"}, settings{}, ""}, {"3 wires", validate.Field{Type: "integer"}, settings{}, ""},
		{"Out of service", validate.Field{Words: []string{"in_service", "out_of_service"}}, settings{}, "out_of_service"},
		{`="0012"`, validate.Field{Type: "string"}, settings{}, "0012"}, {" \u00a0K1 ", validate.Field{Type: "string"}, settings{}, "K1"}, {"1.2E+10", validate.Field{Type: "string"}, settings{}, ""},
		{"#N/A", validate.Field{Type: "string"}, settings{}, ""}, {"########", validate.Field{Day: true}, settings{}, ""},
	} {
		v := convert(c.cell, c.field, nil, c.set)
		if (v.why != "") != (c.want == "") || v.text != c.want || v.why != "" && v.id == "" {
			t.Errorf("%q: %+v, want %q", c.cell, v, c.want)
		}
	}
}

// FuzzConvert: no cell is taken for a value that its field's schema refuses by
// its form.
func FuzzConvert(f *testing.F) {
	for _, seed := range []string{"1.234,5", "03/04/2026", "46085", "TRUE", "1-1/8 in", "5 ton", "\u00a01 000", "#N/A", `="0"`, "1'000", "4 Mar 2026"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, cell string) {
		for _, sign := range []decimalSign{"", decimalComma, decimalPoint} {
			v := convert(cell, validate.Field{Quantity: quantity.KindLoad}, nil, settings{unit: "t", decimal: sign})
			if v.why == "" && quantity.KindLoad.Check(v.text) != nil {
				t.Fatalf("%q: %q", cell, v.text)
			}
			v = convert(cell, validate.Field{Day: true}, nil, settings{decimal: sign})
			if _, err := time.Parse(time.DateOnly, v.text); v.why == "" && err != nil {
				t.Fatalf("%q: %q", cell, v.text)
			}
		}
		if v := convert(cell, validate.Field{Type: "integer"}, nil, settings{}); v.why == "" {
			if n, err := strconv.ParseFloat(v.text, 64); err != nil || fmt.Sprintf("%.0f", n) == "" {
				t.Fatalf("%q: %q", cell, v.text)
			}
		}
	})
}
