package report

import "testing"

// TestSentence: a message gets a capital and a stop, and an id stays as it is.
func TestSentence(t *testing.T) {
	for message, want := range map[string]string{
		"leg hook/1 is flat":                 "Leg hook/1 is flat.",
		"angle/leg_too_flat finds nothing":   "angle/leg_too_flat finds nothing.",
		"known.json is no baseline":          "known.json is no baseline.",
		"is it?":                             "Is it?",
		"S1 is past its inspection":          "S1 is past its inspection.",
		"":                                   "no message is given",
		"part_of a name":                     "part_of a name.",
		"the load hangs tilted by 7.5 deg/m": "The load hangs tilted by 7.5 deg/m.",
	} {
		if got := Sentence(message); got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
}

func TestOneLine(t *testing.T) {
	for text, want := range map[string]string{
		"a: b\n  c: d\n":               "a: b; c: d",
		"not used, for its faults:\na": "not used, for its faults: a",
		"\n a \n\n":                    "a",
		"":                             "",
	} {
		if got := OneLine(text); got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
}
