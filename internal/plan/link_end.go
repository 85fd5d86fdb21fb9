package plan

import (
	"fmt"
	"strings"

	"liftlint/internal/gear"
	"liftlint/internal/nearest"
	"liftlint/internal/quantity"
	"liftlint/internal/yamldoc"
)

func (l *linker) end(f fields, all []Support, support int) End {
	end := End{Pointer: f.pointer(), Kind: EndKind(f.text("kind"))}
	switch end.Kind {
	case To:
		l.to(&end, f.node.Get("at"), all[support])
	case RunsTo:
		l.runsTo(&end, f.of("at").items(), all[support])
	case Basket:
		l.basket(&end, f, all, support)
	case Choke:
		end.Round = l.round(f.of("round"))
		end.Pointer = f.of("round").pointerOr(end.Pointer)
		end.PinIn = f.text("pin_in")
	}
	return end
}

func (l *linker) to(end *End, at *yamldoc.Node, s Support) {
	if at == nil {
		return
	}
	end.Pointer, end.Attachment = at.Pointer, l.point(at, s)
}

// runsTo links the two points that the ends of a running sling go to.
func (l *linker) runsTo(end *End, at []fields, s Support) {
	if len(at) != 2 { // the schema lets no other number through
		return
	}
	end.Attachment, end.Second = l.point(at[0].node, s), l.point(at[1].node, s)
	if end.Attachment != nil && end.Second != nil && end.Attachment.Beam != end.Second.Beam {
		l.fault(WrongPart, at[1].node, fmt.Sprintf("%s and %s are not on one body: a sling over a sheave holds the load, or one beam, by two of its points", at[0].node.Text, at[1].node.Text))
	}
	if end.Attachment != nil && end.Attachment == end.Second {
		l.fault(WrongPart, at[1].node, fmt.Sprintf("both ends of the sling go to %s: it would not run, but hang as a basket does", at[1].node.Text))
	}
}

// basket links what a sling goes through or round, and where its other end
// goes up to.
func (l *linker) basket(end *End, f fields, all []Support, support int) {
	at, round := f.node.Get("at"), f.of("round")
	switch {
	case at != nil && round.exists():
		l.faultWith(WrongPart, round.node, "a basket goes through a point or round a body, not both: leave out `at` or `round`", "the point", at.Place.Value)
	case round.exists():
		end.Pointer, end.Round = round.pointer(), l.round(round)
	case at != nil:
		l.to(end, at, all[support])
	default:
		l.fault(MissingKey, f.node, "the basket lacks what it goes round; write `round: {body: ..., station: ...}`, or `at:` with the point it goes through")
	}
	if up := f.node.Get("up_to"); up != nil {
		end.UpTo = l.upTo(up, all, support)
		l.hangsThere(end, up, all, support)
	}
}

// hangsThere takes note that a beam also hangs from the support that the other
// end of a basket goes up to. Two supports on one beam are one and the same to
// a beam below.
func (l *linker) hangsThere(end *End, up *yamldoc.Node, all []Support, own int) {
	p := end.Attachment
	if p == nil || p.Beam == nil || end.UpTo == nil {
		return
	}
	first, second := all[own], all[*end.UpTo]
	if first.Point == nil || second.Point == nil || first.Point.Beam != second.Point.Beam {
		l.hangsBelow(p, up, second)
	}
}

// upTo finds the support that the other end of a basket goes up to; nil where
// that is its own.
func (l *linker) upTo(n *yamldoc.Node, all []Support, own int) *int {
	i, ok := l.froms.of[n.Text]
	switch {
	case !ok:
		l.fault(UnknownReference, n, fmt.Sprintf("no entry of rigging hangs from %q%s", n.Text, nearest.Hint(n.Text, l.froms.ids)))
		return nil
	case i == own:
		return nil
	case all[i].Bridle != nil || all[i].block() != nil:
		l.fault(WrongPart, n, fmt.Sprintf("%s holds a bridle or a sheave block, which takes no other sling: the basket goes up to another support", n.Text))
		return nil
	}
	return &i
}

// round links where a sling lies round a body of the load.
func (l *linker) round(f fields) *Round {
	name := f.node.Get("body")
	if name == nil {
		return nil
	}
	r := &Round{
		Pointer:    f.pointer(),
		Body:       l.bodies.of[name.Text],
		Station:    *orZero(f.length("station")),
		Turns:      1,
		ChokeAngle: f.angle("choke_angle"),
		HeldBy:     f.text("held_by"),
		Softened:   f.truth("softened"),

		SoftenerSecured: f.yesOrNo("softener_secured"),
		SoftenedRadius:  f.length("softened_radius"),
	}
	for _, of := range []string{"softener_secured", "softened_radius"} {
		if f.of(of).exists() && !r.Softened {
			l.fault(MissingKey, f.of(of).node, "nothing is said to be softened: write `softened: true` beside, or leave this out")
		}
	}
	if turns := f.count("turns"); turns != nil {
		r.Turns = *turns
	}
	if r.Body == nil {
		l.fault(UnknownReference, name, fmt.Sprintf("no body of the load has the id %q%s", name.Text, hintOr(name.Text, l.bodies.ids, "it lists no bodies")))
		return r
	}
	if r.SoftenedRadius != nil && r.Body.Round {
		l.fault(WrongPart, f.of("softened_radius").node, fmt.Sprintf("body %s is round and has no edges: leave this out", r.Body.ID))
	}
	if length := r.Body.Length; length != nil && r.Station > *length {
		station, end := quantity.FormatPair("station_m", float64(r.Station), float64(*length), l.units)
		l.fault(OutOfRange, f.of("station").node, fmt.Sprintf("the station %s lies beyond the end of body %s, which is %s long", station, r.Body.ID, end))
	}
	return r
}

// hintOr completes a sentence about an unknown name; the last text does where
// there are no names at all.
func hintOr(name string, known []string, none string) string {
	if len(known) == 0 {
		return ": " + none
	}
	return nearest.Hint(name, known)
}

// point finds the attachment or the point of a beam that a leg ends at.
func (l *linker) point(at *yamldoc.Node, s Support) *Attachment {
	if a, ok := l.attachments.of[at.Text]; ok {
		return a
	}
	if p, ok := l.points.of[at.Text]; ok {
		l.holds(p, at, s)
		return p
	}
	l.lostEnd = true
	l.noEnd(at)
	return nil
}

// noEnd reports something that legs can't end at.
func (l *linker) noEnd(at *yamldoc.Node) {
	beam, _, dotted := strings.Cut(at.Text, ".")
	item, isGear := l.items.of[beam]
	_, isBeam := item.(*gear.Beam)
	switch {
	case isBeam:
		l.noPoint(at, item)
	case dotted:
		l.fault(UnknownReference, at, fmt.Sprintf("no point of a beam has the id %q%s", at.Text, nearest.Hint(at.Text, l.points.ids)))
	case isGear:
		l.fault(UnknownReference, at, fmt.Sprintf("%q is an item of gear: a leg ends at an attachment of the load or at a point of a beam", at.Text))
	default:
		l.fault(UnknownReference, at, fmt.Sprintf("no attachment of the load has the id %q%s", at.Text, hintOr(at.Text, l.attachments.ids, "it lists no attachments")))
	}
}
