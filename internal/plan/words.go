package plan

import (
	"slices"
	"strings"

	"liftlint/internal/gear"
)

func kindWords(k gear.Kind) string { return strings.ReplaceAll(string(k), "_", " ") }

// anyOf lists kinds, as in "a sling, a shackle or a hook". Where every kind of
// sling will do, they are one.
func anyOf(kinds []gear.Kind) string {
	var names []string
	every := !slices.ContainsFunc(gear.SlingKinds(), func(k gear.Kind) bool { return !slices.Contains(kinds, k) })
	if every {
		names = append(names, "a sling")
	}
	for _, k := range kinds {
		if !every || !slices.Contains(gear.SlingKinds(), k) {
			names = append(names, article(kindWords(k)))
		}
	}
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " or " + names[last]
}

func article(words string) string {
	if strings.ContainsRune("aeiou", rune(words[0])) {
		return "an " + words
	}
	return "a " + words
}

// OnRegister is the kind of gear that a register tells of. Package onfile puts
// what it says in its place before a plan is decoded.
const OnRegister = "register"
