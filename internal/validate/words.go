package validate

import (
	"strconv"
	"strings"
	"unicode"
)

// longest is how much of a text a message shows, in characters.
const longest = 40

// quote shows a text of the plan in backticks, on one line, shortened.
func quote(text string) string {
	if text == "" {
		return "`\"\"`"
	}
	r := []rune(text)
	if len(r) > longest {
		return "`" + clean(string(r[:longest])) + "...`"
	}
	return "`" + clean(text) + "`"
}

// clean writes what cannot be seen as an escape, so that a message stays one
// line and no byte of a plan steers a terminal.
func clean(text string) string {
	var b strings.Builder
	for _, r := range text {
		if r == ' ' || unicode.IsGraphic(r) && r != '`' && r != unicode.ReplacementChar {
			b.WriteRune(r)
			continue
		}
		esc := strconv.QuoteRuneToASCII(r)
		b.WriteString(strings.ReplaceAll(esc[1:len(esc)-1], "`", "'"))
	}
	return b.String()
}

func quoteAll(names []string) []string {
	all := make([]string, len(names))
	for i, n := range names {
		all[i] = quote(n)
	}
	return all
}

// list joins names for a sentence: "kg, t or lb".
func list(names []string, last string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	n := len(names) - 1
	return strings.Join(names[:n], ", ") + " " + last + " " + names[n]
}

func trimRight(line string) string { return strings.TrimRight(line, " \t") }

// count says how many there are: "1 entry", "3 entries".
func count(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + more
}
