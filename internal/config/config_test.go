package config

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// folder lays files out below a new working folder, above which there is no
// configuration.
func folder(t *testing.T, files map[string]string) {
	t.Helper()
	root := t.TempDir()
	for name, text := range files {
		path := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	t.Chdir(root)
}

func names(c Config) []string {
	var list []string
	for _, l := range c.Layers {
		list = append(list, l.Name)
	}
	return list
}

// TestFor: every configuration from the folder upwards holds, the outermost
// first, each after what it extends.
func TestFor(t *testing.T) {
	folder(t, map[string]string{
		"liftlint.yaml":               "liftlint: 1\nextends: company/base.yaml\n",
		"company/base.yaml":           "liftlint: 1\nprofile: eu\nrule_folders: [rules]\n",
		"company/rules/a/b/rule.rego": "package x\n",
		"yard/liftlint.yaml":          "liftlint: 1\nprofile: us\n",
		"yard/deep/plan.lift.yaml":    "",
	})
	c, err := For("yard/deep")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]string{"company/base.yaml", "liftlint.yaml", "yard/liftlint.yaml"}, names(c)); diff != "" {
		t.Error(diff)
	}
	if c.Profile != "us" || c.ProfileFrom != "yard/liftlint.yaml" || c.ProfileHeld {
		t.Errorf("%+v", c)
	}
	if len(c.Rules) != 1 || c.Rules[0].Root != "company/rules" {
		t.Errorf("%+v", c.Rules)
	}
	here, err := For(".")
	if err != nil || here.Profile != "eu" || here.Key() == c.Key() {
		t.Errorf("%+v, %v", here, err)
	}
}

// TestARepositoryIsNoBound: one below can't shake off what holds above it.
func TestARepositoryIsNoBound(t *testing.T) {
	folder(t, map[string]string{"liftlint.yaml": "liftlint: 1\nprofile: eu\nlocked: [profile]\n", "sub/.git/HEAD": "x", "sub/deep/x": ""})
	if c, err := For("sub/deep"); err != nil || c.Profile != "eu" || !c.ProfileHeld {
		t.Errorf("%+v, %v", c, err)
	}
}

// TestNearlyTheRightName: such a file is not passed over in silence, wherever it
// is looked for.
func TestNearlyTheRightName(t *testing.T) {
	for _, name := range []string{"liftlint.yml", ".liftlint.yaml", ".liftlint.yml", "Liftlint.YAML"} {
		folder(t, map[string]string{name: "liftlint: 1\n", "a/b/x": ""})
		if _, err := For("a/b"); err == nil || err.Error() != name+": a configuration is named liftlint.yaml: rename this file" {
			t.Errorf("%s: %v", name, err)
		}
	}
	folder(t, map[string]string{"liftlint.yml/x": "", "my-liftlint.yml": "", "liftlint.yaml": "liftlint: 1\n"})
	if c, err := For("."); err != nil || len(c.Files) != 1 {
		t.Errorf("%+v, %v", c, err)
	}
}

// TestCircles: a configuration that extends itself says by way of which.
func TestCircles(t *testing.T) {
	folder(t, map[string]string{
		"liftlint.yaml": "liftlint: 1\nextends: b.yaml\n", "b.yaml": "liftlint: 1\nextends: c.yaml\n", "c.yaml": "liftlint: 1\nextends: liftlint.yaml\n",
	})
	if _, err := For("."); err == nil || err.Error() != "liftlint.yaml: this configuration extends itself, by way of b.yaml, then c.yaml" {
		t.Errorf("%v", err)
	}
}

func TestNone(t *testing.T) {
	folder(t, map[string]string{"a/x": ""})
	if c, err := For("a"); err != nil || len(c.Layers) != 0 || c.Profile != "" {
		t.Errorf("%+v, %v", c, err)
	}
}

func TestProfileIsHeld(t *testing.T) {
	folder(t, map[string]string{
		"liftlint.yaml":   "liftlint: 1\nprofile: us\nlocked: [profile, angle/leg_too_flat]\n",
		"a/liftlint.yaml": "liftlint: 1\nprofile: eu\n",
		"b/liftlint.yaml": "liftlint: 1\nprofile: us\n",
	})
	if _, err := For("a"); err == nil || err.Error() != "a/liftlint.yaml:2:1: the profile is locked by liftlint.yaml: nothing below may change it" {
		t.Errorf("%v", err)
	}
	c, err := For("b")
	if err != nil || !c.ProfileHeld || c.ProfileFrom != "liftlint.yaml" {
		t.Errorf("%+v, %v", c, err)
	}
}

