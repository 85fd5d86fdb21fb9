package policy

// unread refuses what METADATA names and no condition reads: a parameter that
// can be set and changes nothing, and a figure that is shown as measured and was
// not. It speaks only where the rule has no other problem, which might be why
// nothing reads it.
func (c *checker) unread(m custom) {
	if len(c.problems) > 0 {
		return
	}
	for _, w := range c.rule.Where {
		c.read[w.Field] = true
	}
	for _, p := range c.rule.Params {
		if !c.read[p.Name] {
			c.meta("/custom/params/"+p.Name, "parameter %s is read by no condition, so that setting it would change nothing", p.Name)
		}
	}
	c.unmeasured("/custom/measured", m.Measured)
	for i, g := range m.Grades {
		c.unmeasured(pointer("/custom/grades", i, "measured"), g.Measured)
	}
}

func (c *checker) unmeasured(at, field string) {
	if field != "" && !c.read[field] {
		c.meta(at, "measured: no condition reads %s", field)
	}
}
