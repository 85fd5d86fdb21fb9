package cli

import (
	"context"
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/schema"
)

//go:embed starter
var starter embed.FS

type initCommand struct {
	env     Environment
	profile *choice
	hook    bool
}

func newInit(e Environment) *cobra.Command {
	k := &initCommand{env: e, profile: oneOf("us", "eu")}
	c := &cobra.Command{
		Use:   "init [DIR]",
		Short: "Begin a folder of lift plans",
		Long: `Init writes a first plan to go on from, a configuration, and settings by which an
editor knows the keys of both. It makes the folder if need be, and overwrites nothing:
a file that is there already stays as it is.`,
		Example: "  liftlint init\n  liftlint init --profile eu plans\n  liftlint init --hook",
		Args:    cobra.MaximumNArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			return k.run(c.Context(), append(args, ".")[0])
		},
	}
	c.Flags().Var(k.profile, "profile", "whose practice the configuration names: us or eu")
	c.Flags().BoolVar(&k.hook, "hook", false, "also install the git hook, in the repository of the folder; it checks at the stage draft")
	return c
}

// starterFile is a file that init writes.
type starterFile struct {
	name string // from the folder on
	text []byte
}

func (k *initCommand) files() ([]starterFile, error) {
	var list []starterFile
	var err error
	add := func(name string, from fs.FS, file string) {
		text, failed := fs.ReadFile(from, file)
		list, err = append(list, starterFile{name, text}), errors.Join(err, failed)
	}
	add("first.lift.yaml", starter, "starter/first.lift.yaml")
	add("liftlint.yaml", starter, "starter/liftlint.yaml")
	list[1].text = []byte(strings.Replace(string(list[1].text), "profile: us # or eu", "profile: "+k.profile.value+" # us or eu", 1))
	add(".vscode/settings.json", starter, "starter/settings.json")
	add(".vscode/lift-plan.schema.json", schema.Files, published()["plan"])
	add(".vscode/gear-register.schema.json", schema.Files, published()["register"])
	add(".vscode/gear-columns.schema.json", schema.Files, published()["columns"])
	add(".vscode/liftlint.schema.json", schema.Files, published()["config"])
	return list, err
}

func (k *initCommand) run(ctx context.Context, dir string) error {
	files, err := k.files()
	if err != nil {
		return exit{Unchecked, err}
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return exit{Unchecked, err}
	}
	for _, f := range files {
		said := "wrote"
		switch err := f.write(dir); {
		case errors.Is(err, fs.ErrExist):
			said = "is there, left as it is"
		case err != nil:
			return exit{Unchecked, err}
		}
		fmt.Fprintf(k.env.Stdout, "%s: %s\n", said, visible(filepath.ToSlash(filepath.Join(dir, f.name))))
	}
	if k.hook {
		h := hookOptions(k.env)
		h.stage.value = "draft"
		if err := h.installIn(ctx, dir); err != nil {
			return err
		}
	}
	_, err = fmt.Fprintf(k.env.Stdout, "next: liftlint check --stage draft %s\n", visible(filepath.ToSlash(dir)))
	return err
}

// write writes a file that is not there yet.
func (f starterFile) write(dir string) error {
	path := filepath.Join(dir, filepath.FromSlash(f.name))
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	out, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o644)
	if err != nil {
		return err
	}
	_, err = out.Write(f.text)
	return errors.Join(err, out.Close())
}
