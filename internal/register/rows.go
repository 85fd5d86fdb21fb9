package register

import (
	"cmp"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"

	"liftlint/internal/validate"
)

// items reads all rows, several at a time.
func (t *Table) items(name string) error {
	const chunk = 512
	body := t.rows[1:]
	chunks := make([]rowChunk, (len(body)+chunk-1)/chunk)
	next := make(chan int)
	readers := make([]*rowReader, min(runtime.GOMAXPROCS(0), max(len(chunks), 1)))
	var wait sync.WaitGroup
	for w := range readers {
		readers[w] = newRowReader(t.reader.validator, t.binding)
		wait.Go(func() {
			for i := range next {
				from := i * chunk
				chunks[i] = t.chunk(readers[w], body[from:min(from+chunk, len(body))], from)
			}
		})
	}
	for i := range chunks {
		next <- i
	}
	close(next)
	wait.Wait()
	t.noteUnfit(name, readers)
	return t.gather(name, chunks)
}

// rowChunk is what some rows came to.
type rowChunk struct {
	items    []Item
	problems Problems
	total    int
	err      error
}

func (t *Table) chunk(rr *rowReader, rows [][]string, from int) rowChunk {
	c := rowChunk{items: make([]Item, 0, len(rows))}
	for i, cells := range rows {
		if empty(cells) {
			continue
		}
		number := from + i + 2 + t.above
		cells, problems := t.evened(cells, number)
		if len(problems) == 0 {
			var item Item
			if item, problems, c.err = t.item(rr, number, cells); c.err != nil {
				return c
			}
			if len(problems) == 0 {
				c.items = append(c.items, item)
			}
		}
		c.total += len(problems)
		if room := mostProblems - len(c.problems); room > 0 {
			c.problems = append(c.problems, problems[:min(room, len(problems))]...)
		}
	}
	return c
}

// evened is a row with as many cells as there are heads. Blank cells beyond
// the heads are nothing.
func (t *Table) evened(cells []string, row int) ([]string, Problems) {
	heads := len(t.rows[0])
	switch {
	case len(cells) == heads:
		return cells, nil
	case len(cells) > heads && empty(cells[heads:]):
		return cells[:heads], nil
	}
	at := Place{File: t.binding.origin.name, Row: row, Column: len(cells)}
	hint := "; is a separator missing, or a line break without quotes?"
	if len(cells) > heads {
		at.Column = heads + 1
		hint = "; is a cell with a separator in it without quotes?"
	}
	return nil, Problems{{ID: Ragged, Place: at, Message: fmt.Sprintf("the row has %d cells, and there are %d heads%s", len(cells), heads, hint)}}
}

// item reads one row. The error is a fault of the tool.
func (t *Table) item(rr *rowReader, number int, cells []string) (Item, Problems, error) {
	r := rr.read(number, cells)
	parts, ok := rr.valid(r)
	if !ok {
		r.problems = append(r.problems, t.faults(rr, r)...)
	}
	if len(r.problems) > 0 {
		return Item{}, r.problems, nil
	}
	item, err := decode(parts)
	item.at = at{file: t.binding.origin, row: number, entries: r.entries}
	if keep := t.reader.keep; keep != "" && item.Number == keep {
		withPointers(r.item, "")
		item.values = copied(r.item)
	}
	return item, nil, err
}

// valid holds a row against the schemas: as a whole, or, where an item with the
// same fields was found valid, value by value.
func (rr *rowReader) valid(r *row) (validate.Parts, bool) {
	if r.alike && r.kind.shapes[string(r.shape)] {
		parts, unknown := rr.v.Parts(r.item)
		return parts, len(unknown) == 0
	}
	parts, ok := rr.v.ValidItem(r.item)
	if ok && r.alike {
		r.kind.shapes[string(r.shape)] = true
	}
	return parts, ok
}

// noNumber is what an item without a number is called, by its place in the list
// that it would stand in; of a row the place is told already.
const noNumber = "item entry 1"

// faults are what the schemas find in a row. What is missing because its cell
// can't be read is not told of twice.
func (t *Table) faults(rr *rowReader, r *row) Problems {
	withPointers(r.item, "/items/0")
	unread := len(r.problems) > 0
	var ps Problems
	if !unread && r.item.Get("number") == nil && r.item.Get("kind") == nil {
		return Problems{{ID: "register/missing_key", Place: Place{File: t.binding.origin.name, Row: r.number},
			Message: "the row has neither a `number` nor a `kind`; if it is no item, as a row of sums is none, take it out of the table"}}
	}
	for _, f := range rr.v.Item(r.item) {
		if unread && f.ID == "register/missing_key" {
			continue
		}
		p := Place{File: t.binding.origin.name, Row: r.number, Column: f.Range.From.Column}
		if p.Column > 0 && p.Column <= len(t.binding.origin.heads) {
			p.Head = t.binding.origin.heads[p.Column-1]
		}
		ps = append(ps, Problem{ID: f.ID, Message: strings.Replace(f.Message, noNumber, "the row", 1), Place: p})
	}
	if len(ps) == 0 && !unread { // never takes an item for valid that is not
		ps = append(ps, Problem{ID: "register/not_valid", Message: "the row is not valid", Place: Place{File: t.binding.origin.name, Row: r.number}})
	}
	return ps
}

func (t *Table) gather(name string, chunks []rowChunk) error {
	var ps Problems
	total, n := 0, 0
	for _, c := range chunks {
		if c.err != nil {
			return fmt.Errorf("%s: %w", name, c.err)
		}
		ps = append(ps, c.problems...)
		total += c.total
		n += len(c.items)
	}
	switch {
	case total > 0:
		same := twice(chunks)
		return sorted(append(ps, same...), total+len(same))
	case n == 0:
		return Problems{{ID: Heads, Place: Place{File: name}, Message: "the table has heads and no rows below them"}}
	}
	t.Register = &Register{Files: []File{{Name: name, Title: t.title, Site: t.site}}, Items: make([]Item, 0, n)}
	for i := range chunks {
		t.Register.Items = append(t.Register.Items, chunks[i].items...)
		chunks[i].items = nil // so that items are not held twice for long
	}
	return nil
}

// twice looks for numbers and serials given twice among the rows that could be
// read, so that they are told of with the rest.
func twice(chunks []rowChunk) Problems {
	r := &Register{}
	for _, c := range chunks {
		r.Items = append(r.Items, c.items...)
	}
	return append(r.index(), r.serials()...)
}

// noteUnfit notes columns whose cells had no field in some kind of gear.
func (t *Table) noteUnfit(name string, readers []*rowReader) {
	all := map[unfit]*seen{}
	for _, rr := range readers {
		for k, s := range rr.unfit {
			if all[k] == nil {
				all[k] = &seen{row: s.row}
			}
			all[k].cells += s.cells
			all[k].row = min(all[k].row, s.row)
		}
	}
	keys := make([]unfit, 0, len(all))
	for k := range all {
		keys = append(keys, k)
	}
	slices.SortFunc(keys, func(a, b unfit) int { return cmp.Or(cmp.Compare(a.column, b.column), cmp.Compare(a.kind, b.kind)) })
	for _, k := range keys {
		target := t.binding.targets[k.column-1]
		t.Notes = append(t.Notes, Note{
			Place: Place{File: name, Row: all[k].row, Column: k.column, Head: target.head},
			Message: fmt.Sprintf("gear of kind %s has no field %s: kept as it stands, in %d rows from this one on",
				k.kind, quote(target.spec.Field), all[k].cells),
		})
	}
}
