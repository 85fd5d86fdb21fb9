package finding

import "strings"

// Basis says how far a citation can be relied on.
type Basis string

// The bases.
const (
	Read     Basis = "read"     // the text named was seen
	Memory   Basis = "memory"   // from memory: confirm before relying on it
	Practice Basis = "practice" // common practice of the trade, no source
	Company  Basis = "company"  // a company's own rule
	Format   Basis = "format"   // liftlint's own, about the file itself
)

// Bases lists them, the firmest first.
func Bases() []Basis { return []Basis{Read, Memory, Practice, Company, Format} }

// Citation names the authority behind a rule.
type Citation struct {
	Document string `json:"document"`
	Edition  string `json:"edition,omitempty"`
	Clause   string `json:"clause,omitempty"`
	Basis    Basis  `json:"basis"`
}

// String gives document, edition and clause, then how far to rely on them.
func (c Citation) String() string {
	parts := []string{c.Document}
	for _, p := range []string{c.Edition, c.Clause} {
		if p != "" {
			parts = append(parts, p)
		}
	}
	words := strings.Join(parts, ", ")
	if c.Basis == Practice {
		return words + " (no published source)"
	}
	return words + " (" + c.Basis.Words() + ")"
}

// Words spells a basis out for people.
func (b Basis) Words() string {
	switch b {
	case Read:
		return "text read"
	case Memory:
		return "from memory: confirm before relying on it"
	case Practice:
		return "common practice, no published source"
	case Company:
		return "company rule"
	case Format:
		return "liftlint's own rule for its files"
	}
	return "basis unknown"
}
