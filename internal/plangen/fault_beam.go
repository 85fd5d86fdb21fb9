package plangen

import "math"

// beamMistakes are beams that are not fit for what hangs from them.
func beamMistakes() []arrangedMistake {
	spreaders := []string{"spreader", "two levels of beams", "rocker plates", "sheaves", "chokes"}
	set := func(kind string, fields ...*entry) func(*field) *entry {
		return func(f *field) *entry {
			beam := f.kind(kind)
			for _, e := range fields {
				beam.set(e)
			}
			return beam.at("id")
		}
	}
	return []arrangedMistake{
		{what: "a spreader squeezed beyond its rating", rule: "beam/compression_over_rated", in: spreaders, sow: set("spreader_beam", val("rated_compression", "1 kN"))},
		{what: "a lifting beam bent beyond its rating", rule: "beam/bending_over_rated", in: []string{"lifting beam"}, sow: set("lifting_beam", val("rated_bending_moment", "200 N m"))},
		{what: "legs too flat for a spreader", rule: "beam/top_legs_too_flat", in: spreaders, suits: longSpreader, sow: set("spreader_beam", val("least_top_angle_from_horizontal", "80 deg"))},
		{what: "no word on how flat the legs of a spreader may be", rule: "beam/top_angle_not_given", severity: "warning", in: spreaders, suits: longSpreader, sow: func(f *field) *entry {
			f.kind("spreader_beam").drop("rated_compression", "least_top_angle_from_horizontal")
			return f.kind("spreader_beam").at("id")
		}},
		{what: "a spreader on unlike legs", rule: "beam/tilts", severity: "warning", in: []string{"spreader"}, sow: func(f *field) *entry {
			beam := f.kind("spreader_beam")
			sling, _ := f.slingOf(f.supports.below[0].at("legs").below[0])
			sling.set(val("length", f.length(f.snap(f.topM+f.halfM*math.Tan(radians(5))))))
			return beam.at("id")
		}},
		{what: "a beam loaded beyond its rating", rule: "load/over_rated_load", in: spreaders, sow: set("spreader_beam", val("rated_load", "100 kg"))},
		{what: "a beam of unknown mass", rule: "input/missing", in: spreaders, sow: func(f *field) *entry {
			f.kind("spreader_beam").drop("mass")
			return f.kind("spreader_beam").at("id")
		}},
		{what: "a point of a beam that is not there", rule: "plan/unknown_reference", in: spreaders, sow: func(f *field) *entry {
			from := f.supports.below[0].at("legs").below[0].at("end", "at")
			from.text = "SB1.tx"
			return from
		}},
		{what: "a beam that nothing holds", rule: "plan/wrong_part", in: []string{"lifting beam"}, sow: func(f *field) *entry {
			leg := f.supports.below[0].at("legs").below[0]
			leg.at("end", "at").text = f.attached.below[0].at("id").text
			return f.supports.below[1].at("from")
		}},
		{what: "a turnbuckle longer than it can be", rule: "route/adjuster_out_of_range", in: []string{"two levels of beams", "rocker plates"}, suits: func(g *rig) bool { return g.count["TB"] > 0 }, sow: func(f *field) *entry {
			f.kind("turnbuckle").set(val("longest", f.kind("turnbuckle").at("shortest").text))
			return f.kind("turnbuckle").at("id")
		}},
	}
}

// longSpreader says that the legs of a spreader are no more than 65 deg from
// horizontal, though slings have a least length.
func longSpreader(g *rig) bool { return g.halfM > 2.5 }
