package register

import (
	"encoding/csv"
	"strings"
	"testing"

	"liftlint/internal/yamldoc"
)

// cellsUsed are the columns of a row whose cells ended up in its item.
func cellsUsed(n *yamldoc.Node, into map[int]bool) {
	for _, e := range n.Entries {
		cellsUsed(e.Value, into)
	}
	for _, i := range n.Items {
		cellsUsed(i, into)
	}
	if len(n.Entries)+len(n.Items) == 0 {
		into[n.Place.Value.From.Column] = true
	}
}

// lostCells lists cells that say something and are in no item, by rows as
// another reader has them.
func lostCells(table *Table, rows [][]string) (lost []string) {
	rr := newRowReader(table.reader.validator, table.binding)
	for i, row := range rows[1:] {
		used := map[int]bool{}
		if n := table.node(rr, i); n != nil {
			cellsUsed(n, used)
		}
		for j, cell := range row {
			if !rr.rawBlank(cell) && !(rr.blank(cell) && len(table.binding.targets[j].steps) > 0) && !used[j+1] {
				lost = append(lost, cell)
			}
		}
	}
	return lost
}

// TestNoCellIsLost: encoding/csv cuts the tables, and each of its cells is in an
// item.
func TestNoCellIsLost(t *testing.T) {
	src, columns := fittings(t)
	for name, c := range map[string]struct {
		text    string
		columns *Columns
	}{
		"fittings": {decodeText(src, windows1252Name), columns},
		"large":    {large(700), mustColumns(t, largeColumns)},
	} {
		table := mustTable(t, c.text, c.columns)
		r := csv.NewReader(strings.NewReader(c.text))
		r.Comma = ';'
		rows, err := r.ReadAll()
		if err != nil || len(rows) != len(table.Register.Items)+1 {
			t.Fatal(name, len(rows), err)
		}
		if lost := lostCells(table, rows); len(lost) > 0 {
			t.Errorf("%s: %q", name, lost)
		}
		rows[2] = append(rows[2], "beyond")
		table.binding.targets = append(table.binding.targets, target{column: 1})
		if lost := lostCells(table, rows); len(lost) != 1 || lost[0] != "beyond" {
			t.Errorf("%s: a cell that is in no item is not missed: %q", name, lost)
		}
	}
}
