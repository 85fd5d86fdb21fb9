package plan

import "liftlint/internal/quantity"

func decodeLoad(f fields) Load {
	l := Load{
		Mass:                f.mass("mass"),
		MassKnownBy:         f.text("mass_known_by"),
		MassTolerance:       f.ratio("mass_tolerance"),
		Contents:            decodeContents(f.of("contents")),
		TurningHeldBy:       f.text("turning_held_by"),
		Freed:               f.text("freed"),
		StrengthConfirmedBy: f.text("strength_confirmed_by"),
	}
	if s := f.of("size"); s.exists() {
		l.Size = &Size{*orZero(s.length("length")), *orZero(s.length("width")), *orZero(s.length("height"))}
	}
	if c := f.of("center_of_gravity"); c.exists() {
		l.CenterOfGravity, _ = decodePoint(c)
		l.CenterTolerance = decodeTolerance(c)
	}
	for _, a := range f.of("attachments").items() {
		l.Attachments = append(l.Attachments, decodeAttachment(a))
	}
	for _, b := range f.of("bodies").items() {
		l.Bodies = append(l.Bodies, decodeBody(b))
	}
	attitude := f.of("intended_attitude")
	l.Pitch, l.Roll = *orZero(attitude.angle("pitch")), *orZero(attitude.angle("roll"))
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

func decodeContents(f fields) *Contents {
	if !f.exists() {
		return nil
	}
	return &Contents{
		Pointer:    f.pointer(),
		State:      f.text("state"),
		Hazardous:  f.yesOrNo("hazardous"),
		Precaution: f.text("precaution"),
	}
}

func decodeBody(f fields) Body {
	start, _ := decodePoint(f.of("start"))
	return Body{
		Pointer:    f.pointer(),
		ID:         f.text("id"),
		Round:      f.text("kind") == "round",
		Axis:       f.text("axis"),
		Start:      *orZero(start),
		Length:     f.length("length"),
		Diameter:   f.length("diameter"),
		Width:      f.length("width"),
		Height:     f.length("height"),
		EdgeRadius: f.length("edge_radius"),
		Surface:    f.text("surface"),
	}
}

func decodeAttachment(f fields) Attachment {
	at, lacks := decodePoint(f)
	a := Attachment{
		Pointer:               f.pointer(),
		ID:                    f.text("id"),
		Kind:                  f.text("kind"),
		At:                    at,
		Lacks:                 lacks,
		RatedLoad:             f.load("rated_load"),
		Hole:                  f.length("hole"),
		Thickness:             f.length("thickness"),
		HoleAxis:              f.text("hole_axis"),
		Axis:                  f.text("axis"),
		TurnedInPlan:          *orZero(f.angle("turned_in_plan")),
		Spare:                 f.truth("spare"),
		RatedToFromPlane:      f.angle("rated_to_angle_from_plane"),
		RatedToFromAxis:       f.angle("rated_to_angle_from_axis"),
		RatedToFromHorizontal: f.angle("rated_to_angle_from_horizontal"),
		Pattern:               f.text("pattern"),
		Seated:                f.yesOrNo("seated"),
		Insert: Insert{
			Panel:                f.text("panel"),
			BreakingLoad:         f.load("breaking_load"),
			HardwareBreakingLoad: f.load("hardware_breaking_load"),
			StrengthNeeded:       f.pressure("concrete_strength_needed"),
			Strength:             f.pressure("concrete_strength"),
		},
	}
	for _, r := range f.of("rated_at").items() {
		a.RatedAt = append(a.RatedAt, AngleRating{*orZero(r.angle("angle_from_axis")), *orZero(r.load("rated_load"))})
	}
	return a
}

// decodeTolerance reads how far a center of gravity may lie from its place: one
// figure for all axes, or one of its own for some; nil where there is none.
func decodeTolerance(f fields) *Point {
	var t Point
	given := false
	for name, to := range map[string]*quantity.Length{"tolerance_x": &t.X, "tolerance_y": &t.Y, "tolerance_z": &t.Z} {
		for _, key := range []string{name, "tolerance"} {
			if v := f.length(key); v != nil {
				*to, given = *v, true
				break
			}
		}
	}
	if !given {
		return nil
	}
	return &t
}
