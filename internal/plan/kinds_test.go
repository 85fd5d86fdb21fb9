package plan

import (
	"encoding/json"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/schema"
)

// manyKinds is a plan of slings of every kind, a lifting device and what goes
// into legs.
const manyKinds = `liftlint: 1
lift: {id: SQ-6, title: Move a bundle and a coil}
load:
  bodies:
    - {id: bundle, kind: box, axis: along, start: {x: 0 m, y: 1 m, z: 1 m}, length: 6 m}
  attachments:
    - {id: A, kind: padeye}
gear:
  - {id: LD1, kind: lifting_device, made_for: coils on a fork, category: B, proof_test: {load: 125 %, date: 2026-03-01}, rated_load: 8 t, points: [{id: top}, {id: fork}]}
  - {id: SB1, kind: spreader_beam, span_rated_for: 6 m, points: [{id: tl}, {id: tr}, {id: low}]}
  - {id: C1, kind: chain_sling, grade: "100", size: 10 mm, length: 3 m, length_tolerance: 20 mm, fittings: hook below, faults_seen: [stretched], tag: {condition: legible, size: 3/8 in, grade: "80", length: 3 m, rated_load: 4 t, legs: 1}}
  - {id: W1, kind: web_sling, material: polyester, width: 4 in, thickness: 8 mm, length: 2 m, faults_seen: [], tag: {condition: legible, material: nylon, width: 3 in, choker_rated_load: 3 t}}
  - {id: R1, kind: round_sling, material: aramid, length: 4 m}
  - {id: M1, kind: mesh_sling, width: 150 mm, thickness: 12 mm}
  - {id: MP1, kind: wire_rope_sling, body: multi_part, parts: 8, diameter: 38 mm, component_diameter: 13 mm, tag: {condition: legible, component_diameter: 1/2 in}}
  - {id: CL1, kind: wire_rope_sling, body: cable_laid, component_diameter: 20 mm}
  - {id: G1, kind: grommet, circumference: 8 m, breaking_load: 180 t, breaking_load_is_for_parts: 2, splice_at: 1.5 m, sleeve: steel}
  - {id: AD1, kind: adjuster, length: 700 mm, shortest: 400 mm, longest: 1.2 m, rated_load: 4 t, upper_opening: 40 mm, eye_section: 14 mm}
  - {id: SW1, kind: swivel, length: 160 mm, turns_under_load: false, upper_pin_diameter: 28 mm, lower_pin_diameter: 30 mm, lower_opening: 43 mm}
  - {id: SW2, kind: swivel}
  - {id: BLK1, kind: sheave_block}
  - {id: K1, kind: shackle}
  - {id: K2, kind: shackle}
rigging:
  - from: hook
    legs:
      - {down: [C1, AD1, SW1], end: {kind: to, at: LD1.top}}
      - {down: [CL1, SW2], end: {kind: to, at: SB1.tl}}
      - {down: [MP1], end: {kind: to, at: SB1.tr}}
      - {down: [M1], end: {kind: to, at: A}}
  - {from: LD1.fork, legs: [{down: [G1], end: {kind: to, at: A}}]}
  - from: SB1.low
    legs:
      - {down: [W1], end: {kind: basket, round: {body: bundle, station: 1 m, softened: true, softener_secured: false}}}
      - {down: [R1, K1], end: {kind: choke, pin_in: running_part, round: {body: bundle, station: 5 m, softened: true}}}
`

func itemOf(t *testing.T, p *Plan, id string) gear.Item {
	t.Helper()
	i := slices.IndexFunc(p.Gear, func(item gear.Item) bool { return item.Base().ID == id })
	if i < 0 {
		t.Fatalf("no %s", id)
	}
	return p.Gear[i]
}

