package report

import (
	"strings"

	"liftlint/internal/facts"
	"liftlint/internal/finding"
	"liftlint/internal/lint"
)

// Fingerprints are those of a plan's findings, in their order. They stay the
// same when lines move, items and legs change places or values are written in another
// unit. Files are to be named from the root of the repository.
func Fingerprints(r *lint.Result) []string {
	list := Identities(r)
	seen := map[[2]string]int{}
	for i, f := range r.Findings {
		subject := list[i]
		like := [2]string{f.Rule, subject}
		list[i] = finding.Fingerprint(r.File, f.Rule, subject, seen[like])
		seen[like]++
	}
	return list
}

// Identities are what a plan's findings go by within it, in their order: each
// finding's subject, named so that it does not depend on places in lists.
func Identities(r *lint.Result) []string {
	keys := stableKeys(r)
	list := make([]string, len(r.Findings))
	for i, f := range r.Findings {
		list[i] = f.Identity(r.Stable(keys.of(f.Key)))
	}
	return list
}

// recordKeys are the keys of records by the pointer of the place each stands for.
type recordKeys map[string]string

func stableKeys(r *lint.Result) recordKeys {
	keys := recordKeys{}
	if r.Facts == nil {
		return keys
	}
	for _, name := range facts.Collections() {
		views, _ := r.Facts.Document.Records(name)
		for _, v := range views {
			at := strings.TrimPrefix(v.At, "#")
			if _, ok := keys[at]; !ok && at != "" {
				keys[at] = v.Key // the first of several at one place, in the order of the facts
			}
		}
	}
	return keys
}

// inputPrefix begins the keys of inputs that are not given; the pointer of what
// lacks them follows.
const inputPrefix = "input"

// of names the record in the key of an input instead of its place in a list.
func (k recordKeys) of(key string) string {
	pointer, ok := strings.CutPrefix(key, inputPrefix+"/")
	if !ok {
		return key
	}
	pointer = "/" + pointer
	for end := len(pointer); end > 0; end = strings.LastIndexByte(pointer[:end], '/') {
		if record, ok := k[pointer[:end]]; ok {
			return inputPrefix + "/" + record + pointer[end:]
		}
	}
	return key
}
