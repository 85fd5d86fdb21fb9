package quantity

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestFormatSuffix(t *testing.T) {
	for _, c := range []struct {
		name       string
		si         float64
		metric, us string
	}{
		{"mass_kg", 8650, "8650 kg", "19070 lb"},
		{"mass_kg", 8650.4, "8650 kg", "19071 lb"},
		{"mass_kg", 9999.4, "9999 kg", "22045 lb"},
		{"mass_kg", 9999.6, "10 t", "22045 lb"},
		{"mass_kg", 12434, "12.43 t", "27412 lb"},
		{"mass_kg", 124340, "124.3 t", "274123 lb"},
		{"mass_kg", 12.46, "12.5 kg", "27.5 lb"},
		{"mass_kg", 0, "0 kg", "0 lb"},
		{"headroom_m", 4.2, "4.20 m", "13 ft 9.35 in"},
		{"headroom_m", 4.191, "4.19 m", "13 ft 9 in"},
		{"headroom_m", 0.9996, "1.00 m", "3 ft 3.35 in"},
		{"headroom_m", 3.6575, "3.66 m", "12 ft"},
		{"diameter_m", 0.028575, "28.6 mm", "1-1/8 in"},
		{"diameter_m", 0.01905, "19.1 mm", "3/4 in"},
		{"diameter_m", 0.61, "610 mm", "2 ft 0.02 in"},
		{"center_of_gravity_y_m", -1.05, "-1.05 m", "-3 ft 5.34 in"},
		{"center_of_gravity_y_m", -0.00001, "0 mm", "0 in"},
		{"tension_n", 42437, "42.4 kN", "9540 lbf"},
		{"tension_n", 4243.7, "4.24 kN", "954 lbf"},
		{"tension_n", 424370, "424 kN", "95402 lbf"},
		{"angle_from_horizontal_deg", 53.13, "53.1 deg", "53.1 deg"},
		{"angle_from_horizontal_deg", 60, "60 deg", "60 deg"},
		{"bending_nm", 12345, "12.3 kN m", "9105 lbf ft"},
		{"bending_nm", 250, "0.25 kN m", "184 lbf ft"},
		{"ground_pa", 150000, "150 kPa", "3133 psf"},
		{"wind_m_s", 9.8, "9.8 m/s", "21.9 mph"},
		{"rope_c", -5, "-5 C", "23 F"},
		{"overdue_days", 12, "12 days", "12 days"},
		{"overdue_days", 1, "1 day", "1 day"},
		{"overdue_days", -1, "-1 day", "-1 day"},
		{"overdue_days", 0, "0 days", "0 days"},
		{"bend_d", 1.538, "1.54 d", "1.54 d"},
		{"breaking_over_pull_times", 3.651, "3.65 times", "3.65 times"},
		{"use_ratio", 0.86, "86 %", "86 %"},
		{"use_ratio", 0.8642, "86.4 %", "86.4 %"},
		{"tolerance_percent", 2, "2 %", "2 %"},
		{"tension_n", math.NaN(), "NaN kN", "NaN lbf"},
		{"tension_n", math.Inf(1), "+Inf kN", "+Inf lbf"},
	} {
		for sys, want := range map[System]string{Metric: c.metric, US: c.us, "": c.metric} {
			if got, ok := FormatSuffix(c.name, c.si, sys); !ok || got != want {
				t.Errorf("%s %v %s: got %q %v, want %q", c.name, c.si, sys, got, ok, want)
			}
		}
	}
}

// Compound units end in the name of a unit, and are something else.
func TestUnknownSuffix(t *testing.T) {
	for _, name := range []string{"", "legs", "moment_n_m", "rope_kg_per_m", "rope_kg_m", "m", "_m", "item", "force_kn", "area_m2"} {
		if got, ok := FormatSuffix(name, 1, Metric); ok {
			t.Errorf("%q prints as %q", name, got)
		}
	}
}

