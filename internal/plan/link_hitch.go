package plan

import (
	"fmt"
	"slices"

	"liftlint/internal/gear"
)

// fits sees that the parts of a leg can end as it does.
func (l *linker) fits(f fields, leg Leg, s Support) {
	down := f.of("down").node
	if !slices.ContainsFunc(leg.Down, func(u Use) bool { return gear.IsSling(u.Item) }) {
		l.fault(WrongPart, down, "a leg needs a sling among its parts")
		return
	}
	if leg.Doubled {
		l.doubled(f, leg)
	}
	if block := s.block(); block != nil && leg.End.Kind != RunsTo && leg.End.Kind != Parked {
		l.fault(WrongPart, f.of("end").of("kind").node, fmt.Sprintf("%s is a sheave block: the sling below it ends in `kind: runs_to`, at two points", block.Base().ID))
	}
	switch leg.End.Kind {
	case RunsTo:
		l.runs(f, leg, s)
	case Basket:
		l.twoEnds(f, leg, "a basket")
	case Choke:
		l.chokes(f, leg)
	}
}

// doubled sees that what is laid double is one grommet.
func (l *linker) doubled(f fields, leg Leg) {
	for _, u := range leg.Down {
		if kind := u.Item.Base().Kind; gear.IsSling(u.Item) && kind != gear.GrommetKind {
			l.fault(WrongPart, f.of("doubled").node, fmt.Sprintf("%s is %s: only a grommet is laid double", u.Item.Base().ID, article(kindWords(kind))))
			return
		}
	}
	slings := slices.DeleteFunc(slices.Clone(leg.Down), func(u Use) bool { return !gear.IsSling(u.Item) })
	if len(slings) > 1 {
		l.fault(WrongPart, f.of("doubled").node, "the leg has several grommets: which of them is laid double can't be told")
	}
}

// runs sees that a sling that runs has a sheave to run over, and two ends.
func (l *linker) runs(f fields, leg Leg, s Support) {
	if s.block() == nil {
		l.fault(WrongPart, f.of("end").of("kind").node, "a sling runs over a sheave block: write the block last in `by` of this support")
	}
	for _, u := range leg.Down {
		if kind := u.Item.Base().Kind; gear.IsSling(u.Item) && kind != gear.WireRopeSlingKind {
			l.fault(WrongPart, f.of("down").node, fmt.Sprintf("%s is %s: a wire rope sling runs over the block", u.Item.Base().ID, article(kindWords(kind))))
			return
		}
	}
	l.twoEnds(f, leg, "a sling over a sheave block")
}

// twoEnds sees that a sling of which both ends are held is alone in its leg, or
// has a shackle at each end.
func (l *linker) twoEnds(f fields, leg Leg, what string) {
	d := leg.Down
	shackled := len(d) == 3 && d[0].Item.Base().Kind == gear.ShackleKind && gear.IsSling(d[1].Item) && d[2].Item.Base().Kind == gear.ShackleKind
	if shackled || len(d) == 1 {
		return
	}
	l.fault(WrongPart, f.of("down").node, fmt.Sprintf("%s is one sling, with a shackle at each of its ends or at neither: write [sling] or [shackle, sling, shackle]; what both ends hang in stands in `by`", what))
}

// chokes sees that nothing but a shackle in the choking eye is below the sling
// that is choked.
func (l *linker) chokes(f fields, leg Leg) {
	last := len(leg.Down) - 1
	if leg.Down[last].Item.Base().Kind == gear.ShackleKind {
		last--
	} else if pin := f.of("end").of("pin_in"); pin.exists() {
		l.fault(WrongPart, pin.node, "no shackle closes this choke: write one below the sling that is choked, or leave `pin_in` out")
	}
	if last < 0 || !gear.IsSling(leg.Down[last].Item) {
		l.fault(WrongPart, f.of("down").node, "the lowest sling of the leg makes the choke: below it stands nothing but a shackle in its eye")
	}
}
