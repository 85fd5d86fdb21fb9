package compute

import (
	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/gear"
	"liftlint/internal/hang"
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

// ropeOfHitch is the class and the core of a sling's rope; none for what is no rope.
func ropeOfHitch(sling gear.Item) (class, core string) {
	switch x := sling.(type) {
	case *gear.WireRopeSling:
		return orNotGiven(x.Class), orNotGiven(string(x.Core))
	case *gear.Grommet:
		return orNotGiven(x.Class), orNotGiven(string(x.Core))
	}
	return "none", "none"
}

func (w *work) hitch(i int, leg hang.Leg) {
	sling := lastOf(leg.Leg)
	class, core := ropeOfHitch(sling)
	f := facts.Hitch{
		SoftenerSecured: "none",
		Record:          facts.Record{Key: "hitch/" + leg.ID, At: at(leg.End.Pointer)},
		ID:              leg.ID,
		Sling:           sling.Base().ID,
		SlingKind:       string(sling.Base().Kind),
		RopeClass:       class,
		RopeCore:        core,
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
	f.BentOverM = w.take(f.Key, leg.End.Pointer, bend.bend, "body_over_rope_ratio", "bent_over_m")
	f.SizeM = w.take(f.Key, leg.End.Pointer, sizeOf(sling), "body_over_rope_ratio", "sling_size_m")
	f.BodyOverRopeRatio = ratio(f.BentOverM, f.SizeM)
	if f.On == "body_with_corners" {
		radius := bend.bend.times(0.5)
		f.EdgeRadiusM = w.take(f.Key, leg.End.Pointer, radius, "edge_radius_m")
	}
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
	if leg.End.Round == nil || leg.End.Round.Body.Round {
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
	if r.Softened && (r.SoftenedRadius != nil || b.EdgeRadius == nil) {
		over := given(r.SoftenedRadius, r.Pointer, "softened_radius", "the radius over what softens the edges of "+b.ID, "what softens the edges of "+b.ID)
		return bent{width, over.times(2)}
	}
	edge := given(b.EdgeRadius, b.Pointer, "edge_radius", "the radius of "+b.ID+"'s edges", "the edges of "+b.ID)
	return bent{width, edge.times(2)}
}
