package plangen

// twoLevels is a spreader with a beam across the load below each of its ends: one
// that hangs from its middle, with a leg at each end.
func (g *rig) twoLevels() {
	g.box(g.between(5, 9), g.between(2.6, 4), g.between(1, 2.5))
	g.equipFor(0.6, 50, 2)
	half, side := g.snap(g.size[0]*g.between(0.25, 0.45)), g.snap(g.size[1]*g.between(0.33, 0.45))
	rise, lift := g.snap(g.between(0.1, 0.3)), g.snap(g.between(0.3, 0.6))
	lower := g.snap(g.size[2] + g.least() + 1.5) // of the points that the load hangs from
	upper := g.snap(lower + lift + g.least() + 1.5)
	id := g.beam("spreader_beam", beamPoint{"tl", place{-half, 0, rise}}, beamPoint{"tr", place{half, 0, rise}},
		beamPoint{"bl", place{-half, 0, 0}}, beamPoint{"br", place{half, 0, 0}})
	left, right := g.ends(half)
	g.top(g.between(50, 65), []string{id + ".tl", id + ".tr"}, raised(left, upper+rise), raised(right, upper+rise))
	g.across(id+".bl", raised(left, upper), raised(left, lower), left, side, lift, g.pick("lifting_beam", "rocker_plate"))
	g.across(id+".br", raised(right, upper), raised(right, lower), right, side, lift, g.pick("lifting_beam", "rocker_plate"))
}

// across hangs a beam or a rocker plate from a point on a plumb leg, and two points
// of the load, or of what is there, from that.
func (g *rig) across(from string, upper, middle, point place, side, lift float64, kind string) {
	id := g.beam(kind, beamPoint{"top", place{0, 0, lift}}, beamPoint{"near", place{-side, 0, 0}}, beamPoint{"far", place{side, 0, 0}})
	g.drop(from, upper, raised(middle, middle[2]+lift), id+".top")
	for _, end := range []struct {
		id string
		y  float64
	}{{".near", -side}, {".far", side}} {
		p := place{point[0], g.snap(point[1] + end.y), point[2]}
		g.drop(id+end.id, raised(p, middle[2]), p, g.attach(p, p))
	}
}

// rockers is a load on two plates below a spreader, each with two legs.
func (g *rig) rockers() {
	g.box(g.between(3, 7), g.between(2.6, 3.4), g.between(1, 2))
	g.equipFor(0.6, 50, 2)
	side, lift := g.snap(g.between(1, 1.2)), g.snap(g.between(0.2, 0.4))
	low := g.snap(g.size[2] + g.least() + 1.5)
	half := g.snap(g.size[0] * g.between(0.25, 0.4))
	high := g.snap(low + lift + g.least() + 1.5)
	id := g.beam("spreader_beam", beamPoint{"tl", place{-half, 0, 0}}, beamPoint{"tr", place{half, 0, 0}},
		beamPoint{"bl", place{-half, 0, -0.254}}, beamPoint{"br", place{half, 0, -0.254}})
	left, right := g.ends(half)
	g.top(g.between(50, 65), []string{id + ".tl", id + ".tr"}, raised(left, high+0.254), raised(right, high+0.254))
	g.across(id+".bl", raised(left, high), raised(left, low), left, side, lift, "rocker_plate")
	g.across(id+".br", raised(right, high), raised(right, low), right, side, lift, "rocker_plate")
}

// sheaves is a load on slings that run over blocks: one from the crane's hook to
// two points along the load, or one below each end of a spreader to two across it.
// Its center of gravity is low, or it would turn over as the ropes run.
func (g *rig) sheaves() {
	g.box(g.between(3, 6), g.between(1, 1.6), g.between(2, 3.5))
	g.center[2] = g.snap(g.size[2] * g.between(0.1, 0.25))
	if g.chance(0.5) {
		g.equipFor(0.6, 50, 2)
		half := g.snap(g.between(0.4, 0.8))
		g.center[0] = g.snap(g.size[0] / 2)
		left, right := g.ends(half)
		g.overBlock("hook", raised(g.center, g.size[2]+g.least()+2), left, right)
		return
	}
	g.equipFor(0.6, 50, 2)
	half, side := g.snap(g.size[0]*g.between(0.25, 0.45)), g.snap(g.between(0.3, 0.5))
	low := g.snap(g.size[2] + g.least() + 2)
	rise := g.snap(g.between(0.1, 0.3))
	id := g.beam("spreader_beam", beamPoint{"tl", place{-half, 0, rise}}, beamPoint{"tr", place{half, 0, rise}},
		beamPoint{"bl", place{-half, 0, 0}}, beamPoint{"br", place{half, 0, 0}})
	left, right := g.ends(half)
	g.top(g.between(50, 65), []string{id + ".tl", id + ".tr"}, raised(left, low+rise), raised(right, low+rise))
	for _, end := range []struct {
		id string
		at place
	}{{".bl", left}, {".br", right}} {
		near, far := end.at, end.at
		near[1], far[1] = g.snap(near[1]-side), g.snap(far[1]+side)
		g.overBlock(id+end.id, raised(end.at, low), near, far)
	}
}

// overBlock hangs two points from a place on a sling over a block.
func (g *rig) overBlock(from string, upper, one, other place) {
	length := g.snap(0.3 + 14*g.d())
	by := []string{g.blockItem(length)}
	if from != "hook" {
		by = append([]string{g.add(g.shackleInPlate())}, by...)
		length += g.low.lengthM
	}
	reach := apart(raised(upper, upper[2]-length), one) + apart(raised(upper, upper[2]-length), other)
	leg := g.hitched(reach-2*g.low.lengthM, onBlock, need(mapOf("end", need(val("kind", "runs_to")),
		need(listOf("at", val("", g.attach(one, upper)), val("", g.attach(other, upper)))))))
	g.shackled(leg, g.shackleItem(g.id("K"), g.day, g.steel), "lower")
	g.support(from, by, leg)
}
