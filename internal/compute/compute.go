// Package compute joins plan, mechanics and capacity into the facts. It knows
// nothing of rules: what a figure means is for them to say.
package compute

import (
	"strings"
	"time"

	"liftlint/internal/facts"
	"liftlint/internal/plan"
)

// Conditions are what a plan is computed under, besides itself.
type Conditions struct {
	Profile       string     // name of the profile
	Stage         string     // draft, review or prelift
	On            *time.Time // the day judged for; nil takes the plan's own
	LegsThatCount int        // legs of a rigid load that count, four legs and more
	// IntervalMonths is how long a periodic inspection holds for a kind of gear
	// in a service; false where the profile gives none.
	IntervalMonths func(kind, service string) (int, bool)
}

// Trouble is a fault of the plan that computing comes upon: as it is
// described, the lift can't exist.
type Trouble struct {
	ID      string
	Message string
	At      string // JSON pointer
	Related []facts.Related
}

// The troubles.
const (
	OutOfReach = "mechanics/out_of_reach"
	NoBalance  = "mechanics/no_balance"
)

// TroubleIDs lists them.
func TroubleIDs() []string { return []string{OutOfReach, NoBalance} }

// Facts computes everything that rules may ask of the plan. What can't be
// computed is absent, and Gaps says what it waits for.
func Facts(p *plan.Plan, c Conditions) (*facts.Facts, []Trouble) {
	w := &work{
		plan: p,
		cond: c,
		out:  &facts.Facts{Gaps: facts.Gaps{}, Related: map[string][]facts.Related{}},
	}
	w.day = p.Lift.Date
	if c.On != nil {
		w.day = c.On
	}
	w.hang()
	w.lift()
	w.load()
	w.hook()
	w.attachments()
	w.gear()
	w.legs()
	w.parts()
	w.fits()
	w.out.Document.Finish()
	return w.out, w.troubles
}

// work is one plan on its way to facts.
type work struct {
	plan     *plan.Plan
	cond     Conditions
	day      *time.Time
	pose     hanging
	out      *facts.Facts
	troubles []Trouble
}

func at(pointer string) string { return "#" + pointer }

// input names something that the plan could say.
func input(pointer, field, label string) facts.Input {
	return facts.Input{At: at(pointer), Field: field, Label: label}
}

// wait notes that fields of a record wait for inputs.
func (w *work) wait(key string, inputs []facts.Input, fields ...string) {
	for _, f := range fields {
		w.out.Gaps.Add(key, f, inputs...)
	}
}

func (w *work) lift() {
	l := facts.Lift{
		Record:   facts.Record{Key: "lift", At: "#/lift"},
		ID:       w.plan.Lift.ID,
		Title:    w.plan.Lift.Title,
		Category: w.plan.Lift.Category,
		Profile:  w.cond.Profile,
		Stage:    w.cond.Stage,
		Legs:     len(w.plan.Support.Legs),
	}
	if w.day != nil {
		d := w.day.Format(time.DateOnly)
		l.Date = &d
	}
	w.out.Document.Lifts = []facts.Lift{l}
}

// words turns a kind's name into words.
func words(name string) string { return strings.ReplaceAll(name, "_", " ") }

func number[T ~float64](v *T) *float64 {
	if v == nil {
		return nil
	}
	f := float64(*v)
	return &f
}

func ptr[T any](v T) *T { return &v }
