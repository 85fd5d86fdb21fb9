package text

import (
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"liftlint/internal/report"
	"liftlint/internal/source"
)

func on(line string, from, to int) source.Range {
	return source.Range{From: source.Position{Line: 1, Column: from}, To: source.Position{Line: 1, Column: to}}
}

func TestCut(t *testing.T) {
	several := source.Range{From: source.Position{Line: 1, Column: 3}, To: source.Position{Line: 4, Column: 1}}
	long := strings.Repeat("abcdefghi ", 30)
	for name, c := range map[string]struct {
		line   string
		r      source.Range
		shown  string
		carets string // what stands below, blanks and all
	}{
		"middle":            {"mass: 5 t", on("", 7, 10), "mass: 5 t", "      ^^^"},
		"indented":          {"    mass: 5 t", on("", 11, 14), "mass: 5 t", "      ^^^"},
		"range in blanks":   {"    a", on("", 3, 4), "  a", "^"},
		"empty range":       {"mass:", on("", 2, 2), "mass:", " ^"},
		"behind the line":   {"mass:", on("", 6, 6), "mass: ", "     ^"},
		"far behind":        {"mass:", on("", 90, 95), "mass: ", "     ^"},
		"several lines":     {"  mass: ", several, "mass: ", "^^^^^^"},
		"tab within":        {"a\tb", on("", 3, 4), "a   b", "    ^"},
		"tab marked":        {"a\tb", on("", 2, 3), "a   b", " ^^^"},
		"wide before":       {"鋼: x", on("", 4, 5), "鋼: x", "    ^"},
		"wide marked":       {"a鋼b", on("", 2, 3), "a鋼b", " ^^"},
		"mark before":       {"e\u0301: x", on("", 5, 6), "e\u0301: x", "   ^"},
		"mark alone marked": {"e\u0301x", on("", 2, 3), "e\u0301x", "^"},
		"mark first":        {"\u0301x", on("", 2, 3), `\u0301x`, "      ^"},
		"control before":    {"\x1bx", on("", 2, 3), `\u001bx`, "      ^"},
		"control marked":    {"a\u202eb", on("", 2, 3), `a\u202eb`, " ^^^^^^"},
		"bad byte":          {"\xffx", on("", 2, 3), `\xffx`, "    ^"},
		"log command":       {"a ##[x]", on("", 6, 7), `a \u0023#[x]`, "          ^"},
		"long, at start":    {long, on("", 1, 4), "abcdefghi abcdefghi abcdefghi abcd...", "^^^"},
		"long, middle":      {long, on("", 101, 104), "...fghi abcdefghi abcdefghi abcdefghi...", "                  ^^^"},
		"long, all":         {long, on("", 1, 301), "abcdefghi abcdefghi abcdefghi abcd...", strings.Repeat("^", 34)},
		"zero column":       {"mass", on("", 0, 0), "mass", "^"},
		"turned around":     {"mass", on("", 3, 1), "mass", "  ^"},
	} {
		shown, before, marked := cut(c.line, c.r, 40)
		if carets := strings.Repeat(" ", before) + strings.Repeat("^", marked); shown != c.shown || carets != c.carets {
			t.Errorf("%s:\n%q\n%q, not\n%q\n%q", name, shown, carets, c.shown, c.carets)
		}
	}
}

// anyLine draws lines with all that makes columns hard to count.
func anyLine() *rapid.Generator[string] {
	pieces := rapid.SampledFrom([]string{"a", " ", "鋼", "e\u0301", "\t", "\x1b", "\u202e", "\xff", "한", "\u0301", "##[", "key: ", "½"})
	return rapid.Map(rapid.SliceOfN(pieces, 0, 300), func(p []string) string { return strings.Join(p, "") })
}

func TestCutFitsAndMarks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := anyLine().Draw(t, "line")
		room := rapid.IntRange(25, 120).Draw(t, "room")
		from := rapid.IntRange(-2, 400).Draw(t, "from")
		r := on(line, from, rapid.IntRange(-2, 400).Draw(t, "to"))
		shown, before, marked := cut(line, r, room)
		if w := report.Width(shown); w > room || marked < 1 || before+marked > w {
			t.Fatalf("%d of %d columns, mark from %d over %d: %q", w, room, before, marked, shown)
		}
	})
}

// TestCaretsStandUnderTheRange finds what stands above the carets by counting
// columns and compares it with the range.
func TestCaretsStandUnderTheRange(t *testing.T) {
	letters := rapid.SampledFrom([]rune("abz鋼한½°カ"))
	rapid.Check(t, func(t *rapid.T) {
		line := []rune("k" + string(rapid.SliceOfN(letters, 1, 500).Draw(t, "line")))
		from := rapid.IntRange(0, len(line)-1).Draw(t, "from")
		to := rapid.IntRange(from+1, min(len(line), from+5)).Draw(t, "to")
		shown, before, marked := cut(string(line), on("", from+1, to+1), 40)
		if got := between(shown, before, marked); got != string(line[from:to]) {
			t.Fatalf("carets stand under %q of %q, not %q", got, shown, string(line[from:to]))
		}
	})
}

func between(shown string, before, marked int) string {
	var got strings.Builder
	column := 0
	for _, r := range shown {
		if column >= before && column < before+marked {
			got.WriteRune(r)
		}
		column += report.RuneWidth(r)
	}
	return got.String()
}

func TestWrapKeepsEveryWord(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOf(rapid.StringMatching(`[a-z鋼]{1,30}`)).Draw(t, "words")
		room := rapid.IntRange(1, 60).Draw(t, "room")
		lines := wrap(strings.Join(words, " "), room, room)
		if got := strings.Join(lines, " "); got != strings.Join(words, " ") {
			t.Fatalf("%q became %q", words, lines)
		}
		for _, l := range lines {
			if width(l) > room && strings.Contains(l, " ") {
				t.Fatalf("%q is wider than %d", l, room)
			}
		}
	})
}

// A line of a mebibyte must cost no more than reading it once.
// 2026-11-25: 0.38 ms.
func BenchmarkCutLongLine(b *testing.B) {
	line := strings.Repeat("abcdefghi ", 1<<20/10)
	r := on("", utf8.RuneCountInString(line)/2, utf8.RuneCountInString(line)/2+4)
	for b.Loop() {
		cut(line, r, 90)
	}
}
