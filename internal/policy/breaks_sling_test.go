package policy_test

import "liftlint/internal/facts"

func breaksSling() []broken {
	return []broken{
		{"sling/turn_back_eye", "not_given", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"not_given"} },
			"the plan does not say how the eyes of S1 are made", "#/gear/0", 0},
		{"sling/turn_back_eye", "turn_back", func(d *facts.Document) { d.Gear[0].EyeKinds = []string{"turn_back_sleeve"} },
			"S1 has an eye that its sleeve alone holds; for overhead hoisting an eye of re-laid strands is advised", "#/gear/0", 0},
	}
}