// TestWrong: each mistake is named at its place.
func TestWrong(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"liftlint: 1\nprofil: us\n", `liftlint.yaml:2:1: "profil" is no key here: did you mean "profile"?`},
		{"profile: us\n", `liftlint.yaml:1:1: "liftlint" is missing`},
		{"liftlint: 2\n", "liftlint.yaml:1:1: liftlint: 1 is wanted here, found 2"},
		{"liftlint: 1\nextends: nowhere.yaml\n", "liftlint.yaml:2:1: extends nowhere.yaml: no such file or directory"},
		{"liftlint: 1\nextends: liftlint.yaml\n", "liftlint.yaml: this configuration extends itself"},
		{"liftlint: 1\nrule_folders: [rules]\n", "liftlint.yaml:2:16: rules: no such file or directory"},
		{"liftlint: 1\nrule_folders: [empty]\n", "liftlint.yaml:2:16: empty holds no rule: rules stand in TOPIC/RULE/rule.rego"},
		{"liftlint: 1\nrule_folders: [liftlint.yaml]\n", "liftlint.yaml:2:16: liftlint.yaml is no folder"},
		{"liftlint: 1\nlocked: [profile]\n", "liftlint.yaml:2:10: the profile is locked here, and none is named"},
		{"liftlint: 1\nlocked: [angle]\n", `liftlint.yaml:2:10: "angle": lower case letters`},
		{"liftlint: 1\nrules: {angle/leg_too_flat: {off: ''}}\n", "liftlint.yaml:2:30: off is empty"},
		{"liftlint: 1\nrules: {angle/leg_too_flat: {}}\n", "liftlint.yaml:2:9: angle/leg_too_flat is empty"},
		{"a: &x 1\n", "liftlint.yaml:1:4: Anchor"},
		{"", "liftlint.yaml:1:1: this file is empty"},
	} {
		folder(t, map[string]string{"liftlint.yaml": c.text, "empty/x": ""})
		if _, err := For("."); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%q:\ngot  %v\nwant %s", c.text, err, c.want)
		}
	}
}

// TestReachedTwice: a base that two files extend is read once.
func TestReachedTwice(t *testing.T) {
	folder(t, map[string]string{
		"base.yaml":       "liftlint: 1\nprofile: eu\n",
		"liftlint.yaml":   "liftlint: 1\nextends: base.yaml\nprofile: us\n",
		"a/liftlint.yaml": "liftlint: 1\nextends: ../base.yaml\n",
	})
	c, err := For("a")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]string{"base.yaml", "liftlint.yaml", "a/liftlint.yaml"}, names(c)); diff != "" {
		t.Error(diff)
	}
	if c.Profile != "us" {
		t.Errorf("the base comes again, after what goes before it: %s", c.Profile)
	}
}

// TestRegisters: patterns name files from the configuration on, each once; one
// that names none is a fault.
func TestRegisters(t *testing.T) {
	folder(t, map[string]string{
		"liftlint.yaml":             "liftlint: 1\nregisters: [gear/*.gear.yaml, yard/y.columns.yaml]\n",
		"gear/b.gear.yaml":          "",
		"gear/a.gear.yaml":          "",
		"gear/a.csv":                "",
		"yard/y.columns.yaml":       "",
		"yard/liftlint.yaml":        "liftlint: 1\nregisters: [../gear/a.gear.yaml, own.gear.yaml]\n",
		"yard/own.gear.yaml":        "",
		"lost/liftlint.yaml":        "liftlint: 1\nregisters: [none.gear.yaml]\n",
		"lost/again/here.lift.yaml": "",
	})
	c, err := For("yard")
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"gear/a.gear.yaml", "gear/b.gear.yaml", "yard/y.columns.yaml", "yard/own.gear.yaml"}
	if diff := cmp.Diff(want, c.Registers); diff != "" {
		t.Error(diff)
	}
	if _, err := For("lost/again"); err == nil || !strings.Contains(err.Error(), "lost/liftlint.yaml:2:13: none.gear.yaml names no file") {
		t.Error(err)
	}
}

// TestIntervals: they go along with the layer of their file; service is normal
// where none is named.
func TestIntervals(t *testing.T) {
	folder(t, map[string]string{
		"liftlint.yaml":   "liftlint: 1\ninspection_intervals:\n  - {months: 6, cite: [{document: LOLER 1998, clause: regulation 9(3)(a)(i), basis: memory}]}\n",
		"a/liftlint.yaml": "liftlint: 1\ninspection_intervals: [{kinds: [hook], service: severe, months: 1}]\n",
	})
	c, err := For("a")
	if err != nil || len(c.Layers) != 2 {
		t.Fatalf("%+v %v", c, err)
	}
	outer, inner := c.Layers[0].Intervals, c.Layers[1].Intervals
	if len(outer) != 1 || outer[0].Kinds != nil || outer[0].Service != "normal" || outer[0].Months != 6 || outer[0].Citations[0].Document != "LOLER 1998" {
		t.Errorf("%+v", outer)
	}
	if len(inner) != 1 || !slices.Equal(inner[0].Kinds, []string{"hook"}) || inner[0].Service != "severe" || inner[0].Months != 1 {
		t.Errorf("%+v", inner)
	}
	for _, wrong := range []string{"[]", "[{kinds: [hook]}]", "[{months: 0}]", "[{months: 25}]", "[{months: 6.5}]", "[{months: 6, service: hard}]", "[{months: 6, kinds: []}]", "[{months: 6, cite: [{document: x}]}]", "[{months: 6, reason: x}]"} {
		folder(t, map[string]string{"liftlint.yaml": "liftlint: 1\ninspection_intervals: " + wrong + "\n"})
		if _, err := For("."); err == nil || !strings.Contains(err.Error(), "liftlint.yaml:2:") {
			t.Errorf("%s: %v", wrong, err)
		}
	}
}
