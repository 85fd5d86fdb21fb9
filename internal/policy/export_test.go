package policy

import "liftlint/internal/facts"

// SeeingAll is the pack whose rules see all of the facts, also what none reads.
func (p *Pack) SeeingAll() *Pack {
	all := *p
	all.reads = facts.Choice{}
	return &all
}
