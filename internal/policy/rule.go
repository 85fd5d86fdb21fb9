package policy

import (
	"slices"

	"liftlint/internal/finding"
)

// Rule is one rule as a profile has it: parameters, severities and citations
// are settled, and what Go derived from its text is filled in.
type Rule struct {
	ID          string // topic/name
	Title       string
	Description string

	Over     string      // the collection whose records are judged
	Where    []Condition // which of its records, by field
	When     []Condition // which lifts, by field
	Stages   []string    // at which stages; all when empty
	Measured string      // the field judged, empty where a rule measures nothing
	Limit    string      // the parameter or field it is judged by
	Params   []Param     // by name
	Severity Levels      // of a rule without grades
	// SeverityFrom is the layer that set it, empty for METADATA.
	SeverityFrom string
	Grades       []Grade // worst first; empty for a rule without
	Place        string  // the nested record that a finding points at
	Remedy       string  // the computation that finds what would put it right

	Citations []Cited
	Lowerable bool     // a profile may lower it or switch it off
	Waivable  bool     // a plan may waive it
	HeldBy    string   // the configuration that lets nobody waive it, empty where none does
	NeedsFrom string   // the stage from which a missing input is a finding
	FormerIDs []string // ids it had before
	Needs     []string // dotted fields it reads that may be absent, in order
	Unsaid    []Unsaid // fields it reads whose value may be a word for unknown, in order
	Off       string   // why it is switched off, empty where it is not
	OffBy     string   // the layer that switches it off
	Overrides []Override
	LockedBy  string // the configuration that locks it, empty where none does
	File      string // where it stands
	Sum       string // of its text: another text has another

	message template
	reads   []string // fields that its text and where read, in order
	asks    []string // fields that its text alone reads, in order
}

// Asks lists the fields that the rule's text reads, dotted, in order. What it
// reads by Where alone is not among them.
func (r *Rule) Asks() []string { return slices.Clone(r.asks) }

// Unsaid is a field whose value can be a word for what the plan does not say,
// such as not_given, that the rule's text reads and does not ask for. A record
// that has the word there, or in a list holds it, is not judged.
type Unsaid struct {
	Field string
	Words []string
}

// Param is a parameter with the value that the profile settled.
type Param struct {
	Name    string
	Value   any    // a float64, a string, a bool or a []string
	Default any    // the same, as the rule's METADATA has it
	Milder  int    // the way in which the rule finds less: 1 upward, -1 downward, 0 where that is not known
	From    string // the layer that set it, empty for the default
}

// Grade is one of several degrees in which a rule can be broken.
type Grade struct {
	Name     string
	Title    string // the rule's where METADATA gives none of its own
	Severity Levels
	From     string // the layer that set the severity, empty for METADATA
	Measured string
	Limit    string

	message template
}

// Param returns a parameter's value.
func (r *Rule) Param(name string) (any, bool) {
	for _, p := range r.Params {
		if p.Name == name {
			return p.Value, true
		}
	}
	return nil, false
}

// Worst is the worst severity that the rule can reach at a stage.
func (r *Rule) Worst(stage string) finding.Severity {
	if len(r.Grades) > 0 {
		return r.Grades[0].Severity.At(stage)
	}
	return r.Severity.At(stage)
}

// SeverityOf is the severity of a broken subject at a stage.
func (r *Rule) SeverityOf(o Outcome, stage string) finding.Severity {
	if o.Grade != nil {
		return o.Grade.Severity.At(stage)
	}
	return r.Worst(stage)
}

// TitleOf is what a finding on a broken subject is called.
func (r *Rule) TitleOf(o Outcome) string {
	if o.Grade != nil {
		return o.Grade.Title
	}
	return r.Title
}

// AsksFrom reports whether at this stage a missing input is a finding.
func (r *Rule) AsksFrom(stage string) bool {
	stages := Stages()
	return slices.Index(stages, stage) >= slices.Index(stages, r.NeedsFrom) || !slices.Contains(stages, stage)
}

func (r *Rule) grade(name string) (int, bool) {
	i := slices.IndexFunc(r.Grades, func(g Grade) bool { return g.Name == name })
	return i, i >= 0
}

// Unwaivable says why no plan may waive what the rule finds; empty where one may.
func (r *Rule) Unwaivable() string {
	switch {
	case !r.Waivable:
		return "the rule is one of those that nobody may leave aside"
	case r.HeldBy != "":
		return r.HeldBy + " forbids it"
	}
	return ""
}

// GradeNames lists the grades, worst first.
func (r *Rule) GradeNames() []string {
	var names []string
	for _, g := range r.Grades {
		names = append(names, g.Name)
	}
	return names
}

func (r *Rule) paramNames() []string {
	var names []string
	for _, p := range r.Params {
		names = append(names, p.Name)
	}
	return names
}
