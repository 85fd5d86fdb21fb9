package sarif

import "liftlint/internal/finding"

// suppression tells that a finding is set aside (3.35).
type suppression struct {
	Kind          string    `json:"kind"`   // inSource: in the plan; external: in the baseline
	Status        string    `json:"status"` // one that is not accepted is a finding of its own
	Justification string    `json:"justification"`
	Location      *location `json:"location,omitempty"`
}

func suppressions(f finding.Finding) []suppression {
	if f.Aside == nil {
		return nil
	}
	s := suppression{Kind: "inSource", Status: "accepted", Justification: message(f.Aside.Words())}
	if f.Aside.Means == finding.ByBaseline {
		s.Kind = "external"
	}
	at := f.Aside.Place
	s.Location = &location{PhysicalLocation: physical{file(at.File), oneLine(at.Range)}}
	return []suppression{s}
}

// suppress has every result say whether it is set aside, where any does (3.27.23).
func suppress(list []result) {
	any := false
	for _, r := range list {
		any = any || len(r.Suppressions) > 0
	}
	for i := range list {
		if any && list[i].Suppressions == nil {
			list[i].Suppressions = []suppression{}
		}
	}
}
