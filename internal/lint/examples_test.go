package lint_test

import (
	"maps"
	"slices"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// mistakes are those that the comment at the top of an example names, each with the
// rules that tell of it.
var mistakes = map[string]map[string][]string{
	"wall-panel": {
		"top slings too short":        {"beam/top_legs_too_flat", "beam/compression_over_rated", "load/over_rated_load", "angle/leg_too_flat"},
		"inserts about the middle":    {"load/tilt", "beam/tilts"},
		"insert too weak":             {"load/insert_weak"},
		"not shown free":              {"load/not_shown_free"},
		"drop sling shorter by 25 cm": {"load/tilt"},
	},
	"column": {
		"choke near the center of gravity": {"load/tilt", "load/turns_over"},
		"no rated load for a choker":       {"tag/hitch_rating_missing"},
		"eye in the choke":                 {"hitch/choke_on_eye_or_splice"},
		"nothing holds the sling":          {"hitch/choker_can_slide"},
		"nothing holds the column":         {"hitch/single_leg_can_turn"},
	},
	"girder": {
		"center of gravity known loosely": {"load/over_rated_load", "load/tilt"},
		"east hook beside its lug":        {"hook/pulled_aside"},
		"pin too thin":                    {"fit/pin_in_hole"},
		"inspection run out":              {"inspection/overdue"},
		"latch that does not close":       {"fit/hook_latch"},
	},
	"transformer": {
		"grommets for a third of the load": {"load/over_rated_load", "load/bound_over_rated_load"},
		"one laid double and too short":    {"tension/leg_slack", "hitch/doubled_parts_equal"},
		"padeyes square to the tank":       {"hardware/attachment_side_pull"},
		"oil in the tank":                  {"load/hazardous_contents"},
	},
	"mixed-slings": {
		"chain for binding loads down": {"sling/chain_grade"},
		"cut cover":                    {"sling/faults_seen"},
		"tag without a basket":         {"tag/hitch_rating_missing"},
		"spreader pinned out too far":  {"beam/span_over_rated"},
	},
	"vessel": {
		"tail sling":                     {"load/over_rated_load"},
		"padeyes set for the level lift": {"hardware/attachment_side_pull", "load/over_rated_load"},
		"beam bent":                      {"beam/bending_over_rated"},
		"beam too narrow":                {"hardware/attachment_side_pull", "load/over_rated_load"},
		"strength not confirmed":         {"load/strength_not_confirmed"},
	},
}

// TestMistakesOfExamplesAreFound: each mistake is told of, and no error or warning is
// left without a mistake that it tells of.
func TestMistakesOfExamplesAreFound(t *testing.T) {
	l := linter(t, lint.Options{})
	for name, of := range mistakes {
		t.Run(name, func(t *testing.T) {
			told := map[string]bool{}
			for _, rules := range of {
				for _, r := range rules {
					told[r] = true
				}
			}
			got := troubling(check(t, l, example(t, name)))
			if want := slices.Sorted(maps.Keys(told)); !slices.Equal(got, want) {
				t.Errorf("found by %v, want %v", got, want)
			}
		})
	}
}

// asInUS are rules that find something in examples set by US practice: beams are
// proof-tested with 1.25 times their rated load there and with no more.
var asInUS = map[string][]string{
	"eu mixed-slings": {"beam/proof_test_low"},
	"eu vessel":       {"beam/proof_test_low"},
	"eu wall-panel":   {"beam/proof_test_low"},
}

// TestReviewedExamplesAreClean: after the review neither error nor warning is left,
// by either profile; notes are, where the roof keeps the legs flat.
func TestReviewedExamplesAreClean(t *testing.T) {
	for _, profile := range []string{"us", "eu"} {
		l := linter(t, lint.Options{Profile: profile})
		for name := range mistakes {
			t.Run(profile+" "+name, func(t *testing.T) {
				r := check(t, l, example(t, name+"-reviewed"))
				if got := troubling(r); !slices.Equal(got, asInUS[profile+" "+name]) {
					t.Errorf("found by %v", got)
				}
				for _, f := range r.Findings {
					if slices.Contains(asInUS[profile+" "+name], f.Rule) {
						continue
					}
					if f.Rule != "angle/leg_too_flat" || name != "transformer" {
						t.Errorf("a note of %s: %s", f.Rule, f.Message)
					}
				}
			})
		}
	}
}

// troubling names the rules of errors and warnings, each once.
func troubling(r *lint.Result) []string {
	var list []string
	for _, f := range r.Findings {
		if f.Severity != finding.Note {
			list = append(list, f.Rule)
		}
	}
	slices.Sort(list)
	return slices.Compact(list)
}
