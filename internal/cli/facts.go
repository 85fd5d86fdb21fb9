package cli

import (
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"liftlint/internal/facts"
	"liftlint/internal/lint"
)

type factsCommand struct {
	env       Environment
	judging   judging
	format    *choice
	stdinName string
}

func newFacts(e Environment) *cobra.Command {
	k := &factsCommand{env: e, format: oneOf("table", "json")}
	c := &cobra.Command{
		Use:   "facts PLAN",
		Short: "Show the figures computed from a plan, which rules judge",
		Example: `  liftlint facts examples/pump-skid.lift.yaml
  liftlint facts --format json examples/pump-skid.lift.yaml`,
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error { return k.run(args[0]) },
	}
	k.judging.flags(c)
	c.Flags().Var(k.format, "format", "table or json")
	c.Flags().StringVar(&k.stdinName, "stdin-filename", "stdin", "what to call standard input in the report")
	return c
}

func (k *factsCommand) run(path string) error {
	read, name := readPlan, path
	if path == "-" {
		name = k.stdinName
		read = func(string) ([]byte, error) { return readBounded(k.env.Stdin) }
	}
	linter, err := k.judging.linter(filepath.Dir(name), false)
	if err != nil {
		return err
	}
	content, err := read(path)
	if err != nil {
		return exit{Unchecked, err}
	}
	result, err := linter.Compute(name, content)
	if err != nil {
		return exit{Unchecked, err}
	}
	return k.write(result)
}

// write shows the facts, and after them what kept any from being computed. A
// plan that is not valid has none: its findings are shown instead.
func (k *factsCommand) write(r *lint.Result) error {
	if r.Facts != nil {
		if err := k.show(r); err != nil {
			return exit{Unchecked, err}
		}
	}
	if len(r.Findings) == 0 {
		return nil
	}
	for _, f := range r.Findings {
		at := f.Place.Range.From
		fmt.Fprintf(k.env.Stderr, "%s:%d:%d: %s: %s (%s)\n", visible(r.File), at.Line, at.Column, f.Severity, visible(f.Message), f.Rule)
	}
	return exit{code: Findings}
}

func (k *factsCommand) show(r *lint.Result) error {
	if k.format.value == "json" {
		return writeJSON(k.env.Stdout, &r.Facts.Document)
	}
	return writeTables(k.env.Stdout, r, facts.Collections())
}
