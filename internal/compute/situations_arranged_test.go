package compute_test

import "testing"

// arrangedSituations are plans with beams, several hooks, phases and slings round
// bodies.
func arrangedSituations(t testing.TB) map[string]func() tree {
	of := func(text string, pairs ...string) func() tree {
		return func() tree { return parse(t, changed(t, text, pairs...)) }
	}
	shackles := []string{
		"gear:\n", "gear:\n  - {id: K1, kind: shackle, rated_load: 9 t, inside_length: 100 mm, jaw: 46 mm, pin_diameter: 32 mm, bow_diameter: 29 mm, inside_width: 74 mm}\n" +
			"  - {id: K2, kind: shackle, rated_load: 9 t, inside_length: 100 mm, jaw: 46 mm, pin_diameter: 32 mm, bow_diameter: 29 mm, inside_width: 74 mm}\n",
	}
	with := func(text string, pairs ...string) func() tree { return of(text, append(shackles, pairs...)...) }
	return map[string]func() tree{
		"a spreader":                    of(underSpreader),
		"a spreader on a slack leg":     of(underSpreader, "id: T1, "+thickRope+", length: 4 m", "id: T1, "+thickRope+", length: 4.6 m"),
		"shackles in a spreader":        with(underSpreader, "{down: [T1], end", "{down: [T1, K1], end", "{down: [D1], end", "{down: [K2, D1], end"),
		"a bridle below a spreader":     with(underSpreader, "{from: SB.bl, legs", "{from: SB.bl, by: [K1], legs", "{from: SB.br, legs", "{from: SB.br, by: [K2], legs"),
		"a lifting beam":                of(onePin, "CENTER", "0.1"),
		"a beam that turns over":        of(onePin, "CENTER", "3"),
		"two hooks":                     of(onTwoHooks, "PHASES", ""),
		"two hooks, sloped":             of(onTwoHooks, "PHASES", "phases: [{name: sloped, pitch: -3 deg, until: 3 deg, step: 3 deg}]"),
		"a load turned up":              of(turnedUp),
		"a load turned up and over":     of(turnedUp, "x: 5 m", "x: 14 m"),
		"tolerances on two hooks":       of(onTwoHooks, "PHASES", "", "z: -1 m}", "z: -1 m, tolerance: 50 mm}"),
		"a sling over a sheave":         of(overSheave),
		"shackles over a sheave":        with(overSheave, "{down: [S], end", "{down: [K1, S, K2], end"),
		"baskets":                       of(inBaskets),
		"a basket of a surface unknown": of(inBaskets, ", surface: dry_steel", ""),
		"a basket between two points": of(underSpreader, "mass: 8 t\n", "mass: 8 t\n  bodies: [{id: drum, kind: box, axis: across, start: {x: 2 m, y: -1 m, z: 0 m}, width: 1 m, height: 800 mm, edge_radius: 40 mm, surface: wood}]\n",
			"  - {from: SB.bl, legs: [{down: [D1], end: {kind: to, at: L}}]}\n  - {from: SB.br, legs: [{down: [D2], end: {kind: to, at: R}}]}\n",
			"  - {from: SB.bl, legs: [{down: [D1], end: {kind: basket, round: {body: drum, station: 1 m}, up_to: SB.br}}]}\n  - {from: SB.br, legs: []}\n",
			"D1, "+thickRope+", length: 3 m", "D1, "+thickRope+", length: 8 m"),
		"a basket through a point": of(turnedUp, "{down: [S1], end: {kind: to, at: H}}", "{down: [S1], end: {kind: basket, at: H}}"),
		"a choke":                  of(choked, "PITCH", "0", "STATION", "4", "EYE", "300"),
		"a choke on a column":      of(choked, "PITCH", "90", "STATION", "7", "EYE", "300"),
		"a choke that is set":      of(choked, "PITCH", "0", "STATION", "4", "EYE", "300", "station: 4 m", "station: 4 m, choke_angle: 100 deg, turns: 2, held_by: a stop"),
		"a grommet in a leg": of(overSheave, "  - {id: BLK,", "  - {id: G, kind: grommet, diameter: 40 mm, core: iwrc, circumference: 5 m, tag: {condition: legible, rated_load: 12 t, hitch: vertical}}\n  - {id: BLK,",
			"by: [BLK], legs: [{down: [S], end: {kind: runs_to, at: [C, D]}}]", "legs: [{down: [G], doubled: true, end: {kind: to, at: C}}, {down: [S], end: {kind: to, at: D}}]"),
		"a load cell and a turnbuckle in a leg": of(turnedUp, "gear:\n", "gear:\n  - {id: LC, kind: load_cell, length: 300 mm, rated_load: 40 t}\n  - {id: TB, kind: turnbuckle, length: 900 mm, shortest: 800 mm, longest: 1 m, rated_load: 40 t}\n",
			"{down: [S1], end", "{down: [LC, S1, TB], end"),
	}
}
