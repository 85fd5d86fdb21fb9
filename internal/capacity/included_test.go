package capacity

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
	"pgregory.net/rapid"
)

type vector = [3]float64

func TestAnglesWorkedByHand(t *testing.T) {
	x, z := vector{1, 0, 0}, vector{0, 0, 1}
	root3 := math.Sqrt(3)
	for _, c := range []struct {
		u, v                           vector
		included, offAxisDeg, offPlane float64
	}{
		{x, x, 0, 0, 90},
		{x, z, 90, 90, 0},
		{x, vector{-2, 0, 0}, 180, 0, 90},
		{vector{1, 0, -1}, z, 135, 45, 45},
		{vector{1, 0, root3}, z, 30, 30, 60},
		{vector{1, 0, root3}, vector{-1, 0, root3}, 60, 60, 30},
		{vector{root3, 0, -1}, vector{-root3, 0, -1}, 120, 60, 30},
		{vector{1, 1, 1}, vector{1, 1, -1}, 70.528779, 70.528779, 19.471221}, // cosine 1/3
		{vector{1e-200, 0, 1e-200}, vector{0, 0, 1e200}, 45, 45, 45},
		{vector{1, 0, 1e-9}, x, 1e-9 * 180 / math.Pi, 1e-9 * 180 / math.Pi, 90},
	} {
		for name, got := range map[string][2]float64{
			"included":  {IncludedAngleDeg(c.u, c.v), c.included},
			"off axis":  {OffAxisDeg(c.u, c.v), c.offAxisDeg},
			"off plane": {OffPlaneDeg(c.u, c.v), c.offPlane},
		} {
			if !(math.Abs(got[0]-got[1]) <= 1e-6*min(1, got[1]+1e-9)) {
				t.Errorf("%v and %v, %s: %v deg, not %v", c.u, c.v, name, got[0], got[1])
			}
		}
	}
}

// TestNoDirectionIsNoAngle: neither is it 0 deg, which would look fine.
func TestNoDirectionIsNoAngle(t *testing.T) {
	for _, none := range []vector{{}, {math.NaN(), 0, 1}, {math.Inf(1), 0, 1}} {
		for name, angle := range map[string]func(u, v vector) float64{
			"included": IncludedAngleDeg, "off axis": OffAxisDeg, "off plane": OffPlaneDeg,
		} {
			for _, got := range []float64{angle(none, vector{0, 0, 1}), angle(vector{0, 0, 1}, none)} {
				if !math.IsNaN(got) {
					t.Errorf("%s with %v: %g deg", name, none, got)
				}
			}
		}
	}
}

// TestAnglesAgainstCosines: gonum's cosine is another way to each angle.
func TestAnglesAgainstCosines(t *testing.T) {
	part := rapid.Float64Range(-10, 10)
	draw := rapid.Custom(func(t *rapid.T) vector {
		return vector{part.Draw(t, "x"), part.Draw(t, "y"), part.Draw(t, "z")}
	}).Filter(func(v vector) bool { return r3.Norm(vec(v)) > 1e-3 })
	rapid.Check(t, func(t *rapid.T) {
		u, v := draw.Draw(t, "u"), draw.Draw(t, "v")
		cos := r3.Cos(vec(u), vec(v))
		included, axis, plane := IncludedAngleDeg(u, v), OffAxisDeg(u, v), OffPlaneDeg(u, v)
		for name, got := range map[string][2]float64{
			"included":  {math.Cos(included * math.Pi / 180), cos},
			"off axis":  {math.Cos(axis * math.Pi / 180), math.Abs(cos)},
			"off plane": {math.Sin(plane * math.Pi / 180), math.Abs(cos)},
		} {
			if !(math.Abs(got[0]-got[1]) <= 1e-9) {
				t.Fatalf("%s: %v, not %v", name, got[0], got[1])
			}
		}
		if included < 0 || included > 180 || axis < 0 || axis > 90 || plane < 0 || plane > 90 {
			t.Fatalf("out of range: %g, %g, %g deg", included, axis, plane)
		}
	})
}

func vec(v vector) r3.Vec { return r3.Vec{X: v[0], Y: v[1], Z: v[2]} }
