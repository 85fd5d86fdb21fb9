package report

import (
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

func TestVisible(t *testing.T) {
	for in, want := range map[string]string{
		"plain # text":         "plain # text",
		"Šín 鋼 é e\u0301":      "Šín 鋼 é e\u0301",
		"\x1b[31mred":          `\u001b[31mred`,
		"a\nb\tc\rd\x00":       `a\u000ab\u0009c\u000dd\u0000`,
		"\u009b31m\x7f":        `\u009b31m\u007f`, // C1 and delete
		"6\u202et\u2066":       `6\u202et\u2066`,  // direction overrides
		"a\u200bb\ufeff\u00ad": `a\u200bb\ufeff\u00ad`,
		"5\u00a0t\u3000":       `5\u00a0t\u3000`, // blanks that are no space
		"a\u2028b":             `a\u2028b`,
		"x\ufe0f\u3164":        `x\ufe0f\u3164`, // invisible, though no control
		"\U000e0041":           `\U000e0041`,
		"bad \xff\xc3":         `bad \xff\xc3`,
		"\ufffd":               "\ufffd",
		"##[error]x":           `\u0023#[error]x`,
		"a ##vso[task]":        `a \u0023#vso[task]`,
		"":                     "",
	} {
		if got := Visible(in); got != want {
			t.Errorf("Visible(%q) = %q, not %q", in, got, want)
		}
	}
}

func TestVisibleIsHarmlessAndSettled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := rapid.OneOf(rapid.String(), rapid.Map(rapid.SliceOf(rapid.Byte()), func(b []byte) string { return string(b) })).Draw(t, "text")
		got := Visible(in)
		if !utf8.ValidString(got) || strings.IndexFunc(got, Hidden) >= 0 || strings.Contains(got, "##[") {
			t.Fatalf("Visible(%q) = %q", in, got)
		}
		if again := Visible(got); again != got {
			t.Fatalf("%q becomes %q when gone over again", got, again)
		}
	})
}
