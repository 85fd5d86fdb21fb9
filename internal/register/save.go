package register

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// suffix ends the names of registers in YAML.
const suffix = ".gear.yaml"

// Save writes files into a folder as STEM.gear.yaml or, if there are several,
// STEM-1.gear.yaml and so on, and gives their paths. Files of that name that
// are there already are left alone and reported, unless replace says otherwise.
// Each appears complete or not at all; if one can't be written, those that came
// before it and replaced nothing are taken away again.
func Save(folder, stem string, files [][]byte, replace bool) ([]string, error) {
	names := fileNames(stem, len(files))
	if err := room(folder, stem, names, replace); err != nil {
		return nil, err
	}
	var temps []string
	defer func() {
		for _, t := range temps {
			_ = os.Remove(t) // gone already where all went well
		}
	}()
	for _, text := range files {
		temp, err := writeTemp(folder, text)
		if err != nil {
			return nil, err
		}
		temps = append(temps, temp)
	}
	var paths []string
	for i, name := range names {
		path := filepath.Join(folder, name)
		if err := appear(temps[i], path, replace); err != nil {
			if !replace {
				for _, p := range paths {
					_ = os.Remove(p)
				}
			}
			return nil, err
		}
		paths = append(paths, path)
	}
	return paths, syncFolder(folder)
}

// ErrExists says that files would be overwritten.
var ErrExists = errors.New("files are there already")

// room sees that nothing is overwritten unasked, and that no file of an earlier
// import stays beside those to be written: its items would be read with them.
func room(folder, stem string, names []string, replace bool) error {
	found, err := earlier(folder, stem)
	if err != nil {
		return err
	}
	if replace {
		found = slices.DeleteFunc(found, func(n string) bool { return slices.Contains(names, n) })
		if len(found) > 0 {
			return fmt.Errorf("%w: %s would stay beside the new ones with gear of an earlier import; remove it first", ErrExists, strings.Join(found, ", "))
		}
		return nil
	}
	if len(found) > 0 {
		return fmt.Errorf("%w: %s in %s; add --replace to write them anew", ErrExists, strings.Join(found, ", "), folder)
	}
	return nil
}

func fileNames(stem string, n int) []string {
	if n == 1 {
		return []string{stem + suffix}
	}
	var names []string
	for i := range n {
		names = append(names, stem+"-"+strconv.Itoa(i+1)+suffix)
	}
	return names
}

// earlier lists the files in a folder that an import of this stem writes.
func earlier(folder, stem string) ([]string, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, err
	}
	own := regexp.MustCompile(`^` + regexp.QuoteMeta(stem) + `(-[1-9][0-9]*)?` + regexp.QuoteMeta(suffix) + `$`)
	var names []string
	for _, e := range entries {
		if own.MatchString(e.Name()) {
			names = append(names, e.Name())
		}
	}
	return names, nil
}

// writeTemp writes a file under a name that nobody reads, down to the disk.
func writeTemp(folder string, text []byte) (path string, err error) {
	f, err := os.CreateTemp(folder, ".gear-*.tmp")
	if err != nil {
		return "", err
	}
	_, err = f.Write(text)
	err = errors.Join(err, f.Chmod(0o644), f.Sync(), f.Close())
	if err != nil {
		_ = os.Remove(f.Name())
		return "", err
	}
	return f.Name(), nil
}

// appear gives a file its name. Unless it may replace another, it is linked,
// which fails where one has come in the meantime.
func appear(temp, path string, replace bool) error {
	if replace {
		return os.Rename(temp, path)
	}
	err := os.Link(temp, path)
	if err == nil || errors.Is(err, fs.ErrExist) {
		return err
	}
	if _, found := os.Lstat(path); found == nil { // no links on this disk
		return fmt.Errorf("%s: %w", path, fs.ErrExist)
	}
	return os.Rename(temp, path)
}

func syncFolder(folder string) error {
	d, err := os.Open(folder)
	if err != nil {
		return err
	}
	defer d.Close()
	if err := d.Sync(); err != nil && !errors.Is(err, errors.ErrUnsupported) && !errors.Is(err, fs.ErrInvalid) {
		return err
	}
	return nil
}
