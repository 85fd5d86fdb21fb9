package policy_test

import "liftlint/internal/facts"

func breaksTension() []broken {
	return []broken{
		{"tension/leg_nearly_slack", "", func(d *facts.Document) { d.Legs[0].ShareRatio = ptr(0.1) },
			"leg hook/1 carries <share_ratio 0.1> of what the legs carry on average; under <least_ratio 0.15> it is close to going slack, and the load to turning", "#/leg/0", 0.1},
		{"tension/leg_slack", "by_stiffness", func(d *facts.Document) { d.Legs[0].Slack = ptr(true); d.Legs[0].AngleFromHorizontalDeg = nil },
			"leg hook/1 to A hangs slack with the lengths as given: small differences of length decide which legs carry", "#/leg/0", 0},
		{"tension/leg_slack", "by_statics", func(d *facts.Document) { d.Legs[0].Slack, d.Legs[0].Split = ptr(true), "settled_by_statics" },
			"leg hook/1 to A hangs slack: the other legs carry its share", "#/leg/0", 0},
	}
}
