package datafile

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"
)

// Bounds of the YAML that a data file may hold. The parser has none of
// its own and runs out of memory on deep nesting.
const (
	maxYAMLBytes = 64 << 10
	maxYAMLDepth = 32
)

// place is a position in a file; both count from one.
type place struct{ line, column int }

// Text is YAML that stands in a file, perhaps behind comment signs.
type Text struct {
	File    string
	Text    string
	Line    int   // line of the file on which the text begins
	Columns []int // what each line of the text lost at its left; nil for nothing
}

func (y Text) place(p *token.Position) place {
	if p == nil {
		return place{y.Line, 1}
	}
	shift := 0
	if p.Line-1 < len(y.Columns) {
		shift = y.Columns[p.Line-1]
	}
	return place{y.Line + p.Line - 1, p.Column + shift}
}

// Tree is decoded YAML: maps, lists, strings, float64s, bools and nil,
// with the place of each value's key by JSON pointer.
type Tree struct {
	File   string
	Root   any
	places map[string]place
}

// Problem makes a problem at the nearest place that the pointer names.
func (t *Tree) Problem(pointer, format string, args ...any) Problem {
	for {
		if at, ok := t.places[pointer]; ok {
			return Problem{File: t.File, Line: at.line, Column: at.column, Message: fmt.Sprintf(format, args...)}
		}
		cut := strings.LastIndexByte(pointer, '/')
		if cut < 0 {
			return Problem{File: t.File, Message: fmt.Sprintf(format, args...)}
		}
		pointer = pointer[:cut]
	}
}

// Read decodes one document. It refuses what plain data does not need:
// anchors, aliases, merge keys, tags, several documents.
func Read(y Text) (tree *Tree, problems Problems) {
	tree = &Tree{File: y.File, places: map[string]place{"": y.place(nil)}}
	fail := func(p *token.Position, format string, args ...any) {
		at := y.place(p)
		problems.Add(Problem{File: y.File, Line: at.line, Column: at.column, Message: fmt.Sprintf(format, args...)})
	}
	if reason := tooMuch(y.Text); reason != "" {
		fail(nil, "%s", reason)
		return tree, problems
	}
	defer func() {
		if r := recover(); r != nil {
			fail(nil, "this YAML cannot be read: %v", r)
		}
	}()
	file, err := parser.ParseBytes([]byte(y.Text), parser.ParseComments)
	if err != nil {
		message, at := yamlError(err)
		fail(at, "%s", message)
		return tree, problems
	}
	if empty(file) {
		fail(nil, "this file is empty")
		return tree, problems
	}
	if len(file.Docs) != 1 || file.Docs[0].Body == nil {
		fail(nil, "one YAML document is wanted here, found %d", len(file.Docs))
		return tree, problems
	}
	r := yamlReader{y, tree, fail}
	tree.Root = r.value(file.Docs[0].Body, "")
	return tree, problems
}

// empty tells whether a file holds nothing but comments.
func empty(file *ast.File) bool {
	for _, d := range file.Docs {
		if _, comment := d.Body.(*ast.CommentGroupNode); d.Body != nil && !comment {
			return false
		}
	}
	return len(file.Docs) <= 1
}

func yamlError(err error) (string, *token.Position) {
	type placed interface {
		GetMessage() string
		GetToken() *token.Token
	}
	if e, ok := err.(placed); ok && e.GetToken() != nil {
		return e.GetMessage(), e.GetToken().Position
	}
	return OneLine(err.Error()), nil
}

func tooMuch(text string) string {
	if len(text) > maxYAMLBytes {
		return fmt.Sprintf("%d bytes of YAML; %d is the most that is read", len(text), maxYAMLBytes)
	}
	for line := range strings.SplitSeq(text, "\n") {
		indent := len(line) - len(strings.TrimLeft(line, " -?"))
		if strings.Count(line, "[")+strings.Count(line, "{") > maxYAMLDepth || indent > 2*maxYAMLDepth {
			return fmt.Sprintf("this YAML is nested too deep; %d levels are the most that is read", maxYAMLDepth)
		}
	}
	if strings.Count(text, "[")+strings.Count(text, "{") > maxYAMLBytes/64 {
		return "this YAML opens too many brackets to be read"
	}
	return ""
}

