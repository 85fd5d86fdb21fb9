package plan

import (
	"fmt"
	"slices"

	"liftlint/internal/gear"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// holds takes note that a leg from a support ends at a point of a beam.
func (l *linker) holds(p *Attachment, at *yamldoc.Node, s Support) {
	if _, seen := l.held[p.ID]; !seen {
		l.held[p.ID] = at.Place.Value
	}
	if hangs, both := l.hung[p.ID]; both {
		l.faultWith(WrongPart, at, fmt.Sprintf("legs hang from %s, and so it can't hold the beam up too: one point does one or the other", p.ID), "where legs hang from it", hangs)
	}
	l.hangsBelow(p, at, s)
}

// hangsBelow takes note that the beam of a point hangs from a support, and
// reports beams that come to hang from themselves.
func (l *linker) hangsBelow(p *Attachment, at *yamldoc.Node, s Support) {
	if s.Point == nil {
		return
	}
	upper := s.Point.Beam
	if way := l.way(p.Beam, upper); way != nil {
		l.fault(WrongPart, at, circle(append([]*gear.Beam{upper}, way...)))
		return
	}
	if !slices.Contains(l.below[upper], p.Beam) {
		l.below[upper] = append(l.below[upper], p.Beam)
	}
}

// way lists the beams from one down to another that hangs from it, both
// included; nil where it does not. There are no circles among those noted.
func (l *linker) way(from, to *gear.Beam) []*gear.Beam {
	if from == to {
		return []*gear.Beam{from}
	}
	for _, next := range l.below[from] {
		if rest := l.way(next, to); rest != nil {
			return append([]*gear.Beam{from}, rest...)
		}
	}
	return nil
}

func circle(beams []*gear.Beam) string {
	text := fmt.Sprintf("%s would hang from itself: %s holds %s", beams[0].ID, beams[0].ID, beams[1].ID)
	for _, b := range beams[2:] {
		text += ", which holds " + b.ID
	}
	return text
}

// beamsInUse keeps the beams that the rigging names, and reports those that
// nothing holds or that hold nothing.
func (l *linker) beamsInUse(beams []Beam) []Beam {
	var inUse []Beam
	for _, b := range beams {
		held, heldAt := l.first(b, l.held)
		hung, hungAt := l.first(b, l.hung)
		if !held && !hung {
			continue
		}
		inUse = append(inUse, b)
		switch id := b.Item.ID; {
		case !held && !l.lostEnd:
			l.faultAt(WrongPart, hungAt, fmt.Sprintf("nothing holds %s: no leg ends at one of its points", id))
		case held && !hung && !l.lostFrom:
			l.faultAt(WrongPart, heldAt, fmt.Sprintf("nothing hangs from %s: no entry of rigging is `from` one of its points", id))
		}
	}
	return inUse
}

// first is the first place in the file among those of a beam's points.
func (l *linker) first(b Beam, places map[string]source.Range) (bool, source.Range) {
	var found []source.Range
	for _, p := range b.Points {
		if at, ok := places[p.ID]; ok {
			found = append(found, at)
		}
	}
	if len(found) == 0 {
		return false, source.Range{}
	}
	return true, slices.MinFunc(found, func(x, y source.Range) int { return inFile(x, y) })
}
