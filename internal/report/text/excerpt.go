package text

import (
	"fmt"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/source"
)

const ellipsis = "..."

// excerpt prints the first line of a place with its number, and carets below.
// A place whose text is not at hand has none.
func (p *printer) excerpt(r *lint.Result, at source.Location, s style, carets bool) {
	if at.Range.IsZero() || at.File != r.File {
		return
	}
	line := r.Line(at.Range.From.Line)
	if strings.TrimSpace(line) == "" {
		return
	}
	gutter := fmt.Sprintf("  line %d  ", at.Range.From.Line)
	text, before, marked := cut(line, at.Range, p.width-width(gutter))
	p.emit(segment{plain, gutter}, segment{plain, text})
	if carets {
		p.emit(segment{plain, strings.Repeat(" ", width(gutter)+before)}, segment{s, strings.Repeat("^", marked)})
	}
}

// cut lays out a line within the room given, cutting it around the range. It
// returns the columns before the carets and their number.
func cut(line string, r source.Range, room int) (text string, before, marked int) {
	cells, from, to := layout(line, r, 2*room)
	lo, hi := window(cells, from, to, room)
	var b strings.Builder
	if lo.cut {
		b.WriteString(ellipsis)
		before = len(ellipsis)
	}
	for i := lo.at; i < hi.at; i++ {
		b.WriteString(cells[i].text)
		switch {
		case i < from:
			before += cells[i].width
		case i < to:
			marked += cells[i].width
		}
	}
	if hi.cut {
		b.WriteString(ellipsis)
	}
	return b.String(), before, max(marked, 1)
}

// edge is an end of a window: the cell it stands at, and whether text is cut.
type edge struct {
	at  int
	cut bool
}

// window chooses the cells that are shown: the start of the range, as much of
// the range as fits, then what stands on both sides.
func window(cells []cell, from, to, room int) (lo, hi edge) {
	room -= 2 * len(ellipsis)
	l, h := from, from
	grow := func(right bool, limit int) {
		for {
			i := l - 1
			if right {
				i = h
			}
			if i < 0 || i >= limit || cells[i].width > room {
				return
			}
			room -= cells[i].width
			if right {
				h++
			} else {
				l--
			}
		}
	}
	grow(true, to)
	rest := room
	room = rest / 2
	grow(false, len(cells))
	room += rest - rest/2
	grow(true, len(cells))
	grow(false, len(cells))
	return shown(cells, l, h, room)
}

// shown takes in the ends of a line that need no more room than an ellipsis.
func shown(cells []cell, l, h, room int) (lo, hi edge) {
	if w := widthOf(cells[:l]); w <= len(ellipsis) {
		l = 0
	}
	if w := widthOf(cells[h:]); w <= len(ellipsis) {
		h = len(cells)
	}
	return edge{l, l > 0}, edge{h, h < len(cells)}
}
