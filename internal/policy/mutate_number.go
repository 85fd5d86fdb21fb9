package policy

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"liftlint/internal/datafile"
)

// moveShare is how far numbers are moved, as a share of themselves: near enough
// that a test has to stand at the boundary.
const moveShare = 0.05

// moved gives a number's neighbors.
func moved(x float64, whole bool) []float64 {
	step := math.Abs(x) * moveShare
	if whole {
		step = 1
	}
	if step == 0 {
		return nil
	}
	return []float64{rounded(x + step), rounded(x - step)}
}

// rounded drops what binary fractions add, so that 0.15 becomes 0.1575.
func rounded(x float64) float64 {
	y, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 12, 64), 64)
	return y
}

// numeral is a number as Rego and METADATA write it.
var numeral = regexp.MustCompile(`^-?\s*[0-9]+(\.[0-9]+)?([eE][-+]?[0-9]+)?`)

// number moves a number that an expression holds, and notes a parameter that it
// reads.
func (f *finder) number(t *ast.Term, whole bool) {
	switch v := t.Value.(type) {
	case ast.Number:
		x, ok := v.Float64()
		if !ok || t.Location.Offset > len(f.file.text) {
			return
		}
		text := numeral.FindString(f.file.text[t.Location.Offset:])
		for _, y := range moved(x, whole) {
			f.replace(t.Location, text, figure(y), "%s became %s", figure(x), figure(y))
		}
	case ast.Ref:
		if path, plain := dotted(v[1:]); plain && f.alias != "" && v[0].Value.Compare(f.alias) == 0 {
			before, known := f.numbers[path]
			f.numbers[path] = whole && (before || !known)
		}
	}
}

// whole tells whether an expression compares whole numbers alone: counts, and
// fields that are such.
func (f *finder) whole(terms []*ast.Term) bool {
	found := false
	for _, t := range terms {
		switch v := t.Value.(type) {
		case ast.Var: // a name given to who knows what
			return false
		case ast.Number:
			if x, ok := v.Float64(); !ok || x != math.Trunc(x) {
				return false
			}
		case ast.Ref:
			switch f.sort(v) {
			case "number":
				return false
			case "integer":
				found = true
			}
		}
	}
	return found
}

// sort is what the facts' schema calls what a reference leads to; for a count
// integer, for a parameter number where its default is no whole one.
func (f *finder) sort(ref ast.Ref) string {
	path, _ := dotted(ref[1:])
	switch root := ref[0].Value; {
	case ref.String() == "count":
		return "integer"
	case root.Compare(f.record) == 0:
		return f.shape.jsonType(f.over, path)
	case f.alias != "" && root.Compare(f.alias) == 0:
		if x, ok := f.params[path].Default.(float64); ok && x != math.Trunc(x) {
			return "number"
		}
	}
	return ""
}

// jsonType is what the schema calls a field, empty where there is no such one.
func (s shape) jsonType(over, path string) string {
	steps := []string{"properties", over, "items"}
	for name := range strings.SplitSeq(path, ".") {
		steps = append(steps, "properties", name)
	}
	node := s.root
	for _, step := range steps {
		next, _ := node[step].(map[string]any)
		node = s.deref(next)
	}
	t, _ := node["type"].(string)
	return t
}

// defaults moves the defaults of the parameters that conditions read, as far as
// their bounds allow.
func (f *finder) defaults(tree *datafile.Tree) {
	for _, name := range sortedKeys(f.numbers) {
		entry := f.params[name]
		x, isNumber := entry.Default.(float64)
		if !isNumber || f.layered(name) {
			continue
		}
		at, old := f.defaultAt(tree, name, x)
		if old == "" {
			noteAt(&f.misfits, at, "parameter %s can't be moved: write its default as a plain number right behind its key", name)
			continue
		}
		for _, y := range moved(x, f.numbers[name]) {
			if entry.refuses(y) == "" {
				f.replace(at, old, figure(y), "%s %s became %s", name, figure(x), figure(y))
			}
		}
	}
}

// layered tells whether a layer sets the parameter.
func (f *finder) layered(name string) bool {
	return slices.ContainsFunc(f.options.layers(), func(l Layer) bool {
		_, set := l.Rules[f.file.id].Params[name]
		return set
	})
}

// defaultAt finds where a parameter's default stands in the text, and how it is
// written there: behind the key default, or behind the parameter's own name.
// The text is empty where it is written in another way than a plain number.
func (f *finder) defaultAt(tree *datafile.Tree, name string, x float64) (*ast.Location, string) {
	p := tree.Problem("/custom/params/"+name+"/default", "")
	at := &ast.Location{File: f.file.name, Row: p.Line, Col: p.Column}
	at.Offset = offsetOf(f.file.text, p.Line, p.Column)
	match := keyed.FindStringSubmatch(f.file.text[min(at.Offset, len(f.file.text)):])
	if match == nil || match[2] != name && match[2] != "default" {
		return at, ""
	}
	if y, err := strconv.ParseFloat(match[3], 64); err != nil || y != x {
		return at, ""
	}
	at.Offset += len(match[1])
	return at, match[3]
}

// keyed is a number behind its key, perhaps on the next line of the comment.
var keyed = regexp.MustCompile(`^(["']?([a-z0-9_]+)["']?\s*:[\s#]*)([-+]?[0-9.]+([eE][-+]?[0-9]+)?)`)
