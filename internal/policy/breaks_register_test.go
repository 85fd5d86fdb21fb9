package policy_test

import "liftlint/internal/facts"

func breaksRegister() []broken {
	item := func(change func(*facts.OnFile)) func(*facts.Document) {
		return func(d *facts.Document) { change(&d.OnFile[0]) }
	}
	status := func(word string) func(*facts.Document) {
		return item(func(f *facts.OnFile) { f.Status, f.Because = word, ": kinked" })
	}
	const at = "loft.gear.yaml#/items/0"
	return []broken{
		{"register/not_in_service", "scrapped", status("scrapped"), "S1, item WR-11, is scrapped: kinked: use another", at, 0},
		{"register/not_in_service", "out_of_service", status("out_of_service"), "S1, item WR-11, is out of service: kinked: use another", at, 0},
		{"register/not_in_service", "quarantined", status("quarantined"), "S1, item WR-11, is set apart until somebody has decided on it: kinked: use another", at, 0},
		{"register/not_in_service", "not_given", status("not_given"), "the register does not say whether S1, item WR-11, is in service", at, 0},
		{"register/overload_not_cleared", "", item(func(f *facts.OnFile) { f.Overload = "not_cleared" }),
			"S1, item WR-11, was overloaded, and nobody is named who had cleared it by the day that is judged for: use another", at, 0},
		{"register/history_unknown", "", item(func(f *facts.OnFile) { f.HistoryKnown = "no" }),
			"of S1, item WR-11, it is on file that its history is not known: have a qualified person inspect it, and record that", at, 0},
		{"register/serials_differ", "", item(func(f *facts.OnFile) { f.SerialsUnlike = []string{"register", "certificate"} }),
			"the serial numbers of S1, item WR-11, are not the same on: register, certificate; one of them belongs to another item", at, 0},
		{"register/rated_loads_differ", "", item(func(f *facts.OnFile) { f.RatedLoadsUnlike = []string{"register", "tag"} }),
			"the rated loads of S1, item WR-11, are not the same on: register, tag; find out which is right before it is used", at, 0},
	}
}
