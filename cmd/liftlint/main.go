// Command liftlint reviews lift plans: it computes how a load hangs and what
// its rigging carries, and judges the figures by rules that cite their source.
package main

import (
	"os"

	"golang.org/x/term"

	"liftlint/internal/cli"
)

func main() {
	os.Exit(cli.Main(os.Args[1:], cli.Environment{
		Stdin:    os.Stdin,
		Stdout:   os.Stdout,
		Stderr:   os.Stderr,
		Getenv:   os.Getenv,
		Terminal: term.IsTerminal(int(os.Stdout.Fd())),

		ErrTerminal: term.IsTerminal(int(os.Stderr.Fd())),
	}))
}
