package lint

import (
	"errors"
	"slices"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
)

// notRead is found where a table has cells that no field takes.
const notRead = "register/not_read"

// NotRead are the notes of the registers as findings, in the order of the files.
func (r *Registers) NotRead() []finding.Finding {
	var all []finding.Finding
	for _, n := range r.Notes() {
		all = append(all, builtin.Finding(notRead, n.Said(), "file", r.locate(n.Place), nil))
	}
	return all
}

// AddNotRead adds to the results of registers what of their tables was not read.
func (r *Registers) AddNotRead(results []*Result) error {
	for _, f := range r.NotRead() {
		i := slices.IndexFunc(results, func(x *Result) bool { return x.File == f.Place.File })
		if i < 0 || results[i].Gear == nil {
			return errors.New("a note stands in no file of the register: " + f.Message)
		}
		x := results[i]
		x.Findings = finding.Sort(append(x.Findings, f))
		x.Gear.Findings[f.Severity]++
	}
	return nil
}
