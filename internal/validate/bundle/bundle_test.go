package bundle

import (
	"bytes"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"liftlint/schema"
)

// published is where the bundle stands for editors.
const published = "../../../schema/plan.bundled.schema.json"

func mustBundle(t testing.TB) []byte {
	t.Helper()
	b, err := Plan(schema.Files)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func TestPublished(t *testing.T) {
	got := mustBundle(t)
	if !bytes.Equal(got, mustBundle(t)) {
		t.Error("two runs differ")
	}
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(published, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(published)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Error("the bundle is older than the schemas; run this test with LIFTLINT_UPDATE=1")
	}
}

func TestMeaning(t *testing.T) {
	const d = "How. weighed: on a scale, e.g. a cell. to: straight."
	for value, want := range map[string]string{"weighed": "on a scale, e.g.", "to": "straight.", "by": ""} {
		if got := meaning(d, value); got != want {
			t.Errorf("%s: %q, want %q", value, got, want)
		}
	}
}

// What the bundle can't express must not get lost on the way.
func TestRefusesWhatItCannotExpress(t *testing.T) {
	kind := `{"type": "object", "properties": {"kind": {"const": "k"}}}`
	for name, plan := range map[string]string{
		"has no counterpart":    `{"properties": {"gear": {"uniqueItems": true}}}`,
		"leads nowhere":         `{"properties": {"gear": {"$ref": "#/$defs/none"}}}`,
		"too deep":              `{"properties": {"gear": {"$ref": "#/properties/gear"}}}`,
		"is not a kind":         `{"properties": {"gear": {"quantity": "size", "sign": "any"}}}`,
		"is not a sign":         `{"properties": {"gear": {"quantity": "mass"}}}`,
		"sign of a temperature": `{"properties": {"gear": {"quantity": "temperature", "sign": "positive"}}}`,
		"has no properties":     `{"properties": {}}`,
		"no kinds of gear":      `{"properties": {"gear": {"items": {"properties": {"kind": {"enum": []}}}}}}`,
		"file does not exist":   `{"properties": {"gear": {"items": {"properties": {"kind": {"enum": ["none"]}}}}}}`,
		"unexpected EOF":        `{`,
		"no properties/load/pr": `{"properties": {"gear": {"items": {"properties": {"kind": {"enum": ["k"]}}}}}}`,
	} {
		files := fstest.MapFS{
			"plan/plan.schema.json":   {Data: []byte(plan)},
			"plan/gear/k.schema.json": {Data: []byte(kind)},
		}
		b, err := Plan(files)
		if b != nil || err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%s: got %q, %v", name, b, err)
		}
	}
}
