package plan

import (
	"strings"

	"liftlint/internal/gear"
)

func kindWords(k gear.Kind) string { return strings.ReplaceAll(string(k), "_", " ") }

func anyOf(kinds []gear.Kind) string {
	words := make([]string, len(kinds))
	for i, k := range kinds {
		words[i] = "a " + kindWords(k)
	}
	return strings.Join(words, " or ")
}
