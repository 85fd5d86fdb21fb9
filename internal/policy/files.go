package policy

import (
	"crypto/sha256"
	"encoding/hex"
	"io/fs"
	"path"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// Source is a folder of rules: TOPIC/RULE/rule.rego, with rule_test.rego
// beside it. Root is what problems put before a file's name.
type Source struct {
	Root  string
	Files fs.FS
}

// HasRule reports whether the folder holds the rule with that id, whatever way its
// root is written.
func (s Source) HasRule(id string) bool {
	_, err := fs.Stat(s.Files, id+"/"+ruleFile)
	return err == nil
}

const (
	ruleFile    = "rule.rego"
	testFile    = "rule_test.rego"
	maxRuleSize = 64 << 10 // bytes of one Rego file
)

// regoFile is one Rego file of a source.
type regoFile struct {
	name string // for people
	id   string // of its rule: topic/name
	test bool
	text string
}

// sum tells texts apart.
func (f regoFile) sum() string {
	sum := sha256.Sum256([]byte(f.text))
	return hex.EncodeToString(sum[:])
}

// regoFiles reads every Rego file of the sources. One that stands where no
// rule is looked for is a problem: it would be passed over in silence.
func regoFiles(sources []Source) ([]regoFile, Problems) {
	var out []regoFile
	var ps Problems
	for _, s := range sources {
		err := fs.WalkDir(s.Files, ".", func(p string, d fs.DirEntry, err error) error {
			if err != nil {
				return err
			}
			if d.IsDir() || path.Ext(p) != ".rego" {
				return nil
			}
			f, why := readRego(s, p)
			if why != "" {
				ps.Add(Problem{File: path.Join(s.Root, p), Message: why})
				return nil
			}
			out = append(out, f)
			return nil
		})
		if err != nil {
			ps.Add(Problem{File: s.Root, Message: err.Error()})
		}
	}
	return out, ps
}

func readRego(s Source, p string) (regoFile, string) {
	f := regoFile{name: path.Join(s.Root, p), id: path.Dir(p), test: path.Base(p) == testFile}
	if strings.Count(p, "/") != 2 || path.Base(p) != ruleFile && !f.test {
		return f, "a rule stands in TOPIC/RULE/" + ruleFile + " and its tests in " + testFile + " beside it; this file is neither"
	}
	text, err := fs.ReadFile(s.Files, p)
	if err != nil {
		return f, err.Error()
	}
	if len(text) > maxRuleSize {
		return f, "the file is larger than a rule may be"
	}
	f.text = string(text)
	return f, ""
}

// parse reads a file's module; nil with problems where it is none, or where
// its package does not say what its folder says.
func (f regoFile) parse(caps *ast.Capabilities) (m *ast.Module, ps Problems) {
	defer func() {
		if r := recover(); r != nil {
			m, ps = nil, Problems{{File: f.name, Message: "this file cannot be parsed"}}
		}
	}()
	if strings.TrimSpace(f.text) == "" {
		return nil, Problems{{File: f.name, Line: 1, Column: 1, Message: "the file is empty"}}
	}
	m, err := ast.ParseModuleWithOpts(f.name, f.text, ast.ParserOptions{
		RegoVersion:  ast.RegoV1,
		Capabilities: caps,
	})
	if err != nil {
		noteRego(&ps, f.name, err)
		return nil, ps
	}
	if m == nil || m.Package == nil {
		return nil, Problems{{File: f.name, Message: "the file is empty"}}
	}
	want := "data.liftlint.rules." + strings.ReplaceAll(f.id, "/", ".")
	if f.test {
		want += "_test"
	}
	if got := m.Package.Path.String(); got != want {
		noteAt(&ps, m.Package.Location, "the package is %s, and its folder says %s", strings.TrimPrefix(got, "data."), strings.TrimPrefix(want, "data."))
		return nil, ps
	}
	return m, ps
}
