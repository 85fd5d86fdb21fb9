package plan

import (
	"fmt"
	"slices"

	"liftlint/internal/nearest"
	"liftlint/internal/quantity"
)

// mostSteps is how many steps a load is turned in at most.
const mostSteps = 90

// stepSlack lets ninety steps be ninety in floating point too.
const stepSlack = 1e-9

// hooksAndPhases sees to what hooks and phases say by themselves.
func (l *linker) hooksAndPhases(root fields) {
	hooks := root.of("hooks")
	if one := root.of("crane").of("hook"); hooks.exists() && one.exists() {
		l.faultWith(WrongPart, hooks.node, "`hooks` and `hook` of the crane describe the same thing: keep one of them", "the crane's hook", one.node.Place.Value)
	}
	for _, f := range hooks.items() {
		l.hookStands(f)
	}
	l.uniqueBy("name", "phases", root.of("phases").items())
	for _, f := range root.of("phases").items() {
		l.turning(f)
		l.released(f.of("released"))
	}
	l.releasedThroughout(root.of("phases").items())
	if pitch := root.of("load").of("intended_attitude").of("pitch"); pitch.exists() && root.of("phases").exists() {
		l.faultWith(WrongPart, pitch.node, "each phase says at which pitch the load is meant to hang: leave this one out, or the phases", "the phases", root.of("phases").node.Place.Value)
	}
}

// releasedThroughout reports a hook that carries in no phase.
func (l *linker) releasedThroughout(phases []fields) {
	if len(phases) == 0 {
		return
	}
	for _, f := range phases[0].of("released").items() {
		everywhere := func(phase fields) bool { return slices.Contains(phase.texts("released"), f.node.Text) }
		if !slices.ContainsFunc(phases, func(phase fields) bool { return !everywhere(phase) }) {
			l.fault(WrongPart, f.node, fmt.Sprintf("hook %s is released in every phase: leave it out of the plan, or say in which phase it carries", f.node.Text))
		}
	}
}

// hookStands sees that a hook has both its coordinates or none.
func (l *linker) hookStands(f fields) {
	has, lacks := "x", "y"
	if f.of("y").exists() {
		has, lacks = lacks, has
	}
	if f.of(has).exists() && !f.of(lacks).exists() {
		l.fault(MissingKey, f.of(has).node, fmt.Sprintf("hook %s has %s and lacks %s: write both, or neither of a hook that hangs plumb over what it holds", f.text("id"), has, lacks))
	}
}

// hooksAreUsed reports hooks that nothing hangs from.
func (l *linker) hooksAreUsed(hooks []fields) {
	if l.lostFrom {
		return
	}
	for _, f := range hooks {
		id := f.node.Get("id")
		if _, used := l.hung[f.text("id")]; id != nil && !used {
			l.fault(WrongPart, id, fmt.Sprintf("nothing hangs from hook %s: write an entry of rigging with `from: %s`, or leave the hook out", id.Text, id.Text))
		}
	}
}

// turning sees that the steps of a phase lead from its pitch to where it ends.
func (l *linker) turning(f fields) {
	until, step := f.angle("until"), f.angle("step")
	switch {
	case until == nil && step == nil:
		return
	case step == nil:
		l.fault(MissingKey, f.of("until").node, "a phase in which the load is turned lacks the step in which it is judged; write such as `step: 5 deg`")
		return
	case until == nil:
		l.fault(MissingKey, f.of("step").node, "a step leads nowhere without `until`, the pitch at which the turning ends")
		return
	}
	l.steps(f, *until-*orZero(f.angle("pitch")), *step)
}

func (l *linker) steps(f fields, way, step quantity.Angle) {
	switch {
	case way == 0:
		l.fault(OutOfRange, f.of("until").node, "the load is not turned: `until` is the pitch that the phase begins with; leave out `until` and `step`")
	case step == 0 || (step > 0) != (way > 0):
		l.fault(OutOfRange, f.of("step").node, fmt.Sprintf("steps of %s do not lead from %s to %s", f.text("step"), f.text("pitch"), f.text("until")))
	case way/step > mostSteps+stepSlack:
		l.fault(OutOfRange, f.of("step").node, fmt.Sprintf("steps of %s from %s to %s are more than %d: take larger ones, or two phases", f.text("step"), f.text("pitch"), f.text("until"), mostSteps))
	}
}

// released sees that each hook released is one of the plan's, and that one
// stays.
func (l *linker) released(list fields) {
	var seen []string
	for _, f := range list.items() {
		id := f.node.Text
		switch _, ok := l.hooks.of[id]; {
		case !ok:
			l.fault(UnknownReference, f.node, fmt.Sprintf("no hook has the id %q%s", id, nearest.Hint(id, l.hooks.ids)))
		case slices.Contains(seen, id):
			l.fault(DuplicateID, f.node, fmt.Sprintf("%q is named twice among the hooks released: leave one out", id))
		default:
			seen = append(seen, id)
		}
	}
	if len(seen) == len(l.hooks.ids) {
		l.fault(WrongPart, list.node, "every hook is released: at least one has to carry the load")
	}
}
