package plangen

import (
	"fmt"
	"time"
)

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
		s.spoil(g)
	}
	for _, a := range root.at("load", "attachments").below {
		s.spoil(a)
	}
	s.spoil(root.at("load"))
	s.spoil(root.at("crane", "hook"))
	s.leaveOut(root)
	return root
}

// arrangedDraft is the same of an arrangement.
func arrangedDraft(seed uint64) *entry {
	g := arrange(seed)
	root := g.tree()
	g.r = stream(seed, changes)
	unlike := g.chance(0.4)
	for _, item := range g.items.below {
		g.age(item)
		g.spoil(item)
		if length := item.at("length"); unlike && length != nil && item.at("core") != nil && g.chance(0.3) {
			item.set(val("length", g.length(g.snap(g.between(0.2, 7)))))
		}
	}
	if g.chance(0.3) {
		c := root.at("load", "center_of_gravity")
		c.set(need(val("z", g.length(g.snap(g.size[2]*g.between(0, 1.5))))))
		c.set(need(val("x", g.length(g.snap(g.size[0]*g.between(0.2, 0.8))))))
	}
	g.leaveOut(root)
	return root
}

// leaveOut drops a share of what a plan may leave out.
func (s *sketch) leaveOut(root *entry) {
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
	if inspection == nil || !s.chance(0.2) {
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
		tag.drop(s.pick("maker", "serial", "diameter", "rated_load", "hitch", "angle_from_horizontal", "rated_for"))
	case 3:
		tag.set(val("angle_from_horizontal", "60 deg"))
	case 4:
		tag.set(bare("legs", s.pick("2", "3", "4")))
	}
}

// disturb takes the lift away from hanging level: legs of any length, a center
// of gravity anywhere.
func (s *sketch) disturb() {
	if s.chance(0.4) {
		for i := range s.legM {
			s.legM[i] = s.snap(s.legM[i] * s.between(0.75, 1.3))
		}
	}
	if s.chance(0.3) {
		s.center = s.snapped([3]float64{s.center[0] + s.size[0]*s.between(-0.3, 0.3), s.center[1] + s.size[1]*s.between(-0.3, 0.3), s.size[2] * s.between(0.1, 1.2)})
	}
	if s.chance(0.1) { // legs nearly in one plane
		for i := range s.points {
			s.points[i][1] = s.snap(s.center[1] + 0.1*(s.points[i][1]-s.center[1]))
		}
	}
	s.link, s.fittings = s.link && s.chance(0.9), s.chance(0.8)
	s.bridle = s.bridle && s.link
	if s.chance(0.2) {
		s.massT *= s.between(1, 3)
	}
}

// spoil makes things unlike what they should be, where they have a word on it.
func (s *sketch) spoil(e *entry) {
	for _, f := range []*entry{
		val("shape", "pear"), val("pin_kind", "round"), val("pin", "upper"), val("latch", s.pick("faulty", "none")), val("points", "inward"),
		val("hole_axis", s.pick("along", "across", "up")), val("turned_in_plan", fmt.Sprint(s.r.IntN(90), " deg")), val("axis", s.pick("along", "across", "up")),
		bare("seated", "false"), val("hole", s.part(s.between(0.01, 0.06))),
		val("thickness", s.part(s.between(0.005, 0.09))), val("pin_diameter", s.part(s.between(0.005, 0.09))), val("jaw", s.part(s.between(0.01, 0.09))),
		val("class", s.pick("6x7", "19x7", "8x19")), val("lay", s.pick("right_lang", "left_regular")), val("core", "fiber"),
		mapOf("contents", need(val("state", s.pick("loose", "secured"))), bare("hazardous", "true")),
		val("throat", s.part(s.between(0.01, 0.09))), val("inside_width", s.part(s.between(0.01, 0.2))), val("steel", s.pick("grade_8", "grade_10")),
		val("pattern", plainer(e)),
	} {
		if was := e.at(f.key); s.chance(0.04) && was != nil && was.form == f.form {
			e.set(f)
		}
	}
}

// plainer is the simpler pattern of an eyebolt or a shackle.
func plainer(e *entry) string {
	if e.at("kind") != nil && e.at("kind").text == "shackle" {
		return "dee"
	}
	return "plain"
}
