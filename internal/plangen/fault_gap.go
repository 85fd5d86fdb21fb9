package plangen

// gapMistakes are data left out that a rule waits for. The report points at
// what lacks it.
func gapMistakes() []mistake {
	without := func(what string, of func(*plot) *entry, key string) mistake {
		return mistake{what: what, rule: "input/missing", sow: func(p *plot) *entry {
			of(p).drop(key)
			return pointed(of(p))
		}}
	}
	load, sling, hook := (*plot).load, func(p *plot) *entry { return p.item("S1") }, (*plot).hook
	point := func(p *plot) *entry { return p.attachments().below[0] }
	return []mistake{
		without("no day of the lift", (*plot).lift, "date"),
		without("no mass", load, "mass"),
		without("no center of gravity", load, "center_of_gravity"),
		without("no length", sling, "length"),
		suited(legs(4, 4), without("no diameter where stiffness shares the load", sling, "diameter")),
		without("no inspection", (*plot).tagged, "inspection"),
		without("no height of an attachment", point, "z"),
		suited(to("padeye", "hoist_ring", "eyebolt"), without("no rated load of an attachment", point, "rated_load")),
		{what: "no eye length", rule: "input/missing", sow: func(p *plot) *entry {
			upper := p.item("S1").at("eyes", "upper")
			upper.drop("length")
			return upper
		}},
		without("no hole", point, "hole"),
		without("no thickness", point, "thickness"),
		suited(to("padeye", "eyebolt"), without("no axis of a hole", point, "hole_axis")),
		suited(to("hoist_ring", "eyebolt"), without("no word on the seat of a bolt", point, "seated")),
		suited(all(to("eyebolt"), legs(2, 4)), without("no ratings at angles", point, "rated_at")),
		suited(to("hoist_ring"), without("no angle that a ring is rated to", point, "rated_to_angle_from_axis")),
		suited(to("insert"), without("no breaking load", point, "breaking_load")),
		suited(to("insert"), without("no strength of the concrete", point, "concrete_strength")),
		suited(shackled, without("no jaw", (*plot).fitting, "jaw")),
		suited(shackled, without("no pin diameter", (*plot).fitting, "pin_diameter")),
		suited(shackled, without("no bow", (*plot).fitting, "bow_diameter")),
		suited(hooked, without("no throat", (*plot).fitting, "throat")),
		suited(hooked, without("no word on a latch", (*plot).fitting, "latch")),
		without("no throat of the crane's hook", hook, "throat"),
		without("no latch of the crane's hook", hook, "latch"),
		suited(linked, without("no width of the master link", func(p *plot) *entry { return p.item("ML1") }, "inside_width")),
	}
}

func suited(suits func(*sketch) bool, m mistake) mistake {
	m.suits = suits
	return m
}

// pointed is what stands for a mapping in a report: its id where it has one.
func pointed(e *entry) *entry {
	if id := e.at("id"); id != nil {
		return id
	}
	return e
}
