package cli

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// hookFile is a hook of a repository.
type hookFile struct{ dir, name string }

func (f hookFile) path() string { return filepath.Join(f.dir, f.name) }

// kept is where a hook that was there before stands meanwhile.
func (f hookFile) kept() string { return f.path() + ".before-liftlint" }

// state is what stands at a hook's place.
type state int

const (
	none   state = iota
	ours         // as it was installed
	edited       // ours, and changed since
	others
)

func (f hookFile) state() (state, string, error) {
	text, err := os.ReadFile(f.path())
	if errors.Is(err, fs.ErrNotExist) {
		if _, err := os.Lstat(f.path()); err == nil {
			return others, "", nil // a link to nothing
		}
		return none, "", nil
	}
	if err != nil {
		return none, "", err
	}
	first, rest, _ := strings.Cut(string(text), "\n")
	sum, body, ok := strings.Cut(rest, "\n")
	sum, marked := strings.CutPrefix(sum, hookMark)
	switch {
	case !ok || !marked || first != hookShell:
		return others, "", nil
	case sum != sumOf(body):
		return edited, "", nil
	}
	return ours, body, nil
}

// The first lines of a hook, by which it is known again.
const (
	hookShell = "#!/bin/sh"
	hookMark  = "# Written by liftlint hook install, to be taken out by liftlint hook remove. Sum of what follows: "
)

func sumOf(body string) string {
	sum := sha256.Sum256([]byte(body))
	return hex.EncodeToString(sum[:8])
}

// install writes a hook, and keeps one that is there. It tells what it did.
func (f hookFile) install(s hookScript) (string, error) {
	is, before, err := f.state()
	if err != nil {
		return "", err
	}
	switch is {
	case edited:
		return "", f.wasEdited()
	case ours:
		s.madeFolder = strings.Contains(before, madeFolder)
		return fmt.Sprintf("the hook %s is there already, and as asked for now", f.path()), f.write(s.body())
	}
	if _, err := os.Stat(f.dir); errors.Is(err, fs.ErrNotExist) {
		s.madeFolder = true
		if err := os.MkdirAll(f.dir, 0o755); err != nil {
			return "", err
		}
	}
	said := "installed " + f.path()
	if is == others {
		if _, err := os.Lstat(f.kept()); err == nil {
			return "", fmt.Errorf("there is a hook at %s, and its place %s is taken: look which of them is right, and move the other away", f.path(), f.kept())
		}
		if err := os.Rename(f.path(), f.kept()); err != nil {
			return "", err
		}
		said += "; the hook that was there is now " + f.kept() + ", and runs first"
	}
	return said, f.write(s.body())
}

func (f hookFile) wasEdited() error {
	return fmt.Errorf("%s was written by liftlint and has been changed since: it is left alone; take out by hand what is not wanted", f.path())
}

// write writes the hook whole or not at all.
func (f hookFile) write(body string) error {
	text := hookShell + "\n" + hookMark + sumOf(body) + "\n" + body
	if old, err := os.ReadFile(f.path()); err == nil && bytes.Equal(old, []byte(text)) {
		return nil
	}
	return replaceFile(f.path(), []byte(text), 0o755)
}

// remove leaves everything as it was before install. It tells what it did.
func (f hookFile) remove() (string, error) {
	is, body, err := f.state()
	switch {
	case err != nil:
		return "", err
	case is == edited:
		return "", f.wasEdited()
	case is != ours:
		return "", fmt.Errorf("there is no hook of liftlint at %s", f.path())
	}
	if err := os.Remove(f.path()); err != nil {
		return "", err
	}
	if _, err := os.Lstat(f.kept()); err == nil {
		return fmt.Sprintf("removed %s, and put back the hook that was there before", f.path()), os.Rename(f.kept(), f.path())
	}
	if strings.Contains(body, madeFolder) {
		_ = os.Remove(f.dir) // stays where something else has come into it
	}
	return "removed " + f.path(), nil
}
