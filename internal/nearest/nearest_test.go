package nearest

import (
	"testing"

	"github.com/agnivade/levenshtein"
	"pgregory.net/rapid"
)

func TestName(t *testing.T) {
	known := []string{"title", "mass", "mass_known_by", "center_of_gravity", "date"}
	for _, c := range []struct{ name, want string }{
		{"titel", "title"}, // two letters swapped are one slip
		{"tilte", "title"},
		{"Title", "title"},
		{"tite", "title"},
		{"titlee", "title"},
		{"tille", "title"},
		{"mas", "mass"},
		{"amss", "mass"},
		{"mass_knonw_by", "mass_known_by"},
		{"centre_of_gravity", "center_of_gravity"},
		{"center-of-gravity", "center_of_gravity"},
		{"weight", ""},
		{"rating", ""},
		{"zzzzz", ""},
	} {
		got, ok := Name(c.name, known)
		if got != c.want || ok != (c.want != "") {
			t.Errorf("%q is taken for %q, not %q", c.name, got, c.want)
		}
	}
	if got, ok := Name("title", nil); ok {
		t.Errorf("of no names %q was near", got)
	}
}

func TestFirstOfEquallyNearOnesWins(t *testing.T) {
	for _, known := range [][]string{{"S1", "S2", "S3"}, {"S3", "S1", "S2"}} {
		if got, _ := Name("S4", known); got != known[0] {
			t.Errorf("of %v %q was chosen", known, got)
		}
	}
}

func TestHint(t *testing.T) {
	for _, c := range []struct {
		name  string
		known []string
		want  string
	}{
		{"prelfit", []string{"draft", "review", "prelift"}, `: did you mean "prelift"?`},
		{"final", []string{"draft", "review"}, ": there is draft, review"},
		{"any", nil, ""},
	} {
		if got := Hint(c.name, c.known); got != c.want {
			t.Errorf("%q of %v: %q, not %q", c.name, c.known, got, c.want)
		}
	}
}

// TestEditsAgainstLevenshtein: a swap of neighbors is the only step by which
// the two measures differ, and is two steps of the other at most.
func TestEditsAgainstLevenshtein(t *testing.T) {
	word := rapid.StringOfN(rapid.RuneFrom([]rune("abcé")), 0, 8, -1)
	rapid.Check(t, func(t *rapid.T) {
		a, b := word.Draw(t, "a"), word.Draw(t, "b")
		got, plain := edits(a, b), levenshtein.ComputeDistance(a, b)
		if got > plain || 2*got < plain {
			t.Fatalf("%q to %q takes %d steps, %d without swaps", a, b, got, plain)
		}
		if back := edits(b, a); back != got {
			t.Fatalf("%q to %q takes %d steps, and %d back", a, b, got, back)
		}
		if (got == 0) != (a == b) {
			t.Fatalf("%q to %q takes %d steps", a, b, got)
		}
	})
}

func TestSwapIsOneEdit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := []rune(rapid.StringOfN(rapid.RuneFrom([]rune("abcdefgé")), 2, 10, -1).Draw(t, "word"))
		i := rapid.IntRange(0, len(w)-2).Draw(t, "at")
		s := append([]rune{}, w...)
		s[i], s[i+1] = s[i+1], s[i]
		want := 1
		if w[i] == w[i+1] {
			want = 0
		}
		if got := edits(string(w), string(s)); got != want {
			t.Fatalf("%q to %q takes %d steps", string(w), string(s), got)
		}
	})
}
