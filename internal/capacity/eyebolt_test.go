package capacity

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// oneSeries is what one trade series of shouldered eyebolts holds off its
// axis, in percent (common practice; series differ).
var oneSeries = []AngleRating{{15, 80}, {30, 65}, {45, 30}, {90, 25}}

// TestPublishedEyebolt: the percentages of the series are given as ratings, as
// a plan gives them.
func TestPublishedEyebolt(t *testing.T) {
	for _, row := range published(t, "eyebolts.csv") {
		inLine, off := value(t, row["in_line_lb"]), value(t, row["off_axis_deg"])
		var at []AngleRating
		for _, r := range oneSeries {
			at = append(at, AngleRating{r.OffAxisDeg, inLine * r.RatedN / 100})
		}
		if i := slices.Index(oneSeries, AngleRating{off, value(t, row["percent"])}); i < 0 {
			t.Errorf("%g deg: the series has no %s %%", off, row["percent"])
		}
		got, ok := RatedAtAngleN(inLine, at, off)
		if want := value(t, row["rated_lb"]); !ok || math.Abs(got-want) > value(t, row["rounding_lb"])/2 {
			t.Errorf("%g deg off its axis: %g lb, %t; published %g", off, got, ok, want)
		}
	}
}

func TestRatedAtAngle(t *testing.T) {
	nan := math.NaN()
	for name, c := range map[string]struct {
		at     []AngleRating
		off    float64
		ratedN float64
		ok     bool
	}{
		"in line":                           {oneSeries, 0, 100, true},
		"nearly in line":                    {oneSeries, 5 + 1e-9, 100, true},
		"just off":                          {oneSeries, 5.01, 80, true},
		"at a listed angle":                 {oneSeries, 15, 80, true},
		"a rounding above a listed angle":   {oneSeries, 15 + 1e-9, 80, true},
		"above a listed angle":              {oneSeries, 15.01, 65, true},
		"between two, nearer to the better": {oneSeries, 31, 30, true},
		"at right angles":                   {oneSeries, 90, 25, true},
		"beyond the list":                   {oneSeries[:3], 45.01, 0, false},
		"no list, in line":                  {nil, 5, 100, true},
		"no list, off":                      {nil, 5.01, 0, false},
		"list out of order":                 {[]AngleRating{{90, 25}, {45, 30}, {15, 80}}, 20, 30, true},
		"better at a steeper angle":         {[]AngleRating{{15, 40}, {45, 60}}, 30, 40, true},
		"better off than in line":           {[]AngleRating{{45, 150}}, 30, 100, true},
		"listed twice":                      {[]AngleRating{{45, 60}, {45, 50}}, 30, 50, true},
		"less within five degrees":          {[]AngleRating{{2, 90}}, 3, 90, true},
		"not yet less within five degrees":  {[]AngleRating{{4, 90}}, 3, 100, true},
		"nothing may be hung there":         {[]AngleRating{{45, 0}}, 45, 0, true},
		"rating is no number":               {[]AngleRating{{15, nan}, {45, 60}}, 30, 0, false},
		"rating below zero":                 {[]AngleRating{{15, -1}, {45, 60}}, 30, 0, false},
		"angle is no number":                {[]AngleRating{{nan, 10}, {45, 60}}, 30, 0, false},
		"listed angle below zero":           {[]AngleRating{{-15, 80}, {45, 60}}, 30, 0, false},
		"pull at no angle":                  {oneSeries, nan, 0, false},
		"pull below zero":                   {oneSeries, -1, 0, false},
	} {
		if got, ok := RatedAtAngleN(100, c.at, c.off); got != c.ratedN || ok != c.ok {
			t.Errorf("%s: %g, %t; not %g, %t", name, got, ok, c.ratedN, c.ok)
		}
	}
	for _, inLine := range []float64{0, -1, nan, math.Inf(1)} {
		if got, ok := RatedAtAngleN(inLine, oneSeries, 0); ok || got != 0 {
			t.Errorf("in line %g gives %g, %t", inLine, got, ok)
		}
	}
}

// TestFurtherOffIsNeverRatedHigher holds for any list, however odd.
func TestFurtherOffIsNeverRatedHigher(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.SliceOf(rapid.Custom(func(t *rapid.T) AngleRating {
			return AngleRating{rapid.Float64Range(0, 90).Draw(t, "deg"), rapid.Float64Range(0, 200).Draw(t, "rated")}
		})).Draw(t, "list")
		near := rapid.Float64Range(0, 90).Draw(t, "near")
		far := rapid.Float64Range(near, 90).Draw(t, "far")
		a, okNear := RatedAtAngleN(100, at, near)
		b, okFar := RatedAtAngleN(100, at, far)
		if okFar && (!okNear || b > a || a > 100) {
			t.Fatalf("%g deg: %g, %t; %g deg: %g, %t", near, a, okNear, far, b, okFar)
		}
	})
}
