package cli

import (
	"context"
	"errors"
	"fmt"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/finding"
	"liftlint/internal/gitrepo"
	"liftlint/internal/policy"
)

type hookCommand struct {
	env     Environment
	prePush bool
	shared  bool
	managed bool // a hook manager runs it
	stage   *choice
	failOn  *choice
}

func newHook(e Environment) *cobra.Command {
	c := &cobra.Command{
		Use:   "hook install|remove",
		Short: "Check plans at each git commit, or at each push",
		Long: `Hook puts a check into a git repository. At each commit the plans that it concerns are
checked as they are staged; at each push (--pre-push), as they are in what is pushed, as
far as the other side does not have it yet. A commit with findings of severity error,
with a plan that is not valid, or whose plans could not be checked is refused.
git commit --no-verify leaves the check out.

The hook of commits sees what differs from the last one. Git does not ask it of merges
that it makes by itself, and what was committed with --no-verify no longer differs when
the commit is amended: --pre-push, and a check where all come together, see that.`,
		Args: cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error { return c.Help() },
	}
	c.AddCommand(newHookInstall(e), newHookRemove(e), newHookRun(e))
	return c
}

// hookOptions are the options that hooks are installed and run with.
func hookOptions(e Environment) *hookCommand {
	return &hookCommand{env: e, stage: oneOf(policy.Review, policy.Draft, policy.Prelift), failOn: oneOf("error", "warning", "note")}
}

func (k *hookCommand) checkFlags(c *cobra.Command) {
	c.Flags().Var(k.stage, "stage", "the stage to check at: draft, review or prelift")
	c.Flags().Var(k.failOn, "fail-on", "the least severity that refuses: error, warning or note")
}

func newHookInstall(e Environment) *cobra.Command {
	k := hookOptions(e)
	c := &cobra.Command{
		Use:   "install",
		Short: "Put the hook into the repository of the current folder",
		Long: `Install writes the hook to where git looks for it, which core.hooksPath may name. A
hook that is there already is kept beside it and runs first.`,
		Example: "  liftlint hook install\n  liftlint hook install --stage draft\n  liftlint hook install --pre-push",
		Args:    cobra.NoArgs,
		RunE:    func(c *cobra.Command, _ []string) error { return k.installIn(c.Context(), ".") },
	}
	k.checkFlags(c)
	c.Flags().BoolVar(&k.prePush, "pre-push", false, "check at each push instead of at each commit")
	c.Flags().BoolVar(&k.shared, "shared", false, "install it although core.hooksPath names a folder outside the repository, whose hooks hold for others too")
	return c
}

func newHookRemove(e Environment) *cobra.Command {
	k := hookOptions(e)
	c := &cobra.Command{
		Use:     "remove",
		Short:   "Take the hook out again, and put back what was there before",
		Example: "  liftlint hook remove",
		Args:    cobra.NoArgs,
		RunE:    func(c *cobra.Command, _ []string) error { return k.remove(c.Context()) },
	}
	c.Flags().BoolVar(&k.prePush, "pre-push", false, "the hook of each push instead of that of each commit")
	return c
}

// newHookRun is what the hooks call.
func newHookRun(e Environment) *cobra.Command {
	k := hookOptions(e)
	c := &cobra.Command{
		Use:       "run pre-commit|pre-push",
		Short:     "Check what is committed or pushed, as the hooks do",
		Hidden:    true,
		Args:      cobra.MinimumNArgs(1), // git adds its own to that of the name
		ValidArgs: []string{preCommit, prePush},
		RunE:      func(c *cobra.Command, args []string) error { return k.run(c.Context(), args[0], args[1:]) },
	}
	k.checkFlags(c)
	c.Flags().BoolVar(&k.managed, "by-manager", false, "a hook manager runs it, and not git itself")
	return c
}

// The hooks, by the names of their files.
const (
	preCommit = "pre-commit"
	prePush   = "pre-push"
)

func (k *hookCommand) name() string {
	if k.prePush {
		return prePush
	}
	return preCommit
}

