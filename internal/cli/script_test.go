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
		Cmds:          map[string]func(*testscript.TestScript, bool, []string){"code": code, "repeat": repeat, "edit": edit, "join": join},
		Setup: func(e *testscript.Env) error {
			e.Setenv("EXAMPLES", examples)
			return os.CopyFS(filepath.Join(e.WorkDir, "examples"), os.DirFS(examples))
		},
	})
}
