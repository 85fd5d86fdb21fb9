package lint

import "liftlint/internal/triage"

// knownBy is the baseline by which findings were set aside, and what the plan is called
// there.
type knownBy struct {
	baseline *triage.Baseline // nil for none
	name     string
	judged   triage.Case
}

// Grown are the entries of a baseline that set findings of the plan aside, and that were
// not in the one of a revision before, or not so bad. file is the baseline's name.
func (r *Result) Grown(before *Result) (file string, entries []triage.KnownFinding) {
	if r.known.baseline == nil {
		return "", nil
	}
	return r.known.baseline.File, triage.Grown(before.known.baseline, r.known.baseline, before.known.name, r.known.name, r.known.judged)
}
