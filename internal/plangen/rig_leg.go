package plangen

import (
	"fmt"
	"math"
)

// above is what the upper end of a leg hangs in.
type above int

const (
	inHook  above = iota // the crane's hook
	inLink               // a master link
	inPlate              // a point of a beam, by a shackle
	onBlock              // the groove of a sheave
)

// apart is how far two places lie from each other.
func apart(p, q place) float64 {
	return math.Hypot(math.Hypot(p[0]-q[0], p[1]-q[1]), p[2]-q[2])
}

// support adds an entry of rigging.
func (g *rig) support(from string, by []string, legs ...*entry) *entry {
	list := listOf("by")
	for _, id := range by {
		list.below = append(list.below, val("", id))
	}
	s := mapOf("", need(val("from", from)), when(len(by) > 0, need(list)), need(listOf("legs", legs...)))
	g.supports.below = append(g.supports.below, s)
	return s
}

// endAt ends a leg at a point.
func endAt(at string) *entry { return need(mapOf("end", need(val("kind", "to")), need(val("at", at)))) }

// leg is a straight one that reaches so far, with a shackle at its lower end.
func (g *rig) leg(reachM float64, from above, at string) *entry {
	parts, rest := listOf("down"), reachM
	add := func(id string, lengthM float64) {
		parts.below, rest = append(parts.below, val("", id)), rest-lengthM
	}
	shackle := func() string { return g.add(g.shackleItem(g.id("K"), g.day, g.steel)) }
	if from == inPlate {
		add(g.add(g.shackleInPlate()), g.low.lengthM)
	}
	sling := len(parts.below)
	parts.below = append(parts.below, nil)
	if extra, lengthM := g.extra(); extra != nil {
		between := shackle()
		g.items.with("id", between).set(val("pin", "lower"))
		add(between, g.low.lengthM)
		add(g.add(extra), lengthM)
	}
	add(shackle(), g.low.lengthM)
	endless := from == inPlate && !g.plain && g.chance(0.2)
	doubled := endless && g.chance(0.6)
	switch {
	case doubled:
		parts.below[sling] = val("", g.add(g.grommetItem(4*g.snap(rest))))
	case endless:
		parts.below[sling] = val("", g.add(g.grommetItem(2*g.snap(rest))))
	default:
		parts.below[sling] = val("", g.add(g.slingItem(g.id("S"), g.snap(rest), g.eyeIn(from), g.lowerEye(), g.day)))
	}
	if g.topM == 0 {
		g.topM = rest
	}
	return mapOf("", need(parts), when(doubled, bare("doubled", "true")), endAt(at))
}

// eyeIn is an upper eye.
func (g *rig) eyeIn(from above) eye {
	switch from {
	case inLink:
		return g.over(g.master.sectionM)
	case inPlate, onBlock:
		return g.lowerEye()
	}
	return g.upperEye()
}

// hitched is a leg of one sling that goes round or over something.
func (g *rig) hitched(lengthM float64, from above, end *entry) *entry {
	lower := g.eyeIn(from)
	if end.at("kind").text == "choke" {
		lower = g.lowerEye() // small, so that the choke lands beyond it
	}
	sling := g.slingItem(g.id("S"), g.snap(lengthM), g.eyeIn(from), lower, g.day)
	tag := sling.at("tag")
	tag.set(val("basket_rated_load", g.marked(2*g.rope.ratedT)))
	tag.set(val("choker_rated_load", g.marked(g.markedDown(0.75*g.rope.ratedT))))
	return mapOf("", need(listOf("down", val("", g.add(sling)))), need(end))
}

// shackled puts a shackle at both ends of the sling of a leg, the last one's pin at the
// end of it that takes a plate.
func (g *rig) shackled(leg, upper *entry, lastPin string) {
	down := leg.at("down")
	lower := g.shackleItem(g.id("K"), g.day, g.steel)
	lower.set(val("pin", lastPin))
	down.below = []*entry{val("", g.add(upper)), down.below[0], val("", g.add(lower))}
}

// shackleInPlate is one that hangs from a plate above it: by its pin, where the plan says
// where that is. Its ears would not go through the hole.
func (g *rig) shackleInPlate() *entry {
	item := g.shackleItem(g.id("K"), g.day, g.steel)
	if item.at("pin") != nil {
		item.set(val("pin", "upper"))
	}
	return item
}

// extra is, now and then, a load cell or a turnbuckle, and its length.
func (g *rig) extra() (*entry, float64) {
	kind := g.pick("load_cell", "turnbuckle", "", "", "", "", "", "", "", "")
	if kind == "" || g.plain {
		return nil, 0
	}
	length := g.snap(g.between(0.2, 0.9))
	prefix := map[string]string{"load_cell": "LC", "turnbuckle": "TB"}[kind]
	item := mapOf("", need(val("id", g.id(prefix))), need(val("kind", kind)), val("rated_load", g.rating(g.ratedT)), val("length", g.length(length)))
	if kind == "turnbuckle" {
		item.set(val("shortest", g.length(g.snap(0.9*length))))
		item.set(val("longest", g.length(g.snap(1.2*length))))
	}
	item.set(val("mass", g.own(5+3*g.massT)))
	item.set(g.inspected())
	return item, length
}

// grommetItem is one of the same rope as the slings.
func (g *rig) grommetItem(circumferenceM float64) *entry {
	id := g.id("G")
	item := g.slingItem(id, circumferenceM/2, eye{}, eye{}, g.day)
	item.at("kind").text = "grommet"
	item.drop("eyes", "length", "inspection")
	item.set(g.inspected())
	item.set(val("laid", "strand_laid"))
	item.set(val("circumference", g.length(circumferenceM)))
	item.set(val("splice_at", g.length(circumferenceM/8))) // midway between bearings, laid double too
	item.at("tag").drop("serial")
	item.at("tag").set(quoted("serial", fmt.Sprintf("%04d", g.r.IntN(10000))))
	return item
}

// blockItem is a sheave block whose sheave spares the rope.
func (g *rig) blockItem(lengthM float64) string {
	return g.add(mapOf("",
		need(val("id", g.id("BLK"))), need(val("kind", "sheave_block")),
		val("rated_load", g.rating(g.ratedT)), val("length", g.length(lengthM)),
		val("sheave_diameter", g.part(g.grainUp(26*g.d()))), val("mass", g.own(10+4*g.massT)), g.inspected(),
	))
}
