package jsonreport

import (
	"bytes"
	"os"
	"testing"

	"liftlint/internal/record"
)

// TestPublishedSchema compares the published schema with the types. Set
// LIFTLINT_UPDATE=1 to write it anew.
func TestPublishedSchema(t *testing.T) {
	const file = "../../../schema/report.schema.json"
	want, err := record.SchemaFile(Schema())
	if err != nil {
		t.Fatal(err)
	}
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(file, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("%s is not what the types say: set LIFTLINT_UPDATE=1 to write it anew", file)
	}
}
