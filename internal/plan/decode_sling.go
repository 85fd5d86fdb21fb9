package plan

import "liftlint/internal/gear"

func decodeWireRopeSling(f fields, common gear.Common) gear.Item {
	s := &gear.WireRopeSling{
		Common:          common,
		Rope:            decodeRope(f),
		Body:            gear.Body(f.text("body")),
		Parts:           f.count("parts"),
		Component:       f.length("component_diameter"),
		Length:          f.length("length"),
		LengthTolerance: f.length("length_tolerance"),
		Upper:           decodeEye(f, "upper"),
		Lower:           decodeEye(f, "lower"),
	}
	if s.Body == "" {
		s.Body = gear.SinglePart
	}
	return s
}

func decodeEye(sling fields, end string) gear.Eye {
	eyes := sling.of("eyes")
	e := eyes.of(end)
	return gear.Eye{
		Pointer:      e.pointerOr(eyes.pointerOr(sling.pointer())),
		Kind:         e.text("kind"),
		Thimble:      e.truth("thimble"),
		Length:       e.length("length"),
		Width:        e.length("width"),
		ThimbleSize:  e.length("thimble_size"),
		SpliceLength: e.length("splice_length"),
		Sleeve:       e.text("sleeve"),
	}
}

func decodeRope(f fields) gear.Rope {
	return gear.Rope{
		Class:        f.text("class"),
		Construction: f.text("construction"),
		Core:         gear.Core(f.text("core")),
		Grade:        f.text("grade"),
		Finish:       f.text("finish"),
		Lay:          f.text("lay"),
		Diameter:     f.length("diameter"),
	}
}

func decodeGrommet(f fields, common gear.Common) gear.Item {
	return &gear.Grommet{
		Common:        common,
		Rope:          decodeRope(f),
		Laid:          f.text("laid"),
		Circumference: f.length("circumference"),
		Component:     f.length("component_diameter"),
		BreakingLoad:  f.load("breaking_load"),
		BreakingParts: f.count("breaking_load_is_for_parts"),
		SpliceAt:      f.length("splice_at"),
		Sleeve:        f.text("sleeve"),
	}
}

func decodeTagRatedSling(f fields, common gear.Common) gear.Item {
	return &gear.TagRatedSling{
		Common:          common,
		Length:          f.length("length"),
		LengthTolerance: f.length("length_tolerance"),
		Size:            f.length("size"),
		Grade:           f.text("grade"),
		Fittings:        f.text("fittings"),
		Material:        f.text("material"),
		Width:           f.length("width"),
		Thickness:       f.length("thickness"),
		EndLength:       f.length("end_length"),
		EyeLength:       f.length("eye_length"),
		EyeWidth:        f.length("eye_width"),
		HandleWidth:     f.length("handle_width"),
		HandleThickness: f.length("handle_thickness"),
		Endless:         f.truth("endless"),
		Coating:         f.text("coating"),
	}
}
