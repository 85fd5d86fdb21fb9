package plan

import "testing"

// faultCase is a change of the arranged plan and the faults that it gives.
type faultCase struct {
	name  string
	pairs []string
	want  []string
}

func expectEach(t *testing.T, cases []faultCase) {
	t.Helper()
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			expectFaults(t, changedIn(t, arranged, c.pairs...), c.want)
		})
	}
}

func TestFaultsOfSupports(t *testing.T) {
	expectEach(t, []faultCase{
		{"hook misspelt", []string{"from: head", "from: haed"}, []string{
			`49 plan/unknown_reference: no hook and no point of a beam has the id "haed": did you mean "head"?`}},
		{"the usual name", []string{"from: head", "from: hook"}, []string{
			`49 plan/unknown_reference: no hook and no point of a beam has the id "hook": there is head, tail, RP1.top, RP1.low, SB1.tl, SB1.tr, SB1.left, SB1.right`}},
		{"point misspelt", []string{"from: SB1.left", "from: SB1.lft"}, []string{
			`42 plan/unknown_reference: SB1 has no point "SB1.lft": did you mean "SB1.left"?`}},
		{"beam misspelt", []string{"from: SB1.left", "from: SB2.left"}, []string{
			`42 plan/unknown_reference: no hook and no point of a beam has the id "SB2.left": did you mean "SB1.left"?`}},
		{"beam without its point", []string{"from: SB1.left", "from: SB1"}, []string{
			`42 plan/unknown_reference: SB1 is a spreader beam: name one of its points: SB1.tl, SB1.tr, SB1.left, SB1.right`}},
		{"point of a sling", []string{"from: SB1.left", "from: S1.left"}, []string{
			"42 plan/unknown_reference: S1 is a wire rope sling: legs hang from a hook or from a point of a beam; what is between stands in `by`"}},
		{"same support twice", []string{"from: SB1.right", "from: SB1.left", ", up_to: SB1.right", ""}, []string{
			`45 plan/duplicate_id: "SB1.left" names two entries of rigging: put all its legs into one (42 the first one)`}},
		{"no legs", []string{", up_to: SB1.right", "", "\n      - {down: [S4, K3], end: {kind: choke, round: {body: shell, station: 7 m, choke_angle: 120 deg}}}", " []"}, []string{
			`47 plan/wrong_part: SB1.right has no legs, and no basket goes up to it: leave this entry out, or write its legs`}},
		{"block not last", []string{"by: [BLK1]", "by: [BLK1, K3]", "[S4, K3]", "[S4]"}, []string{
			`54 plan/wrong_part: a sling runs over a sheave block: it comes last, nothing hangs between it and the sling`}},
		{"two slings on a block", []string{"      - {down: [K1, S5, K2], end: {kind: runs_to, at: [C, D]}}", "      - {down: [S5], end: {kind: runs_to, at: [C, D]}}\n      - {down: [S2], end: {kind: runs_to, at: [C, D]}}"}, []string{
			`57 plan/wrong_part: BLK1 is a sheave block and takes one sling: give each sling a block of its own`}},
	})
}

func TestFaultsOfHooks(t *testing.T) {
	expectEach(t, []faultCase{
		{"beside the crane's", []string{"gear:\n", "crane: {hook: {latch: works}}\ngear:\n"}, []string{
			"12 plan/wrong_part: `hooks` and `hook` of the crane describe the same thing: keep one of them (14 the crane's hook)"}},
		{"nothing hangs from one", []string{"hooks:\n", "hooks:\n  - {id: side, latch: none}\n"}, []string{
			"12 plan/wrong_part: nothing hangs from hook side: write an entry of rigging with `from: side`, or leave the hook out"}},
		{"twice", []string{"  - {id: tail", "  - {id: head}\n  - {id: tail"}, []string{
			`13 plan/duplicate_id: "head" names two entries of hooks: give each an id of its own (12 the first one)`}},
		{"half a place", []string{", x: 8.2 m, y: 1 m", ", x: 8.2 m"}, []string{
			`13 plan/missing_key: hook tail has x and lacks y: write both, or neither of a hook that hangs plumb over what it holds`}},
		{"the other half", []string{", x: 8.2 m, y: 1 m", ", y: 1 m"}, []string{
			`13 plan/missing_key: hook tail has y and lacks x: write both, or neither of a hook that hangs plumb over what it holds`}},
	})
}

