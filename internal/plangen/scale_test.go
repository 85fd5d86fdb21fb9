package plangen

import (
	"context"
	"math"
	"testing"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
)

// legsOf computes the legs of a lift.
func legsOf(t *testing.T, l *lint.Linter, seed uint64, change func(*sketch)) []facts.Leg {
	t.Helper()
	s := newSketch(stream(seed, lifts))
	change(s)
	r, err := l.Check(context.Background(), "plan", []byte(print(seed, s.tree())))
	if err != nil {
		t.Fatal(err)
	}
	if r.State != lint.Judged {
		t.Fatalf("seed %d: %v", seed, r.Findings)
	}
	return r.Facts.Document.Legs
}

// TestScaledLifts: what statics asks of a lift that grows. Twice as large in
// every length, of the same rope, it hangs at the same angles with the same
// forces; four times as heavy on ropes of four times the area, with four times
// the forces; seen in a mirror, alike. Common practice of model laws: strain
// is the same in all three.
func TestScaledLifts(t *testing.T) {
	t.Parallel()
	l, err := lint.New(lint.Options{Stage: "review"})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name   string
		factor float64
		change func(*sketch)
	}{
		{"twice as large", 1, (*sketch).double},
		{"four times as heavy", 4, func(s *sketch) { s.massT, s.rope.diameterMM = 4*s.massT, 2*s.rope.diameterMM }},
		{"mirrored", 1, func(s *sketch) { s.mirror() }},
		{"moved from the datum", 1, func(s *sketch) { s.move(s.snapped([3]float64{-1, 2, 0.5})) }},
	} {
		t.Run(c.name, func(t *testing.T) {
			for seed := range uint64(20) {
				before, after := legsOf(t, l, seed, exact), legsOf(t, l, seed, func(s *sketch) { exact(s); c.change(s) })
				for i := range before {
					near(t, seed, "tension", *after[i].TensionN, c.factor**before[i].TensionN)
					near(t, seed, "angle", *after[i].AngleFromHorizontalDeg, *before[i].AngleFromHorizontalDeg)
				}
			}
		})
	}
}

// exact picks a rope whose size doubles in millimeters and in sixteenths alike,
// and a mass in whole pounds where pounds are written.
func exact(s *sketch) {
	s.rope.diameterMM = 22
	if s.us {
		s.rope.diameterMM = 25.4
		s.massT = math.Round(s.massT*1000/poundKg) * poundKg / 1000
	}
}

func near(t *testing.T, seed uint64, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-4*math.Abs(want)+1e-6 {
		t.Errorf("seed %d: %s %g, not %g", seed, what, got, want)
	}
}

func (s *sketch) double() {
	for k := range s.center {
		s.center[k] *= 2
		for i := range s.points {
			s.points[i][k] *= 2
		}
	}
	for i := range s.legM {
		s.legM[i] *= 2
	}
	s.hookZ *= 2
	s.low.lengthM *= 2
	s.inter.lengthM *= 2
}

func (s *sketch) mirror() {
	s.center[1] *= -1
	for i := range s.points {
		s.points[i][1] *= -1
	}
}
