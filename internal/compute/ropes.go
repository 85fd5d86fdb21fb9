package compute

import (
	"slices"
	"strings"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// ropes describes the rope of each sling in use, those of parked legs too.
func (w *work) ropes() {
	part := w.partOf()
	for _, u := range w.uses() {
		if s, ok := u.Item.(*gear.WireRopeSling); ok {
			w.out.Document.Ropes = append(w.out.Document.Ropes, w.rope(s, part[s.ID] != nil))
		}
	}
}

func (w *work) rope(s *gear.WireRopeSling, inBridle bool) facts.Rope {
	r := facts.Rope{
		Record:            facts.Record{Key: "rope/" + s.ID, At: at(s.Pointer)},
		ID:                s.ID,
		InBridle:          inBridle,
		Described:         described(s.Rope),
		DiameterM:         number(s.Diameter),
		Core:              string(s.Core),
		LangLay:           strings.HasSuffix(s.Lay, "_lang"),
		RotationResistant: slices.Contains(rotationResistant, s.Class),
		LookedOver:        s.LookedOver,
		FaultsSeen:        s.FaultsSeen,
		EyeKinds:          eyeKinds(s),
		Sleeves:           sleeves(s),
		TuckedSplices:     tucked(s.Upper) && tucked(s.Lower),
	}
	r.MakeKnown = s.Class != "" && s.Lay != "" || r.LangLay || r.RotationResistant
	if s.Core == gear.CoreUnknown {
		r.Core = notGiven
	}
	r.TemperatureGiven, r.LowestC, r.HighestC = w.temperature()
	w.wait(r.Key, diameterNeed(s), absent(r, "diameter_m")...)
	w.clearRope(&r, s)
	w.body(&r, s)
	return r
}

// body sets how the body of a sling is made, and whether its diameters agree.
func (w *work) body(r *facts.Rope, s *gear.WireRopeSling) {
	r.Body = string(makeOf(s))
	if least, ok := w.leastClearM(s); ok && s.Diameter != nil {
		r.LeastClearRopeD = ptr(least / float64(*s.Diameter))
	}
	needs := diameterNeed(s)
	if s.Body == gear.MultiPart && s.Component == nil {
		needs = append(needs, componentNeed(s))
	}
	w.wait(r.Key, needs, absent(*r, "least_clear_rope_d")...)
	if s.OfOneRope() {
		return
	}
	if r.ComponentM = number(s.Component); r.ComponentM == nil {
		w.wait(r.Key, []facts.Input{componentNeed(s)}, "component_diameter_m")
	}
	if s.Body == gear.MultiPart {
		w.bodyAgrees(r, s, needs)
	} else {
		r.BodyAgrees = w.cableAgrees(r.Key, s.Pointer, s.ID, s.Diameter, s.Component)
	}
}

// leastClearM is the least length of plain rope by the practice of the profile.
func (w *work) leastClearM(s *gear.WireRopeSling) (float64, bool) {
	return capacity.LeastClearRopeM(makeOf(s), termination(s.Upper), termination(s.Lower), value(number(s.Diameter)), value(number(s.Component)), w.cond.BridlePractice)
}

func (w *work) bodyAgrees(r *facts.Rope, s *gear.WireRopeSling, needs []facts.Input) {
	if s.Parts == nil {
		needs = append(needs, input(s.Pointer, "parts", s.ID+"'s number of parts"))
	}
	if len(needs) > 0 {
		w.wait(r.Key, needs, "body_over_components_agrees")
		return
	}
	agrees, known := capacity.BraidBodyAgrees(float64(*s.Diameter), float64(*s.Component), *s.Parts)
	switch {
	case !known:
		r.BodyAgrees = ptr("lay_up_not_known")
	case agrees:
		r.BodyAgrees = ptr("yes")
	default:
		r.BodyAgrees = ptr("no")
	}
}

// cableAgrees tells whether body and rope of what is cable-laid can both be right;
// nil, with what that waits for noted, where one is not given.
func (w *work) cableAgrees(key, pointer, id string, body, component *quantity.Length) *string {
	var needs []facts.Input
	if body == nil {
		needs = append(needs, input(pointer, "diameter", id+"'s diameter"))
	}
	if component == nil {
		needs = append(needs, input(pointer, "component_diameter", id+"'s component diameter"))
	}
	if len(needs) > 0 {
		w.wait(key, needs, "body_over_components_agrees")
		return nil
	}
	if agrees, _ := capacity.CableLaidBodyAgrees(float64(*body), float64(*component)); !agrees {
		return ptr("no")
	}
	return ptr("yes")
}

func componentNeed(s *gear.WireRopeSling) facts.Input {
	return input(s.Pointer, "component_diameter", s.ID+"'s component diameter")
}

// rotationResistant are the classes whose layers of strands are laid against
// each other so that a load does not turn (common practice).
var rotationResistant = []string{"19x7", "35x7"}

// described names what the plan says of a rope.
func described(r gear.Rope) []string {
	var names []string
	for _, f := range []struct{ name, value string }{
		{"class", r.Class}, {"construction", r.Construction}, {"core", string(r.Core)},
		{"grade", r.Grade}, {"finish", r.Finish}, {"lay", r.Lay},
	} {
		if f.value != "" {
			names = append(names, f.name)
		}
	}
	return names
}

// sleeves lists the metals of a sling's sleeves, each once.
func sleeves(s *gear.WireRopeSling) []string {
	var metals []string
	for _, e := range []gear.Eye{s.Upper, s.Lower} {
		metal := e.Sleeve
		if metal == "" && mayHaveSleeve(e) {
			metal = notGiven
		}
		if metal != "" && !slices.Contains(metals, metal) {
			metals = append(metals, metal)
		}
	}
	return metals
}

func mayHaveSleeve(e gear.Eye) bool {
	return e.Kind == "" || strings.HasSuffix(e.Kind, "_sleeve")
}

func tucked(e gear.Eye) bool {
	return strings.HasSuffix(e.Kind, "_tucked") || strings.HasSuffix(e.Kind, "_tuck")
}
