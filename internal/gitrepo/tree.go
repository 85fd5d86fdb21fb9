package gitrepo

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"strings"
)

// Modes of entries, as git writes them.
const (
	modeLink      = "120000"
	modeSubmodule = "160000"
)

// Entry is a file as a tree or the index has it.
type Entry struct {
	Mode   string
	Object string // the name of its content
	repo   *Repo  // where the content is: that of a submodule has its own
}

// Parents are the trees that the next commit follows: the last commit's, and those of
// the commits that are being merged.
func (r *Repo) Parents(ctx context.Context) ([]Tree, error) {
	head, err := r.Head(ctx)
	if err != nil {
		return nil, err
	}
	file, err := r.gitPath(ctx, "MERGE_HEAD")
	if err != nil {
		return nil, err
	}
	merged, err := os.ReadFile(file)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	list := []Tree{head}
	for _, commit := range strings.Fields(string(merged)) {
		t, err := r.Tree(ctx, commit)
		if err != nil {
			return nil, err
		}
		list = append(list, t)
	}
	return list, nil
}

// Tree is the files of a revision or of the index, by their paths from the top of
// the working tree, with slashes. The files of submodules that are checked out
// stand in it as at the commit that is recorded.
type Tree map[string]Entry

// Commit is the full name of the commit that a revision stands for.
func (r *Repo) Commit(ctx context.Context, rev string) (string, error) {
	out, err := r.git(ctx, nil, "rev-parse", "--verify", "--quiet", "--end-of-options", rev+"^{commit}")
	if err == nil {
		return strings.TrimSpace(string(out)), nil
	}
	if shallow, err := r.shallow(ctx); err == nil && shallow {
		return "", fmt.Errorf("there is no revision %s here, and this clone is shallow: %s", rev, fetchAll)
	}
	return "", fmt.Errorf("there is no revision %s in the repository %s", rev, r.Top)
}

// Head is the tree of the commit that is checked out; empty before the first.
func (r *Repo) Head(ctx context.Context) (Tree, error) {
	if _, err := r.git(ctx, nil, "rev-parse", "--verify", "--quiet", "HEAD"); err != nil {
		if _, err := r.git(ctx, nil, "symbolic-ref", "--quiet", "HEAD"); err == nil {
			return Tree{}, nil // a branch without commits
		}
	}
	return r.Tree(ctx, "HEAD")
}

// Tree lists the files of a revision.
func (r *Repo) Tree(ctx context.Context, rev string) (Tree, error) {
	commit, err := r.Commit(ctx, rev)
	if err != nil {
		return nil, err
	}
	out, err := r.git(ctx, nil, "ls-tree", "-r", "-z", "--full-tree", commit)
	if err != nil {
		return nil, err
	}
	return r.tree(ctx, out, func(head []string) (Entry, error) { // mode type object
		if len(head) != 3 {
			return Entry{}, fmt.Errorf("git ls-tree: %q is not understood", head)
		}
		return Entry{Mode: head[0], Object: head[2], repo: r}, nil
	})
}

// Index lists the files as they are staged. One that is only meant to be added
// later (git add -N) is no part of it.
func (r *Repo) Index(ctx context.Context) (Tree, error) {
	out, err := r.git(ctx, nil, "ls-files", "--stage", "-z", "--full-name")
	if err != nil {
		return nil, err
	}
	t, err := r.tree(ctx, out, func(head []string) (Entry, error) { // mode object stage
		switch {
		case len(head) != 3:
			return Entry{}, fmt.Errorf("git ls-files: %q is not understood", head)
		case head[2] != "0":
			return Entry{}, fmt.Errorf("a merge has left conflicts: settle them first, and git add what is settled")
		}
		return Entry{Mode: head[0], Object: head[1], repo: r}, nil
	})
	if err != nil {
		return nil, err
	}
	later, err := r.git(ctx, nil, "diff-files", "-z", "--name-only", "--diff-filter=A", "--no-renames", "--ignore-submodules=all")
	if err != nil {
		return nil, err
	}
	for p := range strings.SplitSeq(string(later), "\x00") {
		delete(t, p)
	}
	return t, nil
}

// tree reads lines of "head TAB path", each ended by a NUL.
func (r *Repo) tree(ctx context.Context, out []byte, entry func([]string) (Entry, error)) (Tree, error) {
	t := Tree{}
	for line := range strings.SplitSeq(strings.TrimSuffix(string(out), "\x00"), "\x00") {
		if line == "" {
			continue
		}
		head, name, ok := strings.Cut(line, "\t")
		if !ok || !wellNamed(name) {
			return nil, fmt.Errorf("the repository %s holds a file named %q, which is no path within it", r.Top, name)
		}
		e, err := entry(strings.Fields(head))
		if err != nil {
			return nil, err
		}
		if e.Mode != modeSubmodule {
			t[name] = e
			continue
		}
		if err := r.addSubmodule(ctx, t, name, e.Object); err != nil {
			return nil, err
		}
	}
	return t, nil
}

// wellNamed refuses paths that lead out of a working tree or into what git keeps.
func wellNamed(name string) bool {
	for part := range strings.SplitSeq(name, "/") {
		if part == "" || strings.EqualFold(part, ".git") {
			return false
		}
	}
	return filepath.IsLocal(filepath.FromSlash(name))
}

// addSubmodule adds the files of a submodule. One that is not checked out, or does
// not have the commit, has none: what needs them finds them gone and says so.
func (r *Repo) addSubmodule(ctx context.Context, t Tree, at, commit string) error {
	folder := filepath.Join(r.Top, filepath.FromSlash(at))
	if _, err := os.Stat(filepath.Join(folder, ".git")); err != nil {
		return nil
	}
	sub, err := Open(ctx, folder, r.withoutRepository)
	if err != nil {
		return err
	}
	if _, err := sub.Commit(ctx, commit); err != nil {
		return nil
	}
	inner, err := sub.Tree(ctx, commit)
	if err != nil {
		return err
	}
	for name, e := range inner {
		t[path.Join(at, name)] = e
	}
	return nil
}

// withoutRepository is the environment that git gets, without what names a
// repository or an index.
func (r *Repo) withoutRepository(name string) string {
	if strings.HasPrefix(name, "GIT_DIR") || strings.HasPrefix(name, "GIT_WORK_TREE") || strings.HasPrefix(name, "GIT_INDEX_FILE") {
		return ""
	}
	for _, pair := range r.env {
		if v, ok := strings.CutPrefix(pair, name+"="); ok {
			return v
		}
	}
	return ""
}

// Same reports whether two trees hold the same entries. Unlike Differing it takes a link
// for what is recorded of it.
func Same(a, b Tree) bool {
	return maps.EqualFunc(a, b, func(x, y Entry) bool { return x.Mode == y.Mode && x.Object == y.Object })
}

// Differing are the paths that are not the same in both trees. A link always counts as
// differing: what it leads to may.
func Differing(a, b Tree) map[string]bool {
	out := map[string]bool{}
	for name, e := range a {
		if o, ok := b[name]; !ok || o.Mode != e.Mode || o.Object != e.Object || e.Mode == modeLink {
			out[name] = true
		}
	}
	for name := range b {
		if _, ok := a[name]; !ok {
			out[name] = true
		}
	}
	return out
}
