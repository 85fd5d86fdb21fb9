package plangen

import (
	"math/rand/v2"
	"strings"
)

// style is how a plan is written down: people indent, break, quote and remark
// in their own ways, and none of that changes what a plan says.
type style struct {
	r         *rand.Rand
	step      int     // spaces of one level
	listIn    bool    // lists are indented below their key
	flow      float64 // share of small values that stand on one line
	wrap      bool    // long lines of flow are broken
	pad       bool    // spaces inside braces
	quotes    float64 // share of texts in quotes
	remarks   float64 // share of lines with a remark
	crlf      bool
	noNewline bool // the last line is not ended
}

func newStyle(r *rand.Rand) *style {
	pick := func(p float64) bool { return r.Float64() < p }
	s := &style{r: r, step: 2, listIn: pick(0.8), flow: []float64{0, 0.5, 0.9, 1}[r.IntN(4)]}
	if pick(0.2) {
		s.step = 4
	}
	s.wrap, s.pad, s.crlf, s.noNewline = pick(0.15), pick(0.1), pick(0.05), pick(0.05)
	if pick(0.3) {
		s.quotes = r.Float64()
	}
	if pick(0.5) {
		s.remarks = 0.1
	}
	return s
}

// page is a text in the making; it notes the line of one entry.
type page struct {
	style
	strings.Builder
	lines int // line breaks so far
	mark  *entry
	line  int // of the mark, from 1; 0 where it is not written
}

// write gives the text of the tree, without line ends changed, and the line at
// which the mark's key or value begins.
func (s *style) write(root, mark *entry) (string, int) {
	p := &page{style: *s, mark: mark}
	p.put("# Saltmarsh Quay water works, an invented site.\n")
	p.fields(root, 0)
	return p.String(), p.line
}

func (p *page) put(text string) {
	p.lines += strings.Count(text, "\n")
	p.WriteString(text)
}

func (p *page) noting(e *entry) {
	if e == p.mark {
		p.line = p.lines + 1
	}
}

func (p *page) indent(n int) { p.put(strings.Repeat(" ", n)) }

// fields writes the fields of a block mapping, each from its own line.
func (p *page) fields(e *entry, in int) {
	for _, f := range e.below {
		if in == 0 {
			p.put("\n")
		}
		p.remark(in)
		p.indent(in)
		p.field(f, in)
	}
}

// field writes a key and its value and ends the line.
func (p *page) field(f *entry, in int) {
	p.noting(f)
	p.put(f.key + ":")
	switch {
	case p.short(f):
		p.put(" ")
		p.oneLine(f, in)
		p.endLine()
	case f.form == mapping:
		p.endLine()
		p.fields(f, in+p.step)
	default:
		p.endLine()
		if p.listIn {
			in += p.step
		}
		p.items(f, in)
	}
}

func (p *page) items(e *entry, in int) {
	for _, item := range e.below {
		p.remark(in)
		p.indent(in)
		p.noting(item)
		p.put("- ")
		if p.short(item) || item.form != mapping {
			p.oneLine(item, in)
			p.endLine()
			continue
		}
		for i, f := range item.below {
			if i > 0 {
				p.indent(in + 2)
			}
			p.field(f, in+2)
		}
	}
}

// short decides whether a value stands on one line. What is deep never does.
func (p *page) short(e *entry) bool {
	switch h := e.height(); {
	case h == 0:
		return true
	case h == 1:
		return p.r.Float64() < p.flow
	case h == 2:
		return p.r.Float64() < p.flow*p.flow
	}
	return false
}

func (p *page) oneLine(e *entry, in int) {
	if e.form == scalar {
		p.noting(e)
		p.put(p.scalar(e))
		return
	}
	open, end, space := "{", "}", ""
	if e.form == list {
		open, end = "[", "]"
	}
	if p.pad && len(e.below) > 0 {
		space = " "
	}
	p.put(open + space)
	for i, b := range e.below {
		if i > 0 {
			p.comma(in)
		}
		p.noting(b)
		if e.form == mapping {
			p.put(b.key + ": ")
		}
		if b.form == scalar && strings.Contains(b.text, ",") {
			p.put(`"` + b.text + `"`) // within braces a comma ends the value
			continue
		}
		p.oneLine(b, in)
	}
	p.put(space + end)
}

func (p *page) comma(in int) {
	if p.wrap && p.r.Float64() < 0.3 {
		p.put(",\n")
		p.indent(in + p.step + 4)
		return
	}
	p.put(", ")
}

func (p *page) scalar(e *entry) string {
	switch {
	case e.bare:
		return e.text
	case !e.quoted && p.r.Float64() >= p.quotes:
		return e.text
	case p.r.Float64() < 0.5:
		return "'" + e.text + "'"
	}
	return `"` + e.text + `"`
}

func (p *page) remark(in int) {
	if p.r.Float64() < p.remarks/2 {
		p.indent(in)
		p.put("# " + p.words() + "\n")
	}
}

func (p *page) endLine() {
	if p.r.Float64() < p.remarks {
		p.put("  # " + p.words())
	}
	p.put("\n")
}

func (p *page) words() string {
	w := []string{"as drawn", "measured on site", "see the data sheet", "to be walked down before the lift", "length: by tape", "- rigging loft", "{checked}", "Ø 20 as drawn"}
	return w[p.r.IntN(len(w))]
}

// finish sets the line ends.
func (s *style) finish(text string) string {
	if s.noNewline {
		text = strings.TrimSuffix(text, "\n")
	}
	if s.crlf {
		text = strings.ReplaceAll(text, "\n", "\r\n")
	}
	return text
}
