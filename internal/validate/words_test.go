package validate

import (
	"io/fs"
	"regexp"
	"slices"
	"testing"

	"liftlint/schema"
)

// TestOtherWords: what the trade also says leads to the key, where there is one.
func TestOtherWords(t *testing.T) {
	if k, ok := nearKey("Weight", []string{"mass", "size"}); !ok || k != "mass" {
		t.Errorf("weight leads to %q", k)
	}
	if k, ok := nearKey("wll", []string{"rated_load", "id"}); !ok || k != "rated_load" {
		t.Errorf("wll leads to %q", k)
	}
	if k, ok := nearKey("cog", []string{"tag", "x"}); ok && k == "center_of_gravity" {
		t.Errorf("cog leads to %q where there is no such key", k)
	}
	all := allKeys(t)
	for word, key := range otherWords() {
		if !slices.Contains(all, key) {
			t.Errorf("%s leads to %s, which no schema has", word, key)
		}
	}
	for file, root := range planFiles(t) {
		walk(file, root, func(at string, s object) {
			properties, _ := s["properties"].(object)
			for word, key := range otherWords() {
				if properties[word] != nil && properties[key] != nil {
					t.Errorf("%s has %s, which is also taken for %s", at, word, key)
				}
			}
		})
	}
}

// allKeys lists the names that stand before an object in any plan schema: all
// properties, and some words of JSON Schema besides.
func allKeys(t *testing.T) []string {
	t.Helper()
	var keys []string
	name := regexp.MustCompile(`"(\w+)": \{`)
	err := fs.WalkDir(schema.Files, "plan", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := fs.ReadFile(schema.Files, path)
		for _, m := range name.FindAllSubmatch(text, -1) {
			keys = append(keys, string(m[1]))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return keys
}
