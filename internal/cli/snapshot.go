package cli

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"

	"liftlint/internal/config"
	"liftlint/internal/gitrepo"
	"liftlint/internal/lint"
)

// snapshot is a tree of a repository, such as its index, written out to be judged
// with the configuration, rules and registers that stand in it.
type snapshot struct {
	repo *gitrepo.Repo
	dir  string // stands for the top of the working tree
	here string // the current folder, from that top on
}

// largest is how many bytes a file of a snapshot may have that is no plan: nothing
// that liftlint reads is that large, and repositories hold much besides.
const largest = 64 << 20

// takeSnapshot writes a tree to a folder of its own, which close removes.
func takeSnapshot(ctx context.Context, repo *gitrepo.Repo, t gitrepo.Tree) (*snapshot, error) {
	here, ok := repo.Path(".")
	if !ok {
		here = "." // elsewhere, with the repository named by the environment
	}
	dir, err := os.MkdirTemp("", "liftlint-")
	if err != nil {
		return nil, err
	}
	s := &snapshot{repo: repo, here: filepath.FromSlash(here)}
	if s.dir, err = filepath.EvalSymlinks(dir); err != nil {
		return nil, errors.Join(err, os.RemoveAll(dir))
	}
	err = repo.Export(ctx, t, s.dir, func(path string, size int64) bool { return isPlan(path) || size <= largest })
	if err == nil {
		err = os.MkdirAll(filepath.Join(s.dir, s.here), 0o755)
	}
	if err != nil {
		return nil, errors.Join(err, s.close())
	}
	return s, nil
}

func (s *snapshot) close() error { return os.RemoveAll(s.dir) }

// within runs f in the folder that stands for the current one, so that files are
// named as they are from there.
func (s *snapshot) within(f func() error) (err error) {
	back, err := os.Getwd()
	if err != nil {
		return err
	}
	if err := os.Chdir(filepath.Join(s.dir, s.here)); err != nil {
		return err
	}
	defer func() { err = errors.Join(err, os.Chdir(back)) }()
	return f()
}

// path is what a path of the user is called within: one in the repository stands
// for the file of the snapshot, and any other for itself.
func (s *snapshot) path(name string) (string, error) {
	inside, ok := s.repo.Path(name)
	if !ok {
		return filepath.Abs(name)
	}
	return filepath.Rel(s.here, filepath.FromSlash(inside))
}

func (s *snapshot) paths(names []string) ([]string, error) {
	out := make([]string, len(names))
	for i, n := range names {
		var err error
		if out[i], err = s.path(n); err != nil {
			return nil, err
		}
	}
	return out, nil
}

// judging are the options with paths as they are within.
func (s *snapshot) judging(j judging) (judging, error) {
	var err error
	if j.rules, err = s.paths(j.rules); err != nil {
		return j, err
	}
	if j.registers, err = s.paths(j.registers); err != nil {
		return j, err
	}
	if j.config != "" {
		j.config, err = s.path(j.config)
	}
	if err == nil && j.baseline != "" {
		j.baseline, err = s.path(j.baseline)
	}
	j.snapshot = s
	return j, err
}

// configFor is the configuration of a folder within: all that stand in the
// snapshot, below those that lie above the repository.
func (s *snapshot) configFor(folder string) (config.Config, error) {
	above, err := config.Between(filepath.Dir(s.repo.Top), "")
	if err != nil {
		return config.Config{}, err
	}
	inside, err := config.Between(folder, s.dir)
	if err != nil {
		return config.Config{}, err
	}
	return config.Read(append(above, inside...)...)
}

// rename calls the files that lie outside the repository what they are called from
// the current folder.
func (s *snapshot) rename(r *lint.Result) {
	if r == nil {
		return
	}
	for i, o := range r.Overrides {
		r.Overrides[i].From = s.outside(o.From)
	}
	for i := range r.Findings {
		f := &r.Findings[i]
		if strings.HasPrefix(f.Rule, "baseline/") {
			f.Place.File = s.outside(f.Place.File)
		}
		if f.Aside != nil {
			f.Aside.Place.File = s.outside(f.Aside.Place.File)
		}
	}
}

func (s *snapshot) outside(name string) string {
	inside := filepath.Join(s.dir, s.here)
	abs := filepath.Join(inside, filepath.FromSlash(name))
	if rel, err := filepath.Rel(s.dir, abs); err == nil && filepath.IsLocal(rel) {
		return name
	}
	if rel, err := filepath.Rel(filepath.Join(s.repo.Top, s.here), abs); err == nil {
		return filepath.ToSlash(rel)
	}
	return name
}
