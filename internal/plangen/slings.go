package plangen

import (
	"fmt"
	"time"
)

func (s *sketch) sling(i int, day time.Time) *entry {
	return s.slingItem(fmt.Sprintf("S%d", i+1), s.slingM(i), s.upperEye(), s.lowerEye(), day)
}

func (s *sketch) slingItem(id string, length float64, upper, lower eye, day time.Time) *entry {
	m := s.made
	grade := val("grade", m.grade)
	grade.quoted = m.grade[0] >= '0' && m.grade[0] <= '9'
	sling := mapOf("",
		need(val("id", id)), need(val("kind", "wire_rope_sling")),
		val("class", m.class), val("construction", m.construction), val("core", m.core), grade, val("finish", m.finish), val("lay", m.lay),
		val("diameter", s.diameter()),
		val("length", s.length(length)),
		val("mass", s.own(4e-3*s.rope.diameterMM*s.rope.diameterMM*length)),
		mapOf("eyes", s.eyeItem("upper", upper), s.eyeItem("lower", lower)),
		when(s.chance(0.1), s.labels()),
	)
	if !s.bridle { // which has one tag and one inspection for all
		sling.below = append(sling.below, s.tag(), s.inspection(day))
	}
	return sling
}

func (s *sketch) eyeItem(end string, e eye) *entry {
	return mapOf(end,
		val("kind", s.made.eye),
		when(e.thimble || s.chance(0.2), bare("thimble", fmt.Sprint(e.thimble))),
		val("length", s.part(e.lengthM)),
		when(e.thimble || s.chance(0.4), val("width", s.part(e.widthM))),
		when(e.thimble && s.chance(0.3), val("thimble_size", s.diameter())),
		val("splice_length", s.part(s.grain(s.spliceD*s.d()))),
		when(!s.made.tucked(), val("sleeve", s.pick("steel", "aluminum"))),
	)
}

func (s *sketch) tag() *entry {
	return mapOf("tag",
		need(val("condition", "legible")),
		val("maker", s.pick("quay rope shop", "works rigging loft")),
		when(s.chance(0.8), s.serial()),
		val("diameter", s.diameter()),
		val("rated_load", s.marked(s.rope.ratedT)),
		val("hitch", "vertical"),
		val("angle_from_horizontal", "90 deg"),
		when(s.chance(0.6), bare("legs", "1")),
		when(s.chance(0.6), bare("design_factor", "5")),
	)
}

func (s *sketch) serial() *entry { return quoted("serial", fmt.Sprintf("%04d", s.r.IntN(10000))) }

// bridleTag rates the whole at the angle on the tag, or one leg straight.
func (s *sketch) bridleTag() *entry {
	rated, of, angle := s.assemblyT(), "assembly", s.tagAngle()
	if s.chance(0.3) {
		rated, of, angle = s.rope.ratedT, "one_leg", 90
	}
	return mapOf("tag",
		need(val("condition", "legible")),
		val("maker", s.pick("quay rope shop", "works rigging loft")),
		when(s.chance(0.8), s.serial()),
		val("diameter", s.diameter()),
		val("rated_load", s.marked(rated)),
		val("rated_for", of),
		val("angle_from_horizontal", fmt.Sprintf("%d deg", angle)),
		bare("legs", fmt.Sprint(len(s.points))),
		when(s.chance(0.6), bare("design_factor", "5")),
	)
}

// labels are what a company's own rules read.
func (s *sketch) labels() *entry {
	return listOf("labels", mapOf("", need(val("label", "color_code")), need(val("value", s.pick("green", "blue", "white")))))
}
