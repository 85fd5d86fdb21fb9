package register

import (
	"strings"
	"testing"
	"unicode/utf16"
)

// utf16Bytes writes text by way of package unicode/utf16, which the reader does
// not use for whole texts.
func utf16Bytes(text string, little, mark bool) []byte {
	units := utf16.Encode([]rune(text))
	if mark {
		units = append([]uint16{0xfeff}, units...)
	}
	var out []byte
	for _, u := range units {
		if little {
			out = append(out, byte(u), byte(u>>8))
		} else {
			out = append(out, byte(u>>8), byte(u))
		}
	}
	return out
}

// TestEncodings: one table in every encoding reads as the same items.
func TestEncodings(t *testing.T) {
	src, columns := fittings(t)
	text := decodeText(src, windows1252Name)
	if !strings.Contains(text, "für 5 €") {
		t.Fatal(text)
	}
	for name, c := range map[string]struct {
		src  []byte
		want string
	}{
		"UTF-8":                    {[]byte(text), utf8Name},
		"UTF-8 with a mark":        {[]byte(byteOrderMark + text), utf8Name},
		"UTF-16 LE":                {utf16Bytes(text, true, true), utf16LEName},
		"UTF-16 BE":                {utf16Bytes(text, false, true), utf16BEName},
		"UTF-16 LE without a mark": {utf16Bytes(text, true, false), utf16LEName},
		"UTF-16 BE without a mark": {utf16Bytes(text, false, false), utf16BEName},
		"Windows-1252":             {src, windows1252Name},
	} {
		table, err := mustReader(t).ReadTable("fittings.csv", c.src, columns)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		i, _ := table.Register.Find("WR-7")
		if table.Encoding != c.want || i.Kept[0].Value != "für 5 €" {
			t.Errorf("%s: %s, %+v", name, table.Encoding, i.Kept)
		}
	}
}

// TestWindows1252 compares with the names that the Unicode Consortium's
// CP1252.TXT gives a few of its characters (from memory).
func TestWindows1252(t *testing.T) {
	for b, want := range map[byte]string{0x80: "€", 0x84: "„", 0x96: "–", 0x9c: "œ", 0x9f: "Ÿ", 0xa0: "\u00a0", 0xb1: "±", 0xd8: "Ø", 0xe4: "ä", 0xff: "ÿ", 'a': "a"} {
		if got := decodeWindows1252([]byte{b}); got != want {
			t.Errorf("%x: %q, want %q", b, got, want)
		}
	}
}
