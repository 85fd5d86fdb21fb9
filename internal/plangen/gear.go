package plangen

import (
	"fmt"
	"time"
)

func (s *sketch) gear(day time.Time) *entry {
	all := listOf("gear")
	add := func(e ...*entry) { all.below = append(all.below, e...) }
	steel := ""
	if s.chance(0.3) {
		steel = s.pick("carbon", "alloy")
	}
	if s.bridle {
		add(s.bridleItem(day))
	}
	if s.link {
		add(s.linkItem("ML1", "master_link", s.master, day, steel))
	}
	if s.grouped() {
		add(s.linkItem("IL1", "intermediate_link", s.inter, day, steel), s.linkItem("IL2", "intermediate_link", s.inter, day, steel))
	}
	for i := range s.points {
		add(s.sling(i, day))
	}
	for i := range s.points {
		if s.fittings {
			add(s.fittingItem(s.fittingID(i), day, steel))
		}
	}
	return all
}

// fittingID is the id of what joins leg i to its attachment.
func (s *sketch) fittingID(i int) string {
	if s.hooks {
		return fmt.Sprintf("H%d", i+1)
	}
	return fmt.Sprintf("K%d", i+1)
}

func (s *sketch) linkItem(id, kind string, l ring, day time.Time, steel string) *entry {
	inspection := s.inspection(day)
	if s.bridle { // which is inspected as one
		inspection = nil
	}
	return mapOf("",
		need(val("id", id)), need(val("kind", kind)),
		when(kind == "master_link", val("shape", "oblong")),
		val("rated_load", s.rating(l.ratedT)),
		val("inside_length", s.length(l.lengthM)), val("inside_width", s.part(l.widthM)), val("section_diameter", s.part(l.sectionM)),
		when(steel != "", val("steel", steel)),
		val("mass", s.own(2*(l.lengthM+l.widthM)*6200*l.sectionM*l.sectionM)),
		inspection,
	)
}

func (s *sketch) fittingItem(id string, day time.Time, steel string) *entry {
	if s.hooks {
		return s.hookItem(id, day, steel)
	}
	return s.shackleItem(id, day, steel)
}

func (s *sketch) shackleItem(id string, day time.Time, steel string) *entry {
	f := s.low
	marked := fraction(int(4*f.marked), 4) + " short_ton"
	if !s.us && s.chance(0.5) { // the same digits, which are tonnes on many bodies
		marked = plain(f.marked) + " t"
	}
	pattern, pin := s.pick("bow", "bow", "dee"), s.pick("screw", "bolt")
	return mapOf("",
		need(val("id", id)), need(val("kind", "shackle")),
		val("pattern", pattern), val("pin_kind", pin), when(pin == "screw", bare("pin_secured", "true")),
		when(s.chance(0.15), val("pin", "lower")),
		val("rated_load", marked),
		val("inside_length", s.length(f.lengthM)),
		val("jaw", s.part(f.openM)), val("pin_diameter", s.part(f.throughM)), val("bow_diameter", s.part(f.bodyM)), val("inside_width", s.part(f.widthM)),
		when(s.chance(0.1), bare("spacers", s.pick("true", "false"))),
		when(steel != "", val("steel", steel)),
		val("mass", s.own(140e3*f.bodyM*f.bodyM*f.bodyM)),
		s.inspection(day),
	)
}

func (s *sketch) hookItem(id string, day time.Time, steel string) *entry {
	f := s.low
	return mapOf("",
		need(val("id", id)), need(val("kind", "hook")),
		when(s.chance(0.2), val("made_for", "lifting")),
		val("rated_load", s.rating(f.ratedT)),
		val("inside_length", s.length(f.lengthM)),
		val("eye_diameter", s.part(f.bodyM)), val("body_width", s.part(f.throughM)), val("throat", s.part(f.openM)),
		val("latch", "works"), val("points", "outward"),
		when(steel != "", val("steel", steel)),
		val("mass", s.own(100e3*f.throughM*f.throughM*f.throughM)),
		s.inspection(day),
	)
}

// bridleItem ties the legs and links together: legs next to each other share an
// intermediate link.
func (s *sketch) bridleItem(day time.Time) *entry {
	legs := func(ids ...string) *entry {
		list := listOf("legs")
		for _, id := range ids {
			list.below = append(list.below, val("", id))
		}
		return need(list)
	}
	link := func(id string) *entry { return val("link", id) }
	groups := listOf("groups")
	switch {
	case len(s.points) == 2:
		groups.below = []*entry{mapOf("", legs("S1", "S2"))}
	case len(s.points) == 3:
		groups.below = []*entry{mapOf("", link("IL1"), legs("S1", "S2")), mapOf("", link("IL2"), legs("S3"))}
	case s.chance(0.5):
		groups.below = []*entry{mapOf("", link("IL1"), legs("S1", "S4")), mapOf("", link("IL2"), legs("S2", "S3"))}
	default:
		groups.below = []*entry{mapOf("", link("IL1"), legs("S1", "S2")), mapOf("", link("IL2"), legs("S3", "S4"))}
	}
	return mapOf("", need(val("id", "B1")), need(val("kind", "bridle")), need(val("master", "ML1")), need(groups), s.bridleTag(), s.inspection(day))
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
