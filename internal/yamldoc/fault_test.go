package yamldoc

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// faultCase is a small bad file, the faults that it must have, in order, each
// as "line:column-line:column id", and a word of the first message.
type faultCase struct {
	name, src string
	want      []string
	says      string
}

func runFaultCases(t *testing.T, cases []faultCase) {
	t.Helper()
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			d, faults := Read("bad", []byte(c.src))
			if d != nil {
				t.Errorf("%q gives a document", c.src)
			}
			got := make([]string, len(faults))
			for i, f := range faults {
				from, to := f.Range.From, f.Range.To
				got[i] = fmt.Sprintf("%d:%d-%d:%d %s", from.Line, from.Column, to.Line, to.Column, strings.TrimPrefix(f.ID, "yaml/"))
				checkFault(t, f)
			}
			if !slices.Equal(got, c.want) {
				t.Fatalf("%q\nwant %q\ngot  %q\n%+v", c.src, c.want, got, faults)
			}
			if !strings.Contains(faults[0].Message, c.says) {
				t.Errorf("%q is not in %q", c.says, faults[0].Message)
			}
		})
	}
}

func checkFault(t *testing.T, f Fault) {
	t.Helper()
	if !slices.Contains(FaultIDs(), f.ID) {
		t.Errorf("unknown id %s", f.ID)
	}
	if f.Message == "" || strings.ContainsAny(f.Message, "\n\r\x00\x1b") || len(f.Message) > 400 {
		t.Errorf("message %q", f.Message)
	}
}

func TestFaultIDsAreSortedAndUnique(t *testing.T) {
	ids := FaultIDs()
	if !slices.IsSorted(ids) || len(slices.Compact(slices.Clone(ids))) != len(ids) {
		t.Error(ids)
	}
	for _, id := range ids {
		if !strings.HasPrefix(id, "yaml/") {
			t.Error(id)
		}
	}
}

func TestMissingColonsAndWrongIndentation(t *testing.T) {
	runFaultCases(t, []faultCase{
		{"no colon above entries", "load\n  mass: 5 t\n", []string{"1:1-1:5 syntax"}, "`load` has no colon"},
		{"no colon at the end", "a: 1\nfoo\n", []string{"2:1-2:4 syntax"}, "`foo` has no colon"},
		{"no colon amid", "a: 1\nfoo\nb: 2\n", []string{"2:1-2:4 syntax"}, "`foo` has no colon"},
		{"no space", "load:\n  mass:8650 kg\n", []string{"2:3-2:15 syntax"}, "write `mass: 8650 kg`"},
		{"no space, more follows", "load:\n  mass:8650 kg\n  size: 3\n", []string{"2:3-2:15 syntax"}, "write `mass: 8650 kg`"},
		{"no-break space", "mass:\u00a08650 kg\n", []string{"1:1-1:14 syntax"}, "write `mass: 8650 kg`"},
		{"no-break space before a key", "\u00a0a: 1\n", []string{"1:1-1:3 syntax"}, "no-break"},
		{"too far right", "title: foo\n  mass: 3\n", []string{"2:3-2:7 syntax"}, "indented further"},
		{"two colons", "title: Lift: second\n", []string{"1:12-1:13 syntax"}, "second colon"},
		{"list below a value", "a: 1\n  - b\n", []string{"2:3-2:6 syntax"}, "already has a value"},
		{"list among keys", "a: 1\n- b\n", []string{"2:1-2:2 syntax"}, "list item"},
		{"list on the line", "a: - b\n", []string{"1:4-1:7 syntax"}, "list item"},
		{"between two columns", "a:\n    b: 1\n  c: 2\n", []string{"3:3-3:4 syntax"}, "indented by 2"},
		{"dash between", "- - x\n - y\n", []string{"2:2-2:3 syntax"}, "dash"},
		{"key after a list", "- a\nb: 1\n", []string{"2:1-2:2 syntax"}, "`b`"},
		{"text after a comment", "x: foo # c\n  bar\n", []string{"2:3-2:6 syntax"}, "`bar`"},
		{"second value", "a: \"x\" y\n", []string{"1:8-1:9 syntax"}, "`y`"},
		{"comment without space", "a: \"b\"#c\n", []string{"1:7-1:9 syntax"}, "`#c`"},
		{"value below at the left", "key:\n\"foo\"\n", []string{"2:1-2:6 syntax"}, "belongs to no key"},
		{"reserved", "a: @x\n", []string{"1:4-1:6 syntax"}, "cannot begin with `@`"},
		{"question mark", "a: [?b]\n", []string{"1:5-1:8 syntax"}, "cannot begin with `?`"},
		{"colon in front", "a: :b\n", []string{"1:4-1:6 syntax"}, "cannot begin with `:`"},
		{"percent", "a: %5\n", []string{"1:4-1:6 syntax"}, "cannot begin with `%`"},
		{"directive", "%YAML 1.1\n---\na: 1\n", []string{"1:1-1:10 syntax"}, "directives"},
		{"key after marker", "--- a: 1\n", []string{"1:5-1:6 syntax"}, "own line"},
	})
}

