//go:build unix

package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"syscall"

	"liftlint/internal/plangen"
)

const (
	manyPlans = 500
	runs      = 31
	manyRuns  = 5
)

// process measures the command: on one plan, and on a folder of many.
func process() error {
	dir, err := os.MkdirTemp("", "stationtimes")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	binary := filepath.Join(dir, "liftlint")
	if said, err := exec.Command("go", "build", "-o", binary, "./cmd/liftlint").CombinedOutput(); err != nil {
		return fmt.Errorf("build: %w\n%s", err, said)
	}
	plans := filepath.Join(dir, "plans")
	if err := writePlans(plans); err != nil {
		return err
	}
	first := filepath.Join(plans, "000.lift.yaml")
	for _, c := range []struct {
		name string
		n    int
		args []string
	}{
		{"start and nothing else", runs, []string{"--help"}},
		{"check one plan", runs, []string{"check", first}},
		{fmt.Sprintf("check %d plans", manyPlans), manyRuns, []string{"check", plans}},
	} {
		t, peak, err := timed(c.name, c.n, binary, c.args...)
		if err != nil {
			return err
		}
		t.row()
		figure("  peak memory", fmt.Sprintf("%.0f MB", peak), c.n)
		if c.n == manyRuns {
			figure("  plans a second", fmt.Sprintf("%.0f", manyPlans/t.median().Seconds()), c.n)
		}
	}
	return nil
}

func writePlans(dir string) error {
	if err := os.Mkdir(dir, 0o700); err != nil {
		return err
	}
	for i := range uint64(manyPlans) {
		name := filepath.Join(dir, fmt.Sprintf("%03d.lift.yaml", i))
		if err := os.WriteFile(name, []byte(plangen.Valid(i)), 0o600); err != nil {
			return err
		}
	}
	return nil
}

// timed runs a command so many times and gives the times and the peak resident
// memory in MB. Exit code 1, findings, is no failure here.
func timed(what string, n int, name string, args ...string) (*times, float64, error) {
	t := &times{name: what}
	peak := 0.0
	for range n {
		c := exec.Command(name, args...)
		var err error
		t.measure(func() { err = c.Run() })
		var x *exec.ExitError
		if err != nil && (!errors.As(err, &x) || x.ExitCode() != 1) {
			return nil, 0, fmt.Errorf("%s %v: %w", name, args, err)
		}
		if u, ok := c.ProcessState.SysUsage().(*syscall.Rusage); ok {
			peak = max(peak, float64(u.Maxrss)*maxrssBytes()/1e6)
		}
	}
	return t, peak, nil
}

// maxrssBytes is the unit of Maxrss: bytes on darwin, KiB elsewhere.
func maxrssBytes() float64 {
	if runtime.GOOS == "darwin" {
		return 1
	}
	return 1024
}
