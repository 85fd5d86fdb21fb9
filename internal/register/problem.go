package register

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// The stable identifiers of what can be wrong with a register, besides those of
// package validate under register/.
const (
	TooLarge         = "register/too_large"
	TooMany          = "register/too_many_faults"
	DuplicateNumber  = "register/duplicate_number"
	DuplicateSerial  = "register/duplicate_serial"
	UnknownReference = "register/unknown_reference"
	WrongMember      = "register/wrong_member"
	Unreadable       = "register/unreadable"

	Encoding   = "register/encoding"
	Separator  = "register/separator"
	Quotes     = "register/quotes"
	Ragged     = "register/ragged_row"
	Heads      = "register/heads"
	NoUnit     = "register/no_unit"
	BadNumber  = "register/bad_number"
	BadValue   = "register/bad_value"
	BadColumns = "register/columns"
)

// mostProblems is how many are listed of one file.
const mostProblems = 100

// Problem is one reason why a register can't be read.
type Problem struct {
	ID      string
	Message string
	Place   Place
	Other   *Place // where the first of two stands
}

// String gives the problem on one line, with the head of its column.
func (p Problem) String() string {
	text := p.Place.Where() + ": " + p.Said()
	if p.Other != nil {
		text += " (the first: " + p.Other.Where() + ")"
	}
	return text
}

// Said is the message, with the head of its column.
func (p Problem) Said() string {
	if p.Place.Head == "" {
		return p.Message
	}
	return "column " + quote(p.Place.Head) + ": " + p.Message
}

// Problems are all that was found, in the order of their places.
type Problems []Problem

// Error lists the problems, one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// sorted puts problems in order and cuts a long list short; total is how many
// there were.
func sorted(ps Problems, total int) Problems {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		p, q := a.Place, b.Place
		return cmp.Or(cmp.Compare(p.File, q.File), cmp.Compare(p.Row, q.Row), cmp.Compare(p.Column, q.Column),
			cmp.Compare(p.Range.From.Line, q.Range.From.Line), cmp.Compare(p.Range.From.Column, q.Range.From.Column), cmp.Compare(a.Message, b.Message))
	})
	if total = max(total, len(ps)); total <= mostProblems {
		return ps
	}
	last := Problem{
		ID:      TooMany,
		Message: fmt.Sprintf("there are %d faults, of which the first %d are listed; correct these first", total, mostProblems),
		Place:   Place{File: ps[mostProblems-1].Place.File},
	}
	return append(ps[:mostProblems:mostProblems], last)
}

// fromFaults are the faults of a YAML file as problems.
func fromFaults(file string, faults []yamldoc.Fault) Problems {
	var ps Problems
	for _, f := range faults {
		p := Problem{ID: f.ID, Message: f.Message, Place: Place{File: file, Range: f.Range}}
		if len(f.Related) > 0 {
			p.Other = &Place{File: file, Range: f.Related[0].Range}
		}
		ps = append(ps, p)
	}
	return ps
}

// ProblemIDs lists, sorted, every identifier that a problem can carry.
func ProblemIDs() []string {
	ids := []string{
		TooLarge, TooMany, DuplicateNumber, DuplicateSerial, UnknownReference, Unreadable,
		Encoding, Separator, Quotes, Ragged, Heads, NoUnit, BadNumber, BadValue, BadColumns,
	}
	for _, id := range validate.FaultIDs() {
		ids = append(ids, "register/"+strings.TrimPrefix(id, "plan/"))
	}
	ids = append(ids, yamldoc.FaultIDs()...)
	slices.Sort(ids)
	return slices.Compact(ids)
}
