// Package ruleexample reads the two examples that stand beside each rule: a
// plan that breaks it and one that meets it. Each is a base plan with a few
// values set otherwise, so that it shows only what matters.
package ruleexample

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/yamldoc"
)

// File is the name of the examples in a rule's folder.
const File = "examples.yaml"

// basesFolder holds the plans that examples change.
const basesFolder = "bases"

// Pair are the two examples of one rule.
type Pair struct {
	Breaks Example
	Meets  Example
}

// Example is a base plan with changes.
type Example struct {
	What  string   // in words
	Set   []Change // what differs from the base
	Finds []string // JSON pointers of the places where the rule finds something
	Also  []string // other rules that rightly find something in it too
	Text  string   // the whole plan
	// Register is the gear register that the plan takes gear from, as text; empty
	// where the base has none.
	Register string
	Stage    string // at which it is judged; empty for whichever is asked for
}

// InRegister begins what points into the register beside a base, and names the
// register's file.
const InRegister = "register"

// Change sets the value at a JSON pointer of the base, or after InRegister and #
// of its register, to another text, or takes its lines out where To is empty.
type Change struct {
	At string `json:"at"`
	To string `json:"to"`
}

// written is the file as it is written.
type written struct {
	Base   string  `json:"base"`
	Stage  string  `json:"stage"`
	Breaks variant `json:"breaks"`
	Meets  variant `json:"meets"`
}

type variant struct {
	What  string   `json:"what"`
	Set   []Change `json:"set"`
	Finds []string `json:"finds"`
	Also  []string `json:"also"`
}

// ErrNone says that a rule has no examples.
var ErrNone = errors.New("the rule has no examples")

// Load reads the examples of a rule from TOPIC/RULE/examples.yaml and
// bases/NAME.lift.yaml. The error wraps ErrNone where there is no such file,
// and is datafile.Problems where it is wrong.
func Load(files fs.FS, rule string) (Pair, error) {
	name := path.Join(rule, File)
	text, err := fs.ReadFile(files, name)
	if errors.Is(err, fs.ErrNotExist) {
		return Pair{}, fmt.Errorf("%s: %w", rule, ErrNone)
	}
	if err != nil {
		return Pair{}, err
	}
	w, tree, err := read(name, string(text))
	if err != nil {
		return Pair{}, err
	}
	base, err := fs.ReadFile(files, path.Join(basesFolder, w.Base+".lift.yaml"))
	if err != nil {
		return Pair{}, datafile.Problems{tree.Problem("/base", "there is no base %q: two_legs, four_legs and bridle come with liftlint, and others stand in %s/NAME.lift.yaml", w.Base, basesFolder)}
	}
	register, err := fs.ReadFile(files, path.Join(basesFolder, w.Base+".gear.yaml"))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return Pair{}, err
	}
	var p Pair
	var ps datafile.Problems
	p.Breaks = w.Breaks.on(base, register, tree, "/breaks", &ps)
	p.Meets = w.Meets.on(base, register, tree, "/meets", &ps)
	p.Breaks.Stage, p.Meets.Stage = w.Stage, w.Stage
	return p, ps.Sorted()
}

// read takes the file apart and holds it to its schema.
func read(name, text string) (written, *datafile.Tree, error) {
	var w written
	schema, err := datafile.Compile("examples.schema.json")
	if err != nil {
		return w, nil, err
	}
	tree, ps := datafile.Read(datafile.Text{File: name, Text: text, Line: 1})
	if len(ps) == 0 {
		ps = schema.Check(tree)
	}
	if len(ps) > 0 {
		return w, tree, ps.Sorted()
	}
	return w, tree, datafile.Convert(tree.Root, &w)
}

// on applies the changes to the base and its register, one after the other, as
// far as they can be.
func (v variant) on(base, register []byte, tree *datafile.Tree, under string, ps *datafile.Problems) Example {
	plan, register := base, bytes.Clone(register)
	for i, c := range v.Set {
		text, at := &plan, c
		if pointer, ok := strings.CutPrefix(c.At, InRegister+"#"); ok {
			text, at.At = &register, pointer
		}
		next, err := set(*text, at)
		if err != nil {
			ps.Add(tree.Problem(fmt.Sprintf("%s/set/%d/at", under, i), "%v", err))
			break
		}
		*text = next
	}
	return Example{What: v.What, Set: v.Set, Finds: v.Finds, Also: v.Also, Text: string(plan), Register: string(register)}
}

// set replaces the text of one value and touches no other byte.
func set(text []byte, c Change) ([]byte, error) {
	doc, faults := yamldoc.Read("example", text)
	if doc == nil {
		return nil, fmt.Errorf("before %s is set: %s", c.At, faults[0].Message)
	}
	place, ok := doc.Place(c.At)
	if !ok {
		return nil, fmt.Errorf("the base has nothing at %s", c.At)
	}
	if c.To == "" {
		return without(text, place), nil
	}
	from, to := offset(text, place.Value.From), offset(text, place.Value.To)
	return []byte(string(text[:from]) + c.To + string(text[to:])), nil
}
