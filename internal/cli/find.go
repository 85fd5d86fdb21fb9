package cli

import (
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// isPlan reports whether a file in a folder is a lift plan by its name:
// *.lift.yaml, also with .yml and in any case, so that none is passed over
// for the way its name is spelled.
func isPlan(name string) bool {
	name = strings.ToLower(name)
	return strings.HasSuffix(name, ".lift.yaml") || strings.HasSuffix(name, ".lift.yml")
}

// input is one plan to read.
type input struct {
	path string
	read func() ([]byte, error)
}

// findPlans lists the plans that arguments name: files as they are, folders
// searched in order of names. One that can't be reached stays in the list, so
// that reading it says why. A plan named twice is read once. Folders whose
// name begins with a dot are not searched; links to folders are followed where they
// are named, and else listed as skipped.
func findPlans(args []string) (list []input, skipped []string, err error) {
	seen := map[string]bool{}
	add := func(path string) {
		if clean := filepath.Clean(path); !seen[clean] {
			seen[clean] = true
			list = append(list, input{path, func() ([]byte, error) { return readPlan(path) }})
		}
	}
	for _, arg := range args {
		info, err := os.Stat(arg)
		if arg == "-" || err != nil || !info.IsDir() {
			add(arg)
			continue
		}
		folder := throughLink(arg)
		err = filepath.WalkDir(folder, func(path string, d fs.DirEntry, err error) error {
			switch {
			case err != nil:
				add(path)
			case d.IsDir() && path != folder && strings.HasPrefix(d.Name(), "."):
				return fs.SkipDir
			case d.Type()&fs.ModeSymlink != 0 && isFolder(path):
				skipped = append(skipped, path)
			case !d.IsDir() && isPlan(d.Name()):
				add(path)
			}
			return nil
		})
		if err != nil {
			return nil, nil, exit{Unchecked, err}
		}
	}
	return list, skipped, nil
}

// throughLink has a folder that is named itself searched where it is a link, which a
// walk would stop at.
func throughLink(folder string) string {
	if info, err := os.Lstat(folder); err == nil && info.Mode()&fs.ModeSymlink != 0 {
		return folder + string(filepath.Separator)
	}
	return folder
}

func isFolder(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}

// mostBytes is more than any plan is let through with; reading stops there,
// so that a device or a huge file can't fill memory.
const mostBytes = 2 << 20

func readPlan(path string) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return readBounded(f)
}

// readBounded reads at most a little more than a plan may have; what is longer
// is then refused by its size.
func readBounded(r io.Reader) ([]byte, error) { return io.ReadAll(io.LimitReader(r, mostBytes)) }
