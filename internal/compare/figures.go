package compare

import (
	"math"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/quantity"
)

// shown are the figures that a reviewer looks at, by collection.
var shown = []struct{ collection, field, words string }{
	{"loads", "mass_kg", "mass"},
	{"loads", "mass_upper_kg", "mass at the upper end of its tolerance"},
	{"loads", "hangs", "how it hangs"},
	{"loads", "hangs_at_worst", "how it hangs within the tolerances"},
	{"loads", "tilt_deg", "tilt"},
	{"loads", "tilt_at_worst_deg", "tilt within the tolerances"},
	{"hooks", "load_n", "force"},
	{"hooks", "lean_from_plumb_deg", "lean from plumb"},
	{"legs", "length_m", "length"},
	{"legs", "angle_from_horizontal_deg", "angle from horizontal"},
	{"legs", "tension_n", "computed force"},
	{"legs", "tension_judged_n", "design force"},
	{"legs", "tension_bound_n", "worst split"},
	{"parts", "rated_load_n", "rated load as used"},
	{"parts", "used_ratio", "utilization"},
	{"beams", "compression_n", "compression"},
	{"beams", "bending_nm", "bending moment"},
	{"beams", "tilt_deg", "tilt"},
}

// How little figures differ that stand for the same, as a share of them and at all,
// in any of their units: the search for rest ends somewhere else when legs change
// places, and next to zero that is a share of nothing.
const (
	closeEnough = 1e-4
	nextToZero  = 1e-7
)

func differs(a, b float64) bool {
	return math.Abs(a-b) > max(nextToZero, closeEnough*max(math.Abs(a), math.Abs(b)))
}

// figures compares both revisions. The center of gravity, which the facts do not
// hold, is read from what is written.
func figures(a, b Side, x, y written, an, bn names) []Figure {
	list := center(x, y)
	for _, s := range shown {
		was, is := records(a.Result, s.collection, an), records(b.Result, s.collection, bn)
		for _, key := range inOrder(was, is) {
			f, ok := figure(was, is, key, s.field, a.Result, b.Result)
			if ok {
				f.Of, f.What, f.Field = nameOf(s.collection, was, is, key), s.words, s.field
				list = append(list, f)
			}
		}
	}
	return list
}

// recordList are records by their keys, and the keys in order.
type recordList struct {
	keys []string
	by   map[string]facts.View
}

func records(r *lint.Result, collection string, n names) recordList {
	list := recordList{by: map[string]facts.View{}}
	if r == nil || r.Facts == nil {
		return list
	}
	views, _ := r.Facts.Document.Records(collection)
	for _, v := range views {
		key := n.of(v.Key)
		list.keys = append(list.keys, key)
		list.by[key] = v
	}
	return list
}

// inOrder are the keys of what is, then of what was and is gone.
func inOrder(was, is recordList) []string {
	keys := append([]string{}, is.keys...)
	for _, k := range was.keys {
		if _, ok := is.by[k]; !ok {
			keys = append(keys, k)
		}
	}
	return keys
}

// notKnown stands for a figure of a thing that is there.
const notKnown = "not known"

// figure compares one field; false where nothing changed.
func figure(was, is recordList, key, field string, a, b *lint.Result) (Figure, bool) {
	x, oldText, had := fieldOf(was, key, field)
	y, newText, has := fieldOf(is, key, field)
	f := Figure{OldText: oldText, NewText: newText}
	v, isNumber := x.(float64)
	w, isNumberToo := y.(float64)
	switch {
	case !had && !has:
		return f, false
	case isNumber && isNumberToo:
		f.Old, f.New = &v, &w
		f.OldText, f.NewText = quantity.FormatPair(field, v, w, unitsOf(b))
		return f, differs(v, w)
	case isNumber:
		f.Old, f.OldText = &v, text(field, v, unitsOf(a))
	case isNumberToo:
		f.New, f.NewText = &w, text(field, w, unitsOf(b))
	}
	return f, f.OldText != f.NewText
}

// fieldOf reads a field, and words one that is not known, or is a word itself.
func fieldOf(list recordList, key, field string) (v any, text string, ok bool) {
	record, there := list.by[key]
	if !there {
		return nil, "", false
	}
	v, known := record.Field(field)
	if !known {
		return nil, notKnown, false
	}
	text, _ = v.(string)
	return v, text, true
}

func unitsOf(r *lint.Result) quantity.System {
	if r.Units == "" {
		return quantity.Metric
	}
	return r.Units
}

func text(field string, v float64, units quantity.System) string {
	t, _ := quantity.FormatSuffix(field, v, units)
	return t
}

// nameOf calls a record as people do.
func nameOf(collection string, was, is recordList, key string) string {
	v, ok := is.by[key]
	if !ok {
		v = was.by[key]
	}
	word := func(field string) string {
		text, _ := v.Field(field)
		s, _ := text.(string)
		return s
	}
	switch collection {
	case "loads":
		return "load"
	case "hooks":
		if id := word("id"); id != "hook" {
			return "hook " + id
		}
		return "hook"
	case "legs":
		return "leg " + word("id") + " to " + word("to")
	case "parts":
		return word("id") + " in " + word("where")
	}
	return word("id")
}

// center compares the place of the center of gravity.
func center(x, y written) []Figure {
	var list []Figure
	for _, axis := range []string{"x", "y", "z"} {
		path := centerPath + axis
		was, is := x[path], y[path]
		if was.means == is.means {
			continue
		}
		f := Figure{Of: "load", What: "center of gravity, " + axis, Field: "center_of_gravity_" + axis + "_m", OldText: was.text, NewText: is.text}
		if v, err := quantity.KindLength.Parse(was.text); err == nil {
			f.Old = &v
		}
		if v, err := quantity.KindLength.Parse(is.text); err == nil {
			f.New = &v
		}
		list = append(list, f)
	}
	return list
}

const centerPath = "load" + separator + "center_of_gravity" + separator
