package text

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// excerpt shows the line of a finding and marks its range below. Of a range
// over several lines the first is shown and marked to its end.
func (p *page) excerpt(r *lint.Result, f finding.Finding) {
	from, to := f.Place.Range.From, f.Place.Range.To
	if from.Line == 0 {
		return
	}
	text := []rune(r.Line(from.Line))
	if strings.TrimSpace(string(text)) == "" {
		return
	}
	start, end := clamp(from.Column-1, len(text)), len(text)
	if to.Line == from.Line {
		end = clamp(to.Column-1, len(text))
	}
	label := fmt.Sprintf("  line %d  ", from.Line)
	c := cut(text, start, end, p.width-len(label)-2)
	p.line("%s%s", label, c.shown)
	p.line("%s%s%s", strings.Repeat(" ", len(label)+c.before), p.paint.mark(strings.Repeat("^", max(1, c.marked))), "")
}

func clamp(n, most int) int { return max(0, min(n, most)) }

// piece is the part of a line that is shown, and where the mark goes, in
// columns of a terminal.
type piece struct {
	shown          string
	before, marked int
}

// cut takes indentation away and, from a line that is too long, what is far
// from the range.
func cut(text []rune, start, end, width int) piece {
	left := 0
	for left < start && unicode.IsSpace(text[left]) {
		left++
	}
	lead, tail := "", ""
	if width > 20 && start-left > width/2 {
		left, lead = start-width/4, "... "
	}
	right := len(text)
	if width > 20 && right-left > width {
		right, tail = left+width, " ..."
	}
	end = min(end, right)
	return piece{
		shown:  lead + show(text[left:right]) + tail,
		before: columns(lead + show(text[left:start])),
		marked: columns(show(text[start:max(start, end)])),
	}
}

// show makes a piece of a line printable: tabs as spaces, controls spelt out.
func show(text []rune) string {
	return report.Visible(strings.ReplaceAll(string(text), "\t", "    "))
}

// columns is how wide a text stands on a terminal, as far as that can be told
// without knowing the terminal: wide characters of East Asia take two columns,
// combining marks none.
func columns(text string) int {
	n := 0
	for _, r := range text {
		switch {
		case unicode.In(r, unicode.Mn, unicode.Me):
		case unicode.In(r, unicode.Han, unicode.Hangul, unicode.Hiragana, unicode.Katakana):
			n += 2
		default:
			n++
		}
	}
	return n
}

// wrap breaks words into lines of the width. The first line stands behind the
// label, the others behind as many spaces.
func wrap(label, words string, width int) []string {
	indent := strings.Repeat(" ", utf8.RuneCountInString(label))
	line, used := label, len(indent)
	var out []string
	begun := false
	for _, w := range strings.Fields(words) {
		n := utf8.RuneCountInString(w)
		if begun && used+1+n > width {
			out = append(out, line)
			line, used, begun = indent, len(indent), false
		}
		if begun {
			line, used = line+" ", used+1
		}
		line, used, begun = line+w, used+n, true
	}
	return append(out, strings.TrimRight(line, " "))
}

func lines(text string) []string { return strings.Split(strings.TrimRight(text, "\n"), "\n") }
