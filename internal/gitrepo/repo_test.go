package gitrepo_test

import (
	"context"
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"liftlint/internal/gitrepo"
)

// odd are names that git quotes, or that look like something else.
var odd = []string{"a b.yaml", "tab\there.yaml", "line\nend.yaml", `quote".yaml`, "-x.yaml", "*.yaml", "ü/鋼.yaml", ":(glob)x.yaml", "\xff.yaml"}

func TestOddNames(t *testing.T) {
	s := newSite(t)
	s.git("config", "core.quotePath", "true")
	for _, n := range odd {
		s.write(n, "of "+n)
	}
	s.commit()
	names := slices.Sorted(slices.Values(odd))
	tree := s.tree("HEAD")
	if d := cmp.Diff(names, slices.Sorted(maps.Keys(tree))); d != "" {
		t.Error(d)
	}
	index, err := s.open().Index(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if d := gitrepo.Differing(tree, index); len(d) > 0 {
		t.Errorf("the index differs in %v", d)
	}
	out := t.TempDir()
	if err := s.open().Export(context.Background(), tree, out, func(string, int64) bool { return true }); err != nil {
		t.Fatal(err)
	}
	for _, n := range odd {
		if got, err := os.ReadFile(filepath.Join(out, n)); err != nil || string(got) != "of "+n {
			t.Errorf("%q: %q, %v", n, got, err)
		}
	}
}

// TestChanged holds what counts as changed against what was done to each file.
func TestChanged(t *testing.T) {
	s := newSite(t)
	for _, n := range []string{"same", "touched", "edited", "hidden", "gone", "became link"} {
		s.write(n, "text\n")
	}
	s.write("crlf", "line\n")
	s.write(".gitattributes", "crlf text eol=crlf\n")
	s.commit()
	s.git("update-index", "--assume-unchanged", "hidden")
	s.write("touched", "text\n")
	s.write("edited", "Text\n")
	s.write("hidden", "Text\n")
	s.write("new", "x")
	s.write("crlf", "line\r\n") // as git would check it out
	for _, n := range []string{"gone", "became link"} {
		if err := os.Remove(filepath.Join(s.dir, n)); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink("same", filepath.Join(s.dir, "became link")); err != nil {
		t.Fatal(err)
	}
	all := []string{"same", "touched", "edited", "hidden", "gone", "became link", "new", "crlf", "never"}
	got, err := s.open().Changed(context.Background(), s.tree("HEAD"), all)
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"became link", "edited", "gone", "hidden", "new"}
	if d := cmp.Diff(want, slices.Sorted(maps.Keys(got))); d != "" {
		t.Error(d)
	}
}

// TestOfNoUser: what a user sets for people's eyes, or to have programs run, does
// not reach the answers.
func TestOfNoUser(t *testing.T) {
	s := newSite(t)
	s.write("a", "x\n")
	s.commit()
	for _, pair := range [][2]string{
		{"core.fsmonitor", "touch " + filepath.Join(s.dir, "ran")}, {"color.ui", "always"}, {"core.pager", "false"},
		{"diff.external", "false"}, {"diff.renames", "copies"}, {"status.showUntrackedFiles", "no"},
	} {
		s.git("config", pair[0], pair[1])
	}
	t.Setenv("GIT_EXTERNAL_DIFF", "false")
	t.Setenv("GIT_PAGER", "false")
	t.Setenv("GIT_LITERAL_PATHSPECS", "0")
	s.write("a", "y\n")
	got, err := s.open().Changed(context.Background(), s.tree("HEAD"), []string{"a"})
	if err != nil || !got["a"] {
		t.Errorf("%v, %v", got, err)
	}
	if _, err := s.open().Index(context.Background()); err != nil {
		t.Error(err)
	}
	if _, err := os.Stat(filepath.Join(s.dir, "ran")); err == nil {
		t.Error("a program of the user's was run")
	}
}

// TestLinks: one that leads out leads to where it would from the working tree, and
// one into the working tree to the same file of the tree.
func TestLinks(t *testing.T) {
	s := newSite(t)
	s.write("real.yaml", "committed")
	outside := filepath.Join(filepath.Dir(s.dir), "outside.yaml")
	for name, target := range map[string]string{"inside": "real.yaml", "absolute": filepath.Join(s.dir, "real.yaml"), "out": "../outside.yaml"} {
		if err := os.Symlink(target, filepath.Join(s.dir, name)); err != nil {
			t.Fatal(err)
		}
	}
	s.commit()
	if d := gitrepo.Differing(s.tree("HEAD"), s.tree("HEAD")); len(d) != 3 || d["real.yaml"] {
		t.Errorf("of what links lead to it can't be told whether it changed: %v", d)
	}
	s.write("real.yaml", "edited")
	if err := os.WriteFile(outside, []byte("outside"), 0o644); err != nil {
		t.Fatal(err)
	}
	out := t.TempDir()
	if err := s.open().Export(context.Background(), s.tree("HEAD"), out, func(string, int64) bool { return true }); err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]string{"inside": "committed", "absolute": "committed", "out": "outside"} {
		if got, err := os.ReadFile(filepath.Join(out, name)); err != nil || string(got) != want {
			t.Errorf("%s: %q, %v", name, got, err)
		}
	}
}

