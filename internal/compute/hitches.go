package compute

import (
	"math"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
	"liftlint/internal/hitch"
	"liftlint/internal/plan"
)

// hitches lists the slings that lie round a body, or run through a point or over a
// sheave.
func (w *work) hitches() {
	for i, leg := range w.hung.Legs {
		if leg.End.Kind != plan.To {
			w.hitch(i, leg)
		}
	}
}

func (w *work) hitch(i int, leg hang.Leg) {
	sling := lastOf(leg.Leg)
	f := facts.Hitch{
		SoftenerSecured: "none",
		Record:          facts.Record{Key: "hitch/" + leg.ID, At: at(leg.End.Pointer)},
		ID:              leg.ID,
		Sling:           sling.Base().ID,
		SlingKind:       string(sling.Base().Kind),
		PinIn:           pinIn(leg.End, len(leg.Down) > 0 && isShackle(leg.Down[len(leg.Down)-1])),
		Kind:            hitchOf(leg.End.Kind),
		Turns:           1,
		EndsApart:       leg.End.Second != nil || leg.End.UpTo != nil && *leg.End.UpTo != leg.Support,
		Surface:         "none",
		LegsOnLoad:      w.legsOnLoad(),
		LoadTilts:       w.tilted(),
	}
	w.goesRound(leg, &f)
	bend := w.bentRound(leg)
	f.BodyWidthM = w.take(f.Key, leg.End.Pointer, bend.width, "body_width_m")
	over := w.take(f.Key, leg.End.Pointer, bend.bend, "body_over_rope_ratio")
	f.BodyOverRopeRatio = ratio(over, w.take(f.Key, leg.End.Pointer, sizeOf(sling), "body_over_rope_ratio"))
	w.sharp(sling, leg, &f)
	switch leg.End.Kind {
	case plan.Choke:
		w.choke(i, leg, &f)
	case plan.Basket:
		w.basket(i, &f)
		w.basketSplices(i, leg, &f)
	}
	if leg.End.Round != nil {
		w.lean(i, leg, &f)
	}
	w.out.Document.Hitches = append(w.out.Document.Hitches, f)
}

// sharp tells whether the corners that a sling bears on are sharp for it.
func (w *work) sharp(sling gear.Item, leg hang.Leg, f *facts.Hitch) {
	kind := sling.Base().Kind
	if leg.End.Round == nil || leg.End.Round.Body.Round || kind == gear.MeshSlingKind {
		return
	}
	if f.BodyOverRopeRatio == nil {
		w.out.Gaps.CopyTo(f.Key, "body_over_rope_ratio", f.Key, "edge_sharp")
		return
	}
	_, blunt, _ := capacity.EdgeFactor(capacity.Kind(kind), *f.BodyOverRopeRatio/2, 1)
	f.EdgeSharp = ptr(!blunt)
}

// pinIn is what the pin of the shackle that closes a choke is in.
func pinIn(e plan.End, shackled bool) string {
	if e.Kind != plan.Choke || !shackled {
		return "none"
	}
	return orNotGiven(e.PinIn)
}

func isShackle(u plan.Use) bool { return u.Item.Base().Kind == gear.ShackleKind }

// softenerSecured says whether what softens edges is kept in its place.
func softenerSecured(r *plan.Round) string {
	switch {
	case !r.Softened:
		return "none"
	case r.SoftenerSecured == nil:
		return notGiven
	case *r.SoftenerSecured:
		return "yes"
	}
	return "no"
}

func (w *work) legsOnLoad() int {
	n := 0
	for _, leg := range w.hung.Legs {
		if hang.BodyUnder(w.plan, leg.Leg) == 0 {
			n++
		}
	}
	return n
}

// goesRound sets what a sling lies round or runs through.
func (w *work) goesRound(leg hang.Leg, f *facts.Hitch) {
	r := leg.End.Round
	switch {
	case leg.End.Kind == plan.RunsTo:
		s := w.plan.Supports[leg.Support]
		f.Round, f.On = s.By[len(s.By)-1].Item.Base().ID, "sheave"
		return
	case r == nil:
		f.Round, f.On = leg.End.Attachment.ID, "point"
		return
	}
	f.Round, f.On, f.Turns = r.Body.ID, "body_with_corners", r.Turns
	f.EdgesProtected, f.HeldAgainstSliding = r.Softened, r.HeldBy != ""
	f.SoftenerSecured = softenerSecured(r)
	if f.BodyLengthM = number(r.Body.Length); f.BodyLengthM == nil {
		w.wait(f.Key, []facts.Input{input(r.Body.Pointer, "length", r.Body.ID+"'s length")}, "body_length_m")
	}
	if r.Body.Round {
		f.On = "round_body"
	}
	if f.Surface = r.Body.Surface; f.Surface == "" {
		f.Surface = notGiven
	}
}

