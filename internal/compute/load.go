package compute

import (
	"math"
	"slices"

	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/mechanics"
	"liftlint/internal/plan"
	"liftlint/internal/quantity"
)

const loadKey = "load"

// upperMassKg is the load's mass at the upper end of its tolerance.
func (w *work) upperMassKg() *float64 {
	l := w.plan.Load
	if l.Mass == nil {
		return nil
	}
	m := float64(*l.Mass)
	if l.MassTolerance != nil {
		m *= 1 + float64(*l.MassTolerance)
	}
	return &m
}

func (w *work) load() {
	l := facts.Load{
		Record:             facts.Record{Key: loadKey, At: "#/load"},
		MassKg:             number(w.plan.Load.Mass),
		MassUpperKg:        w.upperMassKg(),
		MassToleranceGiven: w.plan.Load.MassTolerance != nil,
		MassToleranceRatio: number(w.plan.Load.MassTolerance),
		Freed:              w.plan.Load.Freed != "",
		StrengthConfirmed:  w.plan.Load.StrengthConfirmedBy != "",
	}
	l.Contents, l.Hazard = contents(w.plan.Load.Contents)
	w.placeCenter(&l)
	if k := w.plan.Load.MassKnownBy; k != "" {
		l.MassKnownBy = &k
	}
	w.describe(&l)
	w.describeWorst(&l)
	w.hookAbove(&l)
	w.wait(loadKey, []facts.Input{hang.MassInput()}, absent(l, "mass_kg", "mass_upper_kg")...)
	w.wait(loadKey, []facts.Input{input("/load", "mass_known_by", "how the load's mass is known")}, absent(l, "mass_known_by")...)
	w.wait(loadKey, []facts.Input{input("/load", "mass_tolerance", "the tolerance of the load's mass")}, absent(l, "mass_tolerance_ratio")...)
	w.unposed(loadKey, absent(l, "hangs", "hangs_at_worst", "tilt_at_worst_deg", "tilt_deg", "pitch_from_horizontal_deg", "roll_from_horizontal_deg", "righting_m", "center_may_rise_m", "hooks_lean_from_plumb_deg", "plumb_offset_m", "drop_m", "swing_m", "thrust_n", "flattest_leg_from_horizontal_deg")...)
	if w.steady() && w.hung.Failed() != nil {
		w.explain(loadKey, w.notAtWorst(), absent(l, "tilt_at_worst_deg")...)
	}
	if w.steady() && l.HangsFrom == "several_hooks" {
		w.explain(loadKey, facts.Reason{Text: "the load hangs from several hooks"}, absent(l, "plumb_offset_m")...)
	}
	if w.plan.Load.CenterOfGravity != nil {
		w.relate(loadKey, "/load/center_of_gravity", "the center of gravity")
	}
	w.out.Document.Loads = []facts.Load{l}
}

// hookAbove sets how high the hook's bearing stands above the highest place where
// a leg holds the load.
func (w *work) hookAbove(l *facts.Load) {
	const field = "hook_above_points_m"
	var needs []facts.Input
	for _, s := range w.plan.Supports {
		if s.Hook < 0 {
			continue
		}
		for _, u := range s.By {
			length, name := u.Item.Bearing()
			if base := u.Item.Base(); length == nil {
				needs = append(needs, input(base.Pointer, name, base.ID+"'s "+words(name)))
			}
		}
	}
	w.wait(l.Key, needs, field)
	w.unposed(l.Key, absent(*l, field)...)
	if len(needs) == 0 && w.steady() {
		l.HookAboveM = ptr(w.hung.HookAboveM())
	}
}

// mostUsed finds the part that is used the most, once all are known: one that
// is not known might be the worst. Shares that differ in their last bits only
// count as equal, so that every machine names the same part.
func (w *work) mostUsed() {
	var ratio *float64
	var part *string
	known := true
	for _, p := range w.out.Document.Parts {
		if p.UsedRatio == nil {
			known = false
			w.out.Gaps.CopyTo(p.Key, "used_ratio", loadKey, "most_used_ratio")
			w.out.Gaps.CopyTo(p.Key, "used_ratio", loadKey, "most_used_part")
		} else if ratio == nil || facts.Round(*p.UsedRatio) > facts.Round(*ratio) {
			ratio, part = p.UsedRatio, ptr(p.ID+" in "+p.Where)
		}
	}
	if l := &w.out.Document.Loads[0]; known {
		l.MostUsedRatio, l.MostUsedPart = ratio, part
	}
}

// hooks lists the hooks of cranes that the load hangs from.
func (w *work) hooks() {
	for i, s := range w.plan.Supports {
		if s.Hook >= 0 {
			w.hook(i, s)
		}
	}
}

func (w *work) hook(support int, s plan.Support) {
	hook := w.plan.Hooks[s.Hook]
	h := facts.Hook{
		Record:           facts.Record{Key: "hook/" + s.From, At: at(hook.Pointer)},
		ID:               s.From,
		LegsDirect:       w.legsDirect(support),
		ItemsWithoutMass: itemsWithoutMass(w.below(s)),
		RiggingMassKg:    massKg(w.below(s)),
		BodyWidthM:       number(hook.BodyWidth),
		OfSeveral:        len(w.plan.Hooks) > 1,
		LeanNamed:        s.From,
	}
	if h.OfSeveral && hook.HoistRope == nil {
		h.RopeTakenM = hang.UsualRopeM
	}
	w.onHook(&h, s)
	w.height(&h, support, s)
	w.wait(h.Key, []facts.Input{w.hookInput(hook, "body_width", "the width of "+w.hookName(hook)+"'s section")}, absent(h, "body_width_m")...)
	w.out.Document.Hooks = append(w.out.Document.Hooks, h)
}

