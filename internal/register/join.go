package register

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/nearest"
)

// Join makes one register of several. Each number stands for one item, and no
// two items of one maker have the same serial number. The error holds Problems.
func Join(registers ...*Register) (*Register, error) {
	all := &Register{}
	if len(registers) == 1 {
		all.Files, all.Items = registers[0].Files, registers[0].Items
	} else {
		for _, r := range registers {
			all.Files = append(all.Files, r.Files...)
			all.Items = append(all.Items, r.Items...)
		}
	}
	if ps := slices.Concat(all.index(), all.serials(), all.members()); len(ps) > 0 {
		return nil, sorted(ps, 0)
	}
	return all, nil
}

// rowHint says what becomes of a table that has a row for each inspection.
func rowHint(item, other *Item) string {
	if item.at.row == 0 || item.at.file != other.at.file {
		return ""
	}
	return "; where the rows are inspections of one item, they go into one row, with columns for `inspections.2.date` and so on"
}

// folded is a number, a serial or a maker as people tell it from others: by no
// capitals and no blanks.
func folded(text string) string {
	return strings.ToLower(strings.Join(strings.Fields(text), ""))
}

// index fills the lookup by number, and sees that no two numbers are one in two
// spellings.
func (r *Register) index() Problems {
	var ps Problems
	r.byNumber = make(map[string]int32, len(r.Items))
	spelt := make(map[string]int32, len(r.Items))
	for i := range r.Items {
		item := &r.Items[i]
		if first, twice := r.byNumber[item.Number]; twice {
			other := r.Items[first].Place("/number")
			other.Range = r.Items[first].at.number
			ps = append(ps, problemAt(DuplicateNumber, item, "/number", &other, "the number %s stands for two items: give each its own%s", quote(item.Number), rowHint(item, &r.Items[first])))
			continue
		}
		r.byNumber[item.Number] = int32(i)
		plain := folded(item.Number)
		if first, twice := spelt[plain]; twice {
			other := r.Items[first].Place("/number")
			other.Range = r.Items[first].at.number
			ps = append(ps, problemAt(DuplicateNumber, item, "/number", &other, "the numbers %s and %s differ by capitals or blanks alone: if they are two items, give each a number that can't be taken for the other", quote(r.Items[first].Number), quote(item.Number)))
			continue
		}
		spelt[plain] = int32(i)
	}
	return ps
}

// serials reports serial numbers given twice. Two makers may use the same; of
// an item without a maker it is not known whose number it is.
func (r *Register) serials() Problems {
	var ps Problems
	first := make(map[string][]int32, len(r.Items))
	for i := range r.Items {
		item := &r.Items[i]
		if item.Serial == "" {
			continue
		}
		serial, maker := folded(item.Serial), folded(item.Maker)
		same := slices.IndexFunc(first[serial], func(j int32) bool {
			other := folded(r.Items[j].Maker)
			return other == maker || other == "" || maker == ""
		})
		if same < 0 {
			first[serial] = append(first[serial], int32(i))
			continue
		}
		other := &r.Items[first[serial][same]]
		at := other.Place("/serial")
		at.Range = other.at.number
		ps = append(ps, problemAt(DuplicateSerial, item, "/serial", &at, "items %s and %s have the same serial number %s: correct one, or tell their makers apart", quote(other.Number), quote(item.Number), serialOf(item, other)))
	}
	return ps
}

// serialOf is the serial number of an item, in both spellings where another has it
// in its own.
func serialOf(item, other *Item) string {
	if item.Serial == other.Serial {
		return quote(item.Serial)
	}
	return quote(item.Serial) + ", written " + quote(other.Serial) + " too"
}

func problemAt(id string, item *Item, pointer string, other *Place, format string, args ...any) Problem {
	p := Problem{ID: id, Message: fmt.Sprintf(format, args...), Place: item.Place(pointer), Other: other}
	if p.Place.Range.IsZero() {
		p.Place.Range = item.at.number
	}
	return p
}

// Near is the number on file that is nearest to one that is not.
func (r *Register) Near(number string) (string, bool) {
	numbers := make([]string, len(r.Items))
	for i := range r.Items {
		numbers[i] = r.Items[i].Number
	}
	return nearest.Name(number, numbers)
}

// mostHints bounds what is spent on comparing numbers with all others.
const mostHints = 5

func (r *Register) hint(number string, given int) string {
	if given >= mostHints {
		return ""
	}
	if near, ok := r.Near(number); ok {
		return ": did you mean " + quote(near) + "?"
	}
	return ""
}
