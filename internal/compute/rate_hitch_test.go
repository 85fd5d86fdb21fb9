package compute_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/facts"
)

// why is what a part's rating waits for, and whether a finding says so already.
func why(t testing.TB, f *facts.Facts, key string) (text string, told bool) {
	t.Helper()
	gap := lacks(t, f, key, "used_ratio")
	for _, r := range gap.Reasons {
		told = told || r.ToldOf != ""
	}
	return labels(gap), told
}

// TestHitchNotRated: what is found at the sling or at the hitch is told already; what
// no rule finds is not.
func TestHitchNotRated(t *testing.T) {
	const tag = "condition: legible, rated_load: 4 t, basket_rated_load: 8 t, hitch: vertical"
	box := []string{"kind: round, axis: along", "kind: box, axis: along", "diameter: 600 mm", "width: 600 mm, height: 600 mm, edge_radius: 5 mm"}
	for _, c := range []struct {
		name  string
		pairs []string
		want  string
		told  bool
	}{
		{"no basket rating", []string{", basket_rated_load: 8 t", ""}, "shows no rated load in a basket hitch", true},
		{"illegible", []string{tag, "condition: illegible"}, "illegible", true},
		{"thinner than its rope", []string{"diameter: 600 mm", "diameter: 15 mm"}, "W1 in its basket is bent round 0.75 of its rope's diameter", true},
		{"bare edges", box, "W1 in its basket is bent round 0.50 of its rope's diameter", true},
		{"softened edges", append([]string{"body: pipe", "softened: true, body: pipe"}, box...), "as `softened_radius` beside `softened`", false},
		{"softened too little", append([]string{"body: pipe", "softened: true, softened_radius: 8 mm, body: pipe"}, box...), "W1 in its basket is bent round 0.80 of its rope's diameter", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, _ := computeText(t, changed(t, inBaskets, c.pairs...))
			text, told := why(t, f, "part/hook/1/W1")
			if !strings.Contains(text, c.want) || told != c.told {
				t.Errorf("%q, told %v", text, told)
			}
		})
	}
}

// TestChokeOfABridlesLeg: its tag is for straight legs, and no rule says so.
func TestChokeOfABridlesLeg(t *testing.T) {
	v := rulesBase(t, "bridle").
		set("load/bodies", []any{parse(t, "{id: bar, kind: round, axis: across, start: {x: 0 m, y: 0 m, z: 1 m}, length: 2 m, diameter: 200 mm, surface: dry_steel}")}).
		set("rigging/0/legs/0", parse(t, "{down: [S1], end: {kind: choke, round: {body: bar, station: 0.1 m}}}"))
	f, _ := v.compute(t)
	text, told := why(t, f, "part/hook/1/S1")
	if !strings.Contains(text, "B1's tag is for straight legs") || told {
		t.Errorf("%q, told %v", text, told)
	}
}

// TestHitchesOfGear: each sling by the hitch that it makes.
func TestHitchesOfGear(t *testing.T) {
	f, _ := computeText(t, changed(t, choked, "PITCH", "0", "STATION", "4", "EYE", "300",
		"gear:\n", "gear:\n  - {id: U, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 2 m}\n  - {id: K, kind: shackle, inside_length: 60 mm}\n  - {id: X, kind: wire_rope_sling}\n",
		"down: [C]", "down: [U, K, C]"))
	for id, want := range map[string][]string{"U": {"straight"}, "C": {"choke"}, "K": {}, "X": {}} {
		got, _ := find(t, f, "gear/"+id).Field("hitches")
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s: %s", id, diff)
		}
	}
	for id, want := range map[string]string{"U": "straight", "C": "choke", "K": "choke"} {
		if got, _ := find(t, f, "part/hook/1/"+id).Field("hitch"); got != want {
			t.Errorf("%s works in %v, want %s", id, got, want)
		}
	}
}

// TestBasketThroughAPoint: it is bent over the thickness of the plate.
func TestBasketThroughAPoint(t *testing.T) {
	v := rulesBase(t, "two_legs").set("rigging/0/legs/0", parse(t, "{down: [S1], end: {kind: basket, at: A}}")).set("gear/0/length", "5 m")
	f, _ := v.compute(t)
	near(t, "bend", figure(t, f, "hitch/hook/1", "body_over_rope_ratio"), 20.0/14, 1e-6)
	without, _ := v.drop("load/attachments/0/thickness").compute(t)
	if got := labels(lacks(t, without, "hitch/hook/1", "body_over_rope_ratio")); !strings.Contains(got, "the thickness of attachment A") {
		t.Errorf("waits for %q", got)
	}
}

// TestRadiusOverSofteners is that of the sling that lies on them: another on the same
// body bends over its bare edges. Webbing 8 mm thick needs 24 mm (AS 1353.2).
func TestRadiusOverSofteners(t *testing.T) {
	box := []string{"kind: round, axis: along", "kind: box, axis: along", "diameter: 600 mm", "width: 600 mm, height: 600 mm, edge_radius: 5 mm"}
	soft := changed(t, inBaskets, append([]string{"body: pipe", "softened: true, softened_radius: 24 mm, body: pipe"}, box...)...)
	f, _ := parse(t, soft).drop("rigging/0/legs/1/end/round/softened", "rigging/0/legs/1/end/round/softened_radius").withSlings(t, ofWeb).compute(t)
	near(t, "softened", figure(t, f, "hitch/hook/1", "body_over_rope_ratio"), 6, 1e-9)
	near(t, "as rated in a basket", figure(t, f, "part/hook/1/W1", "rated_load_n"), 2000*gravity, 1e-6)
	near(t, "bare", figure(t, f, "hitch/hook/2", "body_over_rope_ratio"), 10.0/8, 1e-9)
	f, _ = parse(t, changed(t, soft, ", edge_radius: 5 mm", "", "softened_radius: 24 mm, ", "")).withSlings(t, ofWeb).compute(t)
	if got := labels(lacks(t, f, "hitch/hook/1", "body_over_rope_ratio")); got != "the radius over what softens the edges of pipe `softened_radius` at #/rigging/0/legs/0/end/round" {
		t.Errorf("waits for %q", got)
	}
}
