package gitrepo_test

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"liftlint/internal/gitrepo"
)

// site is a repository to try things in, by the git program itself.
type site struct {
	*testing.T
	dir string
}

// newSite begins a repository. What the machine has set for git plays no part.
func newSite(t *testing.T) site {
	t.Helper()
	for name, value := range map[string]string{
		"HOME": t.TempDir(), "GIT_CONFIG_NOSYSTEM": "1", "GIT_DIR": "", "GIT_INDEX_FILE": "", "GIT_WORK_TREE": "",
		"GIT_AUTHOR_NAME": "rigger", "GIT_AUTHOR_EMAIL": "rigger@site.example", "GIT_COMMITTER_NAME": "rigger", "GIT_COMMITTER_EMAIL": "rigger@site.example",
	} {
		t.Setenv(name, value)
	}
	for _, name := range []string{"GIT_DIR", "GIT_INDEX_FILE", "GIT_WORK_TREE"} {
		os.Unsetenv(name)
	}
	dir, err := filepath.EvalSymlinks(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	s := site{t, dir}
	s.git("init", "-q")
	return s
}

func (s site) git(args ...string) {
	s.Helper()
	c := exec.Command("git", args...)
	c.Dir = s.dir
	if out, err := c.CombinedOutput(); err != nil {
		s.Fatalf("git %v: %v\n%s", args, err, out)
	}
}

func (s site) write(name, text string) {
	s.Helper()
	file := filepath.Join(s.dir, name)
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		s.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		s.Fatal(err)
	}
}

func (s site) commit() {
	s.Helper()
	s.git("add", "-A", ".")
	s.git("commit", "-qm", "x", "--allow-empty")
}

func (s site) open() *gitrepo.Repo {
	s.Helper()
	r, err := gitrepo.Open(context.Background(), s.dir, os.Getenv)
	if err != nil {
		s.Fatal(err)
	}
	return r
}

func (s site) tree(rev string) gitrepo.Tree {
	s.Helper()
	t, err := s.open().Tree(context.Background(), rev)
	if err != nil {
		s.Fatal(err)
	}
	return t
}
