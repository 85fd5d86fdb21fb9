package remedy

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/capacity"
	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// slingPlan is a load on level points, its center of gravity off the middle,
// with the sling of each leg as long as given and a shackle below it.
func slingPlan(t testing.TB, shackleM float64, slingsM []float64) (*plan.Plan, *facts.Facts) {
	t.Helper()
	points := [][2]float64{{0, 0}, {4, 0}, {4, 2}, {0, 2}}
	center := "x: 2.05 m, y: 1 m, z: 0 m"
	if len(slingsM) == 2 {
		center = "x: 2.1 m, y: 0 m, z: 0 m"
	}
	var attachments, gear, legs strings.Builder
	for i, l := range slingsM {
		fmt.Fprintf(&attachments, "    - {id: P%d, kind: padeye, x: %g m, y: %g m, z: 1 m}\n", i, points[i][0], points[i][1])
		fmt.Fprintf(&gear, "  - {id: S%d, kind: wire_rope_sling, diameter: 30 mm, length: %.9f m}\n", i, l)
		fmt.Fprintf(&gear, "  - {id: K%d, kind: shackle, inside_length: %.9f m}\n", i, shackleM)
		fmt.Fprintf(&legs, "      - {down: [S%d, K%d], end: {kind: to, at: P%d}}\n", i, i, i)
	}
	text := "liftlint: 1\nlift: {id: A, title: A}\nload:\n  mass: 5 t\n  center_of_gravity: {" + center + "}\n  attachments:\n" +
		attachments.String() + "gear:\n" + gear.String() + "rigging:\n  - from: hook\n    legs:\n" + legs.String()
	return computed(t, []byte(text))
}

func computed(t testing.TB, text []byte) (*plan.Plan, *facts.Facts) {
	t.Helper()
	doc, faults := yamldoc.Read("plan", text)
	if len(faults) > 0 {
		t.Fatalf("%v\n%s", faults, text)
	}
	p, faults, err := plan.Decode(doc)
	if err != nil || len(faults) > 0 {
		t.Fatal(faults, err)
	}
	f, troubles := compute.Facts(p, conditions())
	if len(troubles) > 0 {
		t.Fatalf("%v\n%s", troubles, text)
	}
	return p, f
}

func conditions() compute.Conditions {
	return compute.Conditions{Profile: "us", Stage: "review", Decides: compute.ThreeLegs, Parts: capacity.EqualParts,
		IntervalMonths: func(string, string) (int, bool) { return 12, true }}
}

// length reads the one length that follows the words in a remedy.
func length(t testing.TB, text, after string) float64 {
	t.Helper()
	m := regexp.MustCompile(after + ` ([0-9./ -]+(?:mm|m|in|ft)(?: [0-9./-]+ in)?)`).FindStringSubmatch(text)
	if m == nil {
		t.Fatalf("%q names no length after %q", text, after)
	}
	l, err := quantity.ParseLength(strings.TrimSpace(m[1]))
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return float64(l)
}

// stepOf the lengths offered: 10 mm, or an inch.
func stepOf(units quantity.System) float64 {
	if units == quantity.US {
		return 0.0254
	}
	return 0.01
}

