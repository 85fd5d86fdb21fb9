package validate

import (
	"fmt"
	"io"
	"io/fs"
	"strings"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

// base makes the paths of the embedded files into absolute addresses, without
// which the library would take them for files of the working directory.
const base = "embedded:///"

// schemas compiles schemas when they are first used, each once. It is safe for
// concurrent use: compiling is under the lock, and what is compiled does not
// change any more.
type schemas struct {
	mu       sync.Mutex
	compiler *jsonschema.Compiler
	compiled map[string]*jsonschema.Schema
}

func newSchemas(files fs.FS) *schemas {
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2019
	c.ExtractAnnotations = true // examples are shown in messages
	c.LoadURL = func(url string) (io.ReadCloser, error) { return open(files, url) }
	c.RegisterExtension("quantity", nil, quantityKeyword{})
	c.RegisterExtension("calendar_day", nil, dayKeyword{})
	return &schemas{compiler: c, compiled: map[string]*jsonschema.Schema{}}
}

// open reads an embedded file. Every other address is refused: the library
// would follow file references otherwise.
func open(files fs.FS, url string) (io.ReadCloser, error) {
	path, ok := strings.CutPrefix(url, base)
	if !ok {
		return nil, fmt.Errorf("validate: %s is not an embedded schema", url)
	}
	return files.Open(path)
}

// get returns the compiled schema at a path below the schema folder.
func (s *schemas) get(path string) (*jsonschema.Schema, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if sch := s.compiled[path]; sch != nil {
		return sch, nil
	}
	sch, err := s.compiler.Compile(base + path)
	if err != nil {
		return nil, err
	}
	s.compiled[path] = sch
	return sch, nil
}
