package triage

import (
	"bytes"
	"encoding/json"
	"os"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"liftlint/internal/record"
)

const schemaFile = "../../schema/baseline.schema.json"

// TestPublishedSchema compares the schema with the types. Set LIFTLINT_UPDATE=1 to
// write it anew.
func TestPublishedSchema(t *testing.T) {
	want, err := record.SchemaFile(BaselineSchema())
	if err != nil {
		t.Fatal(err)
	}
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(schemaFile, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(schemaFile); err != nil || !bytes.Equal(got, want) {
		t.Errorf("%s is not what the types say: set LIFTLINT_UPDATE=1 to write it anew", schemaFile)
	}
}

// meetsSchema validates a written baseline.
func meetsSchema(t *testing.T, text []byte) {
	t.Helper()
	s, err := jsonschema.Compile(schemaFile)
	if err != nil {
		t.Fatal(err)
	}
	var v any
	if err := json.Unmarshal(text, &v); err != nil {
		t.Fatalf("%v in\n%s", err, text)
	}
	if err := s.Validate(v); err != nil {
		t.Errorf("%v in\n%s", err, text)
	}
}