// TestEveryKindIsRead: plans are offered the kinds that the gear has, and what a
// register tells of; each kind has its reader.
func TestEveryKindIsRead(t *testing.T) {
	text, err := schema.Files.ReadFile("plan/plan.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	var s struct {
		Properties struct {
			Gear struct {
				Items struct {
					Properties struct {
						Kind struct{ Enum []gear.Kind }
					}
				}
			}
		}
	}
	if err := json.Unmarshal(text, &s); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(s.Properties.Gear.Items.Properties.Kind.Enum, append(gear.Kinds(), OnRegister)); diff != "" {
		t.Error(diff)
	}
	for _, k := range gear.Kinds() {
		var err error
		decodeItemOf(k, &err)
		if err != nil {
			t.Error(err)
		}
	}
}

// decodeItemOf reads an item of which nothing but the kind is known.
func decodeItemOf(k gear.Kind, err *error) gear.Item {
	return itemOfKind(fields{nil, err}, gear.Common{Kind: k})
}

func TestDecodeTagRatedSlings(t *testing.T) {
	p := good(t, manyKinds)
	for id, want := range map[string]*gear.TagRatedSling{
		"C1": {Length: ptr(quantity.Length(3)), LengthTolerance: ptr(quantity.Length(0.02)), Size: ptr(quantity.Length(0.01)), Grade: "100", Fittings: "hook below"},
		"W1": {Length: ptr(quantity.Length(2)), Width: ptr(quantity.Length(4 * inch)), Thickness: ptr(quantity.Length(0.008)), Material: "polyester"},
		"R1": {Length: ptr(quantity.Length(4)), Material: "aramid"},
		"M1": {Width: ptr(quantity.Length(0.15)), Thickness: ptr(quantity.Length(0.012))},
	} {
		got := itemOf(t, p, id)
		want.Common = *got.Base()
		if diff := cmp.Diff(gear.Item(want), got); diff != "" {
			t.Errorf("%s: %s", id, diff)
		}
	}
}

// TestDecodeFaultsSeen on gear of any kind: some, none, and nothing said.
func TestDecodeFaultsSeen(t *testing.T) {
	p := good(t, manyKinds)
	for id, want := range map[string]struct {
		seen       []string
		lookedOver bool
	}{"C1": {[]string{"stretched"}, true}, "W1": {nil, true}, "R1": {nil, false}} {
		if c := itemOf(t, p, id).Base(); !slices.Equal(c.FaultsSeen, want.seen) || c.LookedOver != want.lookedOver {
			t.Errorf("%s: %q, looked over: %v", id, c.FaultsSeen, c.LookedOver)
		}
	}
}

func TestDecodeTagsOfKinds(t *testing.T) {
	p := good(t, manyKinds)
	chain, web, rope := itemOf(t, p, "C1").Base().Tag, itemOf(t, p, "W1").Base().Tag, itemOf(t, p, "MP1").Base().Tag
	if *chain.Size != 3*inch/8 || chain.Grade != "80" || *chain.Length != 3 || !cmp.Equal(chain.Shows, []string{"size", "length", "grade", "rated_load", "legs"}) {
		t.Errorf("%+v", chain)
	}
	if *web.Width != 3*inch || web.Material != "nylon" || !cmp.Equal(web.Shows, []string{"width", "material", "choker_rated_load"}) {
		t.Errorf("%+v", web)
	}
	if *rope.Component != inch/2 || rope.Diameter != nil || !cmp.Equal(rope.Shows, []string{"component_diameter"}) {
		t.Errorf("%+v", rope)
	}
}

func TestDecodeBodiesOfRope(t *testing.T) {
	p := good(t, manyKinds)
	mp, cl, g := itemOf(t, p, "MP1").(*gear.WireRopeSling), itemOf(t, p, "CL1").(*gear.WireRopeSling), itemOf(t, p, "G1").(*gear.Grommet)
	if mp.Body != gear.MultiPart || *mp.Parts != 8 || *mp.Diameter != 0.038 || *mp.Component != 0.013 {
		t.Errorf("%+v", mp)
	}
	if cl.Body != gear.CableLaid || cl.Parts != nil || *cl.Component != 0.02 {
		t.Errorf("%+v", cl)
	}
	if !near(g.BreakingLoad.Newtons, 180*9806.65) || *g.BreakingParts != 2 || *g.SpliceAt != 1.5 || g.Sleeve != "steel" {
		t.Errorf("%+v", g)
	}
}

