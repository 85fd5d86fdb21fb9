package report

import (
	"fmt"
	"strings"
	"unicode"
)

// Visible spells out characters that would act on a terminal or hide what a
// line says: controls, escapes, overrides of the direction of writing. Line
// ends too, so that a text stays on its line.
func Visible(text string) string {
	if strings.IndexFunc(text, acts) < 0 {
		return text
	}
	var b strings.Builder
	for _, r := range text {
		if acts(r) {
			fmt.Fprintf(&b, `\u%04x`, r)
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

// acts reports whether a character does something rather than show something.
// Invalid bytes arrive as the replacement character, which shows.
func acts(r rune) bool {
	return unicode.IsControl(r) || unicode.Is(unicode.Cf, r) || r == '\u2028' || r == '\u2029'
}
