// Package config finds and reads configurations: which files hold for a plan,
// what each of them sets, and what none may weaken.
package config

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"liftlint/internal/datafile"
	"liftlint/internal/policy"
)

// FileName is the name of a configuration.
const FileName = "liftlint.yaml"

// lockedProfile is what a configuration lists to lock its profile.
const lockedProfile = "profile"

// Config is what holds for the plans of one folder: all configurations from
// the outermost to the nearest, each after what it extends.
type Config struct {
	Files       []string        // as they were found, the outermost first
	Profile     string          // empty where none names one
	ProfileFrom string          // the file that does
	ProfileHeld bool            // locked: it goes before what a plan names
	Layers      []policy.Layer  // one a file
	Rules       []policy.Source // folders of company rules
	Registers   []string        // files of gear registers, each once
	Baseline    string          // path of what is known of the plans; empty where none names one
}

// Key tells configurations apart: those with the same key are the same.
func (c Config) Key() string { return fmt.Sprint(c.Files) }

// Nearest is the configuration nearest to a folder, from it up to the root,
// with the folders of rules that it names; these need not be there yet. It is
// false where there is none.
func Nearest(folder string) (file string, rules []string, ok bool, err error) {
	files, err := find(folder)
	if err != nil || len(files) == 0 {
		return "", nil, false, err
	}
	file = files[len(files)-1]
	r := reader{}
	w, _, read := r.read(file, shown(file))
	if !read {
		return "", nil, false, r.problems.Sorted()
	}
	for _, f := range w.RuleFolders {
		rules = append(rules, filepath.Join(filepath.Dir(file), filepath.FromSlash(f)))
	}
	return file, rules, true, nil
}

// For finds the configurations that hold for a folder: every liftlint.yaml
// from it up to the root of the file system. A folder below can't leave out one
// above, be it a repository of its own, so that what is locked there stays so.
// The error is datafile.Problems where a file is wrong, and where one has a name
// that is nearly right: it would be passed over in silence.
func For(folder string) (Config, error) {
	files, err := find(folder)
	if err != nil {
		return Config{}, err
	}
	return Read(files...)
}

// find lists the configurations from a folder up to the root, the outermost
// first.
func find(folder string) ([]string, error) { return Between(folder, "") }

// Between lists the configurations from a folder up to another above it, both
// included, the outermost first; up to the root of the file system where that
// other is empty.
func Between(folder, top string) ([]string, error) {
	folder, err := filepath.Abs(folder)
	if err != nil {
		return nil, err
	}
	var files []string
	for {
		if err := misnamed(folder); err != nil {
			return nil, err
		}
		file := filepath.Join(folder, FileName)
		if info, err := os.Stat(file); err == nil && !info.IsDir() {
			files = append(files, file)
		} else if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return nil, err // one that can't be looked at may hold locks
		}
		parent := filepath.Dir(folder)
		if parent == folder || folder == top {
			break
		}
		folder = parent
	}
	slices.Reverse(files)
	return files, nil
}

// misnamed refuses a file whose name is that of a configuration but for its
// ending, a dot before it, or its case. A folder that can't be listed may hold
// none, as far as can be told: what it is asked for by name still is.
func misnamed(folder string) error {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil
	}
	for _, e := range entries {
		plain := strings.TrimPrefix(strings.ToLower(e.Name()), ".")
		if e.Name() != FileName && !e.IsDir() && (plain == FileName || plain == "liftlint.yml") {
			return datafile.Problems{{File: shown(filepath.Join(folder, e.Name())), Message: "a configuration is named " + FileName + ": rename this file"}}
		}
	}
	return nil
}

// Read reads the configurations named, the outermost first.
func Read(files ...string) (Config, error) {
	r := reader{seen: map[string]bool{}}
	for _, f := range files {
		r.file(f, nil)
	}
	if err := r.problems.Sorted(); err != nil {
		return Config{}, err
	}
	return r.config, nil
}

// reader gathers configurations, and all that is wrong with them.
type reader struct {
	config   Config
	seen     map[string]bool
	problems datafile.Problems
}

// written is a configuration as it is written.
type written struct {
	Extends     string                    `json:"extends"`
	Profile     string                    `json:"profile"`
	RuleFolders []string                  `json:"rule_folders"`
	Rules       map[string]policy.Setting `json:"rules"`
	Locked      []string                  `json:"locked"`
	NotWaivable []string                  `json:"not_waivable"`
	Registers   []string                  `json:"registers"`
	Baseline    string                    `json:"baseline"`
	Intervals   []policy.IntervalFile     `json:"inspection_intervals"`
}

// file reads one configuration after what it extends; by lists the files that
// led here by extending one another.
func (r *reader) file(path string, by []string) {
	name := shown(path)
	if slices.Contains(by, path) {
		r.problems.Add(datafile.Problem{File: name, Message: circle(by[slices.Index(by, path)+1:])})
		return
	}
	if r.seen[path] {
		return // reached twice: once is enough
	}
	r.seen[path] = true
	w, tree, ok := r.read(path, name)
	if !ok {
		return
	}
	if w.Extends != "" {
		next := filepath.Join(filepath.Dir(path), filepath.FromSlash(w.Extends))
		if _, err := os.Stat(next); err != nil {
			r.problems.Add(tree.Problem("/extends", "extends %s: %v", w.Extends, datafile.Cause(err)))
		} else {
			r.file(next, append(by, path))
		}
	}
	r.take(path, name, w, tree)
}

