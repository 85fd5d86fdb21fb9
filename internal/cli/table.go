package cli

import (
	"fmt"
	"io"
	"reflect"
	"slices"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
	"liftlint/internal/quantity"
	"liftlint/internal/record"
)

// writeTables shows each collection of the facts as a table, records side by
// side. A field that no record has a value for is left out, and named below.
func writeTables(w io.Writer, r *lint.Result, collections []string) error {
	for _, name := range collections {
		records, _ := r.Facts.Document.Records(name)
		if len(records) == 0 {
			continue
		}
		blocks, absent := tables{r.Facts.Gaps, r.Units}.blocks(records, fieldsOf(name))
		for i, rows := range blocks {
			title := name
			if i > 0 {
				title = "\n" + name + ", continued"
			}
			if _, err := fmt.Fprintln(w, title); err != nil {
				return err
			}
			if err := writeAligned(w, rows, "  "); err != nil {
				return err
			}
		}
		if len(absent) > 0 {
			fmt.Fprintf(w, "  not known: %s\n", strings.Join(absent, ", "))
		}
		fmt.Fprintln(w)
	}
	return writeWaits(w, r.Facts)
}

// writeWaits lists what the plan would have to say for the missing figures.
func writeWaits(w io.Writer, f *facts.Facts) error {
	var labels []string
	for _, gap := range f.Gaps {
		for _, in := range gap.Inputs {
			labels = append(labels, fmt.Sprintf("  %s, `%s`", visible(in.Label), in.Field))
		}
	}
	if len(labels) == 0 {
		return nil
	}
	slices.Sort(labels)
	_, err := fmt.Fprintf(w, "figures wait for\n%s\n", strings.Join(slices.Compact(labels), "\n"))
	return err
}

// fieldsOf lists the dotted fields of a collection's records, without their
// places.
func fieldsOf(collection string) []string {
	for _, f := range record.Fields(reflect.TypeFor[facts.Document]()) {
		if f.Name == collection {
			return dotted(f.Type.Elem(), "")
		}
	}
	return nil
}

func dotted(t reflect.Type, prefix string) []string {
	var names []string
	for _, f := range record.Fields(t) {
		inner := f.Type
		if inner.Kind() == reflect.Pointer {
			inner = inner.Elem()
		}
		switch {
		case f.Name == "at":
		case inner.Kind() == reflect.Struct:
			names = append(names, dotted(inner, prefix+f.Name+".")...)
		default:
			names = append(names, prefix+f.Name)
		}
	}
	return names
}

// abreast is how many records stand side by side.
const abreast = 4

// tables lays records out: gaps tell what is not known from what does not
// concern a record.
type tables struct {
	gaps  facts.Gaps
	units quantity.System
}

// blocks lays records out side by side, a row for each field that any of them
// has. Fields that none has, though they concern one, are listed apart.
func (t tables) blocks(records []facts.View, fields []string) (blocks [][][]string, absent []string) {
	shown := slices.DeleteFunc(slices.Clone(fields), func(f string) bool {
		if slices.ContainsFunc(records, func(r facts.View) bool { _, ok := r.Field(f); return ok }) {
			return false
		}
		if slices.ContainsFunc(records, func(r facts.View) bool { return t.waits(r, f) }) {
			absent = append(absent, f)
		}
		return true
	})
	for group := range slices.Chunk(records, abreast) {
		var rows [][]string
		for _, f := range shown {
			rows = append(rows, t.rows(f, group)...)
		}
		blocks = append(blocks, rows)
	}
	return blocks, absent
}

// waits reports whether a field concerns the record and is not known.
func (t tables) waits(r facts.View, field string) bool {
	for path := field; path != ""; {
		if _, ok := t.gaps[facts.GapKey{Key: r.Key, Field: path}]; ok {
			return true
		}
		i := strings.LastIndexByte(path, '.')
		path = path[:max(i, 0)]
	}
	return false
}

// rows lays one field of several records out: one row, or as many as its
// longest list has entries.
func (t tables) rows(field string, records []facts.View) [][]string {
	rows := [][]string{{field}}
	for i, r := range records {
		v, ok := r.Field(field)
		list, isList := v.([]string)
		if !isList || len(list) == 0 {
			list = []string{t.cell(field, v, ok, t.waits(r, field))}
		}
		for n, text := range list {
			if n == len(rows) {
				rows = append(rows, []string{""})
			}
			for len(rows[n]) <= i {
				rows[n] = append(rows[n], "")
			}
			rows[n] = append(rows[n], visible(text))
		}
	}
	return rows
}

func (t tables) cell(field string, v any, known, waits bool) string {
	switch {
	case !known && waits:
		return "?"
	case !known:
		return "-"
	}
	switch v := v.(type) {
	case float64:
		if text, ok := quantity.FormatSuffix(field, v, t.units); ok {
			return text
		}
		return fmt.Sprintf("%.6g", v)
	case bool:
		if v {
			return "yes"
		}
		return "no"
	case []string:
		return "-" // an empty list
	case string:
		return v
	}
	return fmt.Sprint(v)
}
