package plangen_test

import (
	"path"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/plangen"
)

// standing is how each rule stands on each of its subjects.
func standing(r *lint.Result) map[string]string {
	all := map[string]string{}
	for _, c := range r.Checked {
		for _, k := range c.Met {
			all[c.Rule+" "+k] = "met"
		}
		for _, k := range c.Broken {
			all[c.Rule+" "+k] = "broken"
		}
		for _, u := range c.NotJudged {
			all[c.Rule+" "+u.Key] = "not judged"
		}
	}
	return all
}

// standIn says what the format takes where a thing is left out, so that a rule
// may come to another end without it.
type standIn struct {
	path string // of the thing, with * for ids
	rule string // the only rule that may be met or have no subject for it; any where empty
	why  string
}

func standIns() []standIn {
	return []standIn{
		{"/lift/profile", "", "the profile us is taken"},
		{"/rigging/*/legs/*/id", "", "the leg is called by its number: its subjects have other names"},
		{"/rigging/*/by", "", "there is no link: the eyes go over the hook"},
		{"/gear/*/inspection/next_due", "inspection/", "the profile's interval alone counts"},
		{"/gear/*/inspection/service", "inspection/", "normal service is taken"},
		{"/gear/*/eyes", "fit/thimble_over_body", "a soft eye is taken"},
		{"/gear/*/eyes/*", "fit/thimble_over_body", "a soft eye is taken"},
		{"/gear/*/eyes/*/thimble", "fit/thimble_over_body", "a soft eye is taken"},
		{"/gear/*/eyes", "fit/thimble_size", "there is no size to compare"},
		{"/gear/*/eyes/*", "fit/thimble_size", "the same"},
		{"/gear/*/eyes/*/thimble_size", "fit/thimble_size", "the same"},
		{"/gear/*/tag", "tag/useful_fields_missing", "another rule breaks: there is no tag"},
		{"/gear/*/tag/angle_from_horizontal", "load/", "the hitch alone says that the rating is for one straight leg"},
		{"/gear/*/tag", "tag/disagrees", "there is no diameter to compare; another rule breaks"},
		{"/gear/*/tag/diameter", "tag/disagrees", "the same, where the profile asks for it; else a note says that it is missing"},
		{"/gear/*/tag/legs", "load/", "one leg is taken"},
		{"/gear/*/groups/*/link", "", "the legs hang from the master link itself"},
		{"/load/mass_tolerance", "load/bound_over_rated_load", "the mass is taken as it is; another rule says so"},
		{"/gear/*/class", "sling/legs_unlike", "slings are compared as far as they are described; another rule says what is missing"},
		{"/gear/*/inspection", "inspection/overdue gear/H", "a hook at the end of a leg of a bridle is inspected with it"},
		{"/gear/*/inspection", "inspection/due_soon gear/H", "the same"},
		{"/gear/*/core", "sling/legs_unlike", "the same"},
		{"/gear/*/diameter", "sling/legs_unlike", "the same"},
		{"/gear/*/tag", "tag/rating_over_", "there is no rating to hold against the rope; another rule breaks"},
		{"/gear/*/tag/*", "tag/rating_over_", "the same, or the rating can't be used, and that is said"},
		{"/gear/*/*", "tag/rating_over_", "the tag is held against the strongest rope, by one rule, or against rope like it, by the other"},
		{"/gear/*/eyes/*", "tag/rating_over_", "the same"},
		{"/gear/*/eyes/*/kind", "tag/rating_over_", "the same"},
		{"/gear/*/tag", "bridle/legs_on_tag", "there is no number to compare; another rule breaks"},
		{"/gear/*/tag/legs", "bridle/legs_on_tag", "the same"},
		{"/gear/*/tag", "angle/flatter_than_tag", "there is no band of angles; another rule breaks, or asks for it"},
		{"/gear/*/tag/*", "angle/flatter_than_tag", "the same"},
		{"/gear/*/diameter", "load/over_rated_load", "the rope is taken as stiff, which moves the load a little; the missing input is reported"},
		{"/gear/*/lay", "sling/rotation_resistant_or_lang", "a regular lay is taken; another rule says that it is missing"},
		{"/gear/*/class", "sling/rotation_resistant_or_lang", "an ordinary class is taken; another rule says that it is missing"},
		{"/load/contents", "load/hazardous_contents", "another rule says that nothing is known of the contents"},
		{"/load/size", "load/center_of_gravity_outside", "there is nothing to lie outside of"},
		{"/rigging/*/legs/*/angle_from_horizontal", "route/stated_angle_off", "there is no angle to compare"},
		{"/load/attachments/*/rated_to_angle_from_*", "hardware/", "another limit is taken, or none"},
		{"/load/attachments/*/turned_in_plan", "", "not turned is taken"},
		{"/gear/*/eyes", "fit/pin_over_eye_width", "there is no width to compare"},
		{"/gear/*/eyes/*", "fit/pin_over_eye_width", "the same"},
		{"/gear/*/eyes/*/width", "fit/pin_over_eye_width", "the same"},
		{"/load/mass", "load/bound_over_rated_load", "three legs are held to be settled by statics until their places are known; the missing input is reported"},
		{"/load/center_of_gravity", "load/bound_over_rated_load", "the same"},
		{"/load/attachments/*/*", "load/bound_over_rated_load", "the same"},
		{"/gear/*/*", "load/bound_over_rated_load", "the same"},
	}
}

func (s standIn) covers(without, rule string) bool {
	ok, err := path.Match(s.path, without)
	return ok && err == nil && strings.HasPrefix(rule, s.rule)
}

// TestLessDataNeverLooksBetter takes each thing that plans may leave out away,
// one at a time. What was broken or could not be judged is not met for that,
// nor passed over, unless something stands in for the thing.
func TestLessDataNeverLooksBetter(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range uint64(8) {
		whole, gaps := plangen.Gaps(seed, true)
		before := standing(check(t, l, whole))
		for _, g := range gaps {
			r := check(t, l, g.Text)
			if r.State != lint.Judged {
				t.Fatalf("seed %d without %s is %s:\n%s\n%s", seed, g.Without, r.State, told(r), g.Text)
			}
			after := standing(r)
			for subject, was := range before {
				is := after[subject]
				if was == "met" || is == "broken" || is == "not judged" {
					continue
				}
				covers := func(s standIn) bool { return s.covers(g.Without, subject) }
				if !slices.ContainsFunc(standIns(), covers) {
					t.Errorf("seed %d without %s: %s was %s and is %q now", seed, g.Without, subject, was, is)
				}
			}
		}
	}
}

// TestNothingMissingIsSilent: what can't be judged for want of data is
// reported at the stage that asks for it.
func TestNothingMissingIsSilent(t *testing.T) {
	t.Parallel()
	l := linter(t)
	for seed := range uint64(4) {
		whole, gaps := plangen.Gaps(seed, false)
		before := standing(check(t, l, whole))
		for _, g := range gaps {
			r := check(t, l, g.Text)
			silent := !slices.ContainsFunc(r.Findings, func(f finding.Finding) bool {
				return f.Severity != finding.Note && (strings.HasPrefix(f.Rule, "input/") || strings.HasPrefix(f.Rule, "tag/"))
			})
			for subject, is := range standing(r) {
				if is == "not judged" && before[subject] == "met" && silent {
					t.Errorf("seed %d without %s: %s can't be judged, and nothing says so:\n%s", seed, g.Without, subject, told(r))
				}
			}
		}
	}
}
