package report

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Visible spells out every character that would act on a terminal rather than
// show, or that can't be seen: controls, escape sequences, marks that turn the
// direction of writing, blanks other than a space, invisible letters, bytes
// that are no UTF-8. It also breaks up marks by which build services take
// commands from a log. What it gives back, it leaves as it is.
func Visible(text string) string {
	if plain(text) {
		return text
	}
	var b strings.Builder
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case r == utf8.RuneError && size == 1:
			fmt.Fprintf(&b, `\x%02x`, text[i])
		case Hidden(r) || LogCommand(text[i:]):
			b.WriteString(Escape(r))
		default:
			b.WriteRune(r)
		}
		i += size
	}
	return b.String()
}

func plain(text string) bool {
	for i := range len(text) {
		if text[i] < ' ' || text[i] > '~' || text[i] == '#' {
			return false
		}
	}
	return true
}

// Hidden reports whether a character does not simply show.
func Hidden(r rune) bool {
	return !unicode.IsPrint(r) || unicode.In(r, unicode.Other_Default_Ignorable_Code_Point, unicode.Variation_Selector)
}

// LogCommand reports whether a text begins with a mark that a build service
// obeys anywhere in a line.
func LogCommand(text string) bool {
	return strings.HasPrefix(text, "##[") || strings.HasPrefix(text, "##vso[")
}

// Escape spells a character out by its number.
func Escape(r rune) string {
	if r > 0xffff {
		return fmt.Sprintf(`\U%08x`, r)
	}
	return fmt.Sprintf(`\u%04x`, r)
}
