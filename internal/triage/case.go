package triage

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"liftlint/internal/source"
)

// Rule is what triage has to know of a rule and of how it was put to a plan.
type Rule struct {
	ID        string
	FormerIDs []string
	Grades    []string // worst first; empty for a rule without
	Forbidden string   // why nobody may accept what it finds; empty where one may
	Subjects  []string // keys of the records it was put to
	NotJudged []Wait   // those of them that it could not judge
	NotAsked  string   // why it was not put to the plan at all; empty where it was
}

// Wait is a subject that a rule could not judge.
type Wait struct {
	Key string
	For []string // what it waits for, in words
}

// idle says why a rule can't tell whether it still finds anything on a subject;
// empty where it has looked.
func (r Rule) idle(subject string) string {
	if r.NotAsked != "" {
		return r.ID + " is not asked (" + r.NotAsked + ")"
	}
	for _, w := range r.NotJudged {
		if w.Key != subject {
			continue
		}
		why := "something that is not named"
		if len(w.For) > 0 {
			why = strings.Join(w.For, "; ")
		}
		return fmt.Sprintf("%s can't judge %s (%s)", r.ID, subject, why)
	}
	return ""
}

// idle is that of the rule with an id; a rule that is not there has not looked.
func (c Case) idle(id, subject string) string {
	r, _, ok := c.rule(id)
	if !ok {
		return "there is no rule " + id + " here"
	}
	return r.idle(c.here(subject))
}

// stable is the key by which a subject is known again when legs change places.
func (c Case) stable(key string) string {
	if c.Stable == nil {
		return key
	}
	return c.Stable(key)
}

// here is the key that the plan has now for a subject known by its stable one.
func (c Case) here(stable string) string {
	for _, key := range c.Keys {
		if c.stable(key) == stable {
			return key
		}
	}
	return stable
}

// byPlace says why a key can't be kept; empty where it can. It is that of a leg
// without an id, whose number passes to another leg when legs change places.
func (c Case) byPlace(key string) string {
	known := c.stable(key)
	if known == key {
		return ""
	}
	return fmt.Sprintf("%s has the number of a leg without an id, which passes to another leg when legs change places", key)
}

// Case is what is known of the plan whose findings are gone over.
type Case struct {
	Rules  []Rule
	Keys   []string                // of all records of the plan
	Stable func(key string) string // the key by which a record is known again when legs change places; nil where all are
	Day    *time.Time              // judged for; nil where it is not known
	Locate func(pointer string) source.Location
	Print  func(field string, value float64) string // a figure in the plan's units
}

// rule finds a rule by its id, or by one that it had before.
func (c Case) rule(id string) (r Rule, former, ok bool) {
	for _, r := range c.Rules {
		if r.ID == id {
			return r, false, true
		}
	}
	for _, r := range c.Rules {
		if slices.Contains(r.FormerIDs, id) {
			return r, true, true
		}
	}
	return Rule{}, false, false
}

// grades are those of a rule, worst first.
func (c Case) grades(id string) []string {
	r, _, _ := c.rule(id)
	return r.Grades
}

// forbidden says why nobody may accept what a rule finds; empty where one may.
func (c Case) forbidden(id string) string {
	r, _, ok := c.rule(id)
	if !ok {
		return "rule " + id + " is not known"
	}
	return r.Forbidden
}

// ids lists the rules.
func (c Case) ids() []string {
	list := make([]string, len(c.Rules))
	for i, r := range c.Rules {
		list[i] = r.ID
	}
	return list
}
