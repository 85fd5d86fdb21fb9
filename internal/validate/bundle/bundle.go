// Package bundle joins the split schemas of a plan into the one file that
// editors complete and check by. It is draft-07, which editors' language
// servers know best: one `if`/`then` for each kind, no keywords of our own.
//
// A pattern stands for what the split schemas ask of a quantity or a day. It
// accepts all that they accept, and a little more: a pattern can't count days
// of a month or weigh a number. What it lets through is listed and tested
// beside this package; the validate package decides.
package bundle

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"strings"
)

// root is the folder of the split schemas, and suffix the end of their names.
const (
	root   = "plan"
	suffix = ".schema.json"
)

// object is a schema as decoded JSON.
type object = map[string]any

// joint says where objects with a `kind` stand in the whole and which folder
// holds their schemas.
type joint struct {
	folder string
	path   []string
}

var joints = [...]joint{
	{"gear", []string{"properties", "gear", "items"}},
	{"attachment", []string{"properties", "load", "properties", "attachments", "items"}},
	{"body", []string{"properties", "load", "properties", "bodies", "items"}},
	{"end", []string{"properties", "rigging", "items", "properties", "legs", "items", "properties", "end"}},
}

// Plan returns the bundled schema of a plan as an indented JSON text with a
// newline at its end; the same files give the same bytes.
func Plan(files fs.FS) ([]byte, error) {
	b := &builder{files: files, read: map[string]object{}, definitions: object{}}
	whole, err := b.file(root + "/plan" + suffix)
	if err != nil {
		return nil, err
	}
	plan, err := b.convert(whole, root+"/plan"+suffix)
	if err != nil {
		return nil, err
	}
	for _, j := range joints {
		if err := b.join(plan, j); err != nil {
			return nil, err
		}
	}
	plan["$schema"] = "http://json-schema.org/draft-07/schema#"
	plan["definitions"] = b.definitions
	return layOut(plan)
}

func layOut(v any) ([]byte, error) {
	var out bytes.Buffer
	e := json.NewEncoder(&out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	err := e.Encode(v)
	return out.Bytes(), err
}

type builder struct {
	files       fs.FS
	read        map[string]object
	definitions object
}

// file reads a schema file, each once.
func (b *builder) file(name string) (object, error) {
	if s, ok := b.read[name]; ok {
		return s, nil
	}
	text, err := fs.ReadFile(b.files, name)
	if err != nil {
		return nil, fmt.Errorf("bundle: %w", err)
	}
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	var s object
	if err := d.Decode(&s); err != nil {
		return nil, fmt.Errorf("bundle: %s: %w", name, err)
	}
	b.read[name] = s
	return s, nil
}

// join hangs the schema of every kind on the objects that have a `kind`.
func (b *builder) join(plan object, j joint) error {
	at := plan
	for _, step := range j.path {
		next, ok := at[step].(object)
		if !ok {
			return fmt.Errorf("bundle: the schema of a plan has no %s", strings.Join(j.path, "/"))
		}
		at = next
	}
	kind, _ := at["properties"].(object)["kind"].(object)
	names, _ := kind["enum"].([]any)
	var branches []any
	for _, name := range names {
		branch, err := b.branch(j.folder, fmt.Sprint(name))
		if err != nil {
			return err
		}
		branches = append(branches, branch)
	}
	if len(branches) == 0 {
		return fmt.Errorf("bundle: no kinds of %s", j.folder)
	}
	at["allOf"] = branches
	return nil
}

func (b *builder) branch(folder, kind string) (any, error) {
	name := path.Join(root, folder, kind+suffix)
	s, err := b.file(name)
	if err != nil {
		return nil, err
	}
	if b.definitions[folder+"_"+kind], err = b.convert(s, name); err != nil {
		return nil, err
	}
	return object{
		"if":   object{"properties": object{"kind": object{"const": kind}}, "required": []any{"kind"}},
		"then": object{"$ref": "#/definitions/" + folder + "_" + kind},
	}, nil
}
