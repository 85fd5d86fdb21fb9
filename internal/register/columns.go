package register

import (
	"slices"
	"strings"

	"liftlint/internal/datafile"
)

// Columns says what the columns of a table are: a *.columns.yaml file.
type Columns struct {
	Name string `json:"-"`

	File           string       `json:"file"`
	Title          string       `json:"title"`
	Site           string       `json:"site"`
	Encoding       string       `json:"encoding"`
	Separator      string       `json:"separator"`
	HeadsInRow     int          `json:"heads_in_row"`
	Decimal        decimalSign  `json:"decimal"`
	Dates          dayOrder     `json:"dates"`
	DayNumbersFrom int          `json:"day_numbers_from"`
	Nothing        []string     `json:"nothing"`
	Fixed          []FixedValue `json:"fixed"`
	Columns        []Column     `json:"columns"`

	tree *datafile.Tree
}

// FixedValue holds for all rows.
type FixedValue struct {
	Field string `json:"field"`
	Value string `json:"value"`
}

// Column is one column of a table, by its head: a field of the item, or kept
// as it stands.
type Column struct {
	Head    string      `json:"head"`
	Field   string      `json:"field"`
	Keep    bool        `json:"keep"`
	Unit    string      `json:"unit"`
	Dates   dayOrder    `json:"dates"`
	Decimal decimalSign `json:"decimal"`
	Words   []Word      `json:"words"`
}

// Word is what a word of the table means.
type Word struct {
	Says  string `json:"says"`
	Means string `json:"means"`
}

// columnsSchema is the schema of such a file.
const columnsSchema = "register/columns.schema.json"

// ReadColumns reads a *.columns.yaml file. The error holds Problems. Whether
// its fields exist is seen when a table is read by it.
func ReadColumns(name string, src []byte) (*Columns, error) {
	schema, err := datafile.Compile(columnsSchema)
	if err != nil {
		return nil, err
	}
	text := strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.TrimPrefix(string(src), byteOrderMark))
	tree, problems := datafile.Read(datafile.Text{File: name, Text: text, Line: 1})
	if len(problems) == 0 {
		problems = schema.Check(tree)
	}
	if len(problems) > 0 {
		return nil, fromData(problems)
	}
	c := &Columns{}
	if err := datafile.Convert(tree.Root, c); err != nil {
		return nil, err
	}
	c.Name, c.tree = name, tree
	return c, nil
}

// fromData are the problems of a data file.
func fromData(problems datafile.Problems) Problems {
	var ps Problems
	for _, p := range problems {
		ps = append(ps, fromDataProblem(p))
	}
	return sorted(ps, 0)
}

func fromDataProblem(p datafile.Problem) Problem {
	at := Place{File: p.File}
	at.Range.From.Line, at.Range.From.Column = p.Line, p.Column
	at.Range.To = at.Range.From
	return Problem{ID: BadColumns, Message: p.Message, Place: at}
}

// problem is one at a place of the file.
func (c *Columns) problem(pointer, format string, args ...any) Problem {
	return fromDataProblem(c.tree.Problem(pointer, format, args...))
}

// heads are those that the file speaks of.
func (c *Columns) heads() map[string]bool {
	all := map[string]bool{}
	for _, col := range c.Columns {
		all[col.Head] = true
	}
	return all
}

// stepsOf takes a field such as inspections.2.date apart. Entries of lists are
// counted from one there and from zero here; an inspection without a number is
// the first.
func stepsOf(field string) []string {
	steps := strings.Split(field, ".")
	if steps[0] == "inspections" && (len(steps) == 1 || !isNumber(steps[1])) {
		steps = slices.Insert(steps, 1, "1")
	}
	for i, s := range steps {
		if isNumber(s) {
			steps[i] = lessOne(s)
		}
	}
	return steps
}
