package facts

// Facts is the document that rules see, with what people need besides: which
// inputs of the plan a missing figure waits for, and which other places had a
// part in a record.
type Facts struct {
	Document Document
	Gaps     Gaps
	Related  map[string][]Related // by a record's key
}

// Related is another place that had a part in a record's figures.
type Related struct {
	At      string // URI fragment of the place
	Caption string // what stands there
}

// Input is something that the plan could say and does not.
type Input struct {
	At    string // URI fragment of the nearest place that exists
	Field string // what would be written there, as in eyes.upper.length
	Label string // the same in words, as in "S1's upper eye length"
}

// Gaps tells, for a record's key and the dotted path of an absent field,
// which inputs it waits for.
type Gaps map[GapKey][]Input

// GapKey names an absent field of a record.
type GapKey struct{ Key, Field string }

// Add notes that a field of the record waits for the inputs.
func (g Gaps) Add(key, field string, inputs ...Input) {
	k := GapKey{key, field}
	for _, in := range inputs {
		if !contains(g[k], in) {
			g[k] = append(g[k], in)
		}
	}
}

func contains(list []Input, in Input) bool {
	for _, x := range list {
		if x == in {
			return true
		}
	}
	return false
}
