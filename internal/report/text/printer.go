package text

import (
	"strings"

	"liftlint/internal/report"
)

// style is an ANSI sequence; plain has none.
type style string

const (
	plain  style = ""
	bold   style = "\x1b[1m"
	red    style = "\x1b[1;31m"
	yellow style = "\x1b[1;33m"
	cyan   style = "\x1b[36m"
	reset        = "\x1b[0m"
)

// segment is a piece of a line in one style.
type segment struct {
	style style
	text  string
}

// printer gathers lines. All that is printed goes through emit, so that no
// character of a plan or a file name can act on the terminal.
type printer struct {
	out   strings.Builder
	color bool
	width int
	all   bool // rules that were met and that do not apply are named
}

func newPrinter(o Options) *printer {
	width := o.Width
	if width == 0 {
		width = defaultWidth
	}
	return &printer{color: o.Color, width: max(width, leastWidth), all: o.ListChecks}
}

// emit prints one line.
func (p *printer) emit(parts ...segment) {
	start := true
	for i, s := range parts {
		text := report.Visible(s.text)
		if start && strings.HasPrefix(strings.TrimLeft(text, " "), "::") {
			text = strings.Replace(text, ":", report.Escape(':'), 1) // no command for a build service
		}
		if i == len(parts)-1 {
			text = strings.TrimRight(text, " ")
		}
		start = start && strings.TrimLeft(text, " ") == ""
		if p.color && s.style != plain && text != "" {
			text = string(s.style) + text + reset
		}
		p.out.WriteString(text)
	}
	p.out.WriteByte('\n')
}

func (p *printer) blank() { p.out.WriteByte('\n') }

// item prints a label and a text, wrapped with the later lines set in.
func (p *printer) item(indent, label string, s style, text string) {
	p.hanging(indent, label, s, text, indent+"  ")
}

// hanging prints a label and a text, later lines behind the indent given.
func (p *printer) hanging(indent, label string, s style, text, rest string) {
	label = report.Visible(label)
	lines := wrap(report.Visible(text), p.width-width(indent+label), p.width-width(rest))
	p.emit(segment{plain, indent}, segment{s, label}, segment{plain, lines[0]})
	for _, line := range lines[1:] {
		p.emit(segment{plain, rest}, segment{plain, line})
	}
}

// wrap breaks a text at its blanks. A word that is too long stays whole, so
// that places and keys can be copied. There is always one line.
func wrap(text string, first, rest int) []string {
	var lines []string
	line, room := "", first
	for _, word := range strings.Fields(text) {
		switch {
		case line == "":
			line = word
		case width(line)+1+width(word) <= room:
			line += " " + word
		default:
			lines, line, room = append(lines, line), word, rest
		}
	}
	return append(lines, line)
}

func width(text string) int { return report.Width(text) }
