package compute

import (
	"math"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// bearings lists the ends of webbing and of round slings on what they bear on: above
// and, of one that pulls straight or goes up to another support, below. What lies round
// a body is said of the hitch, and what is straight in a plate or in another sling of
// the leg.
func (w *work) bearings() {
	for _, at := range w.hung.Legs {
		leg := at.Leg
		if leg.End.Kind == plan.RunsTo {
			continue
		}
		for n, u := range leg.Down {
			s, ok := u.Item.(*gear.TagRatedSling)
			if !ok || s.Kind != gear.WebSlingKind && s.Kind != gear.RoundSlingKind {
				continue
			}
			if n == 0 || !isSling(leg.Down[n-1]) {
				above := w.hangsFrom(w.plan.Supports[at.Support], leg)
				if n > 0 {
					above = surfaceOf(leg.Down[n-1].Item, gear.LowerEnd, false)
				}
				w.bearing(leg, s, gear.UpperEnd, above)
			}
			switch {
			case n < len(leg.Down)-1 && !isSling(leg.Down[n+1]):
				lowest := n+1 == len(leg.Down)-1 && leg.End.Kind == plan.To
				w.bearing(leg, s, gear.LowerEnd, surfaceOf(leg.Down[n+1].Item, gear.UpperEnd, lowest))
			case n == len(leg.Down)-1 && leg.End.Kind == plan.Basket && leg.End.UpTo != nil:
				w.bearing(leg, s, gear.LowerEnd, w.lowest(w.otherSupport(at)))
			}
		}
	}
}

func (w *work) bearing(leg plan.Leg, s *gear.TagRatedSling, end gear.End, on surface) {
	if on.kind == onPoint || on.kind == onLoop || on.kind == onChain || on.kind == "" {
		return
	}
	b := facts.Bearing{
		Record:    facts.Record{Key: "bearing/" + leg.ID + "/" + s.ID + "/" + string(end), At: at(s.Pointer)},
		ID:        s.ID,
		SlingKind: string(s.Kind),
		End:       string(end),
		On:        on.name,
	}
	b.BodyWidthM = w.take(b.Key, s.Pointer, on.thick, "body_width_m", "pressure_pa")
	b.ThicknessM = w.take(b.Key, s.Pointer, given(s.Thickness, s.Pointer, "thickness", s.ID+"'s thickness under load", ""), "thickness_m")
	b.ContactM = w.take(b.Key, s.Pointer, contact(s, on), "contact_width_m", "pressure_pa")
	b.LoadN = w.bears(b.Key, leg, s)
	if b.LoadN != nil && b.BodyWidthM != nil && b.ContactM != nil {
		if p, err := capacity.BearingPressurePa(*b.LoadN, *b.BodyWidthM, *b.ContactM); err == nil {
			b.PressurePa = &p
		} else {
			w.explain(b.Key, facts.Reason{Text: err.Error()}, "pressure_pa")
		}
	}
	w.webEye(&b, s, on)
	w.out.Document.Bearings = append(w.out.Document.Bearings, b)
}

// contact is the width that a flat sling lies in: its own, and no more than what it
// lies in leaves. A hook is open.
func contact(s *gear.TagRatedSling, on surface) measure {
	own := slingEnd(s).thick
	if own.m != nil && on.kind != onHook && on.room.m != nil {
		own.m = ptr(math.Min(*own.m, *on.room.m))
	}
	return own
}

// bears is the force that a sling bears with, as its leg is judged by.
func (w *work) bears(key string, leg plan.Leg, s *gear.TagRatedSling) *float64 {
	part := "part/" + leg.ID + "/" + s.ID
	for _, p := range w.out.Document.Parts {
		if p.Key != part {
			continue
		}
		if p.LoadN == nil {
			w.out.Gaps.CopyTo(part, "load_n", key, "load_n")
			w.out.Gaps.CopyTo(part, "load_n", key, "pressure_pa")
		}
		return p.LoadN
	}
	return nil
}

// webEye sets how long an eye of webbing is for what it goes over. Where the plan does
// not say how long it is, that matters from the thickness on over which not every usual
// one is long enough.
func (w *work) webEye(b *facts.Bearing, s *gear.TagRatedSling, on surface) {
	if s.Kind != gear.WebSlingKind || s.Endless {
		return
	}
	if s.EyeLength == nil && b.BodyWidthM != nil && capacity.EveryWebEyeGoesOver(*b.BodyWidthM) {
		return
	}
	const over = "eye_length_over_body_times"
	b.EyeMatters = true
	b.EyeLengthM = w.take(b.Key, s.Pointer, given(s.EyeLength, s.Pointer, "eye_length", "the length of "+s.ID+"'s eyes", ""), "eye_length_m", over)
	if b.EyeWidthTimes = ratio(b.EyeLengthM, b.BodyWidthM); b.EyeWidthTimes == nil {
		w.take(b.Key, s.Pointer, on.thick, over)
	}
}
