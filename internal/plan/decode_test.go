package plan

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

const full = `liftlint: 1
lift: {id: SQ-2, title: Lift a valve, date: 2026-12-04, category: critical, units: us, profile: eu}
load:
  mass: 1000 lb
  mass_known_by: weighed
  mass_tolerance: 5 %
  center_of_gravity: {x: 1 ft, y: -6 in, z: 0 m}
  attachments:
    - {id: A, kind: padeye, x: 1 m, y: 2 m, z: 3 m, rated_load: 1 short_ton}
    - {id: B, kind: padeye, y: 2 m}
crane: {hook: {body_width: 100 mm}}
gear:
  - id: S1
    kind: wire_rope_sling
    class: 6x36
    core: fiber
    diameter: 1/2 in
    length: 10 ft
    mass: 3 kg
    eyes: {upper: {thimble: true, length: 200 mm}, lower: {length: 8 in}}
    tag: {condition: legible, legs: 2.0, rated_load: 2 short_ton, angle_from_horizontal: 60 deg, hitch: vertical}
    inspection: {date: 2026-02-28, next_due: 2026-12-31}
  - {id: K1, kind: shackle, rated_load: 3 t, inside_length: 50 mm, inspection: {date: 2026-01-31, service: severe}}
  - {id: M1, kind: master_link, rated_load: 4 t, inside_length: 150 mm, section_diameter: 22 mm}
rigging:
  - {from: hook, by: [M1], legs: [{down: [S1, K1], end: {kind: to, at: A}}]}
`

func ptr[T any](v T) *T { return &v }

func day(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 0, 0, 0, 0, time.UTC) }

// The pound, the inch and the short ton are exact: NIST SP 811, appendix B.
const (
	pound = 0.45359237
	inch  = 0.0254
)

func TestDecodeLiftAndLoad(t *testing.T) {
	p := good(t, full)
	wantLift := Lift{ID: "SQ-2", Title: "Lift a valve", Date: ptr(day(2026, 12, 4)), Category: "critical", Units: quantity.US, Profile: "eu"}
	if diff := cmp.Diff(wantLift, p.Lift); diff != "" {
		t.Error(diff)
	}
	l := p.Load
	if *l.Mass != 1000*pound || l.MassKnownBy != "weighed" || *l.MassTolerance != 0.05 {
		t.Errorf("%v %v %v", *l.Mass, l.MassKnownBy, *l.MassTolerance)
	}
	if diff := cmp.Diff(Point{X: 12 * inch, Y: -6 * inch, Z: 0}, *l.CenterOfGravity); diff != "" {
		t.Error(diff)
	}
	a, b := l.Attachments[0], l.Attachments[1]
	if a.Pointer != "/load/attachments/0" || *a.At != (Point{1, 2, 3}) || a.Lacks != nil || !near(a.RatedLoad.Newtons, 2000*pound*9.80665) {
		t.Errorf("%+v", a)
	}
	if b.At != nil || !cmp.Equal(b.Lacks, []string{"x", "z"}) || b.RatedLoad != nil {
		t.Errorf("%+v", b)
	}
	if p.Hooks[0].Pointer != "/crane/hook" || *p.Hooks[0].BodyWidth != 0.1 {
		t.Errorf("%+v", p.Hooks[0])
	}
}

func near(x, y float64) bool { return x > y*(1-1e-12) && x < y*(1+1e-12) }

