package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// surface is one end of a fitting, where the next part bears.
type surface struct {
	kind  string // hook, link, bow, pin, fitting, point, or shackle where its pin may be at either end
	name  string
	at    string           // pointer of the part
	point *plan.Attachment // of a beam
	thick measure          // of what an eye goes round
	room  measure          // clear width inside it
	eye   bool             // whether it is the closed eye of a part in line
}

// The kinds of surface.
const (
	onHook    = "hook"
	onLink    = "link"
	onBow     = "bow"
	onPin     = "pin"
	onShackle = "shackle"
	onFitting = "fitting"
	onPoint   = "point" // of a beam: a plate with a hole
	onLoop    = "loop"  // of an endless or a flat sling, which is as wide as need be
	onChain   = "chain" // the coupling at its end, of unknown width inside
)

func (w *work) craneHook(h plan.Hook) surface {
	name := w.hookName(h)
	return surface{
		kind:  onHook,
		name:  name,
		at:    h.Pointer,
		thick: measureOf(w.hookInput(h, "body_width", "the width of "+name+"'s section"), number(h.BodyWidth), h.Pointer+"/body_width", "the width of "+name),
		room:  measureOf(w.hookInput(h, "throat", "the throat of "+name), number(h.Throat), h.Pointer+"/throat", "the throat of "+name),
	}
}

// hookName is what a hook is called among others.
func (w *work) hookName(h plan.Hook) string {
	if len(w.plan.Hooks) == 1 {
		return "the crane hook"
	}
	return "hook " + h.ID
}

// hookInput is something that the plan could say of a hook: below the crane, or
// in the list of hooks.
func (w *work) hookInput(h plan.Hook, field, label string) facts.Input {
	if len(w.plan.Hooks) == 1 {
		field = "crane.hook." + field
	}
	return input(h.Pointer, field, label)
}

// measureOf is a measure whose input does not stand below where it is missed.
func measureOf(in facts.Input, m *float64, pointer, caption string) measure {
	if m == nil {
		return measure{needs: []facts.Input{in}}
	}
	return measure{m: m, at: pointer, caption: caption}
}

// pinOf is the end of a shackle at which its pin is: where the plan does not
// say, the lowest of a leg has it in the attachment.
func pinOf(s *gear.Shackle, lowest bool) gear.End {
	if s.Pin == "" && lowest {
		return gear.LowerEnd
	}
	return s.Pin
}

// surfaceOf is an end of a fitting as it hangs; lowest says that it is the last
// part of a leg.
func surfaceOf(item gear.Item, end gear.End, lowest bool) surface {
	base := item.Base()
	switch x := item.(type) {
	case *gear.Shackle:
		return shackleEnd(x, end, pinOf(x, lowest))
	case *gear.Link:
		return surface{
			kind: onLink, name: base.ID, at: base.Pointer,
			thick: given(x.SectionDiameter, base.Pointer, "section_diameter", base.ID+"'s section diameter", "the section of "+base.ID),
			room:  given(x.InsideWidth, base.Pointer, "inside_width", base.ID+"'s inside width", "the inside width of "+base.ID),
		}
	case *gear.Grommet:
		return surface{
			kind: onLoop, name: base.ID, at: base.Pointer,
			thick: given(x.Diameter, base.Pointer, "diameter", base.ID+"'s diameter", "the body of "+base.ID),
		}
	case *gear.InLine:
		return inLineEnd(x, end)
	case *gear.TagRatedSling:
		return slingEnd(x)
	case *gear.Hook:
		return surface{
			kind: onFitting, name: base.ID + "'s eye", at: base.Pointer,
			thick: given(x.EyeDiameter, base.Pointer, "eye_diameter", "the section of "+base.ID+"'s eye", "the section of "+base.ID+"'s eye"),
		}
	}
	return surface{}
}

func shackleEnd(s *gear.Shackle, end, pin gear.End) surface {
	at := s.Pointer
	switch pin {
	case "":
		open := measure{needs: []facts.Input{input(at, "pin", s.ID+"'s pin: at its upper or lower end")}}
		return surface{kind: onShackle, name: s.ID, at: at, thick: open, room: open}
	case end:
		return surface{
			kind: onPin, name: s.ID + "'s pin", at: at,
			thick: given(s.PinDiameter, at, "pin_diameter", s.ID+"'s pin diameter", s.ID+"'s pin"),
			room:  given(s.Jaw, at, "jaw", s.ID+"'s jaw", s.ID+"'s jaw"),
		}
	}
	return surface{
		kind: onBow, name: s.ID + "'s bow", at: at,
		thick: given(s.BowDiameter, at, "bow_diameter", "the section of "+s.ID+"'s bow", s.ID+"'s bow"),
		room:  given(s.InsideWidth, at, "inside_width", "the inside width of "+s.ID+"'s bow", "the inside width of "+s.ID+"'s bow"),
	}
}

