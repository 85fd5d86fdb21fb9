package cli

import (
	"errors"
	"path/filepath"
	"slices"
	"strings"

	"liftlint/internal/config"
	"liftlint/internal/lint"
)

// linters are the linters of one run: one for each configuration, shared by
// all folders that it holds for.
type linters struct {
	judging  *judging
	remedies bool
	settle   func(config.Config, *lint.Options) error // adds what a command asks for besides; may be nil
	byFolder map[string]*lint.Linter
	byConfig map[string]*lint.Linter
	// registers are shared by all linters that have the same.
	registers map[string]*lint.Registers
}

func newLinters(j *judging, remedies bool) *linters {
	return &linters{j, remedies, nil, map[string]*lint.Linter{}, map[string]*lint.Linter{}, map[string]*lint.Registers{}}
}

// registersFor are those of a configuration and of the command, read once for
// all that have the same.
func (ls *linters) registersFor(c config.Config) *lint.Registers {
	paths := slices.Concat(c.Registers, ls.judging.registers)
	key := strings.Join(paths, "\x00")
	if ls.registers[key] == nil {
		ls.registers[key] = lint.NewRegisters(paths...)
	}
	return ls.registers[key]
}

// configFault is what is wrong with a configuration that was found, or with what it
// names. It stops the plans that it holds for, and no others.
type configFault struct{ error }

// Unwrap gives what is wrong.
func (f configFault) Unwrap() error { return f.error }

// asUsage is for commands to which the whole configuration matters.
func asUsage(err error) error {
	if fault := (configFault{}); errors.As(err, &fault) {
		return wrongUsage(fault.error)
	}
	return err
}

// fault is what is wrong with a configuration, and wrong usage where it was named to
// the command.
func (ls *linters) fault(err error) error {
	if ls.judging.config != "" {
		return wrongUsage(err)
	}
	return configFault{err}
}

// forFolder is the linter for the plans of a folder. The error is a configFault where
// it is for the configuration that there is none.
func (ls *linters) forFolder(folder string) (*lint.Linter, error) {
	if l := ls.byFolder[folder]; l != nil {
		return l, nil
	}
	c, err := ls.judging.configFor(folder)
	if err != nil {
		return nil, ls.fault(err)
	}
	l := ls.byConfig[c.Key()]
	if l == nil {
		if l, err = ls.make(c); err != nil {
			return nil, err
		}
		ls.byConfig[c.Key()] = l
	}
	ls.byFolder[folder] = l
	return l, nil
}

// assigned is a plan's linter, or why there is none: its configuration is broken.
type assigned struct {
	*lint.Linter
	fault error
}

// forInputs finds the linter of each plan, by the configuration of its folder.
func (ls *linters) forInputs(inputs []input) ([]assigned, error) {
	each := make([]assigned, len(inputs))
	for i, in := range inputs {
		l, err := ls.forFolder(filepath.Dir(in.path))
		fault := configFault{}
		if err != nil && !errors.As(err, &fault) {
			return nil, err
		}
		each[i] = assigned{l, fault.error}
	}
	return each, nil
}

// make makes the linter of a configuration.
func (ls *linters) make(c config.Config) (*lint.Linter, error) {
	o, err := ls.judging.options()
	if err != nil {
		return nil, err
	}
	if err := lint.Known(o.Profile, o.Stage); err != nil {
		return nil, wrongUsage(err)
	}
	o.Remedies, o.Config, o.Registers = ls.remedies, c, ls.registersFor(c)
	if ls.settle != nil {
		if err := ls.settle(c, &o); err != nil {
			return nil, err
		}
	}
	l, err := lint.New(o)
	switch {
	case errors.Is(err, lint.ErrProfileLocked), err != nil && ls.judging.baseline != "":
		return nil, wrongUsage(err)
	case err != nil:
		return nil, ls.fault(err)
	}
	return l, nil
}
