package plangen

import (
	"fmt"
	"math"
	"math/rand/v2"
	"time"
)

// place is a point in the load's axes, in meters: that of what hangs above it too,
// with the load held as it is meant to hang.
type place = [3]float64

// rig is an arrangement in the making. All its shackles are alike, and so are its
// slings but for their lengths and eyes.
type rig struct {
	*sketch
	day      time.Time
	steel    string
	open     bool    // lengths below beams are left out, and heights given
	plain    bool    // no leg has more than a sling and its shackles
	halfM    float64 // half of what the places lie apart that the load is held at
	topM     float64 // the sling of the first leg from the crane's hook
	exact    bool    // the center of gravity has no tolerance
	pitch    float64
	count    map[string]int // by kind of id, how many there are
	attached *entry         // attachments of the load
	bodies   *entry
	cranes   *entry // hooks, where there are several
	items    *entry
	supports *entry
	phases   *entry
}

func newRig(r *rand.Rand) *rig {
	s := &sketch{r: r, fittings: true, kind: "padeye"}
	s.us = s.chance(0.35)
	s.massT, s.tolerate = math.Round(s.between(1, 16)*100)/100, 1+s.r.IntN(5)
	s.made = s.ropeMake()
	s.taste = s.newTaste()
	g := &rig{
		sketch: s, day: s.day(), count: map[string]int{},
		attached: listOf("attachments"), bodies: listOf("bodies"), cranes: listOf("hooks"),
		items: listOf("gear"), supports: listOf("rigging"), phases: listOf("phases"),
	}
	g.open = g.chance(0.1)
	if g.chance(0.3) {
		g.steel = g.pick("carbon", "alloy")
	}
	return g
}

// box gives the load a size in which its center of gravity lies not quite in the
// middle.
func (g *rig) box(length, width, height float64) {
	g.size = g.snapped(place{length, width, height})
	g.center = g.snapped(place{length * g.between(0.47, 0.53), width / 2, height * g.between(0.3, 0.5)})
}

// equipFor picks gear for legs of which each takes a share of the load at an angle
// from horizontal; links take so many side by side.
func (g *rig) equipFor(share, angleDeg float64, sideBySide int) {
	g.points = make([]place, sideBySide)
	g.equip(1.4 * g.massT * (1 + float64(g.tolerate)/100) * share / math.Sin(radians(angleDeg)))
}

// id is the next of a kind.
func (g *rig) id(prefix string) string {
	g.count[prefix]++
	return fmt.Sprint(prefix, g.count[prefix])
}

// add puts an item among the gear and returns its id.
func (g *rig) add(item *entry) string {
	g.items.below = append(g.items.below, item)
	return item.at("id").text
}

// least is a reach that a leg of a sling between two shackles can have, with some
// more.
func (g *rig) least() float64 {
	eyes := g.lowerEye().lengthM + max(g.upperEye().lengthM, g.over(g.master.sectionM).lengthM)
	return g.snap(2*g.low.lengthM + eyes + (2*g.spliceD+26)*g.d() + g.between(0.2, 2) + 2)
}

// attach adds a padeye to the load, its plate in the pull of a leg from above
// another place.
func (g *rig) attach(at, from place) string {
	id := string(rune('A' + len(g.attached.below)))
	fields := append([]*entry{need(val("id", id)), need(val("kind", "padeye"))}, g.turnedToward(at, from)...)
	g.attached.below = append(g.attached.below, g.point("", at, append(fields, g.plate()...)...))
	return id
}

// plate is the hole of a point and what it is rated for.
func (g *rig) plate() []*entry {
	hole, thickness := g.hole(false)
	return []*entry{val("rated_load", g.rating(g.ratedT)), val("hole", g.part(hole)), val("thickness", g.part(thickness))}
}

// tree is the plan.
func (g *rig) tree() *entry {
	hook := []*entry{val("body_width", g.part(g.crane.widthM)), val("throat", g.part(g.crane.throatM)), val("latch", "works")}
	for _, h := range g.cranes.below {
		h.below = append(h.below, hook...)
	}
	return mapOf("",
		need(bare("liftlint", "1")),
		need(g.lift(g.day)),
		need(g.arrangedLoad()),
		when(len(g.cranes.below) == 0, mapOf("crane", mapOf("hook", hook...))),
		when(len(g.cranes.below) > 0, need(g.cranes)),
		need(g.items),
		need(g.supports),
		when(len(g.phases.below) > 0, g.phases),
	)
}

func (g *rig) arrangedLoad() *entry {
	load := g.loadWith(g.attached)
	if len(g.attached.below) == 0 {
		load.drop("attachments")
	}
	if !g.exact && g.chance(0.2) {
		load.at("center_of_gravity").set(val("tolerance", g.length(g.snap(g.between(0.02, 0.05)))))
	}
	if len(g.bodies.below) > 0 {
		load.set(need(g.bodies))
	}
	if g.pitch != 0 {
		load.set(need(mapOf("intended_attitude", val("pitch", fmt.Sprintf("%g deg", g.pitch)))))
	}
	return load
}