// inLineEnd is an end of a part in line: a jaw where the plan gives its pin, else an
// eye.
func inLineEnd(x *gear.InLine, end gear.End) surface {
	of, at, name := x.Upper, x.Pointer, x.ID+"'s "+string(end)+" end"
	if x.EyeSection == nil && x.Upper == (gear.Opening{}) && x.Lower == (gear.Opening{}) {
		// Nothing at all is said of them: that is asked for once.
		why := measure{why: facts.Reason{Text: "how thick and wide the ends of " + x.ID + " are, the plan does not say: give eye_section, upper_opening and lower_opening, and the pins of jaws"}}
		return surface{kind: onFitting, name: "an end of " + x.ID, at: at, thick: why, room: why}
	}
	if end == gear.LowerEnd {
		of = x.Lower
	}
	s := surface{
		kind: onLink, name: name, at: at,
		thick: given(x.EyeSection, at, "eye_section", "the section of "+x.ID+"'s eyes", name),
		room:  given(of.Inside, at, string(end)+"_opening", "the clear width of "+name, name),
	}
	s.eye = x.EyeSection != nil && of.PinDiameter == nil
	if of.PinDiameter != nil {
		s.kind, s.thick = onPin, given(of.PinDiameter, at, string(end)+"_pin_diameter", "", "the pin of "+name)
	}
	return s
}

// couplingOverSize is how much thicker the links that join a chain to what it hangs
// on are than the chain, at the most (common practice).
const couplingOverSize = 2.0

// slingEnd is an end of a sling that is rated by its tag: the coupling of a chain,
// of which no plan says how wide it is inside, or the end of a flat one.
func slingEnd(x *gear.TagRatedSling) surface {
	at := x.Pointer
	if x.Kind == gear.ChainSlingKind {
		return surface{kind: onChain, name: "an end of " + x.ID, at: at,
			thick: given(x.Size, at, "size", x.ID+"'s size", "the size of "+x.ID).times(couplingOverSize)}
	}
	return surface{kind: onLoop, name: x.ID, at: at, thick: flatEnd(x)}
}

// flatEnd is the width that an end of a flat sling takes up where it hangs: of mesh its
// handle, of webbing its eye where that is narrower, else all of it.
func flatEnd(x *gear.TagRatedSling) measure {
	switch {
	case x.Kind == gear.MeshSlingKind:
		return given(x.HandleWidth, x.Pointer, "handle_width", "the width of "+x.ID+"'s handles", "the handles of "+x.ID)
	case narrowEye(x):
		return given(x.EyeWidth, x.Pointer, "eye_width", "", "the eyes of "+x.ID)
	}
	return given(x.Width, x.Pointer, "width", x.ID+"'s width", "the width of "+x.ID)
}

// narrowEye reports whether the eyes of webbing are narrower than the webbing.
func narrowEye(x *gear.TagRatedSling) bool {
	return x.Kind == gear.WebSlingKind && !x.Endless && x.EyeWidth != nil && x.Width != nil && *x.EyeWidth < *x.Width
}

// flatEndThick is how thick an end of a flat sling is on edge: of mesh its handle; an eye
// that is folded or tapered has all the weave of the webbing in less width.
func flatEndThick(x *gear.TagRatedSling) measure {
	switch {
	case x.Kind == gear.MeshSlingKind:
		return given(x.HandleThickness, x.Pointer, "handle_thickness", "the thickness of "+x.ID+"'s handles", "the handles of "+x.ID)
	case narrowEye(x):
		return sizeOf(x).times(float64(*x.Width) / float64(*x.EyeWidth))
	}
	return sizeOf(x)
}

// closed reports whether an end is a ring that nothing opens.
func (s surface) closed() bool {
	return s.kind == onLink || s.kind == onLoop || s.kind == onFitting
}

// closedInClosed reports whether two ends can't be put into one another: both are
// closed, and one is the eye of a part in line. Links and the eyes of hooks are made
// into their slings by whoever makes those.
func closedInClosed(a, b surface) bool { return (a.eye || b.eye) && a.closed() && b.closed() }

// opening names the clear width of a surface.
func (s surface) opening() string {
	if s.kind == onPin {
		return "the jaw at " + s.name
	}
	return s.name
}

// hangsFrom is what a leg of a support hangs from.
func (w *work) hangsFrom(s plan.Support, leg plan.Leg) surface {
	if leg.Link != nil {
		return surfaceOf(leg.Link.Item, gear.LowerEnd, false)
	}
	return w.lowest(s)
}

// lowest is what the legs or links of a support bear on: the last part above
// them, the hook itself, or a point of a beam.
func (w *work) lowest(s plan.Support) surface {
	switch n := len(s.By); {
	case n > 0:
		return surfaceOf(s.By[n-1].Item, gear.LowerEnd, false)
	case s.Point != nil:
		return pointOf(s.Point)
	}
	return w.craneHook(w.plan.Hooks[s.Hook])
}

// pointOf is a point of a beam, from which something hangs.
func pointOf(a *plan.Attachment) surface {
	return surface{kind: onPoint, point: a, name: "point " + a.ID, at: a.Pointer, thick: thicknessOf(a), room: holeOf(a)}
}
