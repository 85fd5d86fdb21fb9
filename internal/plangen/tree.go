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
		mapOf("crane", mapOf("hook", val("body_width", s.part(s.crane.widthM)), val("throat", s.part(s.crane.throatM)), val("latch", "works"))),
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
	if s.kind == "insert" {
		what = s.pick("wall panel", "culvert", "cover slab")
	}
	return mapOf("lift",
		need(val("id", fmt.Sprintf("SQ-%03d", s.r.IntN(1000)))),
		need(val("title", fmt.Sprintf("%s %s %d", s.pick("Set", "Lift out", "Turn round", "Load"), what, 1+s.r.IntN(40)))),
		when(s.chance(0.5), val("site", "Saltmarsh Quay water works, "+s.pick("pump hall", "inlet works", "quay apron"))),
		val("date", written(day)),
		when(s.chance(0.5), val("category", s.pick("routine", "critical"))),
		when(s.us || s.chance(0.5), val("units", units)),
		when(s.chance(0.3), s.temperature()),
		when(s.chance(0.1), s.labels()),
	)
}

// temperature is that of ordinary weather, written down.
func (s *sketch) temperature() *entry {
	lowest, highest, unit := -15+s.r.IntN(20), 15+s.r.IntN(25), "C"
	if s.us {
		lowest, highest, unit = 5+s.r.IntN(40), 60+s.r.IntN(40), "F"
	}
	return mapOf("temperature", need(val("lowest", fmt.Sprint(lowest, " ", unit))), need(val("highest", fmt.Sprint(highest, " ", unit))))
}

func (s *sketch) load() *entry {
	points := listOf("attachments")
	for i := range s.points {
		points.below = append(points.below, s.attachment(i))
	}
	return s.loadWith(points)
}

func (s *sketch) loadWith(points *entry) *entry {
	center := s.point("center_of_gravity", s.center)
	for _, c := range center.below { // the three stand together or not at all
		need(c)
	}
	size := mapOf("size", need(val("length", s.length(s.size[0]))), need(val("width", s.length(s.size[1]))), need(val("height", s.length(s.size[2]))))
	return mapOf("load",
		val("mass", s.mass(s.massT)),
		val("mass_known_by", s.pick("weighed", "documented", "calculated")),
		val("mass_tolerance", fmt.Sprintf("%d %%", s.tolerate)),
		when(s.chance(0.8), size),
		center,
		s.contents(),
		val("freed", s.pick("anchor nuts off, seen by the rigger", "stood free on timber since the day before", "jacked up by a finger and set down again")),
		val("turning_held_by", "two tag lines, at both ends"),
		val("strength_confirmed_by", s.pick("lifting drawing", "lifting manual", "site engineer")),
		need(points),
	)
}

func (s *sketch) contents() *entry {
	if s.chance(0.6) {
		return mapOf("contents", need(val("state", "none")))
	}
	c := mapOf("contents", need(val("state", "secured")), val("what", s.pick("gear oil", "loose covers", "residual water")), bare("hazardous", "false"))
	if s.chance(0.3) {
		c.set(val("what", "solvent residue"))
		c.set(bare("hazardous", "true"))
		c.set(val("precaution", "drained, purged and tested"))
	}
	return c
}

func (s *sketch) rigging() *entry {
	legs := listOf("legs")
	for i := range s.points {
		down := listOf("down", val("", fmt.Sprintf("S%d", i+1)), when(s.fittings, val("", s.fittingID(i))))
		end := mapOf("end", need(val("kind", "to")), need(val("at", pointID(i))))
		name := when(s.chance(0.15), val("id", s.pick("leg", "run")+fmt.Sprint(i+1)))
		meant := when(s.chance(0.2) && !s.grouped(), val("angle_from_horizontal", fmt.Sprintf("%.0f deg", s.fromHorizontal(i))))
		legs.below = append(legs.below, mapOf("", name, need(down), meant, need(end)))
	}
	return listOf("rigging", mapOf("", need(val("from", "hook")), s.by(), need(legs)))
}

// by is what is between the hook and the legs. The slings of a bridle work in
// no other way.
func (s *sketch) by() *entry {
	switch {
	case s.bridle:
		return need(listOf("by", val("", "B1")))
	case s.link:
		return listOf("by", val("", "ML1"))
	}
	return nil
}
