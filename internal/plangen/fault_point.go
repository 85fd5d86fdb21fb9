package plangen

import (
	"fmt"
	"math"
)

// pointMistakes are attachments and loads that are not what they have to be.
func pointMistakes() []mistake {
	point := func(p *plot) *entry { return p.attachments().below[0] }
	load := (*plot).load
	return []mistake{
		put("a ring that is not seated", "hardware/not_seated", point, func(*plot) *entry { return bare("seated", "false") }, to("hoist_ring", "eyebolt")),
		put("a plain eyebolt at an angle", "hardware/eyebolt_plain_at_angle", point, word("pattern", "plain"), to("eyebolt"), legs(2, 4)),
		put("a hoist ring pulled off its axis", "hardware/hoist_ring_off_axis", point, word("rated_to_angle_from_axis", "10 deg"), to("hoist_ring"), legs(2, 4)),
		put("a pull too flat for a padeye", "hardware/attachment_pulled_flat", point, word("rated_to_angle_from_horizontal", "85 deg"), to("padeye"), legs(2, 4)),
		mistake{what: "a plate turned out of the pull", rule: "hardware/attachment_side_pull", suits: all(to("padeye"), legs(2, 4), strong), sow: func(p *plot) *entry {
			point(p).drop("rated_to_angle_from_plane")
			turnedOut(p, point(p))
			return point(p).at("id")
		}},
		mistake{what: "a side pull beyond the rating", rule: "hardware/side_pull_over_rating", suits: all(to("padeye"), legs(2, 4), strong), sow: func(p *plot) *entry {
			point(p).set(val("rated_to_angle_from_plane", "2 deg"))
			turnedOut(p, point(p))
			return point(p).at("id")
		}},
		put("a round pin", "hardware/round_pin", (*plot).fitting, word("pin_kind", "round"), shackled),
		put("an insert that holds too little", "load/insert_weak", point, func(p *plot) *entry { return val("hardware_breaking_load", p.rating(p.massT/4)) }, to("insert")),
		put("concrete that is too young", "load/concrete_too_young", point, word("concrete_strength", "9000 kPa"), to("insert")),
		put("a center of gravity outside the load", "load/center_of_gravity_outside", load, func(p *plot) *entry {
			return mapOf("size", val("length", "10 mm"), val("width", "10 mm"), val("height", "10 mm"))
		}),
		put("contents that can move", "load/contents_can_move", load, func(*plot) *entry {
			return mapOf("contents", val("state", "loose"), bare("hazardous", "false"))
		}),
		put("hazardous contents without a precaution", "load/hazardous_contents", load, func(*plot) *entry {
			return mapOf("contents", val("state", "secured"), bare("hazardous", "true"))
		}),
		warns(mistake{what: "a load that may be held down", rule: "load/not_shown_free", sow: func(p *plot) *entry {
			p.load().drop("freed")
			return p.load()
		}}),
		warns(mistake{what: "a load of unknown strength", rule: "load/strength_not_confirmed", suits: legs(2, 4), sow: func(p *plot) *entry {
			p.load().drop("strength_confirmed_by")
			return p.load()
		}}),
		mistake{what: "a leg at another angle than stated", rule: "route/stated_angle_off", sow: func(p *plot) *entry {
			p.leg(0).set(val("angle_from_horizontal", fmt.Sprintf("%.0f deg", p.fromHorizontal(0)+10)))
			return p.leg(0)
		}},
	}
}

// turnedOut turns a plate so far that the pull lies some degrees out of it.
func turnedOut(p *plot, point *entry) {
	toward := math.Atan2(p.center[1]-p.points[0][1], p.center[0]-p.points[0][0]) * 180 / math.Pi
	point.set(val("hole_axis", "across"))
	point.set(val("turned_in_plan", fmt.Sprintf("%.1f deg", math.Remainder(toward+p.outOfPlane(), 180))))
}

// outOfPlane is how far a plate is turned so that the pull of the first leg
// lies 9 deg out of it as drawn, and more than 6 as it hangs.
func (s *sketch) outOfPlane() float64 {
	return math.Asin(math.Sin(radians(9))/math.Cos(radians(s.fromHorizontal(0)))) * 180 / math.Pi
}

// strong says that the shackles carry their load as well when it is pulled
// toward an end of their pins, which takes a third.
func strong(s *sketch) bool {
	return s.fromHorizontal(0) < 75 && (s.hooks || 0.7*s.low.ratedT > s.rope.ratedT)
}
