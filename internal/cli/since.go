package cli

import (
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
}

func (f *changeFlags) flags(c *cobra.Command) {
	c.Flags().StringVar(&f.since, "since", "", "check only the plans that differ from a git revision, or whose rules, configuration or registers do; each is checked whole")
	c.Flags().BoolVar(&f.staged, "staged", false, "check what is staged for the next commit: plans, rules, configuration and registers as the index has them")
}

func (f *changeFlags) asked() bool { return f.since != "" || f.staged }

func (f *changeFlags) check(args []string) error {
	switch {
	case f.since != "" && f.staged:
		return wrongUsage(errors.New("--since and --staged exclude each other: --staged is what differs from the last commit"))
	case f.asked() && slices.Contains(args, "-"):
		return wrongUsage(errors.New("standard input is in no revision: it goes neither with --since nor with --staged"))
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
	before, err := repo.Tree(ctx, k.change.since)
	if err != nil {
		return wrongUsage(err)
	}
	d := &difference{before: before, top: repo.Top, place: repo.Path, changed: func(paths []string) (map[string]bool, error) {
		return repo.Changed(ctx, before, paths)
	}}
	run, err := k.judgeConcerned(ctx, args, d)
	if err != nil {
		return err
	}
	return k.finish(run)
}

// runStaged checks the index against the last commit.
func (k *check) runStaged(ctx context.Context, repo *gitrepo.Repo, args []string) error {
	before, err := repo.Head(ctx)
	if err != nil {
		return exit{Unchecked, err}
	}
	now, err := repo.Index(ctx)
	if err != nil {
		return exit{Unchecked, err}
	}
	return k.runSnapshot(ctx, repo, before, now, args)
}

// runSnapshot checks one tree of the repository against another.
func (k *check) runSnapshot(ctx context.Context, repo *gitrepo.Repo, before, now gitrepo.Tree, args []string) (err error) {
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
	differ := gitrepo.Differing(before, now)
	d := &difference{before: before, top: s.dir, place: s.place, changed: func([]string) (map[string]bool, error) { return differ, nil }}
	var run judged
	err = s.within(func() (err error) {
		if run, err = k.judgeConcerned(ctx, args, d); err != nil {
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

// judgeConcerned judges those of the plans that a difference concerns, and says of
// how many that is not so.
func (k *check) judgeConcerned(ctx context.Context, args []string, d *difference) (judged, error) {
	all, err := k.inputs(args)
	if err != nil {
		return judged{}, err
	}
	all = slices.DeleteFunc(all, func(in input) bool { return d.isGone(in.path) })
	concerned, err := d.concerned(all, &k.judging)
	if err != nil {
		return judged{}, err
	}
	run, err := k.judge(ctx, concerned)
	if err != nil {
		return run, err
	}
	run.Unchanged, run.Gone, run.GoneConfigs = len(all)-len(concerned), d.gone(args), d.goneConfigs(args)
	for _, words := range run.LeftOut() {
		fmt.Fprintf(k.env.Stderr, "liftlint: %s\n", visible(words))
	}
	return run, nil
}
