package compute

import (
	"math"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/plan"
)

func (w *work) attachments() {
	for i := range w.plan.Load.Attachments {
		w.attachment(&w.plan.Load.Attachments[i])
	}
	for _, b := range w.plan.Beams {
		for i := range b.Points {
			w.attachment(&b.Points[i])
		}
	}
}

func (w *work) attachment(a *plan.Attachment) {
	legs := w.legsAt(a)
	f := facts.Attachment{
		Record:                 facts.Record{Key: "attachment/" + a.ID, At: at(a.Pointer)},
		ID:                     a.ID,
		Named:                  nameOf(a),
		Kind:                   a.Kind,
		Legs:                   len(legs),
		Spare:                  a.Spare,
		PullN:                  w.pullOf(a).judgedN,
		Phase:                  w.samePhase(legs),
		OnBeam:                 a.Beam != nil,
		RatedToHorizontalGiven: a.RatedToFromHorizontal != nil,
		RatedToHorizontalDeg:   number(a.RatedToFromHorizontal),
		RatedToPlaneGiven:      a.RatedToFromPlane != nil,
		RatedToPlaneDeg:        number(a.RatedToFromPlane),
	}
	if a.RatedLoad != nil {
		f.RatedLoadN = ptr(a.RatedLoad.Newtons)
	}
	if a.Kind != plan.InsertIn {
		w.wait(f.Key, []facts.Input{attachmentRating(a)}, absent(f, "rated_load_n")...)
	}
	for _, i := range legs {
		if f.PullN == nil {
			w.out.Gaps.CopyTo(legKey(w.hung.Legs[i].Leg), "tension_judged_n", f.Key, "pull_n")
		}
	}
	w.pulled(a, legs, &f)
	w.bolt(a, legs, &f)
	w.insert(a, legs, &f)
	w.out.Document.Attachments = append(w.out.Document.Attachments, f)
}

// pulled sets from where the legs pull: how flat, and how far out of the plane
// of a plate or an eye.
func (w *work) pulled(a *plan.Attachment, legs []int, f *facts.Attachment) {
	if len(legs) == 0 {
		return
	}
	f.PullAngleFromHorizontalDeg = w.flattestPull(a, legs)
	w.unposed(f.Key, absent(*f, "pull_angle_from_horizontal_deg")...)
	if a.Kind == plan.Padeye || a.Kind == plan.Eyebolt {
		f.OutOfPlaneDeg = w.leaning(f.Key, a, a.HoleAxis, "hole_axis", legs, capacity.OffPlaneDeg, "out_of_plane_deg")
	}
}

// flattestPull is the flattest of the pulls of some legs, from the horizontal of
// the load or beam itself.
func (w *work) flattestPull(a *plan.Attachment, legs []int) *float64 {
	if !w.steady() {
		return nil
	}
	least := 90.0
	for _, pull := range w.pullsOn(a, legs) {
		least = min(least, math.Asin(min(1, math.Abs(pull[2])))*180/math.Pi)
	}
	return &least
}

// bolt sets what concerns an attachment that stands on a bolt.
func (w *work) bolt(a *plan.Attachment, legs []int, f *facts.Attachment) {
	if a.Kind != plan.Eyebolt && a.Kind != plan.HoistRing {
		return
	}
	who := nameOf(a)
	if len(legs) > 0 {
		f.OffAxisDeg = w.leaning(f.Key, a, a.Axis, "axis", legs, capacity.OffAxisDeg, "off_axis_deg")
	}
	if a.Kind == plan.HoistRing {
		f.RatedToAxisDeg = number(a.RatedToFromAxis)
		w.wait(f.Key, []facts.Input{input(a.Pointer, "rated_to_angle_from_axis", "how far from its axis "+who+" is rated for")}, absent(*f, "rated_to_angle_from_axis_deg")...)
	}
	if a.Kind == plan.Eyebolt {
		if a.Pattern != "" {
			f.Pattern = ptr(a.Pattern)
		}
		w.wait(f.Key, []facts.Input{input(a.Pointer, "pattern", who+"'s pattern")}, absent(*f, "pattern")...)
		if a.Pattern == "plain" {
			f.Seated = ptr("has_no_seat")
			return
		}
	}
	if a.Seated != nil {
		f.Seated = ptr(map[bool]string{true: "seated", false: "not_seated"}[*a.Seated])
	}
	w.wait(f.Key, []facts.Input{input(a.Pointer, "seated", "whether "+who+" is seated")}, absent(*f, "seated")...)
}

// insert sets what concerns an insert in concrete: how many times the pull on it
// it holds.
func (w *work) insert(a *plan.Attachment, legs []int, f *facts.Attachment) {
	if a.Kind != plan.InsertIn {
		return
	}
	who, in := nameOf(a), a.Insert
	if in.Panel != "" {
		f.Panel = ptr(in.Panel)
	}
	f.ConcreteStrengthPa, f.ConcreteNeededPa = number(in.Strength), number(in.StrengthNeeded)
	w.wait(f.Key, []facts.Input{input(a.Pointer, "panel", "what "+who+" is cast into")}, absent(*f, "panel")...)
	w.wait(f.Key, []facts.Input{input(a.Pointer, "concrete_strength", "the strength of the concrete round "+who)}, absent(*f, "concrete_strength_pa")...)
	w.wait(f.Key, []facts.Input{input(a.Pointer, "concrete_strength_needed", "the strength of concrete that "+who+" needs")}, absent(*f, "concrete_strength_needed_pa")...)
	if len(legs) == 0 {
		return
	}
	if in.BreakingLoad == nil {
		w.wait(f.Key, []facts.Input{input(a.Pointer, "breaking_load", who+"'s breaking load")}, "breaking_over_pull_times")
	}
	if in.HardwareBreakingLoad == nil {
		w.wait(f.Key, []facts.Input{input(a.Pointer, "hardware_breaking_load", "the breaking load of the hardware in "+who)}, "hardware_breaking_over_pull_times")
	}
	if f.PullN == nil || *f.PullN <= 0 {
		w.overNoPull(f)
		return
	}
	if in.BreakingLoad != nil {
		f.BreakingTimes = ptr(in.BreakingLoad.Newtons / *f.PullN)
	}
	if in.HardwareBreakingLoad != nil {
		f.HardwareBreakingTimes = ptr(in.HardwareBreakingLoad.Newtons / *f.PullN)
	}
}

// overNoPull says why no factor over the pull is known.
func (w *work) overNoPull(f *facts.Attachment) {
	for _, field := range []string{"breaking_over_pull_times", "hardware_breaking_over_pull_times"} {
		w.out.Gaps.CopyTo(f.Key, "pull_n", f.Key, field)
		if f.PullN != nil {
			w.explain(f.Key, facts.Reason{Text: "no leg pulls on attachment " + f.ID, ToldOf: f.ID}, field)
		}
	}
}
