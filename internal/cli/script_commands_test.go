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

// edit replaces texts in a file wherever they stand: edit FILE OLD NEW...
func edit(ts *testscript.TestScript, _ bool, args []string) {
	text := ts.ReadFile(args[0])
	for i := 1; i < len(args); i += 2 {
		if !strings.Contains(text, args[i]) {
			ts.Fatalf("%s has no %q", args[0], args[i])
		}
		text = strings.ReplaceAll(text, args[i], args[i+1])
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(text), 0o600))
}

// join writes files one behind the other: join TO FROM...
func join(ts *testscript.TestScript, _ bool, args []string) {
	var text strings.Builder
	for _, from := range args[1:] {
		text.WriteString(ts.ReadFile(from))
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(text.String()), 0o600))
}

// appendTo adds a text to the end of a file: append FILE TEXT. In the text \n stands
// for a line's end.
func appendTo(ts *testscript.TestScript, _ bool, args []string) {
	name := ts.MkAbs(args[0])
	text := ts.ReadFile(args[0]) + strings.ReplaceAll(args[1], `\n`, "\n")
	info, err := os.Stat(name)
	ts.Check(err)
	ts.Check(os.WriteFile(name, []byte(text), info.Mode()))
}
