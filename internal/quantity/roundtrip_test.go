package quantity

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func lower(s string) string   { return strings.ToLower(s) }
func split(s string) []string { return strings.Split(lower(s), "|") }

// drawKindAndUnit picks any kind and one of the units it is read in.
func drawKindAndUnit(t *rapid.T) (Kind, string) {
	k := rapid.SampledFrom(Kinds()).Draw(t, "kind")
	return k, rapid.SampledFrom(k.Units()).Draw(t, "unit")
}

// Any value that can be read prints in any unit so that it reads back with the
// same bits.
func TestExactTextReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, name := drawKindAndUnit(t)
		si := rapid.Float64Range(-1e6, 1e6).Draw(t, "si")
		if math.Abs(si) < least || k == KindTemperature && si < absoluteZero {
			si = 0
		}
		text := exactText(k, si, name)
		back, err := k.Parse(text)
		if err != nil || back != si {
			t.Fatalf("%v prints as %q and reads back as %v, %v", si, text, back, err)
		}
	})
}

// A text in one unit, decimal or fraction, survives the way through another.
func TestTextSurvivesOtherUnits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, name := drawKindAndUnit(t)
		text := numberText(drawNumber(t)) + " " + name
		si, err := k.Parse(text)
		if err != nil {
			t.Skip(err)
		}
		other := rapid.SampledFrom(k.Units()).Draw(t, "other")
		back, err := k.Parse(exactText(k, si, other))
		if err != nil || back != si {
			t.Fatalf("%q is %v, and %v, %v by way of %s", text, si, back, err, other)
		}
	})
}

func numberText(n number) string {
	sign := ""
	if n.negative {
		sign = "-"
	}
	switch {
	case n.decimals != "":
		return sign + n.whole + "." + n.decimals
	case n.over != "":
		return sign + n.whole + "-" + n.over + "/" + n.under
	}
	return sign + n.whole
}

// Up to 12 digits come back as they were written: no digit is made up.
func TestShortTextComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, name := drawKindAndUnit(t)
		whole := rapid.StringMatching(`[1-9][0-9]{0,5}`).Draw(t, "whole")
		decimals := rapid.StringMatching(`([0-9]{0,5}[1-9])?`).Draw(t, "decimals")
		text := strings.TrimSuffix(whole+"."+decimals, ".") + " " + name
		si, err := k.Parse(text)
		if err != nil {
			t.Skip(err)
		}
		if got := exactText(k, si, name); got != text {
			t.Fatalf("%q comes back as %q", text, got)
		}
	})
}

// Feet and inches are the same value as the inches alone.
func TestFeetAndInchesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		feet := rapid.IntRange(0, 2000).Draw(t, "feet")
		sixteenths := rapid.IntRange(0, 12*16-1).Draw(t, "sixteenths")
		si := float64((feet*192+sixteenths)*254) / 160000
		text := Length(si).Format(US)
		got, err := ParseLength(text)
		if err != nil || got != Length(si) {
			t.Fatalf("%d ft and %d/16 in print as %q and read back as %v, %v; want %v", feet, sixteenths, text, got, err, si)
		}
	})
}

func TestLoadKeepsItsUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.SampledFrom(KindLoad.Units()).Draw(t, "unit")
		text := rapid.StringMatching(`[1-9][0-9]{0,4}(\.[0-9]{0,2}[1-9])?`).Draw(t, "number") + " " + name
		load, err := ParseLoad(text)
		if err != nil || load.Unit != name || load.String() != text {
			t.Fatalf("%q: got %+v %v, %v", text, load, load, err)
		}
	})
}

func TestIn(t *testing.T) {
	for got, want := range map[string]string{
		Mass(8650).In("kg"):                      "8650 kg",
		Mass(8650).In("t"):                       "8.65 t",
		Mass(0.45359237).In("lb"):                "1 lb",
		Mass(8650).In("furlong"):                 "8650 kg",
		Length(0.028575).In("in"):                "1.125 in",
		Length(3.81).In("ft"):                    "12.5 ft",
		Force(-85000).In("kN"):                   "-85 kN",
		Angle(29.98).In("deg"):                   "29.98 deg",
		Pressure(98066.5).In("t/m2"):             "10 t/m2",
		Speed(10).In("km/h"):                     "36 km/h",
		Temperature(0).In("F"):                   "32 F",
		Temperature(-160.0 / 9).In("F"):          "0 F",
		Ratio(0.86).In("%"):                      "86 %",
		Moment(12000).In("kN m"):                 "12 kN m",
		Moment(1.3558179483314004).In("lbf ft"):  "1 lbf ft",
		Mass(math.Copysign(0, -1)).In("kg"):      "0 kg",
		Mass(math.NaN()).In("kg"):                "NaN kg",
		Mass(math.Inf(-1)).In("t"):               "-Inf t",
		Load{63743.225, "t"}.String():            "6.5 t",
		Load{63743.225, "t"}.In("kN"):            "63.743225 kN",
		Load{63743.225, "t"}.In("m"):             "63743.225 N",
		Load{63743.225, "t"}.Times(0.7).Format(): "4.55 t",
		Load{12, ""}.String():                    "12 N",
		Load{12, "m"}.Format():                   "12 N",
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	if w := Mass(1000).Weight(); w != 9806.65 {
		t.Errorf("1000 kg weighs %v", w)
	}
}
