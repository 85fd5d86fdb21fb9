package compute

import (
	"liftlint/internal/gear"
	"liftlint/internal/plan"
)

// inLineAt is a part in line one end of which takes an attachment or a point of a beam:
// the pin of a jaw goes through the hole and the plate between its cheeks. A closed eye
// goes into no hole. Others are what goes through the same hole.
func (w *work) inLineAt(where string, a *plan.Attachment, others []gear.Item, x *gear.InLine, end gear.End) {
	taking := inLineEnd(x, end)
	through, between := "pin_in_hole", "plate_in_jaw"
	switch {
	case taking.eye:
		through = "eye_in_hole"
	case a.Kind != plan.Padeye:
		through, between = "pin_in_ring", "ring_in_jaw"
	}
	name := taking.name
	if taking.kind == onPin {
		name = "the pin of " + name
	}
	f := opening(where, x, string(end)+"_in_hole", through, name+besideIt(others), holeName(a))
	f.BothClosed = taking.eye
	sum := atHole(x, end)
	for _, other := range others {
		sum = sum.plus(endWidth(other))
	}
	w.fill(f, x.Pointer, sum, holeOf(a))
	if taking.kind != onPin {
		return
	}
	f = opening(where, x, string(end)+"_jaw", between, nameOf(a), "the jaw of "+taking.name)
	w.fill(f, x.Pointer, thicknessOf(a), taking.room)
}

// atHole is how thick an end of a part in line is at a hole. Where the plan says neither
// that it has a pin nor how thick its eyes are, the pin is asked for: an eye would not go
// in.
func atHole(x *gear.InLine, end gear.End) measure {
	s := inLineEnd(x, end)
	if s.kind != onLink || s.eye {
		return s.thick
	}
	pin := input(x.Pointer, string(end)+"_pin_diameter", "the pin of "+s.name+", or `eye_section` where that is an eye")
	return measureOf(pin, nil, "", "")
}
