package policy

import (
	"fmt"
	"maps"
	"slices"

	"liftlint/internal/datafile"
	"liftlint/internal/nearest"
)

// pointer writes a JSON pointer's list item and field.
func pointer(base string, i int, field string) string {
	return fmt.Sprintf("%s/%d/%s", base, i, field)
}

func sortedKeys[V any](m map[string]V) []string { return slices.Sorted(maps.Keys(m)) }

// params settles the parameters: METADATA's defaults, then each layer.
func (c *checker) params(from map[string]paramEntry) {
	for _, name := range sortedKeys(from) {
		at, e := "/custom/params/"+name, from[name]
		if _, taken := c.shape.field(c.rule.Over, name); taken || slices.Contains([]string{measuredName, limitName, namesName}, name) {
			c.meta(at, "%q has another meaning in messages: choose another name for the parameter", name)
		}
		p := Param{Name: name, Default: plainValue(e.Default)}
		p.Value = p.Default
		if why := e.refuses(p.Default); why != "" {
			c.meta(at, "parameter %s: the default %s", name, why)
		}
		c.rule.Params = append(c.rule.Params, p)
	}
	for _, l := range c.ofRule() {
		l.params(from)
	}
}

// plainValue lays a list of texts out as such, and any whole number as a
// float64.
func plainValue(v any) any {
	switch v := v.(type) {
	case []any:
		return append([]string{}, datafile.Texts(v)...)
	case int:
		return float64(v)
	}
	return v
}

// refuses says why a parameter can't have a value, empty where it can.
func (e paramEntry) refuses(v any) string {
	if got, want := literal(v).base, literal(plainValue(e.Default)).base; got != want {
		return fmt.Sprintf("is %s, and it takes %s", got, want)
	}
	x, isNumber := v.(float64)
	switch {
	case isNumber && e.AtLeast != nil && x < *e.AtLeast:
		return fmt.Sprintf("%s is under %s, the least it can be", figure(x), figure(*e.AtLeast))
	case isNumber && e.AtMost != nil && x > *e.AtMost:
		return fmt.Sprintf("%s is over %s, the most it can be", figure(x), figure(*e.AtMost))
	case !isNumber && (e.AtLeast != nil || e.AtMost != nil):
		return "is no number, and has bounds"
	}
	for _, w := range literal(v).values {
		if e.OneOf != nil && !slices.Contains(e.OneOf, w) {
			return fmt.Sprintf("%q is not among those allowed%s", w, nearest.Hint(w, e.OneOf))
		}
	}
	return ""
}

func (c *checker) paramKind(p Param) kind {
	k := literal(p.Value)
	k.param = p.Name
	if k.base == number {
		k.unit = unitOf(p.Name)
	}
	return k
}

// figures checks what is measured and by what it is judged, of the rule and of
// its grades, which fall back on the rule's.
func (c *checker) figures(m custom) {
	c.figurePair("/custom", m.Measured, m.Limit)
	for i := range c.rule.Grades {
		g, from := &c.rule.Grades[i], m.Grades[i]
		g.Measured, g.Limit = m.Measured, m.Limit
		if from.Measured != "" {
			g.Measured = from.Measured
		}
		if from.Limit != "" {
			g.Limit = from.Limit
		}
		if from.Measured != "" || from.Limit != "" {
			c.figurePair(fmt.Sprintf("/custom/grades/%d", i), g.Measured, g.Limit)
		}
	}
}

func (c *checker) figurePair(at, measured, limit string) {
	var m, l kind
	if measured != "" {
		got, ok := c.fieldAt(at+"/measured", c.rule.Over, measured)
		if !ok {
			return
		}
		if m = got.kind; m.base != number {
			c.meta(at+"/measured", "measured: %s is %s; a figure is a number", measured, m.base)
			return
		}
	}
	if limit == "" {
		return
	}
	l, ok := c.named(at+"/limit", limit)
	switch {
	case !ok:
	case l.base != number:
		c.meta(at+"/limit", "limit: %s is %s; a limit is a number", limit, l.base)
	case measured == "":
		c.meta(at+"/limit", "limit: there is no measured field that it limits")
	case l.unit != m.unit:
		c.meta(at+"/limit", "limit: %s and %s do not end in the same unit", limit, measured)
	}
}

// named looks up what METADATA names: a parameter or a field.
func (c *checker) named(at, name string) (kind, bool) {
	for _, p := range c.rule.Params {
		if p.Name == name {
			return c.paramKind(p), true
		}
	}
	got, ok := c.shape.field(c.rule.Over, name)
	if !ok {
		known := append(c.rule.paramNames(), got.known...)
		c.meta(at, "%q is no parameter and no field of %s%s", name, c.rule.Over, nearest.Hint(got.failed, known))
	}
	return got.kind, ok
}

// messages takes the messages apart and checks what they name. The rule's own
// is checked with the figures of each grade that uses it.
func (c *checker) messages(m custom) {
	own := 0
	for i := range c.rule.Grades {
		g := &c.rule.Grades[i]
		if text := m.Grades[i].Message; text != "" {
			g.message = c.message(pointer("/custom/grades", i, "message"), text, g.Measured, g.Limit)
			own++
		} else {
			c.rule.message = c.message("/custom/message", m.Message, g.Measured, g.Limit)
		}
	}
	if own == len(c.rule.Grades) {
		c.rule.message = c.message("/custom/message", m.Message, c.rule.Measured, c.rule.Limit)
	}
}

func (c *checker) message(at, text, measured, limit string) template {
	t, err := parseTemplate(text)
	if err != nil {
		c.meta(at, "%v", err)
	}
	for _, p := range t {
		switch {
		case p.name == "" && p.words != "", p.name == namesName:
		case p.name == measuredName && measured == "", p.name == limitName && limit == "":
			c.meta(at, "the message shows {%s}, and METADATA names none", p.name)
		case p.name == measuredName, p.name == limitName:
		case p.name == "":
			c.meta(at, "the message has nothing between { and }")
		default:
			if k, ok := c.named(at, p.name); ok && (k.base == list || k.base == record) {
				c.meta(at, "the message can't show {%s}, which is %s", p.name, k.base)
			}
		}
	}
	return t
}
