package bundle

import (
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"
)

// The folders of a register's schemas.
const (
	registerRoot = "register"
	foundRoot    = registerRoot + "/found"
)

// Register returns the bundled schema of a gear register, laid out as that of a
// plan. An item has what a plan says of its kind of gear and what a register says
// besides.
func Register(files fs.FS) ([]byte, error) {
	b := &builder{files: files, read: map[string]object{}, definitions: object{}}
	whole, err := b.converted(registerRoot + "/register" + suffix)
	if err != nil {
		return nil, err
	}
	item, err := b.converted(registerRoot + "/item" + suffix)
	if err != nil {
		return nil, err
	}
	kinds, err := kindsFound(files)
	if err != nil {
		return nil, err
	}
	properties, _ := item["properties"].(object)
	var branches []any
	for _, kind := range kinds {
		if b.definitions[kind], err = b.itemOf(kind, properties); err != nil {
			return nil, err
		}
		branches = append(branches, object{
			"if":   object{"properties": object{"kind": object{"const": kind}}, "required": []any{"kind"}},
			"then": object{"$ref": "#/definitions/" + kind},
		})
	}
	delete(item, "additionalProperties") // each kind has keys of its own
	properties["kind"].(object)["enum"] = kinds
	item["allOf"] = branches
	whole["properties"].(object)["items"].(object)["items"] = item
	whole["$schema"] = "http://json-schema.org/draft-07/schema#"
	whole["definitions"] = b.definitions
	return layOut(whole)
}

func (b *builder) converted(name string) (object, error) {
	s, err := b.file(name)
	if err != nil {
		return nil, err
	}
	return b.convert(s, name)
}

// kindsFound lists the kinds of gear that a register can have: those that
// inspections look for signs on.
func kindsFound(files fs.FS) ([]string, error) {
	entries, err := fs.ReadDir(files, foundRoot)
	if err != nil {
		return nil, fmt.Errorf("bundle: %w", err)
	}
	var kinds []string
	for _, e := range entries {
		kinds = append(kinds, strings.TrimSuffix(e.Name(), suffix))
	}
	slices.Sort(kinds)
	return kinds, nil
}

// itemOf is the schema of an item of one kind. It lists the keys that all items
// have without a schema: they have theirs already.
func (b *builder) itemOf(kind string, all object) (object, error) {
	gear, err := b.converted(root + "/gear/" + kind + suffix)
	if err != nil {
		return nil, err
	}
	found, err := b.converted(foundRoot + "/" + kind + suffix)
	if err != nil {
		return nil, err
	}
	properties := object{}
	for key := range all {
		properties[key] = object{}
	}
	own, _ := gear["properties"].(object)
	maps.Copy(properties, own)
	delete(properties, "id") // an item goes by its number
	delete(properties, "inspection")
	properties["inspections"] = object{"items": object{"properties": object{"found": found}}}
	required, _ := gear["required"].([]any)
	gear["required"] = slices.DeleteFunc(slices.Clone(required), func(key any) bool { return key == "id" })
	gear["properties"] = properties
	return gear, nil
}
