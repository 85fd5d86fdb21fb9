package cli

import (
	"bytes"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"encoding/json"

	"liftlint/internal/compare"
	"liftlint/internal/record"
	"liftlint/internal/rulepage"
	"liftlint/schema"
)

// TestPublishedSchemas compares the schemas of the lists and pages with their
// types. Set LIFTLINT_UPDATE=1 to write them anew.
func TestPublishedSchemas(t *testing.T) {
	for file, of := range map[string]map[string]any{
		"rules.schema.json":   record.Schema(reflect.TypeFor[ruleList](), "liftlint rules", "What liftlint rules prints as JSON: every rule and built-in check."),
		"compare.schema.json": compare.Schema(),
		"page.schema.json":    record.Schema(reflect.TypeFor[rulepage.Page](), "liftlint explain", "What liftlint explain prints as JSON: one rule or built-in check."),
	} {
		path := "../../schema/" + file
		want, err := record.SchemaFile(of)
		if err != nil {
			t.Fatal(err)
		}
		if os.Getenv("LIFTLINT_UPDATE") == "1" {
			if err := os.WriteFile(path, want, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if got, err := os.ReadFile(path); err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s is not what the types say: set LIFTLINT_UPDATE=1 to write it anew", path)
		}
	}
}

// TestJSONMeetsItsSchema runs each command that prints JSON.
func TestJSONMeetsItsSchema(t *testing.T) {
	t.Chdir("../..")
	for _, c := range []struct{ schema, args string }{
		{"report", "check --format json examples"},
		{"facts", "facts --format json examples/pump-skid.lift.yaml"},
		{"rules", "rules --format json --profile eu"},
		{"page", "explain --format json angle/leg_too_flat"},
		{"page", "explain --format json tag/missing_or_incomplete"},
		{"page", "explain --format json yaml/alias"},
		{"compare", "compare --format json examples/filter-vessel-reviewed.lift.yaml examples/filter-vessel.lift.yaml"},
		{"compare", "compare --format json internal/compare internal/cli"},
	} {
		text, err := schema.Files.ReadFile(published()[c.schema])
		if err != nil {
			t.Fatal(err)
		}
		s, err := jsonschema.CompileString(c.schema+".json", string(text))
		if err != nil {
			t.Fatal(err)
		}
		var v any
		if err := json.Unmarshal([]byte(outputOf(t, strings.Fields(c.args))), &v); err != nil {
			t.Fatal(err)
		}
		if err := s.Validate(v); err != nil {
			t.Errorf("liftlint %s: %v", c.args, err)
		}
	}
}
