//go:build unix

package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"syscall"
	"time"

	"liftlint/internal/plangen"
)

const (
	manyPlans = 500
	runs      = 15
)

// process measures the whole program: on one plan, and on a folder of many.
func process() error {
	dir, err := os.MkdirTemp("", "stationtimes")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	binary := filepath.Join(dir, "liftlint")
	if out, err := exec.Command("go", "build", "-o", binary, "./cmd/liftlint").CombinedOutput(); err != nil {
		return fmt.Errorf("build: %w\n%s", err, out)
	}
	for i := range uint64(manyPlans) {
		name := filepath.Join(dir, fmt.Sprintf("%03d.lift.yaml", i))
		if err := os.WriteFile(name, []byte(plangen.Valid(i)), 0o600); err != nil {
			return err
		}
	}
	one, peak, err := timed(runs, binary, "check", filepath.Join(dir, "000.lift.yaml"))
	if err != nil {
		return err
	}
	row("whole process, one plan", one.Round(100*time.Microsecond).String())
	row("peak memory, one plan", fmt.Sprintf("%d MB", peak>>10))
	many, peak, err := timed(3, binary, "check", dir)
	if err != nil {
		return err
	}
	row(fmt.Sprintf("whole process, %d plans", manyPlans), many.Round(time.Millisecond).String())
	row("plans a second, all cores", fmt.Sprintf("%.0f", manyPlans/many.Seconds()))
	row(fmt.Sprintf("peak memory, %d plans", manyPlans), fmt.Sprintf("%d MB", peak>>10))
	return nil
}

// timed runs a command so many times and gives the median time and the peak
// resident memory in KiB. Exit code 1, findings, is no failure here.
func timed(n int, name string, args ...string) (time.Duration, int64, error) {
	t := times{}
	var peak int64
	for range n {
		c := exec.Command(name, args...)
		var err error
		t.measure(func() { err = c.Run() })
		var x *exec.ExitError
		if err != nil && (!errors.As(err, &x) || x.ExitCode() > 1) {
			return 0, 0, fmt.Errorf("%s: %w", name, err)
		}
		if u, ok := c.ProcessState.SysUsage().(*syscall.Rusage); ok {
			peak = max(peak, u.Maxrss)
		}
	}
	return t.median(), peak, nil
}
