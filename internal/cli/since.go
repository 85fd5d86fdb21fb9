package cli

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"liftlint/internal/gitrepo"
	"liftlint/internal/policy"
)

// changeFlags narrow a check to what a change concerns.
type changeFlags struct {
	since  string
	staged bool
	at     string
}

func (f *changeFlags) flags(c *cobra.Command) {
	c.Flags().StringVar(&f.since, "since", "", "check only the plans that differ from a git revision, or whose rules, configuration or registers do; each is checked whole. Of a branch that has moved on, what counts is where this one left it")
	c.Flags().StringVar(&f.at, "at", "", "check plans, rules, configuration and registers as a git revision has them, instead of the files that are there; with --since, what differs between the two")
	c.Flags().BoolVar(&f.staged, "staged", false, "check what is staged for the next commit: plans, rules, configuration and registers as the index has them")
}

func (f *changeFlags) asked() bool { return f.since != "" || f.staged || f.at != "" }

func (f *changeFlags) check(args []string) error {
	switch {
	case f.since != "" && f.staged:
		return wrongUsage(errors.New("--since and --staged exclude each other: --staged is what differs from the last commit"))
	case f.at != "" && f.staged:
		return wrongUsage(errors.New("--at and --staged exclude each other: what is staged is in no revision yet"))
	case f.asked() && slices.Contains(args, "-"):
		return wrongUsage(errors.New("standard input is in no revision: it goes with none of --since, --staged and --at"))
	}
	return nil
}

// runChanged checks the plans that a change concerns.
func (k *check) runChanged(ctx context.Context, args []string) error {
	repo, err := gitrepo.Open(ctx, ".", k.env.Getenv)
	if err != nil {
		return wrongUsage(err)
	}
	if k.change.staged {
		return k.runStaged(ctx, repo, args)
	}
	before, err := k.before(ctx, repo)
	if err != nil {
		return wrongUsage(err)
	}
	if k.change.at != "" {
		now, err := repo.Tree(ctx, k.change.at)
		if err != nil {
			return wrongUsage(err)
		}
		return k.runSnapshot(ctx, repo, now, args, before)
	}
	d := &difference{before: before, top: repo.Top, place: repo.Path, changed: func(paths []string) (map[string]bool, error) {
		return repo.Changed(ctx, before, paths)
	}}
	run, err := k.judgeConcerned(ctx, args, []*difference{d})
	if err != nil {
		return err
	}
	return k.finish(run)
}

// before is what the change begins from: nothing, where it is all of a revision.
func (k *check) before(ctx context.Context, repo *gitrepo.Repo) (gitrepo.Tree, error) {
	since := k.change.since
	if since == "" {
		return gitrepo.Tree{}, nil
	}
	left, err := repo.Left(ctx, since, cmp.Or(k.change.at, "HEAD"))
	if err != nil {
		return nil, err
	}
	if left != "" {
		fmt.Fprintf(k.env.Stderr, "liftlint: %s has moved on: compared with %.10s, where this history left it\n", visible(since), left)
		since = left
	}
	return repo.Tree(ctx, since)
}

// runStaged checks the index against the last commit, and in a merge against what is
// merged as well: what has come from there is not new.
func (k *check) runStaged(ctx context.Context, repo *gitrepo.Repo, args []string) error {
	before, err := repo.Parents(ctx)
	if err != nil {
		return exit{Unchecked, err}
	}
	now, err := repo.Index(ctx)
	if err != nil {
		return exit{Unchecked, err}
	}
	return k.runSnapshot(ctx, repo, now, args, before...)
}

// runSnapshot checks one tree of the repository against others: of plans that are in
// one of them as they are now, and judged as they are now, nothing is new.
func (k *check) runSnapshot(ctx context.Context, repo *gitrepo.Repo, now gitrepo.Tree, args []string, before ...gitrepo.Tree) (err error) {
	s, err := takeSnapshot(ctx, repo, now)
	if err != nil {
		return exit{Unchecked, err}
	}
	defer func() { err = errors.Join(err, s.close()) }()
	if args, err = s.paths(args); err != nil {
		return exit{Unchecked, err}
	}
	if k.judging, err = s.judging(k.judging); err != nil {
		return exit{Unchecked, err}
	}
	var ds []*difference
	for _, b := range before {
		differ := gitrepo.Differing(b, now)
		ds = append(ds, &difference{before: b, top: s.dir, place: s.place, changed: func([]string) (map[string]bool, error) { return differ, nil }})
	}
	var run judged
	err = s.within(func() (err error) {
		if run, err = k.judgeConcerned(ctx, args, ds); err != nil {
			return err
		}
		rules, failed := run.rules() // while they are there
		run.rules = func() ([]*policy.Rule, error) { return rules, failed }
		return nil
	})
	if err != nil {
		return err
	}
	for _, r := range run.Results {
		s.rename(r)
	}
	return k.finish(run)
}

// place is where a file of the snapshot stands in the repository, its folder's own
// place where that is a link.
func (s *snapshot) place(file string) (string, bool) {
	abs, err := filepath.Abs(file)
	if err != nil {
		return "", false
	}
	if folder, err := filepath.EvalSymlinks(filepath.Dir(abs)); err == nil {
		abs = filepath.Join(folder, filepath.Base(abs))
	}
	rel, err := filepath.Rel(s.dir, abs)
	if err != nil || !filepath.IsLocal(rel) {
		return "", false
	}
	return filepath.ToSlash(rel), true
}

// judgeConcerned judges those of the plans that every one of the differences concerns,
// and says of how many that is not so. The gear of the others is read, and no more.
func (k *check) judgeConcerned(ctx context.Context, args []string, ds []*difference) (judged, error) {
	all, err := k.inputs(args)
	if err != nil {
		return judged{}, err
	}
	all = slices.DeleteFunc(all, func(in input) bool {
		return slices.ContainsFunc(ds, func(d *difference) bool { return d.isGone(in.path) })
	})
	concerned := all
	for _, d := range ds {
		if concerned, err = d.concerned(concerned, &k.judging); err != nil {
			return judged{}, err
		}
	}
	run, err := k.judge(ctx, concerned, without(all, concerned))
	if err != nil {
		return run, err
	}
	run.Unchanged = len(all) - len(concerned)
	run.Gone, run.GoneConfigs = goneFromAll(ds, args)
	for _, words := range run.LeftOut() {
		fmt.Fprintf(k.env.Stderr, "liftlint: %s\n", visible(words))
	}
	return run, nil
}

// without are the inputs that are not among some of them.
func without(all, some []input) []input {
	among := make(map[string]bool, len(some))
	for _, in := range some {
		among[in.path] = true
	}
	var rest []input
	for _, in := range all {
		if !among[in.path] {
			rest = append(rest, in)
		}
	}
	return rest
}
