package cli

import (
	"context"
	"fmt"
	"path/filepath"
	"slices"

	"liftlint/internal/lint"
)

// identify reads what the gear of unchanged plans is known by, each with the registers
// of its folder, so that changed plans can be held against them. No rule is loaded for
// that. It names the plans that could not be read, which nothing was held against.
// Where no plan can be judged nothing is read.
func (ls *linters) identify(ctx context.Context, judging []assigned, unchanged []input) (known []*lint.Result, unread []string) {
	i := slices.IndexFunc(judging, func(a assigned) bool { return a.fault == nil })
	if i < 0 || len(unchanged) == 0 {
		return nil, nil
	}
	results, failures := forAll(ls.readers(judging[i].Linter, unchanged), unchanged, func(l *lint.Linter, in input) (*lint.Result, error) {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		return identify(l, in)
	})
	for i, in := range unchanged {
		if failures[i] != nil {
			unread = append(unread, in.path)
			continue
		}
		known = append(known, results[i])
	}
	return known, unread
}

// readers have the registers of each plan's folder.
func (ls *linters) readers(like *lint.Linter, inputs []input) []assigned {
	byFolder := map[string]assigned{}
	each := make([]assigned, len(inputs))
	for i, in := range inputs {
		folder := filepath.Dir(in.path)
		reader, ok := byFolder[folder]
		if !ok {
			c, err := ls.judging.configFor(folder)
			if reader.fault = err; err == nil {
				reader.Linter = like.WithRegisters(ls.registersFor(c))
			}
			byFolder[folder] = reader
		}
		each[i] = reader
	}
	return each
}

func identify(l *lint.Linter, in input) (r *lint.Result, err error) {
	defer func() {
		if p := recover(); p != nil {
			r, err = nil, fmt.Errorf("%s: reading it stopped: %v", in.path, p)
		}
	}()
	text, err := in.read()
	if err != nil {
		return nil, err
	}
	return l.Identify(in.path, text)
}
