package policy_test

import (
	"testing"

	"liftlint/internal/finding"
	"liftlint/internal/policy"
)

// TestThinBendByProfile: a soft eye round less than twice its rope is a warning
// where EN 13414-1 is followed and a note elsewhere; round less than its rope it
// is an error everywhere.
func TestThinBendByProfile(t *testing.T) {
	for _, c := range []struct {
		profile string
		ratio   float64
		want    finding.Severity
	}{
		{"us", 1.99, finding.Note}, {"eu", 1.99, finding.Warning},
		{"us", 0.99, finding.Error}, {"eu", 0.99, finding.Error},
	} {
		d := level()
		d.Fits[0].BendD = ptr(c.ratio)
		v := judge(t, builtin(t, c.profile), d)["bend/eye_round_thin_body"]
		if got := v.Rule.SeverityOf(v.Outcomes[0], policy.Review); got != c.want {
			t.Errorf("%s at %g: %s, not %s", c.profile, c.ratio, got, c.want)
		}
	}
}

// TestHooksMadeWithoutALatch: only a hook made for lifting has to have one.
func TestHooksMadeWithoutALatch(t *testing.T) {
	for _, made := range []string{"lifting", "sorting", "grab", "foundry", "j"} {
		d := level()
		d.HookUses[1].MadeFor, d.HookUses[1].Latch = made, ptr("none")
		broken := 0
		for _, o := range judge(t, builtin(t, "us"), d)["fit/hook_latch"].Outcomes {
			if o.State == policy.Broken {
				broken++
			}
		}
		if want := map[bool]int{true: 1}[made == "lifting"]; broken != want {
			t.Errorf("made for %s: %d findings", made, broken)
		}
	}
}

// TestOneFindingForOneWidth: an eye spread too wide is not told to be too
// narrow as well.
func TestOneFindingForOneWidth(t *testing.T) {
	for ratio, want := range map[float64]string{0.5: "fit/pin_over_eye_width", 0.51: "fit/eye_over_body"} {
		d := level()
		f := &d.Fits[0]
		f.WidthOverLengthRatio, f.EyeIncludedAngleDeg = ptr(ratio), ptr(20.0)
		f.BodyWidthM, f.EyeWidthM = ptr(0.17), ptr(0.16)
		for _, id := range []string{"fit/pin_over_eye_width", "fit/eye_over_body"} {
			for _, o := range judge(t, builtin(t, "us"), d)[id].Outcomes {
				if o.Subject.Key == f.Key && (o.State == policy.Broken) != (id == want) {
					t.Errorf("at %g %s is %s", ratio, id, o.State)
				}
			}
		}
	}
}
