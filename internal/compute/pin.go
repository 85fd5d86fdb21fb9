package compute

import (
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// pinTurned tells what can turn the pin of a shackle out of its thread while the load
// hangs.
func (w *work) pinTurned(g *facts.Gear, s *gear.Shackle) {
	if s.PinKind == "" {
		w.wait(g.Key, []facts.Input{input(s.Pointer, "pin_kind", s.ID+"'s kind of pin")}, "pin_turned_by")
		return
	}
	g.PinTurnedBy = ptr("nothing")
	if s.PinKind != "screw" || s.Secured {
		return
	}
	switch {
	case s.LeftInPlace:
		g.PinTurnedBy = ptr("time")
	case w.turned() && w.inLeg(s):
		g.PinTurnedBy = ptr("turning_load")
	}
}

// turned reports whether the load is turned while it hangs: its pitch is another in
// one phase than in the next, or changes within one.
func (w *work) turned() bool {
	phases := w.plan.Phases
	for i, p := range phases {
		if p.Until != nil && *p.Until != p.Pitch || i > 0 && p.Pitch != phases[i-1].Pitch {
			return true
		}
	}
	return false
}

// inLeg reports whether a shackle is the last of a leg, in what turns with the load.
func (w *work) inLeg(s *gear.Shackle) bool {
	return slices.ContainsFunc(w.plan.Supports, func(on plan.Support) bool {
		return slices.ContainsFunc(on.Legs, func(leg plan.Leg) bool {
			return len(leg.Down) > 0 && leg.Down[len(leg.Down)-1].Item == gear.Item(s)
		})
	})
}
