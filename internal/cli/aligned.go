package cli

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// writeAligned writes rows of cells in columns, two spaces apart.
func writeAligned(w io.Writer, rows [][]string, indent string) error {
	var width []int
	for _, row := range rows {
		for i, c := range row {
			if i == len(width) {
				width = append(width, 0)
			}
			width[i] = max(width[i], utf8.RuneCountInString(c))
		}
	}
	for _, row := range rows {
		var b strings.Builder
		b.WriteString(indent)
		for i, c := range row {
			b.WriteString(c)
			b.WriteString(strings.Repeat(" ", width[i]-utf8.RuneCountInString(c)+2))
		}
		if _, err := fmt.Fprintln(w, strings.TrimRight(b.String(), " ")); err != nil {
			return err
		}
	}
	return nil
}