func TestBracketsAndQuotes(t *testing.T) {
	runFaultCases(t, []faultCase{
		{"open to the end", "a: [1, 2\n", []string{"1:4-1:5 syntax"}, "not closed before the end"},
		{"open to the next key", "a: {x: 1\nb: 2\n", []string{"1:4-1:5 syntax"}, "not closed before line 2"},
		{"open to a blank line", "a: [1, 2\n\nb: 3\n", []string{"1:4-1:5 syntax"}, "not closed before line 3"},
		{"open to a marker", "a: [1,\n---\nb: 2]\n", []string{"1:4-1:5 syntax"}, "not closed"},
		{"wrong kind", "a: [1}\n", []string{"1:6-1:7 syntax"}, "closes what"},
		{"never opened", "a: ]\n", []string{"1:4-1:5 syntax"}, "never opened"},
		{"decimal comma", "a: {x: 6,2 m}\n", []string{"1:10-1:13 syntax"}, "decimals take a point"},
		{"comma missing", "a: {x: 1 m y: 2 m}\n", []string{"1:8-1:13 syntax"}, "comma"},
		{"comma missing at a line end", "a: {x: 1 m\n  y: 2 m}\n", []string{"2:3-2:4 syntax"}, "comma"},
		{"comma missing after quotes", "a: [\"x\" \"y\"]\n", []string{"1:9-1:12 syntax"}, "comma"},
		{"comma missing after a bracket", "a: [[1] [2]]\n", []string{"1:9-1:10 syntax"}, "comma"},
		{"two commas", "a: [1,,2]\n", []string{"1:7-1:8 syntax"}, "nothing stands before"},
		{"key without value", "a: {y 2}\n", []string{"1:5-1:8 syntax"}, "no colon"},
		{"no space within", "a: {b:1}\n", []string{"1:5-1:8 syntax"}, "write `b: 1`"},
		{"colon at the bracket", "a: {b:}\n", []string{"1:6-1:7 syntax"}, "space is missing"},
		{"pair in a list", "a: [b: 1]\n", []string{"1:5-1:6 syntax"}, "{b: ...}"},
		{"dashes in brackets", "a: [\n  - b\n  ]\n", []string{"2:3-2:6 syntax"}, "dashes"},
		{"double quote", "a: \"foo\nb: \"bar\"\n", []string{"1:4-1:8 syntax"}, "not closed"},
		{"single quote", "a: 'foo\n", []string{"1:4-1:8 syntax"}, "not closed"},
		{"quote over a marker", "a: 'foo\n---\n b'\n", []string{"1:4-1:8 syntax"}, "not closed"},
		{"escape", `a: "\q"`, []string{"1:5-1:7 syntax"}, "no escape"},
		{"short escape", `a: "\u12"`, []string{"1:5-1:7 syntax"}, "no escape"},
		{"half a pair", `a: "\ud83d"`, []string{"1:5-1:11 syntax"}, "no escape"},
		{"beyond Unicode", `a: "\U00110000"`, []string{"1:5-1:7 syntax"}, "no escape"},
		{"quoted key over lines", "\"a\n b\": 1\n", []string{"1:1-2:4 syntax"}, "key in quotes"},
		{"text after a block mark", "a: |x\n b\n", []string{"1:5-1:6 syntax"}, "next line"},
		{"wide blank line", "a: |\n    \n  b\n", []string{"3:1-3:4 syntax"}, "blank line above"},
	})
}

