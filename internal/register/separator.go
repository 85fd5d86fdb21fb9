package register

import "strings"

// separators are the characters that may stand between cells, by their names.
var separators = []struct {
	name string
	char byte
}{{"comma", ','}, {"semicolon", ';'}, {"tab", '\t'}}

// looked is how many rows the separator is told from.
const looked = 50

// separatorLine reads the line by which some spreadsheets are told the
// separator, `sep=;`, and gives the text below it.
func separatorLine(text string) (separator byte, rest string, ok bool) {
	line, rest, _ := strings.Cut(text, "\n")
	line = strings.Trim(line, "\r\"")
	if after, found := strings.CutPrefix(line, "sep="); found && len(after) == 1 {
		return after[0], rest, true
	}
	return 0, text, false
}

// tellSeparator finds what stands between the cells: what gives the rows from the
// heads on, which so many stand above, the most even number of cells, at least two,
// or the most of the heads that are looked for. A table of one column has none, and reads as with a comma.
// It fails where two fit equally well.
func tellSeparator(text string, skip int, heads map[string]bool) (separator byte, ok bool) {
	best, tie := [3]int{}, false
	separator = ','
	for _, s := range separators {
		rows := cut(text, s.char, skip+looked).rows
		if skip < len(rows) { // that there are fewer is told later
			rows = rows[skip:]
		}
		score := scoreOf(rows, heads)
		switch {
		case score == [3]int{}:
		case score == best:
			tie = true
		case better(score, best):
			separator, best, tie = s.char, score, false
		}
	}
	return separator, !tie
}

// scoreOf is how well rows look like a table: heads found, percent of rows that
// have as many cells as the heads, cells. Zero: only one column.
func scoreOf(rows [][]string, heads map[string]bool) [3]int {
	if len(rows) == 0 || len(rows[0]) < 2 {
		return [3]int{}
	}
	var s [3]int
	for _, h := range rows[0] {
		if heads[strings.TrimSpace(h)] {
			s[0]++
		}
	}
	even := 0
	for _, r := range rows {
		if len(r) == len(rows[0]) || empty(r) {
			even++
		}
	}
	s[1], s[2] = even*100/len(rows), len(rows[0])
	return s
}

func better(a, b [3]int) bool {
	for i := range a {
		if a[i] != b[i] {
			return a[i] > b[i]
		}
	}
	return false
}

// empty reports whether all cells of a row are blank.
func empty(row []string) bool {
	for _, c := range row {
		if strings.TrimSpace(c) != "" {
			return false
		}
	}
	return true
}

func separatorNamed(name string) byte {
	for _, s := range separators {
		if s.name == name {
			return s.char
		}
	}
	return 0
}
