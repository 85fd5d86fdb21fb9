package compute

import (
	"slices"
	"strconv"
	"sync"

	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/quantity"
	"liftlint/internal/register"
)

// look is one sign: how it is read from what an inspection found.
type look struct {
	what  string
	named string
	// given reports whether an inspection looked for it.
	given func(f *register.Found) bool
	// set puts what was found into a sign.
	set func(s *facts.Sign, f *register.Found, w *work, item gear.Item)
}

// seen is a sign that is there or not.
func seen(what, named string, of func(*register.Found) *bool) look {
	return look{what, named, func(f *register.Found) bool { return of(f) != nil }, func(s *facts.Sign, f *register.Found, _ *work, _ gear.Item) {
		s.Seen = of(f)
	}}
}

// seenNot is a sign that is there where its opposite was not found.
func seenNot(what, named string, of func(*register.Found) *bool) look {
	return look{what, named, func(f *register.Found) bool { return of(f) != nil }, func(s *facts.Sign, f *register.Found, _ *work, _ gear.Item) {
		s.Seen = ptr(!*of(f))
	}}
}

// seenAs is a sign that has words for how it is.
func seenAs(what, named string, of func(*register.Found) string, fine ...string) look {
	return look{what, named, func(f *register.Found) bool { return of(f) != "" }, func(s *facts.Sign, f *register.Found, _ *work, _ gear.Item) {
		s.Seen = ptr(!slices.Contains(fine, of(f)))
	}}
}

// counted is a number of broken wires.
func counted(what, named string, of func(*register.Found) *int) look {
	return look{what, named, func(f *register.Found) bool { return of(f) != nil }, func(s *facts.Sign, f *register.Found, _ *work, _ gear.Item) {
		s.Count = ptr(float64(*of(f)))
	}}
}

// portion is a sign that is a share of something.
func portion(what, named string, of func(*register.Found) *quantity.Ratio, set func(s *facts.Sign, ratio *float64)) look {
	return look{what, named, func(f *register.Found) bool { return of(f) != nil }, func(s *facts.Sign, f *register.Found, _ *work, _ gear.Item) {
		set(s, number(of(f)))
	}}
}

// lost is a share that is worn off.
func lost(what, named string, of func(*register.Found) *quantity.Ratio) look {
	return portion(what, named, of, func(s *facts.Sign, ratio *float64) { s.LostRatio = ratio })
}

// heldAgainst is a dimension measured, held against the one that the item was made
// with.
func heldAgainst(what, named string, now func(*register.Found) *quantity.Length, made func(gear.Item) (*quantity.Length, string), set func(s *facts.Sign, grewM, madeM float64), fields ...string) look {
	return look{what, named, func(f *register.Found) bool { return now(f) != nil }, func(s *facts.Sign, f *register.Found, w *work, item gear.Item) {
		is := now(f)
		was, field := made(item)
		switch {
		case was != nil && *was > 0:
			set(s, float64(*is-*was), float64(*was))
		case field != "":
			w.wait(s.Key, []facts.Input{input(item.Base().Pointer, field, item.Base().ID+"'s "+words(field))}, fields...)
		default:
			w.explain(s.Key, facts.Reason{Text: "what " + item.Base().ID + " measured when it was new is not known"}, fields...)
		}
	}}
}

func madeThroat(item gear.Item) (*quantity.Length, string) {
	if h, ok := item.(*gear.Hook); ok {
		return h.Throat, "throat"
	}
	return nil, ""
}

func madeDiameter(item gear.Item) (*quantity.Length, string) {
	if b, ok := item.(*gear.Bridle); ok { // an input of the bridle itself would not help
		d, _ := b.Legs()[0].Sling.Section()
		return d, ""
	}
	return item.Section()
}

func madeLength(item gear.Item) (*quantity.Length, string) {
	if b, ok := item.(*gear.Bridle); ok {
		l, _ := b.Legs()[0].Sling.Bearing()
		return l, ""
	}
	return item.Bearing()
}

// looks lists all signs, in the order in which records have them.
var looks = sync.OnceValue(allLooks)

