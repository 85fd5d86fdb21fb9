package policy_test

import "liftlint/internal/facts"

func breaksInspection() []broken {
	return []broken{
		{"inspection/overdue", "", func(d *facts.Document) { d.Gear[0].Inspection.OverdueDays = ptr(12.0) },
			"S1 is <inspection.overdue_days 12> past its periodic inspection, due on <inspection.due 2027-05-04>", "#/gear/0/inspection", 12},
		{"inspection/due_soon", "", func(d *facts.Document) { d.Gear[0].Inspection.OverdueDays = ptr(-30.0) },
			"the periodic inspection of S1 holds on the day of the lift and is due on <inspection.due 2027-05-04>, within <soon_days 30> of it", "#/gear/0/inspection", 0},
	}
}
