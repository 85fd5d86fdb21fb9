package report

import "testing"

// TestRuneWidth holds single characters against their East_Asian_Width in
// Unicode Standard Annex 11 (values from memory of EastAsianWidth.txt).
func TestRuneWidth(t *testing.T) {
	for r, want := range map[rune]int{
		'A': 1, '~': 1, 'é': 1, '°': 1, 'Ω': 1, 'Ж': 1, '→': 1, '½': 1, // Na, N, A
		'鋼': 2, 'あ': 2, 'カ': 2, '한': 2, '。': 2, 0x20000: 2, // W
		'Ａ': 2, '￥': 2, // F
		'ｶ':     1,            // H
		0x1F3D7: 1,            // building construction: N
		0x1F6A7: 2,            // construction: W
		0x26A0:  1,            // warning sign: N
		0x0301:  0, 0x20DD: 0, // marks
		0x1100: 2, 0x1161: 0, 0x11A8: 0, // a syllable in parts
	} {
		if got := RuneWidth(r); got != want {
			t.Errorf("U+%04X %c takes %d columns, not %d", r, r, got, want)
		}
	}
}

func TestWidth(t *testing.T) {
	for text, want := range map[string]int{"": 0, "S1 22 mm": 8, "鋼索 e\u0301": 6} {
		if got := Width(text); got != want {
			t.Errorf("%q takes %d columns, not %d", text, got, want)
		}
	}
}

func TestWideRangesAreInOrder(t *testing.T) {
	spans := wideSpans()
	if len(spans) < 50 {
		t.Fatalf("only %d ranges were read", len(spans))
	}
	for i, s := range spans {
		if s.first > s.last || i > 0 && s.first <= spans[i-1].last {
			t.Errorf("range %d, %x to %x, is out of order", i, s.first, s.last)
		}
	}
}
