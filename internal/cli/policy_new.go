package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"

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
that liftlint.yaml names; where there is no liftlint.yaml, that is begun too.`,
		Example: "  liftlint policy new angle/steep_legs",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return beginRule(e, folder, args[0]) },
	}
	c.Flags().StringVar(&folder, "in", "", "the folder of rules to write to")
	return c
}

func beginRule(e Environment, folder, id string) error {
	c, err := config.For(".")
	if err != nil {
		return wrongUsage(err)
	}
	begun := false
	if folder == "" {
		if folder, begun, err = ruleFolder(c); err != nil {
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

// ruleFolder is where a new rule goes: the first folder that a configuration
// names, or the usual one with a configuration to be begun.
func ruleFolder(c config.Config) (folder string, begin bool, err error) {
	if len(c.Rules) > 0 {
		return c.Rules[0].Root, false, nil
	}
	if _, err := os.Stat(config.FileName); errors.Is(err, fs.ErrNotExist) {
		return usualRules, true, nil
	}
	return "", false, fmt.Errorf("%s names no folder of rules: add  rule_folders: [%s]  to it, with the folder made, or say where with --in", config.FileName, usualRules)
}
