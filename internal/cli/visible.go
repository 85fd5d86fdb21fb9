package cli

import (
	"strings"

	"liftlint/internal/report"
)

// visible spells out what would act on a terminal.
func visible(text string) string { return report.Visible(text) }

// visibleLines does so for a text of several lines.
func visibleLines(text string) string {
	lines := strings.Split(strings.ReplaceAll(text, "\t", "  "), "\n")
	for i, l := range lines {
		lines[i] = report.Visible(l)
	}
	return strings.Join(lines, "\n")
}
