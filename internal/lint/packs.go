package lint

import (
	"context"
	"errors"
	"fmt"
	"path"
	"slices"
	"strings"
	"sync"

	"liftlint/internal/builtin"
	"liftlint/internal/nearest"
	"liftlint/internal/policy"
	"liftlint/internal/remedy"
	"liftlint/internal/ruleexample"
	"liftlint/policies"
)

// packs loads the rules once for each profile.
type packs struct {
	options Options
	mu      sync.Mutex
	byName  map[string]func() (loaded, error)
}

type loaded struct {
	pack    *policy.Pack
	profile policy.Profile
}

func newPacks(o Options) *packs {
	return &packs{options: o, byName: map[string]func() (loaded, error){}}
}

func knownProfile(name string) error {
	names, err := ProfileNames()
	if err != nil {
		return err
	}
	if !slices.Contains(names, name) {
		// No guess: it would lead from one code of practice to another.
		return fmt.Errorf("there is no profile %q: there is %s", name, strings.Join(names, ", "))
	}
	return nil
}

func (p *packs) get(name string) (*policy.Pack, policy.Profile, error) {
	p.mu.Lock()
	once, ok := p.byName[name]
	if !ok {
		once = sync.OnceValues(func() (loaded, error) { return load(name, p.options) })
		p.byName[name] = once
	}
	p.mu.Unlock()
	l, err := once()
	return l.pack, l.profile, err
}

// ProfileNames lists the profiles built in.
func ProfileNames() ([]string, error) {
	files, err := policies.Profiles()
	if err != nil {
		return nil, err
	}
	return policy.ProfileNames(files)
}

func load(name string, o Options) (loaded, error) {
	profiles, err := policies.Profiles()
	if err != nil {
		return loaded{}, err
	}
	profile, err := policy.LoadProfile(profiles, name)
	if err != nil {
		return loaded{}, err
	}
	pack, err := policy.Load(context.Background(), o.ruleOptions(profile))
	if err == nil {
		err = withExamples(pack, o)
	}
	profile, _, _ = profile.Shortened(o.Config.Layers) // what is wrong with these loading has told
	return loaded{pack, profile}, err
}

// ruleOptions are all the rules there are, as a profile and the configurations
// have them.
func (o Options) ruleOptions(p policy.Profile) policy.Options {
	return policy.Options{
		Sources:  slices.Concat([]policy.Source{{Root: "policies", Files: policies.Rules()}}, o.Config.Rules, o.Rules),
		Profile:  p,
		Layers:   o.Config.Layers,
		Remedies: remedy.Names(),
		BuiltIn:  builtin.IDs(),
	}
}

// withExamples refuses company rules without their two examples: what a rule
// does is shown before it judges.
func withExamples(pack *policy.Pack, o Options) error {
	var ps policy.Problems
	for _, s := range slices.Concat(o.Config.Rules, o.Rules) {
		for _, r := range pack.Rules() {
			if !s.HasRule(r.ID) {
				continue
			}
			files := layeredFiles{s.Files, policies.Examples()}
			_, err := ruleexample.Load(files, r.ID)
			ps = append(ps, exampleProblems(err, s.Root, r)...)
		}
	}
	return ps.Sorted()
}

// exampleProblems are the faults of a rule's examples, at their places.
func exampleProblems(err error, root string, r *policy.Rule) policy.Problems {
	var ps policy.Problems
	switch {
	case err == nil:
		return nil
	case errors.As(err, &ps):
		ps = slices.Clone(ps)
		for i := range ps {
			ps[i].File = path.Join(root, ps[i].File)
		}
		return ps
	case errors.Is(err, ruleexample.ErrNone):
		return policy.Problems{{File: r.File, Line: 1, Column: 1, Message: "a plan that breaks it and one that meets it are to stand in " + ruleexample.File + " beside it"}}
	}
	return policy.Problems{{File: path.Join(path.Dir(r.File), ruleexample.File), Message: err.Error()}}
}

func knownStage(stage string) error {
	if slices.Contains(policy.Stages(), stage) {
		return nil
	}
	return fmt.Errorf("there is no stage %q%s", stage, nearest.Hint(stage, policy.Stages()))
}
