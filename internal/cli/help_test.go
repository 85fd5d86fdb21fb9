package cli

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/spf13/cobra"
)

// allCommands are those that people see.
func allCommands(c *cobra.Command) []*cobra.Command {
	list := []*cobra.Command{c}
	for _, below := range c.Commands() {
		if below.IsAvailableCommand() {
			list = append(list, allCommands(below)...)
		}
	}
	return list
}

// TestExamplesAreCommands: every line that --help gives as an example is understood:
// the command is there, takes the arguments, and has the flags.
func TestExamplesAreCommands(t *testing.T) {
	seen := 0
	for _, c := range allCommands(newRoot(Environment{})) {
		if c.Runnable() && c.HasParent() && c.Example == "" && !c.HasSubCommands() {
			t.Errorf("%s has no example", c.CommandPath())
		}
		for line := range strings.SplitSeq(c.Example, "\n") {
			line, _, _ = strings.Cut(line, " > ")
			line, _, _ = strings.Cut(line, " < ")
			args := strings.Fields(line)
			if len(args) == 0 {
				continue
			}
			seen++
			root := newRoot(Environment{})
			found, rest, err := root.Find(args[1:])
			if err != nil || args[0] != "liftlint" || found == root {
				t.Errorf("%q is an example of %s and leads to %s: %v", line, c.CommandPath(), found.CommandPath(), err)
				continue
			}
			if err := found.ParseFlags(rest); err != nil {
				t.Errorf("%q: %v", line, err)
			}
			if err := found.ValidateArgs(found.Flags().Args()); err != nil {
				t.Errorf("%q: %v", line, err)
			}
		}
	}
	if seen < 20 {
		t.Errorf("only %d examples", seen)
	}
}

// TestExamplesRun runs those that read no more than the examples of the repository.
func TestExamplesRun(t *testing.T) {
	t.Chdir("../..")
	seen := 0
	for _, c := range allCommands(newRoot(Environment{})) {
		for line := range strings.SplitSeq(c.Example, "\n") {
			args := strings.Fields(line)
			if len(args) < 2 || strings.ContainsAny(line, "<>") || !strings.Contains(line, "examples/") || strings.Contains(line, "--write") {
				continue
			}
			seen++
			var out, errs bytes.Buffer
			code := Main(args[1:], Environment{Stdin: strings.NewReader(""), Stdout: &out, Stderr: &errs, Getenv: os.Getenv})
			if code != Clean && code != Findings || out.Len() == 0 {
				t.Errorf("%q: exit code %d\n%s", line, code, errs.String())
			}
		}
	}
	if seen < 4 {
		t.Errorf("only %d examples", seen)
	}
}

// TestManPages: a page for each command, in which no line is taken for a request
// that is none, by groff_man(7).
func TestManPages(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "man1")
	if code := Main([]string{"man", dir}, Environment{Stdout: os.Stdout, Stderr: os.Stderr, Getenv: os.Getenv}); code != Clean {
		t.Fatalf("exit code %d", code)
	}
	known := regexp.MustCompile(`^\.(TH|SH|B) "|^\.(TP|PP|br|nf|fi)$`)
	root := newRoot(Environment{})
	root.InitDefaultHelpCmd()
	root.InitDefaultCompletionCmd()
	for _, c := range allCommands(root) {
		text, err := os.ReadFile(filepath.Join(dir, pageName(c)+".1"))
		if err != nil {
			t.Error(err)
			continue
		}
		for line := range strings.Lines(string(text)) {
			line = strings.TrimSuffix(line, "\n")
			if (strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'")) && !known.MatchString(line) {
				t.Errorf("%s: %q", pageName(c), line)
			}
		}
		for _, head := range []string{`.SH "NAME"`, `.SH "SYNOPSIS"`, `.SH "DESCRIPTION"`} {
			if !bytes.Contains(text, []byte(head+"\n")) {
				t.Errorf("%s has no %s", pageName(c), head)
			}
		}
	}
}

// TestManPagesInGroff puts the pages to the program that lays them out, where a
// machine has it.
func TestManPagesInGroff(t *testing.T) {
	groff, err := exec.LookPath("groff")
	if err != nil {
		t.Skip("groff is not on this machine: the pages are held to the names of the macros alone")
	}
	root := newRoot(Environment{})
	for _, c := range allCommands(root) {
		run := exec.Command(groff, "-man", "-Tutf8", "-ww", "-z")
		run.Stdin = strings.NewReader(manPage(c))
		if out, err := run.CombinedOutput(); err != nil || len(out) > 0 {
			t.Errorf("%s: %v\n%s", pageName(c), err, out)
		}
	}
}

// TestRoffEscapes: what begins a request, and what begins an escape, is written as
// text.
func TestRoffEscapes(t *testing.T) {
	p := &roff{}
	p.text(".de x\n'so file\nback\\slash -x")
	if want := "\\&.de x\n\\&'so file\nback\\eslash \\-x\n"; p.out.String() != want {
		t.Errorf("%q, not %q", p.out.String(), want)
	}
}
