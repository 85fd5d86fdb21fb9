package cli

import (
	"context"
	"errors"
	"strings"

	"liftlint/internal/gitrepo"
)

// Where a hook manager is between git and the hook, it says in these variables what is
// pushed, one branch a run. Their names are those of the manager's documentation, as
// remembered.
const (
	variableFrom   = "PRE_COMMIT_FROM_REF"
	variableTo     = "PRE_COMMIT_TO_REF"
	variableRemote = "PRE_COMMIT_REMOTE_NAME"
)

// errNotToldPush is for a run at no push: what it did not look at would pass.
var errNotToldPush = errors.New("nothing says what is pushed, so that nothing was checked: this hook is for pushes; liftlint check --since REVISION checks what differs from a revision")

// managedPush is what a manager says that is pushed, as git tells it to a hook.
func managedPush(getenv func(string) string) (remote, told string, err error) {
	from, to := getenv(variableFrom), getenv(variableTo)
	if to == "" {
		return "", "", exit{Unchecked, errNotToldPush}
	}
	if from == "" {
		from = strings.Repeat("0", 40) // as git says that there is none
	}
	return getenv(variableRemote), "local " + to + " remote " + from + "\n", nil
}

// somethingStaged refuses a run on a build service where nothing is staged: it would pass,
// and nothing would have been checked.
func somethingStaged(ctx context.Context, e Environment) error {
	if e.Getenv("CI") == "" {
		return nil
	}
	repo, err := gitrepo.Open(ctx, ".", e.Getenv)
	if err != nil {
		return wrongUsage(err)
	}
	before, err := repo.Head(ctx)
	if err != nil {
		return exit{Unchecked, err}
	}
	now, err := repo.Index(ctx)
	if err != nil {
		return exit{Unchecked, err}
	}
	if gitrepo.Same(before, now) {
		return exit{Unchecked, errors.New("nothing is staged, so that nothing was checked: this hook is for commits; on a build service, liftlint check checks all plans, and --since those that a change concerns")}
	}
	return nil
}
