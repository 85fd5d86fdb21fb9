package yamldoc

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	yaml "go.yaml.in/yaml/v3"
	"pgregory.net/rapid"
)

// referenceDiff compares a document with what go.yaml.in/yaml/v3 reads (a
// port of libyaml, independent of this package and of goccy/go-yaml): kinds of
// collections, texts of scalars, and the line and column where each begins.
// It returns nothing if they agree.
func referenceDiff(src []byte, d *Document) string {
	var doc yaml.Node
	if err := yaml.Unmarshal([]byte(normalize(src)), &doc); err != nil {
		tab := strings.Contains(err.Error(), "tab character") || strings.Contains(err.Error(), "cannot start any token")
		if tab && strings.Contains(string(src), "\t") {
			return "" // libyaml refuses tabs on blank lines, which YAML 1.2.2, 6.5 allows
		}
		question := strings.Contains(err.Error(), "did not find expected ',' or") || strings.Contains(err.Error(), "cannot start any token")
		if question && strings.Contains(string(src), "?") {
			return "" // libyaml ends plain text within brackets at a question mark, as YAML 1.1 does
		}
		return "the reference refuses: " + err.Error()
	}
	if len(doc.Content) != 1 {
		return fmt.Sprintf("the reference finds %d roots", len(doc.Content))
	}
	return nodeDiff(doc.Content[0], d.Root())
}

func nodeDiff(want *yaml.Node, got *Node) string {
	if diff := placeDiff(want, got); diff != "" {
		return got.Pointer + ": " + diff
	}
	switch want.Kind {
	case yaml.MappingNode:
		if got.Kind != Mapping || len(want.Content) != 2*len(got.Entries) {
			return fmt.Sprintf("%s: want a mapping of %d, got %s of %d", got.Pointer, len(want.Content)/2, got.Kind, len(got.Entries))
		}
		for i, e := range got.Entries {
			key := want.Content[2*i]
			if key.Value != e.Key || key.Line != e.KeyRange.From.Line || key.Column != e.KeyRange.From.Column {
				return fmt.Sprintf("%s: want key %q at %d:%d, got %q at %v", got.Pointer, key.Value, key.Line, key.Column, e.Key, e.KeyRange.From)
			}
			if diff := nodeDiff(want.Content[2*i+1], e.Value); diff != "" {
				return diff
			}
		}
	case yaml.SequenceNode:
		if got.Kind != Sequence || len(want.Content) != len(got.Items) {
			return fmt.Sprintf("%s: want a list of %d, got %s of %d", got.Pointer, len(want.Content), got.Kind, len(got.Items))
		}
		for i, item := range got.Items {
			if diff := nodeDiff(want.Content[i], item); diff != "" {
				return diff
			}
		}
	default:
		if got.Kind == Mapping || got.Kind == Sequence || want.Value != got.Text {
			return fmt.Sprintf("%s: want %q, got %s %q", got.Pointer, want.Value, got.Kind, got.Text)
		}
	}
	return ""
}

// placeDiff compares where a node begins. The reference gives an empty value
// the place of the next token, so that one is not compared.
func placeDiff(want *yaml.Node, got *Node) string {
	from := got.Place.Value.From
	if got.Style == EmptyStyle || want.Line == from.Line && want.Column == from.Column {
		return ""
	}
	return fmt.Sprintf("want it at %d:%d, got %v", want.Line, want.Column, from)
}

// fragments are pieces whose random joins reach the odd corners of YAML.
func fragments() []string {
	return []string{
		"a", "b", "k: ", "x: ", "- ", "- ", "\n", "\n", "\n  ", "\n    ", "\n ", " ", "  ", "{", "}", "[", "]", ", ",
		",", ":", ": ", "? ", "#", " # c", "'", "\"", "'q'", "\"d\"", "''", "\\n", "\\", "|", ">", "|-", ">+", "|2", "|\n  ",
		">-\n  ", "---", "...", "\n---\n", "12", "1e3", "-", "é", "\t", "~", "%", "@", "<<: ", "t: 3.35 m", "{x: 3.35 m, y: 1.05 m}",
		"key:\n- i\n", "u:\n  - v\n  - w: 1\n    z: 2\n", "  text [ {\n", "\r\n", "a:b", "http://x/y", "2026-12-04",
	}
}

// What this package accepts, the reference must read alike: the source is
// YAML 1.2.2 by way of an independent implementation.
func TestAgreesWithReferenceOnJoinedFragments(t *testing.T) {
	checkMuch(t, 50, func(t *rapid.T) {
		pieces := rapid.SliceOfN(rapid.SampledFrom(fragments()), 1, 24).Draw(t, "pieces")
		src := []byte(strings.Join(pieces, ""))
		d, _ := Read("joined", src)
		if d == nil {
			return
		}
		if diff := referenceDiff(src, d); diff != "" {
			t.Fatalf("%q: %s", src, diff)
		}
	})
}

func TestAgreesWithReferenceOnFiles(t *testing.T) {
	files, err := filepath.Glob("testdata/good/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal("no files:", err)
	}
	for _, file := range files {
		src, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		d, faults := Read(file, src)
		if len(faults) > 0 {
			t.Errorf("%s: %v", file, faults)
			continue
		}
		if diff := referenceDiff(src, d); diff != "" {
			t.Errorf("%s: %s", file, diff)
		}
	}
}
