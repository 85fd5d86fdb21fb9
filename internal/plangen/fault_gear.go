package plangen

// gearMistakes are tags, inspections and fits that rules forbid.
func gearMistakes() []mistake {
	tag := func(what string, change func(s *sketch, tag *entry)) mistake {
		return mistake{what: what, rule: "tag/missing_or_incomplete", sow: func(p *plot) *entry {
			t := p.tagged().at("tag")
			change(p.sketch, t)
			return t
		}}
	}
	return []mistake{
		tag("a tag that lacks a field", func(s *sketch, t *entry) {
			if s.bridle { // of which two fields more say what one leg may carry
				t.drop(s.pick("maker", "diameter", "rated_load", "legs"))
				return
			}
			t.drop(s.pick("maker", "diameter", "rated_load", "hitch"))
		}),
		tag("a tag that can't be read", func(_ *sketch, t *entry) { t.set(val("condition", "illegible")) }),
		tag("a tag that is lost", func(_ *sketch, t *entry) { t.set(val("condition", "missing")) }),
		{what: "no word of a tag", rule: "tag/missing_or_incomplete", sow: func(p *plot) *entry {
			p.tagged().drop("tag")
			return p.tagged().at("id")
		}},
		{what: "an inspection that has run out", rule: "inspection/overdue", sow: func(p *plot) *entry {
			p.tagged().at("inspection").set(val("date", "2024-02-29"))
			return p.tagged().at("inspection")
		}},
		{what: "a next inspection that was due before", rule: "inspection/overdue", sow: func(p *plot) *entry {
			p.tagged().at("inspection").set(val("next_due", "2026-12-03"))
			return p.tagged().at("inspection")
		}},
		{what: "an inspection after the lift", rule: "input/not_judged", sow: func(p *plot) *entry {
			p.tagged().at("inspection").set(val("date", "2027-06-30"))
			p.tagged().at("inspection").drop("next_due")
			return p.tagged().at("id")
		}},
		{what: "a tag of another diameter", rule: "tag/disagrees", sow: func(p *plot) *entry {
			p.tagged().at("tag").set(val("diameter", "60 mm"))
			return p.tagged().at("tag")
		}},
		{what: "an eye that its sleeve alone holds", rule: "sling/turn_back_eye", severity: "warning", sow: func(p *plot) *entry {
			p.item("S1").at("eyes", "upper").set(val("kind", "turn_back_sleeve"))
			return p.item("S1").at("id")
		}},
		{what: "a thimble narrower than the hook", rule: "fit/thimble_over_body", sow: func(p *plot) *entry {
			eye := p.item("S1").at("eyes", "upper")
			eye.set(bare("thimble", "true"))
			eye.set(val("width", p.part(p.grain(0.01))))
			return eye
		}},
		{what: "a shackle or hook that no leg uses", rule: "route/gear_unused", severity: "warning", sow: func(p *plot) *entry {
			spare := p.fittingItem("X9", p.day(), "")
			p.gear().below = append(p.gear().below, spare)
			return spare.at("id")
		}},
		{what: "an eye too small", rule: "fit/eye_over_body", sow: func(p *plot) *entry {
			eye := p.item("S1").at("eyes", "upper")
			eye.drop("thimble")
			eye.drop("thimble_size")
			eye.set(val("length", p.part(p.grain(0.015))))
			return eye
		}},
	}
}