func TestDecodeEndsOfPartsInLine(t *testing.T) {
	p := good(t, manyKinds)
	for id, want := range map[string]*gear.InLine{
		"AD1": {Length: ptr(quantity.Length(0.7)), Shortest: ptr(quantity.Length(0.4)), Longest: ptr(quantity.Length(1.2)), RatedLoad: &quantity.Load{Newtons: 4 * 9806.65, Unit: "t"},
			Upper: gear.Opening{Inside: ptr(quantity.Length(0.04))}, EyeSection: ptr(quantity.Length(0.014))},
		"SW1": {Length: ptr(quantity.Length(0.16)), TurnsUnderLoad: ptr(false),
			Upper: gear.Opening{PinDiameter: ptr(quantity.Length(0.028))}, Lower: gear.Opening{PinDiameter: ptr(quantity.Length(0.03)), Inside: ptr(quantity.Length(0.043))}},
		"SW2": {},
	} {
		got := itemOf(t, p, id)
		want.Common = *got.Base()
		if diff := cmp.Diff(gear.Item(want), got); diff != "" {
			t.Errorf("%s: %s", id, diff)
		}
	}
}

// TestDevices: a lifting device hangs and holds by its points, as beams do.
func TestDevices(t *testing.T) {
	p := good(t, manyKinds)
	device, beam := p.Beams[0], p.Beams[1]
	want := &gear.Beam{
		Common:    device.Item.Common,
		RatedLoad: &quantity.Load{Newtons: 8 * 9806.65, Unit: "t"},
		Category:  "B", MadeFor: "coils on a fork",
		ProofTest: &gear.ProofTest{Pointer: "/gear/0/proof_test", Load: ptr(quantity.Ratio(1.25)), Date: ptr(day(2026, 3, 1))},
	}
	if diff := cmp.Diff(want, device.Item); diff != "" {
		t.Error(diff)
	}
	if device.Item.Kind != gear.LiftingDeviceKind || p.Supports[0].Legs[0].End.Attachment != &device.Points[0] || p.Supports[1].Point != &device.Points[1] {
		t.Errorf("%+v", device)
	}
	if *beam.Item.SpanRatedFor != 6 || beam.Item.ProofTest != nil {
		t.Errorf("%+v", beam.Item)
	}
}

func TestSoftenersAndPins(t *testing.T) {
	legs := good(t, manyKinds).Supports[2].Legs
	basket, choke := legs[0].End, legs[1].End
	if basket.Round.SoftenerSecured == nil || *basket.Round.SoftenerSecured || basket.PinIn != "" {
		t.Errorf("%+v, %+v", basket, basket.Round)
	}
	if choke.Round.SoftenerSecured != nil || choke.PinIn != PinInRunningPart {
		t.Errorf("%+v, %+v", choke, choke.Round)
	}
}

