package lint_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"liftlint/internal/lint"
)

// rowsOf reads a published table below its heads, each row by the heads' names.
func rowsOf(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("../../testdata/published/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	list, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	for _, r := range list[1:] {
		row := map[string]string{}
		for i, head := range list[0] {
			row[head] = r[i]
		}
		if row["source"] == "" || row["basis"] == "" {
			t.Errorf("%s: %v names no source", name, r)
		}
		rows = append(rows, row)
	}
	return rows
}

// bridle writes a plan of a bridle that carries just what its tag allows, its
// legs at the tag's angle from horizontal: two to points 4 m apart, three and
// four to points 2 m from the middle. Rope as thick as this hardly stretches.
func bridle(legs int, angleDeg float64, rated string) string {
	length := 2 / math.Cos(angleDeg*math.Pi/180)
	var points, slings, names, rigging strings.Builder
	for i := range legs {
		at := 2 * math.Pi * float64(i) / float64(legs)
		id := fmt.Sprintf("S%d", i+1)
		fmt.Fprintf(&points, "    - {id: P%d, kind: padeye, x: %.6f m, y: %.6f m, z: 1 m}\n", i+1, 2*math.Cos(at), 2*math.Sin(at))
		fmt.Fprintf(&slings, "  - {id: %s, kind: wire_rope_sling, core: iwrc, diameter: 200 mm, length: %.6f m}\n", id, length)
		names.WriteString(id + ", ")
		fmt.Fprintf(&rigging, "      - {down: [%s], end: {kind: to, at: P%d}}\n", id, i+1)
	}
	return fmt.Sprintf(`liftlint: 1
lift: {id: PUB, title: A bridle at its rated load}
load:
  mass: %s
  center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}
  attachments:
%sgear:
  - {id: B1, kind: bridle, master: ML1, groups: [{legs: [%s]}], tag: {condition: legible, rated_load: %s, rated_for: assembly, angle_from_horizontal: %g deg, legs: %d}}
  - {id: ML1, kind: master_link, inside_length: 300 mm}
%srigging:
  - from: hook
    by: [B1]
    legs:
%s`, rated, points.String(), strings.TrimSuffix(names.String(), ", "), rated, angleDeg, legs, slings.String(), rigging.String())
}

// TestPublishedBridles takes each row of two published tables as a plan: what
// the tag leaves to one leg is the table's figure for one leg, and a load as
// heavy as the tag allows uses each leg fully.
func TestPublishedBridles(t *testing.T) {
	for _, c := range []struct {
		table, profile, angle, legs, rated, one, unit string
		kgPerUnit                                     float64
		within                                        func(row map[string]string) float64 // relative
	}{
		{"en-13414-1-table-4.csv", "eu", "angle_from_horizontal_deg", "legs", "rated_load_t", "one_leg_t", "t", 1000,
			// The source rounds both columns to preferred numbers; how far the
			// row lies from the factor stands in it. Half a unit of the last digit
			// of each comes to 1.5 % at most.
			func(row map[string]string) float64 { return float(t, row["preferred_number_percent"])/100 + 0.025 }},
		{"chain-bridles.csv", "us", "angle_from_horizontal_deg", "legs", "rated_load_lb", "single_leg_lb", "lb", 0.45359237,
			// Both columns are rounded to 100 lb.
			func(row map[string]string) float64 {
				return 0.005 + 50/float(t, row["rated_load_lb"]) + 50/float(t, row["single_leg_lb"])
			}},
	} {
		l := linter(t, lint.Options{Profile: c.profile})
		for _, row := range rowsOf(t, c.table) {
			legs := int(float(t, row[c.legs]))
			if legs < 2 {
				continue
			}
			name := fmt.Sprintf("%s: %d legs at %s deg, %s %s", c.table, legs, row[c.angle], row[c.rated], c.unit)
			for _, n := range countsOf(legs) {
				plan := bridle(n, float(t, row[c.angle]), row[c.rated]+" "+c.unit)
				r, err := l.Compute("published.lift.yaml", []byte(plan))
				if err != nil || r.State != lint.Computed {
					t.Fatalf("%s: %v %v", name, err, r)
				}
				one := figure(t, r.Facts, "part/hook/1/S1", "rated_load_n") / 9.80665 / c.kgPerUnit
				if want := float(t, row[c.one]); math.Abs(one-want) > c.within(row)*want {
					t.Errorf("%s: one leg %.4g %s, published %g", name, one, c.unit, want)
				}
				// Rounding aside the leg is used by 2.1 over 3 sin 45 or the like.
				if used := figure(t, r.Facts, "part/hook/1/S1", "used_ratio"); math.Abs(used-1) > 0.012 {
					t.Errorf("%s: a load as heavy as the tag allows uses a leg by %.4f", name, used)
				}
			}
		}
	}
}

// countsOf are the numbers of legs that a row is for: tables give three and
// four together.
func countsOf(legs int) []int {
	if legs == 3 {
		return []int{3, 4}
	}
	return []int{legs}
}
