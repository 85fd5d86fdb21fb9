package policy_test

import "liftlint/internal/facts"

func breaksHook() []broken {
	return []broken{
		{"hook/pulled_aside", "", func(d *facts.Document) { d.Hooks[tailHook].LeanDeg = ptr(4.0) },
			"hook tail in phase turning at 30 deg is pulled <lean_from_plumb_deg 4> out of plumb, <horizontal_n 900> to the side; up to <most_deg 3> is let pass", "#/hook/1", 4},
	}
}
