package report

import (
	"fmt"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Waived are the findings of a plan that a waiver in force sets aside, one for
// each waiver, in reading order.
func Waived(r *lint.Result) []finding.Finding { return asideBy(r, finding.ByWaiver) }

// Known are the findings of a plan that the baseline sets aside.
func Known(r *lint.Result) []finding.Finding { return asideBy(r, finding.ByBaseline) }

func asideBy(r *lint.Result, means finding.Means) []finding.Finding {
	var list []finding.Finding
	for _, f := range r.Findings {
		if f.Aside != nil && f.Aside.Means == means {
			list = append(list, f)
		}
	}
	return list
}

// WaiverOf tells all of a waiver in force: of what, by whom, until when, why, and
// where it stands.
func WaiverOf(f finding.Finding) string {
	words := f.Rule + " on " + f.Key
	if f.Grade != "" {
		words += ", grade " + f.Grade
	}
	return words + ": " + f.Aside.Words() + " (" + Place(f.Aside.Place) + ")"
}

// asideWords counts what is set aside; empty where nothing is.
func (c Counts) asideWords() string {
	var parts []string
	if c.Waived > 0 {
		parts = append(parts, fmt.Sprintf("%d waived", c.Waived))
	}
	if c.Known > 0 {
		parts = append(parts, fmt.Sprintf("%d known from the baseline", c.Known))
	}
	return strings.Join(parts, " and ")
}
