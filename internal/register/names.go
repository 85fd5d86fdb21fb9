package register

import "strings"

// IsRegister reports whether a file holds a register in YAML, by its name.
func IsRegister(path string) bool { return endsIn(path, ".gear.yaml", ".gear.yml") }

// IsColumns reports whether a file says what the columns of a table are.
func IsColumns(path string) bool { return endsIn(path, ".columns.yaml", ".columns.yml") }

// isTable reports whether a file can be the table of one that says what its
// columns are.
func isTable(path string) bool { return endsIn(path, ".csv") }

// IsPart reports whether gear is read from a file: a register, a table, or what
// says what the columns of one are.
func IsPart(path string) bool { return IsRegister(path) || IsColumns(path) || isTable(path) }

func endsIn(path string, any ...string) bool {
	path = strings.ToLower(path)
	for _, s := range any {
		if strings.HasSuffix(path, s) {
			return true
		}
	}
	return false
}
