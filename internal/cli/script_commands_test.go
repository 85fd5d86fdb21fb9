package cli

import (
	"errors"
	"os"
	"os/exec"
	"strconv"
	"strings"

	"github.com/rogpeppe/go-internal/testscript"
)

// code runs the program and expects an exit code: code WANT ARGS...
func code(ts *testscript.TestScript, _ bool, args []string) {
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec("liftlint", args[1:]...); err != nil {
		var x *exec.ExitError
		if !errors.As(err, &x) {
			ts.Fatalf("%v", err)
		}
		got = x.ExitCode()
	}
	if got != want {
		ts.Fatalf("exit code %d, want %d\n%s%s", got, want, ts.ReadFile("stdout"), ts.ReadFile("stderr"))
	}
}

// repeat writes a text so many times into a file: repeat FILE TIMES TEXT.
// In the text \n stands for a line's end.
func repeat(ts *testscript.TestScript, _ bool, args []string) {
	times, err := strconv.Atoi(args[1])
	ts.Check(err)
	text := strings.ReplaceAll(args[2], `\n`, "\n")
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(strings.Repeat(text, times)), 0o600))
}
