package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// hookUses lists the hook of the crane and those of slings that carry.
func (w *work) hookUses() {
	for i, s := range w.plan.Supports {
		if s.Hook >= 0 {
			w.craneHookUse(i, s)
		}
	}
	for _, leg := range w.hung.Legs {
		if h, ok := leg.Down[len(leg.Down)-1].Item.(*gear.Hook); ok {
			w.slingHookUse(leg.Leg, h)
		}
	}
}

func (w *work) craneHookUse(support int, s plan.Support) {
	h := w.plan.Hooks[s.Hook]
	hook := w.craneHook(h)
	u := facts.HookUse{
		Record:     facts.Record{Key: "hook_use/" + s.From, At: at(h.Pointer)},
		ID:         s.From,
		Name:       hook.name,
		Of:         "crane",
		MadeFor:    "lifting",
		Latch:      word(h.Latch),
		LegsDirect: w.legsDirect(support),
	}
	w.wait(u.Key, []facts.Input{w.hookInput(h, "latch", "the latch of "+hook.name)}, absent(u, "latch")...)
	if u.LegsDirect > 0 {
		u.OffAxisDeg = w.offPlumb(support)
		w.unposed(u.Key, absent(u, "off_axis_deg")...)
	}
	names, things := w.hangsInHook(support, s)
	u.WidestM, u.Passes = w.widest(u.Key, hook.at, names, things)
	w.throat(u, hook.at, hook.room)
}

func (w *work) slingHookUse(leg plan.Leg, h *gear.Hook) {
	a := leg.End.Attachment
	u := facts.HookUse{
		Record:  facts.Record{Key: "hook_use/" + leg.ID + "/" + h.ID, At: at(h.Pointer)},
		ID:      h.ID,
		Name:    h.ID,
		Of:      "sling",
		MadeFor: h.MadeFor,
		Latch:   word(h.Latch),
		Points:  word(h.Points),
	}
	w.wait(u.Key, []facts.Input{input(h.Pointer, "latch", "the latch of "+h.ID)}, absent(u, "latch")...)
	w.wait(u.Key, []facts.Input{input(h.Pointer, "points", "which way "+h.ID+" points")}, absent(u, "points")...)
	u.WidestM, u.Passes = w.widest(u.Key, h.Pointer, []string{nameOf(a)}, []measure{thicknessOf(a)})
	w.throat(u, h.Pointer, given(h.Throat, h.Pointer, "throat", "the throat of "+h.ID, "the throat"))
}

// throat adds the opening of a hook's throat and closes the record.
func (w *work) throat(u facts.HookUse, pointer string, throat measure) {
	u.ThroatM = w.take(u.Key, pointer, throat, "throat_m", "throat_filled_ratio")
	u.ThroatFilledRatio = ratio(u.WidestM, u.ThroatM)
	w.out.Document.HookUses = append(w.out.Document.HookUses, u)
}

// hangsInHook lists what goes past the tip of the crane's hook into its bowl:
// the topmost link, bow or pin, or the eyes of the legs.
func (w *work) hangsInHook(support int, s plan.Support) (names []string, things []measure) {
	if len(s.By) > 0 {
		top := surfaceOf(s.By[0].Item, gear.UpperEnd, false)
		return []string{top.name}, []measure{top.thick}
	}
	for _, leg := range s.Legs {
		item := leg.Down[0].Item
		name := surfaceOf(item, gear.UpperEnd, len(leg.Down) == 1).name
		if _, ok := item.(*gear.WireRopeSling); ok {
			name = item.Base().ID + "'s upper eye"
		}
		for i, b := range legBearings(leg, support, 0) {
			if i > 0 {
				name = "the other end of leg " + leg.ID
			}
			names, things = append(names, name), append(things, edgewise(item, b.width))
		}
	}
	for i, leg := range w.hung.Legs {
		if leg.Support != support && leg.End.UpTo != nil && *leg.End.UpTo == support {
			names, things = append(names, "the other end of leg "+leg.ID), append(things, edgewise(lastPart(leg.Leg), secondBearing(leg.Leg, i).width))
		}
	}
	return names, things
}

// edgewise is how thick something is as it passes a throat: webbing, round slings and
// the handles of mesh are turned on edge. What they take side by side in a bowl is their width.
func edgewise(item gear.Item, width measure) measure {
	s, ok := item.(*gear.TagRatedSling)
	if !ok || s.Kind == gear.ChainSlingKind {
		return width
	}
	return flatEndThick(s)
}

func lastPart(leg plan.Leg) gear.Item { return leg.Down[len(leg.Down)-1].Item }

// widest is the thickest of some things and its name; nil, with the name of the
// first that is not known, unless all are known.
func (w *work) widest(key, at string, names []string, things []measure) (*float64, string) {
	var most *float64
	name, known := "", true
	for i, t := range things {
		m := w.take(key, at, t, "widest_m", "throat_filled_ratio")
		switch {
		case m == nil && known:
			most, name, known = nil, names[i], false
		case known && (most == nil || *m > *most):
			most, name = m, names[i]
		}
	}
	return most, name
}

// offPlumb is the largest angle from vertical of a leg on a support, in degrees
// and in any phase; nil where it is not known how the load hangs.
func (w *work) offPlumb(support int) *float64 {
	if !w.steady() {
		return nil
	}
	most := 0.0
	for _, p := range w.hung.Positions {
		for i, leg := range w.hung.Legs {
			line := p.Line(i)
			if line == nil || leg.Support != support && (leg.End.UpTo == nil || *leg.End.UpTo != support) {
				continue
			}
			for _, run := range line.Runs {
				most = max(most, run.AngleFromVerticalDeg)
			}
		}
	}
	return &most
}

// word is a word that the plan may leave out.
func word(s string) *string {
	if s == "" {
		return nil
	}
	return &s
}
