package compare

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/quantity"
)

// rulings gathers what the revisions of a plan are judged by, as far as it differs.
type rulings struct {
	list  []Ruling
	units quantity.System
	// bySettings leaves out what follows from another profile.
	bySettings bool
}

// judgedOtherwise compares what the revisions are judged by.
func judgedOtherwise(a, b *lint.Result, an, bn names) []Ruling {
	g := rulings{units: b.Units, bySettings: a.Profile != b.Profile}
	if a.State != b.State {
		g.add(Ruling{What: "how far it came"}, spaced(string(a.State)), spaced(string(b.State)))
		return g.list
	}
	g.add(Ruling{What: "profile"}, a.Profile, b.Profile)
	g.add(Ruling{What: "stage"}, a.Stage, b.Stage)
	g.add(Ruling{What: "day"}, a.Day, b.Day)
	g.held(Ruling{What: "profile, locked", Severity: string(finding.Error)}, a.ProfileLockedBy, b.ProfileLockedBy)
	was, is := accountOf(a, an).rules, accountOf(b, bn).rules
	all := maps.Clone(was)
	maps.Copy(all, is)
	for _, id := range slices.Sorted(maps.Keys(all)) {
		x, before := was[id]
		y, now := is[id]
		switch {
		case !now:
			g.list = append(g.list, Ruling{What: "there is no rule " + id + " any more", Rule: id, Severity: string(x.Worst), Milder: true})
		case !before:
			g.list = append(g.list, Ruling{What: "there is a rule " + id + " now", Rule: id, Severity: string(y.Worst)})
		default:
			g.rule(id, x, y)
		}
	}
	g.overrides(a, b, was, is)
	slices.SortStableFunc(g.list, func(x, y Ruling) int { return cmp.Compare(x.Rule, y.Rule) })
	return g.list
}

// add adds what differs; empty is that nothing is given.
func (g *rulings) add(r Ruling, was, is string) {
	if was == is {
		return
	}
	if was != "" {
		r.Old = &was
	}
	if is != "" {
		r.New = &is
	}
	g.list = append(g.list, r)
}

// held adds what a file holds fast. That another one does makes no difference.
func (g *rulings) held(r Ruling, was, is string) {
	if (was == "") == (is == "") {
		return
	}
	r.Milder = is == ""
	for _, by := range []*string{&was, &is} {
		if *by != "" {
			*by = "by " + *by
		}
	}
	g.add(r, was, is)
}

// rule compares a rule with itself. x and y are how it was settled.
func (g *rulings) rule(id string, x, y lint.Checked) {
	if x.By == nil || y.By == nil {
		return
	}
	a, b := x.By, y.By
	of := func(what string) Ruling {
		return Ruling{What: id + ", " + what, Rule: id, Severity: string(x.Worst)}
	}
	if a.Sum != b.Sum {
		g.list = append(g.list, of("the rule's text"))
	}
	g.held(of("locked"), a.LockedBy, b.LockedBy)
	g.held(of("not waivable"), notWaivableBy(a), notWaivableBy(b))
	off := of("off")
	off.Milder = a.Off == ""
	g.add(off, a.Off, b.Off)
	if a.Off+b.Off == "" && x.NotAsked != y.NotAsked {
		asked := of("not asked")
		asked.Milder = y.NotAsked
		g.add(asked, waits(x), waits(y))
	}
	g.levels(of, a, b)
	g.params(of, a, b)
}

func notWaivableBy(r *policy.Rule) string {
	if !r.Waivable {
		return "the rule's text"
	}
	return r.HeldBy
}

func waits(c lint.Checked) string {
	if c.NotAsked {
		return cmp.Or(c.DoesNotApply, "it is not said why")
	}
	return ""
}

// isSet reports whether a configuration sets something of one of the rules.
func isSet(what string, rules ...*policy.Rule) bool {
	return slices.ContainsFunc(rules, func(r *policy.Rule) bool {
		return slices.ContainsFunc(r.Overrides, func(o policy.Override) bool { return o.What == what })
	})
}

