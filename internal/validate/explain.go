package validate

import (
	"errors"
	"fmt"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

// explainer gathers the faults of one document.
type explainer struct {
	root   *yamldoc.Node
	what   string             // what the document is: a plan, a register
	line   func(n int) string // of the text, for values of several lines
	faults []yamldoc.Fault
}

// check holds a node against the schema at a path. If it does not meet it,
// there is at least one fault, whatever happens.
func (x *explainer) check(s *schemas, path string, n *yamldoc.Node) {
	sch, err := s.get(path)
	if err != nil {
		x.unexplained(n, "its schema could not be read: "+err.Error())
		return
	}
	err = run(sch, n.Value())
	var found *jsonschema.ValidationError
	switch {
	case err == nil:
	case errors.As(err, &found):
		x.explainAll(n, sch, found)
	default:
		x.unexplained(n, err.Error())
	}
}

// run turns a panic of the library into an error: on what it cannot take, such
// as numbers that are not finite, it panics.
func run(sch *jsonschema.Schema, v any) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("it could not be checked: %v", r)
		}
	}()
	return sch.Validate(v)
}

func (x *explainer) explainAll(n *yamldoc.Node, sch *jsonschema.Schema, found *jsonschema.ValidationError) {
	for _, leaf := range leaves(found) {
		before := len(x.faults)
		c, ok := locate(n, sch, leaf)
		if ok {
			x.explain(c)
		}
		if len(x.faults) == before {
			if c.node == nil {
				c.node = n
			}
			x.unexplained(c.node, leaf.Message)
		}
	}
}

// explain words one complaint. It may leave it unworded; the caller sees to
// that.
func (x *explainer) explain(c complaint) {
	switch c.keyword {
	case "required", "additionalProperties":
		x.keys(c.node, c.schema)
	case "type":
		x.wrongType(c)
	case "quantity":
		x.unit(c)
	case "calendar_day":
		x.say(BadDate, c.node, "%s", badDay(c.node.Text))
	case "enum":
		x.notAllowed(c)
	case "const":
		x.version(c)
	case "pattern":
		x.pattern(c)
	case "minLength", "maxLength":
		x.textLength(c)
	case "minItems", "maxItems":
		x.listLength(c)
	case "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum":
		x.outOfRange(c)
	}
}

// say adds a fault about a value; the message begins with its name.
func (x *explainer) say(id string, n *yamldoc.Node, format string, args ...any) {
	at := n.Place.Value
	if at.From == at.To && !n.Place.Key.IsZero() {
		at = n.Place.Key // nothing stands after the key
	}
	x.add(id, x.firstLine(at), x.name(n.Pointer)+": "+fmt.Sprintf(format, args...))
}

func (x *explainer) add(id string, at source.Range, message string) {
	x.faults = append(x.faults, yamldoc.Fault{ID: id, Message: message, Range: at})
}

func (x *explainer) unexplained(n *yamldoc.Node, why string) {
	x.add(NotValid, x.head(n), x.name(n.Pointer)+" is not valid: "+clean(why))
}

// head is where a fault about a mapping or list as a whole points: at its key,
// otherwise at its first line.
func (x *explainer) head(n *yamldoc.Node) source.Range {
	if !n.Place.Key.IsZero() {
		return n.Place.Key
	}
	return x.firstLine(n.Place.Value)
}

// firstLine keeps what lies on the first line of a range.
func (x *explainer) firstLine(r source.Range) source.Range {
	if r.From.Line == r.To.Line {
		return r
	}
	line := trimRight(x.line(r.From.Line))
	r.To = source.Position{Line: r.From.Line, Column: max(r.From.Column, 1+len([]rune(line)))}
	return r
}
