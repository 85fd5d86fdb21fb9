package compute_test

import "testing"

// TestTooHotIsTold: what is beyond all that its kind is rated for is found by a
// rule; what no source tells of within that is told here.
func TestTooHotIsTold(t *testing.T) {
	for _, c := range []struct {
		kind, highest string
		rated, told   bool
	}{
		{"chain", "530 C", true, false},
		{"chain", "540 C", false, true},
		{"webbing", "82 C", true, false},
		{"webbing", "83 C", false, true},
		{"yarns", "83 C", false, true},
		{"mesh", "90 C", true, false},
		{"mesh", "120 C", false, true},
	} {
		f, _ := heated(rulesBase(t, "two_legs").withSlings(t, kindsOfSling[c.kind]), c.highest).compute(t)
		if _, rated := find(t, f, "part/hook/1/S1").Field("rated_load_n"); rated != c.rated {
			t.Errorf("%s at %s: rated %v", c.kind, c.highest, rated)
			continue
		}
		if c.rated {
			continue
		}
		if text, told := why(t, f, "part/hook/1/S1"); told != c.told {
			t.Errorf("%s at %s: %q, told %v", c.kind, c.highest, text, told)
		}
	}
}
