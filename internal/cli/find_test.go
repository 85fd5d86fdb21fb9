package cli

import (
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// TestFindPlans: by name in folders, in whatever case; as named otherwise;
// each once; links to folders are listed as skipped.
func TestFindPlans(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	for _, name := range []string{"b.lift.yaml", "a/C.Lift.YAML", "a/d.lift.yml", "a/e.yaml", ".hidden/f.lift.yaml", "elsewhere/g.lift.yaml"} {
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte("x"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink("../elsewhere", "a/link"); err != nil {
		t.Skip(err)
	}
	list, skipped, err := findPlans([]string{"a", "a/e.yaml", "./b.lift.yaml", "b.lift.yaml", "none"})
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, in := range list {
		got = append(got, in.path)
	}
	if want := []string{"a/C.Lift.YAML", "a/d.lift.yml", "a/e.yaml", "./b.lift.yaml", "none"}; !slices.Equal(got, want) {
		t.Errorf("found %v, not %v", got, want)
	}
	if list, _, err := findPlans([]string{"a/link"}); err != nil || len(list) != 1 || list[0].path != "a/link/g.lift.yaml" {
		t.Errorf("through a link: %v, %v", list, err)
	}
	if want := []string{"a/link"}; !slices.Equal(skipped, want) {
		t.Errorf("skipped %v, not %v", skipped, want)
	}
}
