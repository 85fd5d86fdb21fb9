package policy

import (
	"fmt"
	"strings"
)

// template is a message with fields in braces, taken apart.
type template []piece

// piece is plain words, or the name of what stands in their place.
type piece struct{ words, name string }

// Names that stand for something else than a field of the same name.
const (
	measuredName = "measured"
	limitName    = "limit"
	namesName    = "names"
)

// parseTemplate takes a message apart. It refuses a brace without its fellow.
func parseTemplate(message string) (template, error) {
	var t template
	for message != "" {
		words, rest, open := strings.Cut(message, "{")
		if strings.Contains(words, "}") {
			return nil, fmt.Errorf("the message has a } without its {")
		}
		if words != "" {
			t = append(t, piece{words: words})
		}
		if !open {
			break
		}
		name, after, closed := strings.Cut(rest, "}")
		if !closed || strings.Contains(name, "{") {
			return nil, fmt.Errorf("the message has a { without its }")
		}
		t = append(t, piece{name: name})
		message = after
	}
	return t, nil
}

// Message words what is wrong with a broken subject, with its figures as
// render gives them. The field that render is asked for is a dotted field of
// the record or a parameter, with the unit in its name; the value is a
// float64, an int, a bool or a string.
func (r *Rule) Message(o Outcome, render func(field string, value any) string) string {
	var b strings.Builder
	for _, p := range r.templateOf(o) {
		b.WriteString(p.words)
		if p.name != "" {
			b.WriteString(r.fill(o, p.name, render))
		}
	}
	return b.String()
}

func (r *Rule) templateOf(o Outcome) template {
	if o.Grade != nil && o.Grade.message != nil {
		return o.Grade.message
	}
	return r.message
}

func (r *Rule) fill(o Outcome, name string, render func(string, any) string) string {
	if name == namesName {
		return strings.ReplaceAll(strings.Join(o.Names, ", "), "_", " ")
	}
	field := name
	switch name {
	case measuredName:
		field, _ = r.figures(o)
	case limitName:
		_, field = r.figures(o)
	}
	value, ok := r.value(o, field)
	if !ok {
		return "unknown"
	}
	return render(field, value)
}

// figures are the names of what is measured and of its limit, for the grade
// that was reached.
func (r *Rule) figures(o Outcome) (measured, limit string) {
	measured, limit = r.Measured, r.Limit
	if o.Grade != nil {
		measured, limit = o.Grade.Measured, o.Grade.Limit
	}
	return measured, limit
}

func (r *Rule) value(o Outcome, name string) (any, bool) {
	if name == "" {
		return nil, false
	}
	if v, ok := r.Param(name); ok {
		return v, true
	}
	return o.Subject.Field(name)
}

// MeasuredOf returns what was judged of a subject: the field's name, with its
// unit, and its value. It is false where the rule measures nothing or the
// figure is absent.
func (r *Rule) MeasuredOf(o Outcome) (field string, value float64, ok bool) {
	field, _ = r.figures(o)
	return r.number(o, field)
}

// LimitOf returns what the measured figure was judged by, likewise.
func (r *Rule) LimitOf(o Outcome) (field string, value float64, ok bool) {
	_, field = r.figures(o)
	return r.number(o, field)
}

func (r *Rule) number(o Outcome, field string) (string, float64, bool) {
	v, ok := r.value(o, field)
	if !ok {
		return field, 0, false
	}
	switch v := v.(type) {
	case float64:
		return field, v, true
	case int:
		return field, float64(v), true
	}
	return field, 0, false
}

// PlaceOf is where a finding on the subject points at: the URI fragment of the
// nested record that METADATA names, of the subject itself where that is
// absent.
func (r *Rule) PlaceOf(o Outcome) string {
	if r.Place != "" {
		if at, ok := o.Subject.Field(r.Place + ".at"); ok {
			if s, ok := at.(string); ok {
				return s
			}
		}
	}
	return o.Subject.At
}
