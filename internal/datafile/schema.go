package datafile

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/url"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/nearest"
	"liftlint/schema"
)

// Schema is a JSON Schema, compiled, with its text as data beside it, from
// which messages take what would have been right.
type Schema struct {
	compiled *jsonschema.Schema
	raw      map[string]any
}

// Compile reads one of the embedded schemas by its file name.
func Compile(name string) (*Schema, error) {
	text, err := schema.Files.ReadFile(name)
	if err != nil {
		return nil, err
	}
	d := &Schema{}
	if err := json.Unmarshal(text, &d.raw); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	c := jsonschema.NewCompiler()
	c.LoadURL = func(s string) (io.ReadCloser, error) {
		return nil, fmt.Errorf("schemas refer to nothing outside themselves: %s", s)
	}
	if err := c.AddResource(name, bytes.NewReader(text)); err != nil {
		return nil, err
	}
	d.compiled, err = c.Compile(name)
	return d, err
}

// Check validates the tree. One mistake gives one problem, at its key.
func (d *Schema) Check(t *Tree) Problems {
	err := d.compiled.Validate(t.Root)
	var invalid *jsonschema.ValidationError
	if !errors.As(err, &invalid) {
		if err != nil {
			return Problems{t.Problem("", "%v", err)}
		}
		return nil
	}
	var out Problems
	for _, leaf := range leaves(invalid) {
		out = append(out, d.explain(t, leaf)...)
	}
	return out
}

func leaves(e *jsonschema.ValidationError) []*jsonschema.ValidationError {
	if len(e.Causes) == 0 {
		return []*jsonschema.ValidationError{e}
	}
	var out []*jsonschema.ValidationError
	for _, c := range e.Causes {
		out = append(out, leaves(c)...)
	}
	return out
}

func (d *Schema) explain(t *Tree, e *jsonschema.ValidationError) Problems {
	where, err := url.PathUnescape(e.InstanceLocation)
	if err != nil {
		where = e.InstanceLocation
	}
	_, fragment, _ := strings.Cut(e.AbsoluteKeywordLocation, "#")
	cut := strings.LastIndexByte(fragment, '/')
	keyword := fragment[cut+1:]
	rules, _ := lookup(d.raw, fragment[:cut]).(map[string]any)
	value := lookup(t.Root, where)
	name := lastName(where)
	switch keyword {
	case "additionalProperties":
		return unknownKeys(t, where, rules, value)
	case "required":
		return missingKeys(t, where, rules, value)
	case "type":
		return Problems{t.Problem(where, "%s: want %s, found %s", name, kindWords(rules["type"]), KindOf(value))}
	case "enum":
		return Problems{t.Problem(where, "%s: %s", name, notAmong(value, rules["enum"]))}
	case "minLength", "minItems", "minProperties":
		return Problems{t.Problem(where, "%s is empty", name)}
	case "pattern":
		return Problems{t.Problem(where, "%q: lower case letters, digits and _ are used here, in the form %v", patterned(value, e), rules["pattern"])}
	}
	return Problems{t.Problem(where, "%s: %s", name, e.Message)}
}

// notAmong words that a value is none of an enum's, which may be texts or
// numbers.
func notAmong(value, enum any) string {
	list, _ := enum.([]any)
	if len(list) == 1 {
		return fmt.Sprintf("%v is wanted here, found %v", list[0], value)
	}
	known := make([]string, len(list))
	for i, x := range list {
		known[i] = fmt.Sprint(x)
	}
	return fmt.Sprintf("%q is none of %s%s", fmt.Sprint(value), strings.Join(known, ", "), Guess(fmt.Sprint(value), known))
}

// lastName is the last key of a pointer; list items go by their list's key.
func lastName(pointer string) string {
	steps := strings.Split(pointer, "/")
	for i := len(steps) - 1; i > 0; i-- {
		if _, err := strconv.Atoi(steps[i]); err != nil {
			return unescape(steps[i])
		}
	}
	return "this"
}

// unescape undoes escape.
func unescape(step string) string {
	if !strings.Contains(step, "~") {
		return step
	}
	return strings.NewReplacer("~1", "/", "~0", "~").Replace(step)
}

// patterned is the text that a pattern refused: the value, or the key that
// propertyNames looked at.
func patterned(value any, e *jsonschema.ValidationError) string {
	if s, ok := value.(string); ok {
		return s
	}
	if m := regexp.MustCompile(`'([^']*)'$`).FindStringSubmatch(e.InstanceLocation); m != nil {
		return m[1]
	}
	return e.InstanceLocation[strings.LastIndexByte(e.InstanceLocation, '/')+1:]
}

// Guess offers the nearest known name, or nothing.
func Guess(name string, known []string) string {
	if k, ok := nearest.Name(name, known); ok {
		return fmt.Sprintf(": did you mean %q?", k)
	}
	return ""
}

func unknownKeys(t *Tree, where string, rules map[string]any, value any) Problems {
	known := Keys(rules["properties"])
	var out Problems
	for _, k := range Keys(value) {
		if !slices.Contains(known, k) {
			out.Add(t.Problem(where+"/"+Escape(k), "%q is no key here%s", k, nearest.Hint(k, known)))
		}
	}
	return out
}

// missingKeys leaves out a key that stands there misspelt: it is named as
// unknown, with what was meant.
func missingKeys(t *Tree, where string, rules map[string]any, value any) Problems {
	var out Problems
	have, known := Keys(value), Keys(rules["properties"])
	for _, k := range Texts(rules["required"]) {
		misspelt := func(h string) bool {
			near, ok := nearest.Name(h, known)
			return ok && near == k && !slices.Contains(known, h)
		}
		if !slices.Contains(have, k) && !slices.ContainsFunc(have, misspelt) {
			out.Add(t.Problem(where, "%q is missing", k))
		}
	}
	return out
}

func kindWords(v any) string {
	words := map[string]string{"string": "text", "number": "a number", "integer": "a whole number",
		"boolean": "true or false", "array": "a list", "object": "a mapping"}
	if s, ok := v.(string); ok {
		return words[s]
	}
	var out []string
	for _, s := range Texts(v) {
		out = append(out, words[s])
	}
	return strings.Join(out, " or ")
}

// lookup follows a JSON pointer; nil where it leads nowhere.
func lookup(v any, pointer string) any {
	for step := range strings.SplitSeq(strings.TrimPrefix(pointer, "/"), "/") {
		if step == "" {
			continue
		}
		if s, err := url.PathUnescape(step); err == nil {
			step = s
		}
		step = unescape(step)
		switch x := v.(type) {
		case map[string]any:
			v = x[step]
		case []any:
			i, err := strconv.Atoi(step)
			if err != nil || i < 0 || i >= len(x) {
				return nil
			}
			v = x[i]
		default:
			return nil
		}
	}
	return v
}

// Keys lists the keys of a decoded mapping, sorted.
func Keys(v any) []string {
	m, _ := v.(map[string]any)
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

// Texts picks the texts out of a decoded list.
func Texts(v any) []string {
	list, _ := v.([]any)
	var out []string
	for _, x := range list {
		if s, ok := x.(string); ok {
			out = append(out, s)
		}
	}
	return out
}
