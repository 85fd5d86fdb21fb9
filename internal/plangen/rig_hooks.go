package plangen

import "fmt"

// hookCalled adds one of several hooks.
func (g *rig) hookCalled(id string) {
	g.cranes.below = append(g.cranes.below, mapOf("", need(val("id", id))))
}

// girder is long, on a hook at each end, level and sloped.
func (g *rig) girder() {
	g.box(g.between(8, 24), g.between(0.6, 1.5), g.between(0.8, 2))
	g.equipFor(0.8, 70, 2)
	half := g.size[0] * g.between(0.25, 0.4)
	side := g.snap(g.size[1] * g.between(0.3, 0.4))
	left, right := g.ends(g.snap(half))
	g.underHook("west", left, side)
	g.underHook("east", right, side)
	if g.chance(0.3) {
		return
	}
	slope := 1 + g.r.IntN(4)
	g.phases.below = []*entry{mapOf("", need(val("name", "level")), need(val("pitch", "0 deg")))}
	g.phases.below = append(g.phases.below, mapOf("", need(val("name", "sloped")), need(val("pitch", fmt.Sprint(-slope, " deg"))),
		need(val("until", fmt.Sprint(slope, " deg"))), need(val("step", fmt.Sprint(slope, " deg")))))
}

// underHook hangs an end of the load from a hook: on one leg, or on two across it.
func (g *rig) underHook(id string, at place, side float64) {
	g.hookCalled(id)
	hook := raised(at, at[2]+g.least()+1)
	if g.chance(0.5) {
		g.support(id, nil, g.leg(apart(hook, at), inHook, g.attach(at, at)))
		return
	}
	by := []string{g.add(g.linkItem(g.id("ML"), "master_link", g.master, g.day, g.steel))}
	var legs []*entry
	for _, y := range []float64{-side, side} {
		p := place{at[0], g.snap(at[1] + y), at[2]}
		legs = append(legs, g.leg(apart(hook, p), inLink, g.attach(p, at)))
	}
	g.support(id, by, legs...)
}

// turnUp is a vessel that two hooks turn from lying to standing: by one point of
// its head or two below a beam across it, and by a tail that is let go of at last.
func (g *rig) turnUp() {
	g.box(g.between(8, 16), g.between(1.2, 2.4), 0)
	g.size[2] = g.size[1]
	g.center[2] = g.snap(g.size[1] / 2)
	g.equipFor(1.1, 90, 2)
	head := place{g.snap(g.size[0] * 0.95), g.center[1], g.center[2]}
	tail := place{g.snap(g.size[0] * 0.05), g.center[1], g.snap(g.size[2] + 0.15)}
	g.hookCalled("head")
	g.hookCalled("tail")
	if g.chance(0.5) {
		g.support("head", nil, g.leg(g.least(), inHook, g.attachAcross(head)))
	} else {
		side, lift := g.snap(g.size[1]/2+0.2), g.snap(g.between(0.4, 0.7))
		id := g.beam("lifting_beam", beamPoint{"top", place{0, 0, lift}}, beamPoint{"near", place{-side, 0, 0}}, beamPoint{"far", place{side, 0, 0}})
		g.support("head", nil, g.leg(g.least(), inHook, id+".top"))
		reach := g.least() + 1
		for _, end := range []struct {
			id string
			y  float64
		}{{".near", -side}, {".far", side}} {
			p := place{head[0], g.snap(head[1] + end.y), head[2]}
			g.drop(id+end.id, raised(p, p[2]+reach), p, g.attachAcross(p))
		}
	}
	g.support("tail", nil, g.leg(g.least(), inHook, g.attachAcross(tail)))
	step := g.pick("15 deg", "12.5 deg", "7.5 deg")
	g.phases.below = []*entry{
		mapOf("", need(val("name", "turning")), need(val("pitch", "0 deg")), need(val("until", "75 deg")), need(val("step", step))),
		mapOf("", need(val("name", "upright")), need(val("pitch", "90 deg")), need(listOf("released", val("", "tail")))),
	}
}

// attachAcross adds a padeye with its pin across the load, so that the pull stays
// in its plate while the load is turned.
func (g *rig) attachAcross(at place) string {
	id := g.attach(at, at)
	p := g.attached.with("id", id)
	p.set(val("hole_axis", "across"))
	p.set(val("rated_to_angle_from_horizontal", "0 deg"))
	p.drop("turned_in_plan")
	return id
}
