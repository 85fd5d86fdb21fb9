// Package nearest finds the known name that a misspelt one was meant to be.
package nearest

import (
	"fmt"
	"strings"
)

// Name returns the known name nearest to name, and false when none is near
// enough to be what was meant. Of equally near ones the first wins.
func Name(name string, known []string) (string, bool) {
	best, distance := "", 1+max(1, len([]rune(name))/3)
	for _, k := range known {
		if d := edits(strings.ToLower(name), strings.ToLower(k)); d < distance {
			best, distance = k, d
		}
	}
	return best, best != ""
}

// Hint completes a sentence about an unknown name: it offers the nearest known
// name, or lists those there are.
func Hint(name string, known []string) string {
	if k, ok := Name(name, known); ok {
		return fmt.Sprintf(": did you mean %q?", k)
	}
	if len(known) == 0 {
		return ""
	}
	return ": there is " + strings.Join(known, ", ")
}

// edits is the least number of letters put in, left out, changed, or swapped
// with their neighbor that turns a into b, no letter being touched twice
// (optimal string alignment distance).
func edits(a, b string) int {
	x, y := []rune(a), []rune(b)
	var before []int // the row before the last one
	last := make([]int, len(y)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(x); i++ {
		row := make([]int, len(y)+1)
		row[0] = i
		for j := 1; j <= len(y); j++ {
			row[j] = min(last[j], row[j-1]) + 1
			if x[i-1] == y[j-1] {
				row[j] = min(row[j], last[j-1])
			} else {
				row[j] = min(row[j], last[j-1]+1)
			}
			if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last = last, row
	}
	return last[len(y)]
}
