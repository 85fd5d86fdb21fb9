// Package jsonreport is the report for programs. Its types are the published
// format: the JSON Schema is generated from them.
package jsonreport

// Version is the number of the format. Within a version, fields are only added.
const Version = 1

// Report is what one run found.
type Report struct {
	Version  int      `json:"version" doc:"Version of this format. Within a version, fields are only added."`
	Tool     string   `json:"tool" doc:"The program that wrote the report."`
	Caution  string   `json:"caution" doc:"What the report is not. Show it wherever the report is shown to people."`
	FailOn   string   `json:"fail_on" doc:"The least severity that makes the exit code 1." enum:"error,warning,note"`
	Exit     Exit     `json:"exit" doc:"What the run came to."`
	Summary  Summary  `json:"summary" doc:"Sums over all plans, or over all registers."`
	Failures []string `json:"failures" doc:"What could not be checked at all. The rest of the report does not speak for it."`
	LeftOut  LeftOut  `json:"left_out" doc:"What a run over a change (--since, --staged) did not check. The report does not speak for it."`
	Plans    []Plan   `json:"plans" doc:"One record a plan, in the order they were given."`
	// Registers is empty but where gear is judged by itself.
	Registers []Register `json:"registers" doc:"One record a file of a gear register, where gear was judged by itself; then there are no plans."`
}

// Exit is the exit code with its meaning.
type Exit struct {
	Code    int    `json:"code" doc:"Exit code: 0 checked, nothing at or above fail_on; 1 findings, or a plan or register that is not valid; 3 something could not be checked; 4 nothing was checked."`
	Meaning string `json:"meaning" doc:"The code in words."`
}

// LeftOut is what was not looked at on purpose; in a run over all plans there is none.
type LeftOut struct {
	Unchanged          int      `json:"unchanged" doc:"Plans that have not changed, and of which nothing has that judges them."`
	Gone               []string `json:"gone" doc:"Plans that were there before and are not any more."`
	GoneConfigurations []string `json:"gone_configurations" doc:"Configurations that were there before and are not any more: what they asked for is not asked."`
	NotCompared        []string `json:"not_compared" doc:"Plans that have not changed and could not be read: whether they have gear or a lift number in common with the plans checked is not known."`
}

// Summary counts. Every plan or register is judged, not valid or not checked.
type Summary struct {
	Plans      int `json:"plans" doc:"Plans in the report, and those that failures keep from being checked."`
	Registers  int `json:"registers" doc:"Files of gear registers in the report."`
	Judged     int `json:"judged" doc:"Plans or registers that rules were put to."`
	NotValid   int `json:"not_valid" doc:"Plans or registers that could not be understood: no rule ran."`
	NotChecked int `json:"not_checked" doc:"Plans or registers of which nothing was checked, such as files that could not be read, and those of a configuration that is broken."`
	Errors     int `json:"errors" doc:"Findings of severity error that count."`
	Warnings   int `json:"warnings" doc:"Findings of severity warning that count."`
	Notes      int `json:"notes" doc:"Findings of severity note that count."`
	NotJudged  int `json:"not_judged" doc:"Subjects of rules that could not be judged."`
	Waived     int `json:"waived" doc:"Findings set aside by a waiver; not among the errors, warnings and notes."`
	Known      int `json:"known" doc:"Findings set aside by the baseline; not among the errors, warnings and notes."`
}

// Plan is what was found in one plan.
type Plan struct {
	File     string    `json:"file" doc:"The file as it was given. Bytes that are no UTF-8 stand as U+FFFD."`
	State    string    `json:"state" doc:"How far the plan came: judged by every rule; not_valid, so that no rule ran; unread, as the file could not be opened." enum:"judged,not_valid,unread"`
	ID       *string   `json:"id,omitempty" doc:"The plan's number; absent where it is not known."`
	Title    *string   `json:"title,omitempty" doc:"The plan's title; absent where it is not known."`
	Units    *string   `json:"units,omitempty" doc:"The units of the texts; numbers are in the unit their field names." enum:"metric,us"`
	Profile  *string   `json:"profile,omitempty" doc:"Whose practice the plan was judged by; absent where no rule ran."`
	Stage    *string   `json:"stage,omitempty" doc:"The stage the plan was judged at; absent where no rule ran." enum:"draft,review,prelift"`
	Day      *string   `json:"day,omitempty" doc:"The day judged for, as year-month-day; absent where it is not known."`
	Settings []Setting `json:"settings" doc:"What configurations set otherwise than the profile and the rules."`
	Findings []Finding `json:"findings" doc:"In reading order. An empty list says only that the checks listed as met or broken found nothing."`
	Waivers  []Waiver  `json:"waivers" doc:"The waivers in force, each of one finding of the list above. One that does not hold is a finding itself."`
	Checked  []Checked `json:"checked" doc:"Every rule put to the plan, by id; empty unless the state is judged."`
}

// Register is what was found in the gear of one file of a register.
type Register struct {
	File         string    `json:"file" doc:"The file as it was given. Bytes that are no UTF-8 stand as U+FFFD."`
	State        string    `json:"state" doc:"How far the register came: judged by every rule that speaks of gear by itself; not_valid, so that no rule ran; unread, as the file could not be opened." enum:"judged,not_valid,unread"`
	Title        *string   `json:"title,omitempty" doc:"The register's title; absent where it is not known."`
	Profile      *string   `json:"profile,omitempty" doc:"Whose practice the gear was judged by; absent where no rule ran."`
	Stage        *string   `json:"stage,omitempty" doc:"The stage the gear was judged at; absent where no rule ran." enum:"draft,review,prelift"`
	Day          *string   `json:"day,omitempty" doc:"The day judged for, as year-month-day. Absent where none was given: then nothing was judged to be overdue."`
	Items        int       `json:"items" doc:"Items in the file."`
	Judged       int       `json:"judged" doc:"Items that rules were put to."`
	NotInService int       `json:"not_in_service" doc:"Items that the register keeps from being used, which were not judged."`
	Settings     []Setting `json:"settings" doc:"What configurations set otherwise than the profile and the rules."`
	Findings     []Finding `json:"findings" doc:"In reading order. An empty list says only that the checks listed as met or broken found nothing."`
	Checked      []Checked `json:"checked" doc:"Every rule, by id; of those that ask for what only a plan has, does_not_apply says so. Empty unless the state is judged."`
}

