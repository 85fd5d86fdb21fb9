package yamldoc

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/source"
)

// tree draws a value of maps, lists and scalars.
func tree(depth int) *rapid.Generator[any] {
	scalar := rapid.OneOf(
		rapid.SampledFrom([]any{nil, true, false, "", "3.35 m", "2026-12-04", "2 %", "1-1/8 in", "yes", "~", "1e3", "010", "it's \"so\"",
			"a: b", "# no comment", "[x", "x ]{", "- dash", "tail ", " lead", "two\nlines", "three\n\n\nlines\n", "é ü 荷", "tab\there",
			"null", "0x1F", "12:30", "-", "?", "&a", "*a", "!t", "|", ">", "%", "@", "`", "<<", "end:", "a #b", "a\n  indented\nb\n"}),
		rapid.Map(rapid.Int64(), func(i int64) any { return i }),
		rapid.Map(rapid.Int64Range(-99999, 99999), func(i int64) any { return float64(i) / 64 }),
		rapid.Map(rapid.StringOf(rapid.SampledFrom([]rune("ab1 :#-,é'\"\\\n{}[]&*!|>%"))), func(s string) any { return s }),
	)
	if depth == 0 {
		return scalar
	}
	sub := rapid.Deferred(func() *rapid.Generator[any] { return tree(depth - 1) })
	key := rapid.OneOf(rapid.StringMatching(`[a-z_]{1,6}`), rapid.SampledFrom([]string{"a/b", "c~d", "", "1", "x y", "clé", "k:", "#k", "it's", "true"}))
	return rapid.OneOf(scalar,
		rapid.Map(rapid.SliceOfN(sub, 0, 4), func(l []any) any { return l }),
		rapid.Map(rapid.MapOfN(key, sub, 0, 4), func(m map[string]any) any { return m }))
}

// printer writes a tree in styles drawn at random, after the grammar of YAML
// 1.2.2 and not after this package.
type printer struct {
	t   *rapid.T
	out strings.Builder
}

func (p *printer) coin(label string) bool { return rapid.Bool().Draw(p.t, label) }

func (p *printer) comment(label string) string {
	return rapid.SampledFrom([]string{"", "", "", "  ", " # [{ it's \" : note", " #"}).Draw(p.t, label)
}

func (p *printer) lineEnd() {
	p.out.WriteString(p.comment("comment") + "\n")
	if p.coin("blank") && p.coin("blank again") {
		p.out.WriteString(rapid.SampledFrom([]string{"\n", "   \n", "      # between\n", "# at the left\n"}).Draw(p.t, "between"))
	}
}

// block writes v after a key, a dash, or nothing, and ends the line.
func (p *printer) block(v any, indent int) {
	pad := strings.Repeat(" ", indent)
	switch v := v.(type) {
	case map[string]any:
		if len(v) > 0 && p.coin("block") {
			p.startBlock()
			for i, k := range shuffled(p.t, v) {
				if i > 0 || indent > 0 {
					p.out.WriteString(pad)
				}
				p.out.WriteString(p.key(k, false) + ":")
				p.block(v[k], indent+1+rapid.IntRange(0, 3).Draw(p.t, "step"))
			}
			return
		}
	case []any:
		if len(v) > 0 && p.coin("block") {
			p.startBlock()
			for _, item := range v {
				p.out.WriteString(pad + "-")
				p.block(item, indent+2)
			}
			return
		}
	case nil:
		if p.coin("empty") {
			p.lineEnd()
			return
		}
	case string:
		if p.coin("as lines") && p.literal(v, indent) {
			return
		}
	}
	p.space()
	p.flow(v, indent)
	p.lineEnd()
}

func (p *printer) startBlock() {
	if p.out.Len() > 0 {
		p.lineEnd()
	}
}

func (p *printer) space() {
	if p.out.Len() > 0 {
		p.out.WriteString(rapid.SampledFrom([]string{" ", "  "}).Draw(p.t, "space"))
	}
}

