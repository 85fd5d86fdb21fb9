package text

import (
	"strings"
	"unicode/utf8"

	"github.com/rivo/uniseg"

	"liftlint/internal/report"
	"liftlint/internal/source"
)

// tabStop is the distance of tab stops in excerpts, in columns.
const tabStop = 4

// cell is what a terminal shows as one character: a letter with its marks.
type cell struct {
	text  string
	width int // columns
}

// layout turns a line into cells and finds those of the range, half open. Only
// reach code points on either side of the range are looked at, so that a line
// of a mebibyte costs no more than another; an ellipsis stands for the rest.
func layout(line string, r source.Range, reach int) (cells []cell, from, to int) {
	start, end := columns(line, r)
	text, skipped := near(line, start, end, reach)
	if skipped > 0 {
		cells = append(cells, cell{ellipsis, len(ellipsis)})
	}
	from, to = -1, -1
	point, column, state := skipped, 0, -1
	for len(text) > 0 {
		var cluster string
		rest := text
		cluster, text, _, state = uniseg.FirstGraphemeClusterInString(text, state)
		next := point + utf8.RuneCountInString(cluster)
		if from < 0 && start < next {
			from = len(cells)
		}
		c := cellOf(cluster, rest, column)
		cells = append(cells, c)
		column += c.width
		if to < 0 && end <= next {
			to = len(cells)
		}
		point = next
	}
	return closed(cells, from, to)
}

// closed gives a range that lies behind the line a place of its own there.
func closed(cells []cell, from, to int) ([]cell, int, int) {
	if from < 0 {
		return append(cells, cell{" ", 1}), len(cells), len(cells) + 1
	}
	if to < 0 {
		to = len(cells)
	}
	return cells, from, max(to, from+1)
}

// columns is the range in code points of its first line, counted from zero.
// A range over several lines ends with the first.
func columns(line string, r source.Range) (start, end int) {
	start, end = max(r.From.Column-1, 0), r.To.Column-1
	if r.To.Line > r.From.Line {
		end = utf8.RuneCountInString(line)
	}
	return start, max(end, start)
}

// near is the part of a line around a range, and how many code points stand
// ahead of it.
func near(line string, start, end, reach int) (string, int) {
	from, to, n := 0, len(line), 0
	skipped := max(start-reach, 0)
	for i := range line {
		if n == skipped {
			from = i
		}
		if n == min(end, start+reach)+reach {
			to = i
			break
		}
		n++
	}
	if n < skipped { // the range lies behind the line
		from, skipped = len(line), n
	}
	text := line[from:to]
	if to < len(line) {
		text += ellipsis
	}
	return text, skipped
}

// cellOf makes a cluster safe to show. rest is the text from it on.
func cellOf(cluster, rest string, column int) cell {
	switch {
	case cluster == "\t":
		n := tabStop - column%tabStop
		return cell{strings.Repeat(" ", n), n}
	case report.LogCommand(rest):
		cluster = report.Escape('#')
	case uniseg.StringWidth(cluster) == 0:
		r, _ := utf8.DecodeRuneInString(cluster)
		cluster = report.Visible(cluster)
		if uniseg.StringWidth(cluster) == 0 { // a mark without its letter
			cluster = report.Escape(r)
		}
	}
	text := report.Visible(cluster)
	return cell{text, uniseg.StringWidth(text)}
}

func widthOf(cells []cell) int {
	n := 0
	for _, c := range cells {
		n += c.width
	}
	return n
}
