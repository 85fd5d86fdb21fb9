package plangen

import (
	"fmt"
	"math"
)

// pipe is a round body along the load, which is all there is of it.
func (g *rig) pipe(diameterM float64) {
	g.size[1], g.size[2] = diameterM, diameterM
	g.center[1], g.center[2] = 0, 0
	g.bodies.below = append(g.bodies.below, mapOf("",
		need(val("id", "pipe")), need(val("kind", "round")), need(val("axis", "along")),
		g.start(place{}), val("length", g.length(g.size[0])), val("diameter", g.length(diameterM)),
		val("surface", g.pick("dry_steel", "dry_steel", "wood")),
	))
}

// start is where a body begins, all of it.
func (g *rig) start(at place) *entry {
	start := g.point("start", at)
	for _, c := range start.below {
		need(c)
	}
	return need(start)
}

// bundle is a body with corners along the load.
func (g *rig) bundle(id, axis string, start place, length, width, height float64) {
	g.bodies.below = append(g.bodies.below, mapOf("",
		need(val("id", id)), need(val("kind", "box")), need(val("axis", axis)),
		g.start(start), val("length", g.length(length)), val("width", g.length(width)), val("height", g.length(height)),
		val("edge_radius", g.part(g.grainUp(13*g.d()))), val("surface", g.pick("dry_steel", "wood")),
	))
}

// round is where a sling lies.
func (g *rig) round(body string, station float64, more ...*entry) *entry {
	return need(mapOf("round", append([]*entry{need(val("body", body)), need(val("station", g.length(station)))}, more...)...))
}

func end(kind string, more ...*entry) *entry {
	return mapOf("end", append([]*entry{need(val("kind", kind))}, more...)...)
}

// baskets is a pipe or a bundle in two baskets: close together on a master link, or
// plumb below the ends of a spreader.
func (g *rig) baskets() {
	g.box(g.between(4, 10), 1, 1)
	below := g.chance(0.5)
	g.equipFor(0.5, 50, 4)
	across := g.body("pipe")
	reach := g.least() + 1
	if !below {
		half := 0.5
		by := []string{g.add(g.linkItem(g.id("ML"), "master_link", g.master, g.day, g.steel))}
		var legs []*entry
		for _, x := range []float64{-half, half} {
			station := g.snap(g.center[0] + x)
			legs = append(legs, g.hitched(2*reach+across, inLink, end("basket", g.round("pipe", station))))
		}
		g.support("hook", by, legs...)
		return
	}
	half := g.snap(g.size[0] * g.between(0.15, 0.3))
	id, left, right := g.bareSpreader(half, g.size[2]/2+g.least())
	for _, e := range []struct {
		id string
		at place
	}{{".bl", left}, {".br", right}} {
		link := g.linkItem(g.id("ML"), "master_link", g.master, g.day, g.steel)
		by := []string{g.add(g.shackleInPlate()), g.add(link)}
		g.support(id+e.id, by, g.hitched(2*reach+across, inLink, end("basket", g.round("pipe", e.at[0]))))
	}
}

// body adds the round body or the one with corners that the load is, and gives
// about half of what goes round it.
func (g *rig) body(id string) float64 {
	if g.chance(0.7) {
		d := g.snap(g.between(0.4, 1.2))
		g.pipe(d)
		return math.Pi / 2 * d
	}
	w, h := g.snap(g.between(0.4, 0.9)), g.snap(g.between(0.3, 0.7))
	g.size[1], g.size[2] = w, h
	g.center[1], g.center[2] = 0, 0
	g.bundle(id, "along", place{}, g.size[0], w, h)
	return w + h
}

// bareSpreader hangs one from the hook over the load, and gives the places of its
// lower points.
func (g *rig) bareSpreader(half, above float64) (id string, left, right place) {
	g.halfM = half
	rise := g.snap(g.between(0.1, 0.3))
	low := g.snap(above + 2)
	id = g.beam("spreader_beam", beamPoint{"tl", place{-half, 0, rise}}, beamPoint{"tr", place{half, 0, rise}},
		beamPoint{"bl", place{-half, 0, 0}}, beamPoint{"br", place{half, 0, 0}})
	c := g.center
	left, right = place{g.snap(c[0] - half), c[1], low}, place{g.snap(c[0] + half), c[1], low}
	g.top(g.between(50, 65), []string{id + ".tl", id + ".tr"}, raised(left, low+rise), raised(right, low+rise))
	return id, left, right
}

