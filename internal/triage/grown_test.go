package triage

import (
	"testing"

	"liftlint/internal/finding"
)

// TestGrown tells of entries that are new or worse, and of no others.
func TestGrown(t *testing.T) {
	entry := func(key string, v float64, s finding.Severity) finding.Finding {
		return finding.Finding{Rule: "a/plain", Key: key, Severity: s, Measured: figure(v), Limit: figure(30)}
	}
	old, _ := taken([]finding.Finding{entry("k1", 29, finding.Error), entry("k3", 29, finding.Error)})
	for _, x := range []struct {
		what string
		now  finding.Finding
		want int
	}{
		{"the same", entry("k1", 29, finding.Error), 0},
		{"better", entry("k1", 29.5, finding.Error), 0},
		{"milder", entry("k1", 29, finding.Warning), 0},
		{"worse", entry("k1", 28, finding.Error), 1},
		{"another", entry("k2", 29, finding.Error), 1},
	} {
		now, _ := taken([]finding.Finding{x.now})
		if got := Grown(old, now, "p", "p", plain()); len(got) != x.want {
			t.Errorf("%s: %+v", x.what, got)
		}
		if got := Grown(nil, now, "p", "p", plain()); len(got) != 1 {
			t.Errorf("%s, the first baseline: %+v", x.what, got)
		}
	}
	if got := Grown(old, nil, "p", "p", plain()); got != nil {
		t.Errorf("no baseline any more: %+v", got)
	}
	old.Plans[0].File = "before"
	now, _ := taken([]finding.Finding{entry("k1", 29, finding.Error)})
	if got := Grown(old, now, "before", "p", plain()); len(got) != 0 {
		t.Errorf("renamed: %+v", got)
	}
}
