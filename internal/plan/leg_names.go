package plan

import "slices"

// LegNames calls the legs that have no id of their own by what they go to, such as
// "hook to A": their numbers change when legs change places in the list. Where
// another leg goes to the same from there, its uppermost part is told too, as in
// "hook to shell by S1"; of a parked one that alone.
func (p *Plan) LegNames() map[string]string {
	same := map[string]int{}
	for _, s := range p.Supports {
		for _, leg := range s.Legs {
			same[s.From+" to "+leg.End.goesTo()]++
		}
	}
	names := map[string]string{}
	for _, s := range p.Supports {
		for _, leg := range slices.Concat(s.Legs, s.Parked) {
			if !leg.Numbered {
				continue
			}
			name := s.From
			if to := leg.End.goesTo(); to != "" {
				name += " to " + to
			}
			if same[name] != 1 {
				name += " by " + leg.Down[0].Item.Base().ID // a part is in one leg only
			}
			names[leg.ID] = name
		}
	}
	return names
}

// goesTo names where a leg ends; empty where it is parked.
func (e End) goesTo() string {
	switch {
	case e.Second != nil:
		return e.Attachment.ID + " and " + e.Second.ID
	case e.Attachment != nil:
		return e.Attachment.ID
	case e.Round != nil:
		return e.Round.Body.ID
	}
	return ""
}
