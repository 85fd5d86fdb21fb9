package plan

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// arranged is a plan with two hooks, a beam, a block, a basket, a choke and
// phases.
const arranged = `liftlint: 1
lift: {id: SQ-4, title: Turn a vessel up on end}
load:
  intended_attitude: {roll: 1.5 deg}
  bodies:
    - {id: shell, kind: round, axis: along, start: {x: 0 m, y: 1 m, z: 1 m}, length: 9 m, diameter: 2 m, surface: dry_steel}
    - {id: skirt, kind: box, axis: across, start: {x: 0 m, y: 0 m, z: 0 m}, width: 0.4 m, height: 0.3 m, edge_radius: 5 mm}
  attachments:
    - {id: C, kind: padeye, x: 8 m, y: 0 m, z: 1 m}
    - {id: D, kind: padeye, x: 8 m, y: 2 m, z: 1 m}
hooks:
  - {id: head, body_width: 120 mm, throat: 90 mm, latch: works}
  - {id: tail, x: 8.2 m, y: 1 m}
gear:
  - {id: RP1, kind: rocker_plate, points: [{id: top}, {id: low}]}
  - id: SB1
    kind: spreader_beam
    mass: 420 kg
    center_of_gravity: {x: 0 m, y: 0 m, z: 80 mm}
    rated_load: 20 t
    rated_compression: 90 kN
    rated_bending_moment: 12 kN m
    least_top_angle_from_horizontal: 45 deg
    points:
      - {id: tl, x: -2 m, y: 0 m, z: 0.2 m}
      - {id: tr, x: 2 m, y: 0 m, z: 0.2 m}
      - {id: left, x: -2 m, y: 0 m, z: -0.1 m, rated_load: 10 t, hole: 45 mm, thickness: 30 mm, hole_axis: across}
      - {id: right, x: 2 m, y: 0 m, z: -0.1 m}
  - {id: S1, kind: wire_rope_sling}
  - {id: S2, kind: wire_rope_sling}
  - {id: S3, kind: wire_rope_sling}
  - {id: S4, kind: wire_rope_sling}
  - {id: S5, kind: wire_rope_sling}
  - {id: K1, kind: shackle}
  - {id: K2, kind: shackle}
  - {id: K3, kind: shackle}
  - {id: LC1, kind: load_cell, length: 310 mm, rated_load: 12 t, steel: alloy}
  - {id: TB1, kind: turnbuckle, length: 1.2 m, shortest: 800 mm, longest: 1.1 m}
  - {id: BLK1, kind: sheave_block, length: 420 mm, sheave_diameter: 250 mm}
  - {id: G1, kind: grommet, laid: cable_laid, diameter: 60 mm, component_diameter: 20 mm, circumference: 8 m, faults_seen: [], tag: {condition: legible, rated_load: 20 t, choker_rated_load: 15 t, basket_rated_load: 40 t}}
rigging:
  - from: SB1.left
    legs:
      - {down: [S3], end: {kind: basket, round: {body: shell, station: 1.8 m, turns: 2, held_by: welded stop, softened: true}, up_to: SB1.right}}
  - from: SB1.right
    height_above_datum: 4.5 m
    legs:
      - {down: [S4, K3], end: {kind: choke, round: {body: shell, station: 7 m, choke_angle: 120 deg}}}
  - from: head
    legs:
      - {down: [S1, LC1, TB1], end: {kind: to, at: SB1.tl}}
      - {down: [G1], doubled: true, end: {kind: to, at: SB1.tr}}
  - from: tail
    by: [BLK1]
    legs:
      - {down: [K1, S5, K2], end: {kind: runs_to, at: [C, D]}}
phases:
  - {name: level, pitch: 0 deg}
  - {name: turning, pitch: 0 deg, until: 90 deg, step: 5 deg}
  - {name: upright, pitch: 90 deg, released: [tail]}
`