func TestDecodeGear(t *testing.T) {
	p := good(t, full)
	s := p.Gear[0].(*gear.WireRopeSling)
	if s.Class != "6x36" || s.Core != gear.CoreFiber || *s.Diameter != inch/2 || *s.Length != 120*inch || *s.Mass != 3 || s.Pointer != "/gear/0" {
		t.Errorf("%+v", s)
	}
	wantUpper := gear.Eye{Pointer: "/gear/0/eyes/upper", Thimble: true, Length: ptr(quantity.Length(0.2))}
	wantLower := gear.Eye{Pointer: "/gear/0/eyes/lower", Length: ptr(quantity.Length(8 * inch))}
	if diff := cmp.Diff([]gear.Eye{wantUpper, wantLower}, []gear.Eye{s.Upper, s.Lower}); diff != "" {
		t.Error(diff)
	}
	tag := s.Tag
	if !cmp.Equal(tag.Shows, []string{"rated_load", "hitch", "angle_from_horizontal", "legs"}) || *tag.Legs != 2 || *tag.AngleFromHorizontal != 60 {
		t.Errorf("%+v", tag)
	}
	wantInspection := gear.Inspection{Pointer: "/gear/0/inspection", Date: day(2026, 2, 28), Service: gear.NormalService, NextDue: ptr(day(2026, 12, 31))}
	if diff := cmp.Diff(wantInspection, *s.Inspection); diff != "" {
		t.Error(diff)
	}
	k, m := p.Gear[1].(*gear.Shackle), p.Gear[2].(*gear.Link)
	if k.Inspection.Service != gear.SevereService || k.Inspection.NextDue != nil || k.Tag != nil || *k.InsideLength != 0.05 {
		t.Errorf("%+v", k)
	}
	if *m.SectionDiameter != 0.022 || *m.InsideLength != 0.15 || !near(m.RatedLoad.Newtons, 4000*9.80665) {
		t.Errorf("%+v", m)
	}
}

// TestLeftOut: nothing is made up for what a plan does not say, but for the
// choices that the format states.
func TestLeftOut(t *testing.T) {
	p := good(t, `
liftlint: 1
lift: {id: A, title: A}
load: {attachments: [{id: A, kind: padeye}]}
gear: [{id: S1, kind: wire_rope_sling}]
rigging: [{from: hook, legs: [{down: [S1], end: {kind: to, at: A}}]}]
`)
	if diff := cmp.Diff(Lift{ID: "A", Title: "A", Category: "routine", Units: quantity.Metric}, p.Lift); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff(Load{Attachments: []Attachment{{Pointer: "/load/attachments/0", ID: "A", Kind: "padeye", Lacks: []string{"x", "y", "z"}}}}, p.Load); diff != "" {
		t.Error(diff)
	}
	want := &gear.WireRopeSling{
		Common: gear.Common{ID: "S1", Kind: gear.WireRopeSlingKind, Pointer: "/gear/0"},
		Body:   gear.SinglePart,
		Upper:  gear.Eye{Pointer: "/gear/0"}, Lower: gear.Eye{Pointer: "/gear/0"},
	}
	if diff := cmp.Diff(want, p.Gear[0]); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff(Hook{Pointer: "/rigging/0/from", ID: "hook"}, p.Hooks[0]); diff != "" {
		t.Error(diff)
	}
}

// TestDecodeSaysWhatTheSchemasMissed: a document that has not passed its
// schemas gives an error at the first value that can't be read, no plan made
// up of the rest.
func TestDecodeSaysWhatTheSchemasMissed(t *testing.T) {
	for _, pair := range [][2]string{
		{"mass: 2 t", "mass: heavy"},
		{"length: 2 m", "length: 2"},
		{"title: Set a pump", "title: x, date: 2026-02-30"},
		{"kind: shackle", "kind: rope"},
		{"length: 2 m", "length: 2 m, tag: {condition: legible, legs: 1.5}"},
		{"length: 2 m", "length: 2 m, tag: {condition: legible, legs: 1e400}"},
	} {
		doc, faults := yamldoc.Read("plan", []byte(changed(t, pair[0], pair[1])))
		if len(faults) > 0 {
			continue // even better
		}
		p, faults, err := Decode(doc)
		if p != nil || len(faults) > 0 || err == nil {
			t.Errorf("%s: %v, %v, %v", pair[1], p, faults, err)
		}
	}
}
