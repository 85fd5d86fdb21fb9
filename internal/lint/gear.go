package lint

import (
	"context"
	"fmt"
	"runtime"
	"slices"
	"sync"
	"time"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/onfile"
	"liftlint/internal/register"
)

// GearCount is what the items of a register came to.
type GearCount struct {
	Items  int
	Judged int
	// Aside are the items that the register itself keeps from being used, which
	// nothing is said of.
	Aside int
	// NotAsked is the number of rules that ask for what only a plan knows.
	NotAsked int
	// ForPlan is the number of checks, each of one item by one rule, that wait for
	// what a register need not have, and that a plan may give.
	ForPlan  int
	Findings map[finding.Severity]int
}

// complete is an error where not every item was either judged or left aside, once.
func (c GearCount) complete(items int) error {
	if c.Items == items && c.Judged+c.Aside == items {
		return nil
	}
	return fmt.Errorf("of %s %d were judged and %d left aside: none may be lost or counted twice", itemsOf(items), c.Judged, c.Aside)
}

// gearChunk is how many items are judged at a time.
const gearChunk = 512

// CheckGear judges the items of a register by themselves, in parts, and hands
// over what is found in each part in the order of the register. Without a day
// nothing is judged to be overdue.
func (l *Linter) CheckGear(ctx context.Context, r *register.Register, show func([]finding.Finding) error) (GearCount, error) {
	count := GearCount{Items: len(r.Items), Findings: map[finding.Severity]int{}}
	g, err := l.gearJudging(ctx)
	if err != nil {
		return count, err
	}
	count.NotAsked = len(g.notAsked)
	err = l.gearParts(ctx, g, r, func(p gearPart) error {
		count.Judged, count.Aside = count.Judged+p.judged, count.Aside+p.aside
		count.ForPlan += forPlan(p.Checked)
		for _, f := range p.Findings {
			count.Findings[f.Severity]++
		}
		return show(p.Findings)
	})
	if err == nil {
		err = count.complete(len(r.Items))
	}
	return count, err
}

// forPlan counts the checks that wait for what a plan may give.
func forPlan(list []Checked) int {
	n := 0
	for _, c := range list {
		for _, u := range c.NotJudged {
			if u.ForPlan {
				n++
			}
		}
	}
	return n
}

// gearParts judges the items of a register in parts, several at a time, and hands
// each over in the order of the register.
func (l *Linter) gearParts(ctx context.Context, g *gearJudging, r *register.Register, take func(gearPart) error) error {
	chunks := chunked(onfile.Groups(r))
	parts := make([]gearPart, runtime.GOMAXPROCS(0))
	for wave := range slices.Chunk(chunks, len(parts)) {
		var group sync.WaitGroup
		for i, items := range wave {
			group.Go(func() { parts[i] = l.gearPart(ctx, g, items) })
		}
		group.Wait()
		for _, p := range parts[:len(wave)] {
			if p.err != nil {
				return p.err
			}
			if err := take(p); err != nil {
				return err
			}
		}
	}
	return nil
}

// chunked joins groups to parts of at least gearChunk items, the last aside.
func chunked(groups [][]*register.Item) [][]*register.Item {
	var chunks [][]*register.Item
	var items []*register.Item
	for _, g := range groups {
		if items = append(items, g...); len(items) >= gearChunk {
			chunks, items = append(chunks, items), nil
		}
	}
	if len(items) > 0 {
		chunks = append(chunks, items)
	}
	return chunks
}

// gearPart is what some items of a register came to.
type gearPart struct {
	*Result
	items         []*register.Item
	judged, aside int
	err           error
}

func usable(i *register.Item) bool { return i.Status == register.InService || i.Status == "" }

func (l *Linter) gearPart(ctx context.Context, g *gearJudging, items []*register.Item) (p gearPart) {
	defer stopTold(items, &p.err)
	r, err := l.gearResult(g.conditions, items)
	if err != nil {
		p.err = err
		return p
	}
	p.Result, p.items = r, items
	used := map[string]bool{}
	for _, i := range items {
		if used[i.Number] = usable(i); used[i.Number] {
			p.judged++
		} else {
			p.aside++
		}
	}
	r.addMembersOut(items)
	leaveOut(&r.Facts.Document, used)
	verdicts, err := g.pack.Judge(ctx, &r.Facts.Document)
	if err != nil {
		p.err = err
		return p
	}
	r.addVerdicts(verdicts)
	r.addUntold(r.addMissing(verdicts))
	r.Findings = finding.Sort(slices.DeleteFunc(r.Findings, func(f finding.Finding) bool { return f.Key == dayMissing }))
	return p
}

