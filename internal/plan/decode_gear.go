package plan

import (
	"fmt"

	"liftlint/internal/gear"
)

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
		Labels:     f.labels("labels"),
	}
	switch common.Kind {
	case gear.WireRopeSlingKind:
		return decodeWireRopeSling(f, common)
	case gear.BridleKind: // its members are linked once all are read
		return &gear.Bridle{Common: common}
	case gear.ShackleKind:
		return decodeShackle(f, common)
	case gear.MasterLinkKind, gear.IntermediateLinkKind:
		return decodeLink(f, common)
	case gear.HookKind:
		return decodeSlingHook(f, common)
	case gear.GrommetKind:
		return decodeGrommet(f, common)
	case gear.SpreaderBeamKind, gear.LiftingBeamKind, gear.RockerPlateKind:
		return decodeBeam(f, common)
	case gear.LoadCellKind, gear.TurnbuckleKind, gear.SheaveBlockKind:
		return decodeInLine(f, common)
	}
	*f.err = fmt.Errorf("plan: no reader for gear of kind %q", common.Kind)
	return &gear.Shackle{Common: common}
}

func decodeShackle(f fields, common gear.Common) gear.Item {
	return &gear.Shackle{
		Common:       common,
		Pattern:      f.text("pattern"),
		PinKind:      f.text("pin_kind"),
		Pin:          gear.End(f.text("pin")),
		RatedLoad:    f.load("rated_load"),
		InsideLength: f.length("inside_length"),
		Jaw:          f.length("jaw"),
		PinDiameter:  f.length("pin_diameter"),
		BowDiameter:  f.length("bow_diameter"),
		InsideWidth:  f.length("inside_width"),
		Spacers:      f.truth("spacers"),
		Steel:        f.text("steel"),
	}
}

func decodeLink(f fields, common gear.Common) gear.Item {
	return &gear.Link{
		Common:          common,
		Shape:           f.text("shape"),
		RatedLoad:       f.load("rated_load"),
		InsideLength:    f.length("inside_length"),
		InsideWidth:     f.length("inside_width"),
		UpperWidth:      f.length("upper_width"),
		SectionDiameter: f.length("section_diameter"),
		Steel:           f.text("steel"),
	}
}

func decodeSlingHook(f fields, common gear.Common) gear.Item {
	h := &gear.Hook{
		Common:       common,
		MadeFor:      f.text("made_for"),
		RatedLoad:    f.load("rated_load"),
		InsideLength: f.length("inside_length"),
		EyeDiameter:  f.length("eye_diameter"),
		BodyWidth:    f.length("body_width"),
		Throat:       f.length("throat"),
		Latch:        f.text("latch"),
		Points:       f.text("points"),
		Steel:        f.text("steel"),
	}
	if h.MadeFor == "" {
		h.MadeFor = "lifting"
	}
	return h
}

func decodeInLine(f fields, common gear.Common) gear.Item {
	return &gear.InLine{
		Common:         common,
		Length:         f.length("length"),
		Shortest:       f.length("shortest"),
		Longest:        f.length("longest"),
		SheaveDiameter: f.length("sheave_diameter"),
		RatedLoad:      f.load("rated_load"),
		Steel:          f.text("steel"),
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
		ChokerRatedLoad:     f.load("choker_rated_load"),
		BasketRatedLoad:     f.load("basket_rated_load"),
		Diameter:            f.length("diameter"),
		AngleFromHorizontal: f.angle("angle_from_horizontal"),
		Legs:                f.count("legs"),
		RatedFor:            gear.RatedFor(f.text("rated_for")),
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
