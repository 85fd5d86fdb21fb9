package plan

import (
	"fmt"

	"liftlint/internal/gear"
	"liftlint/internal/quantity"
)

// ownFigures sees that the figures of one sling can stand beside each other.
func (l *linker) ownFigures(items []gear.Item, list []fields) {
	for i, item := range items {
		switch x := item.(type) {
		case *gear.WireRopeSling:
			l.body(x, list[i])
		case *gear.Grommet:
			l.splice(x, list[i])
		}
	}
}

// body sees that what only bodies of several ropes have is said of those: of a
// single rope it would count for nothing.
func (l *linker) body(s *gear.WireRopeSling, f fields) {
	if parts := f.of("parts"); parts.exists() && s.Body != gear.MultiPart {
		l.fault(WrongPart, parts.node, fmt.Sprintf("only a multi-part sling has parts: write `body: multi_part` if %s is one, or leave this out", s.ID))
	}
	if component := f.of("component_diameter"); component.exists() && s.OfOneRope() {
		l.fault(WrongPart, component.node, fmt.Sprintf("a single-part sling has no rope in it but itself: write the `body` that %s has, or leave this out", s.ID))
	}
}

// splice sees that the splice of a grommet is on it: half its circumference is
// what one part reaches from bearing to bearing.
func (l *linker) splice(g *gear.Grommet, f fields) {
	reach, _ := g.Bearing()
	if g.SpliceAt == nil || reach == nil || *g.SpliceAt <= *reach {
		return
	}
	at, end := quantity.FormatPair("splice_at_m", float64(*g.SpliceAt), float64(*reach), l.units)
	l.fault(OutOfRange, f.of("splice_at").node, fmt.Sprintf("the splice at %s lies beyond the lower bearing: one part of %s is %s long, half its circumference", at, g.ID, end))
}
