package validate

import (
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"liftlint/internal/yamldoc"
)

// suffix ends the name of every schema file.
const suffix = ".schema.json"

// dispatch says which objects are held against the schemas of a folder. In its
// path, `*` stands for every item of a list.
type dispatch struct {
	folder string
	path   []string
}

var dispatches = [...]dispatch{
	{"gear", []string{"gear", "*"}},
	{"attachment", []string{"load", "attachments", "*"}},
	{"body", []string{"load", "bodies", "*"}},
	{"end", []string{"rigging", "*", "legs", "*", "end"}},
}

// find returns the objects in the order of the file.
func (d dispatch) find(root *yamldoc.Node) []*yamldoc.Node {
	found := []*yamldoc.Node{root}
	for _, step := range d.path {
		var next []*yamldoc.Node
		for _, n := range found {
			if step == "*" {
				next = append(next, n.Items...)
			} else if child := n.Get(step); child != nil {
				next = append(next, child)
			}
		}
		found = next
	}
	return found
}

// known reports whether a node names a kind that has a schema in the folder.
// Only such a name ever becomes part of a path.
func (v *Validator) known(folder string, kind *yamldoc.Node) bool {
	return kind != nil && kind.Kind == yamldoc.String && slices.Contains(v.kinds[folder], kind.Text)
}

func kindPath(folder, kind string) string { return "plan/" + folder + "/" + kind + suffix }

// kindsIn lists the kinds of a folder by the names of its files, sorted.
func kindsIn(files fs.FS, folder string) ([]string, error) {
	entries, err := fs.ReadDir(files, "plan/"+folder)
	if err != nil {
		return nil, fmt.Errorf("validate: schemas of the kinds: %w", err)
	}
	var names []string
	for _, e := range entries {
		if name, ok := strings.CutSuffix(e.Name(), suffix); ok {
			names = append(names, name)
		}
	}
	return names, nil
}
