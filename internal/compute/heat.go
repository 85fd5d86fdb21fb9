package compute

import (
	"slices"
	"strings"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
)

// inHeat takes off what heat takes while the gear is that hot; beyond what any
// source tells of, nothing is known of what a part may carry, which rules find that
// have such limits of their own. Beams are no fittings: no source at hand tells of
// them.
func (w *work) inHeat(p *facts.Part, items ...gear.Item) {
	given, lowestC, highestC := w.temperature()
	if !given || p.RatedLoadN == nil {
		return
	}
	worst := facts.Factor{What: byTemperature, Ratio: 1, TemperatureC: highestC}
	for _, item := range items {
		t, concerned := thermalOf(item)
		if !concerned {
			continue
		}
		ratio, ok, why := leftInHeat(t, w.cond.BridlePractice, *lowestC, *highestC)
		if !ok {
			p.RatedLoadN = nil
			w.explain(p.Key, facts.Reason{Text: item.Base().ID + " is not rated at its temperature: " + why, ToldOf: item.Base().ID}, "rated_load_n", "used_ratio")
			continue
		}
		if ratio < worst.Ratio {
			worst.Ratio, worst.Source, worst.Basis = ratio, why, heatBasis(t.Kind)
		}
	}
	w.takes(p, worst)
}

// leftInHeat is TemperatureFactor. A chain of a grade that no table has counts as
// the least of those that one has, as long as that loses nothing.
func leftInHeat(t capacity.Thermal, p capacity.BridlePractice, lowestC, highestC float64) (float64, bool, string) {
	asked := t
	if t.Kind == capacity.Chain && t.Grade != "80" && t.Grade != "100" {
		t.Grade = ""
	}
	ratio, ok, why := capacity.TemperatureFactor(t, p, lowestC, highestC)
	if ok && ratio < 1 && asked.Grade != t.Grade {
		return 0, false, "no source tells what heat leaves of chain of grade " + asked.Grade
	}
	return ratio, ok, why
}

// heatBasis is that of the rows which leave less than all: of chain, and of links and
// hooks of its grade, they are from trade tables, of rope read.
func heatBasis(k capacity.Kind) string {
	switch k {
	case capacity.WireRope, capacity.Grommet:
		return read
	}
	return practice
}

// thermalOf is what of an item bears on how hot and how cold it may get; false for
// what no source tells of at all.
func thermalOf(item gear.Item) (capacity.Thermal, bool) {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		return capacity.Thermal{Kind: capacity.WireRope, Core: string(x.Core), Sleeves: []string{thermalEnd(x.Upper), thermalEnd(x.Lower)}}, true
	case *gear.Grommet:
		return capacity.Thermal{Kind: capacity.Grommet, Core: string(x.Core), Sleeves: []string{softestSleeve(x.Sleeve)}}, true
	case *gear.TagRatedSling:
		return capacity.Thermal{Kind: capacity.Kind(x.Kind), Grade: x.Grade, Material: x.Material, Coating: coatingOf(x)}, true
	case *gear.Shackle, *gear.Link, *gear.Hook, *gear.InLine:
		return capacity.Thermal{Kind: capacity.Hardware, Steel: thermalSteel(item)}, true
	}
	return capacity.Thermal{}, false
}

// thermalSteel is how the series of a fitting counts; empty where the plan does not
// say.
func thermalSteel(item gear.Item) string {
	switch steel := steelOf(item); steel {
	case "", "grade_8", "grade_10":
		return steel
	}
	return "other"
}

// coatingOf is how the coating of mesh counts; empty where the plan does not say.
func coatingOf(s *gear.TagRatedSling) string {
	if s.Coating == "bare" {
		return "none"
	}
	return s.Coating
}

// thermalEnd is how the end of a sling counts; empty where the plan does not say
// how it is made.
func thermalEnd(e gear.Eye) string {
	switch {
	case strings.HasSuffix(e.Kind, "_sleeve"):
		return softestSleeve(e.Sleeve)
	case e.Kind == socketEye:
		return "socket"
	case e.Kind == "":
		return ""
	}
	return "none"
}

// softestSleeve takes a sleeve of unknown metal for the one that stands less.
func softestSleeve(metal string) string {
	if metal == "" {
		return "aluminum"
	}
	return metal
}

// heatedWith lists the slings and links of a bridle, which all have to hold what
// its tag says of the whole.
func heatedWith(b *gear.Bridle) []gear.Item {
	return slices.DeleteFunc(b.Members(), func(item gear.Item) bool { return item == nil })
}
