package compute

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
)

// thimbledRopes is what a thimbled eye takes side by side, in rope diameters:
// the rope lies in the thimble's groove, whose walls stand out on both sides of
// it (common practice; how thick they are, no plan says).
const thimbledRopes = 1.5

const socketEye = "socket"

// eye is the fit of a sling's eye, end being upper or lower, over a surface.
func (w *work) eye(where string, s *gear.WireRopeSling, end string, e gear.Eye, over surface) {
	if e.Kind == socketEye {
		w.socket(where, s, end, e, over)
		return
	}
	w.over(where, s, end, e, over)
	if over.kind == onPin || over.kind == onBow || over.kind == onLink {
		w.inOpening(where, s, end, e, over)
	}
}

func eyeFit(where string, s *gear.WireRopeSling, end, what string, e gear.Eye, over surface) facts.Fit {
	return facts.Fit{
		Record:        facts.Record{Key: "fit/" + where + "/" + s.ID + "/" + end, At: at(e.Pointer)},
		What:          what,
		Inner:         s.ID + "'s " + end + " eye",
		Outer:         over.name,
		EyeWidthM:     number(e.Width),
		EyeWidthGiven: e.Width != nil,
	}
}

// over is an eye of rope, soft or with a thimble, over something.
func (w *work) over(where string, s *gear.WireRopeSling, end string, e gear.Eye, over surface) {
	f := eyeFit(where, s, end, "eye_over_"+over.kind, e, over)
	f.Thimble, f.ThimbleSizeGiven = e.Thimble, e.ThimbleSize != nil
	f.BothClosed = over.eye
	field := "eyes." + end + "."
	if f.Thimble {
		w.wait(f.Key, []facts.Input{input(e.Pointer, field+"width", "the inside width of the thimble in "+f.Inner)}, absent(f, "eye_width_m")...)
	}
	length := given(e.Length, e.Pointer, "length", "", "")
	if e.Length == nil {
		length.needs = []facts.Input{input(e.Pointer, field+"length", f.Inner+" length")}
	}
	f.EyeLengthM = w.take(f.Key, e.Pointer, length, "eye_length_m", "width_over_length_ratio", "eye_included_angle_deg")
	f.BodyWidthM = w.take(f.Key, e.Pointer, over.thick, "body_width_m", "width_over_length_ratio", "eye_included_angle_deg", "bend_d")
	if f.WidthOverLengthRatio = ratio(f.BodyWidthM, f.EyeLengthM); f.WidthOverLengthRatio != nil {
		f.EyeIncludedAngleDeg = ptr(capacity.EyeIncludedAngleDeg(*f.EyeLengthM, *f.BodyWidthM))
	}
	w.bend(&f, s, e)
	w.out.Document.Fits = append(w.out.Document.Fits, f)
}

// bend adds to an eye what depends on the rope's diameter.
func (w *work) bend(f *facts.Fit, s *gear.WireRopeSling, e gear.Eye) {
	fields := []string{"rope_diameter_m"}
	if f.ThimbleSizeGiven {
		fields = append(fields, "thimble_over_rope_ratio")
	}
	// D/d of a braided sling goes by its component, what passes by its body.
	size := sizeOf(s)
	f.BendD = ratio(f.BodyWidthM, w.take(f.Key, s.Pointer, size, "bend_d"))
	f.RopeDiameterM = number(s.Diameter)
	if f.RopeDiameterM == nil {
		w.wait(f.Key, diameterNeed(s), fields...)
		return
	}
	f.ThimbleOverRopeRatio = ratio(number(e.ThimbleSize), f.RopeDiameterM)
}

// inOpening is an eye between the ears of a shackle, or inside a bow or a link.
func (w *work) inOpening(where string, s *gear.WireRopeSling, end string, e gear.Eye, over surface) {
	f := eyeFit(where, s, end+"/in", eyeIn(over), e, over)
	f.Inner, f.Outer, f.Thimble = s.ID+"'s "+end+" eye", over.opening(), e.Thimble
	w.fill(f, e.Pointer, ropeWidth(s, e), over.room)
}

func eyeIn(over surface) string {
	if over.kind == onPin {
		return "eye_in_jaw"
	}
	return "eye_in_opening"
}

// ropeWidth is the width that an eye of rope takes beside others.
func ropeWidth(s *gear.WireRopeSling, e gear.Eye) measure {
	if s.Diameter == nil {
		return measure{needs: diameterNeed(s)}
	}
	m := measure{m: number(s.Diameter), at: s.Pointer + "/diameter", caption: "the rope of " + s.ID}
	if e.Thimble {
		return m.times(thimbledRopes)
	}
	return m
}

// socket is a fitting on the end of the rope: what it goes over has to go into
// its opening.
func (w *work) socket(where string, s *gear.WireRopeSling, end string, e gear.Eye, over surface) {
	f := eyeFit(where, s, end, "body_in_socket", e, over)
	f.Inner, f.Outer = over.name, s.ID+"'s "+end+" socket"
	room := measure{m: number(e.Width), at: e.Pointer + "/width"}
	if e.Width == nil {
		room.needs = []facts.Input{input(e.Pointer, "eyes."+end+".width", "the inside width of "+f.Outer)}
	}
	w.fill(f, e.Pointer, over.thick, room)
}
