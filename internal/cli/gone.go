package cli

import (
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"

	"liftlint/internal/config"
)

// isGone reports whether a path that is not there any more was there before.
func (d *difference) isGone(file string) bool {
	if exists(file) {
		return false
	}
	at, ok := d.place(file)
	return ok && d.had(at)
}

// had reports whether there was a file before, or a folder with any.
func (d *difference) had(at string) bool {
	if _, ok := d.before[at]; ok {
		return true
	}
	for p := range d.before {
		if holds(at, p) {
			return true
		}
	}
	return false
}

// exists is true also of what can't be looked at.
func exists(file string) bool {
	_, err := os.Lstat(file)
	return !errors.Is(err, fs.ErrNotExist)
}

// gone are the plans that the arguments would have named before, in order.
func (d *difference) gone(args []string) []string {
	return d.notThere(func(p string) bool {
		return isPlan(p) && slices.ContainsFunc(args, func(a string) bool { at, ok := d.place(a); return ok && holds(at, p) })
	})
}

// goneConfigs are the configurations that held before for anything that the
// arguments name.
func (d *difference) goneConfigs(args []string) []string {
	return d.notThere(func(p string) bool {
		return path.Base(p) == config.FileName && slices.ContainsFunc(args, func(a string) bool {
			at, ok := d.place(a)
			return ok && (holds(at, p) || holds(path.Dir(p), at))
		})
	})
}

// goneFromAll are those that are gone in every difference.
func goneFromAll(ds []*difference, args []string) (plans, configs []string) {
	for i, d := range ds {
		p, c := d.gone(args), d.goneConfigs(args)
		if i > 0 {
			p = slices.DeleteFunc(p, func(file string) bool { return !slices.Contains(plans, file) })
			c = slices.DeleteFunc(c, func(file string) bool { return !slices.Contains(configs, file) })
		}
		plans, configs = p, c
	}
	return plans, configs
}

// notThere lists the files of a kind that are not there any more, as they are called
// from the current folder.
func (d *difference) notThere(is func(p string) bool) []string {
	here, err := os.Getwd()
	if err == nil {
		here, err = filepath.EvalSymlinks(here)
	}
	var list []string
	for p := range d.before {
		file := filepath.Join(d.top, filepath.FromSlash(p))
		if !is(p) || exists(file) {
			continue
		}
		if rel, e := filepath.Rel(here, file); err == nil && e == nil {
			p = filepath.ToSlash(rel)
		}
		list = append(list, p)
	}
	slices.Sort(list)
	return list
}