type yamlReader struct {
	text Text
	tree *Tree
	fail func(*token.Position, string, ...any)
}

func (r yamlReader) value(n ast.Node, pointer string) any {
	switch n := n.(type) {
	case *ast.MappingNode:
		return r.mapping(n.Values, pointer)
	case *ast.MappingValueNode:
		return r.mapping([]*ast.MappingValueNode{n}, pointer)
	case *ast.SequenceNode:
		list := []any{}
		for i, item := range n.Values {
			p := pointer + "/" + strconv.Itoa(i)
			r.tree.places[p] = r.text.place(item.GetToken().Position)
			list = append(list, r.value(item, p))
		}
		return list
	case *ast.StringNode:
		return r.plainText(n)
	case *ast.LiteralNode:
		return n.Value.Value
	case *ast.BoolNode:
		return n.Value
	case *ast.NullNode:
		return nil
	case *ast.IntegerNode, *ast.FloatNode:
		return r.number(n)
	}
	r.fail(n.GetToken().Position, "%s: write plain data here; anchors, aliases, tags and the like are not read", n.Type())
	return nil
}

// plainText refuses the words that YAML 1.1 reads as true or false, unless they
// stand in quotes.
func (r yamlReader) plainText(n *ast.StringNode) any {
	quoted := n.Token.Type == token.SingleQuoteType || n.Token.Type == token.DoubleQuoteType
	switch strings.ToLower(n.Value) {
	case "y", "n", "yes", "no", "on", "off":
		if !quoted {
			r.fail(n.Token.Position, "`%s` is true or false to YAML 1.1 and text to YAML 1.2; write true or false, or put it in quotes if it is text", n.Value)
			return nil
		}
	}
	return n.Value
}

// number takes decimal figures only: 010 and 0x1F are other numbers to other
// readers.
func (r yamlReader) number(n ast.Node) any {
	text := n.GetToken().Value
	digits := strings.TrimLeft(text, "-")
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || strings.ContainsAny(digits, "xXob_") || len(digits) > 1 && digits[0] == '0' && digits[1] != '.' {
		r.fail(n.GetToken().Position, "%s: write a plain decimal number", text)
		return nil
	}
	return x
}

func (r yamlReader) mapping(pairs []*ast.MappingValueNode, pointer string) any {
	out := make(map[string]any, len(pairs))
	for _, kv := range pairs {
		key, ok := kv.Key.(*ast.StringNode)
		if !ok {
			r.fail(kv.Key.GetToken().Position, "%s: a key is a plain word", kv.Key.GetToken().Value)
			continue
		}
		p := pointer + "/" + Escape(key.Value)
		if _, twice := out[key.Value]; twice {
			r.fail(key.GetToken().Position, "%q stands here twice", key.Value)
			continue
		}
		r.tree.places[p] = r.text.place(key.GetToken().Position)
		out[key.Value] = r.value(kv.Value, p)
	}
	return out
}

// Escape writes a key as a step of a JSON pointer (RFC 6901).
func Escape(key string) string {
	if !strings.ContainsAny(key, "~/") {
		return key
	}
	return strings.NewReplacer("~", "~0", "/", "~1").Replace(key)
}

// KindOf words what kind of JSON value a decoded one is.
func KindOf(v any) string {
	switch v.(type) {
	case nil:
		return "nothing"
	case string:
		return "text"
	case bool:
		return "true or false"
	case float64, json.Number:
		return "a number"
	case []any:
		return "a list"
	}
	return "a mapping"
}
