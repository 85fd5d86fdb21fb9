package gitrepo

import (
	"context"
	"errors"
	"fmt"
	"os/exec"
	"slices"
	"strings"
)

// Names are those of branches and tags, for people to choose from.
func (r *Repo) Names(ctx context.Context) ([]string, error) {
	out, err := r.git(ctx, nil, "for-each-ref", "--format=%(refname:short)", "refs/heads", "refs/remotes", "refs/tags")
	if err != nil {
		return nil, err
	}
	return strings.Fields(string(out)), nil
}

// mostRefs is how many references of another side are asked for a common commit.
const mostRefs = 4000

// Shared are the nearest commits to the one given that another side has: those named,
// what this repository remembers of its branches, or what came before. There are
// several of one that merges, and none where nothing is known. The other side is called
// as git calls it, which may be no name it is known by.
func (r *Repo) Shared(ctx context.Context, commit, remote string, has ...string) ([]string, error) {
	known, err := r.remembered(ctx, remote)
	if err != nil {
		return nil, err
	}
	known = append(known, has...)
	if len(known) == 0 || len(known) > mostRefs {
		return nil, nil
	}
	return r.mergeBases(ctx, append([]string{commit}, known...))
}

// remembered are the commits that branches of another side had when they were last
// seen.
func (r *Repo) remembered(ctx context.Context, remote string) ([]string, error) {
	out, err := r.git(ctx, nil, "remote")
	if err != nil {
		return nil, err
	}
	if !slices.Contains(strings.Fields(string(out)), remote) {
		return nil, nil
	}
	if out, err = r.git(ctx, nil, "for-each-ref", "--format=%(objectname)", "refs/remotes/"+remote+"/"); err != nil {
		return nil, err
	}
	list := strings.Fields(string(out))
	slices.Sort(list)
	return slices.Compact(list), nil
}

// mergeBases are the nearest commits that the first has in common with any other.
func (r *Repo) mergeBases(ctx context.Context, commits []string) ([]string, error) {
	out, err := r.git(ctx, nil, append([]string{"merge-base", "--all", "--"}, commits...)...)
	var x *exec.ExitError
	if errors.As(err, &x) && x.ExitCode() == 1 { // said of histories that have nothing in common
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	return strings.Fields(string(out)), nil
}

// Left is where the history of one commit left a branch that has moved on since. It is
// empty where the revision names no branch, where the branch has not moved on, and
// where there is no one such commit.
func (r *Repo) Left(ctx context.Context, branch, commit string) (string, error) {
	name, err := r.git(ctx, nil, "rev-parse", "--symbolic-full-name", "--verify", "--quiet", "--end-of-options", branch)
	full := strings.TrimSpace(string(name))
	if err != nil || !strings.HasPrefix(full, "refs/heads/") && !strings.HasPrefix(full, "refs/remotes/") {
		return "", nil
	}
	tip, err := r.Commit(ctx, branch)
	if err != nil {
		return "", err
	}
	own, err := r.Commit(ctx, commit)
	if err != nil {
		return "", nil // before the first commit
	}
	bases, err := r.mergeBases(ctx, []string{tip, own})
	if err != nil || slices.Contains(bases, tip) {
		return "", err
	}
	if len(bases) != 1 {
		if shallow, err := r.shallow(ctx); err != nil || shallow {
			return "", fmt.Errorf("where this history left %s can't be told, for this clone is shallow: %s", branch, fetchAll)
		}
		return "", nil
	}
	return bases[0], nil
}

const fetchAll = "fetch its history (git fetch --unshallow, or fetch-depth: 0 where a build checks out)"

func (r *Repo) shallow(ctx context.Context) (bool, error) {
	out, err := r.git(ctx, nil, "rev-parse", "--is-shallow-repository")
	return err == nil && strings.TrimSpace(string(out)) == "true", err
}
