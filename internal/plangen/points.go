package plangen

import (
	"fmt"
	"math"
)

// attachment is point i with all that its kind is described by.
func (s *sketch) attachment(i int) *entry {
	own := map[string]func(int) []*entry{
		"padeye": s.padeye, "hoist_ring": s.hoistRing, "eyebolt": s.eyebolt, "insert": s.insert,
	}[s.kind]
	fields := []*entry{need(val("id", pointID(i))), need(val("kind", s.kind))}
	fields = append(fields, own(i)...)
	hole, thickness := s.hole(s.kind != "padeye")
	fields = append(fields, val("hole", s.part(hole)), val("thickness", s.part(thickness)))
	return s.point("", s.points[i], fields...)
}

func pointID(i int) string { return string(rune('A' + i)) }

func (s *sketch) point(key string, p [3]float64, more ...*entry) *entry {
	return mapOf(key, append(more, val("x", s.length(p[0])), val("y", s.length(p[1])), val("z", s.length(p[2])))...)
}

// hole is the opening of an attachment and its thickness, to suit the fitting:
// a pin lies snug in a plate, a ring leaves it room.
func (s *sketch) hole(roomy bool) (holeM, thicknessM float64) {
	play := s.play
	if roomy {
		play += 0.3
	}
	return s.grainUp(play * s.low.throughM), s.grain(s.filled * s.low.openM)
}

func (s *sketch) padeye(i int) []*entry {
	return append(s.turned(i),
		val("rated_load", s.rating(s.ratedT)),
		when(s.chance(0.15), val("rated_to_angle_from_plane", s.pick("5 deg", "10 deg"))),
		s.flattest(i),
	)
}

// flattest is, of some, the flattest pull that an attachment is rated for.
func (s *sketch) flattest(i int) *entry {
	least := math.Floor(s.fromHorizontal(i)/5)*5 - 5
	return when(s.chance(0.15) && least >= 15, val("rated_to_angle_from_horizontal", plain(least)+" deg"))
}

// fromHorizontal is the angle of leg i in degrees.
func (s *sketch) fromHorizontal(i int) float64 {
	return math.Atan2(s.hookZ-s.points[i][2], s.away(s.points[i])) * 180 / math.Pi
}

func (s *sketch) hoistRing(int) []*entry {
	return []*entry{
		val("axis", "up"), bare("seated", "true"),
		val("rated_load", s.rating(s.ratedT)), val("rated_to_angle_from_axis", "90 deg"),
	}
}

// eyebolt is shouldered, with its own ratings at angles (a trade series, common
// practice), of which the second has to do.
func (s *sketch) eyebolt(i int) []*entry {
	inLine := math.Ceil(s.ratedT / 0.65)
	at := listOf("rated_at")
	for _, r := range []struct {
		deg   int
		ratio float64
	}{{15, 0.8}, {30, 0.65}, {45, 0.3}, {90, 0.25}} {
		at.below = append(at.below, mapOf("", need(val("angle_from_axis", fmt.Sprint(r.deg, " deg"))), need(val("rated_load", s.rating(r.ratio*inLine)))))
	}
	fields := []*entry{val("pattern", "shouldered"), bare("seated", "true"), val("axis", "up"), val("rated_load", s.rating(inLine)), at}
	return append(fields, s.turned(i)...)
}

// insert holds four times the pull, its hardware five times.
func (s *sketch) insert(i int) []*entry {
	return []*entry{
		val("panel", s.pick("other", "other", "tilt_up")),
		val("breaking_load", s.rating(4.2*s.ratedT)), val("hardware_breaking_load", s.rating(5.2*s.ratedT)),
		val("concrete_strength_needed", s.pick("15000 kPa", "2200 psi")), val("concrete_strength", s.pick("18000 kPa", "25000 kPa", "3000 psi")),
		s.flattest(i),
	}
}

// turned gives the axis of a hole so that the leg pulls in the plane of its
// plate: at right angles to the leg's direction in plan.
func (s *sketch) turned(i int) []*entry {
	return s.turnedToward(s.points[i], s.center)
}

// turnedToward turns it to a leg that comes from above another point.
func (s *sketch) turnedToward(p, from [3]float64) []*entry {
	toward := math.Atan2(from[1]-p[1], from[0]-p[0]) * 180 / math.Pi
	if from[0] == p[0] && from[1] == p[1] { // a plumb leg has none
		toward = s.between(-90, 90)
	}
	axis, turn := "across", toward
	if s.chance(0.4) {
		axis, turn = "along", toward+90
	}
	turn = math.Round(10*math.Remainder(turn, 180)) / 10
	return []*entry{val("hole_axis", axis), when(turn != 0, val("turned_in_plan", plain(turn)+" deg"))}
}
