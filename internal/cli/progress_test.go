package cli

import (
	"bytes"
	"strings"
	"testing"
	"testing/synctest"
	"time"
)

func environment(terminal bool, variables map[string]string) (Environment, *bytes.Buffer) {
	var errs bytes.Buffer
	return Environment{Stderr: &errs, ErrTerminal: terminal, Getenv: func(name string) string { return variables[name] }}, &errs
}

// TestProgress: a short run is quiet, a long one is told of, and nothing stays.
func TestProgress(t *testing.T) {
	for _, c := range []struct {
		takes time.Duration
		told  bool
	}{{900 * time.Millisecond, false}, {3 * time.Second, true}} {
		synctest.Test(t, func(t *testing.T) {
			e, errs := environment(true, nil)
			p := e.progress(7)
			inputs := p.counting([]input{{path: "a", read: func() ([]byte, error) { return nil, nil }}})
			stop := p.start()
			if _, err := inputs[0].read(); err != nil {
				t.Fatal(err)
			}
			time.Sleep(c.takes)
			stop()
			if told := strings.Contains(errs.String(), "plan 1 of 7"); told != c.told {
				t.Errorf("after %v: %q", c.takes, errs.String())
			}
			if c.told && !strings.HasSuffix(errs.String(), "\r\x1b[K") {
				t.Errorf("something stays: %q", errs.String())
			}
		})
	}
}

// TestProgressIsQuiet where nobody looks.
func TestProgressIsQuiet(t *testing.T) {
	for name, c := range map[string]struct {
		terminal  bool
		variables map[string]string
	}{"into a file": {false, nil}, "in a build": {true, map[string]string{"CI": "true"}}, "dumb": {true, map[string]string{"TERM": "dumb"}}} {
		e, errs := environment(c.terminal, c.variables)
		p := e.progress(7)
		p.start()()
		if p != nil || errs.Len() > 0 || len(p.counting(make([]input, 2))) != 2 {
			t.Errorf("%s: %q", name, errs.String())
		}
	}
}