func TestSupports(t *testing.T) {
	p := good(t, arranged)
	if len(p.Supports) != 4 || len(p.Legs()) != 5 {
		t.Fatalf("%d supports, %d legs", len(p.Supports), len(p.Legs()))
	}
	left, right, head, tail := p.Supports[0], p.Supports[1], p.Supports[2], p.Supports[3]
	if head.Hook != 0 || tail.Hook != 1 || left.Hook != -1 || right.Hook != -1 || head.Point != nil {
		t.Errorf("hooks %d %d %d %d", head.Hook, tail.Hook, left.Hook, right.Hook)
	}
	if len(p.Beams) != 1 || p.Beams[0].Item.ID != "SB1" {
		t.Fatalf("beams in use: %+v", p.Beams)
	}
	points := p.Beams[0].Points
	if left.Point != &points[2] || right.Point != &points[3] || *right.Height != 4.5 || left.Height != nil {
		t.Errorf("%+v, %+v", left, right)
	}
	if head.Legs[0].End.Attachment != &points[0] || head.Legs[1].End.Attachment != &points[1] || head.Legs[0].End.Pointer != "/rigging/2/legs/0/end/at" {
		t.Errorf("%+v", head.Legs)
	}
	if !head.Legs[1].Doubled || head.Legs[0].Doubled || head.Legs[1].ID != "head/2" {
		t.Errorf("%+v", head.Legs[1])
	}
	if len(tail.By) != 1 || tail.By[0].Item.Base().ID != "BLK1" {
		t.Errorf("%+v", tail.By)
	}
}

func TestEnds(t *testing.T) {
	p := good(t, arranged)
	shell := &p.Load.Bodies[0]
	for _, c := range []struct {
		name string
		got  End
		want End
	}{
		{"basket", p.Supports[0].Legs[0].End, End{Pointer: "/rigging/0/legs/0/end/round", Kind: Basket, UpTo: ptr(1), Round: &Round{
			Pointer: "/rigging/0/legs/0/end/round", Body: shell, Station: 1.8, Turns: 2, HeldBy: "welded stop", Softened: true}}},
		{"choke", p.Supports[1].Legs[0].End, End{Pointer: "/rigging/1/legs/0/end/round", Kind: Choke, Round: &Round{
			Pointer: "/rigging/1/legs/0/end/round", Body: shell, Station: 7, Turns: 1, ChokeAngle: ptr(quantity.Angle(120))}}},
		{"runs", p.Supports[3].Legs[0].End, End{Pointer: "/rigging/3/legs/0/end", Kind: RunsTo, Attachment: &p.Load.Attachments[0], Second: &p.Load.Attachments[1]}},
	} {
		if diff := cmp.Diff(c.want, c.got); diff != "" {
			t.Errorf("%s: %s", c.name, diff)
		}
	}
	if p.Supports[0].Legs[0].End.Round.Body != shell {
		t.Error("the body is a copy")
	}
}

// TestOwnSupport: a basket that is said to go up to its own support is one that
// says nothing.
func TestOwnSupport(t *testing.T) {
	p := good(t, changedIn(t, arranged, "up_to: SB1.right", "up_to: SB1.left"))
	if up := p.Supports[0].Legs[0].End.UpTo; up != nil {
		t.Errorf("goes up to %d", *up)
	}
}

// TestBasketAlone: a support may hold nothing but the other end of a basket, and
// a basket may go through a point.
func TestBasketAlone(t *testing.T) {
	p := good(t, changedIn(t, arranged, "\n      - {down: [S4, K3], end: {kind: choke, round: {body: shell, station: 7 m, choke_angle: 120 deg}}}", " []"))
	if len(p.Supports[1].Legs) != 0 || *p.Supports[0].Legs[0].End.UpTo != 1 {
		t.Errorf("%+v", p.Supports)
	}
	p = good(t, changedIn(t, arranged, "round: {body: shell, station: 1.8 m, turns: 2, held_by: welded stop, softened: true}", "at: C"))
	if end := p.Supports[0].Legs[0].End; end.Kind != Basket || end.Attachment != &p.Load.Attachments[0] || end.Round != nil {
		t.Errorf("%+v", end)
	}
}

