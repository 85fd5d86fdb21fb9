//go:build unix

// Command stationtimes prints how long each station of a check takes, how long
// the whole program takes on one plan and on many, and its peak memory. Run it
// from the repository's root. Machines differ: compare ratios within one run.
package main

import (
	"fmt"
	"os"
	"runtime"
	"slices"
	"strings"
	"time"
)

func main() {
	fmt.Printf("%s, %s/%s, GOMAXPROCS %d; generated plans of one to four legs\n\n", runtime.Version(), runtime.GOOS, runtime.GOARCH, runtime.GOMAXPROCS(0))
	if err := run(); err != nil {
		fmt.Fprintln(os.Stderr, "stationtimes:", err)
		os.Exit(1)
	}
}

// run measures the command first: Linux counts the memory of the process that
// starts a child toward the child's peak, and here this one is still small.
func run() error {
	head("the command")
	if err := process(); err != nil {
		return err
	}
	fmt.Println()
	head("in one process")
	return stations()
}

func line(cells ...any) {
	fmt.Println(strings.TrimRight(fmt.Sprintf("%-36s %12s %12s %5v", cells...), " "))
}

func head(what string) { line(what, "median", "nine of ten", "n") }

// times are the durations of one station, or of one way to run the command.
type times struct {
	name string
	all  []time.Duration
}

func (t *times) measure(f func()) {
	start := time.Now()
	f()
	t.all = append(t.all, time.Since(start))
}

func (t *times) median() time.Duration { return t.share(0.5) }

// share is the time that so many of the runs stayed within.
func (t *times) share(of float64) time.Duration {
	slices.Sort(t.all)
	return t.all[int(of*float64(len(t.all)-1)+0.5)]
}

func (t *times) row() { line(t.name, brief(t.median()), brief(t.share(0.9)), len(t.all)) }

// brief prints milliseconds with two decimals, so that a column can be
// compared by eye.
func brief(d time.Duration) string {
	return fmt.Sprintf("%.2f ms", float64(d)/float64(time.Millisecond))
}

// figure prints a row that is no time.
func figure(what, value string, n int) { line(what, value, "", n) }