// Setting is one value of a rule that a configuration has set otherwise.
type Setting struct {
	Rule string `json:"rule" doc:"Id of the rule."`
	What string `json:"what" doc:"A parameter, severity, a grade, off, or an inspection interval."`
	From string `json:"from" doc:"The configuration that sets it."`
	Was  string `json:"was" doc:"What it was before."`
	Is   string `json:"is" doc:"What it is now."`
}

// Finding is one cause that wants attention.
type Finding struct {
	Rule      string     `json:"rule" doc:"Id of the rule or built-in check."`
	Title     string     `json:"title" doc:"The rule's title."`
	Severity  string     `json:"severity" doc:"How bad it is." enum:"error,warning,note"`
	Grade     *string    `json:"grade,omitempty" doc:"The grade reached, of rules that have grades."`
	Key       string     `json:"key" doc:"The subject: a record's key in the facts, or what a built-in check names."`
	Message   string     `json:"message" doc:"One sentence in the plan's units."`
	Place     Place      `json:"place" doc:"Where to look first."`
	Related   []Related  `json:"related" doc:"Other places that had a part in it."`
	Measured  *Figure    `json:"measured,omitempty" doc:"What was found."`
	Limit     *Figure    `json:"limit,omitempty" doc:"What was asked for."`
	Remedy    *string    `json:"remedy,omitempty" doc:"What would put it right; absent where that was not computed."`
	Citations []Citation `json:"citations" doc:"On whose authority."`
	SetAside  *SetAside  `json:"set_aside,omitempty" doc:"Why it does not count for the exit code; absent where it does."`
}

// SetAside says why a finding does not count.
type SetAside struct {
	By    string `json:"by" doc:"By what: a waiver in the plan, or the baseline." enum:"waiver,baseline"`
	Why   string `json:"why" doc:"By whom, until when and why, in words."`
	Place Place  `json:"place" doc:"Where that is said."`
}

// Waiver is one waiver in force.
type Waiver struct {
	Rule       string  `json:"rule" doc:"Id of the rule."`
	Key        string  `json:"key" doc:"The subject: a record's key in the facts."`
	Grade      *string `json:"grade,omitempty" doc:"The grade found, of rules that have grades."`
	Reason     string  `json:"reason" doc:"Why it is accepted."`
	By         string  `json:"by" doc:"Who asks for it."`
	ApprovedBy string  `json:"approved_by" doc:"Who has approved it."`
	Until      string  `json:"until" doc:"The last day it holds, as year-month-day."`
	Place      Place   `json:"place" doc:"Where it stands."`
}

// Place is a range in a file.
type Place struct {
	File    string `json:"file" doc:"The file as it was given."`
	Pointer string `json:"pointer" doc:"JSON pointer (RFC 6901) of the value; empty for the whole document."`
	Range   *Range `json:"range,omitempty" doc:"Where it stands; absent where that is not known."`
}

// Range is half open.
type Range struct {
	From Position `json:"from" doc:"The first character."`
	To   Position `json:"to" doc:"Just after the last character."`
}

// Position is a place in a text.
type Position struct {
	Line   int `json:"line" doc:"Line, from one."`
	Column int `json:"column" doc:"Column in code points, from one."`
}

// Related is another place with a word on what stands there.
type Related struct {
	Caption string `json:"caption" doc:"What stands there."`
	Place   Place  `json:"place" doc:"Where."`
}

// Figure is a number with its unit.
type Figure struct {
	Field string   `json:"field" doc:"Its name in the facts or the rule's parameters; the unit is in the name."`
	Value *float64 `json:"value,omitempty" doc:"The number in that unit; absent where it is not finite."`
	Text  string   `json:"text" doc:"The number as people read it, in the plan's units."`
}

// Citation names the authority behind a rule.
type Citation struct {
	Document string  `json:"document" doc:"The document."`
	Edition  *string `json:"edition,omitempty" doc:"Its edition, where given."`
	Clause   *string `json:"clause,omitempty" doc:"The clause, where given."`
	Basis    string  `json:"basis" doc:"How far it can be relied on." enum:"read,memory,practice,company,format"`
	Means    string  `json:"means" doc:"The basis in words."`
}

// Checked tells how the subjects of one rule stand. One that is in no list was
// no subject.
type Checked struct {
	Rule         string     `json:"rule" doc:"Id of the rule."`
	Title        string     `json:"title" doc:"The rule's title."`
	Broken       []string   `json:"broken" doc:"Keys of the subjects that break it."`
	NotJudged    []Unjudged `json:"not_judged" doc:"Subjects that could not be judged."`
	Met          []string   `json:"met" doc:"Keys of the subjects that meet it."`
	DoesNotApply *string    `json:"does_not_apply,omitempty" doc:"Why the rule has no subjects; absent where it has."`
}

// Unjudged is a subject that could not be judged.
type Unjudged struct {
	Key      string   `json:"key" doc:"The subject's key."`
	WaitsFor []string `json:"waits_for" doc:"Why: inputs that are not given, or other reasons, in words."`
}
