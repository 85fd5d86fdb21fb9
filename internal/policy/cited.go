package policy

import (
	"fmt"
	"slices"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/nearest"
)

// Cited is an authority behind a rule, and the grades that it is one for.
type Cited struct {
	finding.Citation
	Grades []string `json:"grades,omitempty" doc:"The grades that it is the authority for; absent for all."`
}

// String gives the citation, then its grades.
func (c Cited) String() string { return c.Citation.String() + c.Of() }

// Of lists its grades, to stand behind other words; nothing where it is for all.
func (c Cited) Of() string {
	if len(c.Grades) == 0 {
		return ""
	}
	return "; of: " + strings.ReplaceAll(strings.Join(c.Grades, ", "), "_", " ")
}

// Same tells whether two say the same.
func (c Cited) Same(d Cited) bool {
	return c.Citation == d.Citation && slices.Equal(c.Grades, d.Grades)
}

func (c Cited) concerns(grade string) bool {
	return len(c.Grades) == 0 || slices.Contains(c.Grades, grade)
}

// CitationsOf are those that concern a broken subject: all of a rule without
// grades, else those of the grade that was reached.
func (r *Rule) CitationsOf(o Outcome) []finding.Citation {
	grade := ""
	if o.Grade != nil {
		grade = o.Grade.Name
	}
	var list []finding.Citation
	for _, c := range r.Citations {
		if o.Grade == nil || c.concerns(grade) {
			list = append(list, c.Citation)
		}
	}
	return list
}

// citations keeps those of the profile in use. A rule needs one in each profile,
// for each of its grades.
func (c *checker) citations(list []citeEntry) {
	for i, e := range list {
		for k, name := range e.Grades {
			if _, known := c.rule.grade(name); !known {
				c.meta(fmt.Sprintf("/custom/cite/%d/grades/%d", i, k), "there is no grade %q%s", name, nearest.Hint(name, c.rule.GradeNames()))
			}
		}
		if len(e.Profiles) == 0 || slices.Contains(e.Profiles, c.profile) {
			c.rule.Citations = append(c.rule.Citations, Cited{e.Citation, e.Grades})
		}
	}
	if len(c.rule.Citations) == 0 {
		c.meta("/custom/cite", "nothing is cited for profile %q: cite a source, or practice, without naming profiles", c.profile)
		return
	}
	for _, g := range c.rule.Grades {
		if !slices.ContainsFunc(c.rule.Citations, func(x Cited) bool { return x.concerns(g.Name) }) {
			c.meta("/custom/cite", "nothing is cited for grade %q in profile %q", g.Name, c.profile)
		}
	}
}
