package plangen

import (
	"fmt"
	"math"
)

// beamPoint is a hole of a beam, in the beam's own axes.
type beamPoint struct {
	id string
	at place
}

// beam adds a beam of a kind and gives its id.
func (g *rig) beam(kind string, points ...beamPoint) string {
	prefix := map[string]string{"spreader_beam": "SB", "lifting_beam": "LB", "rocker_plate": "RP"}[kind]
	list := listOf("points")
	length := 0.0
	for _, p := range points {
		fields := append([]*entry{need(val("id", p.id)), val("hole_axis", "across")}, g.plate()...)
		list.below = append(list.below, g.point("", p.at, fields...))
		length = max(length, 2*math.Abs(p.at[0]), 2*math.Abs(p.at[1]))
	}
	newtons := 10 * g.massT // thousands
	item := mapOf("", need(val("id", g.id(prefix))), need(val("kind", kind)), val("rated_load", g.rating(1.5*g.massT+1)))
	if kind != "rocker_plate" {
		item.set(val("rated_compression", fmt.Sprintf("%.0f kN", 2*newtons)))
		item.set(val("rated_bending_moment", fmt.Sprintf("%.0f kN m", math.Ceil(0.5*newtons*(length+1)))))
	}
	item.set(val("category", "B, service class 1"))
	item.set(mapOf("proof_test", val("load", "125 %"), val("date", "2026-03-01")))
	if g.chance(0.5) {
		item.set(val("least_top_angle_from_horizontal", "45 deg"))
	}
	item.set(need(list))
	item.set(val("mass", g.mass(g.pounds(g.massT*(0.01+0.01*length)))))
	item.set(g.inspected())
	return g.add(item)
}

// inspected is an inspection that says when the next one is due.
func (g *rig) inspected() *entry {
	i := g.inspection(g.day)
	if i.at("next_due") == nil {
		i.set(val("next_due", written(g.day.AddDate(0, 0, 31+g.r.IntN(90)))))
	}
	return i
}

// pounds is a mass that is written exactly.
func (g *rig) pounds(t float64) float64 {
	if g.us {
		return math.Round(t*1000/poundKg) * poundKg / 1000
	}
	return math.Round(t*1000) / 1000
}

// top hangs something from the crane's hook on two legs, whose upper ends meet at
// an angle from horizontal of about so much, or on one that is plumb. It gives
// where that is.
func (g *rig) top(angleDeg float64, ids []string, at ...place) place {
	hook := place{g.center[0], g.center[1], at[0][2] + g.least()}
	for _, p := range at {
		hook[2] = max(hook[2], p[2]+math.Hypot(p[0]-hook[0], p[1]-hook[1])*math.Tan(radians(angleDeg)))
	}
	hook = g.snapped(hook)
	from, by := inHook, []string(nil)
	if len(at) > 2 || g.chance(0.3) {
		from, by = inLink, []string{g.add(g.linkItem(g.id("ML"), "master_link", g.master, g.day, g.steel))}
	}
	var legs []*entry
	for i, p := range at {
		legs = append(legs, g.leg(apart(hook, p), from, ids[i]))
	}
	g.support("hook", by, legs...)
	return hook
}

// drop hangs a leg from a point of a beam, plumb or nearly so. Where lengths are
// left open, the height of the point says how long its sling has to be.
func (g *rig) drop(from string, upper, lower place, at string) {
	leg := g.leg(apart(upper, lower), inPlate, at)
	s := g.support(from, nil, leg)
	if !g.open {
		return
	}
	for _, id := range leg.at("down").below {
		if item := g.items.with("id", id.text); item.at("core") != nil { // of rope
			item.drop("length", "circumference")
		}
	}
	s.set(val("height_above_datum", g.length(upper[2])))
}

// below hangs the load from a point of a beam: on one leg, or on a bridle of two
// across the load.
func (g *rig) below(from string, upper, lower place, side float64) {
	if !g.chance(0.3) {
		g.drop(from, upper, lower, g.attach(lower, lower))
		return
	}
	link := g.linkItem(g.id("ML"), "master_link", g.master, g.day, g.steel)
	by := []string{g.add(g.shackleInPlate()), g.add(link)}
	meet := upper
	meet[2] -= g.low.lengthM + g.master.lengthM
	var legs []*entry
	for _, y := range []float64{-side, side} {
		p := place{lower[0], g.snap(lower[1] + y), lower[2]}
		legs = append(legs, g.leg(apart(meet, p), inLink, g.attach(p, lower)))
	}
	g.support(from, by, legs...)
}

func (g *rig) spreader() {
	g.box(g.between(4, 9), g.between(1.5, 3), g.between(1, 3))
	g.equipFor(0.6, 50, 2)
	half := g.snap(g.size[0] * g.between(0.25, 0.45))
	low := g.snap(g.size[2] + g.least() + 1.5)
	rise := g.snap(g.between(0.1, 0.3))
	id := g.beam("spreader_beam", beamPoint{"tl", place{-half, 0, rise}}, beamPoint{"tr", place{half, 0, rise}},
		beamPoint{"bl", place{-half, 0, 0}}, beamPoint{"br", place{half, 0, 0}})
	left, right := g.ends(half)
	g.top(g.between(50, 65), []string{id + ".tl", id + ".tr"}, raised(left, low+rise), raised(right, low+rise))
	side := g.snap(g.size[1] * g.between(0.2, 0.4))
	g.below(id+".bl", raised(left, low), left, side)
	g.below(id+".br", raised(right, low), right, side)
}

// ends are two places on top of the load, to both sides of its center of gravity.
func (g *rig) ends(half float64) (left, right place) {
	g.halfM = half
	c, top := g.center, g.size[2]
	return place{c[0] - half, c[1], top}, place{c[0] + half, c[1], top}
}

func raised(p place, z float64) place { return place{p[0], p[1], z} }

func (g *rig) liftingBeam() {
	g.box(g.between(3, 8), g.between(1, 2.5), g.between(1, 2.5))
	g.equipFor(1, 90, 2)
	half := g.snap(g.size[0] * g.between(0.25, 0.45))
	low := g.snap(g.size[2] + g.least())
	rise := g.snap(g.between(0.4, 0.8))
	id := g.beam("lifting_beam", beamPoint{"top", place{0, 0, rise}}, beamPoint{"left", place{-half, 0, 0}}, beamPoint{"right", place{half, 0, 0}})
	left, right := g.ends(half)
	g.top(90, []string{id + ".top"}, raised(g.center, low+rise))
	g.drop(id+".left", raised(left, low), left, g.attach(left, left))
	g.drop(id+".right", raised(right, low), right, g.attach(right, right))
}
