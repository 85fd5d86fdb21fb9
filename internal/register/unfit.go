package register

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/validate"
)

// unfit is a column whose cells a kind of gear has no field for.
type unfit struct {
	column int
	kind   string
}

// seen is how often, and in which row first.
type seen struct{ cells, row int }

// unfitting keeps a cell that the row's kind of gear has no field for, and notes
// it. Damage that somebody saw is refused: kept it would be judged by nothing.
func (rr *rowReader) unfitting(r *row, i int, kind, cell string) {
	t := rr.b.targets[i]
	switch {
	case kind == "": // that the row has no kind is told by itself
	case isSign(t.steps) && !rr.harmless(i, cell):
		r.problems = append(r.problems, Problem{
			ID: BadValue, Place: Place{File: rr.b.origin.name, Row: r.number, Column: t.column, Head: t.head},
			Message: fmt.Sprintf("%s stands for %s, which inspections of gear of kind %s do not look for, so that nothing would judge it: record what was seen under a sign of that kind, or clear the cell",
				quote(strings.TrimSpace(cell)), quote(t.spec.Field), kind),
		})
	default:
		r.keep(t, cell)
		rr.noteUnfit(t.column, kind, r.number)
	}
}

// isSign reports the fields for what an inspection found.
func isSign(steps []string) bool {
	return len(steps) == 4 && steps[0] == "inspections" && steps[2] == "found"
}

// harmless reports a cell that says that a sign was looked for and not found.
func (rr *rowReader) harmless(i int, cell string) bool {
	t := rr.b.targets[i]
	field, ok := fieldOfAny(rr.v, t.steps)
	if !ok {
		return false
	}
	v := convert(cell, field, nil, rr.set[i])
	if v.why != "" {
		return false
	}
	if field.Quantity != 0 {
		amount, err := field.Quantity.Parse(v.text)
		return err == nil && amount == 0
	}
	switch t.steps[3] {
	case "tag_legible", "pin_original":
		return v.text == "true"
	case "latch":
		return v.text == "works"
	case "corrosion":
		return v.text != "severe"
	}
	return slices.Contains([]string{"false", "0"}, v.text)
}

// fieldOfAny finds a field of any kind of gear.
func fieldOfAny(v *validate.Validator, steps []string) (validate.Field, bool) {
	for _, kind := range v.GearKinds() {
		if f, ok := v.ItemField(kind, steps); ok {
			return f, true
		}
	}
	return validate.Field{}, false
}

func (rr *rowReader) noteUnfit(column int, kind string, row int) {
	s := rr.unfit[unfit{column, kind}]
	if s == nil {
		s = &seen{row: row}
		rr.unfit[unfit{column, kind}] = s
	}
	s.cells++
}
