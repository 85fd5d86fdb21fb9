package lint

import (
	"liftlint/internal/finding"
	"liftlint/internal/policy"
	"liftlint/internal/remedy"
)

// mend adds to each finding what would put it right.
func (r *Result) mend(m *remedy.Mender, verdicts []policy.Verdict) {
	for _, v := range verdicts {
		if v.Rule.Remedy == "" {
			continue
		}
		for _, o := range v.Outcomes {
			if o.State != policy.Broken || v.Rule.SeverityOf(o, r.Stage) == finding.Note {
				continue // a note asks for nothing to be put right
			}
			_, limit, _ := v.Rule.LimitOf(o)
			field, _, _ := v.Rule.MeasuredOf(o)
			text, ok := m.Mend(v.Rule.Remedy, o.Subject, field, limit)
			if ok {
				r.attach(v.Rule.ID, o.Subject.Key, text)
			}
		}
	}
}

func (r *Result) attach(rule, key, text string) {
	for i := range r.Findings {
		if r.Findings[i].Rule == rule && r.Findings[i].Key == key {
			r.Findings[i].Remedy = text
		}
	}
}
