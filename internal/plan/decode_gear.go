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
		FaultsSeen: f.texts("faults_seen"),
		LookedOver: f.of("faults_seen").exists(),
	}
	return itemOfKind(f, common)
}

// itemOfKind reads what the kind of an item has of its own.
func itemOfKind(f fields, common gear.Common) gear.Item {
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
	case gear.ChainSlingKind, gear.WebSlingKind, gear.RoundSlingKind, gear.MeshSlingKind:
		return decodeTagRatedSling(f, common)
	case gear.SpreaderBeamKind, gear.LiftingBeamKind, gear.RockerPlateKind, gear.LiftingDeviceKind:
		return decodeBeam(f, common)
	case gear.LoadCellKind, gear.TurnbuckleKind, gear.AdjusterKind, gear.SwivelKind, gear.SheaveBlockKind:
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
		Secured:      f.truth("pin_secured"),
		LeftInPlace:  f.truth("left_in_place"),
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