// bent is what a rope is bent round.
type bent struct {
	width measure // of the body
	bend  measure // diameter of the bend
}

// bentRound is what the sling of a leg is bent round: a body, its corners, a
// sheave, or the plate of a point.
func (w *work) bentRound(leg hang.Leg) bent {
	r := leg.End.Round
	switch {
	case leg.End.Kind == plan.RunsTo:
		s := w.plan.Supports[leg.Support]
		if block, ok := s.By[len(s.By)-1].Item.(*gear.InLine); ok {
			d := given(block.SheaveDiameter, block.Pointer, "sheave_diameter", block.ID+"'s sheave diameter", "the sheave of "+block.ID)
			return bent{d, d}
		}
		return bent{}
	case r == nil:
		d := thicknessOf(leg.End.Attachment)
		return bent{d, d}
	case r.Body.Round:
		d := given(r.Body.Diameter, r.Body.Pointer, "diameter", r.Body.ID+"'s diameter", "the diameter of "+r.Body.ID)
		return bent{d, d}
	}
	b := r.Body
	width := given(b.Width, b.Pointer, "width", b.ID+"'s width", "the width of "+b.ID)
	height := given(b.Height, b.Pointer, "height", b.ID+"'s height", "the height of "+b.ID)
	if width.m != nil && (height.m == nil || *height.m < *width.m) {
		width = height // the least of the two, which is not known of one alone
	}
	edge := given(b.EdgeRadius, b.Pointer, "edge_radius", "the radius of "+b.ID+"'s edges", "the edges of "+b.ID)
	return bent{width, edge.times(2)}
}

// choke sets how a choke lies: its angle, and what it bears on.
func (w *work) choke(i int, leg hang.Leg, f *facts.Hitch) {
	r := leg.End.Round
	f.ChokeAngleGiven = r.ChokeAngle != nil
	w.perimeter(leg, f)
	f.ChokeAngleDeg, f.Phase = w.chokeAngle(i, r)
	w.unposed(f.Key, absent(*f, "choke_angle_deg", "choke_lands")...)
	if w.steady() {
		w.chokeLands(i, leg, f)
	}
}

// chokeAngle is the least angle of a choke in any phase, in degrees; nil where it is
// not known how the load hangs.
func (w *work) chokeAngle(i int, r *plan.Round) (angleDeg *float64, phase *string) {
	if !w.steady() {
		return nil, nil
	}
	set := hang.NaturalChokeDeg
	if r.ChokeAngle != nil {
		set = float64(*r.ChokeAngle)
	}
	least := set
	for _, p := range w.hung.Positions {
		for _, pull := range p.BodyAxes(i) {
			up := pull[2]
			if r.Body.Round {
				// The choke of a round body turns with the pull across it.
				pull[1], up = 0, math.Hypot(pull[1], pull[2])
			}
			if angle := hitch.ChokeAngleDeg(pull[0], pull[1], up, set); angle < least || phase == nil {
				least, phase = min(least, angle), phaseOf(p)
			}
		}
	}
	return &least, phase
}

