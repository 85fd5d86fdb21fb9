package triage

import (
	"fmt"
	"slices"

	"liftlint/internal/finding"
)

// Rename has what is known of a plan follow it to another name. The plan has to be
// known under the first, and not under the other.
func (b *Baseline) Rename(from, to string) error {
	at := func(file string) int {
		return slices.IndexFunc(b.Plans, func(p KnownPlan) bool { return p.File == file })
	}
	i := at(from)
	switch {
	case i < 0:
		return fmt.Errorf("%s has nothing of %s", b.File, from)
	case at(to) >= 0:
		return fmt.Errorf("%s has findings of %s already: nothing can be moved on to them", b.File, to)
	}
	p := &b.Plans[i]
	p.File = to
	p.Findings = slices.Clone(p.Findings)
	for n, k := range p.Findings {
		p.Findings[n].Fingerprint = finding.Fingerprint(to, k.Rule, k.Key, 0)
	}
	return nil
}
