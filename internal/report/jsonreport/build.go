package jsonreport

import (
	"errors"
	"math"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/report"
	"liftlint/internal/source"
)

var errNoResult = errors.New("json report: there is no result for one plan")

func build(run report.Run) (Report, error) {
	c := run.Count()
	r := Report{
		Version:  Version,
		Tool:     "liftlint",
		Caution:  report.Caution,
		FailOn:   string(run.Threshold()),
		Exit:     Exit{int(run.Exit()), run.Meaning()},
		Summary:  Summary{c.Plans, 0, c.Judged, c.NotValid, c.NotChecked, c.Errors, c.Warnings, c.Notes, c.NotJudged, c.Waived, c.Known},
		Failures: listOf(run.Failures),
		LeftOut:  LeftOut{run.Unchanged, listOf(run.Gone), listOf(run.GoneConfigs), listOf(run.NotCompared)},
		Plans:    []Plan{}, Registers: []Register{},
	}
	for _, x := range run.Results {
		if x == nil {
			return Report{}, errNoResult
		}
		if report.IsGear(x) {
			r.Registers = append(r.Registers, registerOf(x))
		} else {
			r.Plans = append(r.Plans, planOf(x))
		}
	}
	r.Summary.Plans, r.Summary.Registers = len(r.Plans), len(r.Registers)
	return r, nil
}

func registerOf(x *lint.Result) Register {
	return Register{
		File:         x.File,
		State:        string(x.State),
		Title:        some(x.Title),
		Profile:      some(x.Profile),
		Stage:        some(x.Stage),
		Day:          some(x.Day),
		Items:        x.Gear.Items,
		Judged:       x.Gear.Judged,
		NotInService: x.Gear.Aside,
		Settings:     each(x.Overrides, settingOf),
		Findings:     each(x.Findings, findingOf),
		Checked:      each(x.Checked, checkedOf),
	}
}

func settingOf(o policy.Override) Setting { return Setting{o.Rule, o.What, o.From, o.Was, o.Is} }

func planOf(x *lint.Result) Plan {
	return Plan{
		File:     x.File,
		State:    string(x.State),
		ID:       some(x.ID),
		Title:    some(x.Title),
		Units:    some(string(x.Units)),
		Profile:  some(x.Profile),
		Stage:    some(x.Stage),
		Day:      some(x.Day),
		Settings: each(x.Overrides, settingOf),
		Findings: each(x.Findings, findingOf),
		Waivers:  each(report.Waived(x), waiverOf),
		Checked:  each(x.Checked, checkedOf),
	}
}

func findingOf(f finding.Finding) Finding {
	return Finding{
		Rule:      f.Rule,
		Title:     f.Title,
		Severity:  string(f.Severity),
		Grade:     some(f.Grade),
		Key:       f.Key,
		Message:   f.Message,
		Place:     placeOf(f.Place),
		Related:   each(f.Related, func(x finding.Related) Related { return Related{x.Caption, placeOf(x.Place)} }),
		Measured:  figureOf(f.Measured),
		Limit:     figureOf(f.Limit),
		Remedy:    some(f.Remedy),
		Citations: each(f.Citations, citationOf),
		SetAside:  setAside(f.Aside),
	}
}

func setAside(a *finding.Aside) *SetAside {
	if a == nil {
		return nil
	}
	return &SetAside{string(a.Means), a.Words(), placeOf(a.Place)}
}

func waiverOf(f finding.Finding) Waiver {
	a := f.Aside
	return Waiver{f.Rule, f.Key, some(f.Grade), a.Reason, a.By, a.ApprovedBy, a.Until, placeOf(a.Place)}
}

func placeOf(at source.Location) Place {
	p := Place{File: at.File, Pointer: at.Pointer}
	if !at.Range.IsZero() {
		p.Range = &Range{Position(at.Range.From), Position(at.Range.To)}
	}
	return p
}

// figureOf leaves out a number that JSON can't carry; its text says it still.
func figureOf(x *finding.Figure) *Figure {
	if x == nil {
		return nil
	}
	f := Figure{Field: x.Field, Text: x.Text}
	if !math.IsNaN(x.Value) && !math.IsInf(x.Value, 0) {
		f.Value = &x.Value
	}
	return &f
}

func citationOf(c finding.Citation) Citation {
	return Citation{c.Document, some(c.Edition), some(c.Clause), string(c.Basis), c.Basis.Words()}
}

func checkedOf(c lint.Checked) Checked {
	return Checked{
		Rule:         c.Rule,
		Title:        c.Title,
		Broken:       listOf(c.Broken),
		NotJudged:    each(c.NotJudged, func(u lint.Unjudged) Unjudged { return Unjudged{u.Key, listOf(u.WaitsFor)} }),
		Met:          listOf(c.Met),
		DoesNotApply: some(c.DoesNotApply),
	}
}

// some is a text that is absent where it is empty.
func some(text string) *string {
	if text == "" {
		return nil
	}
	return &text
}

// each makes a list that is never null.
func each[A, B any](list []A, f func(A) B) []B {
	out := make([]B, len(list))
	for i, x := range list {
		out[i] = f(x)
	}
	return out
}

func listOf(list []string) []string { return each(list, func(s string) string { return s }) }
