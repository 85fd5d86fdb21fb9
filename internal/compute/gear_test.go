package compute_test

import (
	"fmt"
	"strconv"
	"testing"
	"time"

	"pgregory.net/rapid"

	"liftlint/internal/compute"
)

func meters(mm int) string { return strconv.FormatFloat(float64(mm)/1000, 'f', -1, 64) + " m" }

// TestInspectionDue: the same day of a later month, the last one of it where
// it is shorter; leap years after the Gregorian calendar (ISO 8601).
func TestInspectionDue(t *testing.T) {
	for _, c := range []struct {
		inspected, due string
		months         int
		overdue        float64 // on 2026-12-04
		next           string
	}{
		{"2025-12-04", "2026-12-04", 12, 0, ""},
		{"2025-12-03", "2026-12-03", 12, 1, ""},
		{"2025-12-05", "2026-12-05", 12, -1, ""},
		{"2026-08-31", "2026-11-30", 3, 4, ""},
		{"2025-08-31", "2026-02-28", 6, 279, ""},
		{"2023-08-31", "2024-02-29", 6, 1009, ""},
		{"2024-02-29", "2025-02-28", 12, 644, ""},
		{"2024-02-29", "2028-02-29", 48, -452, ""},
		{"2026-11-30", "2027-02-28", 3, -86, ""},
		{"2026-01-31", "2026-12-31", 11, -27, ""},
		{"2026-06-01", "2026-09-01", 12, 94, "2026-09-01"},   // the inspector asked for sooner
		{"2025-06-01", "2026-06-01", 12, 186, "2027-09-01"},  // the interval runs out before
		{"2026-06-01", "2026-12-04", 0, 0, "2026-12-04"},     // no interval: the inspector's day
		{"2026-06-01", "2026-05-01", 12, 217, "2026-05-01"},  // due before it was made
		{"2026-12-04", "2027-12-04", 12, -365, "2099-01-01"}, // on the very day
	} {
		t.Run(fmt.Sprintf("%s plus %d next %s", c.inspected, c.months, c.next), func(t *testing.T) {
			v := example(t, "pump-skid").set("gear/1/inspection", map[string]any{"date": c.inspected})
			if c.next != "" {
				v.set("gear/1/inspection/next_due", c.next)
			}
			cond := conditions()
			cond.IntervalMonths = func(string, string) (int, bool) { return c.months, c.months > 0 }
			f, _ := compute.Facts(decode(t, v.text()), cond)
			if due, _ := find(t, f, "gear/S1").Field("inspection.due"); due != c.due {
				t.Errorf("due on %v, not %s", due, c.due)
			}
			near(t, "days overdue", figure(t, f, "gear/S1", "inspection.overdue_days"), c.overdue, 0)
		})
	}
}

func TestIntervalOfKindAndService(t *testing.T) {
	cond := conditions()
	var asked []string
	cond.IntervalMonths = func(kind, service string) (int, bool) {
		asked = append(asked, kind+" "+service)
		return 12, true
	}
	v := example(t, "pump-skid").set("gear/1/inspection/service", "severe")
	compute.Facts(decode(t, v.text()), cond)
	if got := fmt.Sprint(asked[:3]); got != "[master_link normal wire_rope_sling severe wire_rope_sling normal]" {
		t.Errorf("asked for %s", got)
	}
}

// TestInspectionStaysUnknown: what can't be reckoned is absent and says why.
func TestInspectionStaysUnknown(t *testing.T) {
	for _, c := range []struct {
		name         string
		change       func(tree)
		field, waits string
	}{
		{"none", func(v tree) { v.drop("gear/1/inspection") }, "inspection", "S1's last inspection `inspection` at #/gear/1"},
		{"no day", func(v tree) { v.drop("lift/date") }, "inspection.overdue_days", "the day of the lift `date` at #/lift"},
		{"special service", func(v tree) { v.set("gear/1/inspection/service", "special") }, "inspection.due",
			"S1's next inspection, since the profile gives no interval for its service `next_due` at #/gear/1/inspection"},
		{"special service and no day", func(v tree) { v.set("gear/1/inspection/service", "special").drop("lift/date") }, "inspection.overdue_days",
			"S1's next inspection, since the profile gives no interval for its service `next_due` at #/gear/1/inspection; the day of the lift `date` at #/lift"},
		{"after the lift", func(v tree) { v.set("gear/1/inspection/date", "2026-12-05") }, "inspection.overdue_days",
			"the inspection of S1 on 2026-12-05 comes after the day that is judged for, 2026-12-04"},
	} {
		t.Run(c.name, func(t *testing.T) {
			v := example(t, "pump-skid")
			c.change(v)
			f, _ := v.compute(t)
			if got := labels(lacks(t, f, "gear/S1", c.field)); got != c.waits {
				t.Errorf("it waits for %q, not %q", got, c.waits)
			}
		})
	}
}

