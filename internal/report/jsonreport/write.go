package jsonreport

import (
	"fmt"
	"io"
	"reflect"

	"liftlint/internal/record"
	"liftlint/internal/report"
)

// Write writes the report of a run as one JSON document. It fails where the
// writer does, and where a plan has no result.
func Write(w io.Writer, run report.Run) error {
	r, err := build(run)
	if err != nil {
		return err
	}
	if err := report.WriteJSON(w, r); err != nil {
		return fmt.Errorf("json report: %w", err)
	}
	return nil
}

// Schema is the published JSON Schema of the report.
func Schema() map[string]any {
	return record.Schema(reflect.TypeFor[Report](), "liftlint report",
		"What one run of liftlint check found: every plan with its findings and with what was checked, and what could not be checked at all.")
}
