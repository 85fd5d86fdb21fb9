package cli

import (
	"errors"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

func newMan(e Environment) *cobra.Command {
	return &cobra.Command{
		Use:     "man DIR",
		Short:   "Write the manual pages of all commands into a folder",
		Long:    "Man writes a page of section 1 for each command, made from what --help says. It makes the\nfolder if need be, and writes pages that are there anew.",
		Example: "  liftlint man share/man/man1",
		Args:    cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			if err := os.MkdirAll(args[0], 0o755); err != nil {
				return exit{Unchecked, err}
			}
			if err := writeManPages(c.Root(), args[0]); err != nil {
				return exit{Unchecked, err}
			}
			return nil
		},
	}
}

// writeManPages writes the page of a command, and of all below it that are not hidden.
func writeManPages(c *cobra.Command, dir string) error {
	err := os.WriteFile(filepath.Join(dir, pageName(c)+".1"), []byte(manPage(c)), 0o644)
	for _, below := range c.Commands() {
		if below.IsAvailableCommand() {
			err = errors.Join(err, writeManPages(below, dir))
		}
	}
	return err
}

func pageName(c *cobra.Command) string { return strings.ReplaceAll(c.CommandPath(), " ", "-") }

// manPage is the page of a command in the macros of man(7). It bears no day, so that
// the same program gives the same bytes.
func manPage(c *cobra.Command) string {
	p := &roff{}
	p.macro("TH", strings.ToUpper(pageName(c)), "1", "", "liftlint", "")
	p.macro("SH", "NAME")
	p.text(pageName(c) + " - " + c.Short)
	p.macro("SH", "SYNOPSIS")
	p.text(c.UseLine())
	p.macro("SH", "DESCRIPTION")
	if c.Long != "" {
		p.text(c.Long)
	} else {
		p.text(c.Short + ".")
	}
	p.options("OPTIONS", c.NonInheritedFlags())
	p.options("OPTIONS OF THE COMMANDS ABOVE", c.InheritedFlags())
	if c.Example != "" {
		p.macro("SH", "EXAMPLES")
		p.macro("nf")
		p.text(c.Example)
		p.macro("fi")
	}
	p.related(c)
	return p.out.String()
}

// roff writes a page.
type roff struct{ out strings.Builder }

// macro writes a request with its arguments.
func (p *roff) macro(name string, args ...string) {
	p.out.WriteString("." + name)
	for _, a := range args {
		p.out.WriteString(` "` + strings.ReplaceAll(escaped(a), `"`, `\(dq`) + `"`)
	}
	p.out.WriteString("\n")
}

// text writes lines in which nothing is a request. Those that are indented, and
// others after them, begin anew.
func (p *roff) text(text string) {
	for line := range strings.SplitSeq(text, "\n") {
		switch {
		case line == "":
			p.macro("PP")
			continue
		case strings.HasPrefix(line, "  "):
			p.macro("br")
		}
		line = escaped(line)
		if strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'") {
			line = `\&` + line
		}
		p.out.WriteString(line + "\n")
	}
}

// escaped are the characters that mean something anywhere in a line. Hyphens stay
// what they are, so that options can be copied.
func escaped(text string) string {
	return strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(text)
}

func (p *roff) options(head string, flags *pflag.FlagSet) {
	if !flags.HasAvailableFlags() {
		return
	}
	p.macro("SH", head)
	flags.VisitAll(func(f *pflag.Flag) {
		if f.Hidden {
			return
		}
		name, what := pflag.UnquoteUsage(f)
		option := "--" + f.Name
		if f.Shorthand != "" {
			option = "-" + f.Shorthand + ", " + option
		}
		if name != "" {
			option += " " + name
		}
		if f.DefValue != "" && f.DefValue != "false" && f.DefValue != "[]" {
			what += " (" + f.DefValue + " where it is not given)"
		}
		p.macro("TP")
		p.macro("B", option)
		p.text(what)
	})
}

// related names the commands above and below.
func (p *roff) related(c *cobra.Command) {
	var names []string
	if c.HasParent() {
		names = append(names, pageName(c.Parent())+"(1)")
	}
	for _, below := range c.Commands() {
		if below.IsAvailableCommand() {
			names = append(names, pageName(below)+"(1)")
		}
	}
	if len(names) > 0 {
		p.macro("SH", "SEE ALSO")
		p.text(strings.Join(names, ", "))
	}
}
