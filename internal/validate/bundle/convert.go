package bundle

import (
	"fmt"
	"path"
	"strings"
)

// maxDepth is more than schemas nest; beyond it, one refers to itself.
const maxDepth = 40

// convert copies a schema of a file into draft-07: references are resolved,
// our own keywords become patterns, and meanings of values are set apart.
func (b *builder) convert(s object, file string) (object, error) { return b.convertAt(s, file, 0) }

func (b *builder) convertAt(s object, file string, depth int) (object, error) {
	if depth > maxDepth {
		return nil, fmt.Errorf("bundle: %s: schemas nest too deep", file)
	}
	out := object{}
	if ref, ok := s["$ref"].(string); ok {
		target, targetFile, err := b.resolve(ref, file)
		if err != nil {
			return nil, err
		}
		// Written in place: draft-07 passes over what stands beside a
		// reference, which here are the title and description of hover.
		if out, err = b.convertAt(target, targetFile, depth+1); err != nil {
			return nil, err
		}
	}
	units, _ := out["description"].(string)
	for key, v := range s {
		if err := b.keyword(out, key, v, file, depth); err != nil {
			return nil, err
		}
	}
	if err := addPattern(out, s); err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	if own, ok := s["description"].(string); ok && out["patternErrorMessage"] != nil && own != units && out["pattern"] != day {
		out["description"] = strings.TrimSpace(own + " " + units) // the units as well
	}
	addMeanings(out)
	return out, nil
}

// keyword copies one keyword of a schema.
func (b *builder) keyword(out object, key string, v any, file string, depth int) error {
	switch key {
	case "$schema", "$defs", "$ref", "quantity", "sign", "calendar_day":
	case "properties":
		properties := object{}
		for name, p := range v.(object) {
			converted, err := b.convertAt(p.(object), file, depth+1)
			if err != nil {
				return err
			}
			properties[name] = converted
		}
		out[key] = properties
	case "items":
		items, err := b.convertAt(v.(object), file, depth+1)
		if err != nil {
			return err
		}
		out[key] = items
	case "title", "description", "examples", "type", "additionalProperties", "required", "const", "enum", "pattern",
		"minLength", "maxLength", "minItems", "maxItems", "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum":
		out[key] = v
	default:
		return fmt.Errorf("bundle: %s: keyword %s has no counterpart", file, key)
	}
	return nil
}

// resolve finds what a reference of a file stands for.
func (b *builder) resolve(ref, file string) (object, string, error) {
	name, pointer, _ := strings.Cut(ref, "#")
	if name == "" {
		name = file
	} else {
		name = path.Join(path.Dir(file), name)
	}
	s, err := b.file(name)
	if err != nil {
		return nil, "", err
	}
	for _, step := range strings.Split(strings.TrimPrefix(pointer, "/"), "/") {
		next, ok := s[step].(object)
		if !ok {
			return nil, "", fmt.Errorf("bundle: %s: %s leads nowhere", file, ref)
		}
		s = next
	}
	return s, name, nil
}
