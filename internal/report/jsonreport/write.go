package jsonreport

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"unicode/utf16"

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
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(r); err != nil {
		return fmt.Errorf("json report: %w", err)
	}
	_, err = w.Write(shown(b.Bytes()))
	return err
}

// shown escapes what would act on a terminal, should the report be looked at
// there. Such characters stand only within strings, so the meaning is the same.
func shown(text []byte) []byte {
	var b bytes.Buffer
	for _, r := range string(text) {
		switch {
		case r == '\n' || !report.Hidden(r):
			b.WriteRune(r)
		case r > 0xffff:
			high, low := utf16.EncodeRune(r)
			fmt.Fprintf(&b, `\u%04x\u%04x`, high, low)
		default:
			fmt.Fprintf(&b, `\u%04x`, r)
		}
	}
	return b.Bytes()
}

// Schema is the published JSON Schema of the report.
func Schema() map[string]any {
	return record.Schema(reflect.TypeFor[Report](), "liftlint report",
		"What one run of liftlint check found: every plan with its findings and with what was checked, and what could not be checked at all.")
}
