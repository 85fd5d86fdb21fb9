package policy

import (
	"slices"

	"liftlint/internal/facts"
)

// unsaid holds, by field, the words for unknown that its value can be, and of
// each whether the rule's text asks for it.
type unsaid map[string]map[string]bool

// read notes that the text reads a field, and marks the kind as coming from it.
func (u unsaid) read(path string, k kind) kind {
	words := k.unsaid()
	if len(words) == 0 {
		return k
	}
	k.field = path
	if u[path] == nil {
		u[path] = map[string]bool{}
	}
	for _, w := range words {
		if _, known := u[path][w]; !known { // one that is asked for stays so
			u[path][w] = false
		}
	}
	return k
}

// asked notes the words that values are held against, each by each.
func (u unsaid) asked(operands []kind) {
	for _, a := range operands {
		for _, b := range operands {
			if a.field == "" || b.field != "" {
				continue
			}
			for _, w := range b.values {
				if _, stands := u[a.field][w]; stands {
					u[a.field][w] = true
				}
			}
		}
	}
}

// left lists what the text reads and does not ask for, by field. A word that
// where leaves out or names is answered for.
func (u unsaid) left(where []Condition) []Unsaid {
	var out []Unsaid
	for _, path := range sortedKeys(u) {
		if slices.ContainsFunc(where, func(c Condition) bool { return c.Field == path }) {
			continue
		}
		x := Unsaid{Field: path}
		for _, w := range sortedKeys(u[path]) {
			if !u[path][w] {
				x.Words = append(x.Words, w)
			}
		}
		if len(x.Words) > 0 {
			out = append(out, x)
		}
	}
	return out
}

// of tells whether a record has one of the words there.
func (x Unsaid) of(v facts.View) bool {
	switch value, _ := v.Field(x.Field); value := value.(type) {
	case string:
		return slices.Contains(x.Words, value)
	case []string:
		return slices.ContainsFunc(value, func(s string) bool { return slices.Contains(x.Words, s) })
	}
	return false
}
