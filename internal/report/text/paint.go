package text

import "liftlint/internal/finding"

// paint colors words where it is true. Color never says what words do not.
type paint bool

func (p paint) with(code, words string) string {
	if !p {
		return words
	}
	return "\x1b[" + code + "m" + words + "\x1b[0m"
}

func (p paint) strong(words string) string { return p.with("1", words) }

func (p paint) mark(words string) string { return p.with("1", words) }

func (p paint) severity(s finding.Severity, words string) string {
	switch s {
	case finding.Note:
		return p.with("36", words)
	case finding.Warning:
		return p.with("33", words)
	}
	return p.with("1;31", words)
}
