package plangen

import "math"

// liftMistakes are lifts that can't be done as planned.
func liftMistakes() []mistake {
	loadKey := func(p *plot) *entry { return p.load() }
	firstSling := func(p *plot) *entry { return p.leg(0).at("down").below[0] }
	return []mistake{
		{what: "an attachment that no leg uses", rule: "route/attachment_unused", sow: func(p *plot) *entry {
			spare := p.attachment(0)
			spare.set(val("id", "SPARE"))
			p.attachments().below = append(p.attachments().below, spare)
			return spare.at("id")
		}},
		{what: "a sling's eye on a padeye", rule: "route/eye_on_padeye", suits: to("padeye"), bend: func(s *sketch) { s.fittings = false }, sow: func(p *plot) *entry {
			return p.leg(0)
		}},
		{what: "three legs and more on the hook itself", rule: "fit/legs_on_hook", suits: all(legs(3, 4), loose), bend: func(s *sketch) {
			s.link = false
			s.fit(s.leastAngle())
		}, sow: func(p *plot) *entry {
			p.hook().set(val("throat", p.part(6*p.d()))) // wide enough for all
			return p.hook()
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
		{what: "a sling loaded beyond its tag", rule: "load/over_rated_load", suits: loose, sow: func(p *plot) *entry {
			p.item("S1").at("tag").set(val("rated_load", p.own(20)))
			return firstSling(p)
		}},
		{what: "a sling loaded nearly to its tag", rule: "load/over_rated_load", severity: "warning", suits: legs(1, 1), sow: func(p *plot) *entry {
			p.item("S1").set(val("mass", "1 kg")) // its own weight counts: next to none
			p.item("S1").at("tag").set(val("rated_load", plain(math.Round(p.massT*(1+float64(p.tolerate)/100)/0.95*1e4)/1e4)+" t"))
			return firstSling(p)
		}},
		{what: "legs too flat", rule: "angle/leg_too_flat", suits: all(legs(2, 3), to("padeye", "hoist_ring"), linked, wide), bend: func(s *sketch) { s.flatten(20, 28) }, sow: func(p *plot) *entry {
			p.ratedFlat()
			return p.leg(p.farthest())
		}},
		{what: "legs flatter than is wise", rule: "angle/leg_too_flat", severity: "warning", suits: all(legs(2, 3), to("padeye", "hoist_ring"), linked, wide), bend: func(s *sketch) { s.flatten(34, 42) }, sow: func(p *plot) *entry {
			p.ratedFlat()
			return p.leg(p.farthest())
		}},
		{what: "legs far off the hook's axis", rule: "fit/leg_off_hook_axis", suits: all(legs(2, 2), to("padeye", "hoist_ring"), direct, wide), bend: func(s *sketch) { s.flatten(34, 42) }, sow: func(p *plot) *entry {
			p.ratedFlat()
			return p.hook()
		}},
		{what: "a center of gravity beside the hook", rule: "load/hook_not_plumb", severity: "warning", suits: all(legs(2, 2), to("hoist_ring"), high), bend: func(s *sketch) {
			s.center[0] = s.snap(s.center[0] + 0.3)
			s.size[0]++
		}, sow: func(p *plot) *entry {
			p.anyAngles()
			return p.load()
		}},
		{what: "legs too short to meet", rule: "mechanics/out_of_reach", suits: legs(2, 2), bend: func(s *sketch) {
			apart := s.snap(1.25*(s.legM[0]+s.legM[1]) - (s.points[1][0] - s.points[0][0]))
			s.points[1][0] += apart
			s.size[0] += apart
		}, sow: func(p *plot) *entry { return p.leg(0) }},
		{what: "a center of gravity above two points", rule: "load/turns_over", suits: legs(2, 2), bend: func(s *sketch) {
			s.center[2] = s.snap(s.points[0][2] + s.between(0.4, 1.5))
			s.size[2] += 2
		}, sow: loadKey},
		{what: "a load that hangs far from level", rule: "load/tilt", suits: all(legs(2, 2), linked, tilts), bend: func(s *sketch) {
			s.center[0] = s.snap(s.center[0] + s.farTilt())
			s.size[0] += 2
		}, sow: func(p *plot) *entry {
			p.anyAngles()
			return p.load()
		}},
		{what: "a leg longer than the others", rule: "tension/leg_slack", severity: "warning", suits: legs(4, 4), bend: func(s *sketch) {
			i := s.lightest()
			s.legM[i] = s.snap(s.legM[i] + 0.1)
		}, sow: func(p *plot) *entry {
			p.leg(p.lightest()).drop("angle_from_horizontal") // of a slack leg there is none
			return p.leg(p.lightest())
		}},
	}
}

// flatten hangs the load lower, so that its flattest leg lies at an angle
// between the two.
func (s *sketch) flatten(lowDeg, highDeg float64) { s.fit(s.between(lowDeg, highDeg)) }

// wide says that legs can be flat: slings of rope that carries so much are
// still long enough to be made.
func wide(s *sketch) bool {
	flat := *s
	flat.fit(20)
	return flat.fromHorizontal(flat.farthest()) < 21 && flat.rope.diameterMM < 50
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

// anyAngles takes out what a plan says of the angles of a load that hangs
// level.
func (p *plot) anyAngles() {
	for i, a := range p.attachments().below {
		a.drop("rated_to_angle_from_horizontal")
		p.leg(i).drop("angle_from_horizontal")
	}
}

// high says that the hook is so far up that a load whose center of gravity lies
// a foot beside it hangs nearly level.
func high(s *sketch) bool { return s.hookZ-s.center[2] > 4.5 && s.away(s.points[1]) > 1 }

// lightest is a leg on the side further from the center of gravity, which
// carries the smaller share.
func (s *sketch) lightest() int {
	if s.away(s.points[0]) > s.away(s.points[1]) {
		return 0
	}
	return 1
}