// TestDayJudgedFor: a day given from outside overrules the plan's, and its
// time of day counts for nothing.
func TestDayJudgedFor(t *testing.T) {
	p := decode(t, example(t, "pump-skid").text())
	rapid.Check(t, func(rt *rapid.T) {
		c := conditions()
		minutes := rapid.IntRange(0, 24*60-1).Draw(rt, "minutes after midnight")
		zone := time.FixedZone("elsewhere", 60*rapid.IntRange(-12*60, 14*60).Draw(rt, "minutes east"))
		at := time.Date(2027, 6, 12, 0, minutes, 0, 0, zone)
		c.On = &at
		f, _ := compute.Facts(p, c)
		if d, _ := find(rt, f, "lift").Field("date"); d != "2027-06-12" {
			rt.Fatalf("judged for %v", d)
		}
		if days := figure(rt, f, "gear/S1", "inspection.overdue_days"); days != 1 { // due 2027-06-11
			rt.Fatalf("%g days overdue at %v", days, at)
		}
	})
}

func TestTagStates(t *testing.T) {
	v := example(t, "pump-skid").drop("gear/1/tag").set("gear/2/tag", map[string]any{"condition": "missing"}).
		set("gear/3/tag", map[string]any{"condition": "illegible"}).drop("gear/4/tag/maker", "gear/4/tag/rated_load")
	f, _ := v.compute(t)
	for id, want := range map[string][2]string{
		"1": {"not_recorded", "no tag of S1 is recorded"},
		"2": {"missing", "S2's tag is missing"},
		"3": {"illegible", "S3's tag is illegible"},
		"4": {"legible", "S4's tag shows no rated load"},
	} {
		if state, _ := find(t, f, "gear/S"+id).Field("tag.state"); state != want[0] {
			t.Errorf("tag of S%s is %v", id, state)
		}
		gap := lacks(t, f, "part/hook/"+id+"/S"+id, "rated_load_n")
		if got := labels(gap); got != want[1] || gap.Reasons[0].ToldOf == "" {
			t.Errorf("S%s has no rated load because %q", id, got)
		}
	}
	if shows, _ := find(t, f, "gear/S4").Field("tag.shows"); fmt.Sprint(shows) != "[serial diameter hitch angle_from_horizontal legs design_factor]" {
		t.Errorf("the tag shows %v", shows)
	}
}

// TestTagOfABridleRatesNoLeg: what several legs carry together, or at an
// angle, is never taken for what one straight leg may carry. Within 5 degrees
// of vertical counts as vertical: 29 CFR 1910.184(b) (read).
func TestTagOfABridleRatesNoLeg(t *testing.T) {
	for _, c := range []struct {
		legs  int
		angle string
		rates bool
	}{
		{1, "90 deg", true}, {1, "85 deg", true}, {1, "84.9 deg", false}, {1, "60 deg", false}, {2, "90 deg", false}, {4, "60 deg", false},
	} {
		v := example(t, "pump-skid").set("gear/1/tag/legs", c.legs).set("gear/1/tag/angle_from_horizontal", c.angle)
		f := v.facts(t)
		if c.rates {
			near(t, "rated load", figure(t, f, "part/hook/1/S1", "rated_load_n"), 5650*gravity, 1e-4)
			continue
		}
		if gap := lacks(t, f, "part/hook/1/S1", "used_ratio"); !contains(labels(gap), "what one straight leg may carry is not on it") || gap.Reasons[0].ToldOf != "" {
			t.Errorf("%d legs at %s: no share because %q", c.legs, c.angle, labels(gap))
		}
	}
}
