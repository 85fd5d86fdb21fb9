package compute

import (
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// hookUses lists the hook of the crane and those of slings that carry.
func (w *work) hookUses() {
	w.craneHookUse()
	for _, leg := range w.plan.Support.Legs {
		if h, ok := leg.Down[len(leg.Down)-1].Item.(*gear.Hook); ok {
			w.slingHookUse(leg, h)
		}
	}
}

func (w *work) craneHookUse() {
	hook, h := w.craneHook(), w.plan.Hook
	u := facts.HookUse{
		Record:     facts.Record{Key: "hook_use/" + w.plan.Support.From, At: at(h.Pointer)},
		ID:         w.plan.Support.From,
		Name:       hook.name,
		Of:         "crane",
		MadeFor:    "lifting",
		Latch:      word(h.Latch),
		LegsDirect: w.legsDirect(),
	}
	w.wait(u.Key, []facts.Input{input(h.Pointer, "crane.hook.latch", "the latch of the crane hook")}, absent(u, "latch")...)
	if u.LegsDirect > 0 {
		u.OffAxisDeg = w.offPlumb()
		w.unposed(u.Key, absent(u, "off_axis_deg")...)
	}
	names, things := w.hangsInHook()
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
	u.WidestM, u.Passes = w.widest(u.Key, h.Pointer, []string{"attachment " + a.ID}, []measure{thicknessOf(a)})
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
func (w *work) hangsInHook() (names []string, things []measure) {
	by := w.plan.Support.By
	if len(by) > 0 {
		top := surfaceOf(by[0].Item, gear.UpperEnd, false)
		return []string{top.name}, []measure{top.thick}
	}
	for i, leg := range w.plan.Support.Legs {
		top := surfaceOf(leg.Down[0].Item, gear.UpperEnd, len(leg.Down) == 1)
		if s, ok := leg.Down[0].Item.(*gear.WireRopeSling); ok {
			names, things = append(names, s.ID+"'s upper eye"), append(things, legBearing(leg, i).width)
			continue
		}
		names, things = append(names, top.name), append(things, top.thick)
	}
	return names, things
}

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

// offPlumb is the largest angle of a leg from vertical, in degrees; nil where
// it is not known how the load hangs.
func (w *work) offPlumb() *float64 {
	if w.pose.balance == nil {
		return nil
	}
	most := 0.0
	for _, l := range w.pose.balance.Lines {
		most = max(most, l.AngleFromVerticalDeg)
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
