package report

import (
	_ "embed"
	"fmt"
	"sort"
	"strings"
	"sync"
	"unicode"
)

//go:embed wide.txt
var wideSource string

// span is a range of characters, both ends included.
type span struct{ first, last rune }

var wideSpans = sync.OnceValue(func() []span {
	var list []span
	for line := range strings.Lines(wideSource) {
		var s span
		if n, _ := fmt.Sscanf(line, "%x %x", &s.first, &s.last); n == 2 {
			list = append(list, s)
		}
	}
	return list
})

// Width is the number of columns that a text takes on a terminal, as far as
// that can be told without knowing the terminal. The text is one that Visible
// has gone over.
func Width(text string) int {
	n := 0
	for _, r := range text {
		n += RuneWidth(r)
	}
	return n
}

// RuneWidth is the number of columns a character takes: none for a mark that
// stands on the letter before, two for a wide one (Unicode Standard Annex 11).
func RuneWidth(r rune) int {
	switch {
	case r < 0x300:
		return 1
	case unicode.In(r, unicode.Mn, unicode.Me) || inside(jamo, r):
		return 0
	case wide(r):
		return 2
	}
	return 1
}

// jamo are the vowels and finals that join a Korean syllable begun before.
const jamo = "\u1160\u11ff\ud7b0\ud7fb"

func inside(pairs string, r rune) bool {
	ends := []rune(pairs)
	for i := 0; i < len(ends); i += 2 {
		if ends[i] <= r && r <= ends[i+1] {
			return true
		}
	}
	return false
}

func wide(r rune) bool {
	spans := wideSpans()
	i := sort.Search(len(spans), func(i int) bool { return spans[i].last >= r })
	return i < len(spans) && spans[i].first <= r
}
