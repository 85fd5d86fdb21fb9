package cli

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// runner is a repository on a build service with the program built for it.
type runner struct {
	t         *testing.T
	temp      string // of the service
	workspace string
}

func newRunner(t *testing.T, action action) *runner {
	t.Helper()
	r := &runner{t, t.TempDir(), t.TempDir()}
	here, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	build := r.bash(action.Runs.Steps[1].Run, append(os.Environ(), "GITHUB_ACTION_PATH="+here, "RUNNER_TEMP="+r.temp))
	if build.code != 0 {
		t.Fatalf("the program is not built: %+v", build)
	}
	return r
}

// ran is what a script came to.
type ran struct {
	code        int
	out, errors string
	summary     string
}

// bash runs a script as GitHub's documentation says for `shell: bash`, from memory.
func (r *runner) bash(script string, env []string) ran {
	r.t.Helper()
	file := filepath.Join(r.temp, "script.sh")
	r.write(file, script)
	c := exec.Command("bash", "--noprofile", "--norc", "-eo", "pipefail", file)
	var out, errs strings.Builder
	c.Dir, c.Env, c.Stdout, c.Stderr = r.workspace, env, &out, &errs
	var x *exec.ExitError
	if err := c.Run(); err != nil && !errors.As(err, &x) {
		r.t.Fatal(err)
	}
	return ran{code: c.ProcessState.ExitCode(), out: out.String(), errors: errs.String()}
}

func (r *runner) write(file, text string) {
	r.t.Helper()
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		r.t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		r.t.Fatal(err)
	}
}

// commit puts an example, or nothing, at a path of the repository, and gives the
// name of the commit.
func (r *runner) commit(files map[string]string) string {
	r.t.Helper()
	for name, text := range files {
		name = filepath.Join(r.workspace, name)
		if text == "" {
			if err := os.Remove(name); err != nil {
				r.t.Fatal(err)
			}
			continue
		}
		r.write(name, text)
	}
	for _, args := range [][]string{{"init", "-q"}, {"add", "-A"}, {"commit", "-q", "--allow-empty", "-m", "plans"}} {
		r.git(args...)
	}
	return strings.TrimSpace(r.git("rev-parse", "HEAD"))
}

func (r *runner) git(args ...string) string {
	r.t.Helper()
	c := exec.Command("git", args...)
	c.Dir, c.Env = r.workspace, r.environment()
	out, err := c.CombinedOutput()
	if err != nil {
		r.t.Fatalf("git %v: %v\n%s", args, err, out)
	}
	return string(out)
}

// environment is what a service gives to every job, of which nothing is the
// machine's own but where programs are.
func (r *runner) environment() []string {
	return append(gitEnvironment(r.temp), "PATH="+os.Getenv("PATH"), "CI=true")
}

// act runs the check of the action with the inputs given, and the others as the
// action has them.
func (r *runner) act(a action, inputs map[string]string) ran {
	r.t.Helper()
	files := map[string]string{"GITHUB_OUTPUT": "", "GITHUB_ENV": "", "GITHUB_STEP_SUMMARY": ""}
	env := append(r.environment(), "GITHUB_ACTIONS=true", "GITHUB_EVENT_NAME=pull_request", "GITHUB_WORKSPACE="+r.workspace, "RUNNER_OS=Linux", "RUNNER_TEMP="+r.temp)
	for name := range files {
		files[name] = filepath.Join(r.temp, name)
		r.write(files[name], "")
		env = append(env, name+"="+files[name])
	}
	step := a.Runs.Steps[2]
	for name, value := range step.Env {
		env = append(env, name+"="+inputOf.ReplaceAllStringFunc(value, func(m string) string {
			key := inputOf.FindStringSubmatch(m)[1]
			if v, ok := inputs[key]; ok {
				return v
			}
			return *a.Inputs[key].Default
		}))
	}
	got := r.bash(step.Run, env)
	text, err := os.ReadFile(files["GITHUB_STEP_SUMMARY"])
	if err != nil {
		r.t.Fatal(err)
	}
	got.summary = string(text)
	return got
}

var inputOf = regexp.MustCompile(`\$\{\{ inputs\.([a-z-]+) \}\}`)

