package cli

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"liftlint/internal/config"
	"liftlint/internal/rulekit"
)

// usualRules is the folder of company rules where none is set.
const usualRules = "rules"

func newPolicyNew(e Environment) *cobra.Command {
	folder := ""
	c := &cobra.Command{
		Use:   "new TOPIC/NAME",
		Short: "Begin a rule: its text, its tests and its two examples",
		Long: `New writes a rule that can be run at once, with its tests and its two example
plans, to be changed into what is wanted. It goes into the first folder of rules
that the nearest liftlint.yaml names, from this folder upwards; where there is no
liftlint.yaml, that is begun too. Nothing is written into a folder that lies outside
that of the liftlint.yaml, unless --in says so.`,
		Example: "  liftlint policy new angle/steep_legs",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return beginRule(e, folder, args[0]) },
	}
	c.Flags().StringVar(&folder, "in", "", "the folder of rules to write to")
	return c
}

func beginRule(e Environment, folder, id string) error {
	begun := false
	if folder == "" {
		var err error
		if folder, begun, err = ruleFolder(); err != nil {
			return wrongUsage(err)
		}
	}
	files, err := rulekit.New(folder, id)
	if err != nil {
		return wrongUsage(err)
	}
	if begun {
		if err := os.WriteFile(config.FileName, []byte("liftlint: 1\nrule_folders: ["+usualRules+"]\n"), 0o644); err != nil {
			return exit{Unchecked, err}
		}
		files = append(files, config.FileName)
	}
	for _, f := range files {
		fmt.Fprintf(e.Stdout, "written  %s\n", visible(f))
	}
	fmt.Fprintf(e.Stdout, "\nTry it: liftlint policy test %s\n", id)
	return nil
}

// ruleFolder is where a new rule goes: the first folder that the nearest
// configuration names, or the usual one with a configuration to be begun. What
// lies outside that configuration's own folder belongs to somebody else.
func ruleFolder() (folder string, begin bool, err error) {
	file, folders, ok, err := config.Nearest(".")
	switch {
	case err != nil:
		return "", false, err
	case !ok:
		return usualRules, true, nil
	}
	name := fromHere(file)
	if len(folders) == 0 {
		return "", false, fmt.Errorf("%s names no folder of rules of its own: add  rule_folders: [%s]  to it, or say where with --in", name, usualRules)
	}
	inside, err := filepath.Rel(filepath.Dir(file), folders[0])
	if err != nil || !filepath.IsLocal(inside) {
		return "", false, fmt.Errorf("%s, which %s names, lies outside its folder: say with --in that the rule is to go there", fromHere(folders[0]), name)
	}
	return fromHere(folders[0]), false, nil
}

// fromHere is a path as seen from the working folder.
func fromHere(path string) string {
	here, err := os.Getwd()
	if err != nil {
		return path
	}
	if rel, err := filepath.Rel(here, path); err == nil {
		return filepath.ToSlash(rel)
	}
	return path
}
