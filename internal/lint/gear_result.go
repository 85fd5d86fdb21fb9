package lint

import (
	"context"
	"errors"

	"liftlint/internal/compute"
	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/quantity"
	"liftlint/internal/register"
	"liftlint/internal/source"
)

// GearResults judges the items of a register by themselves: one result for each of
// its files, in their order, with the account of every rule. Findings stand in the
// file of their item.
func (l *Linter) GearResults(ctx context.Context, r *register.Register) ([]*Result, error) {
	by, err := l.gearJudging(ctx)
	if err != nil {
		return nil, err
	}
	g := newGearResults(r, by)
	if err := l.gearParts(ctx, by, r, g.take); err != nil {
		return nil, err
	}
	all := GearCount{}
	for _, x := range g.list {
		all.Items, all.Judged, all.Aside = all.Items+x.Gear.Items, all.Judged+x.Gear.Judged, all.Aside+x.Gear.Aside
	}
	if err := all.complete(len(r.Items)); err != nil {
		return nil, err
	}
	return g.finish(), nil
}

// gearResults gathers the results of files from parts of the register.
type gearResults struct {
	by      *gearJudging
	list    []*Result
	byFile  map[string]*Result
	indexOf map[string]int // of a rule's account
}

func newGearResults(r *register.Register, by *gearJudging) *gearResults {
	g := &gearResults{by: by, byFile: map[string]*Result{}, indexOf: map[string]int{}}
	for i, rule := range by.rules {
		g.indexOf[rule.ID] = i
	}
	c := by.conditions
	for _, f := range r.Files {
		x := &Result{
			File: f.Name, State: Judged, Title: f.Title, Units: quantity.Metric, Profile: c.Profile, Stage: c.Stage,
			Overrides: by.pack.Overrides(), Gear: &GearCount{NotAsked: len(by.notAsked), Findings: map[finding.Severity]int{}}, Checked: by.checkedFor(),
		}
		if c.On != nil {
			x.Day = c.On.Format("2006-01-02")
		}
		g.list, g.byFile[f.Name] = append(g.list, x), x
	}
	return g
}

// take adds what a part came to, each subject to the file of its item.
func (g *gearResults) take(p gearPart) error {
	of := map[string]*Result{} // by the number of the item
	for _, i := range p.items {
		x := g.byFile[i.Place("").File]
		if x == nil {
			return errors.New("an item of the register stands in none of its files: " + i.Number)
		}
		of[i.Number] = x
		x.Gear.Items++
		if usable(i) {
			x.Gear.Judged++
		} else {
			x.Gear.Aside++
		}
	}
	for _, f := range p.Findings {
		x := g.byFile[f.Place.File]
		if x == nil {
			return errors.New("a finding stands in no file of the register: " + f.Message)
		}
		x.Findings = append(x.Findings, f)
		x.Gear.Findings[f.Severity]++
	}
	subjects, err := resultsOfSubjects(&p.Facts.Document, of)
	if err != nil {
		return err
	}
	for _, c := range p.Checked {
		at, known := g.indexOf[c.Rule]
		if !known {
			return errors.New("rule " + c.Rule + " judged gear, and is none of those that there are")
		}
		if err := g.account(at, c, subjects); err != nil {
			return err
		}
	}
	return nil
}

// resultsOfSubjects are the results of records by their keys.
func resultsOfSubjects(d *facts.Document, of map[string]*Result) (map[string]*Result, error) {
	byKey := map[string]*Result{}
	for _, name := range compute.AloneCollections() {
		records, _ := d.Records(name)
		for _, v := range records {
			id, _ := v.Field("id")
			number, _ := id.(string)
			if of[number] == nil {
				return nil, errors.New("no item of the register goes with " + v.Key)
			}
			byKey[v.Key] = of[number]
		}
	}
	return byKey, nil
}

// account adds how the subjects of one rule stand.
func (g *gearResults) account(i int, c Checked, of map[string]*Result) error {
	for _, key := range c.Broken {
		if of[key] == nil {
			return unplaced(c.Rule, key)
		}
		of[key].Checked[i].Broken = append(of[key].Checked[i].Broken, key)
	}
	for _, key := range c.Met {
		if of[key] == nil {
			return unplaced(c.Rule, key)
		}
		of[key].Checked[i].Met = append(of[key].Checked[i].Met, key)
	}
	for _, u := range c.NotJudged {
		if of[u.Key] == nil {
			return unplaced(c.Rule, u.Key)
		}
		of[u.Key].Checked[i].NotJudged = append(of[u.Key].Checked[i].NotJudged, u)
	}
	for _, x := range g.list {
		if c.DoesNotApply != "" {
			x.Checked[i].DoesNotApply = c.DoesNotApply
		}
	}
	return nil
}

func unplaced(rule, key string) error {
	return errors.New("rule " + rule + " judged " + key + ", which is of no item of the register")
}

// finish puts the findings in order, and says of rules without subjects in a file
// why they have none.
func (g *gearResults) finish() []*Result {
	for _, x := range g.list {
		x.Gear.ForPlan = forPlan(x.Checked)
		x.Findings = finding.Sort(x.Findings)
		for i := range x.Checked {
			c := &x.Checked[i]
			switch has := len(c.Broken)+len(c.Met)+len(c.NotJudged) > 0; {
			case has:
				c.DoesNotApply = ""
			case c.DoesNotApply == "":
				c.DoesNotApply = g.by.rules[i].NothingToJudge()
			}
		}
	}
	return g.list
}

// registerNotValid is the check that tells of faults of a register.
const registerNotValid = "register/not_valid"

// GearNotValid are the results for a register that can't be read: one for each of
// its files that has faults, since then nothing of it is judged.
func GearNotValid(problems register.Problems) []*Result {
	var list []*Result
	byFile := map[string]*Result{}
	for _, p := range problems {
		x := byFile[p.Place.File]
		if x == nil {
			x = &Result{File: p.Place.File, State: NotValid, Gear: &GearCount{Findings: map[finding.Severity]int{}}}
			list, byFile[p.Place.File] = append(list, x), x
		}
		id := registerNotValid
		if p.ID == register.Unreadable {
			id, x.State = "file/unreadable", Unread
		}
		x.addBuiltin(id, p.Said()+" ("+p.ID+")", "file", problemPlace(p.Place), otherPlace(p))
		x.Gear.Findings[finding.Error]++
	}
	return list
}

func problemPlace(p register.Place) source.Location {
	if p.Row > 0 {
		return new(Registers).locate(p)
	}
	return source.Location{File: p.File, Pointer: p.Fragment(), Range: p.Range}
}

func otherPlace(p register.Problem) []finding.Related {
	if p.Other == nil {
		return nil
	}
	return []finding.Related{{Caption: "the first", Place: problemPlace(*p.Other)}}
}