// TestLongerLegIsLongEnoughAndNoLonger writes new plans with the leg at the
// length offered and a step less, the others in proportion, and hangs them.
func TestLongerLegIsLongEnoughAndNoLonger(t *testing.T) {
	const shackle = 0.1
	for _, slings := range [][]float64{{2.6, 2.7}, {3.0, 3.0, 3.0, 3.0}, {2.9, 2.9, 2.9, 2.9}} {
		for _, limit := range []float64{45, 50, 60} {
			for _, units := range []quantity.System{quantity.Metric, quantity.US} {
				t.Run(fmt.Sprintf("%v to %g deg, %s", slings, limit, units), func(t *testing.T) {
					p, f := slingPlan(t, shackle, slings)
					for i, leg := range f.Document.Legs {
						if *leg.AngleFromHorizontalDeg >= limit {
							continue
						}
						text, ok := New(p, conditions(), f, units).Mend("longer_leg", facts.ViewOf(leg), "angle_from_horizontal_deg", limit)
						if !ok {
							t.Fatalf("leg %d at %g deg: no remedy", i, *leg.AngleFromHorizontalDeg)
						}
						if now := length(t, text, `now`); math.Abs(now-*leg.LengthM) > 0.006 {
							t.Errorf("%q, and the leg is %g m", text, *leg.LengthM)
						}
						offered := length(t, text, `a leg of at least`)
						if got := angleWith(t, shackle, slings, i, offered); got < limit {
							t.Errorf("%q: it hangs at %.6f deg", text, got)
						}
						if got := angleWith(t, shackle, slings, i, offered-stepOf(units)); got >= limit {
							t.Errorf("%q: a step less hangs at %.6f deg", text, got)
						}
						if limit >= 60 {
							if strings.Contains(text, "for 60 deg") {
								t.Errorf("%q says the same twice", text)
							}
							continue
						}
						usual := length(t, text, `for 60 deg from horizontal a leg of`)
						if got := angleWith(t, shackle, slings, i, usual); got < 60 {
							t.Errorf("%q: at the usual length it hangs at %.6f deg", text, got)
						}
						if got := angleWith(t, shackle, slings, i, usual-stepOf(units)); got >= 60 {
							t.Errorf("%q: a step less than the usual length hangs at %.6f deg", text, got)
						}
					}
				})
			}
		}
	}
}

// angleWith hangs the plan anew with leg i at that length and the others in
// proportion.
func angleWith(t testing.TB, shackle float64, slings []float64, i int, lengthM float64) float64 {
	t.Helper()
	factor := lengthM / (slings[i] + shackle)
	longer := slices.Clone(slings)
	for k, s := range slings {
		longer[k] = (s+shackle)*factor - shackle
	}
	_, f := slingPlan(t, shackle, longer)
	return *f.Document.Legs[i].AngleFromHorizontalDeg
}

// TestOneLengthForOneLeg: two rules that find a leg too flat offer the same
// length, the one that its tag asks for where that is the longer.
func TestOneLengthForOneLeg(t *testing.T) {
	p, f := slingPlan(t, 0.1, []float64{2.2, 2.2})
	m := New(p, conditions(), f, quantity.Metric)
	offered := func(tagDeg *float64, limit float64) string {
		leg := f.Document.Legs[0]
		leg.BandLeastDeg = tagDeg
		text, ok := m.Mend("longer_leg", facts.ViewOf(leg), "angle_from_horizontal_deg", limit)
		if !ok {
			t.Fatalf("no leg is offered for %g deg", limit)
		}
		return text
	}
	if one, other := offered(ptr(45.0), 30), offered(ptr(45.0), 45); length(t, one, `a leg of at least`) != length(t, other, `a leg of at least`) {
		t.Errorf("%q and %q", one, other)
	}
	if text := offered(ptr(45.0), 30); !strings.Contains(text, " for the 45 deg from horizontal of its tag, with a sling of ") {
		t.Errorf("%q", text)
	}
	if with, without := offered(ptr(30.0), 45), offered(nil, 45); with != without {
		t.Errorf("a tag that asks for less changes %q into %q", without, with)
	}
}

func TestNoLongerLegWhereNoneHelps(t *testing.T) {
	p, f := slingPlan(t, 0.1, []float64{2.6, 2.7})
	m := New(p, conditions(), f, quantity.Metric)
	if text, ok := m.Mend("longer_leg", facts.ViewOf(f.Document.Legs[0]), "angle_from_horizontal_deg", 89); ok {
		t.Errorf("offered for 89 deg: %q", text)
	}
	stranger := facts.Leg{Record: facts.Record{Key: "leg/none"}}
	if text, ok := m.Mend("longer_leg", facts.ViewOf(stranger), "angle_from_horizontal_deg", 45); ok {
		t.Errorf("offered for a leg that is not there: %q", text)
	}
	unknown := f.Document.Legs[0]
	unknown.LengthM = nil
	other := *f
	other.Document.Legs = []facts.Leg{unknown}
	if text, ok := New(p, conditions(), &other, quantity.Metric).Mend("longer_leg", facts.ViewOf(unknown), "angle_from_horizontal_deg", 45); ok {
		t.Errorf("offered for a leg of unknown length: %q", text)
	}
}

