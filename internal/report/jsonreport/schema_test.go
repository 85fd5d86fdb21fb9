package jsonreport

import (
	"bytes"
	"os"
	"testing"

	"liftlint/internal/record"
)

const published = "../../../schema/report.schema.json"

// TestPublishedSchema compares the published schema with the types. Set
// LIFTLINT_UPDATE=1 to write it anew.
func TestPublishedSchema(t *testing.T) {
	want, err := record.SchemaFile(Schema())
	if err != nil {
		t.Fatal(err)
	}
	if os.Getenv("LIFTLINT_UPDATE") == "1" {
		if err := os.WriteFile(published, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(published)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("%s is not what the types say: set LIFTLINT_UPDATE=1 to write it anew", published)
	}
}
