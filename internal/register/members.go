package register

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/gear"
)

// members sees that what a bridle is made of is on file too, is of the right kind,
// and is part of no other bridle: the same that a plan asks of a bridle of its own.
func (r *Register) members() Problems {
	m := membership{register: r, partOf: map[string]part{}}
	for i := range r.Items {
		if r.Items[i].Members != nil {
			m.bridle(&r.Items[i])
		}
	}
	return m.problems
}

// membership is which item is part of which bridle.
type membership struct {
	register *Register
	partOf   map[string]part // by number
	problems Problems
}

// part is the place that an item has in a bridle.
type part struct {
	bridle  *Item
	pointer string
}

// How many legs there may be, as in a plan.
const (
	mostLegs       = 4
	mostLegsOfLink = 2
)

func (m *membership) bridle(b *Item) {
	m.member(b, b.Members.Master, "/master", gear.MasterLinkKind)
	var first *Item
	legs := 0
	for g, group := range b.Members.Groups {
		at := fmt.Sprintf("/groups/%d", g)
		m.member(b, group.Link, at+"/link", gear.IntermediateLinkKind)
		for l, number := range group.Legs {
			pointer := fmt.Sprintf("%s/legs/%d", at, l)
			leg := m.member(b, number, pointer, gear.WireRopeSlingKind, gear.ChainSlingKind)
			switch {
			case leg == nil:
			case first == nil:
				first = leg
			case kindOf(first) != kindOf(leg):
				m.wrong(b, pointer, nil, "leg %s of bridle %s is of kind %s, and leg %s of kind %s: all legs of a bridle are of one kind",
					quote(number), quote(b.Number), kindWords(kindOf(leg)), quote(first.Number), kindWords(kindOf(first)))
			}
		}
		if legs += len(group.Legs); group.Link != "" && len(group.Legs) > mostLegsOfLink {
			m.wrong(b, at, nil, "intermediate link %s takes %d legs; here are %d", quote(group.Link), mostLegsOfLink, len(group.Legs))
		}
	}
	if legs > mostLegs {
		m.wrong(b, "/groups", nil, "bridle %s has %d legs; a bridle has %d at most", quote(b.Number), legs, mostLegs)
	}
}

// member looks up what a bridle names; nil where it can't be what it is named for.
func (m *membership) member(b *Item, number, pointer string, kinds ...gear.Kind) *Item {
	if number == "" {
		return nil
	}
	item, ok := m.register.Find(number)
	if !ok {
		m.problems = append(m.problems, problemAt(UnknownReference, b, pointer, nil, "bridle %s is made of %s, which is not on file%s",
			quote(b.Number), quote(number), m.register.hint(number, len(m.problems))))
		return nil
	}
	if kind := kindOf(item); !slices.Contains(kinds, kind) {
		m.wrong(b, pointer, nil, "%s is of kind %s, and bridle %s has to name one of kind %s here", quote(number), kindWords(kind), quote(b.Number), anyOf(kinds))
		return nil
	}
	if before, taken := m.partOf[number]; taken {
		other := before.bridle.Place(before.pointer)
		if other.Range.IsZero() {
			other.Range = before.bridle.at.number
		}
		m.wrong(b, pointer, &other, "%s is part of bridle %s already: each link and leg is part of one bridle, once; take it out where it is no more", quote(number), quote(before.bridle.Number))
		return item
	}
	m.partOf[number] = part{b, pointer}
	return item
}

func (m *membership) wrong(b *Item, pointer string, other *Place, format string, args ...any) {
	m.problems = append(m.problems, problemAt(WrongMember, b, pointer, other, format, args...))
}

func kindOf(item *Item) gear.Kind { return item.Gear.Base().Kind }

func kindWords(k gear.Kind) string { return strings.ReplaceAll(string(k), "_", " ") }

func anyOf(kinds []gear.Kind) string {
	words := make([]string, len(kinds))
	for i, k := range kinds {
		words[i] = kindWords(k)
	}
	return strings.Join(words, " or ")
}