// TestLargerEyeIsLargeEnoughAndNoLarger takes the eye offered, and one a step
// shorter, back to the figures that are judged.
func TestLargerEyeIsLargeEnoughAndNoLarger(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		width := float64(rapid.IntRange(20, 400).Draw(rt, "width, mm")) / 1000
		units := rapid.SampledFrom([]quantity.System{quantity.Metric, quantity.US}).Draw(rt, "units")
		if units == quantity.US {
			width = float64(rapid.IntRange(1, 200).Draw(rt, "width, sixteenths of an inch")) * 0.0254 / 16
		}
		field, limit := "width_over_length_ratio", float64(rapid.IntRange(10, 90).Draw(rt, "percent"))/100
		judged := func(eye float64) float64 { return width / eye }
		if rapid.Bool().Draw(rt, "by angle") {
			field, limit = "eye_included_angle_deg", float64(rapid.IntRange(5, 60).Draw(rt, "deg"))
			judged = func(eye float64) float64 { return capacity.EyeIncludedAngleDeg(eye, width) }
		}
		fit := facts.Fit{BodyWidthM: &width}
		text, ok := New(nil, conditions(), nil, units).Mend("larger_eye", facts.ViewOf(fit), field, limit)
		if !ok {
			rt.Fatal("no eye is offered")
		}
		eye := length(t, text, `an eye of at least`)
		if got := facts.Round(judged(eye)); got > limit {
			rt.Fatalf("%q over %g m: %s is %v, over %v", text, width, field, got, limit)
		}
		if got := facts.Round(judged(eye - stepOf(units))); eye > stepOf(units)*1.5 && got <= limit {
			rt.Fatalf("%q over %g m: a step less is enough, %v", text, width, got)
		}
	})
}

func TestNoEyeForAnUnknownWidth(t *testing.T) {
	m := New(nil, conditions(), nil, quantity.Metric)
	width := 0.1
	for _, c := range []struct {
		fit   facts.Fit
		limit float64
	}{{facts.Fit{}, 0.5}, {facts.Fit{BodyWidthM: &width}, 0}} {
		if text, ok := m.Mend("larger_eye", facts.ViewOf(c.fit), "width_over_length_ratio", c.limit); ok {
			t.Errorf("%q", text)
		}
	}
}

func TestInspectionDue(t *testing.T) {
	due := "2026-10-31"
	g := facts.Gear{ID: "S1", Inspection: &facts.Inspection{Due: &due}}
	m := New(nil, conditions(), nil, quantity.Metric)
	text, ok := m.Mend("inspection_due", facts.ViewOf(g), "inspection.overdue_days", 0)
	if want := "have S1 inspected before the lift, or use another; the inspection was due on 2026-10-31"; !ok || text != want {
		t.Errorf("%q", text)
	}
	if text, ok := m.Mend("inspection_due", facts.ViewOf(facts.Gear{ID: "S1"}), "", 0); ok {
		t.Errorf("without an inspection: %q", text)
	}
}

func TestNames(t *testing.T) {
	names := Names()
	if !slices.IsSorted(names) || len(names) != len(kinds()) {
		t.Errorf("%v", names)
	}
	if text, ok := New(nil, conditions(), nil, quantity.Metric).Mend("other", facts.ViewOf(facts.Gear{}), "", 0); ok {
		t.Errorf("an unknown remedy says %q", text)
	}
}
