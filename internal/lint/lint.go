// Package lint is the way from the bytes of a plan to findings, as one
// function that every front end calls.
package lint

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"time"

	"liftlint/internal/capacity"
	"liftlint/internal/compute"
	"liftlint/internal/config"
	"liftlint/internal/finding"
	"liftlint/internal/onfile"
	"liftlint/internal/plan"
	"liftlint/internal/policy"
	"liftlint/internal/remedy"
	"liftlint/internal/triage"
	"liftlint/internal/validate"
	"liftlint/internal/yamldoc"
)

// DefaultProfile judges plans that name none.
const DefaultProfile = "us"

// Options say how plans are judged.
type Options struct {
	Profile string          // overrules the plan's own; empty leaves it
	Stage   string          // draft, review or prelift
	On      *time.Time      // the day judged for; nil takes each plan's own
	Config  config.Config   // what the folder of the plans sets
	Rules   []policy.Source // rules besides those built in and the configuration's
	// Registers hold the gear that plans take from a register.
	Registers *Registers
	Remedies  bool // compute what would put a finding right

	Baseline *triage.Baseline         // what is known of plans already; nil for none
	Record   bool                     // take down what is found, for a baseline
	Named    func(file string) string // the name of a plan in a baseline; nil leaves it
}

// Linter judges plans. It is safe for concurrent use.
type Linter struct {
	options   Options
	validator *validate.Validator
	packs     *packs
}

// New makes a linter. Rules are loaded when the first plan needs them, and
// while it is being read.
func New(o Options) (*Linter, error) {
	if err := Known(o.Profile, o.Stage); err != nil {
		return nil, err
	}
	if err := Known(o.Config.Profile, o.Stage); err != nil {
		return nil, fmt.Errorf("%s: %w", o.Config.ProfileFrom, err)
	}
	l := &Linter{options: o, packs: newPacks(o)}
	if held := o.Config; held.ProfileHeld && o.Profile != "" && o.Profile != held.Profile {
		return nil, fmt.Errorf("profile %s is asked for, and %s locks the profile to %s: %w", o.Profile, held.ProfileFrom, held.Profile, ErrProfileLocked)
	}
	go l.packs.get(l.options.profileFor(""))
	v, err := validate.New()
	if err != nil {
		return nil, fmt.Errorf("schemas: %w", err)
	}
	l.validator = v
	return l, nil
}

// ErrProfileLocked is for a profile that is asked for, and that a configuration does
// not let be.
var ErrProfileLocked = errors.New("it can't be asked for here")

// Known refuses a profile, where one is named, and a stage that there are not.
func Known(profile, stage string) error {
	if err := knownStage(stage); err != nil || profile == "" {
		return err
	}
	return knownProfile(profile)
}

// profileFor is the profile for a plan that names the one given, or none: what
// the command asks for, what the configuration locks, what the plan names, what
// the configuration names.
func (o Options) profileFor(plan string) string {
	if o.Config.ProfileHeld {
		plan = o.Config.Profile
	}
	return cmp.Or(o.Profile, plan, o.Config.Profile, DefaultProfile)
}

