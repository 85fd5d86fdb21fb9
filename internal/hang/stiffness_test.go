package hang

import (
	"math"
	"strings"
	"testing"
)

const oneLeg = `load:
  mass: 1 t
  center_of_gravity: {x: 0 m, y: 0 m, z: 0 m}
  attachments: [{id: A, kind: padeye, x: 0 m, y: 0 m, z: 1 m}]
gear:
  - {id: S1, SLING}
  - {id: S2, kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 2 m}
rigging:
  - {from: hook, legs: [{down: [S1], end: {kind: to, at: A}}]}
`

// TestStiffnessByKind: EA from the figures that internal/capacity has the sources
// of: 100 GPa over 0.46 d^2 of rope with a wire core, 80 over what is laid again,
// 100 over both bars of a chain, and rated load over the least usual stretch.
func TestStiffnessByKind(t *testing.T) {
	const tonne = 1000 * gravity
	tag := ", tag: {condition: legible, rated_load: 3 t, hitch: vertical}"
	for sling, want := range map[string]float64{
		"kind: wire_rope_sling, core: iwrc, diameter: 20 mm, length: 2 m":                                                        100e9 * 0.46 * 0.02 * 0.02,
		"kind: wire_rope_sling, body: multi_part, parts: 9, core: iwrc, component_diameter: 10 mm, diameter: 36 mm, length: 2 m": 9 * 80e9 * 0.46 * 0.01 * 0.01,
		"kind: wire_rope_sling, body: cable_laid, core: iwrc, diameter: 30 mm, length: 2 m":                                      7 * 80e9 * 0.46 * 0.01 * 0.01,
		"kind: grommet, laid: strand_laid, core: iwrc, diameter: 20 mm, circumference: 4 m":                                      2 * 100e9 * 0.46 * 0.02 * 0.02,
		"kind: grommet, laid: cable_laid, core: iwrc, diameter: 30 mm, circumference: 4 m":                                       2 * 7 * 80e9 * 0.46 * 0.01 * 0.01,
		"kind: chain_sling, size: 10 mm, length: 2 m":                                                                            100e9 * 2 * math.Pi / 4 * 0.01 * 0.01,
		"kind: web_sling, material: polyester, length: 2 m" + tag:                                                                3 * tonne / 0.03,
		"kind: web_sling, material: nylon, length: 2 m" + tag:                                                                    3 * tonne / 0.06,
		"kind: round_sling, length: 2 m" + tag:                                                                                   3 * tonne / 0.03,
	} {
		r := Of(written(t, oneLeg, "SLING", sling)).Legs[0].Route
		near(t, sling, r.StiffnessN, want, 1e-6*want)
		near(t, sling, r.LengthM, 2, 1e-12)
		if len(r.StiffNeeds) > 0 {
			t.Errorf("%s waits for %v", sling, r.StiffNeeds)
		}
	}
}

// TestStiffnessWaits: what is not known is never guessed.
func TestStiffnessWaits(t *testing.T) {
	for sling, want := range map[string]string{
		"kind: wire_rope_sling, length: 2 m":                                                                      "S1's diameter",
		"kind: wire_rope_sling, body: multi_part, diameter: 36 mm, length: 2 m":                                   "S1's component diameter; S1's number of parts",
		"kind: grommet, circumference: 4 m":                                                                       "S1's diameter",
		"kind: chain_sling, length: 2 m":                                                                          "S1's size",
		"kind: web_sling, material: polyester, length: 2 m":                                                       "S1's rated load in a straight pull, from which its stretch follows",
		"kind: round_sling, material: hmpe, length: 2 m":                                                          "S1's stretch under load, which is not known for its kind or material",
		"kind: mesh_sling, length: 2 m, tag: {condition: legible, rated_load: 2 t}":                               "S1's stretch under load, which is not known for its kind or material",
		"kind: web_sling, length: 2 m, tag: {condition: legible, rated_load: 2 t, angle_from_horizontal: 60 deg}": "S1's rated load in a straight pull, from which its stretch follows",
	} {
		var labels []string
		for _, in := range Of(written(t, oneLeg, "SLING", sling)).Legs[0].Route.StiffNeeds {
			labels = append(labels, in.Label)
		}
		if got := strings.Join(labels, "; "); got != want {
			t.Errorf("%s waits for %q", sling, got)
		}
	}
}

// TestSlingsInARowGiveTogether: 2 m of chain and 2 m of rope stretch by the sum, so
// that 4 m over EA is the sum of 2 m over each.
func TestSlingsInARowGiveTogether(t *testing.T) {
	l := Of(written(t, oneLeg, "SLING", "kind: chain_sling, size: 10 mm, length: 2 m, length_tolerance: 10 mm", "down: [S1]", "down: [S1, S2]", "length: 2 m}\nrig", "length: 2 m, length_tolerance: 5 mm}\nrig"))
	chain, rope := 100e9*2*math.Pi/4*1e-4, 100e9*0.46*4e-4
	want := 4 / (2/chain + 2/rope)
	near(t, "EA", l.Legs[0].Route.StiffnessN, want, 1e-6*want)
	near(t, "tolerance", lengthTolerances(l.Legs)[0], 0.015, 1e-12)
	if !allLengthTolerances(l.Legs) {
		t.Error("both have a tolerance")
	}
	one := Of(written(t, oneLeg, "SLING", "kind: chain_sling, size: 10 mm, length: 2 m", "down: [S1]", "down: [S1, S2]", "length: 2 m}\nrig", "length: 2 m, length_tolerance: 5 mm}\nrig"))
	if allLengthTolerances(one.Legs) {
		t.Error("the tolerance of the chain is not known")
	}
}

// TestOpenLengthOfAnyKind: a web sling without a length gets the one that it needs.
func TestOpenLengthOfAnyKind(t *testing.T) {
	l := hung(t, oneLeg, "SLING", "kind: web_sling, material: polyester", "{from: hook,", "{from: hook, height_above_datum: 4 m,")
	near(t, "open length", *l.Legs[0].OpenM, 3, 1e-9)
}

// TestFabricStretchesFurtherThanRope: at its rated load nylon stretches 6 % and more
// (common practice), three times what a wire rope stands, and is still judged by its
// load.
func TestFabricStretchesFurtherThanRope(t *testing.T) {
	for what, most := range map[string]float64{
		"kind: web_sling, material: nylon":       7 * 0.06,
		"kind: round_sling, material: polyester": 7 * 0.03,
		"kind: web_sling":                        7 * 0.03, // as the stiffer
		"kind: chain_sling":                      0,
		"kind: wire_rope_sling, core: iwrc":      0,
	} {
		l := hung(t, roundPipe, "END", "basket", "BY", "", "PITCH", "0", "kind: wire_rope_sling, core: iwrc, diameter: 20 mm", what)
		if got := mostStrain(l.Legs[0].Leg); got != most {
			t.Errorf("%s: %g, not %g", what, got, most)
		}
	}
}
