package gitrepo

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Path is where a file stands from the top of the working tree, with slashes;
// false where it lies outside. Links on the way to it are followed, the last name
// is not.
func (r *Repo) Path(file string) (string, bool) {
	abs, err := filepath.Abs(file)
	if err != nil {
		return "", false
	}
	abs = filepath.Join(resolved(filepath.Dir(abs)), filepath.Base(abs))
	if abs == r.Top {
		return ".", true
	}
	rel, err := filepath.Rel(r.Top, abs)
	if err != nil || !filepath.IsLocal(rel) {
		return "", false
	}
	return filepath.ToSlash(rel), true
}

// resolved follows the links of a path, as far as there is something at it: a folder
// may have been there in a revision only.
func resolved(folder string) string {
	if at, err := filepath.EvalSymlinks(folder); err == nil {
		return at
	}
	above := filepath.Dir(folder)
	if above == folder {
		return folder
	}
	return filepath.Join(resolved(above), filepath.Base(folder))
}

// Changed are those of the paths whose files in the working tree are not as a tree
// has them, by content: what git remembers of times, and files that it is told to
// take as unchanged, play no part. A file that can't be compared counts as changed;
// one that is in neither does not.
func (r *Repo) Changed(ctx context.Context, t Tree, paths []string) (map[string]bool, error) {
	changed := map[string]bool{}
	byRepo := map[*Repo][]string{}
	for _, p := range paths {
		e, had := t[p]
		info, err := os.Lstat(filepath.Join(r.Top, filepath.FromSlash(p)))
		switch {
		case errors.Is(err, os.ErrNotExist) && !had:
		case err != nil || !had || !info.Mode().IsRegular() || e.Mode == modeLink || strings.ContainsAny(p, "\n\r\""):
			changed[p] = true
		default:
			byRepo[e.repo] = append(byRepo[e.repo], p)
		}
	}
	for repo, list := range byRepo {
		if err := r.compare(ctx, repo, t, list, changed); err != nil {
			return nil, err
		}
	}
	return changed, nil
}

// compare asks for the names that git would give the contents, in the repository
// that the files belong to.
func (r *Repo) compare(ctx context.Context, repo *Repo, t Tree, paths []string, changed map[string]bool) error {
	slices.Sort(paths)
	var names strings.Builder
	for _, p := range paths {
		rel, err := filepath.Rel(repo.Top, filepath.Join(r.Top, filepath.FromSlash(p)))
		if err != nil {
			return err
		}
		names.WriteString(filepath.ToSlash(rel) + "\n")
	}
	out, err := repo.git(ctx, []byte(names.String()), "hash-object", "--stdin-paths")
	if err != nil {
		return err
	}
	objects := strings.Fields(string(out))
	if len(objects) != len(paths) {
		return fmt.Errorf("git hash-object gives %d names for %d files", len(objects), len(paths))
	}
	for i, p := range paths {
		if objects[i] != t[p].Object {
			changed[p] = true
		}
	}
	return nil
}