// circle words that a configuration extends itself, by way of these.
func circle(by []string) string {
	if len(by) == 0 {
		return "this configuration extends itself"
	}
	names := make([]string, len(by))
	for i, path := range by {
		names[i] = shown(path)
	}
	return "this configuration extends itself, by way of " + strings.Join(names, ", then ")
}

func (r *reader) read(path, name string) (written, *datafile.Tree, bool) {
	var w written
	text, err := os.ReadFile(path)
	if err != nil {
		r.problems.Add(datafile.Problem{File: name, Message: datafile.Cause(err).Error()})
		return w, nil, false
	}
	schema, err := datafile.Compile("config.schema.json")
	if err != nil {
		r.problems.Add(datafile.Problem{File: name, Message: err.Error()})
		return w, nil, false
	}
	tree, ps := datafile.Read(datafile.Text{File: name, Text: string(text), Line: 1})
	if len(ps) == 0 {
		ps = schema.Check(tree)
	}
	r.problems = append(r.problems, ps...)
	if len(ps) > 0 {
		return w, tree, false
	}
	if err := datafile.Convert(tree.Root, &w); err != nil {
		r.problems.Add(tree.Problem("", "%v", err))
		return w, tree, false
	}
	return w, tree, true
}

// take adds what one configuration sets.
func (r *reader) take(path, name string, w written, tree *datafile.Tree) {
	c := &r.config
	c.Files = append(c.Files, path)
	switch {
	case w.Profile == "" || w.Profile == c.Profile:
	case c.ProfileHeld:
		r.problems.Add(tree.Problem("/profile", "the profile is locked by %s: nothing below may change it", c.ProfileFrom))
	default:
		c.Profile, c.ProfileFrom = w.Profile, name
	}
	if i := slices.Index(w.Locked, lockedProfile); i >= 0 {
		if c.ProfileHeld = c.Profile != ""; !c.ProfileHeld {
			r.problems.Add(tree.Problem(fmt.Sprintf("/locked/%d", i), "the profile is locked here, and none is named"))
		}
	}
	if w.Baseline != "" {
		c.Baseline = filepath.Join(filepath.Dir(path), filepath.FromSlash(w.Baseline))
	}
	layer := policy.Layer{Name: name, Rules: w.Rules, Locked: w.Locked, NotWaivable: w.NotWaivable, Tree: tree}
	for _, x := range w.Intervals {
		layer.Intervals = append(layer.Intervals, x.Interval())
	}
	c.Layers = append(c.Layers, layer)
	for i, folder := range w.RuleFolders {
		r.ruleFolder(filepath.Join(filepath.Dir(path), filepath.FromSlash(folder)), folder, i, tree)
	}
	for i, pattern := range w.Registers {
		r.register(filepath.Dir(path), pattern, fmt.Sprintf("/registers/%d", i), tree)
	}
}

// register adds the files that a pattern names. One that names none is a fault:
// what stands in a register that is not read would count for nothing.
func (r *reader) register(folder, pattern, at string, tree *datafile.Tree) {
	files, err := filepath.Glob(filepath.Join(folder, filepath.FromSlash(pattern)))
	switch {
	case err != nil:
		r.problems.Add(tree.Problem(at, "%s: %v", pattern, err))
	case len(files) == 0:
		r.problems.Add(tree.Problem(at, "%s names no file", pattern))
	}
	for _, file := range files {
		if name := shown(file); !slices.Contains(r.config.Registers, name) {
			r.config.Registers = append(r.config.Registers, name)
		}
	}
}

func (r *reader) ruleFolder(path, written string, i int, tree *datafile.Tree) {
	at := fmt.Sprintf("/rule_folders/%d", i)
	if info, err := os.Stat(path); err != nil {
		r.problems.Add(tree.Problem(at, "%s: %v", written, datafile.Cause(err)))
		return
	} else if !info.IsDir() {
		r.problems.Add(tree.Problem(at, "%s is no folder", written))
		return
	}
	files := os.DirFS(path)
	if found, err := fs.Glob(files, "*/*/rule.rego"); err != nil || len(found) == 0 {
		r.problems.Add(tree.Problem(at, "%s holds no rule: rules stand in TOPIC/RULE/rule.rego", written))
		return
	}
	name := shown(path)
	if !slices.ContainsFunc(r.config.Rules, func(s policy.Source) bool { return s.Root == name }) {
		r.config.Rules = append(r.config.Rules, policy.Source{Root: name, Files: files})
	}
}

// shown is a path as people know it: from the working folder where it lies
// below that, so that reports do not differ from machine to machine.
func shown(path string) string {
	here, err := os.Getwd()
	if err != nil {
		return filepath.ToSlash(path)
	}
	rel, err := filepath.Rel(here, path)
	if err != nil {
		return filepath.ToSlash(path)
	}
	return filepath.ToSlash(rel)
}
