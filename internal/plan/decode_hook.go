package plan

import "fmt"

// soleHook is the id of the hook where the plan names none.
const soleHook = "hook"

// decodeHooks reads the hooks that the plan names, or the one of its crane.
func decodeHooks(root fields) []Hook {
	if !root.of("hooks").exists() {
		crane := root.of("crane")
		h := decodeHook(crane.of("hook"))
		h.ID, h.Pointer = soleHook, crane.of("hook").pointerOr(crane.pointerOr(fromHook(root)))
		return []Hook{h}
	}
	var hooks []Hook
	for _, f := range root.of("hooks").items() {
		hooks = append(hooks, decodeHook(f))
	}
	return hooks
}

// fromHook is where the rigging names the hook first.
func fromHook(root fields) string {
	for i, s := range root.of("rigging").items() {
		if s.text("from") == soleHook {
			return fmt.Sprintf("/rigging/%d/from", i)
		}
	}
	return "/rigging/0/from"
}

func decodeHook(f fields) Hook {
	return Hook{
		Pointer:   f.pointer(),
		ID:        f.text("id"),
		X:         f.length("x"),
		Y:         f.length("y"),
		HoistRope: f.length("hoist_rope"),
		BodyWidth: f.length("body_width"),
		Throat:    f.length("throat"),
		Latch:     f.text("latch"),
	}
}

func decodePhases(list []fields) []Phase {
	var phases []Phase
	for _, f := range list {
		phases = append(phases, Phase{
			Pointer:  f.pointer(),
			Name:     f.text("name"),
			Pitch:    *orZero(f.angle("pitch")),
			Until:    f.angle("until"),
			Step:     f.angle("step"),
			Released: f.texts("released"),
		})
	}
	return phases
}
