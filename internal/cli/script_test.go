package cli

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"liftlint": func() {
			os.Exit(Main(os.Args[1:], Environment{Stdin: os.Stdin, Stdout: os.Stdout, Stderr: os.Stderr, Getenv: os.Getenv}))
		},
	})
}

// gitEnvironment lets git commit, and keeps from it what the machine has set.
func gitEnvironment(folder string) []string {
	return []string{
		"HOME=" + folder, "GIT_CONFIG_NOSYSTEM=1", "GIT_CEILING_DIRECTORIES=" + folder,
		"GIT_AUTHOR_NAME=rigger", "GIT_AUTHOR_EMAIL=rigger@site.example", "GIT_COMMITTER_NAME=rigger", "GIT_COMMITTER_EMAIL=rigger@site.example",
	}
}

// TestScripts runs the sessions in testdata/script. Set LIFTLINT_UPDATE=1 to
// rewrite the outputs that they compare with.
func TestScripts(t *testing.T) {
	examples, err := filepath.Abs("../../examples")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:           "testdata/script",
		UpdateScripts: os.Getenv("LIFTLINT_UPDATE") == "1",
		Cmds:          map[string]func(*testscript.TestScript, bool, []string){"code": code, "repeat": repeat, "append": appendTo, "scriptof": scriptOf, "edit": edit, "join": join},
		Setup: func(e *testscript.Env) error {
			e.Setenv("EXAMPLES", examples)
			e.Vars = append(e.Vars, gitEnvironment(e.WorkDir)...)
			return os.CopyFS(filepath.Join(e.WorkDir, "examples"), os.DirFS(examples))
		},
	})
}
