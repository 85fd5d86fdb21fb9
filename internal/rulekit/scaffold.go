// Package rulekit is what authors of rules work with: a first rule to begin
// from, and trials of a rule's examples.
package rulekit

import (
	"embed"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

//go:embed template/*
var template embed.FS

var idForm = regexp.MustCompile(`^[a-z][a-z0-9_]*/[a-z][a-z0-9_]*$`)

// New writes a rule with its tests and its two examples into a folder of rules,
// as a beginning that passes at once, and returns the files. It overwrites
// nothing.
func New(folder, id string) ([]string, error) {
	if !idForm.MatchString(id) {
		return nil, fmt.Errorf("%q is no id for a rule: write TOPIC/NAME in lower case letters, digits and _, such as angle/leg_too_flat_for_us", id)
	}
	home := filepath.Join(folder, filepath.FromSlash(id))
	if _, err := os.Stat(home); err == nil {
		return nil, fmt.Errorf("%s is there already", filepath.ToSlash(home))
	} else if !errors.Is(err, os.ErrNotExist) {
		return nil, err
	}
	if err := os.MkdirAll(home, 0o755); err != nil {
		return nil, err
	}
	entries, err := template.ReadDir("template")
	if err != nil {
		return nil, err
	}
	var files []string
	for _, e := range entries {
		text, err := template.ReadFile("template/" + e.Name())
		if err != nil {
			return nil, err
		}
		file := filepath.Join(home, strings.TrimSuffix(e.Name(), ".txt"))
		if err := os.WriteFile(file, []byte(fill(string(text), id)), 0o644); err != nil {
			return nil, err
		}
		files = append(files, filepath.ToSlash(file))
	}
	return files, nil
}

// fill puts the rule's names into a template.
func fill(text, id string) string {
	topic, name, _ := strings.Cut(id, "/")
	title := strings.ReplaceAll(name, "_", " ")
	return strings.NewReplacer(
		"TITLE", strings.ToUpper(title[:1])+title[1:],
		"PACKAGE", topic+"."+name,
	).Replace(text)
}
