package validate

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"

	"liftlint/internal/yamldoc"
	"liftlint/schema"
)

// planPath is the schema of the whole document.
const planPath = "plan/plan.schema.json"

// mostFaults is how many faults are listed of one file.
const mostFaults = 100

// Validator holds the compiled schemas. It is safe for concurrent use.
type Validator struct {
	schemas *schemas
	kinds   map[string][]string // names of the kinds by folder
}

// New compiles the schema of the whole document; those of the kinds follow
// when they are first needed. An error is a fault of the program.
func New() (*Validator, error) { return newValidator(schema.Files) }

func newValidator(files fs.FS) (*Validator, error) {
	v := &Validator{schemas: newSchemas(files), kinds: map[string][]string{}}
	for _, d := range dispatches {
		names, err := kindsIn(files, d.folder)
		if err != nil {
			return nil, err
		}
		v.kinds[d.folder] = names
	}
	if _, err := v.schemas.get(planPath); err != nil {
		return nil, fmt.Errorf("validate: %w", err)
	}
	return v, nil
}

// Plan returns what is wrong with the form of a plan, sorted by place, each
// fault once; none if it is valid. References between its parts are not looked
// at. Of a file written for another version of the format only that is said.
func (v *Validator) Plan(doc *yamldoc.Document) []yamldoc.Fault {
	x := &explainer{root: doc.Root(), what: "plan", line: doc.Line}
	x.check(v.schemas, planPath, doc.Root())
	for _, d := range dispatches {
		for _, n := range d.find(doc.Root()) {
			if kind := n.Get("kind"); v.known(d.folder, kind) {
				x.check(v.schemas, kindPath(d.folder, kind.Text), n)
			}
		}
	}
	return x.tidied()
}

// tidied sorts the faults by place and takes out repetitions: the id of an object
// with a kind is seen by two schemas.
func (x *explainer) tidied() []yamldoc.Fault {
	faults := x.faults
	slices.SortFunc(faults, func(a, b yamldoc.Fault) int {
		p, q := a.Range.From, b.Range.From
		return cmp.Or(cmp.Compare(p.Line, q.Line), cmp.Compare(p.Column, q.Column),
			cmp.Compare(a.ID, b.ID), cmp.Compare(a.Message, b.Message))
	})
	faults = slices.CompactFunc(faults, func(a, b yamldoc.Fault) bool {
		return a.ID == b.ID && a.Message == b.Message && a.Range == b.Range
	})
	if i := slices.IndexFunc(faults, func(f yamldoc.Fault) bool { return f.ID == Version }); i >= 0 {
		return faults[i : i+1]
	}
	return x.limited(faults)
}

func (x *explainer) limited(faults []yamldoc.Fault) []yamldoc.Fault {
	if len(faults) <= mostFaults {
		return faults
	}
	last := yamldoc.Fault{
		ID:      yamldoc.TooManyFaults,
		Message: fmt.Sprintf("the %s has %d faults, of which the first %d are listed; correct these first", x.what, len(faults), mostFaults),
		Range:   faults[mostFaults].Range,
	}
	return append(faults[:mostFaults:mostFaults], last)
}
