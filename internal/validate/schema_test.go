package validate

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"liftlint/schema"
)

type object = map[string]any

// planFiles decodes every schema of a plan by its path.
func planFiles(t *testing.T) map[string]object {
	t.Helper()
	files := map[string]object{}
	err := fs.WalkDir(schema.Files, "plan", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := schema.Files.ReadFile(p)
		if err != nil {
			return err
		}
		var s object
		files[p] = object{}
		if err := json.Unmarshal(text, &s); err != nil {
			return fmt.Errorf("%s: %w", p, err)
		}
		files[p] = s
		return nil
	})
	if err != nil || len(files) < 7 {
		t.Fatal(len(files), err)
	}
	return files
}

// walk visits a schema and all below it.
func walk(at string, s object, visit func(at string, s object)) {
	visit(at, s)
	for _, group := range []string{"properties", "$defs"} {
		below, _ := s[group].(object)
		for name, p := range below {
			walk(at+"/"+group+"/"+name, p.(object), visit)
		}
	}
	if items, ok := s["items"].(object); ok {
		walk(at+"/items", items, visit)
	}
}

// words looks a keyword up in a schema and in what it refers to.
func words(files map[string]object, file string, s object, keyword string) string {
	if text, ok := s[keyword].(string); ok {
		return text
	}
	ref, ok := s["$ref"].(string)
	if !ok {
		return ""
	}
	name, pointer, _ := strings.Cut(ref, "#/$defs/")
	if name != "" {
		file = path.Join(path.Dir(file), name)
	}
	return words(files, file, files[file]["$defs"].(object)[pointer].(object), keyword)
}

func TestEveryPropertyHasWords(t *testing.T) {
	files := planFiles(t)
	for file, root := range files {
		walk(file, root, func(at string, s object) {
			if strings.Contains(at, "/$defs/") && !strings.Contains(at, "/properties/") {
				return // its users may say more
			}
			if words(files, file, s, "title")+words(files, file, s, "description") == "" && !strings.HasSuffix(at, "/items") {
				t.Errorf("%s has neither title nor description", at)
			}
		})
	}
}

// Descriptions hold a sentence for each value: "weighed: on a scale."
func TestEveryValueIsDescribed(t *testing.T) {
	for file, root := range planFiles(t) {
		walk(file, root, func(at string, s object) {
			values, _ := s["enum"].([]any)
			description, _ := s["description"].(string)
			for _, v := range values {
				if ok, err := regexp.MatchString(`(^|\. )`+regexp.QuoteMeta(fmt.Sprint(v))+`: \w`, description); !ok || err != nil {
					t.Errorf("%s does not say what %v is", at, v)
				}
			}
		})
	}
}

// Whatever the schemas use has to be one of the keywords that this package has
// words for and the bundle can carry. So a misspelt keyword, which the library
// passes over, fails here; and so do oneOf, whose every branch complains, and
// format, which is not asserted.
func TestKeywordsAreKnown(t *testing.T) {
	known := strings.Fields(`$schema $ref $defs title description examples type additionalProperties required properties
		items const enum pattern minLength maxLength minItems maxItems minimum maximum exclusiveMinimum exclusiveMaximum
		quantity sign calendar_day`)
	for file, root := range planFiles(t) {
		walk(file, root, func(at string, s object) {
			for k := range s {
				if !slices.Contains(known, k) {
					t.Errorf("%s uses %s", at, k)
				}
			}
			if s["pattern"] != nil && s["pattern"] != unframed && !strings.HasSuffix(at, "/$defs/id") && !strings.HasSuffix(at, "/$defs/place") {
				t.Errorf("%s has a pattern; only ids, points and texts without blanks at their ends have words for theirs", at)
			}
			if _, isList := s["type"].([]any); isList {
				t.Errorf("%s takes values of several types", at)
			}
		})
	}
}

// Only a list of dispatched objects may leave its mappings open, and every
// kind's schema is at least as strict as they are: but for gear on file, whose
// fields are those of the item's own kind.
func TestObjectsAreClosed(t *testing.T) {
	files := planFiles(t)
	open := 0
	for file, root := range files {
		walk(file, root, func(at string, s object) {
			if s["type"] == "object" && s["additionalProperties"] != false {
				open++
			}
		})
		if strings.Count(file, "/") == 2 {
			required, _ := root["required"].([]any)
			kind := root["properties"].(object)["kind"].(object)["const"]
			if !slices.Contains(required, any("kind")) || kind != strings.TrimSuffix(path.Base(file), suffix) {
				t.Errorf("%s: required %v, kind %v", file, required, kind)
			}
		}
	}
	if open != len(dispatches)+1 {
		t.Errorf("%d mappings take any key, and %d places are dispatched, besides gear on file", open, len(dispatches))
	}
}

func TestKindsAreThoseOfTheFiles(t *testing.T) {
	v := mustNew(t)
	for _, d := range dispatches {
		sch, err := v.schemas.get(planPath)
		if err != nil {
			t.Fatal(err)
		}
		chain := withRefs(sch)
		for _, step := range append(slices.Clone(d.path), "kind") {
			chain = below(chain, step)
		}
		var names []string
		for _, k := range chain[0].Enum {
			names = append(names, k.(string))
			if _, err := v.schemas.get(kindPath(d.folder, k.(string))); err != nil {
				t.Error(err)
			}
		}
		slices.Sort(names)
		if !slices.Equal(names, v.kinds[d.folder]) {
			t.Errorf("%s: the plan's schema knows %v, the folder %v", d.folder, names, v.kinds[d.folder])
		}
	}
}
