package facts

import (
	"reflect"
	"slices"

	"liftlint/internal/record"
)

// Facts is the document that rules see, with what people need besides: which
// inputs of the plan a missing figure waits for, and which other places had a
// part in a record.
type Facts struct {
	Document Document
	Gaps     Gaps
	Related  map[string][]Related // by a record's key
}

// Schema is the JSON Schema of the document, made from its types. The
// published schema/facts.schema.json is this, word for word.
func Schema() map[string]any {
	return record.Schema(reflect.TypeFor[Document](), "liftlint facts",
		"What rules see of one lift plan: SI numbers with the unit in each name; what is not known is absent.")
}

// Related is another place that had a part in a record's figures.
type Related struct {
	At      string // URI fragment of the place
	Caption string // what stands there
	Field   string // the part of the record that it concerns; empty for all of it
}

// Input is something that the plan could say and does not.
type Input struct {
	At    string // URI fragment of the nearest place that exists
	Field string // what would be written there, as in eyes.upper.length
	Label string // the same in words, as in "S1's upper eye length"
}

// Gaps tells, for a record's key and the dotted path of an absent field, why
// it is absent.
type Gaps map[GapKey]Gap

// GapKey names an absent field of a record.
type GapKey struct{ Key, Field string }

// Gap says what an absent field waits for: inputs that the plan could give, or
// another state of things, in words.
type Gap struct {
	Inputs  []Input
	Reasons []Reason
}

// Reason says why a field is absent where no input would bring it.
type Reason struct {
	Text string
	// ToldOf is what another finding is about that says so already: the id of a part,
	// a leg or an attachment, or TheLift. Empty where none does. Where it turns out
	// that none was found, the reason becomes a finding.
	ToldOf string
}

// TheLift stands in ToldOf for the lift as a whole, as that the load turns over.
const TheLift = "lift"

// Add notes that a field of the record waits for the inputs.
func (g Gaps) Add(key, field string, inputs ...Input) {
	gap := g[GapKey{key, field}]
	for _, in := range inputs {
		if !slices.Contains(gap.Inputs, in) {
			gap.Inputs = append(gap.Inputs, in)
		}
	}
	g.set(key, field, gap)
}

// Explain notes reasons why a field is absent.
func (g Gaps) Explain(key, field string, reasons ...Reason) {
	gap := g[GapKey{key, field}]
	for _, r := range reasons {
		if !slices.Contains(gap.Reasons, r) {
			gap.Reasons = append(gap.Reasons, r)
		}
	}
	g.set(key, field, gap)
}

// CopyTo adds all that one field waits for to another, of any record.
func (g Gaps) CopyTo(fromKey, from, toKey, to string) {
	gap := g[GapKey{fromKey, from}]
	g.Add(toKey, to, gap.Inputs...)
	g.Explain(toKey, to, gap.Reasons...)
}

func (g Gaps) set(key, field string, gap Gap) {
	if len(gap.Inputs)+len(gap.Reasons) > 0 {
		g[GapKey{key, field}] = gap
	}
}
