package register

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// PassedBy is what lies in the folders of registers and was not read.
type PassedBy struct {
	Links  []string // links to folders, which were not searched
	Tables []string // tables that none of the columns files read is about
}

// found is what paths lead to.
type found struct {
	files    []string // to be read, each once
	links    []string
	tables   []string
	searched map[string]bool
}

// findFiles lists the files that paths name. Links to folders are followed where they
// are named, and else listed.
func findFiles(paths []string) (found, error) {
	f := found{searched: map[string]bool{}}
	seen := map[string]bool{}
	add := func(list *[]string, path string) {
		if file := sameFile(path); !seen[file] {
			seen[file] = true
			*list = append(*list, path)
		}
	}
	for _, path := range paths {
		info, err := os.Stat(path)
		if err != nil || !info.IsDir() {
			add(&f.files, path) // reading it says what is wrong
			continue
		}
		folder := throughLink(path)
		err = filepath.WalkDir(folder, func(p string, d fs.DirEntry, err error) error {
			switch {
			case err != nil:
				return err
			case d.IsDir() && p != folder && strings.HasPrefix(d.Name(), "."):
				return fs.SkipDir
			case d.Type()&fs.ModeSymlink != 0 && isFolder(p):
				add(&f.links, p)
			case d.IsDir():
				f.searched[sameFile(p)] = true
			case IsRegister(p) || IsColumns(p):
				add(&f.files, p)
			case isTable(p):
				add(&f.tables, p)
			}
			return nil
		})
		if err != nil {
			return f, unreadable(path, err)
		}
	}
	if len(f.files) == 0 {
		return f, Problems{{ID: Unreadable, Place: Place{File: strings.Join(paths, ", ")}, Message: "no *.gear.yaml is here, and no *.columns.yaml that names a table" + f.noneElse()}}
	}
	return f, nil
}

// noneElse says what is there, where nothing is that could be read.
func (f found) noneElse() string {
	switch {
	case len(f.tables) > 0:
		return "; " + filepath.ToSlash(f.tables[0]) + " is a table, and needs one"
	case len(f.links) > 0:
		return "; " + filepath.ToSlash(f.links[0]) + " is a link to a folder: name it to have it searched"
	}
	return ""
}

// passedBy is what was not read, once the files of the register are known. A link to a
// folder that is searched by another path is none of it.
func (f found) passedBy(read []File) PassedBy {
	known := map[string]bool{}
	for _, r := range read {
		known[sameFile(filepath.FromSlash(r.Name))] = true
	}
	var p PassedBy
	for _, link := range f.links {
		if !f.searched[sameFile(link)] {
			p.Links = append(p.Links, link)
		}
	}
	for _, table := range f.tables {
		if !known[sameFile(table)] {
			p.Tables = append(p.Tables, table)
		}
	}
	return p
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

// sameFile is one name for a file, however the paths to it are written.
func sameFile(path string) string {
	if whole, err := filepath.Abs(path); err == nil {
		path = whole
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		return real
	}
	return filepath.Clean(path)
}
