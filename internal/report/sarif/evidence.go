package sarif

import (
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/report"
)

// evidence gives a result for each subject without a finding: pass where it meets
// the rule, open where it could not be judged, notApplicable where a rule has no
// subject. A rule that judged nothing and does not say why is open: silence is
// never taken for met.
func (c *catalog) evidence(x *lint.Result) []result {
	var list []result
	for _, k := range x.Checked {
		for _, key := range k.Met {
			list = append(list, c.without(x, k.Rule, "pass", key, key+" meets the rule"))
		}
		for _, u := range k.NotJudged {
			list = append(list, c.without(x, k.Rule, "open", u.Key, u.Key+" was not judged: "+waits(u)))
		}
		switch {
		case k.DoesNotApply != "":
			list = append(list, c.without(x, k.Rule, "notApplicable", "", "the rule does not apply: "+k.DoesNotApply))
		case report.Subjects(k) == 0:
			list = append(list, c.without(x, k.Rule, "open", "", "the rule judged nothing, and does not say why"))
		}
	}
	return list
}

func waits(u lint.Unjudged) string {
	if len(u.WaitsFor) == 0 {
		return "it waits for something that is not named"
	}
	return strings.Join(u.WaitsFor, "; ")
}

// without is a result without a finding, which has no level.
func (c *catalog) without(x *lint.Result, rule, kind, key, said string) result {
	at := location{PhysicalLocation: physical{ArtifactLocation: file(x.File)}}
	if key != "" {
		at.LogicalLocations = []logical{{key}}
	}
	return result{
		RuleID:    rule,
		RuleIndex: c.index[rule],
		Kind:      kind,
		Level:     "none",
		Message:   text{Text: message(report.Sentence(said))},
		Locations: []location{at},
	}
}
