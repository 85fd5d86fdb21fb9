package cli

import (
	"fmt"
	"maps"
	"path/filepath"
	"slices"
	"strings"

	"liftlint/internal/lint"
	"liftlint/internal/register"
)

// tellPassedBy names what lies in the folders of registers and was not read.
func (e Environment) tellPassedBy(p register.PassedBy) {
	for _, link := range p.Links {
		fmt.Fprintf(e.Stderr, "liftlint: not searched: %s is a link to a folder; name it to have it searched\n", visible(filepath.ToSlash(link)))
	}
	if len(p.Tables) > 0 {
		fmt.Fprintf(e.Stderr, "liftlint: not read, since no *.columns.yaml says what their columns are: %s\n", visible(someOf(p.Tables)))
	}
}

// someOf names files, as many as people read.
func someOf(files []string) string {
	const most = 5
	more := ""
	if n := len(files) - most; n > 0 {
		files, more = files[:most], fmt.Sprintf(" and %d more", n)
	}
	return filepath.ToSlash(strings.Join(files, ", ")) + more
}

// tellNotRead names the tables that have cells which no field takes, for commands that do
// not report on registers.
func (e Environment) tellNotRead(files []string) {
	for _, f := range files {
		fmt.Fprintf(e.Stderr, "liftlint: %s has cells that no field takes, and what they say was not read: liftlint gear check names them\n", visible(f))
	}
}

// filesOf are those that notes speak of.
func filesOf(notes []register.Note) []string {
	var files []string
	for _, n := range notes {
		if n.OfCells() && !slices.Contains(files, n.Place.File) {
			files = append(files, n.Place.File)
		}
	}
	return files
}

// tellUnread tells of all registers that were read what was not read of them, each once.
func (ls *linters) tellUnread(e Environment) {
	told := map[string]bool{}
	untold := func(files []string) []string {
		return slices.DeleteFunc(slices.Clone(files), func(f string) bool {
			before := told[f]
			told[f] = true
			return before
		})
	}
	for _, key := range slices.Sorted(maps.Keys(ls.registers)) {
		r := ls.registers[key]
		p := r.PassedBy()
		e.tellPassedBy(register.PassedBy{Links: untold(p.Links), Tables: untold(p.Tables)})
		e.tellNotRead(untold(filesOf(r.Notes())))
	}
}

// read is a register with what was passed by in its folders told of.
func (e Environment) read(registers *lint.Registers) (*register.Register, error) {
	r, err := registers.Register()
	e.tellPassedBy(registers.PassedBy())
	return r, err
}