func TestFormatByType(t *testing.T) {
	for got, want := range map[string]string{
		Mass(8650).Format(Metric):      "8650 kg",
		Length(4.2).Format(Metric):     "4.20 m",
		Force(42437).Format(US):        "9540 lbf",
		Angle(60).Format(US):           "60 deg",
		Pressure(150000).Format(US):    "3133 psf",
		Speed(9.8).Format(Metric):      "9.8 m/s",
		Temperature(-5).Format(US):     "23 F",
		Ratio(0.02).Format(Metric):     "2 %",
		Length(math.Inf(1)).Format(US): "+Inf in",
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestFormatPair(t *testing.T) {
	for _, c := range []struct {
		name            string
		measured, limit float64
		sys             System
		want            string
	}{
		{"angle_from_horizontal_deg", 29.98, 30, Metric, "29.98 deg | 30 deg"},
		{"angle_from_horizontal_deg", 29.999996, 30, Metric, "29.999996 deg | 30 deg"},
		{"angle_from_horizontal_deg", 25, 30, Metric, "25 deg | 30 deg"},
		{"angle_from_horizontal_deg", 30, 30, Metric, "30 deg | 30 deg"},
		{"headroom_m", 0.996, 1, Metric, "0.996 m | 1.00 m"},
		{"headroom_m", 0.25, 1, Metric, "0.25 m | 1.00 m"},
		{"mass_kg", 9996, 10000, Metric, "9.996 t | 10 t"},
		{"diameter_m", 0.02857, 0.028575, US, "1.1248 in | 1.125 in"},
		{"headroom_m", 4.19, 4.191, US, "13 ft 8.96 in | 13 ft 9 in"},
		{"use_ratio", 1.0004, 1, Metric, "100.04 % | 100 %"},
		{"overdue_days", 1, 0, Metric, "1 day | 0 days"},
		{"legs", 5, 4, Metric, "5 | 4"},
		{"bend", 24.997, 25, Metric, "24.997 | 25"},
		{"tension_n", math.NaN(), 5, Metric, "NaN kN | 0.01 kN"},
		{"tension_n", math.Inf(1), 5000, Metric, "+Inf kN | 5 kN"},
	} {
		a, b := FormatPair(c.name, c.measured, c.limit, c.sys)
		if got := a + " | " + b; got != c.want {
			t.Errorf("%s %v %v: got %q, want %q", c.name, c.measured, c.limit, got, c.want)
		}
	}
}

// The texts of a pair, read back, stand in the order of their values, however
// near these are.
func TestFormatPairKeepsOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom(suffixes[:]).Draw(t, "suffix")
		sys := rapid.SampledFrom([]System{Metric, US}).Draw(t, "system")
		a := rapid.Float64Range(-130, 30000).Draw(t, "a")
		if math.Abs(a) < 1e-3 {
			a = 1
		}
		b := drawNear(t, a)
		one, other := FormatPair("x"+s.end, a, b, sys)
		x, y := readBack(t, s, one), readBack(t, s, other)
		if a < b && x >= y || a > b && x <= y || a == b && one != other {
			t.Fatalf("%v and %v print as %q and %q", a, b, one, other)
		}
	})
}

func drawNear(t *rapid.T, a float64) float64 {
	switch rapid.IntRange(0, 3).Draw(t, "how near") {
	case 0:
		return math.Nextafter(a, math.Inf(1))
	case 1:
		return a
	case 2:
		return a + rapid.Float64Range(-1e-3, 1e-3).Draw(t, "off")
	}
	return a * rapid.Float64Range(0.5, 2).Draw(t, "times")
}

func readBack(t *rapid.T, s suffix, text string) float64 {
	if s.kind == 0 || s.per > 1 { // the number of the fact itself, not of its kind
		number, _, _ := strings.Cut(text, " ")
		v, err := strconv.ParseFloat(number, 64)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	v, err := s.kind.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// A larger length never prints smaller, although sixteenths and decimals mix,
// and no print is off by more than 0.005 in.
func TestInchesKeepOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(0, 2).Draw(t, "a")
		b := a + rapid.Float64Range(0, 0.001).Draw(t, "more")
		x, err1 := ParseLength(Length(a).Format(US))
		y, err2 := ParseLength(Length(b).Format(US))
		if err1 != nil || err2 != nil || x > y {
			t.Fatalf("%v and %v print as %v (%v) and %v (%v)", a, b, x, err1, y, err2)
		}
		if off := math.Abs(float64(x)-a) / 0.0254; off > 0.005+1e-9 {
			t.Fatalf("%v m prints %v in off", a, off)
		}
	})
}