func TestDecodeHooksAndPhases(t *testing.T) {
	p := good(t, arranged)
	wantHooks := []Hook{
		{Pointer: "/hooks/0", ID: "head", BodyWidth: ptr(quantity.Length(0.12)), Throat: ptr(quantity.Length(0.09)), Latch: "works"},
		{Pointer: "/hooks/1", ID: "tail", X: ptr(quantity.Length(8.2)), Y: ptr(quantity.Length(1))},
	}
	if diff := cmp.Diff(wantHooks, p.Hooks); diff != "" {
		t.Error(diff)
	}
	wantPhases := []Phase{
		{Pointer: "/phases/0", Name: "level"},
		{Pointer: "/phases/1", Name: "turning", Until: ptr(quantity.Angle(90)), Step: ptr(quantity.Angle(5))},
		{Pointer: "/phases/2", Name: "upright", Pitch: 90, Released: []string{"tail"}},
	}
	if diff := cmp.Diff(wantPhases, p.Phases); diff != "" {
		t.Error(diff)
	}
}

// TestWhereTheOneHookStands: without a description, the hook is where the
// rigging names it, whichever entry that is.
func TestWhereTheOneHookStands(t *testing.T) {
	p := good(t, `
liftlint: 1
lift: {id: A, title: A}
load: {attachments: [{id: A, kind: padeye}]}
gear: [{id: S1, kind: wire_rope_sling}, {id: S2, kind: wire_rope_sling}, {id: RP1, kind: rocker_plate, points: [{id: top}, {id: low}]}]
rigging: [{from: RP1.low, legs: [{down: [S1], end: {kind: to, at: A}}]}, {from: hook, legs: [{down: [S2], end: {kind: to, at: RP1.top}}]}]
`)
	if diff := cmp.Diff([]Hook{{Pointer: "/rigging/1/from", ID: "hook"}}, p.Hooks); diff != "" {
		t.Error(diff)
	}
	if p.Supports[1].Hook != 0 || p.Beams[0].Item.Kind != gear.RockerPlateKind {
		t.Errorf("%+v", p)
	}
}

func TestDecodeBodiesAndAttitude(t *testing.T) {
	whole := changedIn(t, arranged, "intended_attitude: {", "intended_attitude: {pitch: -3 deg, ")
	l := good(t, whole[:strings.Index(whole, "phases:")]).Load
	want := []Body{
		{Pointer: "/load/bodies/0", ID: "shell", Round: true, Axis: "along", Start: Point{0, 1, 1}, Length: ptr(quantity.Length(9)), Diameter: ptr(quantity.Length(2)), Surface: "dry_steel"},
		{Pointer: "/load/bodies/1", ID: "skirt", Axis: "across", Width: ptr(quantity.Length(0.4)), Height: ptr(quantity.Length(0.3)), EdgeRadius: ptr(quantity.Length(0.005))},
	}
	if diff := cmp.Diff(want, l.Bodies); diff != "" {
		t.Error(diff)
	}
	if l.Pitch != -3 || l.Roll != 1.5 {
		t.Errorf("pitch %v, roll %v", l.Pitch, l.Roll)
	}
}

