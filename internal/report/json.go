package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"unicode/utf16"
)

// WriteJSON writes a value as one indented document in which no character acts
// on a terminal, should it be looked at there.
func WriteJSON(w io.Writer, v any) error {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(v); err != nil {
		return err
	}
	_, err := w.Write(shown(b.Bytes()))
	return err
}

// shown escapes what would act on a terminal. Such characters stand only within
// strings, so the meaning is the same.
func shown(text []byte) []byte {
	var b bytes.Buffer
	for _, r := range string(text) {
		switch {
		case r == '\n' || !Hidden(r):
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
