package cli

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"liftlint/internal/register"
)

type gearShow struct {
	env    Environment
	format *choice
}

func newGearShow(e Environment) *cobra.Command {
	k := &gearShow{env: e, format: oneOf("text", "json")}
	c := &cobra.Command{
		Use:   "show NUMBER [REGISTER...]",
		Short: "Show one item with its history",
		Long: `Show prints what registers say of the item with a number: every value as it is
written, and its inspections, the newest first. Registers are *.gear.yaml files,
*.columns.yaml files that name their table, and folders with such files in them;
left out, this folder.`,
		Example: `  liftlint gear show WR-0231 register
  liftlint gear show SH-14 yard.columns.yaml --format json`,
		Args: cobra.MinimumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error { return k.run(args[0], args[1:]) },
	}
	c.Flags().Var(k.format, "format", "text or json")
	return c
}

// gearPage is one item with its history.
type gearPage struct {
	Number      string           `json:"number" doc:"The number it goes by."`
	Kind        string           `json:"kind" doc:"Kind of gear."`
	At          string           `json:"at" doc:"Where it stands: file and JSON pointer, or file and row."`
	Values      []gearValue      `json:"values" doc:"What is said of it besides inspections, in the order of the file."`
	Inspections []gearInspection `json:"inspections" doc:"Its inspections, the newest first."`
	Kept        []gearKept       `json:"kept" doc:"Columns of a table that have no field."`
}

// gearValue is one value.
type gearValue struct {
	Field string `json:"field" doc:"Name of the field, with dots; entries of lists are counted from one."`
	Value string `json:"value" doc:"As it is written."`
	At    string `json:"at" doc:"Where it stands."`
}

// gearInspection is one inspection on record.
type gearInspection struct {
	Date   string      `json:"date" doc:"Day of the inspection."`
	Kind   string      `json:"kind" doc:"Kind of inspection."`
	Newest bool        `json:"newest" doc:"Whether it is the newest of its kind."`
	At     string      `json:"at" doc:"Where it stands."`
	Values []gearValue `json:"values" doc:"What else its record says."`
}

// gearKept is a column that has no field.
type gearKept struct {
	Head  string `json:"head" doc:"Head of the column."`
	Value string `json:"value" doc:"What the cell held."`
}

func (k *gearShow) run(number string, paths []string) error {
	if len(paths) == 0 {
		paths = []string{"."}
	}
	rd, err := register.NewReader()
	if err != nil {
		return exit{Unchecked, err}
	}
	loaded, err := rd.Keeping(number).Load(paths...)
	if err != nil {
		return registerFailed(k.env, err)
	}
	k.env.tellPassedBy(loaded.PassedBy)
	item, ok := loaded.Register.Find(number)
	if !ok {
		hint := ""
		if near, ok := loaded.Register.Near(number); ok {
			hint = ": did you mean " + near + "?"
		}
		return wrongUsage(fmt.Errorf("%s is not on file in %s%s", number, strings.Join(paths, ", "), hint))
	}
	page := pageOf(item)
	if k.format.value == "json" {
		return writeJSON(k.env.Stdout, page)
	}
	return k.text(page)
}

func pageOf(item *register.Item) gearPage {
	p := gearPage{
		Number: item.Number, Kind: string(item.Gear.Base().Kind), At: item.Place("").String(),
		Values: []gearValue{}, Inspections: []gearInspection{}, Kept: []gearKept{},
	}
	for _, v := range item.Values("") {
		switch first, _, _ := strings.Cut(v.Field, "."); first {
		case "number", "kind", "inspections", "kept":
		default:
			p.Values = append(p.Values, gearValue{v.Field, v.Text, v.Place.String()})
		}
	}
	for i := range item.Inspections {
		p.Inspections = append(p.Inspections, inspectionOf(item, i))
	}
	slices.Reverse(p.Inspections) // of several on one day the last comes first
	slices.SortStableFunc(p.Inspections, func(a, b gearInspection) int { return strings.Compare(b.Date, a.Date) })
	for _, k := range item.Kept {
		p.Kept = append(p.Kept, gearKept{k.Head, k.Value})
	}
	return p
}

func inspectionOf(item *register.Item, i int) gearInspection {
	r := &item.Inspections[i]
	pointer := "/inspections/" + strconv.Itoa(i)
	newest, _ := item.Newest(r.Kind)
	g := gearInspection{Date: r.Date.Format("2006-01-02"), Kind: string(r.Kind), Newest: newest == r, At: item.Place(pointer).String(), Values: []gearValue{}}
	for _, v := range item.Values(pointer) {
		if v.Field != "date" && v.Field != "kind" {
			g.Values = append(g.Values, gearValue{v.Field, v.Text, v.Place.String()})
		}
	}
	return g
}

func (k *gearShow) text(p gearPage) error {
	rows := [][]string{{visible(p.Number), strings.ReplaceAll(p.Kind, "_", " "), visible(p.At)}}
	if err := writeAligned(k.env.Stdout, rows, ""); err != nil {
		return exit{Unchecked, err}
	}
	if err := writeAligned(k.env.Stdout, valueRows(p.Values), "  "); err != nil {
		return exit{Unchecked, err}
	}
	if len(p.Inspections) == 0 {
		fmt.Fprintln(k.env.Stdout, "\nno inspection on record")
	}
	for _, i := range p.Inspections {
		newest := ""
		if i.Newest {
			newest = ", newest of its kind"
		}
		fmt.Fprintf(k.env.Stdout, "\n%s  %s%s\n", i.Date, strings.ReplaceAll(i.Kind, "_", " "), newest)
		if err := writeAligned(k.env.Stdout, valueRows(i.Values), "  "); err != nil {
			return exit{Unchecked, err}
		}
	}
	return k.kept(p.Kept)
}

func (k *gearShow) kept(kept []gearKept) error {
	if len(kept) == 0 {
		return nil
	}
	fmt.Fprintln(k.env.Stdout, "\nkept as it stands in the table")
	var rows [][]string
	for _, c := range kept {
		rows = append(rows, []string{visible(c.Head), visible(c.Value)})
	}
	return writeAligned(k.env.Stdout, rows, "  ")
}

func valueRows(values []gearValue) [][]string {
	var rows [][]string
	for _, v := range values {
		rows = append(rows, []string{v.Field, visible(v.Value)})
	}
	return rows
}
