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
	load, sling := (*plot).load, func(p *plot) *entry { return p.item("S1") }
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
