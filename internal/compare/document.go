// Package compare tells what changed between two revisions of lift plans, for a
// reviewer: in figures, in gear, in what else is written, and in findings. The
// order in which things are written, and the units, are no change.
package compare

import (
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Version is the number of the JSON format. Within a version, fields are only added.
const Version = 1

// Comparison is all that was compared. Its types are the published format: the
// JSON Schema is generated from them.
type Comparison struct {
	Version  int      `json:"version" doc:"Version of this format. Within a version, fields are only added."`
	Tool     string   `json:"tool" doc:"The program that compared."`
	Caution  string   `json:"caution" doc:"What the comparison is not. Show it wherever that is shown to people."`
	Old      string   `json:"old" doc:"What was compared, as it was asked for."`
	New      string   `json:"new" doc:"With what."`
	FailOn   string   `json:"fail_on" doc:"The least severity of a finding, new or worse, that makes the exit code 1." enum:"error,warning,note"`
	Exit     int      `json:"exit" doc:"Exit code: 0 compared; 1 something of that severity is new or worse, or a rule that could find it can't judge any more what it judged before, is off now, or is set so that it finds less, or a rule, a lock or a limit is taken out or made milder, or a new plan is not valid; 3 something could not be compared; 4 there was no plan."`
	Failures []string `json:"failures" doc:"What could not be compared. The rest does not speak for it."`
	// NotCompared counts plans of which a check has failed.
	NotCompared int    `json:"not_compared" doc:"Plans that failures keep from being compared. They are not in the list."`
	Same        int    `json:"same" doc:"Plans in which nothing changed. They are not in the list."`
	Plans       []Plan `json:"plans" doc:"All other plans, in the order of their files."`
}

// Plan is what changed in one plan.
type Plan struct {
	Status   string    `json:"status" doc:"What became of it: changed; added, so that all its findings are new; gone; not judged, where a revision is not valid or could not be read, so that no rule ran on it." enum:"changed,added,gone,not_judged"`
	Old      *Revision `json:"old,omitempty" doc:"The plan as it was; absent where it was added."`
	New      *Revision `json:"new,omitempty" doc:"The plan as it is; absent where it is gone."`
	Judged   []Ruling  `json:"judged" doc:"How it is judged otherwise than before: by which profile, at which stage, for which day, by which rules, with which settings and locks."`
	Figures  []Figure  `json:"figures" doc:"Figures that changed, came or went."`
	Gear     []Gear    `json:"gear" doc:"Gear that came, went or is described otherwise."`
	Written  []Word    `json:"written" doc:"What else is written otherwise, by its path in the plan."`
	Findings []Finding `json:"findings" doc:"Findings that came, went or changed, the worst first."`
	Grown    *Grown    `json:"grown,omitempty" doc:"What the baseline has taken in of the plan since the old revision; absent where that is nothing."`
	Unjudged []Subject `json:"unjudged" doc:"What rules met before, and can't judge or do not look for any more."`
}

// Revision is one side of a plan.
type Revision struct {
	File  string `json:"file" doc:"The file, after a revision and a colon where it is read from one."`
	State string `json:"state" doc:"How far it came." enum:"judged,not_valid,unread"`
	ID    string `json:"id" doc:"The plan's number; empty where it is not known."`
	Title string `json:"title" doc:"The plan's title; empty where it is not known."`
}

// Word is something that is written otherwise.
type Word struct {
	What string  `json:"what" doc:"What it is; of a plan, its path, with the ids of items."`
	Old  *string `json:"old,omitempty" doc:"As it was; absent where nothing was."`
	New  *string `json:"new,omitempty" doc:"As it is; absent where nothing is."`
}

// Grown is what a baseline has taken in since another revision.
type Grown struct {
	File     string `json:"file" doc:"The baseline."`
	Findings int    `json:"findings" doc:"How many of its entries are new, or known as worse than before."`
}

// Ruling is something that a plan is judged by otherwise than before.
type Ruling struct {
	What     string  `json:"what" doc:"What it is: the profile, the stage, the day, or something of a rule, after its id."`
	Old      *string `json:"old,omitempty" doc:"As it was; absent where nothing was, and where only that it changed can be told, as of a rule's text."`
	New      *string `json:"new,omitempty" doc:"As it is; absent where nothing is, and likewise."`
	Rule     string  `json:"rule,omitempty" doc:"Id of the rule; absent where it is none's."`
	Severity string  `json:"severity,omitempty" doc:"How bad what it is about could be before; absent where that is not known." enum:"error,warning,note"`
	Milder   bool    `json:"milder" doc:"Whether it makes less be found, or found less bad, or lets more be accepted: a lock, a rule or a limit that is taken out, loosened or lowered. False also where that can't be told."`
}

// Figure is a computed or given figure that changed.
type Figure struct {
	Of      string   `json:"of" doc:"What it is a figure of."`
	What    string   `json:"what" doc:"Which figure, in words."`
	Field   string   `json:"field" doc:"Its name in the facts, with its unit."`
	Old     *float64 `json:"old,omitempty" doc:"As it was, in that unit; absent where it is a word or was not known."`
	New     *float64 `json:"new,omitempty" doc:"As it is, in that unit."`
	OldText string   `json:"old_text" doc:"As it was, as people read it; not known, where it was not, and empty where there was no such thing."`
	NewText string   `json:"new_text" doc:"As it is, as people read it."`
}

// Gear is an item of gear.
type Gear struct {
	ID     string `json:"id" doc:"Its number in the plan."`
	Kind   string `json:"kind" doc:"What it is."`
	Change string `json:"change" doc:"What became of it." enum:"added,gone,changed"`
	Fields []Word `json:"fields" doc:"What is described otherwise; of an item added or gone, its description."`
}

// Finding is one that came, went or changed.
type Finding struct {
	Change string           `json:"change" doc:"What became of it. Gone: it is met, or there is no such thing any more. Not judged: the rule can't tell any more. Not looked for: the rule is off, or is not there. Judged otherwise: it is less bad, or is not found any more, and what is measured is no better by the limit that there was, or the rule is set otherwise than before. Set aside, and counts again: by a waiver or the baseline." enum:"new,worse,not_judged,not_looked_for,counts_again,judged_otherwise,changed,set_aside,better,gone"`
	Rule   string           `json:"rule" doc:"Id of the rule or built-in check."`
	Title  string           `json:"title" doc:"The rule's title."`
	Key    string           `json:"key" doc:"The subject: a record's key in the facts, or what a built-in check names."`
	Old    *FindingRevision `json:"old,omitempty" doc:"As it was; absent of a new one."`
	New    *FindingRevision `json:"new,omitempty" doc:"As it is; absent of one that is gone, not judged, not looked for, or judged otherwise so that it is not found."`
	Grown  bool             `json:"grown,omitempty" doc:"Whether it is set aside only because the baseline has taken it in since the old revision, as new or as bad as it is now. A new or worse one counts all the same."`
	Why    []string         `json:"why,omitempty" doc:"Why it is not judged or not looked for any more, or what is set otherwise; absent of all others, and where it is not known."`
}

// FindingRevision is one side of a finding.
type FindingRevision struct {
	Severity string   `json:"severity" doc:"How bad it is." enum:"error,warning,note"`
	Grade    string   `json:"grade" doc:"The grade reached; empty for rules without grades."`
	Message  string   `json:"message" doc:"One sentence in the plan's units."`
	File     string   `json:"file" doc:"Where to look."`
	Line     int      `json:"line" doc:"Line, from one; 0 where it is not known."`
	Measured *float64 `json:"measured,omitempty" doc:"The figure found, in the unit of its field; absent where there is none."`
	Limit    *float64 `json:"limit,omitempty" doc:"The figure asked for."`
	SetAside bool     `json:"set_aside" doc:"Whether it does not count, by a waiver or the baseline."`
}

// Subject is what a rule met before and does not judge any more.
type Subject struct {
	Rule     string   `json:"rule" doc:"Id of the rule."`
	Title    string   `json:"title" doc:"The rule's title."`
	Severity string   `json:"severity" doc:"The worst that the rule could find before." enum:"error,warning,note"`
	Change   string   `json:"change" doc:"Not judged: the rule can't tell any more. Not looked for: the rule is off, or is not there." enum:"not_judged,not_looked_for"`
	Key      string   `json:"key" doc:"The subject's key."`
	Why      []string `json:"why" doc:"What the rule waits for, or why it is not asked."`
}

// Side is one revision of a plan: what was found in it, and its text.
type Side struct {
	Name   string // of the file, with its revision
	Result *lint.Result
	Text   []byte
}

// severity is how bad a change of a finding is; false where it makes nothing worse.
func (f Finding) severity() (finding.Severity, bool) {
	switch f.Change {
	case "new", "worse", "counts_again":
		return finding.Severity(f.New.Severity), !f.New.SetAside || f.Grown
	case "judged_otherwise":
		return finding.Severity(f.Old.Severity), !f.Old.SetAside
	case "not_judged", "not_looked_for":
		return finding.Severity(f.Old.Severity), true
	}
	return "", false
}
