package yamldoc

import (
	"os"
	"reflect"
	"testing"

	"liftlint/internal/source"
)

func mustRead(t *testing.T, src string) *Document {
	t.Helper()
	d, faults := Read("plan", []byte(src))
	if len(faults) > 0 {
		t.Fatalf("%q: %+v", src, faults)
	}
	return d
}

// Each range was counted by hand.
func TestRanges(t *testing.T) {
	for _, c := range []struct {
		name, src, pointer string
		key, value         source.Range
	}{
		{"flow plain", "p: {x: 3.35 m, y: 1.05 m}", "/p/x", rangeOf(1, 5, 1, 6), rangeOf(1, 8, 1, 14)},
		{"flow plain, last", "p: {x: 3.35 m, y: 1.05 m}", "/p/y", rangeOf(1, 16, 1, 17), rangeOf(1, 19, 1, 25)},
		{"flow plain, space before bracket", "p: {x: 3.35 m }", "/p/x", rangeOf(1, 5, 1, 6), rangeOf(1, 8, 1, 14)},
		{"flow mapping", "p: {x: 3.35 m, y: 1.05 m}", "/p", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 1, 26)},
		{"flow over lines", "p: [\n  1,\n  2\n]\nq: 1", "/p", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 4, 2)},
		{"before a comment", "a: 12 t   # c", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 1, 8)},
		{"after a comment", "# c\n\na: # c\n  12 t", "/a", rangeOf(3, 1, 3, 2), rangeOf(4, 3, 4, 7)},
		{"double quotes", `a: "x\u00e9\"y" # c`, "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 1, 16)},
		{"quotes over lines", "a: 'x\n  y'\nb: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 2, 5)},
		{"quoted key", `"a b" : 1`, "/a b", rangeOf(1, 1, 1, 6), rangeOf(1, 9, 1, 10)},
		{"plain over lines", "a: x\n  y  \n\n  z\nb: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 4, 4)},
		{"literal", "a: | # c\n  x\n  y\n\nb: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 3, 4)},
		{"kept line ends", "a: |+\n  x\n\nb: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 3, 1)},
		{"literal without text", "a: |\nb: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 1, 5)},
		{"empty value", "a:\nb: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 3, 1, 3)},
		{"empty item", "-\n- 1", "/0", source.Range{}, rangeOf(1, 2, 1, 2)},
		{"empty in flow", "{a: , b: 1}", "/a", rangeOf(1, 2, 1, 3), rangeOf(1, 4, 1, 4)},
		{"item", "- a\n- b", "/1", source.Range{}, rangeOf(2, 3, 2, 4)},
		{"list below its key", "k:\n- a\n- b\nz: 1", "/k", rangeOf(1, 1, 1, 2), rangeOf(2, 1, 3, 4)},
		{"mapping in an item", "- a: 1\n  b: 22\n- c: 3", "/0", source.Range{}, rangeOf(1, 3, 2, 8)},
		{"lists in a list", "- - a\n  - bb", "/0/1", source.Range{}, rangeOf(2, 5, 2, 7)},
		{"root", "a: 1\nb: 22\n", "", source.Range{}, rangeOf(1, 1, 2, 6)},
		{"code points", "ключ: {é: 荷物, b: 𝄞 x}", "/ключ/b", rangeOf(1, 15, 1, 16), rangeOf(1, 18, 1, 21)},
		{"byte order mark", "\ufeffa: 1", "/a", rangeOf(1, 1, 1, 2), rangeOf(1, 4, 1, 5)},
		{"CRLF after a comment", "a: 1 # c\r\nb: 2 # d\r\nc: 3\r\n", "/c", rangeOf(3, 1, 3, 2), rangeOf(3, 4, 3, 5)},
		{"lone CR", "a: 1\rb: 2\rc: 3", "/c", rangeOf(3, 1, 3, 2), rangeOf(3, 4, 3, 5)},
		{"after a marker", "---\na: 1", "/a", rangeOf(2, 1, 2, 2), rangeOf(2, 4, 2, 5)},
		{"escaped pointer", "a/b: {c~d: 1}", "/a~1b/c~0d", rangeOf(1, 7, 1, 10), rangeOf(1, 12, 1, 13)},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := mustRead(t, c.src)
			got, ok := d.Place(c.pointer)
			if want := (source.Place{Key: c.key, Value: c.value}); !ok || got != want {
				t.Errorf("%q %s\nwant %v\ngot  %v %v", c.src, c.pointer, want, got, ok)
			}
		})
	}
}

// Texts worked out by hand after YAML 1.2.2: 7.3 (flow scalars), 8.1 (block
// scalars).
func TestTexts(t *testing.T) {
	for _, c := range []struct{ src, want string }{
		{"a: x\n  y\n\n  z", "x y\nz"},
		{"a: 'it''s\n  ''b'''", "it's 'b'"},
		{"a: \"x  \n\n  y\\\n  z\\t \"", "x\nyz\t "},
		{`a: "\x41\u00e9\U0001F600\ud83d\ude00\/\_"`, "Aé😀😀/\u00a0"},
		{"a: |\n  x\n   y\n\n  z\n\n", "x\n y\n\nz\n"},
		{"a: |-\n  x\n", "x"},
		{"a: |+\n  x\n\n", "x\n\n"},
		{"a: |2\n   x\n", " x\n"},
		{"a: >\n  x\n  y\n\n  z\n   i\n  w\n", "x y\nz\n i\nw\n"},
		{"a: >-\n\n  x\n", "\nx"},
		{"a: |\n  [ { \"\n  # text\n", "[ { \"\n# text\n"},
		{"a: |\n\n", ""},
		{"a: x#y", "x#y"},
		{"a: http://h/p?q=1&r#s", "http://h/p?q=1&r#s"},
		{"a: '--- x'", "--- x"},
	} {
		d := mustRead(t, c.src)
		if got := d.Root().Get("a"); got.Kind != String || got.Text != c.want {
			t.Errorf("%q: want %q, got %s %q", c.src, c.want, got.Kind, got.Text)
		}
	}
}

func TestDocument(t *testing.T) {
	const src = "# head\nlift: {id: A}  # tail\r\nlist: [1, 2]\n"
	d := mustRead(t, src)
	if d.Name() != "plan" || d.Line(2) != "lift: {id: A}  # tail" || d.Line(0) != "" || d.Line(99) != "" {
		t.Errorf("%q %q", d.Name(), d.Line(2))
	}
	want := []Comment{{" head", rangeOf(1, 1, 1, 7)}, {" tail", rangeOf(2, 16, 2, 22)}}
	if !reflect.DeepEqual(d.Comments(), want) {
		t.Errorf("%+v", d.Comments())
	}
	n, ok := d.Find("/list/1")
	if !ok || n.Text != "2" || n.Pointer != "/list/1" || n.Value() != int64(2) {
		t.Errorf("%+v", n)
	}
	if _, ok := d.Find("/list/2"); ok {
		t.Error("found what is not there")
	}
	if _, ok := d.Place("/no"); ok {
		t.Error("placed what is not there")
	}
	for pointer, near := range map[string]string{"/lift/id/x/y": "/lift/id", "/lift/no": "/lift", "/no/no": "", "no": "", "/list/1": "/list/1"} {
		if want, _ := d.Place(near); d.Nearest(pointer) != want {
			t.Errorf("near %s: %v", pointer, d.Nearest(pointer))
		}
	}
}

func TestNilNode(t *testing.T) {
	var n *Node
	if n.Get("a").Get("b") != nil || n.Value() != nil {
		t.Error("a nil node has something")
	}
}

func TestCommentsAreAllKept(t *testing.T) {
	d := mustRead(t, "#1\n---\na: #2\n  - b #3\n  #4\n  - [c, #5\n     d] #6\n#7\nt: | #8\n  # text\n#9\nu: 'x # y'\n...\n#10\n")
	if len(d.Comments()) != 10 || d.Comments()[9].Text != "10" {
		t.Errorf("%+v", d.Comments())
	}
}

func TestLineOfAFaultyFile(t *testing.T) {
	if got := Line([]byte("\ufeffa: [\r\nb\rc"), 2); got != "b" {
		t.Errorf("%q", got)
	}
}

func TestInsertionOrderOfEntries(t *testing.T) {
	d := mustRead(t, "z: 1\na: 2\nm: 3\n")
	var keys string
	for _, e := range d.Root().Entries {
		keys += e.Key
	}
	if keys != "zam" {
		t.Error(keys)
	}
}

func TestReadingIsRepeatable(t *testing.T) {
	src, err := os.ReadFile("testdata/good/plan.yaml")
	if err != nil {
		t.Fatal(err)
	}
	a, b := mustRead(t, string(src)), mustRead(t, string(src))
	if !reflect.DeepEqual(a, b) {
		t.Error("two readings differ")
	}
}
