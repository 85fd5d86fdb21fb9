package yamldoc

import (
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"liftlint/internal/source"
)

func sortedKeys(m map[string]any) []string { return slices.Sorted(maps.Keys(m)) }

func rangeOf(fromLine, fromColumn, toLine, toColumn int) source.Range {
	return source.Range{
		From: source.Position{Line: fromLine, Column: fromColumn},
		To:   source.Position{Line: toLine, Column: toColumn},
	}
}

// checkMuch runs a property many times as often as rapid does by itself,
// with a new seed each time.
func checkMuch(t *testing.T, times int, property func(*rapid.T)) {
	t.Helper()
	for i := 0; i < times && !t.Failed(); i++ {
		rapid.Check(t, property)
	}
}
