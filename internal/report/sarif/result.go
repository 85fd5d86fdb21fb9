package sarif

import (
	"math"
	"reflect"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/report"
	"liftlint/internal/source"
)

// Names of fingerprints. The first is liftlint's own, versioned as the standard
// asks. The second is the one that code scanning of GitHub looks for, by its
// documentation as remembered; without it that service would count lines.
const (
	ownPrint    = "ruleAndSubject/v1"
	sharedPrint = "primaryLocationLineHash"
)

// results are those of one plan: its findings and, where asked for, the evidence
// of what was looked at without a finding.
func (c *catalog) results(x *lint.Result, o Options) []result {
	var list []result
	prints := report.Fingerprints(x)
	for i, f := range x.Findings {
		list = append(list, c.found(x, f, prints[i]))
	}
	if o.Evidence {
		list = append(list, c.evidence(x)...)
	}
	return list
}

func (c *catalog) found(x *lint.Result, f finding.Finding, print string) result {
	r := result{
		RuleID:              f.Rule,
		RuleIndex:           c.index[f.Rule],
		Kind:                "fail",
		Level:               level(f.Severity),
		Message:             text{Text: message(sentences(x, f))},
		Locations:           []location{place(f)},
		RelatedLocations:    related(f),
		Fingerprints:        map[string]string{ownPrint: print},
		PartialFingerprints: map[string]string{sharedPrint: print + ":1"},
		Properties:          properties(x, f),
		Suppressions:        suppressions(f),
	}
	if f.Place.File != x.File {
		target := file(x.File)
		r.AnalysisTarget = &target
	}
	return r
}

// sentences are the finding in words; the first is all that a narrow view shows.
func sentences(x *lint.Result, f finding.Finding) string {
	said := f.Message
	if said == "" {
		said = f.Title
	}
	said = report.Named(x, f, report.Sentence(said))
	if f.Remedy != "" {
		said += " To put it right: " + strings.TrimSuffix(f.Remedy, ".") + "."
	}
	return said + " Source: " + report.Sources(f.Citations) + "."
}

// place is where to look first, within one line: what is marked over several
// lines hides what is at fault.
func place(f finding.Finding) location {
	at := location{PhysicalLocation: physical{file(f.Place.File), oneLine(f.Place.Range)}}
	if f.Key != "" {
		at.LogicalLocations = []logical{{f.Key}}
	}
	return at
}

// related are the other places that had a part in a finding, and the whole of a
// value that stands on several lines; none is told twice.
func related(f finding.Finding) []location {
	var list []location
	if r := f.Place.Range; r.To.Line > r.From.Line && !r.IsZero() {
		list = append(list, location{PhysicalLocation: physical{file(f.Place.File), whole(r)}, Message: &text{Text: "the whole of it"}})
	}
	for _, x := range f.Related {
		at := location{PhysicalLocation: physical{file(x.Place.File), oneLine(x.Place.Range)}, Message: shown(x.Caption)}
		if !slices.ContainsFunc(list, func(have location) bool { return reflect.DeepEqual(have, at) }) {
			list = append(list, at)
		}
	}
	return list
}

func oneLine(r source.Range) *region {
	if r.From.Line < 1 || r.From.Column < 1 {
		return nil
	}
	at := &region{StartLine: r.From.Line, StartColumn: r.From.Column, EndLine: r.From.Line}
	if r.To.Line == r.From.Line {
		at.EndColumn = max(r.To.Column, r.From.Column)
	}
	return at
}

func whole(r source.Range) *region {
	at := oneLine(r)
	if at != nil {
		at.EndLine, at.EndColumn = r.To.Line, max(r.To.Column, 1)
	}
	return at
}

// properties keep what is no part of a finding's identity: figures above all.
func properties(x *lint.Result, f finding.Finding) map[string]any {
	p := map[string]any{"key": f.Key, "citations": citations(f.Citations)}
	for name, value := range map[string]string{"grade": f.Grade, "pointer": f.Place.Pointer, "remedy": f.Remedy, "plan": x.ID, "profile": x.Profile, "stage": x.Stage, "day": x.Day} {
		if value != "" {
			p[name] = value
		}
	}
	for name, value := range map[string]*finding.Figure{"measured": f.Measured, "limit": f.Limit} {
		if value != nil {
			p[name] = figureOf(*value)
		}
	}
	return p
}

// figureOf leaves out a number that JSON can't carry; its text says it still.
func figureOf(x finding.Figure) figure {
	f := figure{Field: x.Field, Text: x.Text}
	if !math.IsNaN(x.Value) && !math.IsInf(x.Value, 0) {
		f.Value = &x.Value
	}
	return f
}