// literal writes text under `|` if that can carry it.
func (p *printer) literal(s string, indent int) bool {
	if s == "" || strings.HasPrefix(s, "\n") || strings.HasPrefix(s, " ") || strings.ContainsAny(s, "\t") || strings.Trim(s, "\n ") == "" {
		return false
	}
	for line := range strings.SplitSeq(s, "\n") {
		if line != "" && strings.TrimSpace(line) == "" {
			return false
		}
	}
	p.space()
	body, ends := strings.TrimRight(s, "\n"), len(s)-len(strings.TrimRight(s, "\n"))
	p.out.WriteString("|" + []string{"-", "", "+"}[min(ends, 2)] + p.comment("header") + "\n")
	pad := strings.Repeat(" ", indent+rapid.IntRange(1, 3).Draw(p.t, "pad"))
	for line := range strings.SplitSeq(body, "\n") {
		if line != "" {
			line = pad + line
		}
		p.out.WriteString(line + "\n")
	}
	if ends > 1 {
		p.out.WriteString(strings.Repeat("\n", ends-1))
	}
	return true
}

// flow writes v with brackets and on the line, or over lines within brackets.
func (p *printer) flow(v any, indent int) {
	gap := func() string {
		return rapid.SampledFrom([]string{"", " ", "\n" + strings.Repeat(" ", indent+1), " # c [\n" + strings.Repeat(" ", indent+2)}).Draw(p.t, "gap")
	}
	switch v := v.(type) {
	case map[string]any:
		p.out.WriteString("{")
		for i, k := range shuffled(p.t, v) {
			if i > 0 {
				p.out.WriteString(",")
			}
			p.out.WriteString(gap() + p.key(k, true) + ": ")
			p.flow(v[k], indent)
			p.out.WriteString(gap())
		}
		p.out.WriteString("}")
	case []any:
		p.out.WriteString("[")
		for i, item := range v {
			if i > 0 {
				p.out.WriteString(",")
			}
			p.out.WriteString(gap())
			p.flow(item, indent)
			p.out.WriteString(gap())
		}
		p.out.WriteString("]")
	default:
		p.out.WriteString(p.scalar(v, indent))
	}
}

func (p *printer) key(k string, inFlow bool) string {
	if safePlain(k) && p.coin("plain key") {
		return k
	}
	if p.coin("single key") {
		return "'" + strings.ReplaceAll(k, "'", "''") + "'"
	}
	return strconv.Quote(k)
}

func (p *printer) scalar(v any, indent int) string {
	s, ok := v.(string)
	if !ok {
		switch v := v.(type) {
		case nil:
			return "null"
		case float64:
			return strings.TrimSuffix(strconv.FormatFloat(v, 'f', 6, 64), "0")
		}
		return fmt.Sprint(v)
	}
	switch style := rapid.IntRange(0, 2).Draw(p.t, "style"); {
	case style == 0 && safePlain(s):
		return p.wrap(s, indent)
	case style == 1 && !strings.Contains(s, "\n"):
		return "'" + p.wrap(strings.ReplaceAll(s, "'", "''"), indent) + "'"
	}
	q := strconv.Quote(s)
	return `"` + p.wrap(q[1:len(q)-1], indent) + `"`
}

// wrap breaks text at single spaces between words now and then.
func (p *printer) wrap(s string, indent int) string {
	i := strings.IndexByte(s, ' ')
	if i <= 0 || i == len(s)-1 || !letter(s[i-1]) || !letter(s[i+1]) || !p.coin("wrap") {
		return s
	}
	return s[:i] + rapid.SampledFrom([]string{"\n", "  \n"}).Draw(p.t, "wrapped") + strings.Repeat(" ", indent+2) + s[i+1:]
}

func letter(b byte) bool { return b >= 'a' && b <= 'z' }

