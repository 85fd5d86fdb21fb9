package lint

import (
	"context"
	"slices"
	"strings"

	"liftlint/internal/compute"
	"liftlint/internal/plan"
	"liftlint/internal/policy"
)

// gearJudging is what gear by itself is judged by.
type gearJudging struct {
	pack       *policy.Pack      // the rules that are asked
	rules      []*policy.Rule    // all there are, by id
	notAsked   map[string]string // why a rule is not asked, by its id
	conditions compute.Conditions
}

// gearJudging are the conditions of the profile, with the rules that can be asked of
// gear by itself, company rules among them.
func (l *Linter) gearJudging(ctx context.Context) (*gearJudging, error) {
	whole, conditions, err := l.conditions(&plan.Plan{})
	if err != nil {
		return nil, err
	}
	g := &gearJudging{rules: whole.Rules(), notAsked: map[string]string{}, conditions: conditions}
	o, err := l.RuleOptions(conditions.Profile)
	if err != nil {
		return nil, err
	}
	o.Only = []string{}
	for _, r := range g.rules {
		if why := asksForPlan(r); why != "" {
			g.notAsked[r.ID] = why
			continue
		}
		o.Only = append(o.Only, r.ID)
	}
	g.pack, err = policy.Load(ctx, o)
	return g, err
}

// ofLift are the fields of the lift that are known without a plan.
var ofLift = []string{"profile", "stage"}

// asksForPlan says why a rule can't be asked of gear by itself: it goes over records
// that a plan alone has, or reads of them what a plan alone gives. Empty where it can.
func asksForPlan(r *policy.Rule) string {
	onlyInPlan, ok := compute.Alone(r.Over)
	if !ok {
		return "it is over " + r.Over + ", which only a plan has"
	}
	for _, c := range r.When {
		if !slices.Contains(ofLift, c.Field) {
			return "it asks for " + c.Field + " of the lift, which only a plan gives"
		}
	}
	fields := r.Asks()
	for _, c := range r.Where {
		if c.Field != uses || !oneUseIsEnough(c) {
			fields = append(fields, c.Field)
		}
	}
	for _, f := range fields {
		if f == uses {
			return "it asks how often an item is used, which only a plan gives"
		}
		if slices.Contains(onlyInPlan, f) {
			return "it asks for " + strings.ReplaceAll(f, "_", " ") + " of " + r.Over + ", which only a plan gives"
		}
	}
	return ""
}

// uses is the number of times that a plan uses an item: one, where there is none.
const uses = "uses"

// oneUseIsEnough reports whether a condition on the number of uses lets through all
// that is used.
func oneUseIsEnough(c policy.Condition) bool {
	return len(c.Values) == 0 && c.AtMost == nil && (c.AtLeast == nil || *c.AtLeast <= 1)
}

// GearRules are all the rules there are, those that are not asked of gear by itself
// included.
func (l *Linter) GearRules(ctx context.Context) ([]*policy.Rule, error) {
	g, err := l.gearJudging(ctx)
	if err != nil {
		return nil, err
	}
	return g.rules, nil
}

// notAskedPrefix begins the reason of a rule that was not put to gear by itself.
const notAskedPrefix = "not asked of gear by itself: "

// checkedFor is the account of every rule before any item was looked at.
func (g *gearJudging) checkedFor() []Checked {
	list := make([]Checked, 0, len(g.rules))
	for _, r := range g.rules {
		c := Checked{Rule: r.ID, Title: r.Title, Worst: r.Worst(g.conditions.Stage), NotAsked: !r.Asked(g.conditions.Stage), FormerIDs: r.FormerIDs}
		if why := g.notAsked[r.ID]; why != "" {
			c.NotAsked, c.DoesNotApply = true, notAskedPrefix+why
		}
		list = append(list, c)
	}
	return list
}
