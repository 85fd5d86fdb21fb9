package plan

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/yamldoc"
)

// plates writes a plan of rocker plates, each hanging from the hook or from
// another: above[i] is what plate i hangs from, -1 for the hook. The load hangs
// from each of them.
func plates(above []int) string {
	gear, rigging := "", ""
	for i := range above {
		gear += fmt.Sprintf("  - {id: P%d, kind: rocker_plate, points: [{id: top}, {id: low}]}\n  - {id: S%d, kind: wire_rope_sling}\n  - {id: T%d, kind: wire_rope_sling}\n", i, i, i)
	}
	for from := -1; from < len(above); from++ {
		legs := ""
		for i, a := range above {
			if a == from {
				legs += fmt.Sprintf("{down: [S%d], end: {kind: to, at: P%d.top}}, ", i, i)
			}
		}
		name := "hook"
		if from >= 0 {
			name = fmt.Sprintf("P%d.low", from)
			legs += fmt.Sprintf("{down: [T%d], end: {kind: to, at: A}}", from)
		}
		if legs != "" {
			rigging += "  - {from: " + name + ", legs: [" + strings.TrimSuffix(legs, ", ") + "]}\n"
		}
	}
	return "liftlint: 1\nlift: {id: A, title: A}\nload: {attachments: [{id: A, kind: padeye}]}\ngear:\n" + gear + "rigging:\n" + rigging
}

// atTheHook reports whether going up from every plate leads to the hook.
func atTheHook(above []int) bool {
	for i := range above {
		at := i
		for range above {
			if at >= 0 {
				at = above[at]
			}
		}
		if at >= 0 {
			return false
		}
	}
	return true
}

// TestCircles: a plan is refused for a beam that hangs from itself just where
// going up from one never comes to the hook.
func TestCircles(t *testing.T) {
	seen := map[bool]int{}
	rapid.Check(t, func(r *rapid.T) {
		n := rapid.IntRange(1, 5).Draw(r, "plates")
		above := make([]int, n)
		for i := range above {
			above[i] = rapid.IntRange(-1, n-1).Draw(r, "above")
		}
		p, faults, _ := readText(t, plates(above))
		ok := atTheHook(above)
		seen[ok]++
		told := slices.ContainsFunc(faults, func(f yamldoc.Fault) bool { return strings.Contains(f.Message, "would hang from itself") })
		if told == ok || (p != nil) != ok || p != nil && len(p.Beams) != n {
			r.Fatalf("%v: %v", above, faults)
		}
	})
	if seen[true] < 10 || seen[false] < 10 {
		t.Errorf("%d without circles, %d with", seen[true], seen[false])
	}
}
