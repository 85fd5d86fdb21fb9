package triage

import (
	"slices"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/plan"
)

// Waive sets aside what the plan's waivers accept, and tells of every waiver that
// does not hold. The order of the waivers makes no difference.
func Waive(waivers []plan.Waiver, c Case) Step {
	return func(fs []finding.Finding) []finding.Finding {
		out := slices.Clone(fs)
		var said []finding.Finding
		for i, w := range waivers {
			x := newWaiving(w, c, fs)
			if x.isKnown() && !x.isTwice(i, waivers) && x.isInForce() {
				for _, k := range x.found {
					out[k].Aside = x.aside()
				}
			}
			said = append(said, x.said...)
		}
		return append(out, said...)
	}
}

// waiving is one waiver as it is looked into.
type waiving struct {
	plan.Waiver
	Case
	rule  Rule
	found []int // indices of the findings that it names
	of    []finding.Finding
	said  []finding.Finding
}

func newWaiving(w plan.Waiver, c Case, fs []finding.Finding) *waiving {
	x := &waiving{Waiver: w, Case: c}
	x.rule, _, _ = c.rule(w.Rule)
	for i, f := range fs {
		if x.rule.ID != "" && f.Rule == x.rule.ID && f.Key == x.here(w.Subject) {
			x.found, x.of = append(x.found, i), append(x.of, f)
		}
	}
	return x
}

func (x *waiving) aside() *finding.Aside {
	return &finding.Aside{
		Means:      finding.ByWaiver,
		Reason:     x.Reason,
		By:         x.By,
		ApprovedBy: x.ApprovedBy,
		Until:      day(x.Until),
		Place:      x.Locate(x.Pointer),
	}
}

// say adds a finding about the waiver, at one of its keys, and is false: the
// waiver does not hold.
func (x *waiving) say(id, key, message string) bool {
	at := x.Locate(x.Pointer + "/" + key)
	x.said = append(x.said, builtin.Finding(id, message, "waiver/"+x.Waiver.Rule+"/"+x.Subject, at, x.related()))
	return false
}

// related is where the fault is that the waiver is meant for.
func (x *waiving) related() []finding.Related {
	var list []finding.Related
	for _, f := range x.of {
		list = append(list, finding.Related{Caption: "what it is about", Place: f.Place})
	}
	return list
}
