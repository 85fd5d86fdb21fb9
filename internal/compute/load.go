package compute

import (
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"liftlint/internal/facts"
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

func massInput() facts.Input { return input("/load", "mass", "the load's mass") }

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
	w.pose.describe(&l)
	w.pose.describeWorst(&l)
	w.hookAbove(&l)
	w.wait(loadKey, []facts.Input{massInput()}, absent(l, "mass_kg", "mass_upper_kg")...)
	w.wait(loadKey, []facts.Input{input("/load", "mass_known_by", "how the load's mass is known")}, absent(l, "mass_known_by")...)
	w.wait(loadKey, []facts.Input{input("/load", "mass_tolerance", "the tolerance of the load's mass")}, absent(l, "mass_tolerance_ratio")...)
	w.unposed(loadKey, absent(l, "hangs", "hangs_at_worst", "tilt_at_worst_deg", "tilt_deg", "righting_m", "plumb_offset_m", "thrust_n", "flattest_leg_from_horizontal_deg")...)
	if w.pose.balance != nil && w.pose.worst.failed != nil {
		w.explain(loadKey, w.pose.notAtWorst(), absent(l, "tilt_at_worst_deg")...)
	}
	if w.pose.balance != nil {
		w.explain(loadKey, facts.Reason{Text: "the load hangs from more than the hook"}, absent(l, "plumb_offset_m")...)
	}
	if w.plan.Load.CenterOfGravity != nil {
		w.relate(loadKey, "/load/center_of_gravity", "the center of gravity")
	}
	w.out.Document.Loads = []facts.Load{l}
}

// hookAbove sets how high the crane hook's bearing stands above the highest
// attachment in use: that one's place below where the legs meet, and what hangs
// plumb between the hook and there.
func (w *work) hookAbove(l *facts.Load) {
	const field = "hook_above_points_m"
	var needs []facts.Input
	between := 0.0
	for _, u := range w.plan.Support.By {
		length, name := u.Item.Bearing()
		if base := u.Item.Base(); length == nil {
			needs = append(needs, input(base.Pointer, name, base.ID+"'s "+words(name)))
		} else {
			between += float64(*length)
		}
	}
	w.wait(l.Key, needs, field)
	w.unposed(l.Key, absent(*l, field)...)
	if len(needs) > 0 || w.pose.balance == nil {
		return
	}
	body := w.pose.balance.Bodies[0]
	least := math.Inf(1)
	for _, leg := range w.plan.Support.Legs {
		point := r3.Add(body.Origin, body.Attitude.World(vector(leg.End.Attachment.At)))
		least = min(least, -point.Z)
	}
	l.HookAboveM = ptr(between + least)
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

func (w *work) hook() {
	h := facts.Hook{
		Record:           facts.Record{Key: "hook/" + w.plan.Support.From, At: at(w.plan.Hook.Pointer)},
		ID:               w.plan.Support.From,
		LoadN:            w.hookLoadN(),
		RiggingMassKg:    w.riggingMassKg(),
		ItemsWithoutMass: w.itemsWithoutMass(),
		LegsDirect:       w.legsDirect(),
		BodyWidthM:       number(w.plan.Hook.BodyWidth),
	}
	w.wait(h.Key, []facts.Input{massInput()}, absent(h, "load_n")...)
	w.wait(h.Key, []facts.Input{w.hookWidthInput()}, absent(h, "body_width_m")...)
	w.out.Document.Hooks = []facts.Hook{h}
}

// hookLoadN is the weight of the load at its upper mass and of all rigging
// whose mass is given, in newtons; nil where the load's mass is not known.
func (w *work) hookLoadN() *float64 {
	m := w.upperMassKg()
	if m == nil {
		return nil
	}
	return ptr((*m + w.riggingMassKg()) * quantity.StandardGravity)
}

func (w *work) hookWidthInput() facts.Input {
	return input(w.plan.Hook.Pointer, "crane.hook.body_width", "the width of the crane hook's section")
}

// riggingMassKg adds up what is given of the mass of links, slings and
// shackles in use.
func (w *work) riggingMassKg() float64 { return massKg(w.uses()) }

// legsDirect counts the legs that go over the hook itself.
func (w *work) legsDirect() int {
	if len(w.plan.Support.By) > 0 {
		return 0
	}
	return len(w.plan.Support.Legs)
}

// itemsWithoutMass counts what massKg takes as nothing.
func (w *work) itemsWithoutMass() int {
	n := 0
	for _, u := range w.uses() {
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
