package yamldoc

import (
	"fmt"
	"strings"
	"testing"
	"time"
)

// numbered repeats a format with 0, 1, 2...
func numbered(n int, format string) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, format, i)
	}
	return b.String()
}

// nestedKeys are n keys, each below the one before.
func nestedKeys(n int, key string) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.Repeat(" ", i) + key + ":\n")
	}
	return b.String()
}

// mappings are n mappings of as many keys as are allowed.
func mappings(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "m%d:\n%s", i, numbered(maxKeys-1, "  k%d: 1\n"))
	}
	return b.String()
}

// Inputs that exhaust time or memory of YAML readers. Each ends soon, with one
// fault at its place or, where id is empty, with a document. Some took 18 s
// or all memory in the library beneath.
func TestHostileInputsEndSoon(t *testing.T) {
	rep := strings.Repeat
	for _, c := range []struct {
		name, src, id string
		line, column  int
	}{
		{"brackets", rep("[", 200<<10), TooDeep, 1, 65},
		{"braces", rep("{a: ", 50<<10), TooDeep, 1, 257},
		{"unmatched brackets", rep("[", 64), Syntax, 1, 64},
		{"sibling keys", numbered(85000, "k%d: 1\n"), TooManyKeys, 5001, 1},
		{"sibling keys in braces", "{" + numbered(85000, "k%d: 1,") + "}", TooManyKeys, 1, 43892},
		{"most sibling keys", numbered(maxKeys, "k%d: 1\n"), "", 0, 0},
		{"many mappings", mappings(9), "", 0, 0},
		{"dashes on a line", rep("- ", 50000), TooDeep, 1, 129},
		{"dashes on lines", rep("- \n", 50000), "", 0, 0}, // 50,000 items of nothing: odd, but plain
		{"items", rep("-\n", maxNodes+5), TooManyNodes, 100000, 2},
		{"short items in brackets", "[" + rep("1, ", maxNodes-5) + "]", "", 0, 0},
		{"items in brackets", "[" + rep("1, ", maxNodes+5) + "]", TooManyNodes, 1, 299999},
		{"nested keys", nestedKeys(65, "k"), TooDeep, 65, 65},
		{"most nested keys", nestedKeys(64, "k"), "", 0, 0},
		{"wide indentation", rep(" ", 900_000) + "a: 1", "", 0, 0},
		{"long pointers", nestedKeys(60, rep("k", 1000)) + rep(rep(" ", 61)+"- 1\n", 10000), TooManyNodes, 309, 64},
		{"alias bomb", "a: &a [x, x]\n" + numbered(300, "b%d: &b [*a, *a, *a, *a]\n"), Alias, 1, 4},
		{"one line", "a: " + rep("x ", 500_000), ScalarTooLong, 1, 4},
		{"one line in quotes", "a: \"" + rep("x ", 500_000) + "\"", ScalarTooLong, 1, 4},
		{"long block scalar", "a: |\n" + rep("  xxxxxxx\n", 7000), ScalarTooLong, 1, 4},
		{"longest scalar", "a: " + rep("x", maxScalar), "", 0, 0},
		{"quotes in brackets", "[" + rep("'', ", maxNodes-5) + "]", "", 0, 0},
		{"tabs in quotes", "a: \"" + rep("\t", maxScalar-2) + "\"", "", 0, 0},
		{"long key", rep("k", maxKeyBytes+1) + ": 1", ScalarTooLong, 1, 1},
		{"unterminated quotes", rep("a: \"x\n", 60000), Syntax, 1, 4},
		{"unterminated long quote", "a: \"" + rep("x\n ", 60000), ScalarTooLong, 1, 4},
		{"too large", rep("#", maxBytes+1), TooLarge, 1, 1},
		{"largest", "a: 1 #" + rep("#", maxBytes-6), "", 0, 0},
		{"brackets in a block scalar", "a: |\n" + rep("  [[[[{{{{\n", 5000), "", 0, 0},
		{"brackets in quotes", "a: '" + rep("[", 60000) + "'", "", 0, 0},
		{"brackets in a comment", "a: 1 # " + rep("[", 900_000), "", 0, 0},
		{"colons", rep(": ", 500_000), KeyNotString, 1, 1},
		{"quotes", rep("''", 500_000), ScalarTooLong, 1, 1},
		{"comments", rep("#\n", 500_000), Empty, 1, 1},
		{"anchors", rep("- &a x\n", 100_000), Alias, 1, 3},
		{"CR", rep("\r", 1<<20), Empty, 1, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			start := time.Now()
			d, faults := Read("f", []byte(c.src))
			// Alone, the slowest (many mappings) takes 0.7 s and the others
			// less than 0.25; the rest is room for a busy machine and the
			// race detector. TestFirstReadingIsLinear looks closer.
			if took := time.Since(start); took > 5*time.Second {
				t.Errorf("took %v", took)
			}
			if c.id == "" {
				if d == nil {
					t.Fatalf("%+v", faults[0])
				}
				return
			}
			if d != nil || len(faults) == 0 {
				t.Fatal("no fault")
			}
			f := faults[0]
			if at := f.Range.From; f.ID != c.id || at.Line != c.line || at.Column != c.column {
				t.Errorf("%+v", f)
			}
			if len(faults) > 1 && c.id != Alias {
				t.Errorf("%d faults", len(faults))
			}
		})
	}
}

// Eight times the text takes about eight times the time, on one line and on
// many; a quadratic path would take 64 times.
func TestFirstReadingIsLinear(t *testing.T) {
	best := func(text string) time.Duration {
		least := time.Hour
		for range 4 {
			start := time.Now()
			faults := &faultList{}
			s := scan(text, faults)
			if s.broken {
				t.Fatal(faults.all)
			}
			compose(s.tokens, faults)
			least = min(least, time.Since(start))
		}
		return least
	}
	const n = 4000
	for _, piece := range []string{"1, ", "'', ", "{\"é\": é}, ", "{é: x y}, ", "[], ", "é\n x, ", "1, # c\n ", "'é\n  x', "} {
		checkLinear(t, piece, best("["+strings.Repeat(piece, n)+"]"), best("["+strings.Repeat(piece, 8*n)+"]"))
	}
	for _, piece := range []string{"- a: x\n", "- x\n  y\n", "-\n", "- |\n  x\n", "- 'x'\n\n", "- # c\n  - x # é\n"} {
		checkLinear(t, piece, best(strings.Repeat(piece, n)), best(strings.Repeat(piece, 8*n)))
	}
}

func checkLinear(t *testing.T, piece string, short, long time.Duration) {
	t.Helper()
	if long > 30*short && long > 100*time.Millisecond {
		t.Errorf("%q: %v, and for eight times the text %v", piece, short, long)
	}
}
