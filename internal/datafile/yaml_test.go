package datafile

import (
	"strings"
	"testing"
)

func TestReadYAML(t *testing.T) {
	y := Text{File: "f", Line: 10, Columns: []int{2, 2, 2}, Text: "a: 1\nb: [x, 'y/z']\nc: {d: true, e: -2.5}\n"}
	tree, ps := Read(y)
	if len(ps) > 0 {
		t.Fatal(ps)
	}
	root := tree.Root.(map[string]any)
	if root["a"] != 1.0 || root["b"].([]any)[1] != "y/z" || root["c"].(map[string]any)["e"] != -2.5 {
		t.Errorf("%v", root)
	}
	for pointer, want := range map[string]string{"/a": "f:10:3: x", "/b/1": "f:11:10: x", "/c/e": "f:12:16: x", "/c/none": "f:12:3: x"} {
		if got := tree.Problem(pointer, "x").String(); got != want {
			t.Errorf("%s: %s, want %s", pointer, got, want)
		}
	}
}

// Each is a trap of the YAML reader that plain data does without.
func TestYAMLThatIsRefused(t *testing.T) {
	for _, text := range []string{
		"a: &x 1", "a: *x", "<<: {a: 1}", "a: !!int 3", "a: 010", "a: 0x1F", "a: 1_000", "a: .inf", "a: .nan",
		"1: x", "a: 1\na: 2", "a: 1\n---\nb: 2", "# nothing", "a: [1", "a: &a [*a]", "",
		strings.Repeat("[", 40), strings.Repeat("- ", 200) + "x", "a: " + strings.Repeat("x", maxYAMLBytes),
		strings.Repeat("[\n", 2000), "? {a: 1}\n: 2",
	} {
		if _, ps := Read(Text{File: "f", Line: 1, Text: text}); len(ps) == 0 {
			t.Errorf("%.40q is taken", text)
		}
	}
}

// TestWordsThatAreNoText: what YAML 1.1 reads as true or false is neither
// taken for text nor for that; in quotes it is text, and as a key too.
func TestWordsThatAreNoText(t *testing.T) {
	for _, word := range []string{"y", "N", "yes", "No", "ON", "off", "Off", "yEs"} {
		for _, text := range []string{"a: " + word, "a: [x, " + word + "]", "a: {b: " + word + "}"} {
			_, ps := Read(Text{File: "f", Line: 1, Text: text})
			if len(ps) != 1 || !strings.Contains(ps[0].Message, "`"+word+"` is true or false to YAML 1.1 and text to YAML 1.2") {
				t.Errorf("%s: %v", text, ps)
			}
		}
		for _, text := range []string{"a: '" + word + "'", "a: \"" + word + "\"", word + ": x", "a: no hook", "a: |\n  " + word} {
			if _, ps := Read(Text{File: "f", Line: 1, Text: text}); len(ps) > 0 {
				t.Errorf("%s: %v", text, ps)
			}
		}
	}
}

func TestEmptyFile(t *testing.T) {
	for _, text := range []string{"", "\n\n", "# only a comment\n"} {
		if _, ps := Read(Text{File: "f", Line: 1, Text: text}); len(ps) != 1 || ps[0].String() != "f:1:1: this file is empty" {
			t.Errorf("%q: %v", text, ps)
		}
	}
}

func TestProblems(t *testing.T) {
	ps := Problems{{File: "b", Line: 1, Column: 1, Message: "x"}, {File: "a", Line: 2, Column: 3, Message: "y"}, {File: "a", Line: 2, Column: 3, Message: "y"}, {Message: "z"}, {File: "c", Message: "w"}}
	if got, want := ps.Sorted().Error(), "z\na:2:3: y\nb:1:1: x\nc: w"; got != want {
		t.Errorf("got %q", got)
	}
	if (Problems{}).Sorted() != nil {
		t.Error("no problems are no error")
	}
}
