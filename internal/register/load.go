package register

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"
	"sync"

	"liftlint/internal/datafile"
	"liftlint/internal/source"
	"liftlint/internal/yamldoc"
)

var noPlace source.Place

// Loaded is what files hold together.
type Loaded struct {
	Register *Register
	Notes    []Note
	PassedBy PassedBy
}

// Load reads registers from files: *.gear.yaml, or *.columns.yaml that name
// their table, and folders, of which all files of both kinds are read. The error
// holds Problems.
func (rd *Reader) Load(paths ...string) (*Loaded, error) {
	found, err := findFiles(paths)
	if err != nil {
		return nil, err
	}
	files := found.files
	parts := make([]*Table, len(files))
	errs := make([]error, len(files))
	next := make(chan int)
	var wait sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(files)) {
		wait.Go(func() {
			for i := range next {
				parts[i], errs[i] = rd.readFile(files[i])
			}
		})
	}
	for i := range files {
		next <- i
	}
	close(next)
	wait.Wait()
	l, err := join(parts, errs)
	if err != nil {
		return nil, err
	}
	l.PassedBy = found.passedBy(l.Register.Files)
	return l, nil
}

func join(parts []*Table, errs []error) (*Loaded, error) {
	var ps Problems
	for _, err := range errs {
		var found Problems
		if err != nil && !errors.As(err, &found) {
			return nil, err
		}
		ps = append(ps, found...)
	}
	if len(ps) > 0 {
		return nil, ps
	}
	l := &Loaded{}
	var registers []*Register
	for _, p := range parts {
		registers = append(registers, p.Register)
		l.Notes = append(l.Notes, p.Notes...)
	}
	r, err := Join(registers...)
	if err != nil {
		return nil, err
	}
	l.Register = r
	return l, nil
}

func (rd *Reader) readFile(path string) (*Table, error) {
	switch {
	case IsColumns(path):
		columns, err := rd.ColumnsFile(path)
		if err != nil {
			return nil, err
		}
		if columns.File == "" || !filepath.IsLocal(columns.File) {
			return nil, Problems{columns.problem("/file", "`file` names the table, in this folder or below")}
		}
		if !isTable(columns.File) { // by which a change of it is noticed
			return nil, Problems{columns.problem("/file", "the name of the table has to end in .csv")}
		}
		return rd.TableFile(filepath.Join(filepath.Dir(path), columns.File), columns)
	case IsRegister(path):
		src, err := readBounded(path, yamldoc.RegisterLimits().Bytes)
		if err != nil {
			return nil, err
		}
		r, err := rd.readYAML(filepath.ToSlash(path), src)
		return &Table{Register: r}, err
	}
	return nil, Problems{{ID: Unreadable, Place: Place{File: path}, Message: "a register is a *.gear.yaml, or a *.columns.yaml that names its table"}}
}

// ColumnsFile reads a file that says what columns are.
func (rd *Reader) ColumnsFile(path string) (*Columns, error) {
	src, err := readBounded(path, maxColumnsBytes)
	if err != nil {
		return nil, err
	}
	return ReadColumns(filepath.ToSlash(path), src)
}

// TableFile reads a CSV file. Numbers given twice are left to Join.
func (rd *Reader) TableFile(path string, columns *Columns) (*Table, error) {
	src, err := readBounded(path, maxTableBytes)
	if err != nil {
		return nil, err
	}
	return rd.readTable(filepath.ToSlash(path), src, columns)
}

// maxColumnsBytes is more than package datafile reads.
const maxColumnsBytes = 1 << 20

// readBounded reads a file that is not too large, without reading one that is.
func readBounded(path string, most int) ([]byte, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, unreadable(path, err)
	}
	if info.IsDir() {
		return nil, unreadable(path, errors.New("it is a folder"))
	}
	if info.Size() > int64(most) {
		return nil, tooLarge(filepath.ToSlash(path), info.Size(), int64(most))
	}
	src, err := io.ReadAll(io.LimitReader(f, int64(most)+1))
	if err != nil {
		return nil, unreadable(path, err)
	}
	if len(src) > most { // a device, or one that grows
		return nil, tooLarge(filepath.ToSlash(path), int64(len(src)), int64(most))
	}
	return src, nil
}

func unreadable(path string, err error) Problems {
	return Problems{{ID: Unreadable, Place: Place{File: filepath.ToSlash(path)}, Message: fmt.Sprintf("it can't be read: %v", datafile.Cause(err))}}
}
