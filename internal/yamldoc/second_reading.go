package yamldoc

import (
	"fmt"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"

	"liftlint/internal/source"
)

// readAgain has goccy/go-yaml read the text too and demands the same tree: a
// file that two readers understand differently is refused rather than
// misunderstood. Comments are left out, and long or folded scalars and missing
// values are replaced by stand-ins, because that library is slow on them or
// folds them wrongly; the lines of the text stay.
func readAgain(text string, tokens []token, root *Node, faults *faultList) {
	w := rewriter{text: text}
	for _, t := range tokens {
		w.write(t)
	}
	line, ok := agrees(w.out.String(), w.scalars, root)
	if ok {
		return
	}
	at := root.Place.Value
	for _, t := range tokens {
		if t.at.From.Line >= line {
			at = t.at
			break
		}
	}
	faults.add(Syntax, at, nil, "YAML readers disagree about what is written here; put the text in quotes, and put each key on its own line")
}

// rewriter writes the text for the second reading.
type rewriter struct {
	text    string
	out     strings.Builder
	done    int
	owed    int // line ends within scalars that were replaced
	scalars []expected
}

// expected is a scalar that the second reading must find.
type expected struct {
	text string
	at   source.Range
}

func (w *rewriter) write(t token) {
	w.gap(w.text[w.done:t.from])
	w.done = t.to
	written := w.text[t.from:t.to]
	if t.kind != scalarToken {
		w.out.WriteString(written)
		return
	}
	e := expected{t.text, t.at}
	if standsIn(t, written) {
		e.text = fmt.Sprintf("s%d", len(w.scalars))
		written = e.text
		w.owed += t.at.To.Line - t.at.From.Line
		if t.style == EmptyStyle {
			written = " " + written
		}
	}
	w.out.WriteString(written)
	w.scalars = append(w.scalars, e)
}

// standsIn reports whether a scalar is replaced.
func standsIn(t token, written string) bool {
	const long = 200
	if t.style == LiteralStyle || t.style == FoldedStyle || t.style == EmptyStyle {
		return true
	}
	return len(written) > long || strings.ContainsAny(written, "\t\n")
}

// gap writes the line ends and the indentation between two tokens.
func (w *rewriter) gap(between string) {
	i := strings.LastIndexByte(between, '\n')
	if breaks := strings.Count(between, "\n") + w.owed; breaks > 0 {
		w.out.WriteString(strings.Repeat("\n", breaks))
		w.owed = 0
		if i >= 0 {
			w.out.WriteString(between[i+1:])
		}
		return
	}
	if between != "" && w.out.Len() > 0 {
		w.out.WriteByte(' ')
	}
}

// agrees compares the second reading with the first; if they differ it gives
// a line near the difference. A panic of the library counts as a difference.
func agrees(text string, scalars []expected, root *Node) (line int, ok bool) {
	c := comparison{scalars: scalars, line: 1}
	defer func() {
		if recover() != nil {
			line, ok = c.line, false
		}
	}()
	file, err := parser.ParseBytes([]byte(text), 0)
	if err != nil {
		return errorLine(err), false
	}
	if len(file.Docs) != 1 || !c.same(file.Docs[0].Body, root) {
		return c.line, false
	}
	return 0, len(c.scalars) == 0
}

// comparison walks both trees at once, scalars in the order of the text.
type comparison struct {
	scalars []expected
	line    int
}

func (c *comparison) same(theirs ast.Node, ours *Node) bool {
	switch theirs := theirs.(type) {
	case *ast.MappingNode:
		return c.mapping(theirs.Values, ours, theirs.IsFlowStyle)
	case *ast.MappingValueNode:
		return c.mapping([]*ast.MappingValueNode{theirs}, ours, false)
	case *ast.SequenceNode:
		if ours.Kind != Sequence || len(theirs.Values) != len(ours.Items) || theirs.IsFlowStyle != (ours.Style == FlowStyle) {
			return false
		}
		for i, v := range theirs.Values {
			if !c.same(v, ours.Items[i]) {
				return false
			}
		}
		return true
	}
	return ours.Kind != Mapping && ours.Kind != Sequence && c.scalar(theirs)
}

func (c *comparison) mapping(values []*ast.MappingValueNode, ours *Node, flow bool) bool {
	if ours.Kind != Mapping || len(values) != len(ours.Entries) || flow != (ours.Style == FlowStyle) {
		return false
	}
	for i, v := range values {
		if !c.scalar(v.Key) || !c.same(v.Value, ours.Entries[i].Value) {
			return false
		}
	}
	return true
}

// scalar checks the next scalar of the text.
func (c *comparison) scalar(theirs ast.Node) bool {
	if len(c.scalars) == 0 {
		return false
	}
	want := c.scalars[0]
	c.scalars = c.scalars[1:]
	c.line = want.at.From.Line
	t := theirs.GetToken()
	return t != nil && t.Value == want.text
}
