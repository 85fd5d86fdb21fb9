package register

import (
	"bytes"
	"encoding/binary"
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

// The encodings that tables are read in.
const (
	utf8Name        = "utf_8"
	utf16LEName     = "utf_16_le"
	utf16BEName     = "utf_16_be"
	windows1252Name = "windows_1252"
)

const byteOrderMark = "\ufeff"

// tellEncoding says how a table is written. Without a byte order mark, text
// that has every other byte zero is UTF-16, and what is no UTF-8 anywhere beyond
// ASCII is Windows-1252. A file that is UTF-8 in some places and not in others
// is taken for damaged UTF-8, which its cells will show.
func tellEncoding(src []byte) string {
	switch {
	case bytes.HasPrefix(src, []byte{0xff, 0xfe}):
		return utf16LEName
	case bytes.HasPrefix(src, []byte{0xfe, 0xff}):
		return utf16BEName
	case bytes.HasPrefix(src, []byte(byteOrderMark)):
		return utf8Name
	}
	if name := bareUTF16(src); name != "" {
		return name
	}
	if utf8.Valid(src) || hasMultibyte(src) {
		return utf8Name
	}
	return windows1252Name
}

// bareUTF16 tells UTF-16 without a mark by the zero bytes of its first letters.
func bareUTF16(src []byte) string {
	const look = 64
	var zeros [2]int
	head := src[:min(len(src), look)&^1]
	for i, b := range head {
		if b == 0 {
			zeros[i%2]++
		}
	}
	half := len(head) / 2
	switch {
	case half < 4 || len(src)%2 != 0:
		return ""
	case zeros[1] > half*3/4 && zeros[0] == 0:
		return utf16LEName
	case zeros[0] > half*3/4 && zeros[1] == 0:
		return utf16BEName
	}
	return ""
}

func hasMultibyte(src []byte) bool {
	for len(src) > 0 {
		r, size := utf8.DecodeRune(src)
		if r != utf8.RuneError && size > 1 {
			return true
		}
		src = src[size:]
	}
	return false
}

// decodeText gives the text of a table. What has no meaning in the encoding
// comes out as bytes that are no UTF-8, so that the cell it is in can be named.
func decodeText(src []byte, encoding string) string {
	var text string
	switch encoding {
	case utf16LEName:
		text = decodeUTF16(src, binary.LittleEndian)
	case utf16BEName:
		text = decodeUTF16(src, binary.BigEndian)
	case windows1252Name:
		text = decodeWindows1252(src)
	default:
		text = string(src)
	}
	return strings.TrimPrefix(text, byteOrderMark)
}

// noMeaning stands for what an encoding does not have. It is no UTF-8.
const noMeaning = "\xff"

func decodeUTF16(src []byte, order binary.ByteOrder) string {
	units := make([]uint16, len(src)/2)
	for i := range units {
		units[i] = order.Uint16(src[2*i:])
	}
	var b strings.Builder
	b.Grow(len(src)/2 + len(src)/8)
	for i := 0; i < len(units); i++ {
		r := rune(units[i])
		switch {
		case !utf16.IsSurrogate(r):
			b.WriteRune(r)
		case i+1 < len(units) && utf16.DecodeRune(r, rune(units[i+1])) != utf8.RuneError:
			b.WriteRune(utf16.DecodeRune(r, rune(units[i+1])))
			i++
		default:
			b.WriteString(noMeaning)
		}
	}
	if len(src)%2 != 0 {
		b.WriteString(noMeaning)
	}
	return b.String()
}

// windows1252 are the characters of the bytes 0x80 to 0x9f, after the table of
// the Unicode Consortium (CP1252.TXT), from memory; zero has no meaning. All
// other bytes are the characters of the same number.
var windows1252 = [32]rune{
	'\u20ac', 0, '\u201a', '\u0192', '\u201e', '\u2026', '\u2020', '\u2021', '\u02c6', '\u2030', '\u0160', '\u2039', '\u0152', 0, '\u017d', 0,
	0, '\u2018', '\u2019', '\u201c', '\u201d', '\u2022', '\u2013', '\u2014', '\u02dc', '\u2122', '\u0161', '\u203a', '\u0153', 0, '\u017e', '\u0178',
}

func decodeWindows1252(src []byte) string {
	var b strings.Builder
	b.Grow(len(src) + len(src)/16)
	for _, c := range src {
		switch {
		case c < 0x80:
			b.WriteByte(c)
		case c >= 0xa0:
			b.WriteRune(rune(c))
		case windows1252[c-0x80] != 0:
			b.WriteRune(windows1252[c-0x80])
		default:
			b.WriteString(noMeaning)
		}
	}
	return b.String()
}
