package register

import (
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"liftlint/internal/yamldoc"
)

// easilyRead is how large a file is written, in bytes: well under what may be
// read, since reading YAML takes some two hundred times its size in memory.
const easilyRead = 2 << 20

// YAML is the table as files that ReadYAML takes, each as large as is easily
// read. Each is read again and has to say what the table says. An error is a
// fault of the tool.
func (t *Table) YAML() ([][]byte, error) {
	limits := yamldoc.RegisterLimits()
	rr := newRowReader(t.reader.validator, t.binding)
	w := &writer{head: t.head(), mostBytes: min(easilyRead, limits.Bytes), mostNodes: limits.Nodes / 2, mostPointers: limits.Pointers / 2}
	for i := range t.rows[1:] {
		if n := t.node(rr, i); n != nil {
			w.item(n)
		}
	}
	w.close()
	if err := t.sameAs(w.files); err != nil {
		return nil, err
	}
	return w.files, nil
}

func (t *Table) head() string {
	head := "liftlint: 1\nregister:\n  title: " + scalar(t.title) + "\n"
	if t.site != "" {
		head += "  site: " + scalar(t.site) + "\n"
	}
	return t.titleLines() + head + "items:\n"
}

// sameAs reads files again and compares their items with the rows.
func (t *Table) sameAs(files [][]byte) error {
	rr := newRowReader(t.reader.validator, t.binding)
	row := 0
	for i, text := range files {
		name := fmt.Sprintf("file %d", i+1)
		doc, faults := yamldoc.ReadWithin(yamldoc.RegisterLimits(), name, text)
		if len(faults) == 0 {
			faults = t.reader.validator.Register(doc)
		}
		if len(faults) > 0 {
			return fmt.Errorf("register: the table was written as YAML that can't be read: %w", fromFaults(name, faults))
		}
		for _, item := range doc.Root().Get("items").List() {
			n := t.node(rr, row)
			for ; n == nil; n = t.node(rr, row) {
				row++
			}
			if row++; !reflect.DeepEqual(item.Value(), n.Value()) {
				return fmt.Errorf("register: row %d was written as YAML that says something else", row+t.above)
			}
		}
	}
	for ; row < len(t.rows)-1; row++ {
		if t.node(rr, row) != nil {
			return fmt.Errorf("register: row %d was not written", row+2+t.above)
		}
	}
	return nil
}

// writer writes items into files.
type writer struct {
	head                               string
	mostBytes, mostNodes, mostPointers int

	files           [][]byte
	out             strings.Builder
	nodes, pointers int
}

func (w *writer) item(n *yamldoc.Node) {
	text := itemText(n)
	nodes := countNodes(n)
	// The pointer of a value is its item's, /items/ and a number, and its keys.
	pointers := nodes*len("/items/1000000") + len(text)
	full := w.out.Len()+len(text) > w.mostBytes || w.nodes+nodes > w.mostNodes || w.pointers+pointers > w.mostPointers
	if w.out.Len() > 0 && full {
		w.close()
	}
	if w.out.Len() == 0 {
		w.out.WriteString(w.head)
	}
	w.out.WriteString(text)
	w.nodes, w.pointers = w.nodes+nodes, w.pointers+pointers
}

func (w *writer) close() {
	if w.out.Len() == 0 {
		return
	}
	w.files = append(w.files, []byte(w.out.String()))
	w.out.Reset()
	w.nodes, w.pointers = 0, 0
}

func countNodes(n *yamldoc.Node) int {
	count := 1
	for _, e := range n.Entries {
		count += countNodes(e.Value)
	}
	for _, i := range n.Items {
		count += countNodes(i)
	}
	return count
}

// itemText writes an item: a line for each of its keys and for each entry of
// its lists, the number and the kind first.
func itemText(n *yamldoc.Node) string {
	var b strings.Builder
	entries := slices.Clone(n.Entries)
	slices.SortStableFunc(entries, func(a, b yamldoc.Entry) int { return lead(a.Key) - lead(b.Key) })
	lineStart := "  - "
	for _, e := range entries {
		b.WriteString(lineStart + e.Key + ":")
		lineStart = "    "
		if e.Value.Kind != yamldoc.Sequence || len(e.Value.Items) == 0 {
			b.WriteString(" " + flow(e.Value) + "\n")
			continue
		}
		b.WriteString("\n")
		for _, item := range e.Value.Items {
			b.WriteString("      - " + flow(item) + "\n")
		}
	}
	return b.String()
}

func lead(key string) int {
	switch key {
	case "number":
		return 0
	case "kind":
		return 1
	}
	return 2
}

// flow writes a value on one line.
func flow(n *yamldoc.Node) string {
	var parts []string
	switch n.Kind {
	case yamldoc.Mapping:
		for _, e := range n.Entries {
			parts = append(parts, e.Key+": "+flow(e.Value))
		}
		return "{" + strings.Join(parts, ", ") + "}"
	case yamldoc.Sequence:
		for _, i := range n.Items {
			parts = append(parts, flow(i))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case yamldoc.String:
		return scalar(n.Text)
	}
	return n.Text
}

// bare is text that can stand without quotes, in brackets too.
var bare = regexp.MustCompile(`^[A-Za-z0-9][A-Za-z0-9_./-]*(?: [A-Za-z0-9_./%-]+)*$`)

// scalar writes text, in quotes unless every reader takes it for that text
// without.
func scalar(text string) string {
	if len(text) < 60 && bare.MatchString(text) && yamldoc.Plain(text, "", noPlace).Kind == yamldoc.String {
		return text
	}
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range text {
		switch {
		case r == '"' || r == '\\':
			b.WriteString(`\` + string(r))
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\t':
			b.WriteString(`\t`)
		case r == ' ' || unicode.IsGraphic(r) && r < 0x10000:
			b.WriteRune(r)
		case r < 0x10000:
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			fmt.Fprintf(&b, `\U%08x`, r)
		}
	}
	b.WriteByte('"')
	return b.String()
}
