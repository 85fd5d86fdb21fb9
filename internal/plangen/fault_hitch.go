package plangen

// hitchMistakes are slings that do not hold as they lie round a body.
func hitchMistakes() []arrangedMistake {
	leg := (*field).hitch
	round := func(f *field) *entry { return leg(f).at("end", "round") }
	hitch := func(what, rule, severity, in string, change func(round *entry)) arrangedMistake {
		return arrangedMistake{what: what, rule: rule, severity: severity, in: []string{in}, sow: func(f *field) *entry {
			change(round(f))
			return round(f)
		}}
	}
	return []arrangedMistake{
		hitch("a choke wider than it sets itself", "hitch/choke_angle_wide", "warning", "chokes", func(r *entry) { r.set(val("choke_angle", "150 deg")) }),
		hitch("a choker that nothing holds", "hitch/choker_can_slide", "", "column", func(r *entry) { r.drop("held_by") }),
		{what: "an eye longer than the loop of its choke", rule: "hitch/choke_on_eye_or_splice", in: []string{"chokes"}, sow: func(f *field) *entry {
			sling, _ := f.slingOf(leg(f))
			sling.at("eyes", "lower").drop("thimble", "thimble_size", "width")
			sling.at("eyes", "lower").set(val("length", "3.5 m"))
			return round(f)
		}},
		{what: "a basket on oily steel", rule: "hitch/basket_slides_along", in: []string{"baskets"}, suits: func(g *rig) bool { return g.count["SB"] == 0 }, sow: func(f *field) *entry {
			f.bodies.below[0].set(val("surface", "wet_or_oily"))
			return round(f)
		}},
		{what: "a sling too short to go round", rule: "mechanics/no_balance", in: []string{"chokes", "column", "baskets"}, sow: func(f *field) *entry {
			sling, _ := f.slingOf(leg(f))
			sling.set(val("length", "20 cm"))
			return leg(f)
		}},
		{what: "a body of unknown size", rule: "input/missing", in: []string{"chokes", "baskets"}, sow: func(f *field) *entry {
			f.bodies.below[0].drop("diameter", "width")
			return f.bodies.below[0].at("id")
		}},
		{what: "a body that is not there", rule: "plan/unknown_reference", in: []string{"chokes", "column", "baskets"}, sow: func(f *field) *entry {
			body := round(f).at("body")
			body.text = "shell"
			return body
		}},
		{what: "a choker loaded beyond its tag", rule: "load/over_rated_load", in: []string{"chokes", "column"}, sow: func(f *field) *entry {
			sling, named := f.slingOf(leg(f))
			sling.at("tag").set(val("choker_rated_load", "100 kg"))
			return named
		}},
		{what: "a tag without a rating for baskets", rule: "tag/hitch_rating_missing", in: []string{"baskets"}, sow: func(f *field) *entry {
			sling, _ := f.slingOf(leg(f))
			sling.at("tag").drop("basket_rated_load")
			return sling.at("tag")
		}},
		{what: "a column that nothing keeps from turning", rule: "hitch/single_leg_can_turn", in: []string{"column"}, suits: func(g *rig) bool { return g.made.eye == "hand_tucked" }, sow: func(f *field) *entry {
			f.load().drop("turning_held_by")
			return leg(f)
		}},
	}
}

// craneMistakes are hooks and phases that do not go together.
func craneMistakes() []arrangedMistake {
	turning := func(f *field) *entry { return f.phases.below[0] }
	return []arrangedMistake{
		{what: "a hook beside what it holds", rule: "hook/pulled_aside", in: []string{"two hooks"}, sow: func(f *field) *entry {
			for _, a := range f.attached.below {
				a.set(val("rated_to_angle_from_plane", "25 deg"))
			}
			f.cranes.below[1].set(val("x", f.length(f.snap(f.center[0]+f.halfM+4))))
			f.cranes.below[1].set(val("y", f.length(f.center[1])))
			return f.cranes.below[1].at("id")
		}},
		{what: "every hook released", rule: "plan/wrong_part", in: []string{"turned up"}, sow: func(f *field) *entry {
			released := f.phases.below[1].at("released")
			released.below = append(released.below, val("", "head"))
			return released.below[0]
		}},
		{what: "a released hook that is not there", rule: "plan/unknown_reference", in: []string{"turned up"}, sow: func(f *field) *entry {
			released := f.phases.below[1].at("released")
			released.below[0].text = "tial"
			return released.below[0]
		}},
		{what: "steps that lead the other way", rule: "plan/out_of_range", in: []string{"turned up"}, sow: func(f *field) *entry { return turning(f).set(val("step", "-15 deg")) }},
		{what: "a load turned in leaps", rule: "load/turned_in_leaps", severity: "warning", in: []string{"turned up"}, sow: func(f *field) *entry {
			turning(f).set(val("step", "25 deg"))
			return f.load()
		}},
		{what: "turning without a step", rule: "plan/missing_key", in: []string{"turned up"}, sow: func(f *field) *entry {
			turning(f).drop("step")
			return turning(f).at("until")
		}},
		{what: "a hook that nothing hangs from", rule: "plan/wrong_part", in: []string{"two hooks"}, sow: func(f *field) *entry {
			spare := mapOf("", val("id", "spare"))
			f.cranes.below = append(f.cranes.below, spare)
			return spare.at("id")
		}},
		{what: "a load that turns over as it is turned up", rule: "load/turns_over", in: []string{"turned up"}, suits: func(g *rig) bool { return g.count["LB"] == 0 }, sow: func(f *field) *entry {
			f.load().at("center_of_gravity").set(val("z", f.length(f.snap(f.size[2]+1.5))))
			f.load().drop("size")
			return f.load()
		}},
	}
}
