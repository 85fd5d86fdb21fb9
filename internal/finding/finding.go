// Package finding holds what every check produces, whoever made it and
// whatever prints it: the finding, its place, its figures and its source.
package finding

import "liftlint/internal/source"

// Finding is one cause that wants attention.
type Finding struct {
	Rule      string          // id of the rule or of the built-in check
	Title     string          // the rule's title
	Severity  Severity        // how bad it is, at the plan's stage
	Grade     string          // the grade reached, for rules that have grades
	Key       string          // the subject: a record's key in the facts
	Message   string          // one sentence in the plan's units
	Place     source.Location // where to look first
	Related   []Related       // other places that had a part in it
	Measured  *Figure         // what was found
	Limit     *Figure         // what was asked for
	Remedy    string          // what would put it right, where that can be computed
	Citations []Citation      // on whose authority
	Aside     *Aside          // why it does not count; nil where it does
}

// Related is another place with a word on what stands there.
type Related struct {
	Caption string          `json:"caption"`
	Place   source.Location `json:"place"`
}

// Figure is a number with its unit as the facts carry it, and as people read it.
type Figure struct {
	Field string  `json:"field"` // name in the facts or parameters, unit in the name
	Value float64 `json:"value"` // in that unit
	Text  string  `json:"text"`  // in the plan's units
}
