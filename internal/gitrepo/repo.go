// Package gitrepo reads a Git repository by the git program: its trees, its
// index, and which files of the working tree differ from them. It changes
// nothing in the repository, reaches no network, and what a user has set for
// people's eyes (pagers, colors, external differences) does not touch it.
package gitrepo

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// Repo is one repository with a working tree.
type Repo struct {
	Top string // the top of the working tree: absolute, links resolved
	dir string // the folder with index and hooks; of a linked worktree its own
	env []string
}

// ErrNoGit says that the git program is not there.
var ErrNoGit = errors.New("the program git is not found: install it, or put its folder on the PATH")

// Open finds the repository that a folder lies in. getenv is the environment, of
// which only what names the user's folders, the repository and its index is
// passed on; what a hook is given for its repository counts for that one alone.
func Open(ctx context.Context, folder string, getenv func(string) string) (*Repo, error) {
	if _, err := exec.LookPath("git"); err != nil {
		return nil, ErrNoGit
	}
	r := &Repo{Top: folder, env: environment(getenv)}
	places, err := r.places(ctx)
	if err != nil && getenv("GIT_DIR") != "" { // a working tree with its repository elsewhere
		r.env = append(r.env, variables(getenv, "GIT_DIR", "GIT_WORK_TREE")...)
		places, err = r.places(ctx)
	}
	if err != nil {
		return nil, noRepository(folder, err)
	}
	if r.Top, err = filepath.EvalSymlinks(filepath.FromSlash(places[0])); err != nil {
		return nil, err
	}
	r.dir = filepath.FromSlash(places[1])
	return r, r.useIndex(getenv("GIT_INDEX_FILE"))
}

// places asks for the top of the working tree and the folder of the repository.
func (r *Repo) places(ctx context.Context) ([]string, error) {
	out, err := r.git(ctx, nil, "rev-parse", "--show-toplevel", "--absolute-git-dir")
	if err != nil {
		return nil, err
	}
	lines := strings.Split(strings.TrimSuffix(string(out), "\n"), "\n")
	if len(lines) != 2 {
		return nil, fmt.Errorf("git names no top of the working tree and folder of the repository: %q", out)
	}
	return lines, nil
}

func noRepository(folder string, err error) error {
	text := err.Error()
	switch {
	case strings.Contains(text, "must be run in a work tree"):
		return fmt.Errorf("%s is no working tree of Git: what is compared has to be checked out", folder)
	case strings.Contains(text, "not a git repository"):
		return fmt.Errorf("%s is in no Git repository: go to one, or begin one with git init", folder)
	}
	return err // as git words it: a repository that belongs to somebody else, say
}

// useIndex takes the index that a hook is given: of a commit of some files alone,
// that is not the usual one. One of another repository, which a hook inherits when
// it works in a second one, is refused: read as ours it would hide what is staged.
func (r *Repo) useIndex(file string) error {
	if file == "" {
		return nil
	}
	if !filepath.IsAbs(file) {
		file = filepath.Join(r.Top, file)
	}
	if _, err := os.Stat(file); err != nil {
		return fmt.Errorf("GIT_INDEX_FILE names an index that is not there: %w; in another repository than that of a hook, unset it", err)
	}
	home := filepath.Dir(file)
	if _, err := os.Stat(filepath.Join(home, "HEAD")); err == nil && !sameFolder(home, r.dir) {
		return fmt.Errorf("GIT_INDEX_FILE names the index of %s, and this is the repository %s: unset it", home, r.dir)
	}
	r.env = append(r.env, "GIT_INDEX_FILE="+file)
	return nil
}

func sameFolder(a, b string) bool {
	x, err := os.Stat(a)
	y, other := os.Stat(b)
	return err == nil && other == nil && os.SameFile(x, y)
}

// environment is all that git gets to see. It may ask nobody, fetch nothing, and
// speaks English, by which its messages are known.
func environment(getenv func(string) string) []string {
	kept := variables(getenv, "PATH", "HOME", "XDG_CONFIG_HOME", "TMPDIR", "GIT_CONFIG_GLOBAL", "GIT_CONFIG_NOSYSTEM", "GIT_CEILING_DIRECTORIES",
		"SYSTEMROOT", "USERPROFILE", "APPDATA", "TEMP", "TMP")
	return append(kept, "LC_ALL=C", "GIT_TERMINAL_PROMPT=0", "GIT_OPTIONAL_LOCKS=0", "GIT_NO_LAZY_FETCH=1", "GIT_ALLOW_PROTOCOL=none", "GIT_PAGER=cat")
}

func variables(getenv func(string) string, names ...string) []string {
	var list []string
	for _, n := range names {
		if v := getenv(n); v != "" {
			list = append(list, n+"="+v)
		}
	}
	return list
}

// settings overrule what a user's configuration could change of the answers, or
// run.
var settings = []string{"--no-pager", "--literal-pathspecs", "--no-replace-objects", "-c", "core.quotePath=false", "-c", "core.fsmonitor=false", "-c", "core.untrackedCache=false"}

// git runs the program at the top of the working tree. The error holds what it
// says.
func (r *Repo) git(ctx context.Context, stdin []byte, args ...string) ([]byte, error) {
	c := r.command(ctx, args...)
	var out, errs bytes.Buffer
	c.Stdin, c.Stdout, c.Stderr = bytes.NewReader(stdin), &out, &errs
	if err := c.Run(); err != nil {
		return nil, failure(args[0], errs.String(), err)
	}
	return out.Bytes(), nil
}

func (r *Repo) command(ctx context.Context, args ...string) *exec.Cmd {
	c := exec.CommandContext(ctx, "git", append(append([]string{}, settings...), args...)...)
	c.Dir, c.Env = r.Top, r.env
	return c
}

func failure(command, said string, err error) error {
	if said = strings.TrimSpace(said); said != "" {
		return fmt.Errorf("git %s: %s", command, said)
	}
	return fmt.Errorf("git %s: %w", command, err)
}

// HooksDir is the folder of the hooks, as core.hooksPath has it.
func (r *Repo) HooksDir(ctx context.Context) (string, error) {
	return r.gitPath(ctx, "hooks")
}

// gitPath is where git keeps something of the working tree that is open.
func (r *Repo) gitPath(ctx context.Context, name string) (string, error) {
	out, err := r.git(ctx, nil, "rev-parse", "--git-path", name)
	if err != nil {
		return "", err
	}
	path := filepath.FromSlash(strings.TrimSuffix(string(out), "\n"))
	if !filepath.IsAbs(path) {
		path = filepath.Join(r.Top, path)
	}
	return filepath.Clean(path), nil
}

// Owns reports whether a path belongs to this repository: it lies in the working
// tree or with what git keeps.
func (r *Repo) Owns(ctx context.Context, path string) bool {
	homes := []string{r.Top, r.dir}
	if out, err := r.git(ctx, nil, "rev-parse", "--git-common-dir"); err == nil {
		common := strings.TrimSuffix(string(out), "\n")
		if !filepath.IsAbs(common) {
			common = filepath.Join(r.Top, common)
		}
		homes = append(homes, common)
	}
	for _, h := range homes {
		if rel, err := filepath.Rel(h, path); err == nil && filepath.IsLocal(rel) {
			return true
		}
	}
	return false
}
