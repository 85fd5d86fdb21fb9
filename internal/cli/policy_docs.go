package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"

	"github.com/spf13/cobra"

	"liftlint/internal/lint"
	"liftlint/internal/policy"
	"liftlint/internal/rulepage"
)

// pageFile is the name of a rule's page, and of the index.
const pageFile = "README.md"

func newPolicyDocs(e Environment) *cobra.Command {
	var j judging
	check := false
	c := &cobra.Command{
		Use:     "docs",
		Short:   "Write a page beside each company rule, and an index",
		Example: "  liftlint policy docs\n  liftlint policy docs --check",
		Long: `Docs writes README.md beside each rule of the folders of rules in force, from its
METADATA and its two examples with what is said of them, and an index in each
folder. With --check nothing is written: the exit code is 1 where a page is stale.`,
		Args: cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error { return writePages(e, &j, check) },
	}
	j.flags(c)
	c.Flags().BoolVar(&check, "check", false, "compare instead of writing")
	return c
}

func writePages(e Environment, j *judging, check bool) error {
	c, err := j.configFor(".")
	if err != nil {
		return wrongUsage(err)
	}
	o, err := j.options()
	if err != nil {
		return err
	}
	linter, err := j.linter(".", false)
	if err != nil {
		return err
	}
	sources := append(c.Rules[:len(c.Rules):len(c.Rules)], o.Rules...)
	if len(sources) == 0 {
		return wrongUsage(errors.New("no folder of company rules is in force: name one under rule_folders in liftlint.yaml, or with --rules"))
	}
	stale := 0
	for _, s := range sources {
		files, err := pagesOf(j, linter, s)
		if err != nil {
			return exit{Unchecked, err}
		}
		n, err := settle(e, files, check)
		if err != nil {
			return exit{Unchecked, err}
		}
		stale += n
	}
	if check && stale > 0 {
		return exit{Findings, fmt.Errorf("%d pages are stale: liftlint policy docs writes them anew", stale)}
	}
	return nil
}

// pageText is a page as it is to stand.
type pageText struct{ path, text string }

// pagesOf makes the pages of the rules of one folder, and their index.
func pagesOf(j *judging, l *lint.Linter, s policy.Source) ([]pageText, error) {
	names, err := profilesOf(j)
	if err != nil {
		return nil, err
	}
	rules, err := rulesOf(l, s)
	if err != nil {
		return nil, err
	}
	var out []pageText
	var pages []rulepage.Page
	for _, r := range rules {
		p, err := rulepage.Build(l, rulepage.Options{Profiles: names, Stage: j.stage}, r.ID)
		if err != nil {
			return nil, err
		}
		pages = append(pages, p)
		out = append(out, pageText{path.Join(path.Dir(r.File), pageFile), p.Markdown()})
	}
	return append(out, pageText{path.Join(s.Root, pageFile), rulepage.Index(pages, "Made from the rules by `liftlint policy docs`.")}), nil
}

// settle writes the pages that are not as they are to be, or counts them.
func settle(e Environment, files []pageText, check bool) (stale int, err error) {
	for _, f := range files {
		was, err := os.ReadFile(f.path)
		if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return stale, err
		}
		if err == nil && bytes.Equal(was, []byte(f.text)) {
			continue
		}
		stale++
		word := "written"
		if check {
			word = "stale  "
		} else if err := os.WriteFile(f.path, []byte(f.text), 0o644); err != nil {
			return stale, err
		}
		fmt.Fprintf(e.Stdout, "%s  %s\n", word, visible(f.path))
	}
	return stale, nil
}
