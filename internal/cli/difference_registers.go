package cli

import (
	"errors"
	"io/fs"
	"path"
	"path/filepath"

	"liftlint/internal/register"
)

// addRegisters adds the registers that plans of a folder take gear from, with the
// tables that belong to them, and those that are gone: a pattern may have named them.
func (d *difference) addRegisters(r *reading, named []string) error {
	if len(named) == 0 {
		return nil
	}
	for _, file := range named {
		d.add(r, file)
		at := d.name(file)
		if !isFolder(file) && !register.IsColumns(file) {
			continue
		}
		if register.IsColumns(file) { // its table lies in its folder or below
			file, at = filepath.Dir(file), path.Dir(at)
		}
		if err := d.addRegistersIn(r, file, at); err != nil {
			return err
		}
	}
	for p := range d.before {
		if register.IsPart(p) && !exists(filepath.Join(d.top, filepath.FromSlash(p))) {
			r.files = append(r.files, p)
		}
	}
	return nil
}

// addRegistersIn adds all that are in a folder, as it is and as it was.
func (d *difference) addRegistersIn(r *reading, folder, at string) error {
	for p := range d.before {
		if register.IsPart(p) && holds(at, p) {
			r.files = append(r.files, p)
		}
	}
	err := filepath.WalkDir(folder, func(file string, e fs.DirEntry, err error) error {
		switch {
		case errors.Is(err, fs.ErrPermission) && e != nil && e.IsDir() && file != folder:
			return fs.SkipDir
		case err != nil:
			return err
		case e.IsDir() && e.Name() == ".git":
			return fs.SkipDir
		case !e.IsDir() && register.IsPart(e.Name()):
			d.add(r, file)
		}
		return nil
	})
	if err != nil {
		return exit{Unchecked, err}
	}
	return nil
}
