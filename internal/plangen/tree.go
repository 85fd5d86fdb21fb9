package plangen

import (
	"fmt"
	"time"
)

// tree is the plan with everything in it that the format has room for, apart
// from what a coin decides.
func (s *sketch) tree() *entry {
	day := s.day()
	root := mapOf("",
		need(bare("liftlint", "1")),
		need(s.lift(day)),
		need(s.load()),
		mapOf("crane", mapOf("hook", val("body_width", s.length(s.hookM)))),
		need(s.gear(day)),
		need(s.rigging()),
	)
	if s.chance(0.2) {
		s.r.Shuffle(len(root.below), func(i, j int) { root.below[i], root.below[j] = root.below[j], root.below[i] })
	}
	return root
}

func (s *sketch) day() time.Time {
	return time.Date(2026, 12, 4, 0, 0, 0, 0, time.UTC).AddDate(0, 0, s.r.IntN(90))
}

func written(t time.Time) string { return t.Format(time.DateOnly) }

func (s *sketch) pick(words ...string) string { return words[s.r.IntN(len(words))] }

func (s *sketch) lift(day time.Time) *entry {
	units := "metric"
	if s.us {
		units = "us"
	}
	what := s.pick("pump skid", "valve block", "filter vessel", "motor", "gate leaf", "pipe bundle", "switch house", "screen frame")
	return mapOf("lift",
		need(val("id", fmt.Sprintf("SQ-%03d", s.r.IntN(1000)))),
		need(val("title", fmt.Sprintf("%s %s %d", s.pick("Set", "Lift out", "Turn round", "Load"), what, 1+s.r.IntN(40)))),
		when(s.chance(0.5), val("site", "Saltmarsh Quay water works, "+s.pick("pump hall", "inlet works", "quay apron"))),
		val("date", written(day)),
		when(s.chance(0.5), val("category", s.pick("routine", "critical"))),
		when(s.us || s.chance(0.5), val("units", units)),
	)
}

func (s *sketch) load() *entry {
	points := listOf("attachments")
	for i, p := range s.points {
		points.below = append(points.below, s.point("", p,
			need(val("id", string(rune('A'+i)))), need(val("kind", "padeye")), val("rated_load", s.rating(s.ratedT))))
	}
	center := s.point("center_of_gravity", s.center)
	for _, c := range center.below { // the three stand together or not at all
		need(c)
	}
	size := mapOf("size", need(val("length", s.length(s.size[0]))), need(val("width", s.length(s.size[1]))), need(val("height", s.length(s.size[2]))))
	return mapOf("load",
		val("mass", s.mass(s.massT)),
		val("mass_known_by", s.pick("weighed", "documented", "calculated")),
		val("mass_tolerance", fmt.Sprintf("%d %%", s.tolerate)),
		when(s.chance(0.5), size),
		center,
		need(points),
	)
}

func (s *sketch) point(key string, p [3]float64, more ...*entry) *entry {
	return mapOf(key, append(more, val("x", s.length(p[0])), val("y", s.length(p[1])), val("z", s.length(p[2])))...)
}

func (s *sketch) gear(day time.Time) *entry {
	all := listOf("gear")
	if s.link {
		all.below = append(all.below, s.fitting("ML1", "master_link", s.linkM, day, val("section_diameter", s.length(s.sectionM))))
	}
	for i := range s.points {
		all.below = append(all.below, s.sling(i, day))
	}
	for i := range s.points {
		if s.shackles {
			all.below = append(all.below, s.fitting(fmt.Sprintf("K%d", i+1), "shackle", s.shackleM, day))
		}
	}
	return all
}

func (s *sketch) fitting(id, kind string, insideM float64, day time.Time, more ...*entry) *entry {
	return mapOf("", append([]*entry{
		need(val("id", id)), need(val("kind", kind)),
		val("rated_load", s.rating(s.ratedT)),
		val("inside_length", s.length(insideM)),
		when(s.chance(0.4) || s.link, val("mass", s.mass(s.between(0.002, 0.02)))),
		s.inspection(day),
	}, more...)...)
}

func (s *sketch) sling(i int, day time.Time) *entry {
	return mapOf("",
		need(val("id", fmt.Sprintf("S%d", i+1))), need(val("kind", "wire_rope_sling")),
		when(s.chance(0.6), val("class", s.pick("6x19", "6x36", "8x36"))),
		when(s.chance(0.6), val("core", "iwrc")),
		val("diameter", s.diameter()),
		val("length", s.length(s.slingM(i))),
		when(s.chance(0.5) || s.link, val("mass", s.mass(s.between(0.004, 0.04)))),
		mapOf("eyes", s.eye("upper"), s.eye("lower")),
		s.tag(),
		s.inspection(day),
	)
}

func (s *sketch) eye(end string) *entry {
	e := mapOf(end,
		when(s.chance(0.5), val("kind", s.pick("flemish_sleeve", "hand_tucked", "hidden_tuck"))),
		when(s.chance(0.2), bare("thimble", s.pick("true", "false"))),
		val("length", s.length(s.eyeM)),
	)
	if t := e.at("thimble"); t != nil && t.text == "true" || s.chance(0.1) {
		e.set(val("width", s.length(s.snap(s.hookM+0.01))))
	}
	return e
}

func (s *sketch) tag() *entry {
	rated := s.rating(s.rope.ratedT)
	return mapOf("tag",
		need(val("condition", "legible")),
		val("maker", s.pick("quay rope shop", "works rigging loft")),
		when(s.chance(0.8), quoted("serial", fmt.Sprintf("%04d", s.r.IntN(10000)))),
		val("diameter", s.diameter()),
		val("rated_load", rated),
		val("hitch", "vertical"),
		val("angle_from_horizontal", "90 deg"),
		when(s.chance(0.3), bare("legs", "1")),
		when(s.chance(0.3), bare("design_factor", "5")),
	)
}

func (s *sketch) inspection(day time.Time) *entry {
	since := 5 + s.r.IntN(300)
	service := "normal"
	if since < 60 && s.chance(0.5) {
		service = "severe"
	}
	return mapOf("inspection",
		need(val("date", written(day.AddDate(0, 0, -since)))),
		when(s.chance(0.4), val("by", s.pick("site rigging loft", "works inspector"))),
		when(service == "severe" || s.chance(0.2), val("service", service)),
		when(s.chance(0.3), val("next_due", written(day.AddDate(0, 0, s.r.IntN(40))))),
	)
}

func (s *sketch) rigging() *entry {
	legs := listOf("legs")
	for i := range s.points {
		down := listOf("down", val("", fmt.Sprintf("S%d", i+1)), when(s.shackles, val("", fmt.Sprintf("K%d", i+1))))
		end := mapOf("end", need(val("kind", "to")), need(val("at", string(rune('A'+i)))))
		name := when(s.chance(0.15), val("id", s.pick("leg", "run")+fmt.Sprint(i+1)))
		legs.below = append(legs.below, mapOf("", name, need(down), need(end)))
	}
	return listOf("rigging", mapOf("", need(val("from", "hook")), when(s.link, listOf("by", val("", "ML1"))), need(legs)))
}
