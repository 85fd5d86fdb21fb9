package cli

import (
	"cmp"
	"io/fs"
	"maps"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"liftlint/internal/config"
	"liftlint/internal/gitrepo"
)

// difference is between a revision and what is to be checked: the working tree or
// the index. It errs to one side only: what can't be told apart counts as changed.
type difference struct {
	before  gitrepo.Tree
	top     string                                        // the folder of what is checked
	place   func(file string) (string, bool)              // where a file stands in the repository
	changed func(paths []string) (map[string]bool, error) // those of the paths that differ
}

// concerned are the plans that differ, or of which anything that judges them does:
// a configuration in their folder or above, what that extends, a folder of rules,
// a register, a baseline. What is named and is there on neither side, or is no plan
// by its name, is not told to be unchanged: it is left to the check to say so.
func (d *difference) concerned(all []input, j *judging) ([]input, error) {
	reads := make([]*reading, len(all))
	byFolder := map[string]*reading{}
	ask := map[string]bool{}
	for i, in := range all {
		folder := filepath.Dir(in.path)
		if byFolder[folder] == nil {
			r, err := d.readFor(folder, j)
			if err != nil {
				return nil, err
			}
			byFolder[folder] = r
		}
		reads[i] = byFolder[folder]
		for _, p := range append(reads[i].files, d.name(in.path)) {
			ask[p] = true
		}
	}
	changed, err := d.changed(slices.Sorted(maps.Keys(ask)))
	if err != nil {
		return nil, exit{Unchecked, err}
	}
	var list []input
	for i, in := range all {
		plan := d.name(in.path)
		if !isPlan(in.path) || !exists(in.path) || plan == "" || changed[plan] || reads[i].outside || slices.ContainsFunc(reads[i].files, func(p string) bool { return changed[p] }) {
			list = append(list, in)
		}
	}
	return list, nil
}

// name is where a file stands in the repository; empty where it lies outside.
func (d *difference) name(file string) string {
	p, ok := d.place(file)
	if !ok {
		return ""
	}
	return p
}

// reading is what the plans of one folder are judged by, besides what comes with
// the program.
type reading struct {
	files   []string // in the repository, those that were there before among them
	outside bool     // something lies outside, of which it can't be told whether it changed
}

func (d *difference) readFor(folder string, j *judging) (*reading, error) {
	c, err := j.configFor(folder)
	switch {
	case err != nil && j.config != "":
		return nil, wrongUsage(err)
	case err != nil: // whether what it names has changed can't be told, and the check says what is wrong
		return &reading{outside: true}, nil
	}
	r := &reading{}
	for _, f := range c.Files {
		d.add(r, f)
	}
	folders := slices.Clone(j.rules)
	for _, s := range c.Rules {
		folders = append(folders, s.Root)
	}
	for _, f := range folders {
		if err := d.addFolder(r, f); err != nil {
			return nil, exit{Unchecked, err}
		}
	}
	if path := cmp.Or(j.baseline, c.Baseline); path != "" {
		d.add(r, path)
	}
	at := d.name(folder)
	for p := range d.before { // those that are gone
		if path.Base(p) == config.FileName && holds(path.Dir(p), at) {
			r.files = append(r.files, p)
		}
	}
	return r, d.addRegisters(r, slices.Concat(c.Registers, j.registers))
}

func (d *difference) add(r *reading, file string) {
	p := d.name(file)
	if p == "" {
		r.outside = true
		return
	}
	r.files = append(r.files, p)
}

// addFolder adds all files of a folder of rules, as they are and as they were.
func (d *difference) addFolder(r *reading, folder string) error {
	at := d.name(folder)
	if at == "" {
		r.outside = true
		return nil
	}
	for p := range d.before {
		if holds(at, p) {
			r.files = append(r.files, p)
		}
	}
	return filepath.WalkDir(folder, func(file string, e fs.DirEntry, err error) error {
		if err == nil && !e.IsDir() {
			d.add(r, file)
		}
		return err
	})
}

// holds reports whether a path is a folder itself or lies below it.
func holds(folder, p string) bool {
	return folder == "." || folder == p || strings.HasPrefix(p, folder+"/")
}
