package plangen_test

import (
	"reflect"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/plangen"
)

// TestDrafts: whatever a plan says and lacks, it is judged, the same each
// time, every subject is accounted for, and what hangs is in balance.
func TestDrafts(t *testing.T) {
	t.Parallel()
	l := linter(t)
	seen := map[string]int{}
	for seed := range uint64(200) {
		text := plangen.Draft(seed)
		r := check(t, l, text)
		if r.State != lint.Judged {
			t.Fatalf("seed %d is %s:\n%s\n%s", seed, r.State, told(r), text)
		}
		again := check(t, l, plangen.Draft(seed))
		if !reflect.DeepEqual(r.Findings, again.Findings) || !reflect.DeepEqual(r.Checked, again.Checked) {
			t.Errorf("seed %d is judged in two ways", seed)
		}
		accounted(t, seed, r)
		if hangs := r.Facts.Document.Loads[0].Hangs; hangs != nil && (*hangs == "steady" || *hangs == "rocks") {
			seen[*hangs]++
			balance(t, seed, r)
		}
		for _, g := range r.Facts.Document.Gear {
			seen["tag "+g.Tag.State]++
		}
		for _, f := range r.Findings {
			seen[f.Rule]++
		}
	}
	for _, what := range []string{"steady", "tag legible", "tag illegible", "tag missing", "tag not_recorded", "input/missing",
		"input/not_judged", "inspection/overdue", "load/turns_over", "load/tilt", "load/over_rated_load", "angle/leg_too_flat", "tension/leg_slack",
		"fit/pin_in_hole", "fit/plate_in_jaw", "fit/hook_latch", "bend/eye_round_thin_body", "hardware/attachment_side_pull", "hardware/round_pin",
		"load/contents_can_move", "load/not_shown_free", "sling/rotation_resistant_or_lang", "bridle/legs_unmatched"} {
		if seen[what] < 3 {
			t.Errorf("drafts hardly ever show %s: %d times", what, seen[what])
		}
	}
}

// accounted: no subject waits without a word why, nor without a finding.
func accounted(t *testing.T, seed uint64, r *lint.Result) {
	t.Helper()
	waits := false
	for _, c := range r.Checked {
		if c.DoesNotApply == "" && len(c.Met)+len(c.Broken)+len(c.NotJudged) == 0 {
			t.Errorf("seed %d: %s has no subjects and no word on it", seed, c.Rule)
		}
		for _, u := range c.NotJudged {
			waits = true
			if len(u.WaitsFor) == 0 {
				t.Errorf("seed %d: %s waits for nothing on %s", seed, c.Rule, u.Key)
			}
		}
	}
	if waits && finding.Worst(r.Findings) == "" {
		t.Errorf("seed %d: checks wait, and nothing is found", seed)
	}
}
