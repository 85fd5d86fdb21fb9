package cli

import "strings"

// hookScript is what a hook does.
type hookScript struct {
	name          string
	stage, failOn string
	program       string // where liftlint is if it is not on the PATH; empty for nowhere
	madeFolder    bool   // the folder of the hooks was made for it
}

// madeFolder notes in a hook that its folder goes with it.
const madeFolder = "# The folder was made for this hook.\n"

// body is the script below its first lines. It is for any shell by POSIX. What git
// tells on standard input goes to the hook that was there before as well.
func (s hookScript) body() string {
	var b strings.Builder
	if s.madeFolder {
		b.WriteString(madeFolder)
	}
	b.WriteString("liftlint=$(command -v liftlint)" + s.otherwise() + "\n")
	b.WriteString(`if [ ! -x "$liftlint" ]; then
  echo "liftlint: the program is not on the PATH, so that no plan can be checked; install it, or leave the check out with --no-verify" >&2
  exit 1
fi
`)
	run := `"$liftlint" hook run --stage ` + s.stage + " --fail-on " + s.failOn + " " + s.name + ` -- "$@"`
	if s.name == prePush {
		b.WriteString(`told=$(cat)
if [ -x "$0.before-liftlint" ]; then
  printf '%s\n' "$told" | "$0.before-liftlint" "$@" || exit $?
fi
printf '%s\n' "$told" | ` + run + "\n")
		return b.String()
	}
	b.WriteString(`if [ -x "$0.before-liftlint" ]; then
  "$0.before-liftlint" "$@" || exit $?
fi
exec ` + run + "\n")
	return b.String()
}

func (s hookScript) otherwise() string {
	if s.program == "" {
		return ""
	}
	return " || liftlint='" + strings.ReplaceAll(s.program, "'", `'\''`) + "'"
}
