package policy

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/facts"
)

// Condition says which values a field may have: one of a list, or a number in
// a range whose ends belong to it.
type Condition struct {
	Field   string
	Values  []any // float64, string or bool
	AtLeast *float64
	AtMost  *float64
}

// String words the condition for people.
func (c Condition) String() string { return c.Field + " " + c.Allows() }

// Allows words which values the condition allows, without the field.
func (c Condition) Allows() string {
	var parts []string
	if c.AtLeast != nil {
		parts = append(parts, "at least "+figure(*c.AtLeast))
	}
	if c.AtMost != nil {
		parts = append(parts, "at most "+figure(*c.AtMost))
	}
	if len(c.Values) > 0 {
		words := make([]string, len(c.Values))
		for i, v := range c.Values {
			words[i] = fmt.Sprint(v)
			if x, ok := v.(float64); ok {
				words[i] = figure(x)
			}
		}
		parts = append(parts, strings.Join(words, " or "))
	}
	return strings.Join(parts, " and ")
}

func figure(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// answer is what a condition says of a record.
type answer int

const (
	no answer = iota
	yes
	unknown // the field is absent
)

func (c Condition) ask(v facts.View) answer {
	value, ok := v.Field(c.Field)
	if !ok {
		return unknown
	}
	if i, ok := value.(int); ok {
		value = float64(i)
	}
	if len(c.Values) > 0 {
		if slices.Contains(c.Values, value) {
			return yes
		}
		return no
	}
	x, isNumber := value.(float64)
	if !isNumber || c.AtLeast != nil && x < *c.AtLeast || c.AtMost != nil && x > *c.AtMost {
		return no
	}
	return yes
}

// askAll is no as soon as one condition says no, whatever is absent.
func askAll(conditions []Condition, v facts.View) answer {
	all := yes
	for _, c := range conditions {
		switch c.ask(v) {
		case no:
			return no
		case unknown:
			all = unknown
		}
	}
	return all
}

// conditions checks the conditions under one key of the METADATA and puts
// them in order.
func (c *checker) conditions(under, over string, from map[string]condition) []Condition {
	var out []Condition
	for _, field := range slices.Sorted(maps.Keys(from)) {
		at := "/custom/" + under + "/" + datafile.Escape(field)
		got, ok := c.fieldAt(at, over, field)
		if !ok {
			continue
		}
		if under == "when" && got.optional {
			c.meta(at, "%s may be absent from the lift: a rule is gated by what is always known", field)
		}
		c.condition(at, field, got.kind, from[field])
		e := from[field]
		out = append(out, Condition{field, e.values, e.atLeast, e.atMost})
	}
	return out
}

func (c *checker) condition(at, field string, k kind, e condition) {
	if k.base != number && len(e.values) == 0 {
		c.meta(at, "%s is %s: list the values it may have", field, k.base)
		return
	}
	if k.base == list || k.base == record {
		c.meta(at, "%s is %s, which can't be asked for here", field, k.base)
		return
	}
	for i, v := range e.values {
		p := at + "/" + strconv.Itoa(i)
		got := literal(v)
		if got.base != k.base {
			c.meta(p, "%s is %s, and %#v is %s", field, k.base, v, got.base)
			continue
		}
		if w, bad := stranger(got, k); bad {
			c.meta(p, "%s", notAmong(w, "", k.enum))
		}
	}
}

// literal is the kind of a value written in YAML.
func literal(v any) kind {
	switch v := v.(type) {
	case float64:
		return kind{base: number}
	case bool:
		return kind{base: truth}
	case string:
		return kind{base: text, values: []string{v}}
	}
	return kind{base: list, of: text, values: listOf(v)}
}

// listOf takes a list of texts out of decoded data.
func listOf(v any) []string {
	if s, ok := v.([]string); ok {
		return s
	}
	return datafile.Texts(v)
}
