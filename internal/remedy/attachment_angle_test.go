package remedy

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

// plateText is a load on two legs of unequal length, with the plate of the first
// turned in plan.
func plateText(turnedDeg, firstM float64, axis string) []byte {
	return fmt.Appendf(nil, `liftlint: 1
lift: {id: A, title: A}
load:
  mass: 2 t
  center_of_gravity: {x: 1 m, y: 0.3 m, z: 0 m}
  attachments:
    - {id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m, hole_axis: %s, turned_in_plan: %.9f deg}
    - {id: B, kind: padeye, x: 2 m, y: 0.6 m, z: 1 m, hole_axis: across}
gear:
  - {id: S1, kind: wire_rope_sling, diameter: 16 mm, length: %.6f m}
  - {id: S2, kind: wire_rope_sling, diameter: 16 mm, length: 2.5 m}
rigging:
  - from: hook
    legs:
      - {down: [S1], end: {kind: to, at: A}}
      - {down: [S2], end: {kind: to, at: B}}
`, axis, turnedDeg, firstM)
}

// TestAlignedPlate turns the plate by what is offered, one way or the other, and
// hangs the load anew: in one of the two the leg pulls in the plate's plane.
func TestAlignedPlate(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		turned := float64(rapid.IntRange(-80, 80).Draw(rt, "turned"))
		first := rapid.Float64Range(2, 3).Draw(rt, "first leg, m")
		axis := rapid.SampledFrom([]string{"along", "across"}).Draw(rt, "hole's axis")
		p, f := computed(t, plateText(turned, first, axis))
		m := New(p, conditions(), f, quantity.Metric)
		a := ask{subject: facts.ViewOf(f.Document.Attachments[0])}
		off := *f.Document.Attachments[0].OutOfPlaneDeg
		turn, ok := m.turnIntoPullDeg(a, off)
		if !ok {
			rt.Fatalf("no turn for %g deg", off)
		}
		least := 90.0
		for _, way := range []float64{1, -1} {
			_, anew := computed(t, plateText(turned+way*turn, first, axis))
			least = min(least, *anew.Document.Attachments[0].OutOfPlaneDeg)
		}
		if least > 1e-4 {
			rt.Fatalf("turned by %g deg either way, the pull is still %g deg out of plane", turn, least)
		}
	})
}

func TestAlignedPlateInWords(t *testing.T) {
	flat := &plan.Plan{Load: plan.Load{Attachments: []plan.Attachment{{ID: "A", HoleAxis: "up"}, {ID: "B", HoleAxis: "across"}}}}
	m := New(flat, conditions(), nil, quantity.Metric)
	// A pull at 60 deg that leaves the plate by asin(cos 60 sin 30) is turned by 30.
	off := math.Asin(0.25) * 180 / math.Pi
	record := func(id string, legs int) facts.View {
		return facts.ViewOf(facts.Attachment{ID: id, Legs: legs, OutOfPlaneDeg: &off, PullAngleFromHorizontalDeg: ptr(60.0)})
	}
	const rated = "one that is rated for a side pull of at least 15 deg"
	for _, c := range []struct {
		subject facts.View
		want    string
	}{
		{record("B", 1), "turn it by 30 deg about the vertical, so that its leg pulls in its plane, or " + rated},
		{record("B", 2), rated}, // no turn suits both
		{record("A", 1), rated}, // a plate that lies flat
		{record("C", 1), rated},
		{facts.ViewOf(facts.Attachment{ID: "B", Legs: 1, OutOfPlaneDeg: &off}), rated},
	} {
		if got, ok := m.Mend("aligned_plate", c.subject, "out_of_plane_deg", 5); !ok || got != c.want {
			t.Errorf("%q, %v", got, ok)
		}
	}
	across, beam := 84.0, facts.Attachment{ID: "B", Legs: 1, OnBeam: true, OutOfPlaneDeg: &off, PullAngleFromHorizontalDeg: ptr(60.0)}
	for _, c := range []struct {
		of   facts.Attachment
		want string
	}{
		{facts.Attachment{ID: "C", Legs: 1, OutOfPlaneDeg: &across}, "turn it by 90 deg, so that its leg pulls in its plane"},
		{facts.Attachment{ID: "B", Legs: 1, OutOfPlaneDeg: &across, PullAngleFromHorizontalDeg: ptr(0.0)}, "turn it by 84 deg about the vertical, so that its leg pulls in its plane"},
		{beam, "points as far apart as those below, so that their legs pull in the plane of the plates, or " + rated},
	} {
		if got, ok := m.Mend("aligned_plate", facts.ViewOf(c.of), "out_of_plane_deg", 5); !ok || got != c.want {
			t.Errorf("%q, not %q", got, c.want)
		}
	}
	phased := *flat
	phased.Phases = []plan.Phase{{Name: "level"}}
	if got, ok := New(&phased, conditions(), nil, quantity.Metric).Mend("aligned_plate", record("B", 1), "out_of_plane_deg", 5); !ok || got != rated {
		t.Errorf("in phases: %q, %v", got, ok)
	}
	if got, ok := m.Mend("aligned_plate", facts.ViewOf(facts.Attachment{ID: "B", Legs: 1}), "", 5); ok {
		t.Errorf("of an unknown pull: %q", got)
	}
}

func TestAnglesAreOfferedOnTheSafeSide(t *testing.T) {
	m := New(nil, conditions(), nil, quantity.Metric)
	a := facts.Attachment{OffAxisDeg: ptr(23.2), PullAngleFromHorizontalDeg: ptr(66.8)}
	for name, want := range map[string]string{
		"further_from_axis": "a hoist ring whose rated load holds to at least 24 deg from its axis, or a leg more in line with it",
		"bolt_for_angle":    "a hoist ring whose rated load holds to at least 24 deg from its axis, or a shouldered eyebolt, seated, with a rated load of its own at that angle",
		"flatter_rating":    "longer legs, for a pull at 75 deg or steeper, or an attachment that is rated down to 66 deg",
	} {
		if got, ok := m.Mend(name, facts.ViewOf(a), "", 75); !ok || got != want {
			t.Errorf("%s: %q, %v", name, got, ok)
		}
		if got, ok := m.Mend(name, facts.ViewOf(facts.Attachment{}), "", 75); ok {
			t.Errorf("%s of an unknown pull: %q", name, got)
		}
	}
	if got, ok := m.Mend("flatter_rating", facts.ViewOf(a), "", 60); ok {
		t.Errorf("of a pull that is steep enough: %q", got)
	}
}