func TestDecodeBeam(t *testing.T) {
	b := good(t, arranged).Beams[0]
	want := &gear.Beam{
		Common:           gear.Common{ID: "SB1", Kind: gear.SpreaderBeamKind, Pointer: "/gear/1", Mass: ptr(quantity.Mass(420))},
		CenterOfGravity:  &gear.Position{Z: 0.08},
		RatedLoad:        &quantity.Load{Newtons: 20 * 9806.65, Unit: "t"},
		RatedCompression: &quantity.Load{Newtons: 90e3, Unit: "kN"},
		RatedBending:     ptr(quantity.Moment(12e3)),
		LeastTopAngle:    ptr(quantity.Angle(45)),
	}
	if diff := cmp.Diff(want, b.Item); diff != "" {
		t.Error(diff)
	}
	wantPoint := Attachment{
		Pointer: "/gear/1/points/2", Beam: b.Item, ID: "SB1.left", Kind: Padeye, At: &Point{-2, 0, -0.1},
		RatedLoad: &quantity.Load{Newtons: 10 * 9806.65, Unit: "t"},
		Hole:      ptr(quantity.Length(0.045)), Thickness: ptr(quantity.Length(0.03)), HoleAxis: "across",
	}
	if diff := cmp.Diff(wantPoint, b.Points[2]); diff != "" {
		t.Error(diff)
	}
}

func TestDecodePartsInLine(t *testing.T) {
	p := good(t, arranged)
	find := func(id string) gear.Item {
		for _, item := range p.Gear {
			if item.Base().ID == id {
				return item
			}
		}
		t.Fatalf("no %s", id)
		return nil
	}
	for _, c := range []struct {
		got, want gear.Item
	}{
		{find("LC1"), &gear.InLine{Length: ptr(quantity.Length(0.31)), RatedLoad: &quantity.Load{Newtons: 12 * 9806.65, Unit: "t"}, Steel: "alloy"}},
		// A length that it can't be set to is for a rule to find.
		{find("TB1"), &gear.InLine{Length: ptr(quantity.Length(1.2)), Shortest: ptr(quantity.Length(0.8)), Longest: ptr(quantity.Length(1.1))}},
		{find("BLK1"), &gear.InLine{Length: ptr(quantity.Length(0.42)), SheaveDiameter: ptr(quantity.Length(0.25))}},
	} {
		*c.want.Base() = *c.got.Base()
		if diff := cmp.Diff(c.want, c.got); diff != "" {
			t.Errorf("%s: %s", c.got.Base().ID, diff)
		}
	}
	g := find("G1").(*gear.Grommet)
	half, _ := g.Bearing()
	if g.Laid != "cable_laid" || *g.Diameter != 0.06 || *g.Component != 0.02 || *g.Circumference != 8 || *half != 4 || !g.LookedOver {
		t.Errorf("%+v", g)
	}
	if !cmp.Equal(g.Tag.Shows, []string{"rated_load", "choker_rated_load", "basket_rated_load"}) || !near(g.Tag.ChokerRatedLoad.Newtons, 15*9806.65) || !near(g.Tag.BasketRatedLoad.Newtons, 40*9806.65) {
		t.Errorf("%+v", g.Tag)
	}
}

// TestPinsInBeams: a shackle that hangs in a point of a beam has its pin in the
// plate there, unless the plan says otherwise; another has it where the plan does.
func TestPinsInBeams(t *testing.T) {
	hung := func(pairs ...string) gear.End {
		p := good(t, changedIn(t, arranged, pairs...))
		return p.Supports[1].Legs[0].Down[0].Item.(*gear.Shackle).Pin
	}
	first := []string{"{down: [S4, K3], end: {kind: choke", "{down: [K3, S4], end: {kind: choke"}
	if pin := hung(first...); pin != gear.UpperEnd {
		t.Errorf("pin %q", pin)
	}
	if pin := hung(append(first, "- {id: K3, kind: shackle}", "- {id: K3, kind: shackle, pin: lower}")...); pin != gear.LowerEnd {
		t.Errorf("pin %q, though the plan says lower", pin)
	}
	p := good(t, arranged)
	if k := p.Supports[3].Legs[0].Down[0].Item.(*gear.Shackle); k.Pin != "" {
		t.Errorf("the pin of K1, which hangs from no beam, is %q", k.Pin)
	}
}
