package lint

import (
	"fmt"
	"strings"
	"time"

	"liftlint/internal/builtin"
	"liftlint/internal/compute"
	"liftlint/internal/config"
	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/hang"
	"liftlint/internal/keyname"
	"liftlint/internal/onfile"
	"liftlint/internal/plan"
	"liftlint/internal/policy"
	"liftlint/internal/quantity"
	"liftlint/internal/source"
	"liftlint/internal/triage"
	"liftlint/internal/yamldoc"
)

// State says how far a plan came.
type State string

// The states.
const (
	Judged   State = "judged"    // every rule was put to it
	Computed State = "computed"  // its facts were computed, and no rule was put to it
	NotValid State = "not_valid" // it could not be understood; no rule ran
	Unread   State = "unread"    // the file could not be opened
)

// Result is what was found in one plan.
type Result struct {
	File     string
	State    State
	ID       string // the plan's number
	Title    string
	Units    quantity.System
	Profile  string
	Stage    string
	Day      string // judged for, empty where unknown
	Findings []finding.Finding
	Checked  []Checked // every rule, by id; empty unless judged
	// Overrides are what configurations set otherwise than profile and rules.
	Overrides []policy.Override
	// ProfileLockedBy is the configuration that locks the profile, empty where none does.
	ProfileLockedBy string
	Facts           *facts.Facts
	Recorded        *triage.KnownPlan // what rules found, where that was asked for
	// Gear is set where this is no plan but a register whose gear is judged by itself.
	Gear *GearCount

	text      []byte
	doc       *yamldoc.Document
	onFile    *onfile.Plan // the gear that it takes from a register
	registers *Registers
	alone     bool // gear by itself, which no plan uses here
	legs      keyname.Legs
	items     []identity // what its gear is known by
	known     knownBy    // what is known of it already
	planned   string     // the day that the plan itself names, empty where it names none
}

// Checked tells how the subjects of one rule stand.
type Checked struct {
	Rule         string
	Title        string
	Worst        finding.Severity // that it can find at this stage
	Met          []string         // keys of the subjects
	Broken       []string
	NotJudged    []Unjudged
	DoesNotApply string // why, where the rule has no subjects
	NotAsked     bool   // it is switched off, or not asked at this stage
	FormerIDs    []string
	By           *policy.Rule // the rule as it was settled for the plan; nil where that is not known
}

// Unjudged is a subject that could not be judged, and why.
type Unjudged struct {
	Key      string
	WaitsFor []string
	// ForPlan is set, of gear by itself, where a plan that uses it may give what is
	// waited for, which no finding asks for here.
	ForPlan bool
}

// Unreadable is the result for a file that could not be opened.
func Unreadable(name string, err error) *Result {
	r := &Result{File: name, State: Unread}
	r.addBuiltin("file/unreadable", err.Error(), name, source.Location{File: name}, nil)
	return r
}

// GearList is the plan's list of gear with what a register says of it in place; nil where
// the plan could not be read that far.
func (r *Result) GearList() *yamldoc.Node {
	if r.onFile == nil || r.onFile.Doc == nil {
		return nil
	}
	return r.onFile.Doc.Root().Get("gear")
}

// Line returns a line of the file, for excerpts.
func (r *Result) Line(n int) string {
	if r.doc != nil {
		return r.doc.Line(n)
	}
	return yamldoc.Line(r.text, n)
}

// compute adds the facts, what they say of the plan as a whole, and the
// troubles met on the way.
func (r *Result) compute(p *plan.Plan, c compute.Conditions) *facts.Facts {
	c.OnFile = r.onFile.History(p, c.Day(p))
	f, troubles := compute.Facts(p, c)
	r.onFile.Lead(f)
	r.Facts = f
	r.identify(p)
	r.legs = keyname.New(p.LegNames())
	r.Units = p.Lift.Units
	r.Profile, r.Stage = c.Profile, c.Stage
	for _, l := range f.Document.Lifts {
		if l.Date != nil {
			r.Day = *l.Date
		}
	}
	r.addTroubles(troubles)
	return f
}

// identify notes which lift the plan is for, its day, and what its gear is known by.
func (r *Result) identify(p *plan.Plan) {
	r.ID, r.Title, r.items = p.Lift.ID, p.Lift.Title, r.identities(p)
	if p.Lift.Date != nil {
		r.planned = p.Lift.Date.Format(time.DateOnly)
	}
}

// heldProfile says so where a plan names another profile than the configuration
// locks: it is judged by the latter.
func (r *Result) heldProfile(p *plan.Plan, c config.Config) {
	if c.ProfileHeld {
		r.ProfileLockedBy = c.ProfileFrom
	}
	if c.ProfileHeld && p.Lift.Profile != "" && p.Lift.Profile != c.Profile {
		message := fmt.Sprintf("the plan names profile %s, and %s locks the profile to %s, by which it is judged", p.Lift.Profile, c.ProfileFrom, c.Profile)
		r.addBuiltin("config/profile_locked", message, "lift", r.locate("#/lift/profile"), nil)
	}
}

// notValid gives the result of a plan that could not be understood.
func (r *Result) notValid(faults []yamldoc.Fault) *Result {
	r.addFaults(faults)
	r.Findings = finding.Sort(r.Findings)
	return r
}

func (r *Result) addFaults(faults []yamldoc.Fault) {
	for _, f := range faults {
		place := source.Location{File: r.File, Range: f.Range}
		var related []finding.Related
		for _, x := range f.Related {
			related = append(related, finding.Related{Caption: x.Caption, Place: source.Location{File: r.File, Range: x.Range}})
		}
		r.addBuiltin(f.ID, f.Message, "file", place, related)
	}
}

func (r *Result) addTroubles(troubles []hang.Trouble) {
	for _, t := range troubles {
		r.addBuiltin(t.ID, t.Message, "load", r.locate("#"+t.At), r.related(t.Related))
	}
}

// addBuiltin adds a finding of a built-in check, and returns it to be graded.
func (r *Result) addBuiltin(id, message, key string, place source.Location, related []finding.Related) *finding.Finding {
	r.Findings = append(r.Findings, builtin.Finding(id, message, key, place, related))
	return &r.Findings[len(r.Findings)-1]
}

func (r *Result) related(list []facts.Related) []finding.Related {
	var out []finding.Related
	for _, x := range list {
		out = append(out, finding.Related{Caption: x.Caption, Place: r.locate(x.At)})
	}
	return out
}

// locate finds where a URI fragment stands in the file, or the nearest place
// above it. Of a mapping or list it takes the key, or the id inside. What stands
// in a register is found there.
func (r *Result) locate(at string) source.Location {
	if place, ok := r.onFile.Led(at); ok {
		return r.registers.locate(place)
	}
	return r.inPlan(at)
}

// inPlan is locate for what stands in the plan.
func (r *Result) inPlan(at string) source.Location {
	pointer := strings.TrimPrefix(at, "#")
	where := source.Location{File: r.File, Pointer: pointer}
	if r.doc == nil {
		return where
	}
	place := r.doc.Nearest(pointer)
	where.Range = place.Value
	n, ok := r.doc.Find(pointer)
	if ok && n.Kind != yamldoc.Mapping && n.Kind != yamldoc.Sequence {
		return where
	}
	switch {
	case n.Get("id") != nil:
		where.Range = n.Get("id").Place.Value
	case !place.Key.IsZero():
		where.Range = place.Key
	}
	return where
}