func TestFaultsOfBeams(t *testing.T) {
	expectEach(t, []faultCase{
		{"nothing holds it", []string{"at: SB1.tl", "at: C", "at: SB1.tr", "at: D"}, []string{
			`42 plan/wrong_part: nothing holds SB1: no leg ends at one of its points`}},
		{"nothing hangs from it", []string{"at: [C, D]", "at: [RP1.top, D]"}, []string{
			"56 plan/wrong_part: nothing hangs from RP1: no entry of rigging is `from` one of its points",
			"56 plan/wrong_part: RP1.top and D are not on one body: a sling over a sheave holds the load, or one beam, by two of its points"}},
		{"hangs from itself", []string{"round: {body: shell, station: 1.8 m, turns: 2, held_by: welded stop, softened: true}", "at: SB1.tl"}, []string{
			`44 plan/wrong_part: SB1 would hang from itself: SB1 holds SB1`}},
		{"hangs from what hangs from it", []string{
			"{kind: choke, round: {body: shell, station: 7 m, choke_angle: 120 deg}}", "{kind: to, at: RP1.top}",
			"phases:", "  - {from: RP1.low, legs: [{down: [S2], end: {kind: to, at: SB1.tl}}]}\nphases:"}, []string{
			`57 plan/wrong_part: RP1 would hang from itself: RP1 holds SB1, which holds RP1`}},
		{"hangs from it by a basket's other end", []string{
			"round: {body: shell, station: 1.8 m, turns: 2, held_by: welded stop, softened: true}, up_to: SB1.right", "at: C",
			"at: SB1.tr}}", "at: SB1.tr}}\n      - {down: [S2], end: {kind: basket, at: SB1.tl, up_to: SB1.right}}"}, []string{
			`53 plan/wrong_part: SB1 would hang from itself: SB1 holds SB1`}},
		{"one point for both", []string{"at: SB1.tl", "at: SB1.left"}, []string{
			`51 plan/wrong_part: legs hang from SB1.left, and so it can't hold the beam up too: one point does one or the other (42 where legs hang from it)`}},
		{"two points of one name", []string{"id: tr, x", "id: tl, x", "at: SB1.tr", "at: SB1.tl"}, []string{
			`26 plan/duplicate_id: "tl" names two entries of points: give each an id of its own (25 the first one)`}},
		{"no such point", []string{"at: SB1.tl", "at: SB1.lt"}, []string{
			`51 plan/unknown_reference: SB1 has no point "SB1.lt": did you mean "SB1.tl"?`}},
		{"no point named", []string{"at: SB1.tl", "at: SB1"}, []string{
			`51 plan/unknown_reference: SB1 is a spreader beam: name one of its points: SB1.tl, SB1.tr, SB1.left, SB1.right`}},
		{"no such beam", []string{"at: SB1.tl", "at: SBX1.tl"}, []string{
			`51 plan/unknown_reference: no point of a beam has the id "SBX1.tl": did you mean "SB1.tl"?`}},
		{"among the parts", []string{"[S1, LC1, TB1]", "[S1, SB1]"}, []string{
			`51 plan/wrong_part: SB1 is a spreader beam and can't be used here: legs end at one of its points and hang from others: SB1.tl, SB1.tr, SB1.left, SB1.right`}},
	})
}

func TestFaultsOfEnds(t *testing.T) {
	expectEach(t, []faultCase{
		{"up to nothing", []string{"up_to: SB1.right", "up_to: SB1.rigth"}, []string{
			`44 plan/unknown_reference: no entry of rigging hangs from "SB1.rigth": did you mean "SB1.right"?`}},
		{"up to a block", []string{"up_to: SB1.right", "up_to: tail"}, []string{
			`44 plan/wrong_part: tail holds a bridle or a sheave block, which takes no other sling: the basket goes up to another support`}},
		{"no such body", []string{"body: shell, station: 1.8 m", "body: shel, station: 1.8 m"}, []string{
			`44 plan/unknown_reference: no body of the load has the id "shel": did you mean "shell"?`}},
		{"beyond the body", []string{"station: 7 m", "station: 9001 mm"}, []string{
			`48 plan/out_of_range: the station 9.001 m lies beyond the end of body shell, which is 9.00 m long`}},
		{"round and through", []string{"up_to: SB1.right", "at: C"}, []string{
			"44 plan/wrong_part: a basket goes through a point or round a body, not both: leave out `at` or `round` (44 the point)"}},
		{"neither", []string{"round: {body: shell, station: 1.8 m, turns: 2, held_by: welded stop, softened: true}, ", ""}, []string{
			"44 plan/missing_key: the basket lacks what it goes round; write `round: {body: ..., station: ...}`, or `at:` with the point it goes through"}},
		{"basket of two slings", []string{"[S3]", "[S2, S3]"}, []string{
			"44 plan/wrong_part: a basket is one sling, with a shackle at each of its ends or at neither: write [sling] or [shackle, sling, shackle]; what both ends hang in stands in `by`"}},
		{"basket with a shackle at one end", []string{"[S3]", "[S3, K3]", "[S4, K3]", "[S4]"}, []string{
			"44 plan/wrong_part: a basket is one sling, with a shackle at each of its ends or at neither: write [sling] or [shackle, sling, shackle]; what both ends hang in stands in `by`"}},
		{"basket without a sling", []string{"[S3]", "[K3]", "[S4, K3]", "[S4]"}, []string{
			`44 plan/wrong_part: a leg needs a sling among its parts`}},
		{"choke with more below", []string{"[S4, K3]", "[S4, K3, K1]", "[K1, S5, K2]", "[S5]"}, []string{
			`48 plan/wrong_part: the lowest sling of the leg makes the choke: below it stands nothing but a shackle in its eye`}},
		{"choke above a load cell", []string{"[S4, K3]", "[S4, LC1]", "[S1, LC1, TB1]", "[S1, TB1]"}, []string{
			`48 plan/wrong_part: the lowest sling of the leg makes the choke: below it stands nothing but a shackle in its eye`}},
		{"both ends at one point", []string{"at: [C, D]", "at: [C, C]"}, []string{
			`56 plan/wrong_part: both ends of the sling go to C: it would not run, but hang as a basket does`}},
		{"runs over nothing", []string{"    by: [BLK1]\n", ""}, []string{
			"55 plan/wrong_part: a sling runs over a sheave block: write the block last in `by` of this support"}},
		{"straight below a block", []string{"[K1, S5, K2], end: {kind: runs_to, at: [C, D]}", "[S5], end: {kind: to, at: C}"}, []string{
			"56 plan/wrong_part: BLK1 is a sheave block: the sling below it ends in `kind: runs_to`, at two points"}},
		{"running grommet", []string{"[K1, S5, K2]", "[G1]", "[G1], doubled: true", "[S5]"}, []string{
			`56 plan/wrong_part: G1 is a grommet: a wire rope sling runs over the block`}},
		{"a running sling with a part more", []string{"[K1, S5, K2]", "[K1, S5]"}, []string{
			"56 plan/wrong_part: a sling over a sheave block is one sling, with a shackle at each of its ends or at neither: write [sling] or [shackle, sling, shackle]; what both ends hang in stands in `by`"}},
		{"doubled sling", []string{"[G1]", "[S2]"}, []string{
			`52 plan/wrong_part: S2 is a wire rope sling: only a grommet is laid double`}},
	})
}

