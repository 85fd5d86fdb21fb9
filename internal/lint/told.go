package lint

import (
	"strings"

	"liftlint/internal/builtin"
	"liftlint/internal/facts"
	"liftlint/internal/finding"
)

// addUntold makes a finding of each reason that another finding was to tell, as
// that a sling has no tag, and none does. Where all that tell it are set aside, so
// is the reason, by the same: it stays in sight, and does not count. It comes after
// triage, since only then it is known what counts.
func (r *Result) addUntold(reasons []*waiting) {
	for _, w := range reasons {
		telling, counts := r.telling(w)
		if counts {
			continue
		}
		if at := r.placeOf(w.reason.ToldOf); at != "" {
			w.at = at
		}
		f := r.addReason(w)
		if len(telling) > 0 {
			f.Aside = telling[0].Aside
		}
	}
	r.Findings = finding.Sort(r.Findings)
}

// placeOf is where a part, a leg or an attachment stands; empty for the lift as a
// whole.
func (r *Result) placeOf(id string) string {
	for _, collection := range []string{"gear", "legs", "attachments"} {
		views, _ := r.Facts.Document.Records(collection)
		for _, v := range views {
			if _, own, _ := strings.Cut(v.Key, "/"); own == id {
				return v.At
			}
		}
	}
	return ""
}

// telling lists the findings that say why, no milder than what waits, and whether
// one of them counts.
func (r *Result) telling(w *waiting) (telling []finding.Finding, counts bool) {
	for _, f := range r.Findings {
		if f.Rule != inputNotJudged && !ofTriage(f) && f.Severity.AtLeast(w.severity()) && isAbout(f, w.reason.ToldOf) {
			telling = append(telling, f)
			counts = counts || f.Aside == nil
		}
	}
	return telling, counts
}

// ofTriage reports findings about waivers and baselines: their keys end with the
// subject too, and they say nothing of why it can't be judged.
func ofTriage(f finding.Finding) bool {
	return strings.HasPrefix(f.Rule, "waiver/") || strings.HasPrefix(f.Rule, "baseline/")
}

// isAbout reports whether a finding is about what is named: the keys of records end
// with the id of the part or the leg. Of the lift as a whole tell the rules over the
// load and the checks of the program itself.
func isAbout(f finding.Finding, what string) bool {
	if what != facts.TheLift {
		return f.Key == what || strings.HasSuffix(f.Key, "/"+what)
	}
	_, own := builtin.Lookup(f.Rule)
	return own && f.Key == "load" || strings.HasPrefix(f.Rule, "load/")
}