// Check judges one plan. name is what the report calls the file. An error
// says that the plan could not be checked: a rule or the tool has failed.
// A plan that is not valid is no error: the result says so.
func (l *Linter) Check(ctx context.Context, name string, text []byte) (*Result, error) {
	r, p, err := l.read(name, text)
	if err != nil || p == nil {
		return r, err
	}
	if err := ctx.Err(); err != nil { // not left to chance: short runs end before the rules look
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	pack, conditions, err := l.conditions(p)
	if err != nil {
		return nil, err
	}
	f := r.compute(p, conditions)
	r.addUnlike()
	r.addTwice()
	r.Overrides = pack.Overrides()
	r.heldProfile(p, l.options.Config)
	verdicts, err := pack.Judge(ctx, &f.Document)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	r.State = Judged
	r.addVerdicts(verdicts)
	told := r.addMissing(verdicts)
	if l.options.Remedies {
		r.mend(remedy.New(p, conditions, f, r.Units), verdicts)
	}
	if err := r.settle(pack.Rules(), l.options); err != nil {
		return nil, err
	}
	r.addUntold(told)
	return r, nil
}

// Compute reads a plan and computes its facts without judging them. The facts
// are nil where the plan is not valid; the result then has its findings.
func (l *Linter) Compute(name string, text []byte) (*Result, error) {
	r, p, err := l.read(name, text)
	if err != nil || p == nil {
		return r, err
	}
	_, conditions, err := l.conditions(p)
	if err != nil {
		return nil, err
	}
	r.compute(p, conditions)
	r.addUnlike()
	r.addTwice()
	r.State = Computed
	r.Findings = finding.Sort(r.Findings)
	return r, nil
}

// ErrNotValid is for a plan that could not be understood.
var ErrNotValid = errors.New("it is not valid")

// Identify reads which lift a plan is for, its day, and what its gear is known by, for
// SameDay. Nothing is computed or judged. The error is ErrNotValid where the plan could
// not be understood.
func (l *Linter) Identify(name string, text []byte) (*Result, error) {
	r, p, err := l.read(name, text)
	switch {
	case err != nil:
		return nil, err
	case p == nil:
		return nil, fmt.Errorf("%s: %w", name, ErrNotValid)
	}
	r.identify(p)
	return r, nil
}

// read goes from bytes to the typed plan. The plan is nil where the file is
// not valid; the result then says why.
func (l *Linter) read(name string, text []byte) (*Result, *plan.Plan, error) {
	r := &Result{File: name, State: NotValid, text: text, registers: l.options.Registers}
	doc, faults := yamldoc.Read(name, text)
	if doc == nil {
		return r.notValid(faults), nil, nil
	}
	r.doc = doc
	on, faults, err := onfile.Resolve(doc, l.validator, l.options.Registers.Register)
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", name, err)
	}
	r.onFile = on
	if faults = append(faults, l.validator.Plan(on.Doc)...); len(faults) > 0 {
		return r.notValid(faults), nil, nil
	}
	p, faults, err := plan.Decode(on.Doc)
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", name, err)
	}
	if p == nil {
		return r.notValid(faults), nil, nil
	}
	return r, p, nil
}

// conditions settles the profile and what follows from it.
func (l *Linter) conditions(p *plan.Plan) (*policy.Pack, compute.Conditions, error) {
	name := l.options.profileFor(p.Lift.Profile)
	pack, profile, err := l.packs.get(name)
	if err != nil {
		return nil, compute.Conditions{}, err
	}
	return pack, compute.Conditions{
		Profile:         name,
		Stage:           l.options.Stage,
		On:              l.options.On,
		Decides:         compute.Decides(profile.RigidSplit.Decides),
		DecidesWhenEven: compute.Decides(profile.RigidSplit.DecidesWhenEven),
		Parts:           capacity.PartPractice(profile.SlingParts.Share),
		BridlePractice:  capacity.BridlePractice(profile.BridleRating.By),
		IntervalMonths:  profile.IntervalMonths,
	}, nil
}

// Profile is the one for plans that name none.
func (l *Linter) Profile() string { return l.options.profileFor("") }

// RuleOptions are what the rules of a profile are loaded with, for those who
// test rules.
func (l *Linter) RuleOptions(profile string) (policy.Options, error) {
	_, p, err := l.packs.get(profile)
	if err != nil {
		return policy.Options{}, err
	}
	return l.options.ruleOptions(p), nil
}

// Rules are the rules as a profile has them.
func (l *Linter) Rules(profile string) ([]*policy.Rule, error) {
	pack, _, err := l.packs.get(profile)
	if err != nil {
		return nil, err
	}
	return pack.Rules(), nil
}
