package register

import (
	"encoding/json"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing"

	"liftlint/internal/validate"
	"liftlint/schema"
)

// TestEveryKindHasSigns: no kind of gear can be inspected without saying for
// what.
func TestEveryKindHasSigns(t *testing.T) {
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range v.GearKinds() {
		f, ok := v.ItemField(kind, strings.Split("inspections.0.found.tag_legible", "."))
		if !ok || f.Type != "boolean" {
			t.Errorf("%s has no signs to look for: add schema/register/found/%s.schema.json", kind, kind)
		}
	}
}

// TestEverySignIsRead: each sign of the schemas ends up in Found, with its
// value.
func TestEverySignIsRead(t *testing.T) {
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	files, err := fs.Glob(schema.Files, "register/found/*.json")
	if err != nil || len(files) < 13 {
		t.Fatal(files, err)
	}
	signs := 0
	for _, file := range files {
		kind := strings.TrimSuffix(path.Base(file), ".schema.json")
		if !slices.Contains(v.GearKinds(), kind) {
			continue
		}
		text, err := schema.Files.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var s struct{ Properties map[string]any }
		if err := json.Unmarshal(text, &s); err != nil {
			t.Fatal(err)
		}
		for sign := range s.Properties {
			f, _ := v.ItemField(kind, []string{"inspections", "0", "found", sign})
			signs++
			if found := readSign(t, kind, sign, valueFor(t, f)); *found == (Found{}) {
				t.Errorf("%s of %s is not read", sign, kind)
			}
		}
	}
	if signs < 60 {
		t.Error(signs)
	}
}

func valueFor(t *testing.T, f validate.Field) string {
	switch {
	case f.Quantity != 0:
		return f.Quantity.Example()
	case len(f.Words) > 0:
		return f.Words[0]
	case f.Type == "boolean":
		return "true"
	case f.Type == "integer":
		return "3"
	}
	t.Fatalf("%+v", f)
	return ""
}

func readSign(t *testing.T, kind, sign, value string) *Found {
	t.Helper()
	needed := map[string]string{"bridle": "master: M1, groups: [{legs: [W1]}], "}[kind]
	for _, beam := range []string{"spreader_beam", "lifting_beam", "rocker_plate", "lifting_device"} {
		if kind == beam {
			needed = "points: [{id: a, x: 0 m, y: 0 m, z: 0 m}, {id: b, x: 1 m, y: 0 m, z: 0 m}], "
		}
	}
	r, err := mustReader(t).ReadYAML("a", []byte("liftlint: 1\nregister: {title: a}\nitems: [{number: B1, kind: "+kind+", "+needed+
		"inspections: [{date: 2026-01-01, kind: periodic, found: {"+sign+": "+value+"}}]}, {number: M1, kind: master_link}, {number: W1, kind: wire_rope_sling}]\n"))
	if err != nil {
		t.Fatal(err)
	}
	return r.Items[0].Inspections[0].Found
}