// dayMissing is the key of the finding that no day is given, which is told once.
const dayMissing = "input/lift/date"

// stopTold, when deferred, makes an error of what stopped the check of some items.
func stopTold(items []*register.Item, err *error) {
	if stopped := recover(); stopped != nil {
		*err = fmt.Errorf("the check of %s from %s on stopped: %v", itemsOf(len(items)), items[0].Number, stopped)
	}
}

func itemsOf(n int) string {
	if n == 1 {
		return "1 item"
	}
	return fmt.Sprintf("%d items", n)
}

// gearResult is a result with the facts of items by themselves.
func (l *Linter) gearResult(c compute.Conditions, items []*register.Item) (r *Result, err error) {
	defer stopTold(items, &err)
	r = &Result{State: Computed, Profile: c.Profile, Stage: c.Stage, registers: l.options.Registers, alone: true}
	on, gear, byNumber, err := onfile.Alone(items, c.On)
	if err != nil {
		return nil, err
	}
	c.OnFile = byNumber
	r.onFile, r.Facts = on, compute.Gear(gear, c) // places are led into the register where a finding stands there
	return r, nil
}

// leaveOut takes the records of items out that are not used.
func leaveOut(d *facts.Document, used map[string]bool) {
	d.Gear = slices.DeleteFunc(d.Gear, func(g facts.Gear) bool { return !used[g.ID] })
	d.OnFile = slices.DeleteFunc(d.OnFile, func(f facts.OnFile) bool { return !used[f.ID] })
	d.Signs = slices.DeleteFunc(d.Signs, func(s facts.Sign) bool { return !used[s.ID] })
	d.Doubtful = slices.DeleteFunc(d.Doubtful, func(r facts.Doubtful) bool { return !used[r.ID] })
	d.Ropes = slices.DeleteFunc(d.Ropes, func(r facts.Rope) bool { return !used[r.ID] })
}

// Due is when an item's next inspection is due.
type Due struct {
	Item *register.Item
	Last *time.Time // nil: none is on record
	Day  *time.Time // nil: it is not known
	// Why says why the day is not known, or why it does not count that it has not come.
	Why string
}

// DueDays are those of all items that may be used, in the order of the register.
func (l *Linter) DueDays(ctx context.Context, r *register.Register) ([]Due, error) {
	g, err := l.gearJudging(ctx)
	if err != nil {
		return nil, err
	}
	var all []Due
	for _, items := range chunked(onfile.Groups(r)) {
		part, err := l.gearResult(g.conditions, items)
		if err != nil {
			return nil, err
		}
		for i, item := range items {
			if usable(item) {
				all = append(all, part.due(item, &part.Facts.Document.Gear[i]))
			}
		}
	}
	return all, nil
}

func (r *Result) due(item *register.Item, g *facts.Gear) Due {
	d := Due{Item: item}
	i := g.Inspection
	if i == nil {
		d.Why = "no periodic or thorough inspection on record"
		return d
	}
	d.Last = parseDay(i.Date)
	if i.Due != nil {
		d.Day = parseDay(*i.Due)
	} else {
		d.Why = "no interval for its service, and the record sets no day"
	}
	if gap := r.Facts.Gaps[facts.GapKey{Key: g.Key, Field: "inspection.overdue_days"}]; len(gap.Reasons) > 0 {
		d.Why = gap.Reasons[0].Text
	}
	return d
}

func parseDay(text string) *time.Time {
	if t, err := time.Parse(time.DateOnly, text); err == nil {
		return &t
	}
	return nil
}

// Use is where a plan uses an item on file.
type Use struct {
	ID     string // in the plan
	Number string
	Line   int // in the plan
}

// Uses lists the items on file that the plan uses.
func (r *Result) Uses() []Use {
	if r.onFile == nil {
		return nil
	}
	var all []Use
	for _, e := range r.onFile.Entries {
		all = append(all, Use{e.ID, e.Item.Number, r.inPlan("#" + e.Use).Range.From.Line})
	}
	return all
}

// Register is what the plan's registers hold together, as Registers.Register
// gives it.
func (r *Result) Register() (*register.Register, error) { return r.registers.Register() }

// Planned is the day that the plan itself names; empty where it names none.
func (r *Result) Planned() string { return r.planned }
