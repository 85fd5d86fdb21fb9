package policy

import "liftlint/internal/facts"

// SeeingAll is the pack whose rules see all of the facts, also what none reads, in
// one query.
func (p *Pack) SeeingAll() *Pack {
	all := *p
	all.reads, all.apartFrom = facts.Choice{}, 0
	return &all
}

// AskedApart is the pack whose rules are asked one by one, however few records
// there are.
func (p *Pack) AskedApart() *Pack {
	apart := *p
	apart.apartFrom = 1
	return &apart
}