// chokeLands tells whether the choke bears on plain rope: the loop has to be longer
// than the lower eye with its splice, and what is left of the sling longer than the
// upper one.
func (w *work) chokeLands(i int, leg hang.Leg, f *facts.Hitch) {
	f.ChokeLands = ptr("on_rope")
	s, ok := lastOf(leg.Leg).(*gear.WireRopeSling)
	if !ok {
		w.chokeLandsOn(lastOf(leg.Leg), f)
		return
	}
	loop, rest := math.Inf(1), math.Inf(1)
	for _, p := range w.hung.Positions {
		if p.InUse(i) {
			l, r := p.Choke(i)
			loop, rest = min(loop, l), min(rest, r)
		}
	}
	if leg.Link != nil || len(leg.Down) > 1 {
		rest = w.loopRest(s, loop) // of this sling alone
	}
	longest, shortest, _ := splicesOf(s)
	var needs []facts.Input
	for n, end := range []struct {
		eye     gear.Eye
		aroundM float64
	}{{s.Upper, rest}, {s.Lower, loop}} {
		if end.eye.Length == nil {
			needs = append(needs, input(end.eye.Pointer, "eyes."+ends[n]+".length", s.ID+"'s "+ends[n]+" eye length"))
			continue
		}
		eye := float64(*end.eye.Length)
		switch {
		case hitch.ChokeLands(end.aroundM, eye, shortest[n]):
			f.ChokeLands = ptr("on_eye_or_splice")
			return
		case hitch.ChokeLands(end.aroundM, eye, longest[n]) && end.eye.SpliceLength == nil:
			needs = append(needs, input(end.eye.Pointer, "eyes."+ends[n]+".splice_length", "the length of "+s.ID+"'s "+ends[n]+" sleeve or splice"))
		}
	}
	if len(needs) > 0 {
		f.ChokeLands = nil
		w.wait(f.Key, append(needs, diameterNeed(s)...), "choke_lands")
	}
}

// basketSplices tells whether both runs of a basket are longer than the eye and the
// splice at their end.
func (w *work) basketSplices(i int, leg hang.Leg, f *facts.Hitch) {
	w.unposed(f.Key, absent(*f, "splice_lies")...)
	if !w.steady() {
		return
	}
	f.SpliceLies = ptr("free")
	s, ok := lastOf(leg.Leg).(*gear.WireRopeSling)
	if !ok {
		if base := lastOf(leg.Leg).Base(); base.Kind == gear.WebSlingKind || base.Kind == gear.MeshSlingKind {
			f.SpliceLies = nil
			w.explain(f.Key, facts.Reason{Text: "where the eyes or ends of " + base.ID + " lie in its basket is not worked out: see that it bears on its body"}, "splice_lies")
		}
		return
	}
	longest, shortest, _ := splicesOf(s)
	var needs []facts.Input
	for n, eye := range []gear.Eye{s.Upper, s.Lower} {
		run := w.shortestRun(i, n) - fittingAt(leg.Leg, n)
		switch {
		case eye.Length == nil:
			needs = append(needs, input(eye.Pointer, "eyes."+ends[n]+".length", s.ID+"'s "+ends[n]+" eye length"))
		case hitch.ChokeLands(run, float64(*eye.Length), shortest[n]):
			f.SpliceLies = ptr("on_body")
			return
		case hitch.ChokeLands(run, float64(*eye.Length), longest[n]) && eye.SpliceLength == nil:
			needs = append(needs, input(eye.Pointer, "eyes."+ends[n]+".splice_length", "the length of "+s.ID+"'s "+ends[n]+" sleeve or splice"))
		}
	}
	if len(needs) > 0 {
		f.SpliceLies = nil
		w.wait(f.Key, append(needs, diameterNeed(s)...), "splice_lies")
	}
}

// fittingAt is the length of the shackle at one end of a basket's sling, in meters: at
// the first end, or at the second.
func fittingAt(leg plan.Leg, end int) float64 {
	u := leg.Down[end*(len(leg.Down)-1)]
	length, _ := u.Item.Bearing()
	if gear.IsSling(u.Item) || length == nil {
		return 0
	}
	return float64(*length)
}

// shortestRun is the least length of a run of a leg in any phase, in meters.
func (w *work) shortestRun(leg, run int) float64 {
	least := math.Inf(1)
	for _, p := range w.hung.Positions {
		if p.InUse(leg) {
			least = min(least, p.RunM(leg, run))
		}
	}
	return least
}

// loopRest is what a choke leaves of its sling, in meters.
func (w *work) loopRest(s *gear.WireRopeSling, loopM float64) float64 {
	return value(w.lengthM(s)) - loopM
}

// chokeLandsOn is where a sling chokes that has no splices: endless ones and chain
// are alike all along; where the eyes of others end, no plan says.
func (w *work) chokeLandsOn(sling gear.Item, f *facts.Hitch) {
	switch base := sling.Base(); base.Kind {
	case gear.WebSlingKind, gear.MeshSlingKind:
		f.ChokeLands = nil
		w.explain(f.Key, facts.Reason{Text: "where the eyes or ends of " + base.ID + " lie in its choke is not worked out: see that it chokes on its body"}, "choke_lands")
	}
}

