package report

import (
	"net/url"
	"path"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"liftlint/internal/finding"
	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/source"
)

func TestRelative(t *testing.T) {
	below := Paths{Root: "/home/site", Folder: "/home/site/plans"}
	for _, c := range []struct {
		paths      Paths
		file, want string
	}{
		{below, "a.lift.yaml", "plans/a.lift.yaml"},
		{below, "./a.lift.yaml", "plans/a.lift.yaml"},
		{below, "../rules/x/y/rule.rego", "rules/x/y/rule.rego"},
		{below, "/home/site/plans/a.lift.yaml", "plans/a.lift.yaml"},
		{below, "/tmp/a.lift.yaml", "../../tmp/a.lift.yaml"},
		{Paths{Root: "/s", Folder: "/s"}, "stdin", "stdin"},
		{Paths{}, "./plans//a.lift.yaml", "plans/a.lift.yaml"},
		{Paths{}, "/tmp/a.lift.yaml", "a.lift.yaml"},
	} {
		if got := c.paths.Relative(c.file); got != c.want {
			t.Errorf("%s from %+v is %s, not %s", c.file, c.paths, got, c.want)
		}
	}
}

// TestURI: the escapes are those of RFC 3986, and no name may read back as a
// scheme, a host, a query or a fragment.
func TestURI(t *testing.T) {
	for file, want := range map[string]string{
		"plans/a b.lift.yaml": "plans/a%20b.lift.yaml",
		"a:b.yaml":            "./a:b.yaml",
		"50%?#.yaml":          "50%25%3F%23.yaml",
		"鋼.yaml":              "%E9%8B%BC.yaml",
		"\xff.yaml":           "%FF.yaml",
	} {
		if got := URI(file); got != want {
			t.Errorf("%q is %q, not %q", file, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		file := path.Clean(strings.TrimLeft(rapid.String().Draw(t, "file"), "/"))
		u, err := url.Parse(URI(file))
		if err != nil || u.Scheme != "" || u.Host != "" || u.RawQuery != "" || u.Fragment != "" || path.Clean(u.Path) != file {
			t.Fatalf("%q reads back as %#v, %v", file, u, err)
		}
	})
}

// TestRelativeTo names every file from the root, in places and in texts, and
// leaves the run as it was.
func TestRelativeTo(t *testing.T) {
	const file = "/home/site/plans/a.lift.yaml"
	made := func() Run {
		at := source.Location{File: file}
		f := finding.Finding{Rule: "file/unreadable", Key: file, Message: "open " + file + ": gone", Place: at, Related: []finding.Related{{Place: source.Location{File: "../rules/r.rego"}}}}
		return Run{
			Results:  []*lint.Result{{File: file, Findings: []finding.Finding{f}, Overrides: []policy.Override{{From: "/home/liftlint.yaml"}}}, nil},
			Failures: []string{file + ": stopped", "/home/site/rules/r.rego:3: slow", "held by /home/liftlint.yaml"},
		}
	}
	run := made()
	got := run.RelativeTo(Paths{Root: "/home/site", Folder: "/home/site/plans"})
	if diff := cmp.Diff(made().Failures, run.Failures); diff != "" || run.Results[0].Findings[0].Place.File != file || run.Results[0].Overrides[0].From != "/home/liftlint.yaml" {
		t.Errorf("the run itself was changed: %s", diff)
	}
	if diff := cmp.Diff([]string{"plans/a.lift.yaml: stopped", "rules/r.rego:3: slow", "held by ../liftlint.yaml"}, got.Failures); diff != "" {
		t.Error(diff)
	}
	x := got.Results[0]
	want := finding.Finding{Rule: "file/unreadable", Key: "plans/a.lift.yaml", Message: "open plans/a.lift.yaml: gone", Place: source.Location{File: "plans/a.lift.yaml"}, Related: []finding.Related{{Place: source.Location{File: "rules/r.rego"}}}}
	if diff := cmp.Diff([]finding.Finding{want}, x.Findings); diff != "" || x.File != "plans/a.lift.yaml" || x.Overrides[0].From != "../liftlint.yaml" {
		t.Errorf("%s %+v", diff, x.Overrides)
	}
}
