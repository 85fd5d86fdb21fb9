package quantity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestParseSuffixReadsWhatIsPrinted: a printed figure comes back as near as its
// digits say.
func TestParseSuffixReadsWhatIsPrinted(t *testing.T) {
	names := []string{"tension_n", "angle_from_horizontal_deg", "needs_m", "mass_kg", "strength_pa", "bending_nm", "speed_m_s", "highest_c", "used_ratio", "used_percent", "overdue_days", "bend_d", "breaking_over_pull_times"}
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.SampledFrom(names).Draw(t, "name")
		sys := rapid.SampledFrom([]System{Metric, US}).Draw(t, "units")
		si := rapid.Float64Range(1e4, 1e6).Draw(t, "value")
		text, ok := FormatSuffix(name, si, sys)
		if !ok {
			t.Fatalf("%s has no known end", name)
		}
		got, err := ParseSuffix(name, text)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if math.Abs(got-si) > 0.01*si { // three digits at the least
			t.Fatalf("%s: %v is printed %s and read as %v", name, si, text, got)
		}
	})
}

func TestParseSuffix(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       float64
	}{
		{"angle_deg", "29.3 deg", 29.3},
		{"needs_m", "26 mm", 0.026},
		{"needs_m", "1 in", 0.0254}, // exact by definition of the inch
		{"load_n", "58.8 kN", 58800},
		{"used_ratio", "142 %", 1.42},
		{"used_percent", "142 %", 142},
		{"overdue_days", "13 days", 13},
		{"legs_direct", "3", 3},
		{"slack", "-0.5", -0.5},
	} {
		if got, err := ParseSuffix(c.name, c.text); err != nil || math.Abs(got-c.want) > 1e-12*math.Abs(c.want) {
			t.Errorf("%s %q: %v, %v", c.name, c.text, got, err)
		}
	}
	for _, c := range [][2]string{{"angle_deg", "29.3"}, {"needs_m", "26 kg"}, {"overdue_days", "13"}, {"legs_direct", "3 legs"}, {"legs_direct", "1e3"}, {"legs_direct", ""}, {"legs_direct", "NaN"}, {"bend_d", "Inf d"}} {
		if got, err := ParseSuffix(c[0], c[1]); err == nil {
			t.Errorf("%s %q is read as %v", c[0], c[1], got)
		}
	}
}
