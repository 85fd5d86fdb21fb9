package policy

import (
	"cmp"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
	"liftlint/internal/facts"
	"liftlint/internal/nearest"
)

// checker goes through one rule, METADATA and text, against the facts' schema.
type checker struct {
	shape    shape
	profile  string
	layers   []Layer // the profile, then configurations
	remedies []string
	mutant   bool
	without  string
	module   *ast.Module
	tree     *datafile.Tree // the METADATA
	rule     *Rule
	problems Problems
	needs    map[string]bool // optional fields that the text reads
	unsaid   unsaid          // fields that the text reads whose value may stand for unknown
	read     map[string]bool // fields and parameters that a condition reads; no name is both
}

func (c *checker) meta(pointer, format string, args ...any) {
	c.problems.Add(c.tree.Problem(pointer, format, args...))
}

// run fills the rule in from its METADATA, then checks its text.
func (c *checker) run(m metadata) {
	r := c.rule
	r.Title, r.Description, r.Over = m.Title, m.Description, m.Custom.Over
	r.Stages, r.Measured, r.Limit = m.Custom.Stages, m.Custom.Measured, m.Custom.Limit
	r.Place, r.Remedy, r.FormerIDs = m.Custom.Place, m.Custom.Remedy, m.Custom.FormerIDs
	r.Lowerable = m.Custom.Lowerable == nil || *m.Custom.Lowerable
	r.Waivable = m.Custom.Waivable == nil || *m.Custom.Waivable
	if i := slices.IndexFunc(c.layers, func(l Layer) bool { return slices.Contains(l.NotWaivable, r.ID) }); i >= 0 {
		r.HeldBy = c.layers[i].Name
	}
	if i := slices.IndexFunc(c.layers, func(l Layer) bool { return slices.Contains(l.Locked, r.ID) }); i >= 0 {
		r.LockedBy = c.layers[i].Name
	}
	if r.NeedsFrom = m.Custom.NeedsFrom; r.NeedsFrom == "" {
		r.NeedsFrom = Review
	}
	if !slices.Contains(facts.Collections(), r.Over) {
		c.meta("/custom/over", "%q is no collection of the facts%s", r.Over, nearest.Hint(r.Over, facts.Collections()))
		return
	}
	r.Where = c.conditions("where", r.Over, m.Custom.Where)
	r.Where = slices.DeleteFunc(r.Where, func(w Condition) bool { return w.Field == c.without })
	r.When = c.conditions("when", "lifts", m.Custom.When)
	c.params(m.Custom.Params)
	c.severities(m.Custom)
	c.figures(m.Custom)
	c.messages(m.Custom)
	c.pointers()
	c.citations(m.Custom.Cite)
	c.text()
	r.asks = c.fieldsRead()
	if !c.mutant {
		c.unread(m.Custom)
	}
	r.Needs, r.reads = c.allNeeds(), c.allReads()
	r.Unsaid = c.unsaid.left(r.Where)
}

// allReads are the fields that the text and where read: all that the rule has to
// see of a record. No field is read in another way than one that is followed.
func (c *checker) allReads() []string {
	out := c.fieldsRead()
	for _, w := range c.rule.Where {
		out = append(out, w.Field)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// fieldsRead are the fields, and no parameters, among what was read so far.
func (c *checker) fieldsRead() []string {
	var out []string
	for path := range c.read {
		if _, ok := c.shape.field(c.rule.Over, path); ok {
			out = append(out, path)
		}
	}
	slices.Sort(out)
	return out
}

// allNeeds are the optional fields of the text and of where.
func (c *checker) allNeeds() []string {
	for _, w := range c.rule.Where {
		if got, ok := c.shape.field(c.rule.Over, w.Field); ok && got.optional {
			c.needs[w.Field] = true
		}
	}
	out := make([]string, 0, len(c.needs))
	for n := range c.needs {
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

// fieldAt looks a field up that the METADATA names.
func (c *checker) fieldAt(pointer, over, path string) (step, bool) {
	got, ok := c.shape.field(over, path)
	if !ok {
		c.meta(pointer, "%s: %q is no field of %s%s", path, got.failed, over, nearest.Hint(got.failed, got.known))
	}
	return got, ok
}

func (c *checker) pointers() {
	r := c.rule
	if r.Place != "" {
		if got, ok := c.fieldAt("/custom/place", r.Over, r.Place); ok {
			if _, hasAt := c.shape.field(r.Over, r.Place+".at"); got.kind.base != record || !hasAt {
				c.meta("/custom/place", "place: %s is no record with a place of its own", r.Place)
			}
		}
	}
	if r.Remedy != "" && c.remedies != nil && !slices.Contains(c.remedies, r.Remedy) {
		c.meta("/custom/remedy", "%q is no remedy%s", r.Remedy, nearest.Hint(r.Remedy, c.remedies))
	}
}

// severities settles severity and grades: METADATA first, then each layer.
func (c *checker) severities(m custom) {
	r := c.rule
	switch {
	case len(m.Grades) > 0 && m.Severity != nil:
		c.meta("/custom/severity", "severity stands in each grade, and so not here")
	case len(m.Grades) == 0 && m.Severity == nil:
		c.meta("/custom", "\"severity\" is missing: error, warning or note")
	case m.Severity != nil:
		r.Severity = *m.Severity
	}
	for i, g := range m.Grades {
		if _, twice := r.grade(g.Name); twice {
			c.meta(pointer("/custom/grades", i, "name"), "grade %q stands here twice", g.Name)
		}
		r.Grades = append(r.Grades, Grade{Name: g.Name, Title: cmp.Or(g.Title, r.Title), Severity: g.Severity})
	}
	for _, l := range c.ofRule() {
		l.alive()
		l.severities(len(m.Grades) > 0)
		l.switchOff()
	}
	c.worstFirst(m.Grades)
}

// worstFirst holds the grades to their order: Go keeps the first that a
// subject reaches, and that has to be the most severe.
func (c *checker) worstFirst(written []gradeEntry) {
	for i := 1; i < len(c.rule.Grades); i++ {
		a, b := c.rule.Grades[i-1], c.rule.Grades[i]
		stage, wrong := outOfOrder(a.Severity, b.Severity)
		if !wrong {
			continue
		}
		if _, own := outOfOrder(written[i-1].Severity, written[i].Severity); own {
			c.meta(pointer("/custom/grades", i, "severity"), "grades stand worst first: %q is more severe than %q at stage %s", b.Name, a.Name, stage)
			continue
		}
		c.disordered(a, b, stage)
	}
}

// outOfOrder names the first stage at which the later grade is the more severe.
func outOfOrder(a, b Levels) (stage string, wrong bool) {
	for _, s := range Stages() {
		if !a.At(s).AtLeast(b.At(s)) {
			return s, true
		}
	}
	return "", false
}

// disordered blames the last layer that set either of two grades.
func (c *checker) disordered(a, b Grade, stage string) {
	list := c.ofRule()
	for i := len(list) - 1; i >= 0; i-- {
		for _, name := range []string{b.Name, a.Name} {
			if _, set := list[i].set.Grades[name]; set {
				list[i].refuse("/grades/"+datafile.Escape(name), "grades of %s stand worst first, and with this %q is more severe than %q at stage %s: set both", c.rule.ID, b.Name, a.Name, stage)
				return
			}
		}
	}
}
