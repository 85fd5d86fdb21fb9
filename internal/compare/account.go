package compare

import (
	"cmp"
	"fmt"
	"slices"

	"liftlint/internal/builtin"
	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
)

// account is how the subjects of each rule stand, with legs called by what they go
// to.
type account struct {
	judged    bool
	met       map[put]string // the key as the plan has it
	broken    map[put]bool
	notJudged map[put]lint.Unjudged // likewise, with what the rule waits for
	rules     map[string]lint.Checked
	otherwise map[string][]string // what is set otherwise than before, by rule
	texts     map[string]bool     // rules whose text is another than before
	there     map[string]bool     // the records that there are; nil where that is not known
}

// put is a subject that a rule was put to.
type put struct{ rule, subject string }

func accountOf(r *lint.Result, n names) account {
	a := account{met: map[put]string{}, broken: map[put]bool{}, notJudged: map[put]lint.Unjudged{}, rules: map[string]lint.Checked{}}
	if r == nil {
		return a
	}
	a.judged = r.State == lint.Judged
	for _, c := range r.Checked {
		rule := n.rule(c.Rule)
		a.rules[rule] = c
		for _, k := range c.Met {
			a.met[put{rule, n.of(k)}] = k
		}
		for _, k := range c.Broken {
			a.broken[put{rule, n.of(k)}] = true
		}
		for _, u := range c.NotJudged {
			a.notJudged[put{rule, n.of(u.Key)}] = u
		}
	}
	return a
}

// notAsked says why a rule is not put to the plan; false where it is.
func (a account) notAsked(rule string) (why string, ok bool) {
	c, there := a.rules[rule]
	switch {
	case !there:
		return "there is no rule " + rule + " any more", true
	case c.NotAsked:
		return c.DoesNotApply, true
	}
	return "", false
}

// noRuleRan is why nothing can be told of a plan that is not valid.
const noRuleRan = "no rule ran on the new revision"

// wentHow says how a finding went, and why that is so: it is not good news where
// nobody looked.
func (a account) wentHow(f like) (change string, why []string) {
	if !a.judged {
		return "not_judged", []string{noRuleRan}
	}
	if u, waits := a.notJudged[put{f.rule, f.subject}]; waits {
		return "not_judged", u.WaitsFor
	}
	if why, ok := a.notAsked(f.rule); ok && !slices.Contains(builtin.IDs(), f.rule) {
		return "not_looked_for", []string{why}
	}
	why = a.otherwise[f.rule]
	if a.texts[f.rule] {
		why = append(slices.Clone(why), textChanged)
		if _, met := a.met[put{f.rule, f.subject}]; !met && a.has(f.subject) {
			why = append(why, "it does not judge this any more")
		}
	}
	if len(why) > 0 {
		return "judged_otherwise", why
	}
	return "gone", nil
}

const textChanged = "the rule's text changed"

// has reports whether there may be a record.
func (a account) has(subject string) bool { return a.there == nil || a.there[subject] }

// accountAfter is the account of a revision, with what became of that before.
func accountAfter(a, b Side, an, bn names) account {
	is := accountOf(b.Result, bn)
	is.after(accountOf(a.Result, an), a.Result, b.Result, bn)
	return is
}

// after completes an account by that of the revision before.
func (a *account) after(b account, old, new *lint.Result, n names) {
	a.otherwise, a.texts = settingsChanged(old, new), map[string]bool{}
	for id, y := range a.rules {
		x := b.rules[id]
		a.texts[id] = x.By != nil && y.By != nil && x.By.Sum != y.By.Sum
	}
	if new == nil || new.Facts == nil {
		return
	}
	a.there = map[string]bool{}
	for _, name := range facts.Collections() {
		views, _ := new.Facts.Document.Records(name)
		for _, v := range views {
			a.there[n.of(v.Key)] = true
		}
	}
}

// settingsChanged says of each rule what configurations set otherwise than before.
func settingsChanged(a, b *lint.Result) map[string][]string {
	if a == nil || b == nil {
		return nil
	}
	was, is := settings(a), settings(b)
	changed := map[string][]string{}
	for _, s := range [][]policy.Override{a.Overrides, b.Overrides} {
		for _, o := range s {
			k := settingKey(o)
			if was.by[k] == is.by[k] {
				continue
			}
			why := fmt.Sprintf("%s is set to %s now", o.What, is.by[k])
			if is.by[k] == "" {
				why = fmt.Sprintf("%s is not set to %s any more", o.What, was.by[k])
			}
			if !slices.Contains(changed[o.Rule], why) {
				changed[o.Rule] = append(changed[o.Rule], why)
			}
		}
	}
	return changed
}

// finds reports whether a rule has looked at a subject and said what it found.
func (a account) finds(p put) bool {
	_, met := a.met[p]
	return met || a.broken[p]
}

// unjudged are the subjects that were met, and that the same rule can't judge or
// does not look for any more.
func unjudged(a, b account) []Subject {
	if !b.judged { // the whole plan is not, and that is said
		return nil
	}
	var list []Subject
	for p, key := range a.met {
		s := Subject{Rule: p.rule, Title: a.rules[p.rule].Title, Severity: string(a.rules[p.rule].Worst), Key: key}
		if u, waits := b.notJudged[p]; waits {
			s.Change, s.Key, s.Why = "not_judged", u.Key, u.WaitsFor
			list = append(list, s)
		} else if why, ok := b.notAsked(p.rule); ok {
			s.Change, s.Why = "not_looked_for", []string{why}
			list = append(list, s)
		} else if b.texts[p.rule] && !b.finds(p) && b.has(p.subject) {
			s.Change, s.Why = "not_looked_for", []string{textChanged + ", and it does not judge this any more"}
			list = append(list, s)
		}
	}
	slices.SortFunc(list, func(x, y Subject) int {
		return cmp.Or(finding.Severity(y.Severity).Rank()-finding.Severity(x.Severity).Rank(), cmp.Compare(x.Rule, y.Rule), cmp.Compare(x.Key, y.Key))
	})
	return list
}
