package plangen

import "slices"

// formMistakes are those that the schemas refuse.
func formMistakes() []mistake {
	return []mistake{
		{what: "a misspelt key", rule: "plan/unknown_key", sow: func(p *plot) *entry {
			e := p.item("S1").at("diameter")
			e.key = "diamter"
			return e
		}},
		{what: "a key of a mapping inside", rule: "plan/unknown_key", sow: func(p *plot) *entry {
			return p.tagged().at("tag").set(val("color", "blue"))
		}},
		{what: "no title", rule: "plan/missing_key", sow: func(p *plot) *entry {
			p.lift().drop("title")
			return p.lift()
		}},
		{what: "a mass without its unit", rule: "plan/unit", sow: func(p *plot) *entry { return p.load().set(bare("mass", "8650")) }},
		{what: "a unit that means three things", rule: "plan/unit", sow: func(p *plot) *entry { return p.load().set(val("mass", "8 ton")) }},
		{what: "a length in kilograms", rule: "plan/unit", sow: func(p *plot) *entry { return p.item("S1").set(val("length", "4 kg")) }},
		{what: "a mass below nothing", rule: "plan/unit", sow: func(p *plot) *entry { return p.load().set(val("mass", "-2 t")) }},
		{what: "thirteen inches beside feet", rule: "plan/unit", sow: func(p *plot) *entry { return p.item("S1").set(val("length", "12 ft 13 in")) }},
		{what: "a day that does not exist", rule: "plan/bad_date", sow: func(p *plot) *entry { return p.lift().set(val("date", "2026-02-30")) }},
		{what: "an id with a space", rule: "plan/bad_id", sow: func(p *plot) *entry { return p.lift().set(val("id", "SQ 21")) }},
		{what: "an empty title", rule: "plan/bad_text", sow: func(p *plot) *entry { return p.lift().set(quoted("title", "")) }},
		{what: "a core that is not one", rule: "plan/not_allowed", sow: func(p *plot) *entry { return p.item("S1").set(val("core", "steel")) }},
		{what: "another version of the format", rule: "plan/version", sow: func(p *plot) *entry { return p.root.set(bare("liftlint", "2")) }},
		{what: "a tag of nine legs", rule: "plan/out_of_range", sow: func(p *plot) *entry { return p.tagged().at("tag").set(bare("legs", "9")) }},
		{what: "a list for a mapping", rule: "plan/wrong_type", sow: func(p *plot) *entry { return p.root.set(listOf("crane", val("", "hook"))).below[0] }},
		{what: "a seventh leg", rule: "plan/list_length", suits: legs(4, 4), sow: func(p *plot) *entry {
			p.rigging().at("legs").below = append(p.rigging().at("legs").below, p.leg(0), p.leg(1), p.leg(2))
			return p.rigging().at("legs")
		}},
	}
}

// linkMistakes are ids that do not fit together.
func linkMistakes() []mistake {
	return []mistake{
		{what: "an attachment that does not exist", rule: "plan/unknown_reference", suits: legs(2, 4), sow: func(p *plot) *entry {
			return p.leg(0).at("end").set(val("at", "Z"))
		}},
		{what: "gear that does not exist", rule: "plan/unknown_reference", suits: loose, sow: func(p *plot) *entry { return p.first("S9") }},
		{what: "a link that does not exist", rule: "plan/unknown_reference", suits: all(linked, loose), sow: func(p *plot) *entry {
			by := p.rigging().at("by")
			by.below[0] = val("", "ML7")
			return by.below[0]
		}},
		{what: "an id given twice", rule: "plan/duplicate_id", sow: func(p *plot) *entry {
			again := *p.fitting()
			again.below = slices.Clone(again.below)
			p.gear().below = append(p.gear().below, &again)
			return again.set(val("id", p.fittingID(0)))
		}},
		{what: "an item in two legs", rule: "plan/wrong_part", suits: legs(2, 4), sow: func(p *plot) *entry {
			down := p.leg(1).at("down")
			down.below[1] = val("", p.fittingID(0))
			return down.below[1]
		}},
		{what: "a leg without a sling", rule: "plan/wrong_part", suits: loose, sow: func(p *plot) *entry {
			down := p.leg(0).at("down")
			down.below = down.below[1:]
			return down.below[0]
		}},
		{what: "a leg of a bridle that the rigging leaves out", rule: "plan/wrong_part", suits: bridled, sow: func(p *plot) *entry {
			p.rigging().at("legs").below = p.rigging().at("legs").below[1:]
			return p.rigging().at("by").below[0]
		}},
		{what: "a link of a bridle put to work by itself", rule: "plan/wrong_part", suits: bridled, sow: func(p *plot) *entry {
			by := p.rigging().at("by")
			by.below = append([]*entry{val("", "ML1")}, by.below...)
			return by.below[0]
		}},
		{what: "a parked leg without a bridle", rule: "plan/wrong_part", suits: all(loose, legs(2, 4)), sow: func(p *plot) *entry {
			p.leg(0).at("end").below = []*entry{val("kind", "parked")}
			return p.leg(0).at("end", "kind")
		}},
		{what: "a hook above a sling", rule: "plan/wrong_part", suits: all(loose, hooked), sow: func(p *plot) *entry {
			down := p.leg(0).at("down")
			slices.Reverse(down.below)
			return down.below[0]
		}},
	}
}

// first puts another id at the top of the first leg.
func (p *plot) first(id string) *entry {
	down := p.leg(0).at("down")
	down.below[0] = val("", id)
	return down.below[0]
}
