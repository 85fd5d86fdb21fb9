package policy

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/nearest"
)

// Layer is what one file changes of the rules: the profile, then one
// configuration after another. A later one goes before an earlier one, as far
// as that has not locked a rule.
type Layer struct {
	Name   string             // as people know it, such as the file's path
	Rules  map[string]Setting // by the rule's id
	Locked []string           // rules that no later layer may weaken
	// Intervals are inspection intervals, shorter than what holds before; Kinds is
	// nil where all gear is meant.
	Intervals []Interval

	NotWaivable []string // rules whose findings nobody may accept

	Tree *datafile.Tree // where it stands; nil for one made in Go
}

// problem is one at the layer's entry for a pointer.
func (l Layer) problem(pointer, format string, args ...any) Problem {
	if l.Tree == nil {
		return Problem{File: l.Name, Message: fmt.Sprintf(format, args...)}
	}
	return l.Tree.Problem(pointer, format, args...)
}

// Override is one value of a rule that a configuration has set otherwise than
// METADATA and profile.
type Override struct {
	Rule string
	What string // a parameter, "severity", a grade, "off", or an inspection interval
	From string // the layer's name
	Was  string // before that layer, in words
	Is   string
}

// ruleLayer is one layer as it concerns one rule.
type ruleLayer struct {
	*checker
	Layer
	set      Setting
	own      bool   // a configuration, and not the profile
	lockedBy string // an earlier layer that locks the rule
	offBy    string // an earlier layer that switches it off
}

// ofRule lists the layers as they concern the checker's rule.
func (c *checker) ofRule() []ruleLayer {
	var list []ruleLayer
	lockedBy := ""
	offBy := ""
	for i, l := range c.layers {
		set := l.Rules[c.rule.ID]
		list = append(list, ruleLayer{c, l, set, i > 0, lockedBy, offBy})
		if offBy == "" && set.Off != "" {
			offBy = l.Name
		}
		if lockedBy == "" && slices.Contains(l.Locked, c.rule.ID) {
			lockedBy = l.Name
		}
	}
	return list
}

// note keeps what a configuration changes.
func (l ruleLayer) note(what, was, is string) {
	if l.own && was != is {
		l.rule.Overrides = append(l.rule.Overrides, Override{l.rule.ID, what, l.Name, was, is})
	}
}

// refuse notes a problem at the layer's entry for the rule.
func (l ruleLayer) refuse(under, format string, args ...any) {
	l.problems.Add(l.Layer.problem("/rules/"+datafile.Escape(l.rule.ID)+under, format, args...))
}

// free refuses a change to a rule that is locked.
func (l ruleLayer) free(under string) bool {
	if l.lockedBy != "" {
		l.refuse(under, "rule %s is locked by %s: nothing below may weaken it", l.rule.ID, l.lockedBy)
	}
	return l.lockedBy == ""
}

// freeParam is free for a parameter: which way makes it stricter is not known,
// so that it stays as it is either way.
func (l ruleLayer) freeParam(under string) bool {
	if l.lockedBy != "" {
		l.refuse(under, "rule %s is locked by %s: its parameters stay as they are there", l.rule.ID, l.lockedBy)
	}
	return l.lockedBy == ""
}

// alive refuses to set anything of a rule that is switched off: it would look
// as if the rule were in force.
func (l ruleLayer) alive() {
	set := map[string]bool{"/severity": l.set.Severity != nil, "/grades": l.set.Grades != nil, "/params": l.set.Params != nil}
	for _, under := range sortedKeys(set) {
		if l.offBy != "" && set[under] {
			l.refuse(under, "rule %s is switched off by %s, so that setting its %s would change nothing", l.rule.ID, l.offBy, under[1:])
		}
	}
}

func (l ruleLayer) params(from map[string]paramEntry) {
	for _, name := range sortedKeys(l.set.Params) {
		under := "/params/" + datafile.Escape(name)
		entry, ok := from[name]
		if !ok {
			l.refuse(under, "rule %s has no parameter %q%s", l.rule.ID, name, nearest.Hint(name, l.rule.paramNames()))
			continue
		}
		i := slices.IndexFunc(l.rule.Params, func(p Param) bool { return p.Name == name })
		p, v := &l.rule.Params[i], plainValue(l.set.Params[name])
		if why := entry.refuses(v); why != "" {
			l.refuse(under, "parameter %s of %s: the value %s", name, l.rule.ID, why)
			continue
		}
		if reflect.DeepEqual(v, p.Value) || !l.freeParam(under) {
			continue
		}
		l.note(name, Words(p.Value), Words(v))
		p.Value, p.From = v, l.Name
	}
}

// severities takes the layer's severity, or those of its grades.
func (l ruleLayer) severities(graded bool) {
	r := l.rule
	switch {
	case l.set.Severity == nil:
	case graded:
		l.refuse("/severity", "rule %s has grades: give their severities under grades", r.ID)
	default:
		if is := l.level("severity", "/severity", r.Severity, *l.set.Severity); is != r.Severity {
			r.Severity, r.SeverityFrom = is, l.Name
		}
	}
	for _, name := range sortedKeys(l.set.Grades) {
		under := "/grades/" + datafile.Escape(name)
		i, ok := r.grade(name)
		if !ok {
			l.refuse(under, "rule %s has no grade %q%s", r.ID, name, nearest.Hint(name, r.GradeNames()))
			continue
		}
		if is := l.level(name, under, r.Grades[i].Severity, l.set.Grades[name]); is != r.Grades[i].Severity {
			r.Grades[i].Severity, r.Grades[i].From = is, l.Name
		}
	}
}

// level takes a severity. Raising is free; lowering is refused where the rule
// does not allow it, and where it is locked.
func (l ruleLayer) level(what, under string, was, is Levels) Levels {
	lower := slices.ContainsFunc(Stages(), func(s string) bool { return !is.At(s).AtLeast(was.At(s)) })
	if lower && !l.rule.Lowerable {
		l.refuse(under, "rule %s can't be lowered", l.rule.ID)
		return was
	}
	if lower && !l.free(under) {
		return was
	}
	l.note(what, was.String(), is.String())
	return is
}

func (l ruleLayer) switchOff() {
	switch {
	case l.set.Off == "":
	case !l.rule.Lowerable:
		l.refuse("/off", "rule %s can't be switched off", l.rule.ID)
	case l.free("/off"):
		l.note("off", "on", l.set.Off)
		l.rule.Off, l.rule.OffBy = l.set.Off, l.Name
	}
}

// Words writes a parameter's value as METADATA and configurations do.
func Words(v any) string {
	switch v := v.(type) {
	case float64:
		return figure(v)
	case []string:
		return "[" + strings.Join(v, ", ") + "]"
	}
	return fmt.Sprint(v)
}
