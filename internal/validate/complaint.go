package validate

import (
	"net/url"
	"strconv"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/yamldoc"
)

// complaint is one thing that the library found: which keyword of which schema
// a value does not meet.
type complaint struct {
	node    *yamldoc.Node
	schema  *jsonschema.Schema
	keyword string
	text    string // the library's own words
}

// leaves gathers the errors without causes; all others only group them.
func leaves(err *jsonschema.ValidationError) []*jsonschema.ValidationError {
	if len(err.Causes) == 0 {
		return []*jsonschema.ValidationError{err}
	}
	var all []*jsonschema.ValidationError
	for _, cause := range err.Causes {
		all = append(all, leaves(cause)...)
	}
	return all
}

// locate finds the node and the schema that an error speaks of. `at` is the
// object that was validated against root.
func locate(at *yamldoc.Node, root *jsonschema.Schema, err *jsonschema.ValidationError) (complaint, bool) {
	c := complaint{node: at, text: err.Message}
	i := strings.LastIndexByte(err.AbsoluteKeywordLocation, '/')
	if i < 0 {
		return c, false
	}
	location := err.AbsoluteKeywordLocation[:i]
	c.keyword = err.AbsoluteKeywordLocation[i+1:]
	chain := withRefs(root)
	for _, step := range steps(err.InstanceLocation) {
		if c.node = child(c.node, step); c.node == nil {
			return c, false
		}
		chain = below(chain, step)
	}
	for _, s := range chain {
		if s.Location == location {
			c.schema = s
			return c, true
		}
	}
	return c, false
}

// steps takes an instance location apart. The library escapes it twice: as a
// JSON pointer, then, step by step, as a URL.
func steps(location string) []string {
	if plain, err := url.PathUnescape(location); err == nil {
		location = plain
	}
	return pointerSteps(location)
}

// pointerSteps takes a JSON pointer apart (RFC 6901, 4).
func pointerSteps(pointer string) []string {
	if pointer == "" {
		return nil
	}
	all := strings.Split(pointer, "/")[1:]
	for i, s := range all {
		all[i] = strings.ReplaceAll(strings.ReplaceAll(s, "~1", "/"), "~0", "~")
	}
	return all
}

func child(n *yamldoc.Node, step string) *yamldoc.Node {
	if n.Kind != yamldoc.Sequence {
		return n.Get(step)
	}
	i, err := strconv.Atoi(step)
	if err != nil || i < 0 || i >= len(n.Items) {
		return nil
	}
	return n.Items[i]
}

// withRefs is a schema with those it refers to, itself first.
func withRefs(s *jsonschema.Schema) []*jsonschema.Schema {
	var chain []*jsonschema.Schema
	for ; s != nil; s = s.Ref {
		chain = append(chain, s)
	}
	return chain
}

// below is what a chain of schemas says of a key or item.
func below(chain []*jsonschema.Schema, step string) []*jsonschema.Schema {
	var next []*jsonschema.Schema
	for _, s := range chain {
		if p, ok := s.Properties[step]; ok {
			next = append(next, withRefs(p)...)
		}
		if items, ok := s.Items.(*jsonschema.Schema); ok {
			next = append(next, withRefs(items)...)
		}
	}
	return next
}
