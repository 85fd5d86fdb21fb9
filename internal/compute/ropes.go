package compute

import (
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
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
	return r
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