// perimeter sets how far it is once round the body, in diameters of the finished
// rope or in sizes of the sling.
func (w *work) perimeter(leg hang.Leg, f *facts.Hitch) {
	sling := lastOf(leg.Leg)
	size := sizeOf(sling)
	if s, ok := sling.(*gear.WireRopeSling); ok {
		size = given(s.Diameter, s.Pointer, "diameter", s.ID+"'s diameter", "the diameter of "+s.ID)
	}
	around := hang.Section(leg.End.Round.Body).PerimeterM()
	if around == 0 {
		w.out.Gaps.CopyTo(f.Key, "body_width_m", f.Key, "perimeter_d")
	}
	if m := w.take(f.Key, leg.End.Pointer, size, "perimeter_d"); m != nil && around > 0 {
		f.PerimeterD = ptr(around / *m)
	}
}

// basket sets how unequally the two runs of a basket pull, and what friction holds.
func (w *work) basket(i int, f *facts.Hitch) {
	round := f.On != "point"
	fields := []string{"force_ratio"}
	if round {
		fields = append(fields, "friction_holds_ratio", "slips_ratio")
	}
	w.unposed(f.Key, absent(*f, fields...)...)
	if !w.steady() {
		return
	}
	mu, known := capacity.Friction(capacity.Surface(f.Surface))
	if round && !known {
		w.wait(f.Key, []facts.Input{surfaceInput(w.hung.Legs[i].End.Round.Body)}, "friction_holds_ratio", "slips_ratio")
	}
	f.ForceRatio = ptr(1.0)
	for _, p := range w.hung.Positions {
		line := p.Line(i)
		if line == nil {
			continue
		}
		a, b := line.Runs[0].TensionN, line.Runs[len(line.Runs)-1].TensionN
		force := mostRatio
		if less := min(a, b); less > 0 {
			force = min(mostRatio, max(a, b)/less)
		}
		judged := round && known
		if force > *f.ForceRatio && !judged || f.Phase == nil {
			f.Phase = phaseOf(p)
		}
		f.ForceRatio = ptr(max(*f.ForceRatio, force))
		if !judged {
			continue
		}
		holds := hitch.HoldsRatio(mu, p.TurnedRad(i))
		if f.HoldsRatio == nil || holds < *f.HoldsRatio {
			f.HoldsRatio = &holds
		}
		if force/holds > value(f.SlipsRatio) {
			f.SlipsRatio, f.Phase = ptr(force/holds), phaseOf(p)
		}
	}
}

// mostRatio stands for ratios that grow without end, as over nothing.
const mostRatio = 1000.0

func surfaceInput(b *plan.Body) facts.Input {
	return input(b.Pointer, "surface", "what the surface of "+b.ID+" is")
}

// lean sets how far the runs of a sling lean along its body, and what friction that
// asks for.
func (w *work) lean(i int, leg hang.Leg, f *facts.Hitch) {
	basket := leg.End.Kind == plan.Basket
	fields := []string{"lean_along_body_deg"}
	if basket {
		fields = append(fields, "friction_needed_over_given_ratio")
	}
	w.unposed(f.Key, absent(*f, fields...)...)
	if !w.steady() {
		return
	}
	f.LeanDeg = ptr(0.0)
	for _, p := range w.hung.Positions {
		for _, pull := range p.BodyAxes(i) {
			if lean := hitch.SideLeanDeg(pull[0], pull[2]); lean > *f.LeanDeg || f.LeanPhase == nil {
				f.LeanDeg, f.LeanPhase = ptr(max(lean, *f.LeanDeg)), phaseOf(p)
			}
		}
	}
	if !basket {
		return
	}
	mu, known := capacity.Friction(capacity.Surface(f.Surface))
	if !known {
		w.wait(f.Key, []facts.Input{surfaceInput(w.hung.Legs[i].End.Round.Body)}, "friction_needed_over_given_ratio")
		return
	}
	f.FrictionNeededRatio = ptr(min(mostRatio, hitch.NeededFriction(*f.LeanDeg)/mu))
}
