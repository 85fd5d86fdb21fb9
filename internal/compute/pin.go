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
	case w.runsOver(s):
		g.PinTurnedBy = ptr("running_sling")
	case s.LeftInPlace:
		g.PinTurnedBy = ptr("time")
	case len(w.plan.Phases) > 1 && w.inLeg(s):
		g.PinTurnedBy = ptr("turning_load")
	}
}

// runsOver reports whether a sling runs over a shackle from one point to another.
func (w *work) runsOver(s *gear.Shackle) bool {
	return slices.ContainsFunc(w.plan.Supports, func(on plan.Support) bool {
		return len(on.By) > 0 && on.By[len(on.By)-1].Item == gear.Item(s) &&
			slices.ContainsFunc(on.Legs, func(leg plan.Leg) bool { return leg.End.Kind == plan.RunsTo })
	})
}

// inLeg reports whether a shackle is the last of a leg, in what turns with the load.
func (w *work) inLeg(s *gear.Shackle) bool {
	return slices.ContainsFunc(w.plan.Supports, func(on plan.Support) bool {
		return slices.ContainsFunc(on.Legs, func(leg plan.Leg) bool {
			return len(leg.Down) > 0 && leg.Down[len(leg.Down)-1].Item == gear.Item(s)
		})
	})
}
