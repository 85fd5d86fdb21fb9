package onfile

import (
	"reflect"
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/record"
	"liftlint/internal/register"
)

// Of finds the entry that a pointer of the plan leads into, and the rest of the
// pointer below it.
func (p *Plan) Of(pointer string) (e Entry, rest string, ok bool) {
	if p == nil {
		return Entry{}, "", false
	}
	if p.byPointer == nil {
		p.byPointer = make(map[string]int, len(p.Entries))
		for i, e := range p.Entries {
			p.byPointer[e.Pointer] = i
		}
	}
	entry, ok := strings.CutPrefix(pointer, "/gear/")
	if !ok {
		return Entry{}, "", false
	}
	index, _, _ := strings.Cut(entry, "/")
	at := pointer[:len("/gear/")+len(index)]
	i, ok := p.byPointer[at]
	if !ok {
		return Entry{}, "", false
	}
	return p.Entries[i], pointer[len(at):], true
}

// Place is where the value at a pointer of the plan stands in the register;
// false where it stands in the plan itself, which can say more of an item than
// the register does.
func (p *Plan) Place(pointer string) (register.Place, bool) {
	e, rest, ok := p.Of(pointer)
	if !ok {
		return register.Place{}, false
	}
	for at := pointer; len(at) > len(e.Pointer); at = at[:strings.LastIndexByte(at, '/')] {
		if p.own[at] {
			return register.Place{}, false
		}
	}
	return placeOf(e.Item, rest), true
}

// placeOf is a place with, at least, the range of the item's number.
func placeOf(item *register.Item, pointer string) register.Place {
	p := item.Place(pointer)
	if p.Range.IsZero() {
		p.Range = item.Place("").Range
	}
	return p
}

// Place is where the register says what the plan says otherwise.
func (u Unlike) Place() register.Place {
	return placeOf(u.Entry.Item, "/"+strings.ReplaceAll(u.Field, ".", "/"))
}

// Led is where a place of the facts leads that stands in the register, be it
// written as one of the plan or, after Lead, as one of the register.
func (p *Plan) Led(at string) (register.Place, bool) {
	if p == nil {
		return register.Place{}, false
	}
	if pointer, ok := strings.CutPrefix(at, "#"); ok {
		return p.Place(pointer)
	}
	place, ok := p.led[at]
	return place, ok
}

// Lead lets all records of the facts that stand for gear on file lead into the
// register, and adds where the plan uses that.
func (p *Plan) Lead(f *facts.Facts) {
	if p == nil || len(p.Entries) == 0 {
		return
	}
	p.led = map[string]register.Place{}
	for _, name := range facts.Collections() {
		views, _ := f.Document.Records(name)
		for _, v := range views {
			if e, _, ok := p.Of(strings.TrimPrefix(v.At, "#")); ok && e.Use != "" {
				f.Related[v.Key] = append(f.Related[v.Key], UseOf(e))
			}
		}
	}
	p.lead(reflect.ValueOf(&f.Document).Elem())
}

// UseOf is the place where the plan takes an item from the register.
func UseOf(e Entry) facts.Related {
	return facts.Related{At: "#" + e.Use, Caption: e.ID + " in the plan, which is " + e.Item.Number + " of the register"}
}

// lead goes through all fields named at.
func (p *Plan) lead(v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			p.lead(v.Elem())
		}
	case reflect.Slice:
		for i := range v.Len() {
			p.lead(v.Index(i))
		}
	case reflect.Struct:
		for _, f := range record.Fields(v.Type()) {
			x := v.FieldByIndex(f.Index)
			if f.Name == "at" && x.Kind() == reflect.String {
				x.SetString(p.at(x.String()))
				continue
			}
			p.lead(x)
		}
	}
}

func (p *Plan) at(fragment string) string {
	place, ok := p.Place(strings.TrimPrefix(fragment, "#"))
	if !ok {
		return fragment
	}
	p.led[place.String()] = place
	return place.String()
}
