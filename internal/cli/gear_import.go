package cli

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/register"
)

type gearImport struct {
	env     Environment
	columns string
	folder  string
	replace bool
}

func newGearImport(e Environment) *cobra.Command {
	k := &gearImport{env: e}
	c := &cobra.Command{
		Use:   "import FILE.csv",
		Short: "Write a table of gear as a register in YAML",
		Long: `Import reads a table in CSV and writes what it holds as *.gear.yaml. Nothing is
lost: columns that have no field are kept with each item under ` + "`kept`" + `, and told
of. With any fault in the table nothing is written. A table too large for one
file becomes several.

A file says what the columns are:

  liftlint: 1
  decimal: comma
  dates: day_first
  columns:
    - {head: "No.", field: number}
    - {head: Type, field: kind, words: [{says: Shackle, means: shackle}]}
    - {head: "Rated load (t)", field: rated_load, unit: t}
    - {head: Inspected, field: inspections.date}
    - {head: Color, keep: true}
  fixed:
    - {field: inspections.kind, value: periodic}

Where titles stand above the heads, as spreadsheets export them, it says in which row
the heads are, such as ` + "`heads_in_row: 3`" + `; what stands above becomes a comment.
Without such a file, the heads of the table have to be names of fields.`,
		Example: "  liftlint gear import yard.csv --columns yard.columns.yaml -o register",
		Args:    cobra.ExactArgs(1),
		RunE:    func(_ *cobra.Command, args []string) error { return k.run(args[0]) },
	}
	f := c.Flags()
	f.StringVar(&k.columns, "columns", "", "the file that says what the columns are")
	f.StringVarP(&k.folder, "output", "o", "", "the folder to write to; left out, that of the table")
	f.BoolVar(&k.replace, "replace", false, "write over the files of an earlier import")
	return c
}

func (k *gearImport) run(path string) error {
	table, err := k.table(path)
	if err != nil {
		return err
	}
	files, err := table.YAML()
	if err != nil {
		return exit{Unchecked, err}
	}
	folder := k.folder
	if folder == "" {
		folder = filepath.Dir(path)
	} else if err := os.MkdirAll(folder, 0o755); err != nil {
		return exit{Unchecked, err}
	}
	written, err := register.Save(folder, stem(path), files, k.replace)
	if errors.Is(err, register.ErrExists) {
		return wrongUsage(err)
	}
	if err != nil {
		return exit{Unchecked, err}
	}
	return k.report(path, table, written)
}

// stem is the name of a table without .csv.
func stem(path string) string {
	base := filepath.Base(path)
	if ext := filepath.Ext(base); strings.EqualFold(ext, ".csv") {
		return strings.TrimSuffix(base, ext)
	}
	return base
}

// table reads the table by the columns, where there are any.
func (k *gearImport) table(path string) (*register.Table, error) {
	rd, err := register.NewReader()
	if err != nil {
		return nil, exit{Unchecked, err}
	}
	var columns *register.Columns
	if k.columns != "" {
		if columns, err = rd.ColumnsFile(k.columns); err != nil {
			return nil, registerFailed(k.env, err)
		}
		if columns.File != "" && filepath.Base(columns.File) != filepath.Base(path) {
			return nil, wrongUsage(fmt.Errorf("%s is about %s, and not about %s", k.columns, columns.File, path))
		}
	}
	table, err := rd.TableFile(path, columns)
	if err == nil {
		err = table.Join()
	}
	if err != nil {
		return nil, registerFailed(k.env, err)
	}
	return table, nil
}

func (k *gearImport) report(path string, table *register.Table, written []string) error {
	w := k.env.Stdout
	if _, err := fmt.Fprintf(w, "read     %s: %d items, in %s\n", visible(path), len(table.Register.Items), strings.ReplaceAll(table.Encoding, "_", "-")); err != nil {
		return exit{Unchecked, err}
	}
	for _, f := range written {
		fmt.Fprintf(w, "written  %s\n", visible(f))
	}
	for _, n := range table.Notes {
		fmt.Fprintf(w, "note     %s\n", visible(n.String()))
	}
	return nil
}
