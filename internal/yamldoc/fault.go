package yamldoc

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/source"
)

// The stable identifiers of what can be wrong with a file as YAML.
const (
	Syntax          = "yaml/syntax"
	Empty           = "yaml/empty"
	TooLarge        = "yaml/too_large"
	TooDeep         = "yaml/too_deep"
	TooManyKeys     = "yaml/too_many_keys"
	TooManyNodes    = "yaml/too_many_nodes"
	TooManyFaults   = "yaml/too_many_faults"
	ScalarTooLong   = "yaml/scalar_too_long"
	Alias           = "yaml/alias"
	MergeKey        = "yaml/merge_key"
	Tag             = "yaml/tag"
	DuplicateKey    = "yaml/duplicate_key"
	KeyNotString    = "yaml/key_not_string"
	SeveralDocs     = "yaml/several_documents"
	AmbiguousScalar = "yaml/ambiguous_scalar"
	NotFinite       = "yaml/not_finite"
	Encoding        = "yaml/encoding"
	TabIndent       = "yaml/tab_indent"
)

// FaultIDs lists every identifier a Fault can carry, sorted.
func FaultIDs() []string {
	ids := []string{
		Syntax, Empty, TooLarge, TooDeep, TooManyKeys, TooManyNodes, TooManyFaults,
		ScalarTooLong, Alias, MergeKey, Tag, DuplicateKey, KeyNotString, SeveralDocs,
		AmbiguousScalar, NotFinite, Encoding, TabIndent,
	}
	slices.Sort(ids)
	return ids
}

// Fault is one reason why a file cannot be read. Message says what is wrong
// and what to write instead, in one line.
type Fault struct {
	ID      string
	Message string
	Range   source.Range
	Related []Related
}

// Related is another range that a fault speaks of.
type Related struct {
	Range   source.Range
	Caption string
}

// faultList gathers faults. Reading goes on after a fault as long as the
// text that follows still has a certain meaning.
type faultList struct {
	all  []Fault
	full bool
}

func (l *faultList) add(id string, at source.Range, related []Related, format string, args ...any) {
	if l.full {
		return
	}
	if len(l.all) == maxFaults {
		l.full = true
		id, related = TooManyFaults, nil
		format, args = "more than %d faults: the rest is not listed; correct these first", []any{maxFaults}
	}
	l.all = append(l.all, Fault{ID: id, Message: fmt.Sprintf(format, args...), Range: at, Related: related})
}

// sorted gives the faults in the order of the text, each once.
func (l *faultList) sorted() []Fault {
	slices.SortStableFunc(l.all, func(a, b Fault) int {
		return cmp.Or(comparePositions(a.Range.From, b.Range.From), cmp.Compare(a.ID, b.ID),
			cmp.Compare(a.Message, b.Message))
	})
	return slices.CompactFunc(l.all, func(a, b Fault) bool {
		return a.ID == b.ID && a.Message == b.Message && a.Range == b.Range
	})
}

func comparePositions(a, b source.Position) int {
	return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column))
}

// show quotes a piece of the text for a message, shortened to one short line.
func show(s string) string {
	const most = 40
	s, _, cut := strings.Cut(s, "\n")
	if r := []rune(s); len(r) > most {
		s, cut = string(r[:most]), true
	}
	if cut {
		s += "..."
	}
	return "`" + s + "`"
}