func exampleText(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile("../../examples/" + name + ".lift.yaml")
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// TestActionOnARunner runs the steps of the action, each in its shell with the
// variables that the service gives and those that the step asks for.
func TestActionOnARunner(t *testing.T) {
	var a action
	readYAML(t, "action.yml", &a)
	r := newRunner(t, a)
	clean, faulty := exampleText(t, "pump-skid"), exampleText(t, "filter-vessel")
	first := r.commit(map[string]string{"plans/pump.lift.yaml": clean})
	r.expect("all plans, clean", r.act(a, nil), 0, nil, []string{"::error"}, []string{"## Lift plans"}, []string{"what changed"})

	r.commit(map[string]string{"plans/vessel.lift.yaml": faulty})
	got := r.act(a, map[string]string{"since": first, "paths": "plans"})
	r.expect("a faulty plan is new", got, 1, []string{"::error file=plans/vessel.lift.yaml,line="}, []string{"pump.lift.yaml"},
		[]string{"plans/vessel.lift.yaml", "## Lift plans: what changed", "Added. Findings: 14 new"}, []string{"pump.lift.yaml"})
	r.expect("what changed stands first", got, 1, []string{"::warning title=Lift plans::Something is new or worse"}, nil, nil, nil)
	if !strings.HasPrefix(got.summary, "**What changed:** 2 plans, 1 the same. There is something new or worse") {
		t.Errorf("the summary begins %.200s", got.summary)
	}
	if n := strings.Count(got.out, "::error "); n > 10 {
		t.Errorf("%d annotations of one level", n)
	}
	r.expect("two places, a line each", r.act(a, map[string]string{"paths": "plans/pump.lift.yaml\n\nplans/vessel.lift.yaml\n"}), 1, []string{"vessel.lift.yaml"}, nil, []string{"pump.lift.yaml"}, nil)
	r.expect("one of them", r.act(a, map[string]string{"paths": "plans/pump.lift.yaml"}), 0, nil, []string{"vessel.lift.yaml"}, nil, nil)
	r.expect("what is written acts nowhere", r.act(a, map[string]string{"paths": "$(touch acted)\n`touch acted`\n--fail-on=note; touch acted"}), 3, nil, nil, nil, nil)
	if _, err := os.Stat(filepath.Join(r.workspace, "acted")); err == nil {
		t.Error("an input has run")
	}
	r.expect("blanks around a place", r.act(a, map[string]string{"since": first, "paths": " plans \n\t\n"}), 1, []string{"vessel.lift.yaml"}, nil, nil, nil)
	for _, misspelt := range []string{"plnas", "plans/*.lift.yaml", "plans/pump.lift.yml"} {
		r.expect("no such place, "+misspelt, r.act(a, map[string]string{"since": first, "paths": misspelt}), 3, []string{misspelt}, nil, nil, nil)
	}
	r.expect("a revision that is not there", r.act(a, map[string]string{"since": "none"}), 2, nil, nil, nil, []string{"what changed"})

	noted := strings.Replace(clean, "  freed: anchor nuts off and shims loose, seen by the rigger\n", "", 1)
	r.commit(map[string]string{"plans/vessel.lift.yaml": "", "plans/pump.lift.yaml": noted})
	r.expect("a warning", r.act(a, nil), 0, []string{"::warning "}, nil, nil, nil)
	r.expect("a warning that fails", r.act(a, map[string]string{"fail-on": "warning"}), 1, []string{"::warning "}, nil, nil, nil)
	r.expect("another stage", r.act(a, map[string]string{"stage": "draft", "profile": "eu"}), 0, nil, nil, []string{"profile eu", "stage draft"}, nil)
	r.expect("no such stage", r.act(a, map[string]string{"stage": "none"}), 2, nil, nil, nil, nil)

	strict := r.commit(map[string]string{"plans/pump.lift.yaml": clean})
	r.commit(map[string]string{"liftlint.yaml": "liftlint: 1\nrules:\n  angle/leg_too_flat: {off: nobody asked}\n"})
	r.expect("a rule is switched off", r.act(a, map[string]string{"since": strict}), 0, []string{"::warning title=Lift plans::Something is new or worse, is judged more mildly"}, []string{"::error"},
		[]string{"**What changed:** 1 plan, 0 the same. There is something new or worse", "angle/leg\\_too\\_flat, off: nobody asked"}, nil)

	broken := r.commit(map[string]string{"liftlint.yaml": "liftlint: 1\nruels: {}\n", "plans/pump.lift.yaml": clean})
	r.expect("a broken configuration", r.act(a, nil), 3, []string{"::error file=liftlint.yaml,line=2,col=1,title=Could not check::"}, nil, []string{"liftlint.yaml:2:1"}, nil)
	r.expect("nothing can be told of it", r.act(a, map[string]string{"since": strict}), 3, []string{"Not all of what changed could be told"}, nil, []string{"what changed", "Not all of what changed could be told"}, nil)
	r.commit(map[string]string{"liftlint.yaml": ""})
	r.expect("mended", r.act(a, map[string]string{"since": broken}), 0, []string{"::warning title=Lift plans::Not all of what changed could be told"}, nil, []string{"Not all of what changed could be told"}, nil)

	whole := r.workspace
	r.workspace = t.TempDir()
	r.git("clone", "-q", "--depth", "1", "file://"+whole, ".")
	got = r.act(a, map[string]string{"since": first})
	r.expect("a shallow clone", got, 2, nil, nil, nil, nil)
	if !strings.Contains(got.errors, "fetch-depth: 0") {
		t.Errorf("how to mend it is not said: %s", got.errors)
	}
}

// expect looks for what has to be said, and must not be, in output and summary.
func (r *runner) expect(what string, got ran, code int, out, notOut, summary, notSummary []string) {
	r.t.Helper()
	if got.code != code {
		r.t.Errorf("%s: exit code %d, not %d\n%s%s", what, got.code, code, got.out, got.errors)
	}
	for _, x := range []struct {
		text string
		says bool
		list []string
	}{{got.out, true, out}, {got.out, false, notOut}, {got.summary, true, summary}, {got.summary, false, notSummary}} {
		for _, word := range x.list {
			if strings.Contains(x.text, word) != x.says {
				r.t.Errorf("%s: that it says %q is not %v:\n%s", what, word, x.says, x.text)
			}
		}
	}
}

// gitlabJob is what the template sets of a job.
type gitlabJob struct {
	Image        string
	Variables    map[string]string
	BeforeScript []string `yaml:"before_script"`
	Script       []string
	Artifacts    struct {
		When    string
		Paths   []string
		Reports map[string]string
	}
}

// TestGitLabJob runs the job of the template from getting the source on. Its fixed
// folders are put into one of the test's own.
func TestGitLabJob(t *testing.T) {
	var a action
	readYAML(t, "action.yml", &a)
	r := newRunner(t, a)
	var jobs map[string]gitlabJob
	readYAML(t, "examples/ci/gitlab-ci.yml", &jobs)
	if len(jobs) != 1 {
		t.Fatalf("%d jobs", len(jobs))
	}
	job := jobs["lift-plans"]
	if d := cmp.Diff([]string{"changes.md"}, job.Artifacts.Paths); d != "" || job.Artifacts.Reports["junit"] != "lift-plans.xml" || job.Artifacts.When != "always" {
		t.Errorf("%+v", job.Artifacts)
	}
	source := r.source()
	bin := filepath.Join(r.temp, "bin")
	cache := goCache(t)
	run := func(base string) ran {
		script := strings.Join(append(job.BeforeScript, job.Script...), "\n")
		script = strings.NewReplacer("/tmp/liftlint", filepath.Join(r.temp, "source"), "/usr/local/bin", bin).Replace(script)
		env := append(r.environment(), "GOCACHE="+cache, "GOFLAGS=-mod=mod", "CI_MERGE_REQUEST_DIFF_BASE_SHA="+base)
		for name, v := range job.Variables {
			env = append(env, name+"="+v)
		}
		env = append(env, "LIFTLINT_SOURCE=file://"+source, "PATH="+bin+string(os.PathListSeparator)+os.Getenv("PATH"))
		if err := os.RemoveAll(filepath.Join(r.temp, "source")); err != nil {
			t.Fatal(err)
		}
		got := r.bash(script, env)
		changes, _ := os.ReadFile(filepath.Join(r.workspace, "changes.md"))
		got.summary = string(changes)
		return got
	}
	first := r.commit(map[string]string{"plans/pump.lift.yaml": exampleText(t, "pump-skid")})
	r.expect("nothing changed", run(first), 0, []string{"nothing was checked"}, nil, []string{"1 plan, 1 the same"}, nil)
	r.commit(map[string]string{"plans/vessel.lift.yaml": exampleText(t, "filter-vessel")})
	r.expect("a faulty plan", run(first), 1, []string{"Plan: plans/vessel.lift.yaml", "Leg too flat"}, nil, []string{"Added. Findings: 14 new"}, nil)
	if text, err := os.ReadFile(filepath.Join(r.workspace, "lift-plans.xml")); err != nil || !strings.Contains(string(text), `<testsuite name="plans/vessel.lift.yaml"`) {
		t.Errorf("%v: %s", err, text)
	}
	r.expect("a revision that is not there", run("none"), 2, nil, nil, nil, []string{"Findings"})
	broken := r.commit(map[string]string{"liftlint.yaml": "liftlint: 1\nruels: {}\n", "plans/vessel.lift.yaml": ""})
	r.commit(map[string]string{"liftlint.yaml": ""})
	r.expect("a configuration is mended", run(broken), 0, []string{"Not all of what changed could be told"}, nil, []string{"Not all of what changed could be told"}, nil)
}

// goCache is where the machine keeps what it has compiled.
func goCache(t *testing.T) string {
	t.Helper()
	out, err := exec.Command("go", "env", "GOCACHE").Output()
	if err != nil {
		t.Fatal(err)
	}
	return strings.TrimSpace(string(out))
}

// source is a repository whose program is the one that was built.
func (r *runner) source() string {
	r.t.Helper()
	at := &runner{r.t, r.temp, r.t.TempDir()}
	at.commit(map[string]string{"go.mod": "module liftlint\n\ngo 1.26\n", "cmd/liftlint/main.go": `package main

import (
	"os"
	"os/exec"
)

func main() {
	c := exec.Command(` + "`" + filepath.Join(r.temp, "liftlint") + "`" + `, os.Args[1:]...)
	c.Stdin, c.Stdout, c.Stderr = os.Stdin, os.Stdout, os.Stderr
	_ = c.Run()
	os.Exit(c.ProcessState.ExitCode())
}
`})
	at.git("branch", "-M", "main")
	return at.workspace
}

// TestPreCommitHookInstalls does what a manager of hooks does for a hook written in
// Go: it installs all programs of the repository, and runs the entry with them on the
// path, from the top of a repository.
func TestPreCommitHookInstalls(t *testing.T) {
	var hooks []struct{ Entry string }
	readYAML(t, ".pre-commit-hooks.yaml", &hooks)
	r := &runner{t, t.TempDir(), t.TempDir()}
	bin := filepath.Join(r.temp, "bin")
	install := exec.Command("go", "install", "./...")
	install.Dir, install.Env = "../..", append(os.Environ(), "GOBIN="+bin)
	if out, err := install.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	env := append(r.environment(), "PATH="+bin+string(os.PathListSeparator)+os.Getenv("PATH"))
	r.commit(map[string]string{"plans/pump.lift.yaml": exampleText(t, "pump-skid")})
	atDesk := append(slices.Clone(env), "CI=")
	r.expect("nothing is staged", r.bash(hooks[0].Entry, atDesk), 0, nil, nil, nil, nil)
	if got := r.bash(hooks[0].Entry, env); got.code != 3 || !strings.Contains(got.errors, "nothing is staged, so that nothing was checked") {
		t.Errorf("nothing is staged on a build service: %+v", got)
	}
	if got := r.bash(hooks[1].Entry, env); got.code != 3 || !strings.Contains(got.errors, "nothing says what is pushed, so that nothing was checked") {
		t.Errorf("at no push: %+v", got)
	}
	r.write(filepath.Join(r.workspace, "plans/vessel.lift.yaml"), exampleText(t, "filter-vessel"))
	r.expect("nothing is staged yet", r.bash(hooks[0].Entry, atDesk), 0, nil, nil, nil, nil)
	r.git("add", "plans")
	got := r.bash(hooks[0].Entry, env)
	r.expect("a faulty plan is staged", got, 1, nil, nil, nil, nil)
	if !strings.Contains(got.errors, "plans/vessel.lift.yaml:98:9: error: ") || !strings.Contains(got.errors, "the commit is refused") {
		t.Errorf("%+v", got)
	}
	base := strings.TrimSpace(r.git("rev-parse", "HEAD"))
	r.git("commit", "-qm", "faulty")
	to := strings.TrimSpace(r.git("rev-parse", "HEAD"))
	for from, want := range map[string]int{base: 1, to: 0, "": 1} {
		got := r.bash(hooks[1].Entry, append(slices.Clone(env), variableFrom+"="+from, variableTo+"="+to, variableRemote+"=origin"))
		if got.code != want || strings.Contains(got.errors, "plans/vessel.lift.yaml:98:9: error: ") != (want == 1) {
			t.Errorf("pushed since %q: %+v", from, got)
		}
	}
}
