package jsonreport

import (
	"encoding/json"
	"io"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/source"
)

// Write writes the whole run as one JSON document.
func Write(w io.Writer, run report.Run) error {
	d := Document{
		Version:  Version,
		Caution:  report.Caution,
		FailOn:   string(run.FailOn),
		Summary:  run.Count(),
		Failures: list(run.Failures),
		Plans:    each(run.Results, planOf),
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(d)
}

func planOf(r *lint.Result) Plan {
	return Plan{
		File:     r.File,
		State:    string(r.State),
		ID:       r.ID,
		Title:    r.Title,
		Profile:  r.Profile,
		Stage:    r.Stage,
		Day:      r.Day,
		Findings: each(r.Findings, findingOf),
		Checked:  each(r.Checked, checkedOf),
	}
}

func findingOf(f finding.Finding) Finding {
	return Finding{
		Rule:      f.Rule,
		Title:     f.Title,
		Severity:  string(f.Severity),
		Grade:     f.Grade,
		Key:       f.Key,
		Message:   f.Message,
		Place:     placeOf(f.Place),
		Related:   each(f.Related, relatedOf),
		Measured:  f.Measured,
		Limit:     f.Limit,
		Remedy:    f.Remedy,
		Citations: list(f.Citations),
	}
}

func relatedOf(r finding.Related) Related { return Related{r.Caption, placeOf(r.Place)} }

func placeOf(l source.Location) Place {
	return Place{
		File:       l.File,
		Pointer:    l.Pointer,
		FromLine:   l.Range.From.Line,
		FromColumn: l.Range.From.Column,
		ToLine:     l.Range.To.Line,
		ToColumn:   l.Range.To.Column,
	}
}

func checkedOf(c lint.Checked) Checked {
	return Checked{
		Rule:  c.Rule,
		Title: c.Title,
		Met:   list(c.Met),
		NotJudged: each(c.NotJudged, func(u lint.Unjudged) Unjudged {
			return Unjudged{u.Key, list(u.WaitsFor)}
		}),
		Broken:       list(c.Broken),
		DoesNotApply: c.DoesNotApply,
	}
}

// each turns a list into another, never into null.
func each[A, B any](in []A, turn func(A) B) []B {
	out := make([]B, 0, len(in))
	for _, a := range in {
		out = append(out, turn(a))
	}
	return out
}

// list is the list itself, empty rather than null.
func list[T any](in []T) []T {
	if in == nil {
		return []T{}
	}
	return in
}
