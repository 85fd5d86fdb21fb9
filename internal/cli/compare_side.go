package cli

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/gitrepo"
)

// side is one of two revisions that are compared.
type side struct {
	rev   string // empty for files as they are
	repo  *gitrepo.Repo
	tree  gitrepo.Tree
	paths []string // as from the current folder; of a revision, those that it has
	alone bool     // a single file
	given bool     // the argument names a path
	both  bool     // both arguments do, and plans go by where they stand below those
	lost  []string // names of plans whose check has failed
}

// sides finds out what two arguments name.
func (k *compareCommand) sides(ctx context.Context, old, new string, paths []string) (a, b *side, err error) {
	if a, err = k.side(ctx, old); err != nil {
		return nil, nil, err
	}
	if b, err = k.side(ctx, new); err != nil {
		return nil, nil, err
	}
	if len(paths) > 0 && (a.given || b.given) {
		return nil, nil, wrongUsage(errors.New("PATHs after OLD and NEW go with two revisions: otherwise the paths stand in OLD and NEW"))
	}
	if len(paths) == 0 {
		paths = []string{"."}
		if a.repo != nil && !a.given && !b.given {
			paths = []string{a.repo.Top}
		}
	}
	a.both, b.both = a.given && b.given, a.given && b.given
	for _, s := range []struct{ side, other *side }{{a, b}, {b, a}} {
		if s.side.given {
			continue
		}
		if err := s.side.take(s.other, paths); err != nil {
			return nil, nil, err
		}
	}
	return a, b, inOne(a, b, paths)
}

// inOne refuses paths of two revisions that neither of them has: one that is misspelt
// would be taken for one without plans.
func inOne(a, b *side, paths []string) error {
	for _, p := range paths {
		if !a.given && !b.given && !slices.Contains(a.paths, p) && !slices.Contains(b.paths, p) {
			return exit{Unchecked, fmt.Errorf("neither revision %s nor revision %s has %s", a.rev, b.rev, p)}
		}
	}
	return nil
}

// side finds out what one argument names: a file or folder that is there, else
// what a revision holds.
func (k *compareCommand) side(ctx context.Context, arg string) (*side, error) {
	if info, err := os.Stat(arg); err == nil {
		return &side{paths: []string{arg}, alone: !info.IsDir(), given: true}, nil
	}
	repo, err := gitrepo.Open(ctx, ".", k.env.Getenv)
	if err != nil {
		return nil, wrongUsage(fmt.Errorf("%s is no file and no folder here, and no revision: %w", arg, err))
	}
	rev, path, given := strings.Cut(arg, ":")
	s := &side{rev: rev, repo: repo, given: given}
	if s.tree, err = repo.Tree(ctx, rev); err != nil {
		return nil, wrongUsage(fmt.Errorf("%s is no file and no folder here, and as a revision: %w", arg, err))
	}
	if !given {
		return s, nil
	}
	at := path // from here on, as git has it
	if !strings.HasPrefix(path, "./") && !strings.HasPrefix(path, "../") {
		at = filepath.Join(repo.Top, filepath.FromSlash(path))
	}
	if err := s.take(nil, []string{at}); err != nil {
		return nil, err
	}
	if len(s.paths) == 0 {
		return nil, wrongUsage(fmt.Errorf("revision %s has no %s", rev, path))
	}
	return s, nil
}

// take gives a revision the paths of the other side, or those given: those of them
// that it has. One that lies outside the repository is refused: it was in no
// revision, and everything in it would look as if it were new.
func (s *side) take(other *side, paths []string) error {
	if other != nil && other.given {
		paths = other.paths
	}
	for _, p := range paths {
		at, ok := s.repo.Path(p)
		if !ok {
			return wrongUsage(fmt.Errorf("%s lies outside the repository %s, so that revision %s has nothing to compare it with: give a path inside, or name what to compare as %s:PATH", p, s.repo.Top, s.rev, s.rev))
		}
		if _, isFile := s.tree[at]; isFile {
			s.paths, s.alone = append(s.paths, p), len(paths) == 1
			continue
		}
		for name := range s.tree {
			if holds(at, name) {
				s.paths = append(s.paths, p)
				break
			}
		}
	}
	return nil
}

// failed says of which revision something is wrong: its files are named as from the
// current folder.
func (s *side) failed(err error) error {
	var x exit
	if s.rev == "" || !errors.As(err, &x) {
		return err
	}
	return exit{x.code, fmt.Errorf("revision %s can't be judged: %w", s.rev, err)}
}

// words says what keeps a plan of the side from being judged, with the revision where
// it has one.
func (s *side) words(err error) string {
	var problems datafile.Problems
	switch {
	case s.rev == "":
		return err.Error()
	case !errors.As(err, &problems):
		return "revision " + s.rev + ": " + err.Error()
	}
	problems = slices.Clone(problems)
	for i := range problems {
		problems[i].File = s.label(problems[i].File)
	}
	return problems.Error()
}

// label is what a file is called in the report.
func (s *side) label(path string) string {
	path = filepath.ToSlash(filepath.Clean(path))
	if s.rev == "" {
		return path
	}
	return s.rev + ":" + path
}

// nameOf is what a plan is known by on both sides: its path from the folder that each
// names, or from the current folder.
func (s *side) nameOf(file string, paths []string) string {
	if len(paths) == 1 && s.both && isFolder(paths[0]) {
		if rel, err := filepath.Rel(paths[0], file); err == nil {
			return filepath.ToSlash(rel)
		}
	}
	return filepath.ToSlash(filepath.Clean(file))
}
