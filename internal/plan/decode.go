package plan

import (
	"fmt"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

// Decode reads a plan from a document that has passed its schemas. Faults are
// ids given twice, references that lead nowhere and items that can't work where
// they stand, in the order of the file; with any of them the plan is nil. The
// error says that the schemas let something through that can't be
// read, which is a fault of the tool.
func Decode(doc *yamldoc.Document) (*Plan, []yamldoc.Fault, error) {
	var err error
	root := fields{doc.Root(), &err}
	p := &Plan{
		Lift: decodeLift(root.of("lift")),
		Load: decodeLoad(root.of("load")),
		Hook: decodeHook(root),
		Gear: decodeGear(root.of("gear")),
	}
	link := newLinker(p, root)
	p.Support = link.support(root.of("rigging").items())
	if err != nil {
		return nil, nil, err
	}
	if len(link.faults) > 0 {
		return nil, link.sorted(), nil
	}
	return p, nil, nil
}

func decodeLift(f fields) Lift {
	l := Lift{
		ID:       f.text("id"),
		Title:    f.text("title"),
		Date:     f.day("date"),
		Category: f.text("category"),
		Units:    quantity.Metric,
		Profile:  f.text("profile"),
	}
	if l.Category == "" {
		l.Category = "routine"
	}
	if f.text("units") == "us" {
		l.Units = quantity.US
	}
	return l
}

func decodeLoad(f fields) Load {
	l := Load{
		Mass:          f.mass("mass"),
		MassKnownBy:   f.text("mass_known_by"),
		MassTolerance: f.ratio("mass_tolerance"),
	}
	if c := f.of("center_of_gravity"); c.exists() {
		l.CenterOfGravity, _ = decodePoint(c)
	}
	for _, a := range f.of("attachments").items() {
		at, lacks := decodePoint(a)
		l.Attachments = append(l.Attachments, Attachment{
			Pointer:   a.pointer(),
			ID:        a.text("id"),
			Kind:      a.text("kind"),
			At:        at,
			Lacks:     lacks,
			RatedLoad: a.load("rated_load"),
		})
	}
	return l
}

// decodePoint returns the point, or the names of the coordinates it lacks.
func decodePoint(f fields) (*Point, []string) {
	var p Point
	var lacks []string
	for _, c := range []struct {
		name string
		to   *quantity.Length
	}{{"x", &p.X}, {"y", &p.Y}, {"z", &p.Z}} {
		if v := f.length(c.name); v != nil {
			*c.to = *v
		} else {
			lacks = append(lacks, c.name)
		}
	}
	if len(lacks) > 0 {
		return nil, lacks
	}
	return &p, nil
}

func decodeHook(root fields) Hook {
	h := root.of("crane").of("hook")
	return Hook{
		Pointer:   h.pointerOr(root.of("crane").pointerOr("/rigging/0/from")),
		BodyWidth: h.length("body_width"),
	}
}

func decodeGear(f fields) []gear.Item {
	var items []gear.Item
	for _, g := range f.items() {
		items = append(items, decodeItem(g))
	}
	return items
}

func decodeItem(f fields) gear.Item {
	common := gear.Common{
		ID:         f.text("id"),
		Kind:       gear.Kind(f.text("kind")),
		Pointer:    f.pointer(),
		Mass:       f.mass("mass"),
		Tag:        decodeTag(f.of("tag")),
		Inspection: decodeInspection(f.of("inspection")),
	}
	switch common.Kind {
	case gear.WireRopeSlingKind:
		return decodeWireRopeSling(f, common)
	case gear.ShackleKind:
		return &gear.Shackle{Common: common, RatedLoad: f.load("rated_load"), InsideLength: f.length("inside_length")}
	case gear.MasterLinkKind:
		return &gear.MasterLink{
			Common:          common,
			RatedLoad:       f.load("rated_load"),
			InsideLength:    f.length("inside_length"),
			SectionDiameter: f.length("section_diameter"),
		}
	}
	*f.err = fmt.Errorf("plan: no reader for gear of kind %q", common.Kind)
	return &gear.Shackle{Common: common}
}

func decodeWireRopeSling(f fields, common gear.Common) gear.Item {
	return &gear.WireRopeSling{
		Common:   common,
		Class:    f.text("class"),
		Core:     gear.Core(f.text("core")),
		Diameter: f.length("diameter"),
		Length:   f.length("length"),
		Upper:    decodeEye(f, "upper"),
		Lower:    decodeEye(f, "lower"),
	}
}

func decodeEye(sling fields, end string) gear.Eye {
	eyes := sling.of("eyes")
	e := eyes.of(end)
	return gear.Eye{
		Pointer: e.pointerOr(eyes.pointerOr(sling.pointer())),
		Kind:    e.text("kind"),
		Thimble: e.truth("thimble"),
		Length:  e.length("length"),
		Width:   e.length("width"),
	}
}

func decodeTag(f fields) *gear.Tag {
	if !f.exists() {
		return nil
	}
	t := &gear.Tag{
		Pointer:             f.pointer(),
		Condition:           gear.Condition(f.text("condition")),
		RatedLoad:           f.load("rated_load"),
		Diameter:            f.length("diameter"),
		AngleFromHorizontal: f.angle("angle_from_horizontal"),
		Legs:                f.count("legs"),
		DesignFactor:        f.number("design_factor"),
	}
	for _, name := range gear.TagFields() {
		if f.of(name).exists() {
			t.Shows = append(t.Shows, name)
		}
	}
	return t
}

func decodeInspection(f fields) *gear.Inspection {
	if !f.exists() {
		return nil
	}
	i := &gear.Inspection{Pointer: f.pointer(), Service: gear.Service(f.text("service")), NextDue: f.day("next_due")}
	if i.Service == "" {
		i.Service = gear.NormalService
	}
	if d := f.day("date"); d != nil {
		i.Date = *d
	}
	return i
}
