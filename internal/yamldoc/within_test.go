package yamldoc

import (
	"strconv"
	"strings"
	"testing"

	"liftlint/internal/source"
)

// TestLimitsByType: a list of gear may be larger than a plan, and has an end
// too.
func TestLimitsByType(t *testing.T) {
	large := strings.Repeat("- some gear\n", maxBytes/12+1)
	if d, faults := Read("f", []byte(large)); d != nil || faults[0].ID != TooLarge {
		t.Errorf("%v", faults)
	}
	if d, faults := ReadWithin(RegisterLimits(), "f", []byte(large)); d == nil {
		t.Errorf("%v", faults)
	}
	l := RegisterLimits()
	if d, faults := ReadWithin(l, "f", []byte(strings.Repeat("-\n", l.Nodes+5))); d != nil || faults[0].ID != TooManyNodes {
		t.Errorf("%v", faults)
	}
	if d, faults := ReadWithin(l, "f", []byte(strings.Repeat("#", l.Bytes+1))); d != nil || faults[0].ID != TooLarge || !strings.Contains(faults[0].Message, "(8 MiB)") {
		t.Errorf("%v", faults)
	}
}

// TestBuiltNodes are those that reading would give.
func TestBuiltNodes(t *testing.T) {
	for _, text := range []string{"true", "12", "1.5", "S1", "2026-12-04", "12 ft 6 in"} {
		d, faults := Read("f", []byte(text))
		if d == nil {
			t.Fatal(faults)
		}
		got, want := Plain(text, "", source.Place{}), d.Root()
		if got.Kind != want.Kind || got.Value() != want.Value() || got.Text != want.Text {
			t.Errorf("%+v, want %+v", got, want)
		}
		if n := Text(text, "/a", source.Place{}); n.Kind != String || n.Value() != text || n.Pointer != "/a" {
			t.Errorf("%+v", n)
		}
	}
}

// TestRefusal is what reading a text in double quotes would say.
func TestRefusal(t *testing.T) {
	for text, ok := range map[string]bool{"plain": true, "a\tb\nc": true, "é €": true, "\u00a0": true, "\x00": false, "\x1b": false, "\u0085": false, "\u200e": false, "\ufeff": false, "\uffff": false, "\xff": false, "\u2028": false} {
		if (Refusal(text) == "") != ok {
			t.Errorf("%q: %s", text, Refusal(text))
		}
		_, faults := Read("f", []byte(strconv.Quote(text)))
		if (len(faults) == 0) != ok && text != "\xff" {
			t.Errorf("%q: %v", text, faults)
		}
	}
}
