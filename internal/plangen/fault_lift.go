package plangen

import (
	"math"
	"slices"
)

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
	return []mistake{
		without("no day of the lift", (*plot).lift, "date"),
		without("no mass", load, "mass"),
		without("no center of gravity", load, "center_of_gravity"),
		without("no length", sling, "length"),
		suited(legs(4, 4), without("no diameter where stiffness shares the load", sling, "diameter")),
		without("no inspection", sling, "inspection"),
		without("no height of an attachment", func(p *plot) *entry { return p.load().at("attachments").below[0] }, "z"),
		without("no rated load of an attachment", func(p *plot) *entry { return p.load().at("attachments").below[0] }, "rated_load"),
		{what: "no eye length", rule: "input/missing", sow: func(p *plot) *entry {
			upper := p.item("S1").at("eyes", "upper")
			upper.below = []*entry{val("kind", "hand_tucked")}
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

// gearMistakes are tags, inspections and fits that rules forbid.
func gearMistakes() []mistake {
	tag := func(what string, change func(s *sketch, tag *entry)) mistake {
		return mistake{what: what, rule: "tag/missing_or_incomplete", sow: func(p *plot) *entry {
			t := p.item("S1").at("tag")
			change(p.sketch, t)
			return t
		}}
	}
	return []mistake{
		tag("a tag that lacks a field", func(s *sketch, t *entry) {
			t.drop(s.pick("maker", "diameter", "rated_load", "hitch", "angle_from_horizontal"))
		}),
		tag("a tag that can't be read", func(_ *sketch, t *entry) { t.set(val("condition", "illegible")) }),
		tag("a tag that is lost", func(_ *sketch, t *entry) { t.set(val("condition", "missing")) }),
		{what: "no word of a tag", rule: "tag/missing_or_incomplete", sow: func(p *plot) *entry {
			p.item("S1").drop("tag")
			return p.item("S1").at("id")
		}},
		{what: "an inspection that has run out", rule: "inspection/overdue", sow: func(p *plot) *entry {
			p.item("S1").at("inspection").set(val("date", "2024-02-29"))
			return p.item("S1").at("inspection")
		}},
		{what: "a next inspection that was due before", rule: "inspection/overdue", sow: func(p *plot) *entry {
			p.item("S1").at("inspection").set(val("next_due", "2026-12-03"))
			return p.item("S1").at("inspection")
		}},
		{what: "an inspection after the lift", rule: "input/not_judged", sow: func(p *plot) *entry {
			p.item("S1").at("inspection").set(val("date", "2027-06-30"))
			p.item("S1").at("inspection").drop("next_due")
			return p.item("S1").at("id")
		}},
		{what: "a tag of another diameter", rule: "tag/diameter_disagrees", sow: func(p *plot) *entry {
			p.item("S1").at("tag").set(val("diameter", "60 mm"))
			return p.item("S1").at("tag")
		}},
		{what: "an eye that its sleeve alone holds", rule: "sling/turn_back_eye", severity: "warning", sow: func(p *plot) *entry {
			p.item("S1").at("eyes", "upper").set(val("kind", "turn_back_sleeve"))
			return p.item("S1").at("id")
		}},
		{what: "a thimble narrower than the hook", rule: "fit/thimble_over_body", sow: func(p *plot) *entry {
			eye := p.item("S1").at("eyes", "upper")
			eye.set(bare("thimble", "true"))
			eye.set(val("width", p.length(p.snap(0.01))))
			return eye
		}},
		{what: "a shackle that no leg uses", rule: "route/gear_unused", severity: "warning", sow: func(p *plot) *entry {
			spare := p.fitting("K9", "shackle", p.shackleM, p.day())
			p.gear().below = append(p.gear().below, spare)
			return spare.at("id")
		}},
		{what: "an eye too small", rule: "fit/eye_over_body", sow: func(p *plot) *entry {
			eye := p.item("S1").at("eyes", "upper")
			eye.drop("thimble")
			eye.set(val("length", p.length(p.snap(0.03))))
			return eye
		}},
	}
}

// liftMistakes are lifts that can't be done as planned.
func liftMistakes() []mistake {
	loadKey := func(p *plot) *entry { return p.load() }
	firstSling := func(p *plot) *entry { return p.leg(0).at("down").below[0] }
	return []mistake{
		{what: "an attachment that no leg uses", rule: "route/attachment_unused", sow: func(p *plot) *entry {
			spare := p.point("", p.center, val("id", "SPARE"), val("kind", "padeye"), val("rated_load", "2 t"))
			p.load().at("attachments").below = append(p.load().at("attachments").below, spare)
			return spare.at("id")
		}},
		{what: "a sling's eye on a padeye", rule: "route/eye_on_padeye", bend: func(s *sketch) { s.shackles = false }, sow: func(p *plot) *entry {
			return p.leg(0)
		}},
		{what: "three legs and more on the hook itself", rule: "fit/legs_on_hook", suits: legs(3, 4), bend: func(s *sketch) { s.link = false }, sow: func(p *plot) *entry {
			return p.root.at("crane", "hook")
		}},
		{what: "a mass that is no more than estimated", rule: "load/mass_estimated", suits: legs(1, 1), sow: func(p *plot) *entry {
			p.load().set(val("mass_known_by", "estimated"))
			p.item("S1").at("tag").set(val("rated_load", plain(math.Ceil(p.massT*(1+float64(p.tolerate)/100)/0.85*100)/100)+" t"))
			return p.load()
		}},
		{what: "a mass without its tolerance", rule: "load/mass_tolerance_missing", severity: "warning", sow: func(p *plot) *entry {
			p.load().set(val("mass_known_by", "calculated"))
			p.load().drop("mass_tolerance")
			return p.load()
		}},
		{what: "a sling loaded beyond its tag", rule: "load/over_rated_load", sow: func(p *plot) *entry {
			p.item("S1").at("tag").set(val("rated_load", p.rating(0.02)))
			return firstSling(p)
		}},
		{what: "a sling loaded nearly to its tag", rule: "load/over_rated_load", severity: "warning", suits: legs(1, 1), sow: func(p *plot) *entry {
			p.item("S1").set(val("mass", "1 kg")) // its own weight counts: next to none
			p.item("S1").at("tag").set(val("rated_load", plain(math.Round(p.massT*(1+float64(p.tolerate)/100)/0.95*1e4)/1e4)+" t"))
			return firstSling(p)
		}},
		{what: "legs too flat", rule: "angle/leg_too_flat", suits: both(legs(2, 3), wide), bend: func(s *sketch) { s.flatten(20, 28) }, sow: func(p *plot) *entry {
			return p.leg(p.farthest())
		}},
		{what: "legs flatter than is wise", rule: "angle/leg_too_flat", severity: "warning", suits: both(legs(2, 3), wide), bend: func(s *sketch) { s.flatten(34, 42) }, sow: func(p *plot) *entry {
			return p.leg(p.farthest())
		}},
		{what: "legs too short to meet", rule: "mechanics/out_of_reach", suits: legs(2, 2), bend: func(s *sketch) {
			for i := range s.legM {
				s.legM[i] = s.snap(0.4 * (s.points[1][0] - s.points[0][0]))
			}
		}, sow: func(p *plot) *entry { return p.leg(0) }},
		{what: "a center of gravity above two points", rule: "load/turns_over", suits: legs(2, 2), bend: func(s *sketch) {
			s.center[2] = s.snap(s.points[0][2] + s.between(0.4, 1.5))
		}, sow: loadKey},
		{what: "a load that hangs far from level", rule: "load/tilt", suits: both(legs(2, 2), tilts), bend: func(s *sketch) {
			s.center[0] = s.snap(s.center[0] + s.farTilt())
		}, sow: loadKey},
		{what: "a leg longer than the others", rule: "tension/leg_slack", suits: legs(4, 4), bend: func(s *sketch) {
			i := s.lightest()
			s.legM[i] = s.snap(s.legM[i] + 0.1)
		}, sow: func(p *plot) *entry { return p.leg(p.lightest()) }},
	}
}

// flatten hangs the load lower, so that its flattest leg lies at an angle
// between the two.
func (s *sketch) flatten(lowDeg, highDeg float64) { s.fit(s.between(lowDeg, highDeg)) }

// wide says that legs can be flat and not all too short.
func wide(s *sketch) bool {
	return slices.ContainsFunc(s.points, func(p [3]float64) bool { return s.away(p) > 1.7 })
}

// farthest is the leg that reaches out furthest below its hook: the flattest.
func (s *sketch) farthest() int {
	flattest, least := 0, math.Inf(1)
	for i, p := range s.points {
		if rise := math.Sqrt(s.legM[i]*s.legM[i] - s.away(p)*s.away(p)); rise/s.away(p) < least {
			flattest, least = i, rise/s.away(p)
		}
	}
	return flattest
}

// farTilt is how far the center of gravity moves along for a load on taut legs
// to hang tilted by 14 deg: the hook stays where it is on the load, and the
// center of gravity comes to lie below it.
func (s *sketch) farTilt() float64 { return (s.hookZ - s.center[2]) * math.Tan(radians(14)) }

// tilts says that with a far tilt both legs stay taut.
func tilts(s *sketch) bool { return s.farTilt() < 0.8*s.away(s.points[1]) }

// lightest is a leg on the side further from the center of gravity, which
// carries the smaller share.
func (s *sketch) lightest() int {
	if s.away(s.points[0]) > s.away(s.points[1]) {
		return 0
	}
	return 1
}
