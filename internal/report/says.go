package report

import (
	"regexp"
	"slices"
	"strings"
)

// Says reports whether a sentence has all the figures, each in a place of its
// own: 30 deg is not in 130 deg, and 30 deg against 30 deg takes two.
func Says(sentence string, figures []string) bool {
	for _, text := range slices.SortedFunc(slices.Values(figures), longestFirst) {
		at := standsAt(sentence, text)
		if at < 0 {
			return false
		}
		sentence = sentence[:at] + "\x00" + sentence[at+len(text):]
	}
	return true
}

func longestFirst(a, b string) int { return len(b) - len(a) }

// standsAt finds a figure that is no part of a longer one; -1 where there is none.
func standsAt(sentence, text string) int {
	for from := 0; text != ""; {
		at := strings.Index(sentence[from:], text)
		if at < 0 {
			break
		}
		at += from
		before, after := sentence[:at], sentence[at+len(text):]
		if !endsInFigure.MatchString(before) && !beginsInFigure.MatchString(after) {
			return at
		}
		from = at + 1
	}
	return -1
}

// What makes a figure part of a longer one, ahead of it and behind it.
var (
	endsInFigure   = regexp.MustCompile(`[-\pL\pN./]$`)
	beginsInFigure = regexp.MustCompile(`^(?:[\pL\pN]|[-./]\pN)`)
)
