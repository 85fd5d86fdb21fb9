package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// surface is one end of a fitting, where the next part bears.
type surface struct {
	kind  string // hook, link, bow, pin, fitting, or shackle where its pin may be at either end
	name  string
	at    string  // pointer of the part
	thick measure // of what an eye goes round
	room  measure // clear width inside it
}

// The kinds of surface.
const (
	onHook    = "hook"
	onLink    = "link"
	onBow     = "bow"
	onPin     = "pin"
	onShackle = "shackle"
	onFitting = "fitting"
)

func (w *work) craneHook() surface {
	h := w.plan.Hook
	return surface{
		kind:  onHook,
		name:  "the crane hook",
		at:    h.Pointer,
		thick: measureOf(w.hookWidthInput(), number(h.BodyWidth), h.Pointer+"/body_width", "the width of the crane hook"),
		room:  measureOf(w.throatInput(), number(h.Throat), h.Pointer+"/throat", "the throat of the crane hook"),
	}
}

func (w *work) throatInput() facts.Input {
	return input(w.plan.Hook.Pointer, "crane.hook.throat", "the throat of the crane hook")
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

// opening names the clear width of a surface.
func (s surface) opening() string {
	if s.kind == onPin {
		return "the jaw at " + s.name
	}
	return s.name
}

// hangsFrom is what a leg hangs from.
func (w *work) hangsFrom(leg plan.Leg) surface {
	switch by := w.plan.Support.By; {
	case leg.Link != nil:
		return surfaceOf(leg.Link.Item, gear.LowerEnd, false)
	case len(by) > 0:
		return surfaceOf(by[len(by)-1].Item, gear.LowerEnd, false)
	}
	return w.craneHook()
}