func TestFaultsOfKinds(t *testing.T) {
	for _, c := range []faultCase{
		{"parts of one rope", []string{"body: multi_part, parts: 8, diameter: 38 mm, component_diameter: 13 mm", "parts: 8"}, []string{
			"15 plan/wrong_part: only a multi-part sling has parts: write `body: multi_part` if MP1 is one, or leave this out"}},
		{"parts of a cable", []string{"body: cable_laid", "body: cable_laid, parts: 6"}, []string{
			"16 plan/wrong_part: only a multi-part sling has parts: write `body: multi_part` if CL1 is one, or leave this out"}},
		{"one rope in itself", []string{"body: cable_laid, ", ""}, []string{
			"16 plan/wrong_part: a single-part sling has no rope in it but itself: write the `body` that CL1 has, or leave this out"}},
		{"splice beyond the grommet", []string{"splice_at: 1.5 m", "splice_at: 4001 mm"}, []string{
			`17 plan/out_of_range: the splice at 4.001 m lies beyond the lower bearing: one part of G1 is 4.00 m long, half its circumference`}},
		{"secured nothing", []string{"softened: true, softener_secured: false", "softener_secured: true"}, []string{
			"34 plan/missing_key: nothing is said to be softened: write `softened: true` beside, or leave this out"}},
		{"radius over nothing", []string{"softened: true, softener_secured: false", "softened_radius: 60 mm"}, []string{
			"34 plan/missing_key: nothing is said to be softened: write `softened: true` beside, or leave this out"}},
		{"radius over a round body", []string{"id: bundle, kind: box, axis: along", "id: bundle, kind: round, axis: along", "softened: true, softener_secured: false", "softened: true, softened_radius: 60 mm"}, []string{
			"34 plan/wrong_part: body bundle is round and has no edges: leave this out"}},
		{"pin of no shackle", []string{"[R1, K1]", "[R1]"}, []string{
			"35 plan/wrong_part: no shackle closes this choke: write one below the sling that is choked, or leave `pin_in` out"}},
		{"doubled round sling", []string{"[R1, K1], end: {kind: choke, pin_in: running_part, ", "[R1], doubled: true, end: {kind: choke, "}, []string{
			`35 plan/wrong_part: R1 is a round sling: only a grommet is laid double`}},
		{"running chain", []string{"  - {from: LD1.fork, legs: [{down: [G1], end: {kind: to, at: A}}]}", "  - {from: LD1.fork, by: [BLK1], legs: [{down: [C1], end: {kind: runs_to, at: [A, SB1.tl]}}]}", "[C1, AD1, SW1]", "[G1, AD1, SW1]"}, []string{
			`31 plan/wrong_part: C1 is a chain sling: a wire rope sling runs over the block`,
			`31 plan/wrong_part: A and SB1.tl are not on one body: a sling over a sheave holds the load, or one beam, by two of its points`}},
		{"two web slings in a basket", []string{"[W1]", "[M1, W1]", "      - {down: [M1], end: {kind: to, at: A}}\n", ""}, []string{
			"33 plan/wrong_part: a basket is one sling, with a shackle at each of its ends or at neither: write [sling] or [shackle, sling, shackle]; what both ends hang in stands in `by`"}},
		{"device among the parts", []string{"[M1]", "[M1, LD1]"}, []string{
			`30 plan/wrong_part: LD1 is a lifting device and can't be used here: legs end at one of its points and hang from others: LD1.top, LD1.fork`}},
		{"device held by nothing", []string{"at: LD1.top", "at: A"}, []string{
			`31 plan/wrong_part: nothing holds LD1: no leg ends at one of its points`}},
		{"swivel without a sling", []string{"[CL1, SW2]", "[SW2]"}, []string{
			`28 plan/wrong_part: a leg needs a sling among its parts`}},
		{"swivel above the legs", []string{"  - {from: LD1.fork, ", "  - {from: LD1.fork, by: [SW2], ", "[CL1, SW2]", "[CL1]"}, []string{
			`31 plan/wrong_part: SW2 is a swivel and can't be used here: a shackle, a master link, a bridle or a sheave block is asked for`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			expectFaults(t, changedIn(t, manyKinds, c.pairs...), c.want)
		})
	}
}

// TestSpliceAtTheLowerBearing is on the grommet still; of one whose
// circumference is not known nothing is said.
func TestSpliceAtTheLowerBearing(t *testing.T) {
	good(t, changedIn(t, manyKinds, "splice_at: 1.5 m", "splice_at: 4 m"))
	good(t, changedIn(t, manyKinds, "circumference: 8 m, ", "", "splice_at: 1.5 m", "splice_at: 9 m"))
}
