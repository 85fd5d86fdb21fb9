package cli

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
	"go.yaml.in/yaml/v3"
)

// action is the part of an action's file that GitHub's documentation of composite
// actions asks for.
type action struct {
	Name, Description string
	Inputs            map[string]struct {
		Description string
		Default     *string
	}
	Runs struct {
		Using string
		Steps []struct {
			Name, Uses, Shell, Run string
			Env                    map[string]string
		}
	}
}

func readYAML(t testing.TB, file string, into any) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("../..", file))
	if err != nil {
		t.Fatal(err)
	}
	if err := yaml.Unmarshal(text, into); err != nil {
		t.Fatalf("%s: %v", file, err)
	}
}

// TestAction holds the action to what GitHub's documentation of composite actions
// asks for, as remembered: a shell for each script, and inputs that are described.
// No input stands in a script, where it could act.
func TestAction(t *testing.T) {
	var a action
	readYAML(t, "action.yml", &a)
	if a.Name == "" || a.Description == "" || a.Runs.Using != "composite" || len(a.Runs.Steps) != 3 {
		t.Errorf("%+v", a)
	}
	used := map[string]bool{}
	for _, s := range a.Runs.Steps {
		if (s.Uses == "") == (s.Run == "") || s.Run != "" && s.Shell != "bash" || strings.Contains(s.Run, "${{") {
			t.Errorf("step %s: %+v", s.Name, s)
		}
		for name, v := range s.Env {
			m := regexp.MustCompile(`^\$\{\{ inputs\.([a-z-]+) \}\}$`).FindStringSubmatch(v)
			if m == nil || !strings.Contains(s.Run, "$"+name) {
				t.Errorf("step %s: %s is %s", s.Name, name, v)
				continue
			}
			used[m[1]] = true
		}
	}
	for name, in := range a.Inputs {
		if in.Description == "" || in.Default == nil || !used[name] {
			t.Errorf("input %s: %+v", name, in)
		}
	}
}

// TestPreCommitHooks: the entries are commands that there are, each for its stage, so
// that none runs where it would look at nothing.
func TestPreCommitHooks(t *testing.T) {
	var hooks []struct {
		ID, Name, Entry, Language string
		Stages                    []string
		PassFilenames             *bool `yaml:"pass_filenames"`
		AlwaysRun                 bool  `yaml:"always_run"`
	}
	readYAML(t, ".pre-commit-hooks.yaml", &hooks)
	stages := map[string]string{"liftlint": preCommit, "liftlint-push": prePush}
	if len(hooks) != len(stages) {
		t.Errorf("%d hooks", len(hooks))
	}
	for _, h := range hooks {
		stage := stages[h.ID]
		if h.Language != "golang" || h.PassFilenames == nil || *h.PassFilenames || !h.AlwaysRun || len(h.Stages) != 1 || h.Stages[0] != stage {
			t.Errorf("%+v", h)
		}
		args := strings.Fields(h.Entry)
		c, rest, err := newRoot(Environment{}).Find(args[1:])
		if err != nil || args[0] != "liftlint" || c.Name() != "run" || len(rest) != 2 || rest[0] != stage || rest[1] != "--by-manager" {
			t.Errorf("%s is %v, %v", h.Entry, c, err)
		}
	}
}

// scriptOf writes a script of a build service's file: scriptof action|gitlab FILE.
func scriptOf(ts *testscript.TestScript, _ bool, args []string) {
	root := ts.Getenv("EXAMPLES") + "/.."
	read := func(file string, into any) {
		text, err := os.ReadFile(filepath.Join(root, file))
		ts.Check(err)
		ts.Check(yaml.Unmarshal(text, into))
	}
	script := ""
	switch args[0] {
	case "action":
		var a action
		read("action.yml", &a)
		script = a.Runs.Steps[2].Run
	case "gitlab":
		var jobs map[string]struct{ Script []string }
		read("examples/ci/gitlab-ci.yml", &jobs)
		for _, j := range jobs {
			script = strings.Join(j.Script, "\n")
		}
	case "precommit":
		var hooks []struct{ Entry string }
		read(".pre-commit-hooks.yaml", &hooks)
		script = hooks[0].Entry
	default:
		ts.Fatalf("there is no script %s", args[0])
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[1]), []byte(script+"\n"), 0o755))
}