func allLooks() []look {
	type f = *register.Found
	grew := func(s *facts.Sign, grewM, madeM float64) { s.GrewM, s.GrewRatio = ptr(grewM), ptr(grewM/madeM) }
	shrank := func(s *facts.Sign, grewM, madeM float64) { s.LostRatio = ptr(-grewM / madeM) }
	return []look{
		seenNot("tag_legible", "a tag or marking that can't be read", func(x f) *bool { return x.TagLegible }),
		counted("broken_wires_in_one_lay", "broken wires in one lay", func(x f) *int { return x.BrokenWiresInOneLay }),
		counted("broken_wires_in_one_strand_in_one_lay", "broken wires in one strand in one lay", func(x f) *int { return x.BrokenWiresInOneStrandInOneLay }),
		counted("broken_wires_in_6_d", "broken wires in six diameters", func(x f) *int { return x.BrokenWiresIn6D }),
		counted("broken_wires_in_30_d", "broken wires in thirty diameters", func(x f) *int { return x.BrokenWiresIn30D }),
		counted("broken_wires_adjacent", "broken wires side by side", func(x f) *int { return x.BrokenWiresAdjacent }),
		counted("broken_wires_at_fitting", "broken wires at a sleeve or splice", func(x f) *int { return x.BrokenWiresAtFitting }),
		lost("outer_wire_wear", "wear of the outer wires", func(x f) *quantity.Ratio { return x.OuterWireWear }),
		heldAgainst("diameter_now", "loss of diameter", func(x f) *quantity.Length { return x.DiameterNow }, madeDiameter, shrank, "lost_ratio"),
		heldAgainst("length_now", "length", func(x f) *quantity.Length { return x.LengthNow }, madeLength, grew, "grew_ratio", "grew_m"),
		seen("kink", "a kink", func(x f) *bool { return x.Kink }),
		seen("crushed", "crushed rope", func(x f) *bool { return x.Crushed }),
		seen("birdcage", "a birdcage", func(x f) *bool { return x.Birdcage }),
		seenAs("corrosion", "severe corrosion", func(x f) string { return x.Corrosion }, "none", "light"),
		seen("heat_damage", "damage by heat", func(x f) *bool { return x.HeatDamage }),
		seen("splice_slipped", "a splice that has slipped", func(x f) *bool { return x.SpliceSlipped }),
		seen("sleeve_cracked", "a cracked sleeve", func(x f) *bool { return x.SleeveCracked }),
		seen("thimble_loose", "a loose thimble", func(x f) *bool { return x.ThimbleLoose }),
		heldAgainst("throat_now", "opening of the throat", func(x f) *quantity.Length { return x.ThroatNow }, madeThroat, grew, "grew_ratio", "grew_m"),
		{"twist", "twist", func(x f) bool { return x.Twist != nil }, func(s *facts.Sign, x f, _ *work, _ gear.Item) {
			s.TwistDeg = number(x.Twist)
		}},
		lost("wear", "wear", func(x f) *quantity.Ratio { return x.Wear }),
		portion("stretch", "stretch", func(x f) *quantity.Ratio { return x.Stretch }, func(s *facts.Sign, ratio *float64) { s.GrewRatio = ratio }),
		seen("cracked", "a crack", func(x f) *bool { return x.Cracked }),
		seenAs("latch", "a latch that is faulty or missing", func(x f) string { return x.Latch }, "works"),
		seen("bent", "a bend", func(x f) *bool { return x.Bent }),
		seen("bent_link", "a bent link", func(x f) *bool { return x.BentLink }),
		seenNot("pin_original", "a pin that is not its own", func(x f) *bool { return x.PinOriginal }),
		seen("broken_weld", "a broken weld", func(x f) *bool { return x.BrokenWeld }),
		seen("broken_wire", "a broken wire", func(x f) *bool { return x.BrokenWire }),
		seen("cut", "a cut", func(x f) *bool { return x.Cut }),
		seen("abraded", "abrasion", func(x f) *bool { return x.Abraded }),
		seen("burned", "burns", func(x f) *bool { return x.Burned }),
		seen("stitching_broken", "broken stitching", func(x f) *bool { return x.StitchingBroken }),
		seen("core_exposed", "bare core yarns", func(x f) *bool { return x.CoreExposed }),
		seen("chemical", "damage by chemicals", func(x f) *bool { return x.Chemical }),
		seen("knotted", "a knot", func(x f) *bool { return x.Knotted }),
	}
}

// manyParts is the number of parts from which a braid may have more broken wires.
const manyParts = 8

// ropeMade is how the rope of an item is made.
func ropeMade(item gear.Item) string {
	switch x := item.(type) {
	case *gear.WireRopeSling:
		if x.Body == gear.MultiPart && x.Parts != nil && *x.Parts >= manyParts {
			return "multi_part_of_" + strconv.Itoa(manyParts) + "_and_more"
		}
		return string(x.Body)
	case *gear.Grommet:
		if x.Laid == "cable_laid" {
			return string(gear.CableLaid)
		}
		return string(gear.SinglePart)
	case *gear.Bridle:
		return ropeMade(x.Legs()[0].Sling)
	}
	return "none"
}
