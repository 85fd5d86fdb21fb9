package plangen_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/plangen"
)

// differ counts in how many plans of 200 each text stands; it has to be in some
// and not in all.
func differ(t *testing.T, edit func(string) string, signs ...string) {
	t.Helper()
	for _, sign := range signs {
		n := 0
		for seed := range uint64(200) {
			if strings.Contains(edit(plangen.Valid(seed)), sign) {
				n++
			}
		}
		if n < 3 || n > 197 {
			t.Errorf("%q is in %d plans of 200", sign, n)
		}
	}
}

// TestPlansAreWrittenDifferently: plans of one meaning come in many forms.
func TestPlansAreWrittenDifferently(t *testing.T) {
	t.Parallel()
	asIs := func(text string) string { return text }
	differ(t, asIs, "units: us", "-5/8", " ft ", "short_ton", " kN", " cm", "  # ", "\r\n", ": '", "- {", "\n    id:", ": -", "\n    kind: wire_rope_sling")
}

// TestPlansDiffer: the generator reaches what it promises.
func TestPlansDiffer(t *testing.T) {
	t.Parallel()
	differ(t, strings.NewReplacer("'", "", `"`, "").Replace,
		"kind: padeye", "kind: hoist_ring", "kind: eyebolt", "kind: insert", "hole_axis: along", "hole_axis: across", "turned_in_plan: -", "turned_in_plan: 1",
		"rated_to_angle_from_plane", "rated_to_angle_from_horizontal", "panel: tilt_up",
		"kind: master_link", "kind: bridle", "kind: intermediate_link", "kind: hook", "kind: shackle",
		"rated_for: assembly", "rated_for: one_leg", "pattern: dee", "pin_kind: bolt", "pin: lower", "spacers: true", "steel: alloy",
		"class: 6x37", "core: fiber", "grade: 1960", "grade: ips", "finish: galvanized", "lay: left_regular", "kind: hand_tucked", "thimble_size", "sleeve: aluminum",
		"temperature:", "labels:", "state: secured", "hazardous: true", "precaution:", "size:", "angle_from_horizontal: 6",
	)
}

// TestNumbersOfLegs: plans have one leg to four.
func TestNumbersOfLegs(t *testing.T) {
	seen := map[string]int{}
	for seed := range uint64(200) {
		ends := regexp.MustCompile(`\bat:`).FindAllString(plangen.Valid(seed), -1) // each leg goes to one attachment
		seen[fmt.Sprint(len(ends))]++
	}
	for legs, n := range seen {
		if !slices.Contains([]string{"1", "2", "3", "4"}, legs) || n < 20 {
			t.Errorf("%d plans of %s legs", n, legs)
		}
	}
}
