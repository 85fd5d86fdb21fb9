package compare

import (
	"cmp"
	"slices"

	"liftlint/internal/builtin"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// account is which subjects each rule met and could not judge, with legs called by
// what they go to.
type account struct {
	judged    bool
	met       map[Subject]bool
	notJudged map[Subject]string // the key as the plan has it
	rules     map[string]bool
}

func accountOf(r *lint.Result, n names) account {
	a := account{met: map[Subject]bool{}, notJudged: map[Subject]string{}, rules: map[string]bool{}}
	if r == nil {
		return a
	}
	a.judged = r.State == lint.Judged
	for _, c := range r.Checked {
		a.rules[c.Rule] = true
		for _, k := range c.Met {
			a.met[Subject{c.Rule, n.of(k)}] = true
		}
		for _, u := range c.NotJudged {
			a.notJudged[Subject{c.Rule, n.of(u.Key)}] = u.Key
		}
	}
	return a
}

// wentHow says how a finding went: that is not good news where nobody looked.
func (a account) wentHow(f finding.Finding, subject string) string {
	_, waits := a.notJudged[Subject{f.Rule, subject}]
	switch {
	case !a.judged || waits:
		return "not_judged"
	case !a.rules[f.Rule] && !slices.Contains(builtin.IDs(), f.Rule):
		return "not_looked_for"
	}
	return "gone"
}

// unjudged are the subjects that were met and can't be judged any more.
func unjudged(a, b account) []Subject {
	var list []Subject
	for s, key := range b.notJudged {
		if a.met[s] {
			list = append(list, Subject{s.Rule, key})
		}
	}
	slices.SortFunc(list, func(x, y Subject) int { return cmp.Or(cmp.Compare(x.Rule, y.Rule), cmp.Compare(x.Key, y.Key)) })
	return list
}