func TestFaultsOfPhases(t *testing.T) {
	expectEach(t, []faultCase{
		{"no step", []string{", until: 90 deg, step: 5 deg", ", until: 90 deg"}, []string{
			"59 plan/missing_key: a phase in which the load is turned lacks the step in which it is judged; write such as `step: 5 deg`"}},
		{"a step to nowhere", []string{", until: 90 deg, step: 5 deg", ", step: 5 deg"}, []string{
			"59 plan/missing_key: a step leads nowhere without `until`, the pitch at which the turning ends"}},
		{"the wrong way", []string{"until: 90 deg", "until: -90 deg"}, []string{
			`59 plan/out_of_range: steps of 5 deg do not lead from 0 deg to -90 deg`}},
		{"no way", []string{"until: 90 deg", "until: 0 deg"}, []string{
			"59 plan/out_of_range: the load is not turned: `until` is the pitch that the phase begins with; leave out `until` and `step`"}},
		{"no step at all", []string{"step: 5 deg", "step: 0 deg"}, []string{
			`59 plan/out_of_range: steps of 0 deg do not lead from 0 deg to 90 deg`}},
		{"too many", []string{"step: 5 deg", "step: 0.9 deg"}, []string{
			`59 plan/out_of_range: steps of 0.9 deg from 0 deg to 90 deg are more than 90: take larger ones, or two phases`}},
		{"twice", []string{"name: upright", "name: level"}, []string{
			`60 plan/duplicate_id: "level" names two entries of phases: give each a name of its own (58 the first one)`}},
		{"released hook misspelt", []string{"[tail]", "[tale]"}, []string{
			`60 plan/unknown_reference: no hook has the id "tale": there is head, tail`}},
		{"released twice", []string{"[tail]", "[tail, tail]"}, []string{
			`60 plan/duplicate_id: "tail" is named twice among the hooks released: leave one out`}},
		{"all released", []string{"[tail]", "[tail, head]"}, []string{
			`60 plan/wrong_part: every hook is released: at least one has to carry the load`}},
		{"a hook that never carries", []string{"{name: level, pitch: 0 deg}", "{name: level, pitch: 0 deg, released: [tail]}", "step: 5 deg}", "step: 5 deg, released: [tail]}"}, []string{
			`58 plan/wrong_part: hook tail is released in every phase: leave it out of the plan, or say in which phase it carries`}},
	})
}

// TestStepsToTheLimit: ninety steps are read, and those that lead down.
func TestStepsToTheLimit(t *testing.T) {
	good(t, changedIn(t, arranged, "step: 5 deg", "step: 1 deg"))
	good(t, changedIn(t, arranged, "until: 90 deg, step: 5 deg", "until: -90 deg, step: -1 deg"))
}

// TestNothingToHoldBy: a load without attachments and bodies is told of where
// a leg asks for one.
func TestNothingToHoldBy(t *testing.T) {
	text := func(end string) string {
		return "liftlint: 1\nlift: {id: A, title: A}\nload: {attachments: []}\ngear: [{id: S1, kind: wire_rope_sling}]\nrigging: [{from: hook, legs: [{down: [S1], end: " + end + "}]}]\n"
	}
	expectFaults(t, text("{kind: to, at: A}"), []string{`5 plan/unknown_reference: no attachment of the load has the id "A": it lists no attachments`})
	expectFaults(t, text("{kind: basket, round: {body: shell, station: 1 m}}"), []string{`5 plan/unknown_reference: no body of the load has the id "shell": it lists no bodies`})
}