// height sets how high a hook stands, and by how much that is not as the plan has it.
func (w *work) height(h *facts.Hook, support int, s plan.Support) {
	open := slices.ContainsFunc(w.hung.Legs, func(l hang.Leg) bool { return l.Support == support && l.OpenM != nil })
	h.HeightGiven = s.Height != nil && !open
	fields := []string{"height_above_datum_m"}
	if h.HeightGiven {
		fields = append(fields, "height_off_m")
	}
	var needs []facts.Input
	for _, u := range s.By {
		if length, name := u.Item.Bearing(); length == nil {
			needs = append(needs, input(u.Item.Base().Pointer, name, u.Item.Base().ID+"'s "+words(name)))
		}
	}
	w.wait(h.Key, needs, fields...)
	w.unposed(h.Key, fields...)
	if len(needs) > 0 || !w.steady() {
		return
	}
	at, carries := w.hung.HeightAboveDatumM(support)
	if !carries {
		w.explain(h.Key, facts.Reason{Text: "hook " + h.ID + " carries nothing in the first phase"}, fields...)
		return
	}
	h.HeightM = &at
	if h.HeightGiven {
		h.HeightOffM = ptr(math.Abs(at - float64(*s.Height)))
	}
}

// below lists the rigging whose mass is not in the pull of a hook's own legs: of
// the one hook all; else its own. What hangs from beams is in that pull.
func (w *work) below(s plan.Support) []plan.Use {
	if w.oneHook(s) {
		return w.uses()
	}
	return usesOf(s)
}

// onHook sets the force on a hook: of the one hook the weight of all, of several
// what hangs from it by statics, and the weight of its own rigging.
func (w *work) onHook(h *facts.Hook, s plan.Support) {
	if w.oneHook(s) {
		if m := w.upperMassKg(); m != nil {
			h.LoadN = ptr((*m + h.RiggingMassKg) * quantity.StandardGravity)
		}
		w.wait(h.Key, []facts.Input{hang.MassInput()}, absent(*h, "load_n")...)
	}
	w.unposed(h.Key, absent(*h, "horizontal_n", "lean_from_plumb_deg")...)
	if !w.oneHook(s) {
		w.unposed(h.Key, absent(*h, "load_n")...)
	}
	if !w.steady() {
		return
	}
	h.HorizontalN, h.LeanDeg = ptr(0.0), ptr(0.0)
	most := -1.0
	for _, p := range w.hung.Positions {
		state := p.Hook(s.Hook)
		if state == nil {
			continue
		}
		h.HorizontalN = ptr(max(*h.HorizontalN, p.Worst.Hooks[s.Hook].HorizontalN))
		if lean := p.Worst.Hooks[s.Hook].LeanDeg; h.LeanPhase == nil || lean > *h.LeanDeg+sameLeanDeg {
			h.LeanDeg, h.LeanPhase = ptr(max(*h.LeanDeg, lean)), phaseOf(p)
			h.LeanNamed = inPhase(s.From, p)
		}
		if p.Worst.Hooks[s.Hook].LoadN > most {
			most, h.Phase = p.Worst.Hooks[s.Hook].LoadN, phaseOf(p)
		}
	}
	switch {
	case w.oneHook(s):
	case w.hung.Failed() != nil:
		w.explain(h.Key, w.notAtWorst(), "load_n")
	default:
		h.LoadN = ptr(most + h.RiggingMassKg*quantity.StandardGravity)
	}
}

// sameLeanDeg is the difference below which hooks lean alike, so that every
// machine names the same phase.
const sameLeanDeg = 1e-6

// leanDeg is the angle from plumb of the force on a hook.
func leanDeg(h *mechanics.HookState) float64 {
	return math.Atan2(math.Hypot(h.LoadN.X, h.LoadN.Y), -h.LoadN.Z) * 180 / math.Pi
}

// hooksLeanDeg is the largest of all hooks in a position.
func (w *work) hooksLeanDeg(p hang.Position) float64 {
	most := 0.0
	for h := range w.plan.Hooks {
		if state := p.Hook(h); state != nil {
			most = max(most, leanDeg(state))
		}
	}
	return most
}

// riggingMassKg adds up what is given of the mass of links, slings and
// shackles in use.
func (w *work) riggingMassKg() float64 { return massKg(w.uses()) }

// legsDirect counts the ends of legs that go over a hook itself.
func (w *work) legsDirect(support int) int {
	s := w.plan.Supports[support]
	if len(s.By) > 0 {
		return 0
	}
	n := 0
	for i, leg := range w.hung.Legs {
		switch upTo := leg.End.UpTo; {
		case leg.Support == support:
			n += len(legBearings(leg.Leg, support, i))
		case upTo != nil && *upTo == support:
			n++
		}
	}
	return n
}

// itemsWithoutMass counts what massKg takes as nothing.
func itemsWithoutMass(uses []plan.Use) int {
	n := 0
	for _, u := range uses {
		if u.Item.Base().Mass == nil {
			n++
		}
	}
	return n
}

// massKg adds up what is given of the mass of items.
func massKg(uses []plan.Use) float64 {
	sum := 0.0
	for _, u := range uses {
		if m := u.Item.Base().Mass; m != nil {
			sum += float64(*m)
		}
	}
	return sum
}
