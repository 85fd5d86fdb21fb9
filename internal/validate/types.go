package validate

import (
	"strconv"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/yamldoc"
)

// wrongType words a value of another kind than is asked for.
func (x *explainer) wrongType(c complaint) {
	if _, ok := c.schema.Extensions["quantity"]; ok && c.node.Kind == yamldoc.Number {
		x.unit(c)
		return
	}
	if c.node.Pointer == "" {
		x.add(WrongType, x.head(c.node), "a "+x.what+" is a mapping that begins with `liftlint: 1`, and "+c.node.Kind.String()+" stands here")
		return
	}
	want := wanted(c.schema)
	x.say(WrongType, c.node, "%s; %s", x.found(c.node), want+remedy(c))
}

// found says what stands there.
func (x *explainer) found(n *yamldoc.Node) string {
	switch n.Kind {
	case yamldoc.Null:
		if n.Style != yamldoc.EmptyStyle {
			return quote(n.Text) + " stands for nothing"
		}
		if steps := pointerSteps(n.Pointer); !n.Place.Key.IsZero() {
			return "nothing stands after " + quote(steps[len(steps)-1]+":") + " (leave the key out while the value is not known)"
		}
		return "nothing stands here"
	case yamldoc.Mapping, yamldoc.Sequence:
		return n.Kind.String() + " stands here"
	case yamldoc.Bool:
		return quote(n.Text) + " is a truth value"
	}
	return quote(n.Text) + " is " + n.Kind.String()
}

// wanted says what is asked for.
func wanted(s *jsonschema.Schema) string {
	if len(s.Enum) > 0 {
		return oneOf(s.Enum) + " is asked for"
	}
	if r, ok := s.Extensions["quantity"].(quantityRule); ok {
		return "a value with its unit, such as " + quote(r.kind.Example()) + ", is asked for"
	}
	if _, ok := s.Extensions["calendar_day"]; ok {
		return "a day such as " + quote(exampleDay) + " is asked for"
	}
	if strings.HasSuffix(s.Location, figureLocation) {
		return "a figure with its unit is asked for, as the report prints it, such as `29.3 deg`"
	}
	noun := map[string]string{
		"object": "a mapping", "array": "a list", "string": "text", "boolean": "true or false",
		"integer": "a whole number", "number": "a number",
	}[s.Types[0]]
	if s.Types[0] == "object" && len(s.Required) > 0 {
		noun += " with " + list(quoteAll(s.Required), "and")
	}
	return noun + " is asked for"
}

// remedy says how to write the same value as the kind that is asked for, where
// it would be valid then.
func remedy(c complaint) string {
	n := c.node
	switch {
	case strings.HasSuffix(c.schema.Location, figureLocation): // quotes give it no unit
		return ""
	case c.schema.Types[0] == "array" && n.Kind == yamldoc.Mapping:
		return ": put `- ` before each entry"
	case c.schema.Types[0] == "array" && n.Kind == yamldoc.String && run(c.schema, []any{n.Text}) == nil:
		return ": write `[" + clean(n.Text) + "]`"
	case (n.Kind == yamldoc.Number || n.Kind == yamldoc.Bool) && run(c.schema, n.Text) == nil:
		return ": put it in quotes, `\"" + clean(n.Text) + "\"`"
	case n.Kind == yamldoc.String && unquotedFits(c.schema, n.Text):
		return ": leave out the quotes"
	}
	return ""
}

func unquotedFits(s *jsonschema.Schema, text string) bool {
	if text == "true" || text == "false" {
		return run(s, text == "true") == nil
	}
	v, err := strconv.Atoi(text)
	return err == nil && run(s, v) == nil
}