func (k *hookCommand) open(ctx context.Context, folder string) (*gitrepo.Repo, hookFile, error) {
	repo, err := gitrepo.Open(ctx, folder, k.env.Getenv)
	if err != nil {
		return nil, hookFile{}, wrongUsage(err)
	}
	dir, err := repo.HooksDir(ctx)
	if err != nil {
		return nil, hookFile{}, exit{Unchecked, err}
	}
	return repo, hookFile{dir: dir, name: k.name()}, nil
}

// installIn installs the hook in the repository that a folder lies in.
func (k *hookCommand) installIn(ctx context.Context, folder string) error {
	repo, file, err := k.open(ctx, folder)
	if err != nil {
		return err
	}
	if !repo.Owns(ctx, file.dir) && !k.shared {
		return wrongUsage(fmt.Errorf("core.hooksPath names %s, outside this repository: a hook there holds for every repository that is set so; --shared installs it all the same", file.dir))
	}
	said, err := file.install(hookScript{name: k.name(), stage: k.stage.value, failOn: k.failOn.value, program: ownProgram(repo, file.dir)})
	if err != nil {
		return wrongUsage(err)
	}
	_, err = fmt.Fprintln(k.env.Stdout, visible(said))
	return err
}

func (k *hookCommand) remove(ctx context.Context) error {
	_, file, err := k.open(ctx, ".")
	if err != nil {
		return err
	}
	said, err := file.remove()
	if err != nil {
		return wrongUsage(err)
	}
	_, err = fmt.Fprintln(k.env.Stdout, visible(said))
	return err
}

// run checks, and refuses what is not to be: also what could not be checked.
func (k *hookCommand) run(ctx context.Context, name string, told []string) error {
	c := &check{env: k.env, output: newOutput(k.env), failOn: k.failOn, noneIsFine: true}
	c.env.Stdout, c.output.env.Stdout = k.env.Stderr, k.env.Stderr // where git shows what hooks say
	c.judging.stage, c.output.format.value = k.stage.value, "line"
	var err error
	what, whole := "commit", "liftlint check --staged"+k.asked()
	switch name {
	case preCommit:
		c.change.staged = true
		if k.managed {
			if err := somethingStaged(ctx, k.env); err != nil {
				return err
			}
		}
		err = c.run(ctx, nil)
	case prePush:
		what = "push"
		remote := append(told, "")[0]
		if k.managed {
			var pushed string
			if remote, pushed, err = managedPush(k.env.Getenv); err != nil {
				return err
			}
			c.env.Stdin = strings.NewReader(pushed)
		}
		if whole, err = c.runPushed(ctx, remote); whole != "" {
			whole += k.failing()
		}
	default:
		return wrongUsage(fmt.Errorf("there is no hook %s: there are %s and %s", name, preCommit, prePush))
	}
	var x exit
	if err == nil || errors.As(err, &x) && x.code == Nothing && x.err == nil {
		return nil
	}
	advice := fmt.Sprintf("git %s --no-verify leaves the check out", what)
	if whole != "" {
		advice = whole + " shows the whole report, and " + advice
	}
	fmt.Fprintf(k.env.Stderr, "liftlint: the %s is refused; %s\n", what, advice)
	return err
}

// asked are the options of a check that do as the hook does, as far as they are not
// those that a check has by itself.
func (k *hookCommand) asked() string {
	if k.stage.value == policy.Review {
		return k.failing()
	}
	return " --stage " + k.stage.value + k.failing()
}

func (k *hookCommand) failing() string {
	if k.failOn.value == string(finding.Error) {
		return ""
	}
	return " --fail-on " + k.failOn.value
}

// ownProgram is the path of this program, for where the PATH does not have it;
// empty where it would be of no use: of a program that was built to be run once, and
// in a folder that others get too.
func ownProgram(repo *gitrepo.Repo, hooks string) string {
	path, err := os.Executable()
	if err != nil || holds(os.TempDir(), path) {
		return ""
	}
	if at, ok := repo.Path(hooks); ok && !holds(".git", at) {
		return ""
	}
	return path
}
