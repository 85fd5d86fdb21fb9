package compute_test

import (
	"fmt"
	"testing"
)

// fitSituations are plans whose parts go over and into one another in every
// way that a plan can describe.
func fitSituations(t testing.TB) map[string]func() tree {
	two := func() tree { return withCollectors(rulesBase(t, "two_legs")) }
	return map[string]func() tree{
		"shackle gathers, pin above":    func() tree { return two().by("KU") },
		"shackle gathers, pin below":    func() tree { return two().by("KL") },
		"shackle gathers, pin anywhere": func() tree { return two().by("KX") },
		"links and shackles":            func() tree { return two().by("KU", "ML8", "KL") },
		"a pear on the hook":            func() tree { return two().by("ML9", "ML8") },
		"legs of every sort":            func() tree { return everySort(rulesBase(t, "four_legs")) },
		"legs of every sort on a hook":  func() tree { return everySort(rulesBase(t, "four_legs")).drop("rigging/0/by") },
		"an eye in a ring, a bow in a padeye": func() tree {
			return two().set("load/attachments/0", ring("A", "hoist_ring", 0)).set("rigging/0/legs/0/down", []any{"S1"}).set("gear/3/pin", "upper")
		},
		"two shackles in one hole": func() tree { return two().set("rigging/0/legs/1/end/at", "A") },
	}
}

// by names what hangs between the hook and the legs.
func (v tree) by(ids ...string) tree {
	list := []any{}
	for _, id := range ids {
		list = append(list, id)
	}
	return v.set("rigging/0/by", list)
}

// shackle is one large enough to gather legs, with its pin at that end; an
// empty end leaves it out.
func shackle(id, pin string) map[string]any {
	s := map[string]any{"id": id, "kind": "shackle", "pattern": "bow", "pin_kind": "bolt", "rated_load": "13-1/2 short_ton", "inside_length": "133 mm",
		"jaw": "57 mm", "pin_diameter": "38 mm", "bow_diameter": "35 mm", "inside_width": "92 mm", "mass": "4 kg"}
	if pin != "" {
		s["pin"] = pin
	}
	return s
}

func link(id, shape string) map[string]any {
	return map[string]any{"id": id, "kind": "master_link", "shape": shape, "rated_load": "8 t", "inside_length": "270 mm", "inside_width": "140 mm", "section_diameter": "28 mm"}
}

// withCollectors puts into the gear a shackle with its pin above, one with it
// below, one of which that is not known, an oblong and a pear-shaped link.
func withCollectors(v tree) tree {
	return v.add(shackle("KU", "upper")).add(shackle("KL", "lower")).add(shackle("KX", "")).add(link("ML8", "oblong")).add(link("ML9", "pear"))
}

// ring is an attachment with a ring.
func ring(id, kind string, xMM int) map[string]any {
	a := map[string]any{"id": id, "kind": kind, "x": meters(xMM), "y": "0.5 m", "z": "1 m", "rated_load": "5 t", "hole": "40 mm", "thickness": "18 mm", "axis": "up", "seated": true}
	if kind == "hoist_ring" {
		a["rated_to_angle_from_axis"] = "90 deg"
	} else {
		a["pattern"], a["hole_axis"] = "shouldered", "across"
	}
	return a
}

func hook(id string) map[string]any {
	return map[string]any{"id": id, "kind": "hook", "rated_load": "4 t", "inside_length": "120 mm",
		"eye_diameter": "20 mm", "body_width": "24 mm", "throat": "30 mm", "latch": "works", "points": "outward"}
}

// everySort makes four legs that have little in common: one begins with a
// shackle, one is of two slings, one ends in sockets, one in a hook below a
// shackle.
func everySort(v tree) tree {
	withCollectors(v).add(hook("H4"))
	v.add(map[string]any{"id": "S5", "kind": "wire_rope_sling", "diameter": "18 mm", "length": "1 m"})
	socket := map[string]any{"kind": "socket", "width": "40 mm"}
	v.set("gear/3/eyes", map[string]any{"upper": socket, "lower": socket}).set("gear/4/eyes/lower/thimble_size", "18 mm")
	v.set("load/attachments/2", ring("C", "eyebolt", 3000))
	for i, down := range [][]any{{"KU", "S1", "K1"}, {"S2", "KX", "S5", "K2"}, {"S3", "K3"}, {"S4", "KL", "H4"}} {
		v.set(fmt.Sprintf("rigging/0/legs/%d/down", i), down)
	}
	return v
}
