// Package nearest finds the known name that a misspelt one was meant to be.
package nearest

import (
	"fmt"
	"strings"

	"github.com/agnivade/levenshtein"
)

// Name returns the known name nearest to name, and false when none is near
// enough to be what was meant. Of equally near ones the first wins.
func Name(name string, known []string) (string, bool) {
	best, distance := "", 1+max(1, len([]rune(name))/3)
	for _, k := range known {
		if d := levenshtein.ComputeDistance(strings.ToLower(name), strings.ToLower(k)); d < distance {
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
