package cli

import (
	"encoding/json"
	"io"
)

// writeJSON writes one value as an indented document.
func writeJSON(w io.Writer, v any) error {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(v); err != nil {
		return exit{Unchecked, err}
	}
	return nil
}
