package report

import "testing"

func TestSays(t *testing.T) {
	for name, c := range map[string]struct {
		sentence string
		figures  []string
		want     bool
	}{
		"both":               {"hangs at 28.4 deg; at least 30 deg is asked for", []string{"28.4 deg", "30 deg"}, true},
		"at the ends":        {"30 deg, not 60 deg", []string{"60 deg", "30 deg"}, true},
		"at a stop":          {"it is 13.", []string{"13"}, true},
		"within a compound":  {"a 13-day delay", []string{"13"}, true},
		"limit alone":        {"at least 30 deg", []string{"28.4 deg", "30 deg"}, false},
		"part of a number":   {"hangs at 130 deg", []string{"30 deg"}, false},
		"behind a point":     {"hangs at 2.30 deg", []string{"30 deg"}, false},
		"ahead of a point":   {"4.5 legs", []string{"4"}, false},
		"negative":           {"at -30 deg", []string{"30 deg"}, false},
		"fraction":           {"2-13/16 in", []string{"13"}, false},
		"longer unit":        {"of 30 degrees", []string{"30 deg"}, false},
		"second is whole":    {"130 deg and 30 deg", []string{"30 deg"}, true},
		"equal, told once":   {"30 deg is too flat", []string{"30 deg", "30 deg"}, false},
		"equal, told twice":  {"30 deg, at least 30 deg", []string{"30 deg", "30 deg"}, true},
		"short within long":  {"4 of 4 kN", []string{"4", "4 kN"}, true},
		"long holds short":   {"at 4 kN", []string{"4", "4 kN"}, false},
		"in a letter's word": {"S4 carries", []string{"4"}, false},
		"empty figure":       {"anything", []string{""}, false},
		"no figures":         {"anything", nil, true},
	} {
		if got := Says(c.sentence, c.figures); got != c.want {
			t.Errorf("%s: %v", name, got)
		}
	}
}
