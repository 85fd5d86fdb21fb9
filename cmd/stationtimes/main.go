//go:build unix

// Command stationtimes prints how long each station of a check takes, how long
// the whole program takes on one plan and on many, and its peak memory. Run it
// from the repository's root. Machines differ: compare ratios within one run.
package main

import (
	"fmt"
	"os"
	"runtime"
)

func main() {
	fmt.Printf("%s, %d cores, four-leg and other generated plans; medians\n\n", runtime.Version(), runtime.GOMAXPROCS(0))
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "stationtimes:", err)
		os.Exit(1)
	}
}

func run() error {
	if err := stations(); err != nil {
		return err
	}
	fmt.Println()
	return process()
}

// row prints one figure.
func row(what, figure string) { fmt.Printf("%-44s %12s\n", what, figure) }
