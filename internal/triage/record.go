package triage

import (
	"slices"
	"strings"

	"liftlint/internal/finding"
)

// Record takes down what rules find in a plan, for a baseline. What is waived and
// what nobody may accept is left out.
func Record(into *KnownPlan, c Case) Step {
	return func(fs []finding.Finding) []finding.Finding {
		into.judged = c
		for print, i := range fingerprints(into.File, fs, c) {
			if f := fs[i]; f.Aside == nil && c.forbidden(f.Rule) == "" {
				into.Findings = append(into.Findings, entryOf(f, c.stable(f.Key), print))
			}
		}
		slices.SortFunc(into.Findings, byRule)
		return fs
	}
}

func entryOf(f finding.Finding, key, print string) KnownFinding {
	k := KnownFinding{Rule: f.Rule, Key: key, Severity: string(f.Severity), Fingerprint: print, taken: f}
	if f.Grade != "" {
		k.Grade = &f.Grade
	}
	k.Measured, k.Limit = knownFigure(f.Measured), knownFigure(f.Limit)
	return k
}

func knownFigure(f *finding.Figure) *KnownFigure {
	if f == nil {
		return nil
	}
	return &KnownFigure{f.Field, f.Value}
}

func byRule(a, b KnownFinding) int {
	return strings.Compare(a.Rule+"\x00"+a.Key+"\x00"+a.Fingerprint, b.Rule+"\x00"+b.Key+"\x00"+b.Fingerprint)
}

// finding is the entry as what it was taken from, as far as entries are compared:
// without texts, so that figures are compared to the last digit that there is.
func (k KnownFinding) finding() finding.Finding {
	f := finding.Finding{Rule: k.Rule, Key: k.Key, Severity: finding.Severity(k.Severity), Measured: k.Measured.figure(), Limit: k.Limit.figure()}
	if k.Grade != nil {
		f.Grade = *k.Grade
	}
	return f
}

func (k *KnownFigure) figure() *finding.Figure {
	if k == nil {
		return nil
	}
	return &finding.Figure{Field: k.Field, Value: k.Value}
}
