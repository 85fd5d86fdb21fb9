package finding

import "liftlint/internal/source"

// Means is by what a finding is set aside.
type Means string

// The means.
const (
	ByWaiver   Means = "waiver"   // in the plan
	ByBaseline Means = "baseline" // a record of what was known on another day
)

// Aside says why a finding does not count for the outcome of a run. It is shown
// all the same.
type Aside struct {
	Means      Means
	Reason     string // why; these four are empty in a baseline
	By         string // who asks for it
	ApprovedBy string
	Until      string          // the last day it holds, as year-month-day
	Place      source.Location // where it is said
}

// Words tell who set a finding aside, until when, and why.
func (a Aside) Words() string {
	if a.Means == ByBaseline {
		return "from " + a.Place.File
	}
	return "by " + a.By + ", approved by " + a.ApprovedBy + ", until " + a.Until + ": " + a.Reason
}

// Word says in one word that a finding is set aside; empty where it is not.
func (f Finding) Word() string {
	switch {
	case f.Aside == nil:
		return ""
	case f.Aside.Means == ByWaiver:
		return "waived"
	}
	return "known"
}

// Counting are the findings that are not set aside, by which a run is judged.
func Counting(fs []Finding) []Finding {
	var list []Finding
	for _, f := range fs {
		if f.Aside == nil {
			list = append(list, f)
		}
	}
	return list
}
