package yamldoc

import (
	"maps"
	"slices"

	"liftlint/internal/source"
)

func sortedKeys(m map[string]any) []string { return slices.Sorted(maps.Keys(m)) }

func rangeOf(fromLine, fromColumn, toLine, toColumn int) source.Range {
	return source.Range{
		From: source.Position{Line: fromLine, Column: fromColumn},
		To:   source.Position{Line: toLine, Column: toColumn},
	}
}
