// Package jsonreport writes a run as JSON, for programs. The schema is
// published as schema/report.schema.json.
package jsonreport

import (
	"reflect"

	"liftlint/internal/finding"
	"liftlint/internal/record"
	"liftlint/internal/report"
)

// Version is the version of this format. Within one, fields are only added.
const Version = 1

// Document is the whole report.
type Document struct {
	Version  int           `json:"version" doc:"Version of this format."`
	Caution  string        `json:"caution" doc:"What the report is and is not."`
	FailOn   string        `json:"fail_on" enum:"error,warning,note" doc:"The least severity that fails the run."`
	Summary  report.Counts `json:"summary" doc:"The run in numbers."`
	Failures []string      `json:"failures" doc:"What could not be checked at all, and why."`
	Plans    []Plan        `json:"plans" doc:"One a plan, in the order given."`
}

// Plan is what was found in one plan.
type Plan struct {
	File     string    `json:"file" doc:"As it was named to the program."`
	State    string    `json:"state" enum:"judged,not_valid,unread" doc:"How far it came; no rule ran unless it was judged."`
	ID       string    `json:"id,omitempty" doc:"The plan's number."`
	Title    string    `json:"title,omitempty" doc:"What the lift is."`
	Profile  string    `json:"profile,omitempty" doc:"Whose practice it was judged by."`
	Stage    string    `json:"stage,omitempty" doc:"How far the plan has come."`
	Day      string    `json:"day,omitempty" doc:"The day it was judged for; absent where none is known."`
	Findings []Finding `json:"findings" doc:"In the order of the file."`
	Checked  []Checked `json:"checked" doc:"Every rule and how its subjects stand."`
}

// Finding is one cause that wants attention.
type Finding struct {
	Rule      string             `json:"rule" doc:"Id of the rule or of the built-in check."`
	Title     string             `json:"title" doc:"The rule's title."`
	Severity  string             `json:"severity" enum:"error,warning,note" doc:"How bad it is."`
	Grade     string             `json:"grade,omitempty" doc:"The grade reached, for rules that have grades."`
	Key       string             `json:"key" doc:"The subject's key in the facts."`
	Message   string             `json:"message" doc:"One sentence in the plan's units."`
	Place     Place              `json:"place" doc:"Where to look first."`
	Related   []Related          `json:"related" doc:"Other places that had a part in it."`
	Measured  *finding.Figure    `json:"measured,omitempty" doc:"What was found."`
	Limit     *finding.Figure    `json:"limit,omitempty" doc:"What it was judged by."`
	Remedy    string             `json:"remedy,omitempty" doc:"What would put it right, where that was computed."`
	Citations []finding.Citation `json:"citations" doc:"On whose authority."`
}

// Place is a range in a file. Lines and columns count from one, columns in
// code points; the end is the position just after. They are zero where a whole
// file is meant.
type Place struct {
	File       string `json:"file" doc:"The file."`
	Pointer    string `json:"pointer,omitempty" doc:"JSON pointer of the value, after RFC 6901."`
	FromLine   int    `json:"from_line" doc:"First line."`
	FromColumn int    `json:"from_column" doc:"First column."`
	ToLine     int    `json:"to_line" doc:"Line of the end."`
	ToColumn   int    `json:"to_column" doc:"Column just after the end."`
}

// Related is another place with a word on what stands there.
type Related struct {
	Caption string `json:"caption" doc:"What stands there."`
	Place   Place  `json:"place" doc:"Where."`
}

// Checked tells how the subjects of one rule stand.
type Checked struct {
	Rule         string     `json:"rule" doc:"Id of the rule."`
	Title        string     `json:"title" doc:"The rule's title."`
	Met          []string   `json:"met" doc:"Keys of the subjects that meet it."`
	Broken       []string   `json:"broken" doc:"Keys of the subjects that break it."`
	NotJudged    []Unjudged `json:"not_judged" doc:"Subjects that could not be judged."`
	DoesNotApply string     `json:"does_not_apply,omitempty" doc:"Why the rule has no subjects."`
}

// Unjudged is a subject that could not be judged, and what it waits for.
type Unjudged struct {
	Key      string   `json:"key" doc:"The subject's key."`
	WaitsFor []string `json:"waits_for" doc:"Inputs that the plan lacks, or other reasons, in words."`
}

// Schema is the JSON Schema of the document, made from its types. The
// published schema/report.schema.json is this, word for word.
func Schema() map[string]any {
	return record.Schema(reflect.TypeFor[Document](), "liftlint report",
		"What one run of liftlint check found. Exit codes: 0 checked, nothing at or above fail_on; 1 findings, or a plan that is not valid; 3 could not check; 4 nothing was checked.")
}
