// Package compute joins plan, mechanics and capacity into the facts. It knows
// nothing of rules: what a figure means is for them to say.
package compute

import (
	"slices"
	"strings"
	"time"

	"liftlint/internal/capacity"
	"liftlint/internal/facts"
	"liftlint/internal/hang"
	"liftlint/internal/plan"
	"liftlint/internal/register"
)

// Conditions are what a plan is computed under, besides itself.
type Conditions struct {
	Profile string     // name of the profile
	Stage   string     // draft, review or prelift
	On      *time.Time // the day judged for; nil takes the plan's own
	// Decides is what legs whose split stiffness settles are judged by, and
	// DecidesWhenEven the same where their own forces are alike; empty makes no
	// difference.
	Decides, DecidesWhenEven Decides
	Parts                    capacity.PartPractice // how the parts of one sling share
	// BridlePractice is how the rated load of a bridle goes over to its legs.
	BridlePractice capacity.BridlePractice
	// IntervalMonths is how long a periodic inspection holds for a kind of gear
	// in a service; false where the profile gives none.
	IntervalMonths func(kind, service string) (int, bool)
	// OnFile is the gear that a register tells of, by its id in the plan.
	OnFile map[string]*register.Item
}

// Day is the day that a plan is judged for; nil where it is not known.
func (c Conditions) Day(p *plan.Plan) *time.Time {
	if c.On != nil {
		return calendarDay(c.On)
	}
	return calendarDay(p.Lift.Date)
}

// Decides is what a leg is judged by where stiffness settles how legs share.
type Decides string

// What can decide, besides a leg's own force at its worst.
const (
	Elastic   Decides = "elastic"    // nothing else
	Bound     Decides = "bound"      // the most that any lengths can bring about
	TwoLegs   Decides = "two_legs"   // its share if two legs carried
	ThreeLegs Decides = "three_legs" // its share if three did
)

// legs is the number of legs that count; 0 where it does not go by them.
func (d Decides) legs() int { return map[Decides]int{TwoLegs: 2, ThreeLegs: 3}[d] }

// TroubleIDs lists the troubles that computing may come upon.
func TroubleIDs() []string { return []string{hang.OutOfReach, hang.NoBalance} }

// Facts computes everything that rules may ask of the plan. What can't be
// computed is absent, and Gaps says what it waits for.
func Facts(p *plan.Plan, c Conditions) (*facts.Facts, []hang.Trouble) {
	w := &work{
		plan: p,
		cond: c,
		day:  c.Day(p),
		out:  &facts.Facts{Gaps: facts.Gaps{}, Related: map[string][]facts.Related{}},
	}
	w.hung = hang.Of(p)
	w.lift()
	w.load()
	w.hooks()
	w.gear()
	w.onFile()
	w.ropes()
	w.grommets()
	w.legs() // before all that the legs pull on
	w.attachments()
	w.parts()
	w.mostUsed() // after all parts
	w.margins()
	w.bridles()
	w.fits()
	w.bearings() // after all parts
	w.gathers()
	w.hookUses()
	w.beams()
	w.hitches()
	w.positions()
	w.out.Document.Finish()
	return w.out, w.hung.Troubles
}

// calendarDay leaves the time of day out, so that days are counted whole.
func calendarDay(t *time.Time) *time.Time {
	if t == nil {
		return nil
	}
	return ptr(time.Date(t.Year(), t.Month(), t.Day(), 0, 0, 0, 0, time.UTC))
}

// work is one plan on its way to facts.
type work struct {
	plan *plan.Plan
	cond Conditions
	day  *time.Time
	hung *hang.Lift
	out  *facts.Facts
	// pending are what makes the rated load of the part that is being worked out.
	pending []facts.Factor
}

func at(pointer string) string { return "#" + pointer }

// input names something that the plan could say.
func input(pointer, field, label string) facts.Input {
	return facts.Input{At: at(pointer), Field: field, Label: label}
}

// wait notes that fields of a record, all of them absent, wait for inputs.
func (w *work) wait(key string, inputs []facts.Input, fields ...string) {
	for _, f := range fields {
		w.out.Gaps.Add(key, f, inputs...)
	}
}

// explain notes why fields of a record are absent where no input would help.
func (w *work) explain(key string, why facts.Reason, fields ...string) {
	for _, f := range fields {
		w.out.Gaps.Explain(key, f, why)
	}
}

func (w *work) lift() {
	l := facts.Lift{
		Record:        facts.Record{Key: "lift", At: "#/lift"},
		ID:            w.plan.Lift.ID,
		Title:         w.plan.Lift.Title,
		Category:      w.plan.Lift.Category,
		Profile:       w.cond.Profile,
		Stage:         w.cond.Stage,
		Legs:          len(w.hung.Legs),
		Labels:        w.plan.Lift.Labels,
		LegsThatCount: w.legsThatCount(),
		NotLookedOver: w.notLookedOver(),
		LegsUnlike:    w.legsUnlike(),
	}
	if w.day != nil {
		l.Date = ptr(w.day.Format(time.DateOnly))
	} else {
		w.wait(l.Key, []facts.Input{dayInput()}, "date")
	}
	w.out.Document.Lifts = []facts.Lift{l}
}

func dayInput() facts.Input { return input("/lift", "date", "the day of the lift") }

// absent picks from the fields of a record those that it lacks.
func absent(record any, fields ...string) []string {
	v := facts.ViewOf(record)
	return slices.DeleteFunc(slices.Clone(fields), func(f string) bool {
		_, ok := v.Field(f)
		return ok
	})
}

func (w *work) relate(key, pointer, caption string) {
	r := facts.Related{At: at(pointer), Caption: caption}
	if !slices.Contains(w.out.Related[key], r) {
		w.out.Related[key] = append(w.out.Related[key], r)
	}
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
