package text

import (
	"strings"
	"unicode/utf8"

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
	point, column := skipped, 0
	for len(text) > 0 {
		c, size := cellOf(text, column)
		next := point + utf8.RuneCountInString(text[:size])
		if from < 0 && start < next {
			from = len(cells)
		}
		cells = append(cells, c)
		if to < 0 && end <= next {
			to = len(cells)
		}
		text, point, column = text[size:], next, column+c.width
	}
	return unindented(closed(cells, from, to))
}

// unindented drops the blanks ahead of a line's text, as far as the range.
func unindented(cells []cell, from, to int) ([]cell, int, int) {
	n := 0
	for n < from && strings.TrimLeft(cells[n].text, " ") == "" {
		n++
	}
	return cells[n:], from - n, to - n
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
	length := utf8.RuneCountInString(line)
	start, end = min(max(r.From.Column-1, 0), length), min(r.To.Column-1, length)
	if r.To.Line > r.From.Line {
		end = length
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
	text := line[from:to]
	if to < len(line) {
		text += ellipsis
	}
	return text, skipped
}

// cellOf takes the first cell off a text and makes it safe to show. size is
// the number of bytes taken.
func cellOf(text string, column int) (c cell, size int) {
	r, size := utf8.DecodeRuneInString(text)
	switch {
	case r == '\t':
		n := tabStop - column%tabStop
		return cell{strings.Repeat(" ", n), n}, size
	case r == utf8.RuneError && size == 1, report.Hidden(r):
		return spelled(report.Visible(text[:size])), size
	case report.RuneWidth(r) == 0, report.LogCommand(text): // a mark without its letter
		return spelled(report.Escape(r)), size
	}
	for size < len(text) {
		mark, n := utf8.DecodeRuneInString(text[size:])
		if report.Hidden(mark) || report.RuneWidth(mark) > 0 {
			break
		}
		size += n
	}
	return cell{text[:size], report.RuneWidth(r)}, size
}

func spelled(text string) cell { return cell{text, len(text)} }

func widthOf(cells []cell) int {
	n := 0
	for _, c := range cells {
		n += c.width
	}
	return n
}