// cradle is a body across the load in two baskets whose ends go to two points of
// a frame.
func (g *rig) cradle() {
	g.box(g.between(2, 3), g.between(2, 5), g.between(1, 2))
	g.exact = true
	g.equipFor(0.6, 50, 2)
	c := g.center
	w, h := g.snap(g.between(0.6, 1.2)), g.snap(g.between(0.6, 1))
	start := g.snapped(place{c[0], 0, c[2] + h/2 + 0.2}) // the sling leaves its lower corners
	g.bundle("drum", "across", start, g.size[1], w, h)
	half, side := g.snap(w/2+[]float64{-0.1, 0.1}[g.r.IntN(2)]), g.snap(g.size[1]*g.between(0.15, 0.3))
	rise := g.snap(g.between(0.4, 0.7))
	drop := g.least()
	low := g.snap(start[2] + h/2 + drop)
	id := g.beam("spreader_beam", beamPoint{"tl", place{-half, 0, rise}}, beamPoint{"tr", place{half, 0, rise}},
		beamPoint{"l1", place{-half, -side, 0}}, beamPoint{"r1", place{half, -side, 0}},
		beamPoint{"l2", place{-half, side, 0}}, beamPoint{"r2", place{half, side, 0}})
	left, right := place{c[0] - half, c[1], low + rise}, place{c[0] + half, c[1], low + rise}
	g.top(g.between(50, 65), []string{id + ".tl", id + ".tr"}, left, right)
	for i, y := range []float64{-side, side} {
		n := fmt.Sprint(i + 1)
		station := g.snap(c[1] + y - start[1])
		leg := g.hitched(2*drop+w+h-2*g.low.lengthM, inPlate, end("basket", g.round("drum", station, bare("softened", "true")), need(val("up_to", id+".r"+n))))
		g.shackled(leg, g.shackleInPlate(), "upper") // both hang from plates
		g.support(id+".l"+n, nil, leg)
		g.support(id+".r"+n, nil)
	}
}

// chokes is a pipe or a bundle choked below the ends of a spreader.
func (g *rig) chokes() {
	g.box(g.between(4, 10), 1, 1)
	g.equipFor(0.75, 50, 2)
	across := g.body("pipe")
	g.center[2] = g.snap(g.center[2] - g.between(0.12, 0.2)) // or it would roll in its chokes
	g.exact = true
	half := g.snap(g.size[0] * g.between(0.15, 0.3))
	id, left, right := g.bareSpreader(half, g.size[2]/2+g.least())
	reach := g.least() + 2*across
	for _, e := range []struct {
		id string
		at place
	}{{".bl", left}, {".br", right}} {
		leg := g.hitched(reach, inPlate, end("choke", g.round("pipe", e.at[0], val("held_by", "bands round the pipe"))))
		leg.at("down").below = append([]*entry{val("", g.add(g.shackleInPlate()))}, leg.at("down").below...)
		g.support(id+e.id, nil, leg)
	}
}

// column stands as it is lifted, on one choker above its center of gravity.
func (g *rig) column() {
	g.box(g.between(6, 10), 1, 1)
	g.massT = g.pounds(math.Min(g.massT, 5)) // it is slender, or it would lean
	g.equipFor(1.5, 90, 2)
	g.center[0] = g.snap(g.size[0] * g.between(0.4, 0.45))
	d := g.snap(g.between(0.3, 0.34))
	g.pipe(d)
	g.pitch = 87 // it hangs by its side
	reach := g.least() + 5*d
	turns := fmt.Sprint(1 + g.r.IntN(2))
	if turns == "2" {
		reach += math.Pi * d
	}
	station := g.snap(g.size[0] * g.between(0.86, 0.92))
	g.support("hook", nil, g.hitched(reach, inHook, end("choke", g.round("pipe", station, bare("turns", turns), val("held_by", "cap plate above it")))))
}
