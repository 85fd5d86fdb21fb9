package lint

import (
	"errors"
	"io/fs"
	"slices"

	"liftlint/policies"
)

// Examples holds the examples of all rules and the plans that they change:
// those of company rules first, then what comes with liftlint.
func (l *Linter) Examples() fs.FS {
	var all layeredFiles
	for _, s := range slices.Concat(l.options.Config.Rules, l.options.Rules) {
		all = append(all, s.Files)
	}
	return append(all, policies.Examples())
}

// layeredFiles opens a file in the first file system that has it.
type layeredFiles []fs.FS

func (l layeredFiles) Open(name string) (fs.File, error) {
	for _, files := range l {
		f, err := files.Open(name)
		if err == nil || !errors.Is(err, fs.ErrNotExist) {
			return f, err
		}
	}
	return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
}
