package bundle

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
	"liftlint/schema"
)

// publishedRegister is where the bundle stands for editors.
const publishedRegister = "../../../schema/register.bundled.schema.json"

func registerBundle(t testing.TB) []byte {
	t.Helper()
	b, err := Register(schema.Files)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func TestPublishedRegister(t *testing.T) {
	got := registerBundle(t)
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(publishedRegister, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if want, err := os.ReadFile(publishedRegister); err != nil || !bytes.Equal(got, want) {
		t.Errorf("the bundle is older than the schemas; run this test with LIFTLINT_UPDATE=1 (%v)", err)
	}
}

func registerEditor(t testing.TB) *jsonschema.Schema {
	t.Helper()
	s, err := jsonschema.CompileString("embedded:///register.json", string(registerBundle(t)))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// TestRegisterBundleAgrees: registers that are read meet the bundle, and what the
// split schemas refuse it refuses too.
func TestRegisterBundleAgrees(t *testing.T) {
	editor := registerEditor(t)
	var paths []string
	for _, pattern := range []string{"../../../testdata/register/*.gear.yaml", "../../../policies/bases/*.gear.yaml", "../../../examples/register/*.gear.yaml"} {
		found, err := filepath.Glob(pattern)
		if err != nil || len(found) == 0 {
			t.Fatal(pattern, err)
		}
		paths = append(paths, found...)
	}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if err := editor.Validate(registerValue(t, string(text))); err != nil {
			t.Errorf("%s: %v", path, err)
		}
	}
}

func registerValue(t testing.TB, text string) any {
	t.Helper()
	doc, faults := yamldoc.ReadWithin(yamldoc.RegisterLimits(), "a.gear.yaml", []byte(text))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return doc.Root().Value()
}

func TestRegisterBundleRefuses(t *testing.T) {
	editor := registerEditor(t)
	const good = "liftlint: 1\nregister: {title: a}\nitems:\n  - {number: A-1, kind: shackle, rated_load: 2 t, inspections: [{date: 2026-05-04, kind: periodic, found: {wear: 1 %}}]}\n"
	if err := editor.Validate(registerValue(t, good)); err != nil {
		t.Fatal(err)
	}
	for from, to := range map[string]string{
		"kind: shackle":    "kind: shakle",
		"rated_load: 2 t":  "rated_load: 2",
		"rated_load:":      "rated_lod:",
		"number: A-1":      "id: A-1",
		"number: A-1, ":    "",
		"wear: 1 %":        "cut: true",
		"kind: periodic":   "kind: yearly",
		"date: 2026-05-04": "day: 2026-05-04",
		"inspections: [":   "inspection: [",
	} {
		changed := strings.Replace(good, from, to, 1)
		if changed == good {
			t.Fatal(from)
		}
		if editor.Validate(registerValue(t, changed)) == nil {
			t.Errorf("%s is let through", to)
		}
	}
}

// TestRegisterBundleHasEveryKind that the validator knows.
func TestRegisterBundleHasEveryKind(t *testing.T) {
	kinds, err := kindsFound(schema.Files)
	if err != nil {
		t.Fatal(err)
	}
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range v.GearKinds() {
		if !strings.Contains(" "+strings.Join(kinds, " ")+" ", " "+kind+" ") {
			t.Errorf("%s is not in the bundle", kind)
		}
	}
}
