package cli

import (
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"liftlint/internal/gitrepo"
)

// runPushed checks each revision that is pushed, as far as the other side does not
// have it yet. Git tells them on standard input: local name and commit, remote name
// and commit. whole is the command that shows the report of the worst of them.
func (k *check) runPushed(ctx context.Context, remote string) (whole string, err error) {
	text, err := io.ReadAll(k.env.Stdin)
	if err != nil {
		return "", exit{Unchecked, err}
	}
	repo, err := gitrepo.Open(ctx, ".", k.env.Getenv)
	if err != nil {
		return "", wrongUsage(err)
	}
	pushes, err := readPushes(string(text))
	if err != nil {
		return "", exit{Unchecked, err}
	}
	judgedBy := k.judging
	var worst error
	for _, p := range pushes {
		k.judging = judgedBy
		bases, err := k.runPush(ctx, repo, remote, p)
		if rankOf(err) > rankOf(worst) {
			worst, whole = err, wholeReport(judgedBy.stage, p.local, bases)
		}
	}
	return whole, worst
}

// wholeReport is the command that checks again what was pushed. Where that is compared
// with several commits, it checks more.
func wholeReport(stage, commit string, bases []string) string {
	words := fmt.Sprintf("liftlint check --stage %s --at %.10s", stage, commit)
	if len(bases) > 0 {
		words += fmt.Sprintf(" --since %.10s", bases[0])
	}
	return words
}

// runPush checks one revision against the nearest that the other side has; all of it
// where none is known.
func (k *check) runPush(ctx context.Context, repo *gitrepo.Repo, remote string, p pushed) (bases []string, err error) {
	var has []string
	if _, err := repo.Commit(ctx, p.remote); !p.created() && err == nil {
		has = append(has, p.remote)
	}
	if bases, err = repo.Shared(ctx, p.local, remote, has...); err != nil {
		return nil, exit{Unchecked, err}
	}
	var before []gitrepo.Tree
	for _, b := range bases {
		t, err := repo.Tree(ctx, b)
		if err != nil {
			return bases, exit{Unchecked, err}
		}
		before = append(before, t)
	}
	if len(bases) == 0 {
		fmt.Fprintln(k.env.Stderr, "liftlint: nothing is known of what the other side has: all plans are checked that are pushed")
		before = []gitrepo.Tree{{}}
	}
	now, err := repo.Tree(ctx, p.local)
	if err != nil {
		return bases, exit{Unchecked, err}
	}
	return bases, k.runSnapshot(ctx, repo, now, []string{repo.Top}, before...)
}

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