func (g *rulings) levels(of func(string) Ruling, a, b *policy.Rule) {
	was, is := levelsOf(a), levelsOf(b)
	all := maps.Clone(was)
	maps.Copy(all, is)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		if g.bySettings && !isSet(name, a, b) {
			continue
		}
		r := of(name)
		x, before := was[name]
		y, now := is[name]
		for _, stage := range policy.Stages() {
			if before && (!now || !y.At(stage).AtLeast(x.At(stage))) {
				if s := x.At(stage); !r.Milder || s.AtLeast(finding.Severity(r.Severity)) {
					r.Severity = string(s)
				}
				r.Milder = true
			}
		}
		g.add(r, textOf(x, before), textOf(y, now))
	}
}

func textOf(l policy.Levels, there bool) string {
	if !there {
		return ""
	}
	return l.String()
}

// levelsOf are the severities of a rule, by grade.
func levelsOf(r *policy.Rule) map[string]policy.Levels {
	if len(r.Grades) == 0 {
		return map[string]policy.Levels{"severity": r.Severity}
	}
	list := map[string]policy.Levels{}
	for _, g := range r.Grades {
		list[g.Name] = g.Severity
	}
	return list
}

func (g *rulings) params(of func(string) Ruling, a, b *policy.Rule) {
	was, is := paramsOf(a), paramsOf(b)
	all := maps.Clone(was)
	maps.Copy(all, is)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		if g.bySettings && !isSet(name, a, b) {
			continue
		}
		r := of(name)
		x, isNumber := was[name].Value.(float64)
		y, stays := is[name].Value.(float64)
		r.Milder = isNumber && stays && float64(is[name].Milder)*(y-x) > 0
		r.Severity = string(limited(a, name, finding.Severity(r.Severity)))
		g.add(r, g.words(was[name]), g.words(is[name]))
	}
}

// limited is the worst severity of the grades that a parameter is the limit of.
func limited(r *policy.Rule, param string, otherwise finding.Severity) finding.Severity {
	worst := finding.Severity("")
	for _, g := range r.Grades {
		if cmp.Or(g.Limit, r.Limit) != param {
			continue
		}
		for _, stage := range policy.Stages() {
			if s := g.Severity.At(stage); worst == "" || s.AtLeast(worst) {
				worst = s
			}
		}
	}
	return cmp.Or(worst, otherwise)
}

func paramsOf(r *policy.Rule) map[string]policy.Param {
	list := map[string]policy.Param{}
	for _, p := range r.Params {
		list[p.Name] = p
	}
	return list
}

// words are a parameter's value in the plan's units; empty where there is none.
func (g *rulings) words(p policy.Param) string {
	if p.Name == "" {
		return ""
	}
	if v, ok := p.Value.(float64); ok {
		if text, ok := quantity.FormatSuffix(p.Name, v, g.units); ok {
			return text
		}
	}
	return policy.Words(p.Value)
}

// overrides compares what configurations set besides: inspection intervals, and of
// rules of which no more is known.
func (g *rulings) overrides(a, b *lint.Result, was, is map[string]lint.Checked) {
	x, y := settings(a), settings(b)
	for _, k := range slices.Compact(slices.Sorted(slices.Values(slices.Concat(x.keys, y.keys)))) {
		rule, what, _ := strings.Cut(k, ", ")
		interval := strings.HasPrefix(what, "interval ")
		if was[rule].By != nil && is[rule].By != nil && !interval {
			continue
		}
		r := Ruling{What: k, Rule: rule}
		if interval {
			r.Severity, r.Milder = string(was[rule].Worst), longer(x.by[k], y.by[k])
		}
		g.add(r, x.by[k], y.by[k])
	}
}

// longer reports whether an interval became longer. One that a configuration sets is
// shorter than what holds without.
func longer(was, is string) bool {
	if was == "" || is == "" {
		return is == ""
	}
	x, err := strconv.Atoi(strings.Fields(was + " .")[0])
	y, err2 := strconv.Atoi(strings.Fields(is + " .")[0])
	return err != nil || err2 != nil || y > x
}

type settingList struct {
	keys []string
	by   map[string]string
}

// settings are what configurations set, by rule.
func settings(r *lint.Result) settingList {
	s := settingList{by: map[string]string{}}
	for _, o := range r.Overrides {
		k := settingKey(o)
		s.keys = append(s.keys, k)
		s.by[k] = fmt.Sprint(o.Is)
	}
	return s
}

func settingKey(o policy.Override) string { return o.Rule + ", " + o.What }
