// Package cli is the command line: one file a command. Streams and environment
// are passed in; nothing here knows physics.
package cli

import (
	"errors"
	"fmt"
	"io"
	"os"
	"runtime/debug"

	"github.com/spf13/cobra"

	"liftlint/internal/report"
)

// Environment is what a command may touch of the world, besides files.
type Environment struct {
	Stdin    io.Reader
	Stdout   io.Writer
	Stderr   io.Writer
	Getenv   func(string) string
	Terminal bool // whether Stdout is a terminal

	ErrTerminal bool // whether Stderr is one
}

// color reports whether to color the output: on a terminal, unless NO_COLOR
// is set to anything.
func (e Environment) color() bool {
	return e.Terminal && e.Getenv("NO_COLOR") == "" && e.Getenv("TERM") != "dumb"
}

// Exit codes. They are part of the interface. Where several hold, the order of
// precedence is Usage, Unchecked, Findings, Nothing.
const (
	Clean     = int(report.Clean)     // checked, nothing at or above --fail-on
	Findings  = int(report.Findings)  // findings at or above --fail-on, or a plan that is not valid
	Usage     = 2                     // wrong usage, or a configuration that was named or all depends on is wrong
	Unchecked = int(report.Unchecked) // could not check: a rule, a file that can't be read, a configuration that was found, the tool
	Nothing   = int(report.Nothing)   // nothing was checked
)

// exit ends a command with a code; err is printed unless it is nil.
type exit struct {
	code int
	err  error
}

func (e exit) Error() string {
	if e.err == nil {
		return ""
	}
	return e.err.Error()
}

func wrongUsage(err error) error { return exit{Usage, err} }

// Main runs one command and returns its exit code.
func Main(args []string, e Environment) int {
	root := newRoot(e)
	root.SetArgs(args)
	root.SetIn(e.Stdin)
	root.SetOut(e.Stdout)
	root.SetErr(e.Stderr)
	err := root.Execute()
	if err == nil {
		return Clean
	}
	var x exit
	if !errors.As(err, &x) {
		x = exit{Usage, err} // cobra's own: an unknown flag or command
		if errors.As(err, new(*os.PathError)) {
			x.code = Unchecked // the output could not be written
		}
	}
	if x.err != nil {
		fmt.Fprintf(e.Stderr, "liftlint: %s\n", visibleLines(x.err.Error()))
	}
	if x.code == Usage {
		fmt.Fprintln(e.Stderr, "liftlint: see liftlint --help")
	}
	return x.code
}

func newRoot(e Environment) *cobra.Command {
	root := &cobra.Command{
		Use:           "liftlint",
		Short:         "Review lift plans like code",
		Long:          rootHelp,
		SilenceErrors: true,
		SilenceUsage:  true,
		Version:       version(),
		RunE: func(c *cobra.Command, _ []string) error {
			return c.Help()
		},
	}
	root.AddCommand(newCheck(e), newBaseline(e), newFacts(e), newRules(e), newExplain(e), newPolicy(e), newGear(e), newSchema(e), newHook(e))
	root.AddCommand(newCompare(e), newInit(e), newMan(e))
	refuseUnknown(root)
	completeWords(root)
	return root
}

// version is that of the module, as the build knows it.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return "unknown"
	}
	return info.Main.Version
}

const rootHelp = `liftlint reads a lift plan, computes how the load hangs and what every sling
and fitting carries, and judges the figures by rules that cite their source.

It is an aid to a qualified person's review. It never says that a lift is safe.

Exit codes: 0 checked, nothing at or above --fail-on; 1 findings, or a plan that
is not valid; 2 wrong usage; 3 could not check; 4 nothing was checked.`
