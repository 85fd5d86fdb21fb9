package register

import (
	"strconv"
	"strings"
	"unicode"
)

// longest is how much of a text a message shows, in characters.
const longest = 40

// quote shows a text of a file in backticks, on one line, shortened.
func quote(text string) string {
	r := []rune(strings.ToValidUTF8(text, "?"))
	cut := ""
	if len(r) > longest {
		r, cut = r[:longest], "..."
	}
	var b strings.Builder
	for _, c := range r {
		if c == ' ' || unicode.IsGraphic(c) && c != '`' {
			b.WriteRune(c)
			continue
		}
		esc := strconv.QuoteRuneToASCII(c)
		b.WriteString(strings.ReplaceAll(esc[1:len(esc)-1], "`", "'"))
	}
	return "`" + b.String() + cut + "`"
}

func quoteAll(names []string) string {
	all := make([]string, len(names))
	for i, n := range names {
		all[i] = quote(n)
	}
	return strings.Join(all, ", ")
}
