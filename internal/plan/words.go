package plan

import (
	"strings"

	"liftlint/internal/gear"
)

func kindWords(k gear.Kind) string { return strings.ReplaceAll(string(k), "_", " ") }

// anyOf lists kinds, as in "a sling, a shackle or a hook".
func anyOf(kinds []gear.Kind) string {
	var b strings.Builder
	for i, k := range kinds {
		switch {
		case i == 0:
		case i == len(kinds)-1:
			b.WriteString(" or ")
		default:
			b.WriteString(", ")
		}
		b.WriteString(article(kindWords(k)))
	}
	return b.String()
}

func article(words string) string {
	if strings.ContainsRune("aeiou", rune(words[0])) {
		return "an " + words
	}
	return "a " + words
}
