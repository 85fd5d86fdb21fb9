package gitrepo

import "testing"

// TestSame: a link that is recorded alike on both sides is the same, though what it
// leads to may differ.
func TestSame(t *testing.T) {
	link, file := Entry{Mode: modeLink, Object: "a"}, Entry{Mode: "100644", Object: "a"}
	one := Tree{"plans": link, "a.lift.yaml": file}
	if !Same(one, Tree{"plans": link, "a.lift.yaml": file}) || len(Differing(one, one)) != 1 {
		t.Error("a tree differs from itself but in its link")
	}
	for name, other := range map[string]Tree{
		"content": {"plans": link, "a.lift.yaml": {Mode: "100644", Object: "b"}},
		"mode":    {"plans": link, "a.lift.yaml": {Mode: "100755", Object: "a"}},
		"link":    {"plans": {Mode: modeLink, Object: "b"}, "a.lift.yaml": file},
		"gone":    {"plans": link},
	} {
		if Same(one, other) || Same(other, one) {
			t.Errorf("%s: the same", name)
		}
	}
}
