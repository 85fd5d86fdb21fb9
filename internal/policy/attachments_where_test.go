package policy_test

import (
	"slices"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/policy"
)

// TestWhichAttachmentsRulesPickOut: each is judged by the rules that concern its
// kind and its ratings, by no other, and by none of them where no leg goes to it.
func TestWhichAttachmentsRulesPickOut(t *testing.T) {
	const flat, side, rated = "hardware/attachment_pulled_flat", "hardware/attachment_side_pull", "hardware/side_pull_over_rating"
	const plain, seat, ring = "hardware/eyebolt_plain_at_angle", "hardware/not_seated", "hardware/hoist_ring_off_axis"
	const direction = "hardware/rated_direction_not_given"
	const weak, young = "load/insert_weak", "load/concrete_too_young"
	want := map[int][]string{
		ratedToHorizontal: {flat, side, direction},
		ratedToPlane:      {rated, direction},
		eyebolt:           {side, plain, seat},
		hoistRing:         {seat, ring},
		insert:            {weak, young},
	}
	p := builtin(t, "us")
	for _, legs := range []int{1, 0} {
		d := level()
		for i := range d.Attachments {
			d.Attachments[i].Legs = legs
		}
		got := judge(t, p, d)
		for i, a := range d.Attachments {
			for _, rule := range []string{flat, side, rated, direction, plain, seat, ring, weak, young} {
				judged := slices.ContainsFunc(got[rule].Outcomes, func(o policy.Outcome) bool { return o.Subject.Key == a.Key })
				if judged != (legs > 0 && slices.Contains(want[i], rule)) {
					t.Errorf("%s with %d legs, judged by %s: %v", a.Key, legs, rule, judged)
				}
			}
		}
	}
}

// TestOneFindingForALesserRating: a part that is over at its angle is told so,
// whether or not it would be over as marked.
func TestOneFindingForALesserRating(t *testing.T) {
	p := builtin(t, "us")
	for ratedN, want := range map[float64]string{50000: "over", 25000: "over_at_angle"} {
		d := level()
		part := &d.Parts[0]
		part.RatedLoadN, part.UsedRatio = ptr(ratedN), ptr(1.3)
		o := judge(t, p, d)["load/over_rated_load"].Outcomes[0]
		if o.State != policy.Broken || o.Grade.Name != want {
			t.Errorf("rated for %v: %s %v", ratedN, o.State, o.Grade)
		}
	}
}

// TestUnknownPatternIsNotSound: what is not known of an eyebolt is asked for, and
// a plain one is not asked how it is seated.
func TestUnknownPatternIsNotSound(t *testing.T) {
	p := builtin(t, "us")
	for name, c := range map[string]struct {
		change func(*facts.Attachment)
		rule   string
		want   policy.State
	}{
		"no pattern":    {func(a *facts.Attachment) { a.Pattern = nil }, "hardware/eyebolt_plain_at_angle", policy.NotJudged},
		"no seat given": {func(a *facts.Attachment) { a.Seated = nil }, "hardware/not_seated", policy.NotJudged},
		"plain":         {func(a *facts.Attachment) { a.Seated = ptr("has_no_seat") }, "hardware/not_seated", policy.Met},
		"no direction":  {func(a *facts.Attachment) { a.OutOfPlaneDeg = nil }, "hardware/attachment_side_pull", policy.NotJudged},
	} {
		d := level()
		c.change(&d.Attachments[eyebolt])
		key := d.Attachments[eyebolt].Key
		i := slices.IndexFunc(judge(t, p, d)[c.rule].Outcomes, func(o policy.Outcome) bool { return o.Subject.Key == key })
		if got := judge(t, p, d)[c.rule].Outcomes[i].State; got != c.want {
			t.Errorf("%s: %s", name, got)
		}
	}
}
