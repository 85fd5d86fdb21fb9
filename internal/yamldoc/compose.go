package yamldoc

import (
	"strconv"
	"strings"

	"liftlint/internal/source"
)

// composer builds the tree from tokens and finds what only the tree shows.
// The scanner has bounded depth and number of nodes, and has given every key
// and dash its value.
type composer struct {
	tokens   []token
	next     int
	faults   *faultList
	root     *Node
	index    map[string]*Node
	pointers int // bytes of all pointers
	limits   Limits
	broken   bool
}

func compose(tokens []token, faults *faultList) *composer {
	return composeWithin(PlanLimits(), tokens, faults)
}

func composeWithin(limits Limits, tokens []token, faults *faultList) *composer {
	c := &composer{tokens: tokens, faults: faults, limits: limits, index: make(map[string]*Node, len(tokens)/2)}
	c.root = c.node("", source.Range{})
	if c.next < len(tokens) && !c.broken {
		c.misfit()
	}
	return c
}

func (c *composer) peek(kind tokenKind) (token, bool) {
	if c.next >= len(c.tokens) || c.tokens[c.next].kind != kind {
		return token{}, false
	}
	return c.tokens[c.next], true
}

// node builds the node that begins at the next token.
func (c *composer) node(pointer string, key source.Range) *Node {
	n := &Node{Pointer: pointer}
	n.Place.Key = key
	if c.pointers += len(pointer); c.pointers > c.limits.Pointers {
		c.fail(TooManyNodes, c.tokens[c.next].at, "keys and nesting together are too large to keep; use shorter keys or split the file")
		return n
	}
	switch t := c.tokens[c.next]; {
	case t.kind == dashToken:
		c.blockList(n, t)
	case t.kind == openToken && t.list:
		c.flowList(n, t)
	case t.kind == openToken:
		c.flowMapping(n, t)
	case t.key:
		c.blockMapping(n, t)
	default:
		c.next++
		c.leaf(n, t)
	}
	c.index[pointer] = n
	return n
}

func (c *composer) fail(id string, at source.Range, format string, args ...any) {
	if !c.broken {
		c.faults.add(id, at, nil, format, args...)
	}
	c.broken = true
}

func (c *composer) leaf(n *Node, t token) {
	n.Text, n.Style, n.Place.Value = t.text, t.style, t.at
	n.Kind = String
	if t.style != PlainStyle && t.style != EmptyStyle {
		return
	}
	r := resolve(t.text)
	n.Kind, n.scalar = r.kind, r.value
	if r.id != "" {
		c.faults.add(r.id, t.at, nil, "%s", r.advice)
	}
}

func (c *composer) blockList(n *Node, first token) {
	n.Kind, n.Style = Sequence, BlockStyle
	n.Place.Value.From = first.at.From
	for !c.broken {
		t, ok := c.peek(dashToken)
		if !ok || t.indent != first.indent {
			return
		}
		c.next++
		n.Place.Value.To = c.item(n).Place.Value.To
	}
}

func (c *composer) item(n *Node) *Node {
	item := c.node(n.Pointer+"/"+strconv.Itoa(len(n.Items)), source.Range{})
	n.Items = append(n.Items, item)
	return item
}

func (c *composer) blockMapping(n *Node, first token) {
	n.Kind, n.Style = Mapping, BlockStyle
	n.Place.Value.From = first.at.From
	seen := keys{faults: c.faults}
	for !c.broken {
		t, ok := c.peek(scalarToken)
		if !ok || !t.key || t.indent != first.indent {
			return
		}
		n.Place.Value.To = c.entry(n, t, &seen).Place.Value.To
	}
}

// entry takes a key, its colon and its value.
func (c *composer) entry(n *Node, t token, seen *keys) *Node {
	seen.check(t)
	c.next += 2
	value := c.node(n.Pointer+"/"+escapePointer(t.text), t.at)
	n.Entries = append(n.Entries, Entry{Key: t.text, KeyRange: t.at, Value: value})
	return value
}

func (c *composer) flowList(n *Node, open token) {
	n.Kind, n.Style = Sequence, FlowStyle
	c.flow(n, open, func(token) { c.item(n) })
}

func (c *composer) flowMapping(n *Node, open token) {
	n.Kind, n.Style = Mapping, FlowStyle
	seen := keys{faults: c.faults}
	c.flow(n, open, func(t token) { c.entry(n, t, &seen) })
}

// flow takes a bracket, its entries and the closing bracket, whose order the
// scanner has checked.
func (c *composer) flow(n *Node, open token, take func(token)) {
	n.Place.Value.From = open.at.From
	c.next++
	for !c.broken {
		switch t := c.tokens[c.next]; t.kind {
		case closeToken:
			n.Place.Value.To = t.at.To
			c.next++
			return
		case commaToken:
			c.next++
		default:
			take(t)
		}
	}
}

// misfit explains a token that belongs to no open collection.
func (c *composer) misfit() {
	t := c.tokens[c.next]
	switch {
	case t.kind == dashToken:
		c.fail(Syntax, t.at, "this list item fits no list above; indent its dash like the other items, or write keys here")
	case t.key:
		c.fail(Syntax, t.at, "the key %s is indented by %d, like no key above that could hold it; indent it like the other keys of its mapping", show(t.text), t.indent-1)
	case t.kind == scalarToken && t.style == PlainStyle:
		c.fail(Syntax, t.at, "%s", noColon(t.text, false))
	default:
		c.fail(Syntax, t.at, "this value belongs to no key; write `key:` before it, or indent it below its key")
	}
}

// keys watches over the keys of one mapping.
type keys struct {
	faults *faultList
	seen   map[string]source.Range
}

func (k *keys) check(t token) {
	if t.style == PlainStyle && t.text == "<<" {
		k.faults.add(MergeKey, t.at, nil, "the merge key `<<` is not read; write the keys out where they belong")
		return
	}
	k.checkText(t)
	first, again := k.seen[t.text]
	if again {
		k.faults.add(DuplicateKey, t.at, []Related{{Range: first, Caption: "first written here"}},
			"the key %s is written twice in one mapping, first on line %d; keep one", show(t.text), first.From.Line)
		return
	}
	if k.seen == nil {
		k.seen = make(map[string]source.Range, 8)
	}
	k.seen[t.text] = t.at
}

// checkText refuses a key that is read as something else than text. Words
// like `y` and `on` pass: they name things here, and readers that take them
// for true or false do so for keys of every file alike.
func (k *keys) checkText(t token) {
	if t.style != PlainStyle || legacyBool(t.text) {
		return
	}
	if r := resolve(t.text); r.kind != String {
		k.faults.add(KeyNotString, t.at, nil, "a key must be text, and %s is read as %s; put it in quotes if it is meant as a key", show(t.text), r.kind)
	}
}

// escapePointer escapes one step of a JSON pointer (RFC 6901, 3).
func escapePointer(key string) string {
	if !strings.ContainsAny(key, "~/") {
		return key
	}
	return strings.NewReplacer("~", "~0", "/", "~1").Replace(key)
}
