package compute_test

import (
	"strings"
	"testing"
)

// TestBodyOfOneDimension: the least of width and height is not known of one alone,
// nor is what goes once round the body; both wait for the other.
func TestBodyOfOneDimension(t *testing.T) {
	const box = "kind: box, axis: along, start: {x: 0 m, y: 0 m, z: 0 m}, length: 9 m, width: 300 mm, height: 200 mm, edge_radius: 5 mm"
	round := "kind: round, axis: along, start: {x: 0 m, y: 0 m, z: 0 m}, length: 9 m, diameter: 300 mm"
	pairs := []string{"PITCH", "0", "STATION", "4", "EYE", "300", round, box}
	whole := arrangement(t, choked, pairs...)
	near(t, "least dimension", figure(t, whole, "hitch/hook/1", "body_width_m"), 0.2, 1e-12)
	near(t, "once round", figure(t, whole, "hitch/hook/1", "perimeter_d"), 1000/20., 1e-9)
	for _, missing := range []string{"width", "height"} {
		given := map[string]string{"width": ", width: 300 mm", "height": ", height: 200 mm"}[missing]
		f := arrangementWaiting(t, choked, append(pairs, given, "")...)
		for _, field := range []string{"body_width_m", "perimeter_d"} {
			if got := labels(lacks(t, f, "hitch/hook/1", field)); !strings.Contains(got, "shaft's "+missing) {
				t.Errorf("without the %s, %s waits for %q", missing, field, got)
			}
		}
	}
}
