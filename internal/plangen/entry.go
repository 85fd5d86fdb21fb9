package plangen

import "slices"

// form is what an entry of the tree is.
type form int

const (
	scalar form = iota
	mapping
	list
)

// entry is one value of a plan before it is written down, with its key where
// it stands in a mapping.
type entry struct {
	key    string
	form   form
	text   string // of a scalar, as it is to be read
	bare   bool   // a number or truth value, which quotes would change
	quoted bool   // a text that would be read as a number without quotes
	needed bool   // the format asks for it
	below  []*entry
}

func val(key, text string) *entry { return &entry{key: key, text: text} }

func bare(key, text string) *entry { return &entry{key: key, text: text, bare: true} }

func quoted(key, text string) *entry { return &entry{key: key, text: text, quoted: true} }

func mapOf(key string, below ...*entry) *entry { return group(mapping, key, below) }

func listOf(key string, items ...*entry) *entry { return group(list, key, items) }

// group leaves out nil entries, so that optional ones can stand in a call.
func group(f form, key string, below []*entry) *entry {
	below = slices.DeleteFunc(below, func(e *entry) bool { return e == nil })
	return &entry{key: key, form: f, below: below}
}

func need(e *entry) *entry {
	e.needed = true
	return e
}

// when gives the entry or nothing.
func when(yes bool, e *entry) *entry {
	if !yes {
		return nil
	}
	return e
}

// at goes down by keys, nil where one is missing.
func (e *entry) at(keys ...string) *entry {
	for _, k := range keys {
		i := slices.IndexFunc(e.below, func(b *entry) bool { return b.key == k })
		if i < 0 {
			return nil
		}
		e = e.below[i]
	}
	return e
}

// with finds the item of a list whose field has the text.
func (e *entry) with(key, text string) *entry {
	for _, item := range e.below {
		if f := item.at(key); f != nil && f.text == text {
			return item
		}
	}
	return nil
}

// set replaces the field of the same key or adds it, and returns it.
func (e *entry) set(field *entry) *entry {
	for i, b := range e.below {
		if b.key == field.key {
			field.needed = b.needed
			e.below[i] = field
			return field
		}
	}
	e.below = append(e.below, field)
	return field
}

func (e *entry) drop(keys ...string) {
	e.below = slices.DeleteFunc(e.below, func(b *entry) bool { return slices.Contains(keys, b.key) })
}

// height is the number of levels below.
func (e *entry) height() int {
	h := 0
	for _, b := range e.below {
		h = max(h, 1+b.height())
	}
	return h
}

// optional lists the fields below that a plan may leave out, each as a path
// and its mapping, in the order of the tree.
func (e *entry) optional(path string, visit func(path string, parent, field *entry)) {
	for _, b := range e.below {
		p := path + "/" + b.key
		if e.form == list {
			p = path + "/" + b.name()
		} else if !b.needed {
			visit(p, e, b)
		}
		b.optional(p, visit)
	}
}

// name is what an item of a list is called in paths.
func (e *entry) name() string {
	if id := e.at("id"); id != nil {
		return id.text
	}
	for _, list := range []string{"down", "legs"} {
		if ids := e.at(list); ids != nil && len(ids.below) > 0 {
			return ids.below[0].text
		}
	}
	return e.text
}
