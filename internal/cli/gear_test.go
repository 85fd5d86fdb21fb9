package cli

import (
	"bytes"
	"encoding/json"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/record"
	"liftlint/schema"
)

// TestGearSchema compares the published schema with what the command prints.
// Set LIFTLINT_UPDATE=1 to write it anew.
func TestGearSchema(t *testing.T) {
	want, err := record.SchemaFile(record.Schema(reflect.TypeFor[gearPage](), "liftlint gear show", "What liftlint gear show prints as JSON: one item with its history."))
	if err != nil {
		t.Fatal(err)
	}
	const path = "../../schema/gear.schema.json"
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(path, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(path); err != nil || !bytes.Equal(got, want) {
		t.Errorf("%s is not what the types say: set LIFTLINT_UPDATE=1 to write it anew", path)
	}
}

func TestGearJSONMeetsItsSchema(t *testing.T) {
	text, err := schema.Files.ReadFile(published()["gear"])
	if err != nil {
		t.Fatal(err)
	}
	s, err := jsonschema.CompileString("gear.json", string(text))
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir("../../testdata/register")
	for _, args := range []string{"WR-0231 loft.gear.yaml", "BR-3 .", "SH-1 fittings.columns.yaml"} {
		var v any
		if err := json.Unmarshal([]byte(outputOf(t, append([]string{"gear", "show", "--format", "json"}, strings.Fields(args)...))), &v); err != nil {
			t.Fatal(err)
		}
		if err := s.Validate(v); err != nil {
			t.Errorf("%s: %v", args, err)
		}
	}
}
