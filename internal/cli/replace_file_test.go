package cli

import (
	"os"
	"path/filepath"
	"testing"
)

// TestReplaceFile: the new text with its mode, or all as it was.
func TestReplaceFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hook")
	for _, mode := range []os.FileMode{0o644, 0o755} {
		if err := replaceFile(path, []byte("text"), mode); err != nil {
			t.Fatal(err)
		}
		info, err := os.Stat(path)
		if err != nil || info.Mode().Perm() != mode {
			t.Errorf("%v, %v", info.Mode(), err)
		}
	}
	if err := os.MkdirAll(filepath.Join(dir, "folder", "full"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := replaceFile(filepath.Join(dir, "folder"), []byte("text"), 0o644); err == nil {
		t.Error("a folder was replaced")
	}
	if err := replaceFile(filepath.Join(dir, "none", "hook"), []byte("text"), 0o644); err == nil {
		t.Error("there is no such folder")
	}
	left, err := os.ReadDir(dir)
	if err != nil || len(left) != 2 {
		t.Errorf("left behind: %v, %v", left, err)
	}
}
