package report

import (
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Named is a message with what it is of ahead, where it stands in a register, away from
// the plan that it was found in.
func Named(r *lint.Result, f finding.Finding, message string) string {
	if of := r.Elsewhere(f); of != "" {
		return of + ": " + message
	}
	return message
}
