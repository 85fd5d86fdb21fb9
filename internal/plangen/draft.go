package plangen

import "time"

// draft makes a plan that is not ready: what it says may be wrong or missing.
func draft(seed uint64) *entry {
	s := newSketch(stream(seed, lifts))
	s.r = stream(seed, changes)
	s.disturb()
	root := s.tree()
	root.at("lift").set(val("profile", s.pick("us", "us", "eu")))
	if s.chance(0.3) {
		root.at("load").set(val("mass_known_by", "estimated"))
	}
	for _, g := range root.at("gear").below {
		s.age(g)
	}
	left := []float64{0, 0.03, 0.1, 0.4}[s.r.IntN(4)]
	var cut [][2]*entry
	root.optional("", func(_ string, parent, field *entry) {
		if s.chance(left) {
			cut = append(cut, [2]*entry{parent, field})
		}
	})
	for _, c := range cut {
		c[0].drop(c[1].key)
	}
	return root
}

// age puts an item's tag and inspection into one of their states.
func (s *sketch) age(g *entry) {
	if tag := g.at("tag"); tag != nil && s.chance(0.2) {
		s.wear(tag)
	}
	if upper := g.at("eyes", "upper"); upper != nil && s.chance(0.1) {
		upper.set(val("kind", "turn_back_sleeve"))
	}
	inspection := g.at("inspection")
	if !s.chance(0.2) {
		return
	}
	switch s.r.IntN(4) {
	case 0: // long ago
		inspection.set(val("date", written(time.Date(2024, time.Month(1+s.r.IntN(12)), 29, 0, 0, 0, 0, time.UTC))))
	case 1: // still to come
		inspection.set(val("date", "2027-06-30"))
	case 2:
		inspection.set(val("service", "special"))
		inspection.drop("next_due")
	case 3:
		inspection.set(val("next_due", "2026-12-01"))
	}
}

func (s *sketch) wear(tag *entry) {
	switch s.r.IntN(5) {
	case 0, 1:
		tag.below = []*entry{tag.at("condition")}
		tag.set(val("condition", s.pick("illegible", "missing")))
	case 2:
		tag.drop(s.pick("maker", "serial", "diameter", "rated_load", "hitch", "angle_from_horizontal"))
	case 3:
		tag.set(val("angle_from_horizontal", "60 deg"))
	case 4:
		tag.set(bare("legs", s.pick("2", "3", "4")))
	}
}