// safePlain reports texts that every YAML version reads as they stand.
func safePlain(s string) bool {
	if s == "" || !letter(s[0]) && !strings.ContainsAny(s, " /") || strings.ContainsAny(s, ":#,[]{}\n\t'\"\\&*!|>%@`~-") || strings.TrimSpace(s) != s {
		return false
	}
	switch s {
	case "yes", "no", "on", "off", "y", "n", "true", "false", "null":
		return false
	}
	return true
}

func shuffled(t *rapid.T, m map[string]any) []string {
	return rapid.Permutation(sortedKeys(m)).Draw(t, "order")
}

// A tree that is printed in any style reads as the same tree, the reference
// reader agrees on all places, and the text in the range of a scalar reads as
// that scalar again.
func TestPrintedTreeReadsBack(t *testing.T) {
	checkMuch(t, 10, func(t *rapid.T) {
		want := tree(3).Draw(t, "tree")
		p := &printer{t: t}
		if p.coin("header") {
			p.out.WriteString("# head\n---\n")
		}
		p.block(want, 0)
		src := p.out.String()
		d, faults := Read("printed", []byte(strings.ReplaceAll(src, "\n", rapid.SampledFrom([]string{"\n", "\r\n", "\r"}).Draw(t, "line end"))))
		if strings.Trim(stripComments(src), " \n-") == "" {
			return // nothing but an empty value: not a document
		}
		if len(faults) > 0 {
			t.Fatalf("%s\nfaults: %+v", src, faults)
		}
		if got := d.Root().Value(); !reflect.DeepEqual(got, want) {
			t.Fatalf("%s\nwant %#v\ngot  %#v", src, want, got)
		}
		if diff := referenceDiff([]byte(src), d); diff != "" {
			t.Fatalf("%s\n%s", src, diff)
		}
		checkRanges(t, src, d, d.Root())
	})
}

func stripComments(s string) string {
	var kept []string
	for line := range strings.SplitSeq(s, "\n") {
		line, _, _ = strings.Cut(line, "#")
		kept = append(kept, line)
	}
	return strings.Join(kept, "\n")
}

// checkRanges reads the text in each scalar's range by itself.
func checkRanges(t interface {
	Fatalf(string, ...any)
}, src string, d *Document, n *Node) {
	for _, e := range n.Entries {
		checkRanges(t, src, d, e.Value)
		if key := cutRange(src, e.KeyRange); key != e.Key {
			if k, _ := Read("key", []byte(key)); k == nil || k.Root().Text != e.Key {
				t.Fatalf("%s\nthe range of key %q holds %q", src, e.Key, key)
			}
		}
	}
	for _, item := range n.Items {
		checkRanges(t, src, d, item)
	}
	if n.Kind == Mapping || n.Kind == Sequence || n.Style == EmptyStyle {
		return
	}
	text := cutRange(src, n.Place.Value)
	if n.Style == LiteralStyle || n.Style == FoldedStyle {
		text = "block:\n- " + text + "\n"
		got, faults := Read("part", []byte(text))
		if got == nil || got.Root().Get("block").Items[0].Text != n.Text {
			t.Fatalf("%s\nthe range of %q holds %q %v", src, n.Text, text, faults)
		}
		return
	}
	got, faults := Read("part", []byte(text))
	if got == nil || !reflect.DeepEqual(got.Root().Value(), n.Value()) {
		t.Fatalf("%s\nthe range of %q holds %q %v", src, n.Text, text, faults)
	}
}

// cutRange gives the text in a range, counting code points by itself.
func cutRange(src string, r source.Range) string {
	line, column, out := 1, 1, []rune{}
	for _, c := range src {
		at := source.Position{Line: line, Column: column}
		if !at.Before(r.From) && at.Before(r.To) {
			out = append(out, c)
		}
		column++
		if c == '\n' {
			line, column = line+1, 1
		}
	}
	return string(out)
}
