// Package ruleexample reads the two examples that stand beside each rule: a
// plan that breaks it and one that meets it. Each is a base plan with a few
// values set otherwise, so that it shows only what matters.
package ruleexample

import (
	"errors"
	"fmt"
	"io/fs"
	"path"

	"github.com/goccy/go-yaml"

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
}

// Change sets the value at a JSON pointer of the base to another text, or
// takes its lines out where To is empty.
type Change struct {
	At string `yaml:"at"`
	To string `yaml:"to"`
}

// written is the file as it is written.
type written struct {
	Base   string  `yaml:"base"`
	Breaks variant `yaml:"breaks"`
	Meets  variant `yaml:"meets"`
}

type variant struct {
	What  string   `yaml:"what"`
	Set   []Change `yaml:"set"`
	Finds []string `yaml:"finds"`
	Also  []string `yaml:"also"`
}

// ErrNone says that a rule has no examples.
var ErrNone = errors.New("the rule has no examples")

// Load reads the examples of a rule from TOPIC/RULE/examples.yaml and
// bases/NAME.lift.yaml. The error wraps ErrNone where there is no such file.
func Load(files fs.FS, rule string) (Pair, error) {
	name := path.Join(rule, File)
	text, err := fs.ReadFile(files, name)
	if errors.Is(err, fs.ErrNotExist) {
		return Pair{}, fmt.Errorf("%s: %w", rule, ErrNone)
	}
	if err != nil {
		return Pair{}, err
	}
	var w written
	if err := yaml.UnmarshalWithOptions(text, &w, yaml.Strict()); err != nil {
		return Pair{}, fmt.Errorf("%s: %w", name, err)
	}
	base, err := fs.ReadFile(files, path.Join(basesFolder, w.Base+".lift.yaml"))
	if err != nil {
		return Pair{}, fmt.Errorf("%s: base %q: %w", name, w.Base, err)
	}
	var p Pair
	if p.Breaks, err = w.Breaks.on(base); err != nil {
		return Pair{}, fmt.Errorf("%s: breaks: %w", name, err)
	}
	if p.Meets, err = w.Meets.on(base); err != nil {
		return Pair{}, fmt.Errorf("%s: meets: %w", name, err)
	}
	return p, nil
}

// on applies the changes to the base, one after the other.
func (v variant) on(base []byte) (Example, error) {
	text := base
	for _, c := range v.Set {
		var err error
		if text, err = set(text, c); err != nil {
			return Example{}, err
		}
	}
	return Example{What: v.What, Set: v.Set, Finds: v.Finds, Also: v.Also, Text: string(text)}, nil
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
