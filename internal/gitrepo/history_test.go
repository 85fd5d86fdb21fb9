package gitrepo_test

import (
	"context"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// at is the commit that a revision stands for, by git itself.
func (s site) at(rev string) string {
	s.Helper()
	c := exec.Command("git", "rev-parse", rev)
	c.Dir = s.dir
	out, err := c.Output()
	if err != nil {
		s.Fatal(err)
	}
	return strings.TrimSpace(string(out))
}

// forked is a repository whose branch `side` has left `main` at the tag `fork`, after
// which both have moved on.
func forked(t *testing.T) site {
	s := newSite(t)
	s.git("checkout", "-q", "-b", "main")
	s.commit()
	s.git("tag", "fork")
	s.git("checkout", "-q", "-b", "side")
	s.commit()
	s.git("commit", "-q", "--allow-empty", "-m", "on the side")
	s.git("checkout", "-q", "main")
	s.git("commit", "-q", "--allow-empty", "-m", "on main")
	s.git("checkout", "-q", "side")
	return s
}

// TestLeft: where a history left a branch that has moved on; of anything else than a
// branch it is not asked.
func TestLeft(t *testing.T) {
	s := forked(t)
	s.git("tag", "moved", "main")
	s.git("update-ref", "refs/remotes/origin/main", "main")
	s.git("branch", "behind", "fork")
	s.git("checkout", "-q", "--orphan", "alone")
	s.commit()
	s.git("checkout", "-q", "side")
	for branch, want := range map[string]string{
		"main": s.at("fork"), "origin/main": s.at("fork"), "refs/heads/main": s.at("fork"),
		"behind": "", "side": "", "alone": "", "moved": "", s.at("main"): "", "HEAD": "", "HEAD~1": "", "main~0": "", "none": "", "-x": "",
	} {
		if got, err := s.open().Left(context.Background(), branch, "HEAD"); got != want || err != nil {
			t.Errorf("%s: %q, not %q (%v)", branch, got, want, err)
		}
	}
}

// TestShared: the nearest commits that another side has, by its branches as they were
// last seen and by what it says itself.
func TestShared(t *testing.T) {
	s := forked(t)
	ask := func(commit, remote string, has ...string) []string {
		t.Helper()
		got, err := s.open().Shared(context.Background(), s.at(commit), remote, has...)
		if err != nil {
			t.Fatal(err)
		}
		slices.Sort(got)
		return got
	}
	expect := func(what string, got []string, want ...string) {
		t.Helper()
		for i, w := range want {
			want[i] = s.at(w)
		}
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: %v, not %v", what, got, want)
		}
	}
	expect("nothing is known", ask("side", "origin"))
	s.git("remote", "add", "origin", "../other.git")
	expect("nothing was seen", ask("side", "origin"))
	expect("by what it says", ask("side", "origin", s.at("side~1")), "side~1")
	s.git("update-ref", "refs/remotes/origin/main", "main")
	s.git("update-ref", "refs/remotes/other/side", "side")
	expect("by what was seen", ask("side", "origin"), "fork")
	expect("the nearer", ask("side", "origin", s.at("side~1")), "side~1")
	expect("it has all", ask("main", "origin"), "main")
	expect("by an address", ask("side", "../other.git"))
	expect("by no name", ask("side", ""))
	s.git("merge", "-q", "-m", "merged", "main")
	expect("of a merge", ask("side", "origin", s.at("side~1")), "side~1", "main")
}
