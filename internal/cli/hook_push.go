package cli

import (
	"errors"
	"fmt"
	"strings"
)

// pushed is one reference that is pushed.
type pushed struct{ local, remote string } // commits

// created reports whether the other side has no such reference yet.
func (p pushed) created() bool { return isZero(p.remote) }

// isZero reports whether the name of a commit stands for none.
func isZero(commit string) bool { return strings.Trim(commit, "0") == "" }

// readPushes reads what git tells a pre-push hook, as githooks(5) describes it.
// References that are deleted push nothing.
func readPushes(text string) ([]pushed, error) {
	var list []pushed
	for line := range strings.Lines(text) {
		fields := strings.Fields(line)
		switch {
		case len(fields) == 0:
		case len(fields) != 4:
			return nil, fmt.Errorf("%q is not what git tells of a push", strings.TrimSpace(line))
		case !isZero(fields[1]):
			list = append(list, pushed{local: fields[1], remote: fields[3]})
		}
	}
	return list, nil
}

// worseExit is the one of two outcomes that goes before the other.
func worseExit(a, b error) error {
	if rankOf(b) > rankOf(a) {
		return b
	}
	return a
}

// rankOf orders outcomes by the precedence of their exit codes.
func rankOf(err error) int {
	var x exit
	switch {
	case err == nil:
		return 0
	case !errors.As(err, &x):
		return 5
	case x.code == Usage:
		return 4
	case x.code == Unchecked:
		return 3
	case x.code == Findings:
		return 2
	}
	return 1
}