// These are valid YAML and refused on purpose: each makes a file mean
// something else than it seems to, or hides a reader's trap of the library.
func TestRefusedYAML(t *testing.T) {
	runFaultCases(t, []faultCase{
		{"self alias", "a: &a [*a]\n", []string{"1:4-1:6 alias", "1:8-1:10 alias"}, "anchor `&a`"},
		{"anchor, alias and merge", "a: *x\nb: &y 1\n<<: *y\n",
			[]string{"1:4-1:6 alias", "2:4-2:6 alias", "3:1-3:3 merge_key", "3:5-3:7 alias"}, "alias `*x`"},
		{"anchor of a block", "a: &x\n  b: 1\n&z c: 2\n", []string{"1:4-1:6 alias", "3:1-3:3 alias"}, "anchor `&x`"},
		{"merge in brackets", "{<<: {a: 1}}\n", []string{"1:2-1:4 merge_key"}, "merge key"},
		{"custom tag", "a: !foo 5\n", []string{"1:4-1:8 tag"}, "tag `!foo`"},
		{"standard tag", "a: !!str 5\n", []string{"1:4-1:9 tag"}, "tag `!!str`"},
		{"tag of a key", "!t a: 1\nb: 2\n", []string{"1:1-1:3 tag"}, "tag `!t`"},
		{"complex key", "? a\n: b\n", []string{"1:1-1:2 key_not_string"}, "`?`"},
		{"bracket as key", "[a]: 1\n", []string{"1:3-1:4 key_not_string"}, "bracketed"},
		{"bracket as key within", "{[a]: 1}\n", []string{"1:2-1:3 key_not_string"}, "cannot be a key"},
		{"no key", ": 1\n", []string{"1:1-1:2 key_not_string"}, "no key"},
		{"no key within", "{: 1}\n", []string{"1:2-1:3 key_not_string"}, "no key"},
		{"other keys", "1: a\n01: b\ntrue: c\n~: d\nnull: e\n1.5: f\n", []string{"1:1-1:2 key_not_string", "2:1-2:3 key_not_string",
			"3:1-3:5 key_not_string", "4:1-4:2 key_not_string", "5:1-5:5 key_not_string", "6:1-6:4 key_not_string"}, "is read as a number"},
		{"duplicates", "a: 1\na: 2\nb: {c: 1, \"c\": 2}\n", []string{"2:1-2:2 duplicate_key", "3:11-3:14 duplicate_key"}, "first on line 1"},
		{"two documents", "a: 1\n---\nb: 2\n", []string{"2:1-2:4 several_documents"}, "second document"},
		{"after a comment", "---\n# only\n---\na: 1\n", []string{"3:1-3:4 several_documents"}, "second document"},
		{"after an end", "a: 1\n...\nb: 1\n", []string{"3:1-3:5 several_documents"}, "second document"},
		{"empty", "", []string{"1:1-1:1 empty"}, "no data"},
		{"comment only", "# c\n\n", []string{"1:1-1:1 empty"}, "no data"},
		{"marker only", "---\n...\n", []string{"1:1-1:1 empty"}, "no data"},
		{"mixed, by place", "a: yes\nb: *x\na: 010\n3: .nan\n", []string{"1:4-1:7 ambiguous_scalar", "2:4-2:6 alias",
			"3:1-3:2 duplicate_key", "3:4-3:7 ambiguous_scalar", "4:1-4:2 key_not_string", "4:4-4:8 not_finite"}, "`yes`"},
	})
}

func TestEncodingAndTabs(t *testing.T) {
	runFaultCases(t, []faultCase{
		{"UTF-16 little", "\xff\xfea\x00", []string{"1:1-1:1 encoding"}, "UTF-16"},
		{"UTF-16 big", "\xfe\xff\x00a", []string{"1:1-1:1 encoding"}, "UTF-16"},
		{"not UTF-8", "a: 1\nb: é\xff\n", []string{"2:5-2:6 encoding"}, "not UTF-8"},
		{"overlong", "a: \xc0\xaf\n", []string{"1:4-1:5 encoding"}, "not UTF-8"},
		{"NUL", "a\x00b", []string{"1:2-1:3 encoding"}, "NUL"},
		{"escape code", "a: \x1b[31m\n", []string{"1:4-1:5 encoding"}, "control"},
		{"delete", "a: \x7f\n", []string{"1:4-1:5 encoding"}, "control"},
		{"C1", "a: \u009b\n", []string{"1:4-1:5 encoding"}, "control"},
		{"next line", "a: b\u0085c\n", []string{"1:5-1:6 encoding"}, "separator"},
		{"line separator", "a: b\u2028c\n", []string{"1:5-1:6 encoding"}, "separator"},
		{"reversed text", "a: b\u202ec\n", []string{"1:5-1:6 encoding"}, "direction"},
		{"mark inside", "a: \ufeffb\n", []string{"1:4-1:5 encoding"}, "byte order mark"},
		{"no character", "a: \uffff\n", []string{"1:4-1:5 encoding"}, "no character"},
		{"written as escapes", `a: "\0\e\u202e"`, []string{"1:5-1:7 encoding", "1:7-1:9 encoding", "1:9-1:15 encoding"}, "`\\0`"},
		{"tab", "a:\n\tb: 1\n", []string{"2:1-2:2 tab_indent"}, "spaces"},
		{"tab after spaces", "a:\n  \tb: 1\n", []string{"2:3-2:4 tab_indent"}, "spaces"},
		{"tab after a dash", "-\ta: 1\n", []string{"1:2-1:3 tab_indent"}, "dash"},
		{"tab in a block", "a: |\n b\n\tc\n", []string{"3:1-3:2 tab_indent"}, "spaces"},
		{"tab before more text", "a: b\n\tc\n", []string{"2:1-2:2 tab_indent"}, "spaces"},
	})
}

func TestDuplicateKeyPointsAtTheFirst(t *testing.T) {
	_, faults := Read("f", []byte("é: 1\nb: 2\né: 3\n"))
	if len(faults) != 1 || len(faults[0].Related) != 1 || faults[0].Related[0].Range != rangeOf(1, 1, 1, 2) || faults[0].Related[0].Caption == "" {
		t.Errorf("%+v", faults)
	}
}

func TestManyFaultsAreCutShort(t *testing.T) {
	_, faults := Read("f", []byte(strings.Repeat("- *a\n", 5000)))
	if len(faults) != maxFaults+1 || faults[maxFaults].ID != TooManyFaults {
		t.Errorf("%d faults, the last %+v", len(faults), faults[len(faults)-1])
	}
}
