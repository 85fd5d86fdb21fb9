package compute

import (
	"fmt"

	"liftlint/internal/facts"
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
		MassToleranceRatio: number(w.plan.Load.MassTolerance),
	}
	if k := w.plan.Load.MassKnownBy; k != "" {
		l.MassKnownBy = &k
	} else {
		w.wait(loadKey, []facts.Input{input("/load", "mass_known_by", "how the load's mass is known")}, "mass_known_by")
	}
	if l.MassKg == nil {
		w.wait(loadKey, []facts.Input{massInput()}, "mass_kg", "mass_upper_kg")
	}
	w.pose.describe(&l)
	w.without(loadKey, "hangs", "tilt_deg", "plumb_offset_m", "turned_deg")
	w.out.Document.Loads = []facts.Load{l}
}

func (w *work) hook() {
	h := facts.Hook{
		Record:        facts.Record{Key: "hook/" + w.plan.Support.From, At: at(w.plan.Hook.Pointer)},
		ID:            w.plan.Support.From,
		RiggingMassKg: w.riggingMassKg(),
		BodyWidthM:    number(w.plan.Hook.BodyWidth),
	}
	if m := w.upperMassKg(); m != nil {
		h.LoadN = ptr((*m + h.RiggingMassKg) * quantity.StandardGravity)
	} else {
		w.wait(h.Key, []facts.Input{massInput()}, "load_n")
	}
	if h.BodyWidthM == nil {
		w.wait(h.Key, []facts.Input{w.hookWidthInput()}, "body_width_m")
	}
	w.out.Document.Hooks = []facts.Hook{h}
}

func (w *work) hookWidthInput() facts.Input {
	return input(w.plan.Hook.Pointer, "crane.hook.body_width", "the width of the crane hook's section")
}

// riggingMassKg adds up what is given of the mass of links, slings and
// shackles in use.
func (w *work) riggingMassKg() float64 {
	sum := 0.0
	for _, u := range w.uses() {
		if m := u.Item.Base().Mass; m != nil {
			sum += float64(*m)
		}
	}
	return sum
}

func (w *work) attachments() {
	for _, a := range w.plan.Load.Attachments {
		f := facts.Attachment{
			Record: facts.Record{Key: "attachment/" + a.ID, At: at(a.Pointer)},
			ID:     a.ID,
			Kind:   a.Kind,
		}
		for i, leg := range w.plan.Support.Legs {
			if leg.End.Attachment.ID != a.ID {
				continue
			}
			f.Legs++
			f.PullN = add(f.PullN, w.judgedN(i))
		}
		if f.Legs == 0 {
			f.PullN = ptr(0.0)
		}
		if a.RatedLoad != nil {
			f.RatedLoadN = ptr(a.RatedLoad.Newtons)
		} else {
			w.wait(f.Key, []facts.Input{ratingInput(a.Pointer, "attachment "+a.ID, "rated_load")}, "rated_load_n")
		}
		w.without(f.Key, "pull_n")
		w.out.Document.Attachments = append(w.out.Document.Attachments, f)
	}
}

func ratingInput(pointer, owner, field string) facts.Input {
	return input(pointer, field, fmt.Sprintf("%s's rated load", owner))
}

func add(sum, more *float64) *float64 {
	if more == nil {
		return sum
	}
	if sum == nil {
		return ptr(*more)
	}
	return ptr(*sum + *more)
}