func TestExportLeavesOut(t *testing.T) {
	s := newSite(t)
	s.write("small", "x")
	s.write("large", strings.Repeat("x", 1000))
	s.commit()
	out := t.TempDir()
	if err := s.open().Export(context.Background(), s.tree("HEAD"), out, func(_ string, size int64) bool { return size < 1000 }); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(filepath.Join(out, "large")); !errors.Is(err, fs.ErrNotExist) {
		t.Error("the large file was written")
	}
	if _, err := os.Stat(filepath.Join(out, "small")); err != nil {
		t.Error(err)
	}
}

// TestParents are the last commit and what is being merged.
func TestParents(t *testing.T) {
	s := forked(t)
	count := func() int {
		t.Helper()
		list, err := s.open().Parents(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		return len(list)
	}
	s.git("checkout", "-q", "main")
	if n := count(); n != 1 {
		t.Errorf("%d parents without a merge", n)
	}
	s.git("merge", "-q", "--no-commit", "--no-ff", "side")
	if n := count(); n != 2 {
		t.Errorf("%d parents in a merge", n)
	}
	s.git("merge", "--abort")
	if n := count(); n != 1 {
		t.Errorf("%d parents after one", n)
	}
}

func TestNoGit(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	if _, err := gitrepo.Open(context.Background(), ".", os.Getenv); !errors.Is(err, gitrepo.ErrNoGit) {
		t.Error(err)
	}
}

// TestElsewhere: a working tree whose repository the environment names.
func TestElsewhere(t *testing.T) {
	s := newSite(t)
	s.write("a", "x")
	s.commit()
	bare := filepath.Join(t.TempDir(), "kept")
	if err := os.Rename(filepath.Join(s.dir, ".git"), bare); err != nil {
		t.Fatal(err)
	}
	t.Setenv("GIT_CEILING_DIRECTORIES", filepath.Dir(s.dir))
	if _, err := gitrepo.Open(context.Background(), s.dir, os.Getenv); err == nil || !strings.Contains(err.Error(), "is in no Git repository") {
		t.Error(err)
	}
	t.Setenv("GIT_DIR", bare)
	t.Setenv("GIT_WORK_TREE", s.dir)
	if r := s.open(); r.Top != s.dir || len(s.tree("HEAD")) != 1 {
		t.Errorf("the top is %s", r.Top)
	}
}

// TestIndexOfSomeFiles: a commit of some files alone has an index of its own.
func TestIndexOfSomeFiles(t *testing.T) {
	s := newSite(t)
	s.write("a", "x")
	s.commit()
	s.write("b", "x")
	s.git("add", "b")
	t.Setenv("GIT_INDEX_FILE", filepath.Join(s.dir, ".git", "next-index"))
	s.git("read-tree", "HEAD")
	index, err := s.open().Index(context.Background())
	if err != nil || len(index) != 1 {
		t.Errorf("%v, %v", index, err)
	}
}
