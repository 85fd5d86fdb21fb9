package finding

import "fmt"

// Severity says what a finding asks for. The values are SARIF's levels.
type Severity string

// The severities, worst first.
const (
	Error   Severity = "error"   // the lift is not to go ahead like this
	Warning Severity = "warning" // a person has to look and decide
	Note    Severity = "note"    // worth knowing
)

// Severities lists them, worst first.
func Severities() []Severity { return []Severity{Error, Warning, Note} }

// Rank orders severities: the higher, the worse. An unknown one ranks above
// all, so that a mistake is never read as harmless.
func (s Severity) Rank() int {
	switch s {
	case Note:
		return 1
	case Warning:
		return 2
	case Error:
		return 3
	}
	return 4
}

// AtLeast reports whether s is as bad as t or worse.
func (s Severity) AtLeast(t Severity) bool { return s.Rank() >= t.Rank() }

// ParseSeverity reads a severity as written in options and rule files.
func ParseSeverity(text string) (Severity, error) {
	for _, s := range Severities() {
		if text == string(s) {
			return s, nil
		}
	}
	return "", fmt.Errorf("%q is no severity: write error, warning or note", text)
}
